// Part of the scorer that is written by hand (see hand_writer.hpp): from numbers to credit and
// sums.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>

#include "hand_record.hpp"
#include "hand_words.hpp"

namespace thirty {

using Words = std::array<RuleWords, rule_count>;

// What a rule came to in one record.
struct Result {
  double credit;  // in millionths; below 0: not seen
  std::array<double, 2> credits;
  std::array<int, 2> bands;
  std::array<double, 2> distances;
  int decisive;
  double gain;
};

inline const TraitFacts& trait_of(std::size_t rule) {
  return traits[static_cast<std::size_t>(rules[rule].trait)];
}

struct Judged {
  std::array<Result, rule_count> results{};
  double earned = 0;
  double weight = 0;
  double open = 0;
  std::array<double, sections.size()> section_earned{};
  std::array<double, sections.size()> section_weight{};
  std::array<double, sections.size()> section_open{};
  int cap = 0;
  int open_cap = 0;
  int open_musts = 0;

  void judge(const Record& record, const Words& words) {
    earned = weight = open = 0;
    cap = open_cap = 0;
    open_musts = 0;
    section_earned.fill(0);
    section_weight.fill(0);
    section_open.fill(0);
    for (std::size_t i = 0; i < rule_count; ++i) {
      judge(i, record, words[i], results[i]);
      const double share = rules[i].weight * 1000;
      const std::size_t section = words[i].section;
      const double credit = results[i].credit;
      (credit < 0 ? open : weight) += share;
      (credit < 0 ? section_open : section_weight)[section] += share;
      if (credit >= 0) {
        earned += share * credit;
        section_earned[section] += share * credit;
      }
      if (rules[i].cap > 0) {
        cap = credit == 0 ? std::max(cap, rules[i].cap) : cap;
        open_cap = credit <= 0 ? std::max(open_cap, rules[i].cap) : open_cap;
        open_musts += credit < 0 ? 1 : 0;
      }
    }
    for (std::size_t i = 0; i < rule_count; ++i) {
      results[i].gain = results[i].credit < 0
                            ? 0
                            : rules[i].weight * 1000 * (1e6 - results[i].credit) / weight / 10'000;
    }
  }

  static void judge(std::size_t i, const Record& record, const RuleWords& prepared,
                    Result& result) {
    const RuleFacts& rule = rules[i];
    const int sides = trait_of(i).has_sides ? 2 : 1;
    for (int side = 0; side < sides; ++side) {
      const auto at = static_cast<std::size_t>(side);
      const double v = record.values[2 * rule.trait + side];
      if (v != v) {
        result.credits[at] = -1;
        continue;
      }
      const int band = band_of(static_cast<int>(i), v);
      result.bands[at] = band;
      result.credits[at] = rule.bands[static_cast<std::size_t>(band)].credit;
      const BandWords& words = prepared.bands[static_cast<std::size_t>(band)];
      result.distances[at] = words.toward == 0 ? 0 : std::fabs(settled(words.limit - v));
    }
    if (sides == 1) {
      result.credit = result.credits[0];
      result.decisive = 0;
      return;
    }
    const auto [a, b] = result.credits;
    result.credit = rule.is_mean       ? (a < 0 || b < 0 ? -1 : (a + b) / 2)
                    : a == 0 || b == 0 ? 0
                    : a < 0 || b < 0   ? -1
                                       : std::min(a, b);
    result.decisive = a < 0                                                            ? 1
                      : b < 0                                                          ? 0
                      : b < a || (b == a && result.distances[1] > result.distances[0]) ? 1
                                                                                       : 0;
  }

  bool speaks(std::size_t i) const {
    const Result& result = results[i];
    if (result.credit >= 0) {
      return result.credit < 1e6;
    }
    return trait_of(i).has_sides && std::max(result.credits[0], result.credits[1]) >= 0 &&
           std::max(result.credits[0], result.credits[1]) < 1e6;
  }
};

}  // namespace thirty
