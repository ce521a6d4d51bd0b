// The known name that is nearest to a misspelt one.
#pragma once

#include <string>
#include <string_view>

namespace heelrule {

/// Collects candidates and keeps the one that is fewest edits away from what was written. An edit
/// is a letter added, left out, changed, or swapped with its neighbour (Damerau's distance, with
/// each letter moved once).
class Nearest {
 public:
  /// `written` must outlive this object.
  explicit Nearest(std::string_view written) : written_(written) {}

  /// Takes a candidate into account. Among equally near ones, one that begins with the
  /// letter that was written goes before the others, and then the first offered.
  void offer(std::string_view candidate);

  /// Whether a candidate is near enough to be worth a question: within a third of the letters, at
  /// least one and at most three edits, and some letter of it is kept.
  bool found() const { return !best_.empty(); }

  const std::string& name() const { return best_; }

  /// `did you mean `x`?`, or an empty text.
  std::string question() const;

 private:
  std::string_view written_;
  std::string best_;
  std::size_t best_rank_ = 0;
};

}  // namespace heelrule
