#include "engine/recording/blank_yaml.hpp"

#include <fmt/format.h>

#include <string_view>

#include "engine/recording/bench_order.hpp"
#include "engine/recording/question.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/wrap.hpp"
#include "engine/report/yaml_text.hpp"

namespace heelrule {
namespace {

constexpr std::size_t page_width = 80;

// The head is one inspection's own; everything else comes from the rule set.
constexpr std::string_view head = R"(
inspection:
  rules: {}
  date: ""                        # the day, as 2026-10-03
  observer: ""                    # your code, as S-07
  client: ""                      # a code, as C-014, and never a name
  shoe: {{label: "", marked: ""}}   # words that tell the pair, and its size
  note: ""
)";

constexpr std::string_view manner =
    "Write what you saw in place of each `not seen`, and keep the braces. What stays `not seen` "
    "is never a fail: the report says what it leaves open.";

constexpr std::string_view further =
    "Taken again: [246, 247, 246 mm]. Both sides alike: one value in place of {left: …, right: …}. "
    "Not seen, and why: {not seen: sole was wet}. With a note: {value: firm, note: creased}. "
    "Unusual, and true: {value: 131 mm, confirmed: yes}. A decimal has a point: 242.5 mm.";

class BlankYaml {
 public:
  BlankYaml(const Program& program, std::span<const std::string> languages)
      : program_(program), languages_(fallback_order(languages, program.rules)) {}

  std::string write() {
    const RuleSet& rules = program_.rules;
    comment("", fmt::format("{}: a blank sheet{}", rules.title.in(languages_),
                            rules.edition.empty() ? "" : ", edition " + rules.edition));
    comment("", manner);
    comment("", further);
    text_ += fmt::format(head, yaml_text(rules.short_name()));
    bool found_begun = false;
    for (const BenchSection& section : bench_order(program_)) {
      if (section.kind == BenchSection::Kind::safety) {
        text_ += "\nsafety:\n";
      } else {
        if (!found_begun) {
          text_ += "\nfound:\n";
        }
        text_ += fmt::format("\n  # ==== {} ====\n", heading(section, rules, languages_));
        found_begun = true;
      }
      for (const std::size_t trait : section.traits) {
        ask(question(rules, trait));
      }
    }
    return std::move(text_);
  }

 private:
  // Words as comment lines, the first of which begins with `mark`.
  void comment(std::string_view begin, std::string_view words, std::string_view mark = "") {
    const std::string lines = wrapped(words, mark.size(), mark,
                                      page_width - begin.size() - std::string_view("# ").size());
    std::string_view rest = lines;
    while (!rest.empty()) {
      const std::size_t end = rest.find('\n') + 1;
      text_ += fmt::format("{}# {}", begin, rest.substr(0, end));
      rest.remove_prefix(end);
    }
  }

  void ask(const Question& question) {
    text_ += '\n';
    comment("  ", question.ask.in(languages_));
    if (!question.how.empty()) {
      comment("  ", question.how.in(languages_), "  ");
    }
    levels(question);
    comment("  ", sample(question), "> ");
    text_ += fmt::format("  {}: {}\n", question.name,
                         question.sided() ? "{left: not seen, right: not seen}" : "not seen");
  }

  void levels(const Question& question) {
    for (const Level& level : question.levels) {
      if (!level.meaning.empty()) {
        comment("  ", fmt::format("{}: {}", level.name.value, level.meaning.in(languages_)),
                "  - ");
      }
    }
  }

  static std::string sample(const Question& question) {
    return question.form == AnswerForm::fibres
               ? form_words(question) + ": {cotton: 80 %, polyester: 20 %}"
               : form_words(question);
  }

  const Program& program_;
  std::vector<std::string> languages_;
  std::string text_;
};

}  // namespace

std::string blank_yaml(const Program& program, std::span<const std::string> languages) {
  return BlankYaml(program, languages).write();
}

}  // namespace heelrule
