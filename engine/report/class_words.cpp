#include "engine/report/class_words.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

std::string listed(const std::vector<std::string>& parts, std::string_view last) {
  std::string words;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    words += i == 0 ? "" : (i + 1 == parts.size() ? fmt::format(" {} ", last) : ", ");
    words += parts[i];
  }
  return words;
}

std::string quoted_title(const ClassStory& story, std::size_t topic) {
  return fmt::format("“{}”", topic_title(story, story.agreement.topics[topic].rated.topic));
}

std::string plural(double count, std::string_view one, std::string_view many) {
  return fmt::format("{:.0f} {}", count, count == 1 ? one : many);
}

const Topic& topic_at(const ClassStory& story, std::size_t index) {
  return story.agreement.topics[index].rated.topic;
}

// Without its sign, in the same order.
Estimate without_sign(const Estimate& estimate) {
  return estimate.value < 0 ? Estimate{-estimate.value,
                                       estimate.standard_error,
                                       {-estimate.interval.high, -estimate.interval.low},
                                       estimate.by}
                            : estimate;
}

}  // namespace

std::string topic_title(const ClassStory& story, const Topic& topic) {
  switch (topic.kind) {
    case Topic::Kind::trait:
      return std::string(story.program.rules.traits[topic.index].ask.in(story.languages));
    case Topic::Kind::section:
      return std::string(story.program.rules.sections[topic.index].title.in(story.languages));
    case Topic::Kind::score:
      return "Score";
    case Topic::Kind::grade:
      return "Grade";
  }
  return {};
}

std::string_view topic_kind(const Topic& topic) {
  switch (topic.kind) {
    case Topic::Kind::trait:
      return "trait";
    case Topic::Kind::section:
      return "section";
    case Topic::Kind::score:
      return "score";
    case Topic::Kind::grade:
      return "grade";
  }
  return {};
}

std::string topic_name(const ClassStory& story, const Topic& topic) {
  switch (topic.kind) {
    case Topic::Kind::trait:
      return story.program.rules.traits[topic.index].name;
    case Topic::Kind::section:
      return story.program.rules.sections[topic.index].name.value;
    case Topic::Kind::score:
    case Topic::Kind::grade:
      return {};
  }
  return {};
}

std::vector<std::string> topic_levels(const ClassStory& story, const Topic& topic) {
  std::vector<std::string> names;
  const RuleSet& rules = story.program.rules;
  if (topic.kind == Topic::Kind::grade) {
    for (std::size_t i = rules.grades.size(); i > 0; --i) {
      names.push_back(rules.grades[i - 1].name.value);
    }
  }
  if (topic.kind != Topic::Kind::trait) {
    return names;
  }
  const Type& type = story.program.traits[topic.index].type;
  if (type.kind == Type::Kind::yes_no) {
    return {"no", "yes"};
  }
  if (type.kind == Type::Kind::level) {
    for (const Level& level : levels_of(rules.traits[type.scale].kind)) {
      names.push_back(level.name.value);
    }
  }
  return names;
}

std::string topic_unit(const ClassStory& story, const Topic& topic) {
  if (topic.kind == Topic::Kind::score || topic.kind == Topic::Kind::section) {
    return "points";
  }
  if (topic.kind == Topic::Kind::grade) {
    return {};
  }
  const TraitProgram& trait = story.program.traits[topic.index];
  switch (trait.type.kind) {
    case Type::Kind::number:
      return std::string(facts(trait.unit).symbol);
    case Type::Kind::shoe_size:
    case Type::Kind::sock_range:
      return "mm";
    case Type::Kind::yes_no:
    case Type::Kind::level:
    case Type::Kind::fibres:
      return {};
  }
  return {};
}

std::string measured_words(double value, std::string_view unit) {
  if (std::isnan(value)) {
    return "–";
  }
  const double size = std::fabs(value);
  const int places = size >= 10 ? 1 : (size >= 0.1 || size == 0 ? 2 : 4);
  return fmt::format("{}{}{}", with_places(value, places), unit.empty() ? "" : " ", unit);
}

std::string measured_words(const Estimate& estimate, std::string_view unit) {
  return estimate.interval.is_known()
             ? fmt::format("{} ({} to {})", measured_words(estimate.value, unit),
                           measured_words(estimate.interval.low, ""),
                           measured_words(estimate.interval.high, ""))
             : measured_words(estimate.value, unit);
}

std::string_view in_words(StandsApart::How how) {
  switch (how) {
    case StandsApart::How::lenient:
      return "lenient";
    case StandsApart::How::severe:
      return "severe";
    case StandsApart::How::scattered:
      return "scattered";
    case StandsApart::How::at_odds:
      return "at odds";
    case StandsApart::How::reads_high:
      return "reads high";
    case StandsApart::How::reads_low:
      return "reads low";
  }
  return {};
}

