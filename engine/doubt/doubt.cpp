#include "engine/doubt/doubt.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/doubt/conformity.hpp"
#include "engine/doubt/linear.hpp"
#include "engine/doubt/tally.hpp"
#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

constexpr double rarely = 0.01;        // of the draws
constexpr double least_effect = 0.01;  // of the variance: less is not worth taking a reading again

double share(std::size_t count, std::size_t all) {
  return all == 0 ? 0 : static_cast<double>(count) / static_cast<double>(all);
}

class Judge {
 public:
  Judge(const Program& program, const Inspection& inspection, const Verdict& verdict)
      : program_(program), inspection_(inspection), verdict_(verdict) {
    doubt_.readings = doubtful_readings(program, inspection);
    Block block(program);
    fill_rows(program, inspection, block);
    evaluate(program, block);
    uncertainties_ = linear_uncertainties(program, block, doubt_.readings);
    watch();
    tally_ = tally(program, inspection, doubt_.readings, watched_);
  }

  Doubt judge() {
    doubt_.draws = tally_.draws;
    for (const GradeCount& count : tally_.grades) {
      doubt_.grades.push_back({share(count.given, tally_.draws), share(count.surely, tally_.draws),
                               share(count.possibly, tally_.draws)});
    }
    for (std::size_t i = 0; i < verdict_.findings.size(); ++i) {
      doubt_.findings.push_back(judge(i));
    }
    if (verdict_.grade && !program_.rules.changes.empty()) {
      doubt_.better = better_grades(program_, inspection_, *verdict_.grade);
    }
    const std::vector<std::size_t> live = live_readings();
    if (verdict_.grade && !live.empty()) {
      look_into(live, *verdict_.grade);
    }
    return std::move(doubt_);
  }

 private:
  // The readings that made a difference to any finding.
  std::vector<std::size_t> live_readings() const {
    std::vector<std::size_t> live;
    for (std::size_t i = 0; i < doubt_.readings.size(); ++i) {
      for (std::size_t f = 0; f < tally_.findings.size(); ++f) {
        if (tally_.findings[f].varies && needs(program_.contributions[f].rule, i)) {
          live.push_back(i);
          break;
        }
      }
    }
    return live;
  }

  void look_into(const std::vector<std::size_t>& live, std::size_t grade) {
    std::vector<DoubtfulReading> readings;
    readings.reserve(live.size());
    for (const std::size_t i : live) {
      readings.push_back(doubt_.readings[i]);
    }
    const bool varies = doubt_.grades[grade].chance <= 1 - rarely;
    doubt_.target = varies ? Target::grade : Target::score;
    const std::vector<Effect> found = effects(program_, inspection_, readings, doubt_.target);
    for (std::size_t i = 0; i < live.size(); ++i) {
      doubt_.take_again.push_back({live[i], found[i]});
    }
    const auto worth = [](const ReadingEffect& one) {
      // In steps of a hundredth: closer than that a share is not known.
      return std::pair(std::round(one.effect.first * 100), one.effect.total);
    };
    std::stable_sort(
        doubt_.take_again.begin(), doubt_.take_again.end(),
        [&](const ReadingEffect& a, const ReadingEffect& b) { return worth(a) > worth(b); });
    find_fewest(grade);
    std::erase_if(doubt_.take_again,
                  [](const ReadingEffect& one) { return one.effect.total < least_effect; });
  }

  // The readings of most effect are tried first, so that of two sets the likelier is told.
  void find_fewest(std::size_t grade) {
    std::vector<DoubtfulReading> readings;
    readings.reserve(doubt_.take_again.size());
    for (const ReadingEffect& one : doubt_.take_again) {
      readings.push_back(doubt_.readings[one.reading]);
    }
    doubt_.fewest = fewest_readings(program_, inspection_, readings, grade);
    if (doubt_.fewest.move) {
      for (OffReading& off : doubt_.fewest.move->readings) {
        off.reading = doubt_.take_again[off.reading].reading;
      }
    }
  }

  Register value_of(const Finding& finding, Side side) const {
    const std::uint32_t trait = program_.rule_programs[finding.rule].trait;
    return program_.traits[trait].values[static_cast<std::size_t>(side)];
  }

  void watch() {
    for (const Finding& finding : verdict_.findings) {
      for (const SideReading& reading : finding.readings) {
        watched_.push_back(
            {value_of(finding, reading.side), static_cast<std::uint32_t>(finding.rule)});
      }
    }
  }

  FindingDoubt judge(std::size_t index) {
    const Finding& finding = verdict_.findings[index];
    FindingDoubt found;
    for (const SideReading& reading : finding.readings) {
      found.sides.push_back(judge(finding, reading, tally_.values[next_value_++]));
    }
    found.in_doubt = needs_a_doubtful_reading(finding.rule);
    found.chances = chances(index, found);
    found.sure = sure(finding.status, found.chances);
    found.is_clear = !found.in_doubt || found.sure >= program_.rules.decision.clear_from;
    return found;
  }

