#include "engine/report/fitting_account.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/fitting/visit_of_record.hpp"
#include "engine/report/account.hpp"
#include "engine/report/foot_words.hpp"
#include "engine/report/growth_words.hpp"
#include "engine/report/shoe_words.hpp"
#include "engine/report/sock_words.hpp"

namespace heelrule {
namespace {

constexpr std::string_view held_back = "Held back until a licensed practitioner has seen the feet.";

FittingSection referrals(const Account& account, const Verdict& verdict) {
  FittingSection section{"See a licensed practitioner first", true, {}, {}};
  for (const SafetyAccount& told : account.safety) {
    if (verdict.safety[told.answer].yes) {
      section.lines.push_back(fmt::format("{} Yes. {}", told.question, told.referral));
    }
  }
  for (const Said& said : account.referrals) {
    section.lines.push_back(fmt::format("{}: {}", said.title, said.words));
  }
  return section;
}

// The open questions run on in one piece: they are asked aloud, one after the other.
FittingSection open_questions(const Account& account, const Verdict& verdict) {
  std::string questions;
  for (const SafetyAccount& told : account.safety) {
    if (!verdict.safety[told.answer].asked) {
      questions += fmt::format("{}{}", questions.empty() ? "" : " ", told.question);
    }
  }
  FittingSection section{
      "Ask first: one yes, and a licensed practitioner comes before any shoe", true, {}, {}};
  if (!questions.empty()) {
    section.lines.push_back(questions);
  }
  return section;
}

FittingSection usual_cautions(const Account& account) {
  return {"Please note", false, {fmt::format("{}", fmt::join(account.usual_cautions, " "))}, {}};
}

}  // namespace

std::vector<FittingSection> fitting_account(const Program& program, const Inspection& inspection,
                                            const Verdict& verdict, const Fitting& fitting,
                                            std::span<const std::string> languages) {
  const Account told = account(program, inspection, verdict, languages);
  const bool refers = verdict.refers();
  std::vector<FittingSection> sections;
  const auto add = [&](FittingSection section) {
    if (!section.lines.empty()) {
      sections.push_back(std::move(section));
    }
  };
  add(referrals(told, verdict));
  add(open_questions(told, verdict));
  add({"The feet", false, foot_words(fitting), {}});
  if (refers) {
    add({"What to ask for", false, {std::string(held_back)}, {}});
  } else {
    add({"What to ask for", false, shoe_words(fitting), size_rows(fitting.shoe)});
  }
  add({"Socks", false, sock_words(fitting, refers), {}});
  add({"When to measure again", false, growth_words(fitting, is_for_children(program.rules)), {}});
  add(usual_cautions(told));
  return sections;
}

}  // namespace heelrule
