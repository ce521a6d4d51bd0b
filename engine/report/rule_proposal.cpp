#include "engine/report/rule_proposal.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/agreement/level_confusion.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

std::string counted(std::size_t count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

const MeasureKind* measure_of(const ClassStory& story, const TopicAgreement& topic) {
  if (topic.rated.topic.kind != Topic::Kind::trait) {
    return nullptr;
  }
  return std::get_if<MeasureKind>(&story.program.rules.traits[topic.rated.topic.index].kind);
}

std::string stated_words(const ClassStory& story, const TopicAgreement& topic,
                         const MeasureKind& measure, std::string_view unit) {
  if (!measure.doubt) {
    return "no doubt is stated";
  }
  return fmt::format("stated: {} {}",
                     with_places(in_unit(measure.doubt->value.stored,
                                         story.program.traits[topic.rated.topic.index].unit),
                                 4),
                     unit);
}

// How many readings there are beyond one for each subject.
double spare_readings(const TopicAgreement& topic) {
  const bool numbers = topic.rated.ratings.kind == RatingKind::numbers;
  const Ratings repeated =
      (numbers ? topic.rated.ratings.numbers : topic.rated.ratings.levels).rated_by(2);
  return static_cast<double>(repeated.count()) - static_cast<double>(repeated.subjects());
}

bool is_scale(const ClassStory& story, const TopicAgreement& topic) {
  return topic.rated.topic.kind == Topic::Kind::trait &&
         std::holds_alternative<ScaleKind>(
             story.program.rules.traits[topic.rated.topic.index].kind);
}

std::string percent_words(double share) { return fmt::format("{:.0f} %", 100 * share); }

// A remark, for a trainer to weigh; nothing of a scale on which too little was said.
std::string one_scale(const ClassStory& story, const TopicAgreement& topic) {
  if (spare_readings(topic) < fewest_to_propose) {
    return {};
  }
  const ScaledRatings& ratings = topic.rated.ratings;
  const Estimate found =
      level_confusion(level_counts(ratings.levels, ratings.level_numbers.size()));
  return fmt::format(
      "# {}: {} of looks{}\n", topic_name(story, topic.rated.topic), percent_words(found.value),
      found.interval.is_known() ? fmt::format(" ({} to {})", percent_words(found.interval.low),
                                              percent_words(found.interval.high))
                                : std::string{});
}

std::string one_trait(const ClassStory& story, const TopicAgreement& topic,
                      const MeasureKind& measure) {
  const std::string name = topic_name(story, topic.rated.topic);
  const std::string unit = topic_unit(story, topic.rated.topic);
  const Estimate& found = topic.error->technical;
  if (spare_readings(topic) < fewest_to_propose || !(found.value > 0)) {
    return fmt::format("  # {}: too few readings, or none that differ; {}\n", name,
                       stated_words(story, topic, measure, unit));
  }
  return fmt::format(
      "  \"{}\":  # {}; {:.0f} readings scatter by {} ({} to {})\n"
      "    \"doubt\": \"{} {}\"\n",
      name, stated_words(story, topic, measure, unit), topic.error->readings,
      proposed_number(found.value), proposed_number(found.interval.low),
      proposed_number(found.interval.high), proposed_number(found.value), unit);
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
      "# What {} and {} say of the doubt in `{}`: how far readings of one thing scatter,\n"
      "# from observer to observer. In brackets: the interval that holds the true figure\n"
      "# 19 times in 20. Look at each line, and take out what you do not want.\n"
      "\"heelrule\": \"1\"\n"
      "\"title\": {}\n"
      "\"extends\": [{}]\n",
      counted(story.table.observers().size(), "student"),
      counted(story.table.shoes().size(), "shoe"), shown_safely(base),
      json_text(fmt::format("{}, with the doubt that a class showed",
                            story.program.rules.title.in(story.languages))),
      json_text(base));
  std::string traits;
  std::string scales;
  bool any = false;
  for (const TopicAgreement& topic : story.agreement.topics) {
    if (const MeasureKind* measure = measure_of(story, topic)) {
      const std::string lines = one_trait(story, topic, *measure);
      any = any || !lines.starts_with("  #");
      traits += lines;
    } else if (is_scale(story, topic)) {
      scales += one_scale(story, topic);
    }
  }
  text += (any ? "\"traits\":\n" : "# Nothing is proposed.\n") + traits;
  if (!scales.empty()) {
    text +=
        "# How often a level is taken for the next one up or down, as far as the class shows it:\n";
    text += scales;
  }
  return text;
}

}  // namespace heelrule
