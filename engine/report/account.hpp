// A verdict in words: what every kind of report says, before it is laid out.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// One finding in words.
struct FindingAccount {
  std::size_t finding = 0;  ///< index in the verdict
  std::string title;
  std::string readings;  ///< `left 8 mm, right 9 mm`; empty where nothing was seen
  std::string sentence;  ///< what was found, with its numbers; empty where the readings say it all
  bool own_words = false;  ///< the sentence is the rule set's, not made up here
  std::string because;
  std::string source;
  std::vector<std::string> notes;  ///< what the observer wrote beside the readings
};

/// Words of a rule or band, with the finding that they belong to.
struct Said {
  std::size_t finding = 0;
  std::string title;  ///< of the rule
  std::string words;
};

/// A safety question in words.
struct SafetyAccount {
  std::size_t answer = 0;  ///< index in `Verdict::safety`
  std::string question;
  std::string referral;            ///< empty unless the answer is yes
  std::string sides;               ///< of a yes: `left`, `left and right`, or empty
  std::string reason;              ///< why there is no answer, where the record says so
  std::vector<std::string> notes;  ///< what the observer wrote beside the answer
};

/// Everything that a report says. Never shortened: cautions and referrals reach every reader.
struct Account {
  std::string title;
  std::string grade;  ///< empty where nothing was seen
  std::string means;
  std::string certainty;  ///< why the grade stands or is provisional, in a sentence
  std::string caps;       ///< which failed musts lowered the grade, in a sentence; else empty
  std::vector<std::string> sections;  ///< titles
  std::vector<FindingAccount> findings;
  std::vector<SafetyAccount> safety;
  std::vector<Said> referrals;
  std::vector<Said> cautions;
  std::vector<Said> advice;
  std::vector<Said> held_advice;
  std::vector<std::string> usual_cautions;  ///< those of the rule set, and then our own
  std::vector<std::string>
      would_settle;  ///< questions, with the side and reason where there is one
};

/// Puts a verdict into words. `languages` is the reader's choice, first choice first; where it has
/// no wording, the rule set's own order decides.
Account account(const Program& program, const Inspection& inspection, const Verdict& verdict,
                std::span<const std::string> languages);

/// The same of the grade and the safety questions alone; all else in it is empty. `languages` is
/// what `fallback_order` gives.
Account brief_account(const Program& program, const Inspection& inspection, const Verdict& verdict,
                      std::span<const std::string> languages);

/// Parts of an account by themselves, for reports that are made of pieces. `languages` is what
/// `fallback_order` gives.
std::vector<std::string> usual_cautions(const RuleSet& rules,
                                        std::span<const std::string> languages);
std::string finding_title(const Program& program, const Finding& finding,
                          std::span<const std::string> languages);
std::string finding_sentence(const Program& program, const Inspection& inspection,
                             const Finding& finding, std::span<const std::string> languages);
std::vector<std::string> finding_notes(const Program& program, const Inspection& inspection,
                                       const Finding& finding);
std::vector<std::string> missing_questions(const Program& program, const Inspection& inspection,
                                           const std::vector<Missing>& missing,
                                           std::span<const std::string> languages);

/// What a rule is called: its title, or its name in words.
std::string rule_title(const Rule& rule, std::span<const std::string> languages);

/// `pass`, `part`, `fail`, `not seen`, `does not apply`.
std::string_view in_words(Status status);

}  // namespace heelrule
