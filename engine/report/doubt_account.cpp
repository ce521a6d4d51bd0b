#include "engine/report/doubt_account.hpp"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "engine/quantity/quantity.hpp"
#include "engine/report/chance_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

class DoubtAccountant {
 public:
  DoubtAccountant(const Program& program, const Verdict& verdict, const Doubt& doubt,
                  const Account& account, std::vector<std::string> languages)
      : program_(program),
        verdict_(verdict),
        doubt_(doubt),
        account_(account),
        languages_(std::move(languages)) {}

  DoubtAccount tell() {
    told_.grade = grade();
    tell_chances();
    for (std::size_t i = 0; i < verdict_.findings.size(); ++i) {
      told_.findings.push_back(tell_finding(verdict_.findings[i], doubt_.findings[i]));
      tell_guarded(i);
    }
    told_.within_doubt = within_doubt();
    tell_take_again();
    told_.fewest = fewest();
    if (!verdict_.refers()) {
      tell_better();
    }
    return std::move(told_);
  }

 private:
  double clear_from() const { return program_.rules.decision.clear_from; }

  const std::string& grade_name(std::size_t grade) const {
    return program_.rules.grades[grade].name.value;
  }

  std::string grade() const {
    if (doubt_.readings.empty()) {
      return "No reading that counts is in doubt.";
    }
    if (!verdict_.grade) {
      return "There is no grade, so there is nothing to be sure of.";
    }
    const double chance = doubt_.grades[*verdict_.grade].chance;
    const std::string& name = grade_name(*verdict_.grade);
    if (chance == 1) {
      return fmt::format("Whatever the doubt of the readings, the grade is {}.", name);
    }
    return fmt::format(
        "The grade takes the readings as they were recorded. By how exactly they can be read, "
        "it is {} with a chance of {}.",
        name, chance_words(chance, clear_from()));
  }

  void tell_chances() {
    if (doubt_.readings.empty() || !verdict_.grade || doubt_.grades[*verdict_.grade].surely == 1) {
      return;
    }
    for (std::size_t i = 0; i < doubt_.grades.size(); ++i) {
      const GradeDoubt& grade = doubt_.grades[i];
      if (grade.possibly > 0) {
        told_.chances.emplace_back(grade_name(i), chances(grade));
      }
    }
  }

  static std::string chances(const GradeDoubt& grade) {
    std::string words = chance_words(grade.chance);
    if (grade.surely != grade.possibly) {
      words += fmt::format("; with what was not seen {} to {}", chance_words(grade.surely),
                           chance_words(grade.possibly));
    }
    return words;
  }

  FindingDoubtAccount tell_finding(const Finding& finding, const FindingDoubt& doubt) const {
    FindingDoubtAccount told;
    told.words = in_words(finding.status, doubt);
    told.is_within_doubt = !told.words.empty() && !doubt.is_clear;
    if (!told.words.empty() && doubt.in_doubt) {
      told.sentence =
          fmt::format("Doubt: {}, {} sure{}{}.", told.words, chance_words(doubt.sure, clear_from()),
                      others(finding.status, doubt.chances), spread(finding, doubt));
    }
    return told;
  }

  // What it may be instead.
  static std::string others(Status status, const StatusChances& chances) {
    std::string words;
    const auto add = [&](Status other, double chance, std::string_view name) {
      if (status != other && chance >= 0.005) {
        words +=
            fmt::format("{}{} {}", words.empty() ? "; else " : ", ", name, chance_words(chance));
      }
    };
    add(Status::pass, chances.pass, "a pass");
    add(Status::part, chances.part, "in part");
    add(Status::fail, chances.fail, "a fail");
    add(Status::not_seen, chances.open, "open");
    return words;
  }

  // The value and its doubt, of the side that decides.
  std::string spread(const Finding& finding, const FindingDoubt& doubt) const {
    const SideDoubt& side = doubt.sides[finding.decisive];
    if (side.uncertainty == 0) {
      return {};
    }
    const TraitProgram& trait = program_.traits[program_.rule_programs[finding.rule].trait];
    return fmt::format(" (± {})", distance_words(trait.unit, 2 * side.uncertainty));
  }

  void tell_guarded(std::size_t index) {
    const Finding& finding = verdict_.findings[index];
    const FindingDoubt& doubt = doubt_.findings[index];
    for (std::size_t i = 0; i < doubt.sides.size(); ++i) {
      const auto& band = doubt.sides[i].guarded;
      if (!band) {
        continue;
      }
      const SideReading& reading = finding.readings[i];
      const RuleProgram& rule = program_.rule_programs[finding.rule];
      const std::string_view side = in_words(reading.side);
      told_.guarded.push_back(fmt::format(
          "{}{}{}: {} lies too close to {}; take it as a fail until it has been measured again.",
          account_.findings[index].title, side.empty() ? "" : ", ", side,
          value_words(program_, rule.trait, reading.value, rule.cuts),
          band_words(program_, finding.rule, *band)));
    }
  }

