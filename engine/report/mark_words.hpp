// A mark in words that teach: what was recorded, what the reference says, and how to take it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/marking/mark.hpp"

namespace heelrule {

/// Everything that a report on one mark is made from. All of it outlives the report.
struct MarkStory {
  const Program& program;
  const MarkingRules& marking;
  const Reference& reference;
  const Inspection& record;
  const Mark& mark;
  const std::vector<std::string>& languages;  ///< as `fallback_order` gives them
};

/// `right`, `within tolerance`, `off`, `missed`, `invented`, `not held`.
std::string_view in_words(Likeness likeness);

/// `trainer`, `uncertainty`, `panel`, `none`.
std::string_view in_words(ToleranceSource source);

/// `must passed over`, `must failed`, `safety missed`, `safety denied`, `referral missed`.
std::string_view in_words(CriticalKind kind);

/// `S-02`, or `record 2` where the record does not say whose it is.
std::string student_name(const Inspection& record, std::size_t place);

/// The question, with its side: `Length of the standing foot (left)`.
std::string item_title(const MarkStory& story, const ReferenceItem& item);

/// What the record holds, and what the reference: `238 mm`, `not seen`; empty where it says
/// nothing.
std::string recorded_value(const MarkStory& story, const ReferenceItem& item);
std::string reference_value(const MarkStory& story, const ReferenceItem& item);

/// What was recorded, what the reference says, and how far that is apart, in sentences.
std::string comparison_words(const MarkStory& story, const Comparison& one);

/// How to take it, as the rule set says; empty where it does not.
std::string how_words(const MarkStory& story, const ReferenceItem& item);

/// How far a panel agrees about something: `2 of 3 say so`, `3 of 3 within tolerance, spread 0.8
/// mm`; empty of a single reference.
std::string panel_words(const MarkStory& story, const ReferenceItem& item);

/// A critical fault in a sentence, and one that is held against nobody.
std::string critical_words(const MarkStory& story, const CriticalFault& fault);
std::string edge_words(const MarkStory& story, const CriticalFault& fault);

/// `safety missed: Are the feet numb, or is there diabetes?`
std::string critical_title(const MarkStory& story, const CriticalFault& fault);

/// What sends the client to a licensed practitioner by the reference, with its referral.
std::vector<std::string> referrals_first(const MarkStory& story);

/// `78.4`: points with one decimal, never more than were reached.
std::string mark_points_words(const MarkStory& story);

/// The mark, how it came about, and what capped it, in sentences; the first is the points.
std::vector<std::string> mark_sentences(const MarkStory& story);

/// Whether grade, musts and referrals are those of the reference, in sentences.
std::vector<std::string> verdict_sentences(const MarkStory& story);

/// What a share of the difference of the scores belongs to: the question, with `(within tolerance)`
/// or `(not counted)` where its answer is no fault; or the section, with the number of questions.
std::string share_title(const MarkStory& story, const ScoreShare& share);

/// The points of each share, `−7.29`, with two decimals. They are rounded so that they still add up
/// to the difference as it is printed: what is lacking goes to those that rounding took most from.
std::vector<std::string> share_points(const Attribution& attribution);

/// What came out alike on both sides, or on one side alone.
struct TaughtItem {
  std::string title;  ///< `How firm is the heel counter? (both sides)`
  Likeness likeness = Likeness::right;
  std::string says;            ///< as `comparison_words`
  std::string panel;           ///< as `panel_words`
  std::string how;             ///< as `how_words`
  double weight = 0;           ///< of all of it
  double credit = 0;           ///< 0 to 1
  std::size_t comparison = 0;  ///< index in `Mark::comparisons`; of both sides that of the left
};

/// The comparisons that are `wanted`, those that cost most first.
std::vector<TaughtItem> taught_items(const MarkStory& story, bool (*wanted)(Likeness));

/// How the shares are to be read, in sentences; empty where the scores rest on the same values.
std::string share_words(const MarkStory& story);

/// How many traits came out how: `18 right, 3 within tolerance, 1 off`.
std::string count_words(const Mark& mark);

/// What stands at the foot of every report of marks: our own, and the usual cautions of the set.
std::vector<std::string> mark_cautions(const MarkStory& story);

/// Whom the reference is by, and how it was made, in a few words: `reference by T-01`, `panel of 3:
/// T-01, T-02, T-03`.
std::string reference_words(const Reference& reference);

}  // namespace heelrule
