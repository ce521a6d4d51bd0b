#include "engine/report/rule_proposal.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/agreement/level_confusion.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr double least_confusion = 0.005;  // what is printed as 1 % at least

std::string counted(std::size_t count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

// How many readings there are beyond one for each subject.
double spare_readings(const TopicAgreement& topic) {
  const bool numbers = topic.rated.ratings.kind == RatingKind::numbers;
  const Ratings repeated =
      (numbers ? topic.rated.ratings.numbers : topic.rated.ratings.levels).rated_by(2);
  return static_cast<double>(repeated.count()) - static_cast<double>(repeated.subjects());
}

// What is said of a trait: a key with its value, and beside it what that rests on; or why nothing
// is proposed.
struct Line {
  std::string key;  ///< empty: nothing is proposed
  std::string value;
  std::string remark;
};

Line doubt_line(const ClassStory& story, const TopicAgreement& topic, const MeasureKind& measure) {
  const std::string unit = topic_unit(story, topic.rated.topic);
  const std::string stated =
      measure.doubt
          ? fmt::format("stated: {} {}",
                        with_places(in_unit(measure.doubt->value.stored,
                                            story.program.traits[topic.rated.topic.index].unit),
                                    4),
                        unit)
          : "no doubt is stated";
  const Estimate& found = topic.error->technical;
  if (spare_readings(topic) < fewest_to_propose || !(found.value > 0)) {
    return {{}, {}, "too few readings, or none that differ; " + stated};
  }
  return {"doubt", fmt::format("{} {}", proposed_number(found.value), unit),
          fmt::format("{}; {:.0f} readings scatter by {} ({} to {})", stated, topic.error->readings,
                      proposed_number(found.value), proposed_number(found.interval.low),
                      proposed_number(found.interval.high))};
}

std::string percent_words(double share) { return fmt::format("{:.0f} %", 100 * share); }

Line confusion_line(const TopicAgreement& topic, const ScaleKind& scale) {
  const std::string stated = scale.confusion.value > 0
                                 ? "stated: " + percent_words(scale.confusion.value)
                                 : "no confusion is stated";
  const ScaledRatings& ratings = topic.rated.ratings;
  const Estimate found =
      level_confusion(level_counts(ratings.levels, ratings.level_numbers.size()));
  if (spare_readings(topic) < fewest_to_propose || !(found.value >= least_confusion)) {
    return {{}, {}, "too few answers, or hardly any that differ; " + stated};
  }
  const std::string interval = found.interval.is_known()
                                   ? fmt::format(" ({} to {})", percent_words(found.interval.low),
                                                 percent_words(found.interval.high))
                                   : std::string{};
  const std::string often = percent_words(found.value);
  const bool tells_nothing = often == percent_words(most_confusion);
  return {"confusion", often,
          fmt::format("{}; a level is taken for the next one in {} of looks{}{}", stated, often,
                      interval, tells_nothing ? ", as often as not: ask in another way" : "")};
}

std::optional<Line> line_of(const ClassStory& story, const TopicAgreement& topic) {
  if (topic.rated.topic.kind != Topic::Kind::trait) {
    return std::nullopt;
  }
  const TraitKind& kind = story.program.rules.traits[topic.rated.topic.index].kind;
  if (const auto* measure = std::get_if<MeasureKind>(&kind)) {
    return doubt_line(story, topic, *measure);
  }
  if (const auto* scale = std::get_if<ScaleKind>(&kind)) {
    return confusion_line(topic, *scale);
  }
  return std::nullopt;
}

std::string written(const std::string& name, const Line& line) {
  return line.key.empty() ? fmt::format("  # {}: {}\n", name, line.remark)
                          : fmt::format("  \"{}\":  # {}\n    \"{}\": \"{}\"\n", name, line.remark,
                                        line.key, line.value);
}

}  // namespace

std::string proposed_number(double value) {
  if (!(value > 0)) {
    return "0";
  }
  const int first = static_cast<int>(std::floor(std::log10(value)));
  return with_places(value, std::clamp(1 - first, 0, 9));
}

std::string rule_proposal(const ClassStory& story, std::string_view base) {
  std::string text = fmt::format(
      "# What {} and {} say of the doubt in `{}`: how far readings of one thing scatter\n"
      "# from observer to observer, and how often a level is taken for the next one up or down.\n"
      "# In brackets: the interval that holds the true figure 19 times in 20. Look at each\n"
      "# line, and take out what you do not want.\n"
      "\"heelrule\": \"1\"\n"
      "\"title\": {}\n"
      "\"extends\": [{}]\n",
      counted(story.table.observers().size(), "student"),
      counted(story.table.shoes().size(), "shoe"), shown_safely(base),
      json_text(fmt::format("{}, with the doubt that a class showed",
                            story.program.rules.title.in(story.languages))),
      json_text(base));
  std::string traits;
  bool any = false;
  for (const TopicAgreement& topic : story.agreement.topics) {
    if (const auto line = line_of(story, topic)) {
      any = any || !line->key.empty();
      traits += written(topic_name(story, topic.rated.topic), *line);
    }
  }
  text += (any ? "\"traits\":\n" : "# Nothing is proposed.\n") + traits;
  return text;
}

}  // namespace heelrule
