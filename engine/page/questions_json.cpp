#include "engine/page/questions_json.hpp"

#include <algorithm>
#include <vector>

#include "engine/quantity/fibre.hpp"
#include "engine/recording/bench_order.hpp"
#include "engine/recording/question.hpp"
#include "engine/report/account.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr double thousandths = 1000;

class QuestionWriter {
 public:
  QuestionWriter(const Program& program, std::span<const std::string> languages)
      : program_(program),
        rules_(program.rules),
        order_(fallback_order(languages, program.rules)),
        cautions_(usual_cautions(program.rules, order_)) {}

  std::string write() {
    json_.begin_object()
        .text("rules", rules_.short_name())
        .text("title", rules_.title.in(order_))
        .text("about", rules_.about.in(order_))
        .text("edition", rules_.edition)
        .texts("languages", rules_.languages)
        .text("language", language());
    json_.key("sections").begin_array();
    for (const BenchSection& section : bench_order(program_)) {
      write(section);
    }
    json_.end_array();
    grades();
    fibres();
    json_.texts("cautions", cautions_).end_object();
    return json_.take();
  }

 private:
  // The one of the rule set's languages that is read first.
  std::string_view language() const {
    const auto known = [&](const std::string& one) {
      return std::find(rules_.languages.begin(), rules_.languages.end(), one) !=
             rules_.languages.end();
    };
    const auto at = std::find_if(order_.begin(), order_.end(), known);
    return at == order_.end() ? std::string_view{} : std::string_view(*at);
  }

  void write(const BenchSection& section) {
    json_.begin_object()
        .text("name", short_name(section, rules_))
        .text("title", heading(section, rules_, order_))
        .key("questions")
        .begin_array();
    for (const std::size_t trait : section.traits) {
      write(question(rules_, trait));
    }
    json_.end_array().end_object();
  }

  void write(const Question& asked) {
    json_.begin_object()
        .text("name", asked.name)
        .truth("safety", asked.is_safety)
        .text("ask", asked.ask.in(order_))
        .text("how", asked.how.in(order_))
        .text("form", in_words(asked.form));
    sides(asked);
    json_.key("units").begin_array();
    for (const Unit unit : asked.units) {
      json_.text(facts(unit).symbol);
    }
    json_.end_array().text("usual", asked.plausible ? plausible_words(asked) : std::string{});
    json_.key("levels").begin_array();
    levels(asked);
    json_.end_array().end_object();
  }

  void sides(const Question& asked) {
    json_.key("sides").begin_array();
    for (const Side side : sides_of(asked.sided())) {
      json_.text(in_words(side));
    }
    json_.end_array();
  }

  void levels(const Question& asked) {
    if (asked.form == AnswerForm::yes_or_no) {
      level("yes", {});
      level("no", {});
    }
    for (const Level& one : asked.levels) {
      level(one.name.value, one.meaning.in(order_));
    }
  }

  void level(std::string_view name, std::string_view meaning) {
    json_.begin_object().text("name", name).text("meaning", meaning).end_object();
  }

  void grades() {
    json_.key("grades").begin_array();
    for (const Grade& grade : rules_.grades) {
      json_.begin_object()
          .text("name", grade.name.value)
          .number("from", grade.from.value / thousandths)
          .end_object();
    }
    json_.end_array();
  }

  void fibres() {
    json_.key("fibres").begin_array();
    for (int i = 0; i <= static_cast<int>(Fibre::polylactide); ++i) {
      json_.text(show(static_cast<Fibre>(i)));
    }
    json_.end_array();
  }

  const Program& program_;
  const RuleSet& rules_;
  std::vector<std::string> order_;
  std::vector<std::string> cautions_;
  JsonWriter json_{JsonWriter::Layout::compact};
};

}  // namespace

std::string questions_json(const Program& program, std::span<const std::string> languages) {
  return QuestionWriter(program, languages).write();
}

}  // namespace heelrule
