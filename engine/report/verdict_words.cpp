#include "engine/report/verdict_words.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {

std::vector<const SafetyAccount*> answered_with(Answered how, const Account& account,
                                                const Verdict& verdict) {
  std::vector<const SafetyAccount*> chosen;
  for (const SafetyAccount& told : account.safety) {
    const SafetyAnswer& answer = verdict.safety[told.answer];
    const Answered found = answer.yes     ? Answered::yes
                           : answer.asked ? Answered::no
                                          : Answered::not_at_all;
    if (found == how) {
      chosen.push_back(&told);
    }
  }
  return chosen;
}

std::string_view other_rules(const Program& program, const Inspection& inspection) {
  return inspection.rules == program.rules.short_name() || inspection.rules == program.rules.name
             ? std::string_view{}
             : std::string_view(inspection.rules);
}

std::string referral_sentence(const SafetyAccount& told) {
  return fmt::format("{} Yes{}{}. {}", told.question, told.sides.empty() ? "" : ", ", told.sides,
                     told.referral);
}

std::string referral_sentence(const Said& said) {
  return fmt::format("{}: {}", said.title, said.words);
}

std::vector<std::string> referral_sentences(const Account& account, const Verdict& verdict) {
  std::vector<std::string> sentences;
  for (const SafetyAccount* told : answered_with(Answered::yes, account, verdict)) {
    sentences.push_back(referral_sentence(*told));
  }
  for (const Said& said : account.referrals) {
    sentences.push_back(referral_sentence(said));
  }
  return sentences;
}

std::string_view grade_words(const Program& program, const Verdict& verdict) {
  return verdict.grade ? std::string_view(program.rules.grades[*verdict.grade].name.value) : "none";
}

std::string points_words(const Program& program, const Verdict& verdict) {
  const auto points = verdict.score.points();
  return points ? score_words(*points, program.grade_bounds) : "";
}

std::string points_and_reach(const Program& program, const Verdict& verdict) {
  const std::string points = fmt::format("{} of 100", points_words(program, verdict));
  return verdict.score.open_weight > 0
             ? fmt::format("{} ({} to {})", points,
                           score_words(verdict.score.lowest_points(), program.grade_bounds),
                           score_words(verdict.score.highest_points(), program.grade_bounds))
             : points;
}

std::string score_sentence(const Program& program, const Verdict& verdict) {
  std::string words = fmt::format("Score {} of 100", points_words(program, verdict));
  if (verdict.score.open_weight > 0) {
    words += fmt::format("; with what was not seen it can lie from {} to {}",
                         score_words(verdict.score.lowest_points(), program.grade_bounds),
                         score_words(verdict.score.highest_points(), program.grade_bounds));
  }
  return words + ".";
}

std::string section_score_words(const Score& score) {
  const auto got = score.points();
  if (!got) {
    return "not seen";
  }
  const std::string points = fmt::format("{:>5.1f} of 100", *got);
  return score.open_weight > 0 ? fmt::format("{} ({:.1f} to {:.1f})", points, score.lowest_points(),
                                             score.highest_points())
                               : points;
}

std::string section_points_words(const Score& score) {
  const auto got = score.points();
  if (!got) {
    return "not seen";
  }
  return score.open_weight > 0 ? fmt::format("{:.1f} ({:.1f} to {:.1f})", *got,
                                             score.lowest_points(), score.highest_points())
                               : fmt::format("{:.1f}", *got);
}

std::string worth_words(const Program& program, const Finding& finding) {
  const double earned = finding.weight * finding.credit / full_credit / weight_step;
  const std::string_view must = program.rules.rules[finding.rule].caps ? ", must" : "";
  return finding.weight == 0 ? fmt::format("carries no weight{}", must)
                             : fmt::format("earns {} of {}{}", with_places(earned, 2),
                                           with_places(finding.weight / weight_step, 2), must);
}

std::string gain_words(double points) {
  const std::string words = with_places(points, 1);
  if (words == "0") {
    return points > 0 ? " (less than 0.1 points)" : "";
  }
  return fmt::format(" (up to {} {})", words, words == "1" ? "point" : "points");
}

std::string held_back_words(std::size_t count) {
  return fmt::format("{} held back until a licensed practitioner has seen the feet.",
                     count == 1 ? std::string("1 piece of advice is")
                                : fmt::format("{} pieces of advice are", count));
}

}  // namespace heelrule
