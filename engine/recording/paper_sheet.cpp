#include "engine/recording/paper_sheet.hpp"

#include <fmt/format.h>

#include <string_view>
#include <vector>

#include "engine/drawing/blank_ruler.hpp"
#include "engine/recording/bench_order.hpp"
#include "engine/recording/question.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {

std::string_view paper_sheet_style();
std::string_view paper_sheet_template();

namespace {

constexpr std::size_t half_a_column = 29;  // characters, a box being as wide as four
constexpr std::size_t box = 4;

// Whether the boxes of both sides stand side by side.
bool fits_half(const std::vector<std::string>& boxes) {
  std::size_t width = 0;
  for (const std::string& words : boxes) {
    width += character_count(words) + box;
  }
  return width > 0 && width <= half_a_column;
}

class PaperSheet {
 public:
  PaperSheet(const Program& program, std::span<const std::string> languages)
      : rules_(program.rules),
        order_(bench_order(program)),
        languages_(fallback_order(languages, rules_)) {}

  std::string write() {
    const std::string title(rules_.title.in(languages_));
    PageData data;
    data.words("title", title);
    data.words("rules", fmt::format("{} {}", rules_.short_name(), rules_.edition));
    for (const BenchSection& section : order_) {
      PageData& part = data.add("sections");
      part.words("heading", heading(section, rules_, languages_));
      part.fact("is_safety", section.kind == BenchSection::Kind::safety);
      for (const std::size_t trait : section.traits) {
        ask(question(rules_, trait), part.add("questions"));
      }
    }
    for (const UsualCaution& caution : rules_.cautions) {
      data.add("cautions").words("words", caution.words.in(languages_));
    }
    PageFrame frame;
    frame.title = title;
    frame.running_left = title;
    frame.running_right = rules_.edition;
    frame.kind = "sheet";
    frame.own_style = paper_sheet_style();
    frame.body = *fill_template(paper_sheet_template(), data);
    return framed_page(frame);
  }

 private:
  void ask(const Question& question, PageData& data) {
    data.words("ask", question.ask.in(languages_));
    data.words("how", question.how.in(languages_));
    for (const Level& level : question.levels) {
      if (!level.meaning.empty()) {
        PageData& meaning = data.add("meanings");
        meaning.words("level", level.name.value);
        meaning.words("means", level.meaning.in(languages_));
      }
    }
    if (question.sided()) {
      answer(question, "L", data.add("answers"));
      answer(question, "R", data.add("answers"));
    } else {
      answer(question, "", data.add("answers"));
    }
    const auto boxes = choices(question);
    data.fact("in_boxes", !boxes.empty());
    data.fact("short", !boxes.empty() && !question.sided());
    data.fact("abreast", question.sided() && fits_half(boxes));
    ruler(question, data);
  }

  static std::vector<std::string> choices(const Question& question) {
    std::vector<std::string> words;
    if (question.form == AnswerForm::yes_or_no) {
      words = {"yes", "no"};
    }
    for (const Level& level : question.levels) {
      words.push_back(level.name.value);
    }
    return words;
  }

  static void answer(const Question& question, std::string_view side, PageData& data) {
    data.words("side", side);
    const auto boxes = choices(question);
    data.each("boxes", boxes);
    data.fact("line", boxes.empty());
    if (question.form == AnswerForm::measure) {
      data.words("unit", facts(question.units.front()).symbol);
    }
  }

  void ruler(const Question& question, PageData& data) const {
    if (!question.plausible || question.plausible->from.stored >= question.plausible->to.stored) {
      return;
    }
    const Unit unit = question.units.front();
    std::string id = question.name;
    for (char& sign : id) {
      sign = sign == '_' ? '-' : sign;
    }
    data.markup("ruler", draw(BlankRuler{id,
                                         std::string(question.ask.in(languages_)),
                                         {in_unit(question.plausible->from.stored, unit),
                                          in_unit(question.plausible->to.stored, unit)},
                                         std::string(facts(unit).symbol)}));
  }

  const RuleSet& rules_;
  std::vector<BenchSection> order_;
  std::vector<std::string> languages_;
};

}  // namespace

std::string paper_sheet(const Program& program, std::span<const std::string> languages) {
  return PaperSheet(program, languages).write();
}

}  // namespace heelrule
