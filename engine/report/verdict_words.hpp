// Numbers of a verdict in words, as every layout of the report has them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/account.hpp"

namespace heelrule {

/// How a safety question was answered.
enum class Answered : std::uint8_t { yes, no, not_at_all };

/// The safety questions that were answered so, in order. They point into `account`.
std::vector<const SafetyAccount*> answered_with(Answered how, const Account& account,
                                                const Verdict& verdict);

/// The rule set that a record was made for, where it is not the one that it is graded by; else an
/// empty text.
std::string_view other_rules(const Program& program, const Inspection& inspection);

/// What sends a client to a licensed practitioner, as sentences: `Are the feet numb? Yes, left. See
/// …` of an answer, and `Falls within a year: After a fall, see …` of a finding.
std::string referral_sentence(const SafetyAccount& told);
std::string referral_sentence(const Said& said);

/// All of them: those of answers first.
std::vector<std::string> referral_sentences(const Account& account, const Verdict& verdict);

/// The name of the grade that was given, or `none`.
std::string_view grade_words(const Program& program, const Verdict& verdict);

/// `Score 56.7 of 100; with what was not seen it can lie from 46.4 to 64.5.` Precondition:
/// something was seen.
std::string score_sentence(const Program& program, const Verdict& verdict);

/// `56.7 of 100 (46.4 to 64.5)`. Precondition: something was seen.
std::string points_and_reach(const Program& program, const Verdict& verdict);

/// `75.7`: the points of a verdict's score as printed; empty where nothing was seen.
std::string points_words(const Program& program, const Verdict& verdict);

/// ` 75.0 of 100 (46.4 to 64.5)`, or `not seen`; the number stands right in five places.
std::string section_score_words(const Score& score);

/// `75.0 (46.4 to 64.5)`, or `not seen`: the same for a column of points.
std::string section_points_words(const Score& score);

/// `earns 2.4 of 4, must`, or `carries no weight`.
std::string worth_words(const Program& program, const Finding& finding);

/// ` (up to 1.3 points)`, with the blank in front; empty for no gain.
std::string gain_words(double points);

/// How much advice waits for a practitioner, in a sentence.
std::string held_back_words(std::size_t count);

}  // namespace heelrule
