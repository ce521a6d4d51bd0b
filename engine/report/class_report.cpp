#include "engine/report/class_report.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/report/agreement_json.hpp"
#include "engine/report/agreement_names.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/text_page.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

class ClassWriter {
 public:
  explicit ClassWriter(const ClassStory& story) : story_(story) {}

  std::string write() {
    const RuleSet& rules = story_.program.rules;
    json_.begin_object();
    json_.text("format", "heelrule class").number("version", class_json_version);
    json_.text("rules", rules.name).text("edition", rules.edition);
    json_.texts("students", story_.table.observers()).texts("shoes", story_.table.shoes());
    json_.number("records", static_cast<double>(story_.table.record_count()));
    json_.number("left_out", static_cast<double>(story_.left_out));
    json_.number("confidence", confidence);
    json_.texts("said", class_remarks(story_));
    stands_apart();
    confusing();
    split();
    json_.key("topics").begin_array();
    for (const TopicAgreement& topic : story_.agreement.topics) {
      one_topic(topic);
    }
    json_.end_array();
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  const Topic& topic_at(std::size_t index) const {
    return story_.agreement.topics[index].rated.topic;
  }

  void text_or_null(std::string_view name, const std::string& text) {
    json_.key(name);
    text.empty() ? json_.null() : json_.text(text);
  }

  void stands_apart() {
    json_.key("stands_apart").begin_array();
    for (const StandsApart& one : story_.agreement.apart) {
      json_.begin_object();
      json_.text("student", story_.table.observers()[one.observer]).text("how", in_words(one.how));
      text_or_null("trait", one.topic ? topic_name(story_, topic_at(*one.topic)) : "");
      json_.number("subjects", one.standing.subjects);
      write_estimate(json_, "bias", one.standing.bias);
      json_.number("spread", one.standing.spread);
      json_.number("spread_of_others", one.standing.others_spread);
      json_.number("chance", one.how == StandsApart::How::scattered ? one.standing.spread_chance
                                                                    : one.standing.bias_chance);
      json_.text("says", apart_words(story_, one)).end_object();
    }
    json_.end_array();
  }

  void confusing() {
    json_.key("confusing").begin_array();
    for (const Confusing& one : story_.agreement.confusing) {
      const std::vector<std::string> levels = topic_levels(story_, topic_at(one.topic));
      json_.begin_object().text("trait", topic_name(story_, topic_at(one.topic)));
      json_.key("mixed_up").begin_array();
      if (one.one_level) {
        json_.text(levels[*one.one_level]).text(levels[*one.other_level]);
      }
      json_.end_array();
      write_number(json_, "share_of_misses", one.one_level ? one.of_the_misses : unknown);
      write_number(json_, "error", one.error);
      write_number(json_, "stated_doubt", one.doubt);
      json_.text("says", confusing_words(story_, one)).end_object();
    }
    json_.end_array();
  }

  void split() {
    const std::vector<std::string> levels = topic_levels(story_, {Topic::Kind::grade, 0});
    json_.key("split_shoes").begin_array();
    for (const SplitShoe& one : story_.agreement.split) {
      json_.begin_object().text("shoe", story_.table.shoes()[one.shoe]);
      json_.number("agreement", one.agreement);
      json_.key("grades").begin_array();
      for (std::size_t i = 0; i < levels.size(); ++i) {
        json_.begin_object().text("grade", levels[i]).number("students", one.grades[i]);
        json_.end_object();
      }
      json_.end_array();
      std::vector<std::string> traits;
      traits.reserve(one.topics.size());
      for (const std::size_t topic : one.topics) {
        traits.push_back(topic_name(story_, topic_at(topic)));
      }
      json_.texts("traits", traits).text("says", split_words(story_, one)).end_object();
    }
    json_.end_array();
  }

  void one_topic(const TopicAgreement& topic) {
    const Topic& what = topic.rated.topic;
    json_.begin_object();
    json_.text("what", topic_kind(what));
    text_or_null("name", topic_name(story_, what));
    json_.text("title", topic_title(story_, what));
    json_.text("kind", key_of(topic.rated.ratings.kind));
    text_or_null("unit", topic_unit(story_, what));
    json_.texts("levels", topic_levels(story_, what));
    json_.number("subjects", static_cast<double>(topic.rated.subjects.size()));
    json_.texts("said", topic_remarks(story_, topic));
    json_.key("headline");
    write_coefficient(json_, topic.headline());
    json_.key("coefficients").begin_array();
    for (const Coefficient& coefficient : topic.coefficients) {
      write_coefficient(json_, coefficient);
    }
    json_.end_array();
    json_.key("measurement_error");
    topic.error ? write_error(json_, *topic.error) : static_cast<void>(json_.null());
    json_.key("students").begin_array();
    for (std::size_t i = 0; i < topic.students.size(); ++i) {
      const StudentOnTopic& student = topic.students[i];
      json_.begin_object().text("student", story_.table.observers()[i]);
      json_.number("subjects", student.subjects);
      write_number(json_, "meets", student.meets);
      json_.key("beside_others");
      topic.error&& topic.rated.ratings.kind == RatingKind::numbers
          ? write_limits(json_, student.beside)
          : static_cast<void>(json_.null());
      json_.end_object();
    }
    json_.end_array();
    json_.end_object();
  }

  const ClassStory& story_;
  JsonWriter json_;
};

void add_sentences(TextPage& page, std::string_view heading, const std::vector<std::string>& said,
                   std::string_view otherwise) {
  page.heading(heading);
  for (const std::string& sentence : said) {
    page.item(sentence);
  }
  if (said.empty()) {
    page.item(otherwise);
  }
}

template <class Things, class Words>
std::vector<std::string> sentences(const ClassStory& story, const Things& things,
                                   const Words& words) {
  std::vector<std::string> said;
  said.reserve(things.size());
  for (const auto& thing : things) {
    said.push_back(words(story, thing));
  }
  return said;
}

void add_topic(TextPage& page, const ClassStory& story, const TopicAgreement& topic) {
  const std::string unit = topic_unit(story, topic.rated.topic);
  page.item(topic_title(story, topic.rated.topic));
  std::string figures =
      fmt::format("{}: {}", title_of(topic.headline()), estimate_words(topic.headline().estimate));
  if (topic.rated.ratings.kind == RatingKind::numbers) {
    figures += fmt::format("; readings of one thing scatter by {}",
                           measured_words(topic.error->technical, unit));
    if (topic.error->agreement_change.is_known()) {
      figures += fmt::format("; smallest detectable change {}",
                             measured_words(topic.error->agreement_change.value, unit));
    }
  } else {
    const Coefficient* counted =
        find(topic.coefficients, CoefficientName::percent_agreement, Weighting::unweighted);
    figures += fmt::format("; {} of pairs agree", share_words(counted->estimate.value));
  }
  page.detail(figures + ".");
  for (const std::string& remark : topic_remarks(story, topic)) {
    page.detail(remark);
  }
}

}  // namespace

