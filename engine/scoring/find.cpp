#include "engine/scoring/find.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "engine/formula/operation.hpp"
#include "engine/scoring/joining.hpp"
#include "engine/scoring/limit.hpp"

namespace heelrule {
namespace {

// Whose is the one or the other of a contribution's values.
Side side_of(const Contribution& contribution, std::size_t which) {
  const bool has_both = contribution.values[1] != no_register;
  return has_both ? std::array{Side::left, Side::right}.at(which) : contribution.side;
}

// The words speak of the side with less credit; of equals, of the one further from a better band.
bool is_worse(const RuleProgram& rule, const SideReading& a, const SideReading& b) {
  if (a.credit != b.credit || a.value == b.value) {
    return a.credit < b.credit;
  }
  const auto distance = [&](const SideReading& reading) {
    const auto limit = limit_of(rule, reading);
    return limit ? limit->distance : 0;
  };
  return distance(a) > distance(b);
}

// Whatever a side that was not seen would earn: one that was seen lacks some of its credit.
bool cannot_pass(const Finding& found) {
  return found.status != Status::pass &&
         std::any_of(found.readings.begin(), found.readings.end(),
                     [](const SideReading& reading) { return reading.credit < full_credit; });
}

class Found {
 public:
  Found(const Program& program, const Block& block, std::size_t row,
        const Contribution& contribution, Finding& found)
      : program_(program),
        rule_(program.rule_programs[contribution.rule]),
        contribution_(contribution),
        block_(block),
        row_(row),
        found_(found) {}

  void find() {
    const double applies = applies_to(contribution_, block_, row_);
    const double credit = joined_credit(contribution_, block_, row_);
    found_.status = status_of(applies, credit);
    found_.rule = contribution_.rule;
    found_.side = contribution_.side;
    found_.weight = contribution_.weight;
    found_.credit = is_judged(found_.status) ? credit : 0;
    found_.whether_it_applies_is_open = applies != 1 && applies != 0;
    found_.cannot_be_worked_out = false;
    found_.gain = 0;
    found_.cap.reset();
    found_.missing.clear();
    read_sides();
    if (found_.status == Status::not_seen) {
      list_missing();
    }
  }

 private:
  double at(Register index) const { return block_.column(index)[row_]; }
  bool seen(Register index) const { return operation::is_seen(at(index)); }

  void read_sides() {
    found_.readings.clear();
    found_.decisive = 0;
    found_.sides_alike = false;
    if (found_.status == Status::does_not_apply) {
      return;
    }
    for (std::size_t i = 0; i < contribution_.values.size(); ++i) {
      const Register value = contribution_.values[i];
      if (value != no_register && seen(value)) {
        found_.readings.push_back({side_of(contribution_, i), at(value),
                                   rule_.scale.band(at(value)), at(contribution_.credits[i])});
      }
    }
    if (found_.readings.size() == 2) {
      const SideReading& left = found_.readings[0];
      const SideReading& right = found_.readings[1];
      found_.sides_alike = left.value == right.value;
      found_.decisive = is_judged(found_.status) && is_worse(rule_, right, left) ? 1 : 0;
    }
  }

  void add_missing(const std::vector<Register>& needs) {
    for (const Register input : needs) {
      if (!seen(input)) {
        found_.missing.push_back({program_.inputs[input].input.trait, program_.inputs[input].side});
      }
    }
  }

  void list_missing() {
    std::vector<Missing>& missing = found_.missing;
    if (found_.whether_it_applies_is_open) {
      add_missing(rule_.applies_needs);
    }
    for (std::size_t i = 0; i < contribution_.values.size(); ++i) {
      const Register value = contribution_.values[i];
      if (value != no_register && !seen(value)) {
        const auto side = static_cast<std::size_t>(side_of(contribution_, i));
        add_missing(program_.traits[rule_.trait].needs[side]);
      }
    }
    std::sort(missing.begin(), missing.end());
    missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
    found_.cannot_be_worked_out = missing.empty();
  }

  const Program& program_;
  const RuleProgram& rule_;
  const Contribution& contribution_;
  const Block& block_;
  std::size_t row_;
  Finding& found_;
};

}  // namespace

void find(const Program& program, const Block& block, std::size_t row, std::size_t contribution,
          Finding& found) {
  Found(program, block, row, program.contributions[contribution], found).find();
}

void warn(const Program& program, std::size_t contribution, const Finding& found,
          Phrase SpokenWords::* which, std::vector<Spoken>& warnings) {
  if (!has_words(found)) {
    return;
  }
  const auto add = [&](const SpokenWords& words, std::optional<std::size_t> reading) {
    if (!(words.*which).empty()) {
      warnings.push_back({contribution, reading});
    }
  };
  const RuleProgram& rule = program.rule_programs[found.rule];
  for (std::size_t side = 0; side < found.readings.size(); ++side) {
    const std::size_t band = found.readings[side].band;
    const bool said = found.readings[found.decisive].band == band && side != found.decisive;
    if (!said) {
      add(rule.band_words[band], side);
    }
  }
  if (cannot_pass(found)) {
    add(rule.words, std::nullopt);
  }
}

bool has_words(const Finding& found) {
  return !found.whether_it_applies_is_open && !found.readings.empty();
}

}  // namespace heelrule
