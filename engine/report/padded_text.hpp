// Words that are kept to be copied often.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace heelrule {

/// Where padded text stands.
struct PaddedView {
  const char* data = nullptr;
  std::uint32_t size = 0;
};

/// Text with so many readable bytes behind it that it can be copied in whole steps: how many of
/// them is then mostly the same, where how many bytes is not.
class PaddedText {
 public:
  static constexpr std::size_t step = 32;

  PaddedText() = default;
  explicit PaddedText(std::string text) : bytes_(std::move(text)), size_(bytes_.size()) {
    bytes_.resize((size_ + step - 1) / step * step);
  }

  std::string_view text() const { return {bytes_.data(), size_}; }
  PaddedView view() const { return {bytes_.data(), static_cast<std::uint32_t>(size_)}; }

  bool operator==(const PaddedText& other) const { return text() == other.text(); }

  struct Hash {
    std::size_t operator()(const PaddedText& one) const {
      return std::hash<std::string_view>()(one.text());
    }
  };

 private:
  std::string bytes_;
  std::size_t size_ = 0;
};

}  // namespace heelrule
