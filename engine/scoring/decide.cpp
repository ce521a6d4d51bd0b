#include "engine/scoring/decide.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "engine/formula/operation.hpp"
#include "engine/scoring/find.hpp"
#include "engine/scoring/grade_reach.hpp"

namespace heelrule {
namespace {

class Decision {
 public:
  Decision(const Program& program, const Block& block, std::size_t row, Verdict& verdict)
      : program_(program), block_(block), row_(row), verdict_(verdict) {}

  void decide() {
    forget();
    decide_briefly();
    find_all();
    gather_advice();
    if (!verdict_.stands) {
      list_what_would_settle();
    }
    add_up_sections();
  }

  void decide_briefly() {
    grade();
    answer_safety();
  }

 private:
  using Sides = std::span<const Side>;

  // A verdict that is decided anew keeps the memory of its lists.
  void forget() {
    verdict_.findings.resize(program_.contributions.size());
    for (auto* spoken :
         {&verdict_.referrals, &verdict_.cautions, &verdict_.advice, &verdict_.held_advice}) {
      spoken->clear();
    }
    verdict_.would_settle.clear();
  }

  double at(Register index) const { return block_.column(index)[row_]; }

  void grade() {
    const Outcome outcome = block_.outcome(row_);
    verdict_.score = {outcome.earned, outcome.weight, outcome.open_weight};
    const GradeReach reach = grade_reach(program_, outcome);
    verdict_.uncapped = reach.by_score;
    verdict_.grade = reach.grade;
    verdict_.lowest_grade = reach.lowest;
    verdict_.highest_grade = reach.highest;
    verdict_.stands = reach.grade && reach.lowest == reach.highest && outcome.open_musts == 0;
  }

  void find_all() {
    for (std::size_t i = 0; i < program_.contributions.size(); ++i) {
      Finding& found = verdict_.findings[i];
      find(program_, block_, row_, i, found);
      if (program_.contributions[i].voice.warns) {
        warn(program_, i, found, &SpokenWords::referral, verdict_.referrals);
        warn(program_, i, found, &SpokenWords::caution, verdict_.cautions);
      }
      weigh(program_.contributions[i], found);
    }
  }

  // What a finding does to the score and to the grade.
  void weigh(const Contribution& contribution, Finding& found) const {
    const bool lacks_credit = found.status == Status::part || found.status == Status::fail;
    if (lacks_credit) {
      found.gain = gain_of(contribution, found.credit);
    }
    if (found.status == Status::fail && contribution.cap > 0) {
      found.cap = static_cast<std::size_t>(contribution.cap);
    }
  }

  double gain_of(const Contribution& contribution, double credit) const {
    const double weight = verdict_.score.weight;
    return weight > 0 ? contribution.weight * (full_credit - credit) / weight / 10'000 : 0;
  }

  static Sides all_sides(const TraitProgram& trait) {
    static constexpr std::array<Side, 3> sides{Side::none, Side::left, Side::right};
    return trait.has_sides ? Sides(sides).subspan(1) : Sides(sides).first(1);
  }

  void add_up_sections() {
    verdict_.sections.assign(program_.rules.sections.size(), {});
    for (const Finding& found : verdict_.findings) {
      Score& section = verdict_.sections[program_.rule_programs[found.rule].section];
      if (found.status == Status::not_seen) {
        section.open_weight += found.weight;
      } else if (found.status != Status::does_not_apply) {
        section.earned += found.weight * found.credit;
        section.weight += found.weight;
      }
    }
  }

  void answer_safety() {
    verdict_.safety.resize(program_.rules.safety.size());
    for (std::size_t i = 0; i < program_.rules.safety.size(); ++i) {
      const TraitProgram& trait = program_.traits[program_.rules.safety[i].trait];
      SafetyAnswer& answer = verdict_.safety[i];
      answer.question = i;
      answer.yes = false;
      answer.asked = true;
      answer.sides.clear();
      for (const Side side : all_sides(trait)) {
        const double value = at(trait.values[static_cast<std::size_t>(side)]);
        if (value == 1) {
          answer.yes = true;
          answer.sides.push_back(side);
        }
        answer.asked = answer.asked && operation::is_seen(value);
      }
      answer.asked = answer.asked || answer.yes;
    }
  }

  void gather_advice() {
    for (std::size_t i = 0; i < verdict_.findings.size(); ++i) {
      const Finding& found = verdict_.findings[i];
      if (!program_.contributions[i].voice.advises || found.status == Status::not_seen ||
          !has_words(found)) {
        continue;
      }
      const RuleProgram& rule = program_.rule_programs[found.rule];
      if (found.status != Status::pass) {
        advise(i, rule.words, std::nullopt);
      }
      advise(i, rule.band_words[found.readings[found.decisive].band], found.decisive);
    }
    const auto by_gain = [&](const Spoken& a, const Spoken& b) {
      const auto key = [&](const Spoken& spoken) {
        const Finding& found = verdict_.findings[spoken.finding];
        return std::pair(!found.cap.has_value(), -found.gain);
      };
      return key(a) < key(b);
    };
    std::stable_sort(verdict_.advice.begin(), verdict_.advice.end(), by_gain);
    if (verdict_.refers()) {
      hold_advice_back();
    }
  }

  void advise(std::size_t finding, const SpokenWords& words, std::optional<std::size_t> reading) {
    if (!words.advice.empty()) {
      verdict_.advice.push_back({finding, reading});
    }
  }

  void hold_advice_back() {
    const auto may_stand = [&](const Spoken& spoken) {
      return program_.rules.rules[verdict_.findings[spoken.finding].rule].despite_referral;
    };
    const auto held =
        std::stable_partition(verdict_.advice.begin(), verdict_.advice.end(), may_stand);
    verdict_.held_advice.assign(held, verdict_.advice.end());
    verdict_.advice.erase(held, verdict_.advice.end());
  }

  void list_what_would_settle() {
    std::vector<const Finding*> open;
    const auto is_must = [&](const Finding& found) {
      return program_.rules.rules[found.rule].caps.has_value();
    };
    for (const Finding& found : verdict_.findings) {
      if (found.status == Status::not_seen && (found.weight > 0 || is_must(found))) {
        open.push_back(&found);
      }
    }
    // Where every open score leads to the same grade, the musts alone keep it open.
    if (verdict_.grade && verdict_.lowest_grade == verdict_.highest_grade) {
      std::erase_if(open, [&](const Finding* found) { return !is_must(*found); });
    }
    std::stable_sort(open.begin(), open.end(), [&](const Finding* a, const Finding* b) {
      return std::pair(!is_must(*a), -a->weight) < std::pair(!is_must(*b), -b->weight);
    });
    for (const Finding* found : open) {
      for (const Missing& missing : found->missing) {
        auto& list = verdict_.would_settle;
        if (std::find(list.begin(), list.end(), missing) == list.end()) {
          list.push_back(missing);
        }
      }
    }
  }

  const Program& program_;
  const Block& block_;
  std::size_t row_;
  Verdict& verdict_;
};

}  // namespace

Verdict decide(const Program& program, const Block& block, std::size_t row) {
  Verdict verdict;
  decide(program, block, row, verdict);
  return verdict;
}

void decide(const Program& program, const Block& block, std::size_t row, Verdict& verdict) {
  Decision(program, block, row, verdict).decide();
}

void decide_briefly(const Program& program, const Block& block, std::size_t row, Verdict& verdict) {
  Decision(program, block, row, verdict).decide_briefly();
}

}  // namespace heelrule
