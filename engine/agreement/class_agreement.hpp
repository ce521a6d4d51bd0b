// How far a class agrees, and what keeps it from agreeing more.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/agreement/class_table.hpp"
#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "engine/agreement/remark.hpp"
#include "engine/agreement/standing.hpp"

namespace heelrule {

/// One student on one topic.
struct StudentOnTopic {
  double subjects = 0;       ///< which the student rated
  double meets = unknown;    ///< of levels: share of the others who said the same, near misses of a
                             ///< scale in part
  LimitsOfAgreement beside;  ///< of numbers: the student less the mean of the others
};

struct TopicAgreement {
  TopicRatings rated;
  std::vector<Coefficient> coefficients;
  std::vector<Remark> remarks;
  std::optional<MeasurementError> error;  ///< of numbers
  std::vector<StudentOnTopic> students;

  /// The one figure for this topic, which gaps do not harm: AC1 of names, AC2 with linear weights
  /// of a scale, Krippendorff's alpha of numbers.
  const Coefficient& headline() const;
};

/// A student who stands apart.
struct StandsApart {
  enum class How : std::uint8_t {
    lenient,     ///< gives more points than the others
    severe,      ///< gives fewer
    scattered,   ///< now more, now fewer
    at_odds,     ///< meets the others on fewer of the named answers, whichever
    reads_high,  ///< measures more than the others
    reads_low,
  };

  std::size_t observer = 0;
  How how = How::lenient;
  std::optional<std::size_t> topic;  ///< of `reads_high`, `reads_low`: which, as in `topics`
  Standing standing;
};

/// A question on which the class does not agree, whoever is left out.
struct Confusing {
  std::size_t topic = 0;                 ///< as in `topics`
  std::optional<std::size_t> one_level;  ///< of levels: which two are mixed up most
  std::optional<std::size_t> other_level;
  double of_the_misses = 0;  ///< what share of the pairs that do not agree are these two
  double error = unknown;    ///< of numbers: technical error, in the trait's unit
  double doubt = unknown;    ///< as the rule set states it
};

/// A shoe of which fewer than half of all pairs of students give the same grade.
struct SplitShoe {
  std::size_t shoe = 0;
  double agreement = 0;
  std::vector<double> grades;       ///< how many gave each, from the worst
  std::vector<std::size_t> topics;  ///< on which they differ most on this shoe, at most three
};

struct ClassAgreement {
  std::vector<TopicAgreement> topics;
  std::vector<StandsApart> apart;
  std::vector<Confusing> confusing;
  std::vector<SplitShoe> split;
};

/// Lines drawn by house choice: a bias of the score is told from 2 points on, one of a measurement
/// from the doubt that the rule set states (or half the technical error where it states none), a
/// spread from twice the others' on, meeting the others less often from 5 % of the answers on; a
/// question confuses where AC is below 0.5, or the technical error is above twice the stated doubt
/// (alpha below 0.5 where none is stated and subjects differ), and stays so with any student left
/// out. Needs three students and three subjects.
ClassAgreement class_agreement(const Program& program, const ClassTable& table);

}  // namespace heelrule
