#include "engine/report/account.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/value_words.hpp"
#include "engine/scoring/limit.hpp"
#include "engine/scoring/spoken.hpp"

namespace heelrule {
namespace {

std::string capitalised(std::string words) {
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
    words.front() = static_cast<char>(words.front() - 'a' + 'A');
  }
  return words;
}

// As a sentence: with a full stop, unless it already ends as one.
std::string ended(const std::string& words) {
  const bool is_ended = words.ends_with('.') || words.ends_with('?') || words.ends_with('!');
  return is_ended ? words : words + ".";
}

void add_once(std::vector<std::string>& all, const std::string& words) {
  if (!words.empty() && std::find(all.begin(), all.end(), words) == all.end()) {
    all.push_back(words);
  }
}

constexpr std::string_view own_caution =
    "This report follows house rules. Local codes and licensed practice come before them.";

class Accountant {
 public:
  Accountant(const Program& program, const Inspection& inspection, const Verdict& verdict,
             std::vector<std::string> languages)
      : program_(program),
        rules_(program.rules),
        inspection_(inspection),
        verdict_(verdict),
        languages_(std::move(languages)) {}

  Account tell() {
    account_.title = rules_.title.in(languages_);
    for (const Section& section : rules_.sections) {
      account_.sections.emplace_back(section.title.in(languages_));
    }
    tell_briefly();
    for (std::size_t i = 0; i < verdict_.findings.size(); ++i) {
      account_.findings.push_back(tell_finding(i));
    }
    account_.referrals = said(verdict_.referrals, &SpokenWords::referral);
    account_.cautions = said(verdict_.cautions, &SpokenWords::caution);
    account_.advice = said(verdict_.advice, &SpokenWords::advice);
    account_.held_advice = said(verdict_.held_advice, &SpokenWords::advice);
    account_.usual_cautions = usual_cautions(rules_, languages_);
    account_.would_settle = questions(verdict_.would_settle);
    return std::move(account_);
  }

  Account brief() {
    tell_briefly();
    return std::move(account_);
  }

  // Parts, for those who make an account piece by piece.
  std::string sentence(const Finding& finding) const {
    FindingAccount told;
    tell_sentence(finding, told);
    return told.sentence;
  }

  std::string title(const Finding& finding) const {
    const std::string words = rule_title(rules_.rules[finding.rule], languages_);
    return finding.side == Side::none ? words
                                      : fmt::format("{}, {}", words, in_words(finding.side));
  }

  // What is missing as questions, each once: with the side where only one is missing, and with the
  // reasons given.
  std::vector<std::string> questions(const std::vector<Missing>& missing) const {
    std::vector<std::string> asked;
    std::vector<std::size_t> done;
    for (const Missing& one : missing) {
      if (std::find(done.begin(), done.end(), one.trait) != done.end()) {
        continue;
      }
      done.push_back(one.trait);
      const Missing other{one.trait, one.side == Side::left ? Side::right : Side::left};
      const bool both = one.side != Side::none &&
                        std::find(missing.begin(), missing.end(), other) != missing.end();
      std::string words(rules_.traits[one.trait].ask.in(languages_));
      if (one.side != Side::none && !both) {
        words += fmt::format(" ({})", in_words(one.side));
      }
      const std::string first = reason(one);
      const std::string second = both ? reason(other) : first;
      words += first.empty() ? "" : fmt::format(" ({})", first);
      words += second.empty() || second == first ? "" : fmt::format(" ({})", second);
      asked.push_back(std::move(words));
    }
    return asked;
  }

  // The notes beside all readings that the finding needed, each once.
  std::vector<std::string> notes(const Finding& finding) const {
    std::vector<std::string> found;
    const TraitProgram& trait = program_.traits[program_.rule_programs[finding.rule].trait];
    for (const auto& needs : trait.needs) {
      for (const Register input : needs) {
        const RowInput& read = program_.inputs[input];
        const Observation* seen = inspection_.find(read.input.trait, read.side);
        if (seen != nullptr) {
          add_once(found, seen->note);
        }
      }
    }
    return found;
  }

 private:
  const std::string& grade_name(std::size_t grade) const { return rules_.grades[grade].name.value; }

  void tell_briefly() {
    tell_grade();
    tell_safety();
  }

  void tell_grade() {
    if (verdict_.grade) {
      account_.grade = grade_name(*verdict_.grade);
      account_.means = rules_.grades[*verdict_.grade].means.in(languages_);
    }
    account_.certainty = certainty();
    if (verdict_.grade && verdict_.grade != verdict_.uncapped) {
      account_.caps = caps();
    }
  }