  // The question that a reading answers, with its side.
  std::string question(std::size_t index) const {
    const DoubtfulReading& reading = doubt_.readings[index];
    const std::string_view side = in_words(reading.side);
    return fmt::format("{}{}", program_.rules.traits[reading.trait].ask.in(languages_),
                       side.empty() ? "" : fmt::format(" ({})", side));
  }

  void tell_take_again() {
    for (const ReadingEffect& one : doubt_.take_again) {
      told_.take_again.push_back(question(one.reading));
    }
    if (told_.take_again.empty()) {
      return;
    }
    const Effect& most = doubt_.take_again.front().effect;
    const bool has_partners = std::round(most.total * 100) > std::round(most.first * 100);
    told_.take_again_first = fmt::format(
        "Take this reading again first: \"{}\". Of the doubt of the {}, {} comes from it{}.",
        told_.take_again.front(), doubt_.target == Target::grade ? "grade" : "score",
        chance_words(most.first),
        has_partners
            ? fmt::format(" alone, and {} from it together with others", chance_words(most.total))
            : "");
  }

  std::string fewest() const {
    const FewestReadings& fewest = doubt_.fewest;
    if (!fewest.move) {
      return fewest.tried == 0
                 ? std::string{}
                 : fmt::format("If {} a little off, the grade would stay.",
                               fewest.tried == 1
                                   ? std::string("any one reading were")
                                   : fmt::format("any {} readings were", fewest.tried));
    }
    std::vector<std::string> readings;
    for (const OffReading& off : fewest.move->readings) {
      const DoubtfulReading& reading = doubt_.readings[off.reading];
      readings.push_back(
          fmt::format("\"{}\", {} in place of {}", question(off.reading),
                      value_words(program_, reading.trait, a_little_off(reading, off.up), {}),
                      value_words(program_, reading.trait, reading.value, {})));
    }
    return fmt::format("{} a little off would make the grade {}: {}.",
                       readings.size() == 1 ? std::string("One reading")
                                            : fmt::format("{} readings", readings.size()),
                       grade_name(fewest.move->grade), fmt::join(readings, "; "));
  }

  // One sentence for grades that the same changes reach, and one for those out of reach.
  void tell_better() {
    std::vector<std::string_view> out_of_reach;
    for (std::size_t i = 0; i < doubt_.better.size(); ++i) {
      const BetterGrade& better = doubt_.better[i];
      if (!better.changes) {
        out_of_reach.push_back(grade_name(better.grade));
      } else if (i == 0 || doubt_.better[i - 1].changes != better.changes) {
        told_.better.push_back(way_to(better));
      }
    }
    if (!out_of_reach.empty()) {
      told_.better.insert(told_.better.begin(),
                          fmt::format("No change that the rules know of makes it {}.",
                                      fmt::join(out_of_reach, " or ")));
    }
  }

  std::string way_to(const BetterGrade& better) const {
    std::vector<std::string_view> titles;
    for (const std::size_t change : *better.changes) {
      titles.push_back(program_.rules.changes[change].title.in(languages_));
    }
    return fmt::format("To make it {}, {}: {}.", grade_name(better.grade),
                       titles.size() == 1 ? std::string("one change is enough")
                                          : fmt::format("it takes {} changes", titles.size()),
                       fmt::join(titles, "; "));
  }

  std::string within_doubt() const {
    std::size_t judged = 0;
    std::size_t doubtful = 0;
    for (const FindingDoubtAccount& finding : told_.findings) {
      judged += finding.words.empty() ? 0 : 1;
      doubtful += finding.is_within_doubt ? 1 : 0;
    }
    const std::string limit = chance_words(clear_from());
    if (doubtful == 0) {
      return judged == 0 ? "" : fmt::format("Every finding is clear: at least {} sure.", limit);
    }
    return fmt::format("{} of {} findings {} within doubt, less than {} sure; {} below.", doubtful,
                       judged, doubtful == 1 ? "is" : "are", limit,
                       doubtful == 1 ? "it says so" : "each says so");
  }

  const Program& program_;
  const Verdict& verdict_;
  const Doubt& doubt_;
  const Account& account_;
  std::vector<std::string> languages_;
  DoubtAccount told_;
};

}  // namespace

DoubtAccount doubt_account(const Program& program, const Verdict& verdict, const Doubt& doubt,
                           const Account& account, std::span<const std::string> languages) {
  return DoubtAccountant(program, verdict, doubt, account, fallback_order(languages, program.rules))
      .tell();
}

std::string_view in_words(Status status, const FindingDoubt& doubt) {
  switch (status) {
    case Status::pass:
      return doubt.is_clear ? "clear pass" : "pass within doubt";
    case Status::part:
      return doubt.is_clear ? "clearly in part" : "in part within doubt";
    case Status::fail:
      return doubt.is_clear ? "clear fail" : "fail within doubt";
    case Status::not_seen:
    case Status::does_not_apply:
      return "";
  }
  return "";
}

}  // namespace heelrule
