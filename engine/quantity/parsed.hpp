// What reading a piece of text gives: the value, or what is wrong and what to do.
#pragma once

#include <optional>
#include <string>
#include <utility>

namespace heelrule {

/// Why a text could not be read, in words for the person who wrote it.
struct Problem {
  std::string message;  ///< what is wrong; no full stop, no position
  std::string hint;     ///< what to write instead; empty when there is nothing to add

  bool operator==(const Problem&) const = default;
};

/// A value, or the problem that kept it from being read; never both, never neither.
template <class T>
class [[nodiscard]] Parsed {
 public:
  Parsed(T value) : value_(std::move(value)) {}              // NOLINT(google-explicit-constructor)
  Parsed(Problem problem) : problem_(std::move(problem)) {}  // NOLINT(google-explicit-constructor)

  explicit operator bool() const { return value_.has_value(); }

  /// The value. Precondition: the text was read.
  const T& operator*() const { return *value_; }
  const T* operator->() const { return &*value_; }

  /// The problem; empty when the text was read.
  const Problem& problem() const { return problem_; }

 private:
  std::optional<T> value_;
  Problem problem_;
};

}  // namespace heelrule
