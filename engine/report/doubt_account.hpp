// How sure a verdict is, in words: what every kind of report says of it.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/doubt/doubt.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/account.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// What is said of the doubt of one finding.
struct FindingDoubtAccount {
  std::string_view words;  ///< `clear pass`, `pass within doubt`; empty where nothing was judged
  std::string sentence;    ///< the same with its numbers; empty where no reading is in doubt
  bool is_within_doubt = false;  ///< judged, and not surer than the rule set's limit
};

struct DoubtAccount {
  /// How sure the grade is, in a sentence.
  std::string grade;

  /// Grades and their chances, best first; empty where nothing is in doubt, or one grade is
  /// certain.
  std::vector<std::pair<std::string, std::string>> chances;

  /// Which reading to take again, in a sentence; empty where none would tell more.
  std::string take_again_first;

  /// The question of each of `Doubt::take_again`, with its side where it is of one side.
  std::vector<std::string> take_again;

  /// How few readings could move the grade, in a sentence; empty where no reading could.
  std::string fewest;

  /// How many findings are within doubt, in a sentence; empty where none was judged.
  std::string within_doubt;

  /// Findings that the decision rule does not accept, each in a sentence.
  std::vector<std::string> guarded;

  /// What would have to be changed for a better grade, a sentence for each way; empty where nothing
  /// better is known of, and held back where a practitioner comes first.
  std::vector<std::string> better;

  /// As `Verdict::findings`.
  std::vector<FindingDoubtAccount> findings;
};

/// Puts the doubt of a verdict into words. `account` is the verdict's own, in the same languages.
DoubtAccount doubt_account(const Program& program, const Verdict& verdict, const Doubt& doubt,
                           const Account& account, std::span<const std::string> languages);

/// `clear pass`, `pass within doubt`, `clearly in part`, `in part within doubt`, `fail within
/// doubt`, `clear fail`; empty for what was not judged.
std::string_view in_words(Status status, const FindingDoubt& doubt);

}  // namespace heelrule