  SideDoubt judge(const Finding& finding, const SideReading& reading, const ValueCount& count) {
    const CreditScale& scale = program_.rule_programs[finding.rule].scale;
    const Rule& rule = program_.rules.rules[finding.rule];
    const auto exact = uncertainties_[value_of(finding, reading.side)];
    SideDoubt side;
    if (exact) {
      side.uncertainty = *exact;
      side.bands = band_chances(scale, reading.value, *exact);
    } else {
      side.uncertainty = rule.bands.empty() ? 0 : count.deviation();
      side.bands = level_chances(finding, reading).value_or(shares(count));
    }
    if (rule.protects && !rule.bands.empty()) {
      side.guarded =
          guarded_band(scale, reading.value, program_.rules.decision.guard * side.uncertainty);
    }
    return side;
  }

  std::vector<double> shares(const ValueCount& count) const {
    std::vector<double> all;
    all.reserve(count.bands.size());
    for (const std::size_t band : count.bands) {
      all.push_back(share(band, tally_.draws));
    }
    return all;
  }

  // Of a level that is itself in doubt.
  std::optional<std::vector<double>> level_chances(const Finding& finding,
                                                   const SideReading& reading) const {
    const Register value = value_of(finding, reading.side);
    for (const DoubtfulReading& one : doubt_.readings) {
      const auto* off = std::get_if<OneLevelOff>(&one.doubt);
      if (off != nullptr &&
          std::find(one.inputs.begin(), one.inputs.end(), value) != one.inputs.end()) {
        return chances_of_levels(static_cast<std::size_t>(one.value), *off);
      }
    }
    return std::nullopt;
  }

  static std::vector<double> chances_of_levels(std::size_t level, const OneLevelOff& off) {
    std::vector<double> chances(off.highest + 1, 0.0);
    const double half = off.chance / 2;
    chances[level] = 1;
    if (level > 0) {
      chances[level - 1] = half;
      chances[level] -= half;
    }
    if (level < off.highest) {
      chances[level + 1] = half;
      chances[level] -= half;
    }
    return chances;
  }

  // Whether a rule depends on one of the readings in doubt.
  bool needs(std::size_t rule, std::size_t reading) const {
    const std::vector<Register> needed = inputs_needed(program_, rule);
    const std::vector<Register>& read = doubt_.readings[reading].inputs;
    return std::find_first_of(needed.begin(), needed.end(), read.begin(), read.end()) !=
           needed.end();
  }

  bool needs_a_doubtful_reading(std::size_t rule) const {
    for (std::size_t i = 0; i < doubt_.readings.size(); ++i) {
      if (needs(rule, i)) {
        return true;
      }
    }
    return false;
  }

  // Of one value by itself the chances of its bands say all, to the last digit; of two sides, and
  // where it is open whether the rule applies, draws tell.
  StatusChances chances(std::size_t index, const FindingDoubt& found) const {
    const Contribution& contribution = program_.contributions[index];
    const Finding& finding = verdict_.findings[index];
    const bool is_exact = contribution.joining == Joining::single && found.sides.size() == 1 &&
                          contribution.applies == no_register &&
                          uncertainties_[value_of(finding, finding.readings[0].side)] > 0.0;
    return is_exact ? by_bands(finding, found.sides[0]) : by_draws(tally_.findings[index]);
  }

  StatusChances by_bands(const Finding& finding, const SideDoubt& side) const {
    const CreditScale& scale = program_.rule_programs[finding.rule].scale;
    StatusChances chances;
    for (std::size_t band = 0; band < side.bands.size(); ++band) {
      const Credit& credit = scale.credits[band];
      double& into = credit.is_ramp()             ? chances.part
                     : credit.from == full_credit ? chances.pass
                     : credit.from == 0           ? chances.fail
                                                  : chances.part;
      into += side.bands[band];
    }
    return chances;
  }

  StatusChances by_draws(const FindingCount& count) const {
    const auto of = [&](Status status) {
      return share(count.statuses[static_cast<std::size_t>(status)], tally_.draws);
    };
    return {of(Status::pass), of(Status::part), of(Status::fail),
            of(Status::not_seen) + of(Status::does_not_apply)};
  }

  static double sure(Status status, const StatusChances& chances) {
    switch (status) {
      case Status::pass:
        return chances.pass;
      case Status::part:
        return chances.part;
      case Status::fail:
        return chances.fail;
      case Status::not_seen:
      case Status::does_not_apply:
        return chances.open;
    }
    return 0;
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  Doubt doubt_;
  std::vector<std::optional<double>> uncertainties_;
  std::vector<Watched> watched_;
  Tally tally_;
  std::size_t next_value_ = 0;
};

}  // namespace

Doubt doubt_of(const Program& program, const Inspection& inspection, const Verdict& verdict) {
  return Judge(program, inspection, verdict).judge();
}

}  // namespace heelrule
