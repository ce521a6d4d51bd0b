#include "engine/quantity/nearest.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <vector>

namespace heelrule {
namespace {

constexpr std::size_t longest_compared = 64;

// The letters of a word as bits; two that differ by 64 share one.
std::uint64_t letters(std::string_view word) {
  std::uint64_t bits = 0;
  for (const char c : word) {
    bits |= std::uint64_t{1} << (static_cast<unsigned char>(c) % 64U);
  }
  return bits;
}

// Fewer edits than this cannot be enough: each changes the length by one at most, and which letters
// there are by two at most. Most words that are compared are far apart, and this says so at once.
std::size_t fewest_edits(std::string_view a, std::string_view b) {
  const std::size_t by_length = std::max(a.size(), b.size()) - std::min(a.size(), b.size());
  const int changed = std::popcount(letters(a) ^ letters(b));
  return std::max(by_length, (static_cast<std::size_t>(changed) + 1) / 2);
}

std::size_t edits(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1);
  std::vector<std::size_t> above(b.size() + 1);
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) {
    above[j] = j;
  }
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, change});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
        row[j] = std::min(row[j], before[j - 2] + 1);
      }
    }
    before.swap(above);
    above.swap(row);
  }
  return above[b.size()];
}

}  // namespace

void Nearest::offer(std::string_view candidate) {
  if (written_.empty() || candidate.empty() || written_.size() > longest_compared ||
      candidate.size() > longest_compared) {
    return;
  }
  const std::size_t allowed = std::clamp<std::size_t>(written_.size() / 3, 1, 3);
  if (fewest_edits(written_, candidate) > allowed) {
    return;
  }
  const std::size_t distance = edits(written_, candidate);
  const std::size_t rank = 2 * distance + (candidate.front() == written_.front() ? 0 : 1);
  // Where nothing is kept of what was written, nothing is near: `x` is not meant for `m`.
  const bool all_changed = distance >= std::max(written_.size(), candidate.size());
  if (distance <= allowed && !all_changed && (best_.empty() || rank < best_rank_)) {
    best_ = candidate;
    best_rank_ = rank;
  }
}

std::string Nearest::question() const { return found() ? "did you mean `" + best_ + "`?" : ""; }

}  // namespace heelrule
