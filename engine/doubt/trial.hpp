// Alternatives to a record, tried row by row in blocks.
#pragma once

#include <optional>
#include <vector>

#include "engine/doubt/draws.hpp"
#include "engine/scoring/grade_reach.hpp"

namespace heelrule {

/// Gathers alternatives until a block is full, runs it, and hands back the grade of each. An
/// alternative begins as the record stands.
template <class Label>
class Trial {
 public:
  /// `program` must outlive this object.
  Trial(const Program& program, const Inspection& inspection)
      : program_(program), plain_(program), block_(program) {
    fill_rows(program, inspection, plain_);
    fill_rows(program, inspection, block_);
  }

  /// The value of an input as recorded.
  double recorded(Register input) const { return plain_.column(input)[0]; }

  /// Adds an alternative: `change` is given a function that sets an input of it. When a block is
  /// full, `seen` is called with the label and the grade of each, in the order in which they were
  /// added, until it gives true.
  template <class Change, class Seen>
  bool add(const Label& label, Change change, Seen seen) {
    change([&](Register input, double value) {
      block_.column(input)[labels_.size()] = value;
      changed_.push_back({input, labels_.size()});
    });
    labels_.push_back(label);
    return labels_.size() == block_rows && run(seen);
  }

  /// Runs what has been gathered.
  template <class Seen>
  bool run(Seen seen) {
    evaluate(program_, block_);
    bool is_done = false;
    for (std::size_t row = 0; row < labels_.size() && !is_done; ++row) {
      is_done = seen(labels_[row], grade_reach(program_, block_.outcome(row)).grade);
    }
    for (const auto& [input, row] : changed_) {
      block_.column(input)[row] = recorded(input);
    }
    changed_.clear();
    labels_.clear();
    return is_done;
  }

 private:
  struct Changed {
    Register input = 0;
    std::size_t row = 0;
  };

  const Program& program_;
  Block plain_;
  Block block_;
  std::vector<Label> labels_;
  std::vector<Changed> changed_;
};

}  // namespace heelrule
