#include "engine/scoring/decide.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "engine/formula/operation.hpp"
#include "engine/scoring/grade_reach.hpp"
#include "engine/scoring/joining.hpp"
#include "engine/scoring/limit.hpp"

namespace heelrule {
namespace {

class Decision {
 public:
  Decision(const Program& program, const Block& block, std::size_t row, Detail detail,
           Verdict& verdict)
      : program_(program), block_(block), row_(row), detail_(detail), verdict_(verdict) {}

  void decide() {
    forget();
    grade();
    answer_safety();
    switch (detail_) {
      case Detail::full:
        find_all();
        break;
      case Detail::failed:
        find_told();
        break;
      case Detail::brief:
        find_warning();
        break;
    }
  }

 private:
  using Sides = std::span<const Side>;

  // A verdict that is decided anew keeps the memory of its lists.
  void forget() {
    verdict_.findings.resize(program_.contributions.size());
    verdict_.safety.resize(program_.rules.safety.size());
    verdict_.grade.reset();
    verdict_.uncapped.reset();
    for (auto* spoken :
         {&verdict_.referrals, &verdict_.cautions, &verdict_.advice, &verdict_.held_advice}) {
      spoken->clear();
    }
    verdict_.lacking.clear();
    verdict_.would_settle.clear();
  }

  double at(Register index) const { return block_.column(index)[row_]; }
  bool seen(Register index) const { return operation::is_seen(at(index)); }

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
    for (std::uint32_t i = 0; i < program_.contributions.size(); ++i) {
      Finding& found = verdict_.findings[i];
      find_and_warn(i);
      weigh(program_.contributions[i], found);
      if (found.status != Status::pass && found.status != Status::does_not_apply) {
        verdict_.lacking.push_back(i);
      }
    }
    gather_advice();
    if (!verdict_.stands) {
      list_what_would_settle();
    }
    add_up_sections();
  }

  // Which findings are told of differs from row to row. To list them without a branch is quicker
  // than to guess at each.
  void find_told() {
    std::vector<std::uint32_t>& told = verdict_.lacking;
    told.resize(program_.contributions.size());
    std::size_t count = 0;
    for (std::uint32_t i = 0; i < program_.contributions.size(); ++i) {
      const Contribution& contribution = program_.contributions[i];
      const double applies = applies_to(contribution, block_, row_);
      const bool passes =
          (applies == 1) & (joined_credit(contribution, block_, row_) == full_credit);
      told[count] = i;
      count += ((applies != 0) & (!passes | contribution.voice.warns_by_band)) ? 1 : 0;
    }
    std::size_t lacking = 0;
    for (std::size_t i = 0; i < count; ++i) {
      find_and_warn(told[i]);
      told[lacking] = told[i];
      lacking += verdict_.findings[told[i]].status != Status::pass ? 1 : 0;
    }
    told.resize(lacking);
  }

  // Where the words are the same of every reading, it is enough to know that they are said. What
  // lacks credit is no part of a brief verdict; its list serves for those that warn meanwhile.
  void find_warning() {
    std::vector<std::uint32_t>& told = verdict_.lacking;
    told.resize(program_.warning.size());
    std::size_t count = 0;
    for (const std::uint32_t i : program_.warning) {
      const Contribution& contribution = program_.contributions[i];
      told[count] = i;
      count += (lacks_credit(contribution) | !contribution.voice.warns_alike) ? 1 : 0;
    }
    for (std::size_t i = 0; i < count; ++i) {
      const Contribution& contribution = program_.contributions[told[i]];
      if (contribution.voice.warns_alike) {
        warn(told[i], program_.rule_programs[contribution.rule].words, std::nullopt);
      } else {
        find_and_warn(told[i]);
      }
    }
    told.clear();
  }

  // Whether a contribution applies, and one of its sides was seen and lacks credit.
  bool lacks_credit(const Contribution& contribution) const {
    const double first = at(contribution.credits[0]);
    const double second =
        contribution.credits[1] == no_register ? first : at(contribution.credits[1]);
    return ((first < full_credit) | (second < full_credit)) &
           (applies_to(contribution, block_, row_) == 1);
  }

  void find_and_warn(std::uint32_t index) {
    const Contribution& contribution = program_.contributions[index];
    find(contribution, verdict_.findings[index]);
    if (contribution.voice.warns) {
      gather_warnings(index, verdict_.findings[index]);
    }
  }

  void find(const Contribution& contribution, Finding& found) const {
    const double applies = applies_to(contribution, block_, row_);
    const double credit = joined_credit(contribution, block_, row_);
    found.status = status_of(applies, credit);
    found.readings.clear();
    if (detail_ == Detail::brief && !warns(contribution.voice, found.status)) {
      return;
    }
    found.rule = contribution.rule;
    found.side = contribution.side;
    found.weight = contribution.weight;
    found.credit = is_judged(found.status) ? credit : 0;
    found.whether_it_applies_is_open = applies != 1 && applies != 0;
    found.decisive = 0;
    found.sides_alike = false;
    found.cannot_be_worked_out = false;
    found.missing.clear();
    if (found.status != Status::does_not_apply) {
      read_sides(contribution, found);
    }
    if (found.status == Status::not_seen && detail_ != Detail::brief) {
      list_missing(contribution, found);
    }
  }

