// A value that may be missing, with everything that was found wrong on the way to it.
#pragma once

#include <optional>
#include <utility>

#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// A value if nothing was wrong, and every diagnostic either way. Warnings come with a value.
template <class T>
class [[nodiscard]] Checked {
 public:
  /// Keeps `value` unless `diagnostics` hold an error.
  Checked(T value, Diagnostics diagnostics) : diagnostics_(std::move(diagnostics)) {
    if (!diagnostics_.has_errors()) {
      value_ = std::move(value);
    }
  }

  explicit Checked(Diagnostics diagnostics) : diagnostics_(std::move(diagnostics)) {}

  explicit operator bool() const { return value_.has_value(); }

  /// The value. Precondition: there is one.
  const T& operator*() const& { return *value_; }
  T&& operator*() && { return std::move(*value_); }
  const T* operator->() const { return &*value_; }

  const Diagnostics& diagnostics() const { return diagnostics_; }

 private:
  std::optional<T> value_;
  Diagnostics diagnostics_;
};

}  // namespace heelrule
