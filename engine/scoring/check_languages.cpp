#include "engine/scoring/check_languages.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace heelrule {
namespace {

class LanguageChecker {
 public:
  LanguageChecker(const std::vector<std::string>& languages, Diagnostics& diagnostics)
      : languages_(languages), diagnostics_(diagnostics) {}

  void check(const Text& text) {
    if (text.empty()) {
      return;
    }
    std::string missing;
    for (const std::string& language : languages_) {
      const bool plain_first = text.wordings[0].language.empty() && language == languages_[0];
      const bool there = std::any_of(text.wordings.begin(), text.wordings.end(),
                                     [&](const Wording& w) { return w.language == language; });
      if (!there && !plain_first) {
        missing += fmt::format("{}`{}`", missing.empty() ? "" : ", ", language);
      }
    }
    if (!missing.empty()) {
      const std::size_t shown = choose_language(text.wordings, languages_);
      diagnostics_.warning(text.wordings[shown].where,
                           fmt::format("this text is missing in {}", missing),
                           "add it, or readers of that language see this wording");
    }
  }

  void check(const Words& words) {
    check(words.say);
    check(words.caution);
    check(words.referral);
    check(words.advice);
  }

 private:
  const std::vector<std::string>& languages_;
  Diagnostics& diagnostics_;
};

}  // namespace

void check_languages(const RuleSet& rules, Diagnostics& diagnostics) {
  if (rules.languages.size() < 2) {
    return;
  }
  LanguageChecker checker(rules.languages, diagnostics);
  checker.check(rules.title);
  checker.check(rules.about);
  for (const Section& section : rules.sections) {
    checker.check(section.title);
  }
  for (const Trait& trait : rules.traits) {
    checker.check(trait.ask);
    checker.check(trait.how);
    for (const Level& level : levels_of(trait.kind)) {
      checker.check(level.meaning);
    }
  }
  for (const SafetyQuestion& question : rules.safety) {
    checker.check(question.referral);
  }
  for (const Rule& rule : rules.rules) {
    checker.check(rule.title);
    checker.check(rule.because);
    checker.check(rule.source);
    checker.check(rule.words);
    for (const Band& band : rule.bands) {
      checker.check(band.words);
    }
    for (const LevelCredit& level : rule.levels) {
      checker.check(level.words);
    }
  }
  for (const Grade& grade : rules.grades) {
    checker.check(grade.means);
  }
  for (const UsualCaution& caution : rules.cautions) {
    checker.check(caution.words);
  }
}

}  // namespace heelrule
