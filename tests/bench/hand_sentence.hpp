// Part of the scorer that is written by hand (see hand_writer.hpp): what it says of a finding.
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "hand_judge.hpp"

namespace thirty {

class Sentences {
 public:
  Sentences(const Judged& judged, const Words& words) : judged_(judged), words_(words) {}

  void begin(const Record& record, std::string& line) {
    record_ = &record;
    line_ = &line;
  }

  double value(std::size_t rule, int side) const {
    return record_->values[2 * rules[rule].trait + side];
  }

  void with_unit(double number, const TraitFacts& trait) {
    put(number / trait.per_unit);
    put_unit(number, trait);
  }

  void put_unit(double number, const TraitFacts& trait) {
    put(trait.unit == "°" ? "" : " ");
    put(number == 1 && trait.unit == "months" ? "month" : trait.unit);
  }

  void sentence(std::size_t i) {
    const Result& result = judged_.results[i];
    const TraitFacts& trait = trait_of(i);
    const auto at = static_cast<std::size_t>(result.decisive);
    const double v = value(i, result.decisive);
    const BandWords& band = words_[i].bands[static_cast<std::size_t>(result.bands[at])];
    const bool alike = trait.has_sides && value(i, 0) == value(i, 1);
    for (std::size_t piece = 0; piece + 1 < band.pieces.size(); piece += 2) {
      put(band.pieces[piece]);
      const std::string& slot = band.pieces[piece + 1];
      if (slot == "value") {
        with_unit(v, trait);
      } else if (slot == "side") {
        put(alike ? "both" : result.decisive == 0 ? "left" : "right");
      } else if (slot == "limit") {
        with_unit(band.limit, trait);
      } else if (!slot.empty()) {
        with_unit(result.distances[at], trait);
      }
    }
    if (!band.pieces.empty()) {
      return;
    }
    if (trait.has_sides) {
      put(alike ? "Both: " : result.decisive == 0 ? "Left: " : "Right: ");
    }
    with_unit(v, trait);
    put(band.sentence);
    if (band.toward != 0) {
      with_unit(result.distances[at], trait);
      put(band.sentence_end);
    }
    put(".");
  }

  void needs(std::size_t i) {
    put("It needs: ");
    lacking_.clear();
    each_missing(i, [&](int trait, int side) { lacking_.emplace_back(trait, side); });
    Text joint;
    questions(lacking_, [&](int trait, int side) {
      put(joint);
      joint = "; ";
      put_question(trait, side);
    });
    put(".");
  }

  // Calls `take(trait, side)` for each recorded value that a rule lacks; side 2: the trait has
  // none.
  template <class Take>
  void each_missing(std::size_t i, Take take) const {
    const int trait = rules[i].trait;
    if (trait < recorded_count) {
      each_missing_of(trait, take);
      return;
    }
    const DerivedFacts& facts = derived[static_cast<std::size_t>(trait - recorded_count)];
    each_missing_of(std::min(facts.a, facts.b), take);
    each_missing_of(std::max(facts.a, facts.b), take);
  }

  using Lacking = std::pair<int, int>;

  template <class Put>
  static void questions(const std::vector<Lacking>& all, Put put) {
    for (std::size_t k = 0; k < all.size(); ++k) {
      const auto [trait, side] = all[k];
      if (side == 2) {
        put(trait, 2);
        continue;
      }
      const bool both = std::find(all.begin(), all.end(), Lacking{trait, 1 - side}) != all.end();
      const bool first = std::find_if(all.begin(), all.end(), [t = trait](const Lacking& lacking) {
                           return lacking.first == t;
                         }) == all.begin() + static_cast<std::ptrdiff_t>(k);
      if (first) {
        put(trait, both ? 2 : side);
      }
    }
  }

  void put_question(int trait, int side) {
    put(traits[static_cast<std::size_t>(trait)].title);
    put(side == 2 ? "" : side == 0 ? " (left)" : " (right)");
  }

 private:
  void put(Text text) { line_->append(text); }
  void put(double number) { append_shortest(*line_, number); }

  template <class Take>
  void each_missing_of(int trait, Take take) const {
    const bool has_sides = traits[static_cast<std::size_t>(trait)].has_sides;
    for (int side = 0; side < (has_sides ? 2 : 1); ++side) {
      const double v = record_->values[2 * trait + side];
      if (v != v) {
        take(trait, has_sides ? side : 2);
      }
    }
  }

  const Judged& judged_;
  const Words& words_;
  std::vector<Lacking> lacking_;
  const Record* record_ = nullptr;
  std::string* line_ = nullptr;
};

}  // namespace thirty
