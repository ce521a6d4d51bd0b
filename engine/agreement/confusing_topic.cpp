#include "engine/agreement/confusing_topic.hpp"

#include <algorithm>

#include "engine/agreement/gwet_ac.hpp"

namespace heelrule {
namespace {

constexpr double low_figure = 0.5;
constexpr double doubts_too_many = 2;
constexpr std::size_t fewest = 3;

bool has_alike_subjects(const TopicAgreement& topic) {
  return std::any_of(topic.remarks.begin(), topic.remarks.end(), [](const Remark& remark) {
    return std::holds_alternative<AlikeSubjects>(remark);
  });
}

// Whether a class that rated so finds this question hard.
bool is_low(const TopicAgreement& topic, const Ratings& known, std::optional<double> doubt) {
  if (known.rated_by(2).subjects() < fewest) {
    return false;
  }
  if (topic.is_of_levels()) {
    const ScaledRatings& ratings = topic.rated.ratings;
    const LevelCounts counts = level_counts(known, ratings.level_numbers.size());
    return gwet_ac(counts, usual_weights(ratings)).estimate.value < low_figure;
  }
  if (doubt) {
    return technical_error(known) > doubts_too_many * *doubt;
  }
  return !has_alike_subjects(topic) && interval_alpha(known).estimate.value < low_figure;
}

bool stays_low(const TopicAgreement& topic, std::optional<double> doubt) {
  const ScaledRatings& ratings = topic.rated.ratings;
  const Ratings& known = topic.is_of_levels() ? ratings.levels : ratings.numbers;
  bool stays = is_low(topic, known, doubt);
  for (std::size_t observer = 0; stays && observer < known.observers(); ++observer) {
    stays = is_low(topic, known.without(observer), doubt);
  }
  return stays;
}

// The two levels that are mixed up most.
void find_mixed_up(const ScaledRatings& ratings, Confusing& found) {
  const std::size_t levels = ratings.level_numbers.size();
  const LevelCounts counts = level_counts(ratings.levels, levels);
  double most = 0;
  double all = 0;
  for (std::size_t one = 0; one < levels; ++one) {
    for (std::size_t other = one + 1; other < levels; ++other) {
      double pairs = 0;
      for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
        pairs += counts.at(subject, one) * counts.at(subject, other);
      }
      all += pairs;
      if (pairs > most) {
        most = pairs;
        found.one_level = one;
        found.other_level = other;
      }
    }
  }
  found.of_the_misses = all > 0 ? most / all : 0;
}

}  // namespace

std::vector<Confusing> confusing_topics(const Program& program,
                                        const std::vector<TopicAgreement>& topics,
                                        std::size_t observers) {
  std::vector<Confusing> all;
  for (std::size_t i = 0; i < topics.size() && observers > fewest; ++i) {
    const TopicAgreement& topic = topics[i];
    const auto doubt = stated_doubt(program, topic.rated.topic);
    if (!is_recorded_trait(program, topic.rated.topic) || !stays_low(topic, doubt)) {
      continue;
    }
    Confusing found;
    found.topic = i;
    if (topic.is_of_levels()) {
      find_mixed_up(topic.rated.ratings, found);
    } else {
      found.error = topic.error->technical.value;
      found.doubt = doubt.value_or(unknown);
    }
    all.push_back(found);
  }
  return all;
}

}  // namespace heelrule
