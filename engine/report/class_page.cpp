#include "engine/report/class_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/drawing/plane.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/agreement_forest.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/page_data.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/page_quotes.hpp"

namespace heelrule {

std::string_view class_page_template();

namespace {

constexpr double far_below = 0.25;

bool is_of_numbers(const TopicAgreement& topic) {
  return topic.rated.ratings.kind == RatingKind::numbers;
}

bool is_trait(const TopicAgreement& topic) { return topic.rated.topic.kind == Topic::Kind::trait; }

double middle_of(std::vector<double> values) {
  values.erase(
      std::remove_if(values.begin(), values.end(), [](double value) { return std::isnan(value); }),
      values.end());
  if (values.empty()) {
    return unknown;
  }
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

class ClassPage {
 public:
  explicit ClassPage(const ClassStory& story) : story_(story) {}

  std::string write() {
    head();
    sentences();
    remarks();
    data_.markup("forest", draw(forest()));
    tables();
    plots();
    PageFrame frame;
    frame.title = "How far the class agrees";
    frame.running_left = story_.program.rules.name;
    frame.running_right = fmt::format("{} students · {} shoes", story_.table.observers().size(),
                                      story_.table.shoes().size());
    frame.kind = "class";
    frame.body = *fill_template(class_page_template(), data_);
    return framed_page(frame);
  }

 private:
  void head() {
    const RuleSet& rules = story_.program.rules;
    std::vector<std::string> parts{fmt::format("{} students", story_.table.observers().size()),
                                   fmt::format("{} shoes", story_.table.shoes().size()),
                                   fmt::format("{} records", story_.table.record_count()),
                                   fmt::format("rules {}", rules.name)};
    if (!rules.edition.empty()) {
      parts.push_back(fmt::format("edition {}", rules.edition));
    }
    data_.each("head", parts);
    data_.each("first", class_remarks(story_));
    data_.each("students", story_.table.observers());
  }

  void sentences() {
    std::vector<std::string> said;
    said.reserve(story_.agreement.apart.size());
    for (const StandsApart& one : story_.agreement.apart) {
      said.push_back(apart_words(story_, one));
    }
    data_.each("apart", or_else(page_quotes(said), "Nobody stands apart from the others."));
    said = {};
    for (const Confusing& one : story_.agreement.confusing) {
      said.push_back(confusing_words(story_, one));
    }
    data_.each("confusing",
               or_else(page_quotes(said), "No question confuses the class as a whole."));
    said = {};
    for (const SplitShoe& one : story_.agreement.split) {
      said.push_back(split_words(story_, one));
    }
    data_.each("split",
               or_else(page_quotes(said),
                       "On each shoe at least half of all pairs of students give the same grade."));
  }

  static std::vector<std::string> or_else(std::vector<std::string> said,
                                          std::string_view otherwise) {
    if (said.empty()) {
      said.emplace_back(otherwise);
    }
    return said;
  }

  void remarks() {
    bool any = false;
    for (const TopicAgreement& topic : story_.agreement.topics) {
      const std::vector<std::string> lines = topic_remarks(story_, topic);
      if (!lines.empty()) {
        PageData& one = data_.add("remarks");
        one.words("title", topic_title(story_, topic.rated.topic));
        one.each("lines", page_quotes(lines));
        any = true;
      }
    }
    data_.fact("has_remarks", any);
  }

  IntervalRows forest() const {
    std::vector<IntervalRow> rows;
    const auto add = [&](std::string_view heading, bool of_traits) {
      rows.push_back({std::string(heading), unknown, unknown, unknown, {}, true});
      for (const TopicAgreement& topic : story_.agreement.topics) {
        if (is_trait(topic) == of_traits) {
          rows.push_back(
              forest_row(topic_title(story_, topic.rated.topic), topic.headline().estimate));
        }
      }
    };
    add("Grade, score and sections", false);
    add("Question by question", true);
    return agreement_forest("Agreement beyond chance, by question", std::move(rows));
  }

  void tables() {
    bool answers = false;
    bool readings = false;
    for (std::size_t i = 0; i < story_.agreement.topics.size(); ++i) {
      const TopicAgreement& topic = story_.agreement.topics[i];
      if (is_of_numbers(topic)) {
        readings_row(i);
        readings = true;
      } else {
        answers_row(topic);
        answers = true;
      }
    }
    data_.fact("has_answers", answers);
    data_.fact("has_readings", readings);
  }

  void answers_row(const TopicAgreement& topic) {
    PageData& row = data_.add("answers");
    row.words("title", topic_title(story_, topic.rated.topic));
    std::vector<double> all;
    all.reserve(topic.students.size());
    for (const StudentOnTopic& student : topic.students) {
      all.push_back(student.meets);
    }
    const double middle = middle_of(all);
    for (const double meets : all) {
      PageData& cell = row.add("cells");
      cell.words("words", std::isnan(meets) ? "–" : fmt::format("{:.0f}", 100 * meets));
      cell.fact("far", meets <= middle - far_below);
    }
  }

  // Whether a student was said to stand apart on a topic; on the score as a whole.
  bool stands_apart(std::size_t observer, std::size_t topic) const {
    const bool is_score = story_.agreement.topics[topic].rated.topic.kind == Topic::Kind::score;
    return std::any_of(
        story_.agreement.apart.begin(), story_.agreement.apart.end(), [&](const StandsApart& one) {
          const bool of_score = !one.topic && one.how != StandsApart::How::at_odds;
          return one.observer == observer && (one.topic == topic || (is_score && of_score));
        });
  }

  void readings_row(std::size_t index) {
    const TopicAgreement& topic = story_.agreement.topics[index];
    const std::string unit = topic_unit(story_, topic.rated.topic);
    PageData& row = data_.add("readings");
    row.words("title", unit.empty()
                           ? topic_title(story_, topic.rated.topic)
                           : fmt::format("{} ({})", topic_title(story_, topic.rated.topic), unit));
    for (std::size_t i = 0; i < topic.students.size(); ++i) {
      const double bias = topic.students[i].beside.bias.value;
      PageData& cell = row.add("cells");
      cell.words("words", std::isnan(bias)
                              ? "–"
                              : fmt::format("{}{}", bias >= 0.05 ? "+" : "", with_places(bias, 1)));
      cell.fact("far", stands_apart(i, index));
    }
  }

  void plots() {
    bool any = false;
    for (std::size_t i = 0; i < story_.agreement.topics.size(); ++i) {
      const TopicAgreement& topic = story_.agreement.topics[i];
      const bool is_measured = is_trait(topic) && is_of_numbers(topic) &&
                               !std::holds_alternative<DerivedKind>(
                                   story_.program.rules.traits[topic.rated.topic.index].kind);
      if (is_measured || topic.rated.topic.kind == Topic::Kind::score) {
        any = plot(i) || any;
      }
    }
    data_.fact("has_plots", any);
  }

  // Each reading less the mean of the others, over the mean of both.
  bool plot(std::size_t index) {
    const TopicAgreement& topic = story_.agreement.topics[index];
    const std::string unit = topic_unit(story_, topic.rated.topic);
    std::vector<MeasuredPair> differences;  // from 0, so that the limits are those of all together
    Plane plane;
    for (std::size_t i = 0; i < topic.students.size(); ++i) {
      for (const MeasuredPair& pair : pairs_with_others(topic.rated.ratings.numbers, i)) {
        const double difference = pair.first - pair.second;
        differences.push_back({difference, 0});
        plane.points.push_back({{(pair.first + pair.second) / 2, difference},
                                stands_apart(i, index) ? PointMark::far : PointMark::usual});
      }
    }
    const LimitsOfAgreement limits = limits_of_agreement(differences);
    if (!limits.low.is_known()) {
      return false;
    }
    const std::string title = topic_title(story_, topic.rated.topic);
    const std::string says = fmt::format(
        "One student less the mean of the others: 95 % of differences lie from {} to {}. Squares: "
        "who stands apart.",
        measured_words(limits.low.value, unit), measured_words(limits.high.value, unit));
    plane.id = fmt::format("plot-{}", index);
    plane.title = title;
    plane.description = says;
    plane.across = fmt::format("mean{}{}", unit.empty() ? "" : ", ", unit);
    plane.up = fmt::format("difference{}{}", unit.empty() ? "" : ", ", unit);
    const auto [least, most] = std::minmax_element(
        plane.points.begin(), plane.points.end(),
        [](const PlanePoint& a, const PlanePoint& b) { return a.at.x < b.at.x; });
    const double from = least->at.x;
    const double to = most->at.x;
    const auto level = [&](double at, PlaneLineKind kind, std::string_view words) {
      plane.lines.push_back({{{from, at}, {to, at}}, kind, std::string(words)});
    };
    level(limits.high.value, PlaneLineKind::limit,
          fmt::format("upper {}", measured_words(limits.high.value, unit)));
    level(0, PlaneLineKind::main, "no difference");
    level(limits.low.value, PlaneLineKind::limit,
          fmt::format("lower {}", measured_words(limits.low.value, unit)));
    PageData& one = data_.add("plots");
    one.words("title", title);
    one.markup("picture", draw(plane));
    one.words("says", says);
    return true;
  }

  const ClassStory& story_;
  PageData data_;
};

}  // namespace

std::string class_page(const ClassStory& story) { return ClassPage(story).write(); }

}  // namespace heelrule