std::string apart_words(const ClassStory& story, const StandsApart& one) {
  const std::string& who = story.table.observers()[one.observer];
  const Estimate bias = without_sign(one.standing.bias);
  const std::string shoes = plural(one.standing.subjects, "shoe", "shoes");
  switch (one.how) {
    case StandsApart::How::lenient:
      return fmt::format(
          "{} is more lenient than the others: {} more on average, over {}. Go through one shoe "
          "together, question by question.",
          who, measured_words(bias, "points"), shoes);
    case StandsApart::How::severe:
      return fmt::format(
          "{} is more severe than the others: {} fewer on average, over {}. Go through one shoe "
          "together, question by question.",
          who, measured_words(bias, "points"), shoes);
    case StandsApart::How::scattered:
      return fmt::format(
          "{} is now above and now below the others: the scores scatter by {} about them, those of "
          "the others by {}, over {}. Let {} look at one shoe twice, a day apart.",
          who, measured_words(one.standing.spread, "points"),
          measured_words(one.standing.others_spread, "points"), shoes, who);
    case StandsApart::How::at_odds:
      return fmt::format(
          "{} meets the others less often than they meet each other: by {} of the answers on "
          "average, over {}. It is no single question; ask how {} works.",
          who, share_words(bias.value), plural(one.standing.subjects, "question", "questions"),
          who);
    case StandsApart::How::reads_high:
    case StandsApart::How::reads_low:
      return fmt::format(
          "{} reads {} {} than the others: by {} on average, over {}. Watch where the tool is put.",
          who, quoted_title(story, *one.topic),
          one.how == StandsApart::How::reads_high ? "higher" : "lower",
          measured_words(bias, topic_unit(story, topic_at(story, *one.topic))),
          plural(one.standing.subjects, "reading", "readings"));
  }
  return {};
}

std::string confusing_words(const ClassStory& story, const Confusing& one) {
  const TopicAgreement& topic = story.agreement.topics[one.topic];
  const std::string unit = topic_unit(story, topic.rated.topic);
  if (topic.rated.ratings.kind == RatingKind::numbers) {
    const std::string stated =
        std::isnan(one.doubt)
            ? std::string("and the shoes differ hardly more")
            : fmt::format("and the rule set states {}", measured_words(one.doubt, unit));
    return fmt::format(
        "{} is read unsteadily by everybody, whoever is left out: readings of one thing scatter by "
        "{}, {}. Say more closely how to measure it (`how`), and practise it.",
        quoted_title(story, one.topic), measured_words(one.error, unit), stated);
  }
  std::string mixed;
  if (one.one_level) {
    const std::vector<std::string> levels = topic_levels(story, topic.rated.topic);
    mixed = fmt::format(
        " Of the pairs that do not agree {} mix up `{}` and `{}`: show these two "
        "side by side.",
        share_words(one.of_the_misses), levels[*one.one_level], levels[*one.other_level]);
  }
  return fmt::format(
      "{} confuses the class, whoever is left out: {} of the pairs agree, and {} is {}.{} Say more "
      "closely how to look (`how`), or ask something else.",
      quoted_title(story, one.topic),
      share_words(
          find(topic.coefficients, CoefficientName::percent_agreement, Weighting::unweighted)
              ->estimate.value),
      topic.rated.ratings.kind == RatingKind::names ? "Gwet's AC1" : "Gwet's AC2",
      figure_words(topic.headline().estimate.value), mixed);
}

std::string split_words(const ClassStory& story, const SplitShoe& one) {
  const std::vector<std::string> levels = topic_levels(story, {Topic::Kind::grade, 0});
  std::vector<std::string> grades;
  for (std::size_t i = one.grades.size(); i > 0; --i) {
    if (one.grades[i - 1] > 0) {
      grades.push_back(fmt::format("{} `{}`", one.grades[i - 1], levels[i - 1]));
    }
  }
  std::vector<std::string> hardest;
  hardest.reserve(one.topics.size());
  for (const std::size_t topic : one.topics) {
    hardest.push_back(quoted_title(story, topic));
  }
  return fmt::format(
      "{} splits the class: {}.{}", story.table.shoes()[one.shoe], listed(grades, "and"),
      hardest.empty() ? std::string{}
                      : fmt::format(" On it they differ most about {}.", listed(hardest, "and")));
}

std::vector<std::string> topic_remarks(const ClassStory& story, const TopicAgreement& topic) {
  std::vector<std::string> words;
  const std::vector<std::string> levels = topic_levels(story, topic.rated.topic);
  for (const Remark& remark : topic.remarks) {
    if (!std::holds_alternative<FewSubjects>(remark)) {
      words.push_back(remark_words(remark, levels));
    }
  }
  return words;
}

std::vector<std::string> class_remarks(const ClassStory& story) {
  std::vector<std::string> words;
  if (story.left_out > 0) {
    words.push_back(fmt::format(
        "{} could not be used, and no figure counts {}. Mend what is wrong there, and ask again.",
        plural(static_cast<double>(story.left_out), "record", "records"),
        story.left_out == 1 ? "it" : "them"));
  }
  const std::size_t shoes = story.table.shoes().size();
  const std::size_t students = story.table.observers().size();
  if (static_cast<double>(shoes) < few_subjects) {
    words.push_back(
        fmt::format("{}: too few to be sure of single figures. Look at how wide the intervals are.",
                    plural(static_cast<double>(shoes), "shoe", "shoes")));
  }
  if (students < 4) {
    words.push_back(
        fmt::format("{}: too few to tell a confusing question from a student who stands apart.",
                    plural(static_cast<double>(students), "student", "students")));
  }
  const std::size_t gaps = shoes * students - story.table.record_count();
  if (gaps > 0) {
    words.push_back(fmt::format(
        "{} of {} records are not there. Figures that need everybody's (ICC, standard error of "
        "measurement) rest on the shoes that all students saw, and are left out where there are "
        "fewer than two.",
        gaps, shoes * students));
  }
  return words;
}

}  // namespace heelrule
