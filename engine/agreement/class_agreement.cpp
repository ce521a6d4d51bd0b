#include "engine/agreement/class_agreement.hpp"

#include <algorithm>
#include <utility>

#include "engine/agreement/gwet_ac.hpp"

namespace heelrule {
namespace {

constexpr double least_points = 2;
constexpr double wide_spread = 2;
constexpr double least_at_odds = 0.05;  // of the answers
constexpr double low_figure = 0.5;
constexpr double doubts_too_many = 2;
constexpr double split_agreement = 0.5;
constexpr std::size_t fewest = 3;
constexpr std::size_t most_topics_named = 3;

LevelWeights usual_weights(const ScaledRatings& ratings) {
  return {ratings.level_numbers.size(),
          ratings.kind == RatingKind::levels ? Weighting::linear : Weighting::unweighted};
}

bool is_of_levels(const TopicAgreement& topic) {
  return topic.rated.ratings.kind != RatingKind::numbers;
}

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

bool is_recorded_trait(const Program& program, const Topic& topic) {
  return topic.kind == Topic::Kind::trait &&
         !std::holds_alternative<DerivedKind>(program.rules.traits[topic.index].kind);
}

class ClassReader {
 public:
  ClassReader(const Program& program, const ClassTable& table) : program_(program), table_(table) {}

  ClassAgreement read() {
    for (TopicRatings& rated : topic_ratings(program_, table_)) {
      result_.topics.push_back(topic_agreement(std::move(rated), table_.observers().size()));
    }
    judge_scores();
    judge_answers();
    judge_readings();
    find_confusing();
    find_split();
    return std::move(result_);
  }

 private:
  const TopicAgreement* find_topic(Topic::Kind kind) const {
    const auto found =
        std::find_if(result_.topics.begin(), result_.topics.end(),
                     [&](const TopicAgreement& one) { return one.rated.topic.kind == kind; });
    return found == result_.topics.end() ? nullptr : &*found;
  }

  bool stands_apart(std::size_t observer) const {
    return std::any_of(result_.apart.begin(), result_.apart.end(),
                       [&](const StandsApart& one) { return one.observer == observer; });
  }

  void judge_scores() {
    const TopicAgreement* score = find_topic(Topic::Kind::score);
    if (score == nullptr) {
      return;
    }
    for (const Standing& one : far_biases(score->rated.ratings.numbers)) {
      if (std::fabs(one.bias.value) >= least_points) {
        result_.apart.push_back(
            {one.observer,
             one.bias.value > 0 ? StandsApart::How::lenient : StandsApart::How::severe,
             std::nullopt, one});
      }
    }
    for (const Standing& one : far_spreads(score->rated.ratings.numbers)) {
      if (one.spread >= wide_spread * one.others_spread) {
        result_.apart.push_back({one.observer, StandsApart::How::scattered, std::nullopt, one});
      }
    }
  }

  // How often each student meets the others, topic by topic. Whoever gives more points meets the
  // others less, too, and that has been said.
  void judge_answers() {
    std::vector<const TopicAgreement*> named;
    for (const TopicAgreement& topic : result_.topics) {
      if (is_of_levels(topic) && is_recorded_trait(program_, topic.rated.topic)) {
        named.push_back(&topic);
      }
    }
    Ratings meeting(named.size(), table_.observers().size());
    for (std::size_t row = 0; row < named.size(); ++row) {
      for (std::size_t observer = 0; observer < meeting.observers(); ++observer) {
        meeting.set(row, observer, named[row]->students[observer].meets);
      }
    }
    for (const Standing& one : far_biases(meeting)) {
      if (one.bias.value <= -least_at_odds && !stands_apart(one.observer)) {
        result_.apart.push_back({one.observer, StandsApart::How::at_odds, std::nullopt, one});
      }
    }
  }

  void judge_readings() {
    for (std::size_t i = 0; i < result_.topics.size(); ++i) {
      const TopicAgreement& topic = result_.topics[i];
      if (is_of_levels(topic) || !is_recorded_trait(program_, topic.rated.topic)) {
        continue;
      }
      const double least =
          stated_doubt(program_, topic.rated.topic).value_or(topic.error->technical.value / 2);
      for (const Standing& one : far_biases(topic.rated.ratings.numbers)) {
        if (std::fabs(one.bias.value) >= least) {
          result_.apart.push_back(
              {one.observer,
               one.bias.value > 0 ? StandsApart::How::reads_high : StandsApart::How::reads_low, i,
               one});
        }
      }
    }
  }

