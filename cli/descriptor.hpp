// An open file that closes itself.
#pragma once

#include <string_view>
#include <utility>

namespace heelrule {

class Descriptor {
 public:
  Descriptor() = default;
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor();
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept;
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  /// The number of the open file; below 0 where there is none.
  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }

 private:
  int number_ = -1;
};

/// Writes all of `text`, going on after signals. 0, or the `errno` of the failure.
int write_all(int number, std::string_view text);

}  // namespace heelrule
