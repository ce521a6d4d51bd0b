#include "engine/agreement/topic_agreement.hpp"

#include <algorithm>
#include <utility>

namespace heelrule {
namespace {

// The mean over subjects of the share of the others that the student meets.
double meets(const ScaledRatings& ratings, std::size_t observer, const LevelWeights& weights) {
  double sum = 0;
  double subjects = 0;
  for (std::size_t subject = 0; subject < ratings.levels.subjects(); ++subject) {
    if (!ratings.levels.has(subject, observer)) {
      continue;
    }
    const auto own = static_cast<std::size_t>(ratings.levels.at(subject, observer));
    double met = 0;
    double others = 0;
    for (std::size_t other = 0; other < ratings.levels.observers(); ++other) {
      if (other != observer && ratings.levels.has(subject, other)) {
        met += weights.at(own, static_cast<std::size_t>(ratings.levels.at(subject, other)));
        others += 1;
      }
    }
    if (others > 0) {
      sum += met / others;
      subjects += 1;
    }
  }
  return subjects > 0 ? sum / subjects : unknown;
}

std::vector<StudentOnTopic> students_on(const ScaledRatings& ratings, std::size_t observers) {
  std::vector<StudentOnTopic> students(observers);
  const bool numbers = ratings.kind == RatingKind::numbers;
  const Ratings& known = numbers ? ratings.numbers : ratings.levels;
  for (std::size_t observer = 0; observer < observers; ++observer) {
    StudentOnTopic& student = students[observer];
    for (std::size_t subject = 0; subject < known.subjects(); ++subject) {
      student.subjects += known.has(subject, observer) ? 1 : 0;
    }
    if (numbers) {
      student.beside = limits_of_agreement(pairs_with_others(ratings.numbers, observer));
    } else {
      student.meets = meets(ratings, observer, usual_weights(ratings));
    }
  }
  return students;
}

}  // namespace

const Coefficient& TopicAgreement::headline() const {
  switch (rated.ratings.kind) {
    case RatingKind::names:
      return *find(coefficients, CoefficientName::gwet_ac1);
    case RatingKind::levels:
      return *find(coefficients, CoefficientName::gwet_ac2, Weighting::linear);
    case RatingKind::numbers:
      return *find(coefficients, CoefficientName::krippendorff_alpha, std::nullopt,
                   Metric::interval);
  }
  return coefficients.front();
}

TopicAgreement topic_agreement(TopicRatings rated, std::size_t observers) {
  TopicAgreement result{std::move(rated), {}, {}, std::nullopt, {}};
  const ScaledRatings& ratings = result.rated.ratings;
  result.coefficients = coefficients(ratings);
  result.remarks = remarks(ratings, result.coefficients);
  if (ratings.has_numbers()) {
    result.error = measurement_error(ratings.numbers);
  }
  result.students = students_on(ratings, observers);
  return result;
}

const TopicAgreement* find_topic(const std::vector<TopicAgreement>& topics, Topic::Kind kind) {
  const auto found = std::find_if(topics.begin(), topics.end(), [&](const TopicAgreement& one) {
    return one.rated.topic.kind == kind;
  });
  return found == topics.end() ? nullptr : &*found;
}

LevelWeights usual_weights(const ScaledRatings& ratings) {
  return {ratings.level_numbers.size(),
          ratings.kind == RatingKind::levels ? Weighting::linear : Weighting::unweighted};
}

bool is_recorded_trait(const Program& program, const Topic& topic) {
  return topic.kind == Topic::Kind::trait &&
         !std::holds_alternative<DerivedKind>(program.rules.traits[topic.index].kind);
}

std::optional<double> stated_doubt(const Program& program, const Topic& topic) {
  if (topic.kind != Topic::Kind::trait) {
    return std::nullopt;
  }
  const auto* measure = std::get_if<MeasureKind>(&program.rules.traits[topic.index].kind);
  if (measure == nullptr || !measure->doubt) {
    return std::nullopt;
  }
  return in_unit(measure->doubt->value.stored, program.traits[topic.index].unit);
}

}  // namespace heelrule
