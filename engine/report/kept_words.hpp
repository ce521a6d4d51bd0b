// Words about contributions, kept by all that they depend on, and told of the rows of a block.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <string>
#include <unordered_set>
#include <vector>

#include "engine/report/growing_text.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/report/scattered.hpp"
#include "engine/scoring/rows.hpp"

namespace heelrule {

/// What words about a contribution depend on: the values of its sides, bit by bit, and what is open
/// where something was not seen.
struct WordCase {
  std::uint64_t first = 0;
  std::uint64_t second = 0;
  std::uint32_t open = 0;
};

/// The values of a contribution's sides in the rows of a block.
class ValueBits {
 public:
  ValueBits(const Contribution& contribution, const Block& block)
      : first_(column(contribution.values[0], block)),
        second_(column(contribution.values[1], block)) {}

  WordCase of(std::size_t row, std::uint32_t open) const {
    return {std::bit_cast<std::uint64_t>((*first_)[row]),
            std::bit_cast<std::uint64_t>((*second_)[row]), open};
  }

 private:
  static constexpr Column none{};
  static const Column* column(Register value, const Block& block) {
    return value == no_register ? &none : &block.column(value);
  }

  const Column* first_;
  const Column* second_;
};

/// Tells of the contributions of a program, row by row, in entries of a JSON list. Cases are many,
/// since two feet have many pairs of values, and words few, since they speak of one; so each case
/// has a place, and the same words are kept once.
class KeptWords {
 public:
  explicit KeptWords(std::size_t contributions) : cases_(contributions) {}

  /// Begins a block, of which nothing is told yet.
  void begin();

  /// Tells of each of `rows` in the words of its case, which is `case_of(row)`. Those that are not
  /// there yet are made by `make(row)`, with a comma behind each entry; the same case must always
  /// have the same words, and may have none.
  template <class CaseOf, class Make>
  void tell(std::size_t contribution, Rows rows, CaseOf case_of, Make make) {
    // The places of all rows are asked for before any is looked at, since they lie far apart.
    Cases& cases = cases_[contribution];
    std::size_t count = 0;
    for_each_row(rows, [&](std::size_t row) {
      const WordCase of = case_of(row);
      const std::uint64_t mixed = KeptWords::mixed(of);
      __builtin_prefetch(&cases.places[place_among(mixed, cases.bits)]);
      met_[count++] = {of, mixed, row};
    });
    for (std::size_t i = 0; i < count; ++i) {
      const Met& met = met_[i];
      const Kept& kept = cases.places[cases.place(met)];
      add(met.row, kept.data != nullptr ? PaddedView{kept.data, kept.size}
                                        : keep(cases, met, make(met.row)));
    }
  }

  /// The same of one row, in words that no other has.
  void tell_once(std::size_t row, std::string words) {
    add(row, once_.emplace_back(std::move(words)).view());
  }

  /// Whether there is anything to tell of a row of the block.
  bool has(std::size_t row) const { return !told_[row].empty(); }

  /// Appends what was told of a row, without the brackets around it.
  void append(std::size_t row, GrowingText& line) const;

 private:
  // Two of them fill a line of the cache.
  struct Kept {
    std::uint64_t first = 0;
    std::uint64_t second = 0;
    std::uint32_t open = 0;
    std::uint32_t size = 0;
    const char* data = nullptr;  // none: the place is free

    bool is_of(const WordCase& other) const {
      return ((first ^ other.first) | (second ^ other.second) | (open ^ other.open)) == 0;
    }
  };

  struct Met {
    WordCase of;
    std::uint64_t mixed = 0;
    std::size_t row = 0;
  };

  // The cases of one contribution.
  struct Cases {
    // Where a case is kept, or the free place where it belongs.
    std::size_t place(const Met& met) const {
      std::size_t at = place_among(met.mixed, bits);
      while (places[at].data != nullptr && !places[at].is_of(met.of)) {
        at = (at + 1) & (places.size() - 1);
      }
      return at;
    }
    void make_room();

    unsigned bits = 3;
    std::vector<Kept> places = std::vector<Kept>(std::size_t{1} << bits);
    std::size_t count = 0;
  };

  static std::uint64_t mixed(const WordCase& of) {
    return scattered(of.first + scattered(of.second + of.open));
  }

  void add(std::size_t row, PaddedView entries) {
    if (entries.size > 0) {
      told_[row].push_back(entries);
    }
  }

  PaddedView keep(Cases& cases, const Met& met, std::string words);

  std::vector<Cases> cases_;
  std::unordered_set<PaddedText, PaddedText::Hash> words_;
  std::size_t size_of_words_ = 0;
  std::deque<PaddedText> once_;
  std::array<std::vector<PaddedView>, block_rows> told_;
  std::array<Met, block_rows> met_{};
};

}  // namespace heelrule