  // What a finding does to the score and to the grade.
  void weigh(const Contribution& contribution, Finding& found) const {
    const bool lacks_credit = found.status == Status::part || found.status == Status::fail;
    found.gain = lacks_credit ? gain_of(contribution, found.credit) : 0;
    found.cap.reset();
    if (found.status == Status::fail && contribution.cap > 0) {
      found.cap = static_cast<std::size_t>(contribution.cap);
    }
  }

  static bool warns(const Voice& voice, Status status) {
    return status == Status::pass ? voice.warns_by_band : status != Status::does_not_apply;
  }

  double gain_of(const Contribution& contribution, double credit) const {
    const double weight = verdict_.score.weight;
    return weight > 0 ? contribution.weight * (full_credit - credit) / weight / 10'000 : 0;
  }

  static Sides all_sides(const TraitProgram& trait) {
    static constexpr std::array<Side, 3> sides{Side::none, Side::left, Side::right};
    return trait.has_sides ? Sides(sides).subspan(1) : Sides(sides).first(1);
  }

  // Whose is the one or the other of a contribution's values.
  static Side side_of(const Contribution& contribution, std::size_t which) {
    const bool has_both = contribution.values[1] != no_register;
    return has_both ? std::array{Side::left, Side::right}.at(which) : contribution.side;
  }

  void read_sides(const Contribution& contribution, Finding& found) const {
    const RuleProgram& rule = program_.rule_programs[contribution.rule];
    for (std::size_t i = 0; i < contribution.values.size(); ++i) {
      const Register value = contribution.values[i];
      if (value == no_register || !seen(value)) {
        continue;
      }
      SideReading& reading = found.readings.emplace_back();
      reading.side = side_of(contribution, i);
      reading.value = at(value);
      reading.band = rule.scale.band(reading.value);
      reading.credit = at(contribution.credits[i]);
    }
    found.sides_alike =
        found.readings.size() == 2 && found.readings[0].value == found.readings[1].value;
    const bool both_judged = is_judged(found.status) && found.readings.size() == 2;
    found.decisive = both_judged && is_worse(rule, found.readings[1], found.readings[0]) ? 1 : 0;
  }

  // The words speak of the side with less credit; of equals, of the one further from a better band.
  static bool is_worse(const RuleProgram& rule, const SideReading& a, const SideReading& b) {
    if (a.credit != b.credit || a.value == b.value) {
      return a.credit < b.credit;
    }
    const auto distance = [&](const SideReading& reading) {
      const auto limit = limit_of(rule, reading);
      return limit ? limit->distance : 0;
    };
    return distance(a) > distance(b);
  }

  void add_missing(const std::vector<Register>& needs, std::vector<Missing>& missing) const {
    for (const Register input : needs) {
      if (!seen(input)) {
        missing.push_back({program_.inputs[input].input.trait, program_.inputs[input].side});
      }
    }
  }

  void list_missing(const Contribution& contribution, Finding& found) const {
    const RuleProgram& rule = program_.rule_programs[contribution.rule];
    if (found.whether_it_applies_is_open) {
      add_missing(rule.applies_needs, found.missing);
    }
    for (std::size_t i = 0; i < contribution.values.size(); ++i) {
      const Register value = contribution.values[i];
      if (value != no_register && !seen(value)) {
        const auto side = static_cast<std::size_t>(side_of(contribution, i));
        add_missing(program_.traits[rule.trait].needs[side], found.missing);
      }
    }
    std::sort(found.missing.begin(), found.missing.end());
    found.missing.erase(std::unique(found.missing.begin(), found.missing.end()),
                        found.missing.end());
    found.cannot_be_worked_out = found.missing.empty();
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

  // What is said: a band's words where a value lies in it, a rule's where it does not pass in full.
  // A caution or referral of either side counts, whichever side decides, and also where the other
  // side was not seen.
  void gather_warnings(std::size_t index, const Finding& found) {
    if (!has_words(found)) {
      return;
    }
    const RuleProgram& rule = program_.rule_programs[found.rule];
    for (std::size_t side = 0; side < found.readings.size(); ++side) {
      const std::size_t band = found.readings[side].band;
      const bool said = found.readings[found.decisive].band == band && side != found.decisive;
      if (!said) {
        warn(index, rule.band_words[band], side);
      }
    }
    if (cannot_pass(found)) {
      warn(index, rule.words, std::nullopt);
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

  static bool has_words(const Finding& found) {
    return !found.whether_it_applies_is_open && !found.readings.empty();
  }

  // Whatever a side that was not seen would earn: one that was seen lacks some of its credit.
  static bool cannot_pass(const Finding& found) {
    return found.status != Status::pass &&
           std::any_of(found.readings.begin(), found.readings.end(),
                       [](const SideReading& reading) { return reading.credit < full_credit; });
  }

  void warn(std::size_t finding, const SpokenWords& words, std::optional<std::size_t> reading) {
    if (!words.referral.empty()) {
      verdict_.referrals.push_back({finding, reading});
    }
    if (!words.caution.empty()) {
      verdict_.cautions.push_back({finding, reading});
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
  Detail detail_;
  Verdict& verdict_;
};

}  // namespace

Verdict decide(const Program& program, const Block& block, std::size_t row) {
  Verdict verdict;
  decide(program, block, row, Detail::full, verdict);
  return verdict;
}

void decide(const Program& program, const Block& block, std::size_t row, Detail detail,
            Verdict& verdict) {
  Decision(program, block, row, detail, verdict).decide();
}

}  // namespace heelrule
