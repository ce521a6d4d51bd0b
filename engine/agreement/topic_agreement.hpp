// How far a class agrees on one topic.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/agreement/class_table.hpp"
#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "engine/agreement/remark.hpp"

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

  /// Whether it was answered by levels or names; else by numbers.
  bool is_of_levels() const { return rated.ratings.kind != RatingKind::numbers; }
};

/// The agreement on what was rated, of a class of so many `observers`.
TopicAgreement topic_agreement(TopicRatings rated, std::size_t observers);

/// The topic of the score, or of the grade; null where nobody has one.
const TopicAgreement* find_topic(const std::vector<TopicAgreement>& topics, Topic::Kind kind);

/// How much a near miss counts: in part on a scale, not at all between names.
LevelWeights usual_weights(const ScaledRatings& ratings);

/// Whether a topic is what a student recorded, and not what a formula or the rules made of it.
bool is_recorded_trait(const Program& program, const Topic& topic);

/// The standard uncertainty of one reading that the rule set states for a measure, in the unit of
/// its trait; nothing where it states none, and of all else.
std::optional<double> stated_doubt(const Program& program, const Topic& topic);

}  // namespace heelrule