  // Whether a class that rated so finds this question hard.
  bool is_low(const ScaledRatings& ratings, const Ratings& known,
              std::optional<double> doubt) const {
    if (known.rated_by(2).subjects() < fewest) {
      return false;
    }
    if (ratings.kind != RatingKind::numbers) {
      const LevelCounts counts = level_counts(known, ratings.level_numbers.size());
      return gwet_ac(counts, usual_weights(ratings)).estimate.value < low_figure;
    }
    if (doubt) {
      return technical_error(known) > doubts_too_many * *doubt;
    }
    const bool alike = std::any_of(alike_.begin(), alike_.end(),
                                   [&](const ScaledRatings* one) { return one == &ratings; });
    return !alike && interval_alpha(known).estimate.value < low_figure;
  }

  void find_confusing() {
    if (table_.observers().size() <= fewest) {
      return;
    }
    for (const TopicAgreement& topic : result_.topics) {
      for (const Remark& remark : topic.remarks) {
        if (std::holds_alternative<AlikeSubjects>(remark)) {
          alike_.push_back(&topic.rated.ratings);
        }
      }
    }
    for (std::size_t i = 0; i < result_.topics.size(); ++i) {
      const TopicAgreement& topic = result_.topics[i];
      const ScaledRatings& ratings = topic.rated.ratings;
      const auto doubt = stated_doubt(program_, topic.rated.topic);
      const Ratings& known = is_of_levels(topic) ? ratings.levels : ratings.numbers;
      if (!is_recorded_trait(program_, topic.rated.topic) || !is_low(ratings, known, doubt)) {
        continue;
      }
      bool stays = true;
      for (std::size_t observer = 0; observer < known.observers(); ++observer) {
        stays = stays && is_low(ratings, known.without(observer), doubt);
      }
      if (stays) {
        result_.confusing.push_back(confusion(i));
      }
    }
  }

  Confusing confusion(std::size_t index) const {
    const TopicAgreement& topic = result_.topics[index];
    Confusing found;
    found.topic = index;
    if (!is_of_levels(topic)) {
      found.error = topic.error->technical.value;
      found.doubt = stated_doubt(program_, topic.rated.topic).value_or(unknown);
      return found;
    }
    const std::size_t levels = topic.rated.ratings.level_numbers.size();
    const LevelCounts counts = level_counts(topic.rated.ratings.levels, levels);
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
    return found;
  }

  void find_split() {
    const TopicAgreement* grade = find_topic(Topic::Kind::grade);
    if (grade == nullptr) {
      return;
    }
    const std::size_t levels = program_.rules.grades.size();
    const LevelCounts counts = level_counts(grade->rated.ratings.levels, levels);
    const LevelWeights same(levels, Weighting::unweighted);
    for (std::size_t row = 0; row < counts.subjects(); ++row) {
      const double agreement = pair_agreement(counts, row, same);
      if (counts.of_subject(row) < static_cast<double>(fewest) || !(agreement < split_agreement)) {
        continue;
      }
      SplitShoe split{grade->rated.subjects[row].shoe, agreement, {}, {}};
      for (std::size_t level = 0; level < levels; ++level) {
        split.grades.push_back(counts.at(row, level));
      }
      split.topics = hardest_topics(split.shoe);
      result_.split.push_back(std::move(split));
    }
  }

  // The named answers on which fewest pairs meet on this shoe, if fewer than two thirds do.
  std::vector<std::size_t> hardest_topics(std::size_t shoe) const {
    constexpr double rather_few = 2.0 / 3;
    std::vector<std::pair<double, std::size_t>> found;
    for (std::size_t i = 0; i < result_.topics.size(); ++i) {
      const TopicAgreement& topic = result_.topics[i];
      if (!is_of_levels(topic) || !is_recorded_trait(program_, topic.rated.topic)) {
        continue;
      }
      const double agreement = agreement_on(topic, shoe);
      if (agreement < rather_few) {
        found.emplace_back(agreement, i);
      }
    }
    std::sort(found.begin(), found.end());
    std::vector<std::size_t> topics;
    for (std::size_t i = 0; i < std::min(found.size(), most_topics_named); ++i) {
      topics.push_back(found[i].second);
    }
    return topics;
  }

  static double agreement_on(const TopicAgreement& topic, std::size_t shoe) {
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

  const Program& program_;
  const ClassTable& table_;
  ClassAgreement result_;
  std::vector<const ScaledRatings*> alike_;  // whose subjects hardly differ
};

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

ClassAgreement class_agreement(const Program& program, const ClassTable& table) {
  return ClassReader(program, table).read();
}

}  // namespace heelrule