std::string class_json(const ClassStory& story) { return ClassWriter(story).write(); }

std::string class_text(const ClassStory& story, bool colour) {
  TextPage page(colour);
  const RuleSet& rules = story.program.rules;
  page.title("How far the class agrees");
  page.line(fmt::format("{} students · {} shoes · {} records", story.table.observers().size(),
                        story.table.shoes().size(), story.table.record_count()));
  page.line(fmt::format("rules {}{}{}", rules.name, rules.edition.empty() ? "" : " · edition ",
                        rules.edition));
  page.line("In brackets: the interval that holds the true figure 19 times in 20.");
  const std::vector<std::string> remarks = class_remarks(story);
  if (!remarks.empty()) {
    add_sentences(page, "To be read first", remarks, "");
  }
  add_sentences(page, "Who stands apart", sentences(story, story.agreement.apart, apart_words),
                "Nobody stands apart from the others.");
  add_sentences(page, "Questions that confuse",
                sentences(story, story.agreement.confusing, confusing_words),
                "No question confuses the class as a whole.");
  add_sentences(page, "Shoes that split the class",
                sentences(story, story.agreement.split, split_words),
                "On each shoe at least half of all pairs of students give the same grade.");
  const auto add_topics = [&](std::string_view heading, bool of_traits) {
    page.heading(heading);
    for (const TopicAgreement& topic : story.agreement.topics) {
      if ((topic.rated.topic.kind == Topic::Kind::trait) == of_traits) {
        add_topic(page, story, topic);
      }
    }
  };
  add_topics("Grade, score and sections", false);
  add_topics("Question by question", true);
  return page.take();
}

}  // namespace heelrule