  std::string caps() const {
    std::vector<std::string> musts;
    for (const Finding& finding : verdict_.findings) {
      if (finding.cap && *finding.cap > *verdict_.uncapped) {
        musts.push_back(fmt::format("{} (at best {})",
                                    rule_title(rules_.rules[finding.rule], languages_),
                                    grade_name(*finding.cap)));
      }
    }
    return fmt::format("The score alone would give {}, but {} failed: {}.",
                       grade_name(*verdict_.uncapped), musts.size() == 1 ? "a must" : "musts",
                       fmt::join(musts, "; "));
  }

  std::string certainty() const {
    if (!verdict_.grade) {
      return "There is no grade: nothing that counts was seen.";
    }
    if (verdict_.stands) {
      return verdict_.score.open_weight > 0 ? "The grade stands, whatever was not seen."
                                            : "The grade stands: all that counts was seen.";
    }
    if (verdict_.lowest_grade == verdict_.highest_grade) {
      return fmt::format(
          "The grade is provisional: a must was not seen. Even so, it can only come out as {}.",
          grade_name(verdict_.lowest_grade));
    }
    return fmt::format("The grade is provisional: with what was not seen it can still become {}.",
                       possible_grades());
  }

  std::string possible_grades() const {
    std::string words;
    for (std::size_t i = verdict_.highest_grade; i <= verdict_.lowest_grade; ++i) {
      const std::string_view joint = words.empty()                ? ""
                                     : i == verdict_.lowest_grade ? " or "
                                                                  : ", ";
      words += fmt::format("{}{}", joint, grade_name(i));
    }
    return words;
  }

  void tell_safety() {
    for (std::size_t i = 0; i < verdict_.safety.size(); ++i) {
      const SafetyAnswer& answer = verdict_.safety[i];
      const SafetyQuestion& asked = rules_.safety[answer.question];
      SafetyAccount told;
      told.answer = i;
      told.question = rules_.traits[asked.trait].ask.in(languages_);
      if (answer.yes) {
        told.referral = asked.referral.in(languages_);
      }
      for (const Side side : answer.sides) {
        if (side != Side::none) {
          told.sides += fmt::format("{}{}", told.sides.empty() ? "" : " and ", in_words(side));
        }
      }
      for (const Side side : {Side::none, Side::left, Side::right}) {
        if (const Observation* seen = inspection_.find(asked.trait, side)) {
          add_once(told.notes, seen->note);
        }
        if (!answer.asked && told.reason.empty()) {
          told.reason = reason({asked.trait, side});
        }
      }
      account_.safety.push_back(std::move(told));
    }
  }

  FindingAccount tell_finding(std::size_t index) const {
    const Finding& finding = verdict_.findings[index];
    const Rule& rule = rules_.rules[finding.rule];
    FindingAccount told;
    told.finding = index;
    told.title = title(finding);
    told.readings = readings_words(program_, finding);
    tell_sentence(finding, told);
    told.because = rule.because.in(languages_);
    told.source = rule.source.in(languages_);
    told.notes = notes(finding);
    return told;
  }

  void tell_sentence(const Finding& finding, FindingAccount& told) const {
    if (finding.status == Status::does_not_apply) {
      told.sentence = "Does not apply here.";
      return;
    }
    if (finding.status == Status::not_seen) {
      told.sentence = not_seen_sentence(finding);
      return;
    }
    const SideReading& reading = finding.readings[finding.decisive];
    const Phrase& say = program_.rule_programs[finding.rule].band_words[reading.band].say;
    told.own_words = !say.empty();
    told.sentence = told.own_words ? fill(say, languages_, program_, finding, reading)
                                   : default_sentence(finding, reading);
  }

  // Where the rule set has no words of its own: the band and how far the better one is, or what a
  // level means.
  std::string default_sentence(const Finding& finding, const SideReading& reading) const {
    const RuleProgram& prepared = program_.rule_programs[finding.rule];
    const TraitProgram& trait = program_.traits[prepared.trait];
    if (rules_.rules[finding.rule].bands.empty()) {
      return level_meaning(trait.type, reading);
    }
    const std::string_view side = side_words(finding, reading);
    std::string words =
        fmt::format("{}{}{} is {}", side, side.empty() ? "" : ": ",
                    value_words(program_, prepared.trait, reading.value, prepared.cuts),
                    band_words(program_, finding.rule, reading.band));
    if (const auto limit = limit_of(prepared, reading)) {
      words +=
          fmt::format(", {} {} {}", distance_words(trait.unit, limit->distance),
                      limit->value_is_short ? "short of" : "over", show(limit->at, trait.unit, 9));
    }
    return capitalised(words + ".");
  }

