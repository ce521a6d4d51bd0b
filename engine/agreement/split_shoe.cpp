#include "engine/agreement/split_shoe.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace heelrule {
namespace {

constexpr double split_agreement = 0.5;
constexpr double rather_few = 2.0 / 3;
constexpr double fewest = 3;  // students
constexpr std::size_t most_topics_named = 3;

// The share of pairs who say the same of a shoe, on the mean of its sides.
double agreement_on(const TopicAgreement& topic, std::size_t shoe) {
  const std::size_t levels = topic.rated.ratings.level_numbers.size();
  const LevelCounts counts = level_counts(topic.rated.ratings.levels, levels);
  const LevelWeights same(levels, Weighting::unweighted);
  double sum = 0;
  double sides = 0;
  for (std::size_t row = 0; row < topic.rated.subjects.size(); ++row) {
    const double agreement =
        topic.rated.subjects[row].shoe == shoe ? pair_agreement(counts, row, same) : unknown;
    if (!std::isnan(agreement)) {
      sum += agreement;
      sides += 1;
    }
  }
  return sides > 0 ? sum / sides : unknown;
}

// The named answers on which fewest pairs meet on this shoe, if fewer than two thirds do.
std::vector<std::size_t> hardest_topics(const Program& program,
                                        const std::vector<TopicAgreement>& topics,
                                        std::size_t shoe) {
  std::vector<std::pair<double, std::size_t>> found;
  for (std::size_t i = 0; i < topics.size(); ++i) {
    if (!topics[i].is_of_levels() || !is_recorded_trait(program, topics[i].rated.topic)) {
      continue;
    }
    const double agreement = agreement_on(topics[i], shoe);
    if (agreement < rather_few) {
      found.emplace_back(agreement, i);
    }
  }
  std::sort(found.begin(), found.end());
  std::vector<std::size_t> hardest;
  for (std::size_t i = 0; i < std::min(found.size(), most_topics_named); ++i) {
    hardest.push_back(found[i].second);
  }
  return hardest;
}

}  // namespace

std::vector<SplitShoe> split_shoes(const Program& program,
                                   const std::vector<TopicAgreement>& topics) {
  const TopicAgreement* grade = find_topic(topics, Topic::Kind::grade);
  if (grade == nullptr) {
    return {};
  }
  const std::size_t levels = program.rules.grades.size();
  const LevelCounts counts = level_counts(grade->rated.ratings.levels, levels);
  const LevelWeights same(levels, Weighting::unweighted);
  std::vector<SplitShoe> all;
  for (std::size_t row = 0; row < counts.subjects(); ++row) {
    const double agreement = pair_agreement(counts, row, same);
    if (counts.of_subject(row) < fewest || !(agreement < split_agreement)) {
      continue;
    }
    SplitShoe split{grade->rated.subjects[row].shoe, agreement, {}, {}};
    for (std::size_t level = 0; level < levels; ++level) {
      split.grades.push_back(counts.at(row, level));
    }
    split.topics = hardest_topics(program, topics, split.shoe);
    all.push_back(std::move(split));
  }
  return all;
}

}  // namespace heelrule
