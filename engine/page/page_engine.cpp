#include "engine/page/page_engine.hpp"

#include "engine/page/answers_json.hpp"
#include "engine/page/opened_json.hpp"
#include "engine/page/page_rules.hpp"
#include "engine/page/questions_json.hpp"
#include "engine/page/tree_json.hpp"
#include "engine/reading/json_tree.hpp"
#include "engine/report/json_report.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

Node tree_of(std::string_view text) {
  Sources sources;
  Diagnostics diagnostics;
  const std::uint32_t source = sources.add("page", std::string(text));
  auto tree = read_json(sources, source, diagnostics);
  return tree ? std::move(*tree) : Node{};
}

}  // namespace

Parsed<PageEngine> PageEngine::open(std::string_view rules) {
  const auto program = program_of_page(rules);
  if (!program) {
    return program.problem();
  }
  return PageEngine(*program);
}

void PageEngine::speak(std::string_view languages) {
  languages_.clear();
  for (const Node& language : tree_of(languages).items) {
    languages_.push_back(language.text);
  }
}

const PageEngine::Judged& PageEngine::judge(std::string_view record) const {
  if (!judged_ || judged_->record != record) {
    SoundAnswers answers = sound_answers(tree_of(record), program_.rules);
    Verdict verdict = grade(program_, answers.inspection);
    judged_ = Judged{std::string(record), std::move(answers), std::move(verdict)};
  }
  return *judged_;
}

std::string PageEngine::questions() const { return questions_json(program_, languages_); }

std::string PageEngine::answers(std::string_view record) const {
  const Judged& judged = judge(record);
  return answers_json(program_, judged.answers, judged.verdict, languages_);
}

std::string PageEngine::verdict(std::string_view record) const {
  const Judged& judged = judge(record);
  return json_report(program_, judged.answers.inspection, judged.verdict, languages_);
}

std::string PageEngine::file(std::string_view record) const {
  JsonWriter json;
  write_tree(json, tree_of(record));
  return json.take() + "\n";
}

std::string PageEngine::opened(std::string_view text) const {
  return opened_json(text, program_.rules);
}

}  // namespace heelrule