  std::string level_meaning(const Type& type, const SideReading& reading) const {
    if (type.kind != Type::Kind::level) {
      return {};
    }
    const Level& level = levels_of(rules_.traits[type.scale].kind)[reading.band];
    if (level.meaning.empty()) {
      return {};
    }
    return ended(fmt::format("{}: {}", capitalised(in_words(level.name.value)),
                             level.meaning.in(languages_)));
  }

  std::string not_seen_sentence(const Finding& finding) const {
    if (finding.cannot_be_worked_out) {
      return "Cannot be worked out from these readings: a division by zero, or a size without a "
             "known conversion.";
    }
    const std::string_view words = finding.whether_it_applies_is_open
                                       ? "Whether it applies is open. It needs: "
                                       : "It needs: ";
    const std::vector<std::string> asked = questions(finding.missing);
    return ended(fmt::format("{}{}", words, fmt::join(asked, "; ")));
  }

  std::string reason(const Missing& missing) const {
    const Observation* seen = inspection_.find(missing.trait, missing.side);
    const auto* not_seen = seen == nullptr ? nullptr : std::get_if<NotSeen>(&seen->value);
    return not_seen == nullptr ? std::string{} : not_seen->reason;
  }

  std::vector<Said> said(const std::vector<Spoken>& spoken, Phrase SpokenWords::* which) const {
    std::vector<Said> all;
    for (const Spoken& one : spoken) {
      const Finding& finding = verdict_.findings[one.finding];
      const SpokenWords& words = words_of(one, finding, program_);
      all.push_back({one.finding, account_.findings[one.finding].title,
                     fill(words.*which, languages_, program_, finding, reading_of(one, finding))});
    }
    return all;
  }

  const Program& program_;
  const RuleSet& rules_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  std::vector<std::string> languages_;
  Account account_;
};

}  // namespace

std::vector<std::string> usual_cautions(const RuleSet& rules,
                                        std::span<const std::string> languages) {
  std::vector<std::string> cautions;
  cautions.reserve(rules.cautions.size() + 1);
  for (const UsualCaution& caution : rules.cautions) {
    cautions.emplace_back(caution.words.in(languages));
  }
  cautions.emplace_back(own_caution);
  return cautions;
}

Account account(const Program& program, const Inspection& inspection, const Verdict& verdict,
                std::span<const std::string> languages) {
  return Accountant(program, inspection, verdict, fallback_order(languages, program.rules)).tell();
}

Account brief_account(const Program& program, const Inspection& inspection, const Verdict& verdict,
                      std::span<const std::string> languages) {
  return Accountant(program, inspection, verdict, {languages.begin(), languages.end()}).brief();
}

std::string finding_title(const Program& program, const Finding& finding,
                          std::span<const std::string> languages) {
  return Accountant(program, {}, {}, {languages.begin(), languages.end()}).title(finding);
}

std::string finding_sentence(const Program& program, const Inspection& inspection,
                             const Finding& finding, std::span<const std::string> languages) {
  return Accountant(program, inspection, {}, {languages.begin(), languages.end()})
      .sentence(finding);
}

std::vector<std::string> finding_notes(const Program& program, const Inspection& inspection,
                                       const Finding& finding) {
  return Accountant(program, inspection, {}, {}).notes(finding);
}

std::vector<std::string> missing_questions(const Program& program, const Inspection& inspection,
                                           const std::vector<Missing>& missing,
                                           std::span<const std::string> languages) {
  return Accountant(program, inspection, {}, {languages.begin(), languages.end()})
      .questions(missing);
}

std::string rule_title(const Rule& rule, std::span<const std::string> languages) {
  return rule.title.empty() ? capitalised(in_words(rule.name))
                            : std::string(rule.title.in(languages));
}

std::string_view in_words(Status status) {
  switch (status) {
    case Status::pass:
      return "pass";
    case Status::part:
      return "part";
    case Status::fail:
      return "fail";
    case Status::not_seen:
      return "not seen";
    case Status::does_not_apply:
      return "does not apply";
  }
  return "";
}

}  // namespace heelrule
