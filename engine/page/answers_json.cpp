#include "engine/page/answers_json.hpp"

#include <vector>

#include "engine/fitting/fitting.hpp"
#include "engine/fitting/visit_of_record.hpp"
#include "engine/page/derived_values.hpp"
#include "engine/report/account.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/fitting_account.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

void write_faults(JsonWriter& json, const std::vector<AnswerFault>& faults) {
  json.key("faults").begin_array();
  for (const AnswerFault& fault : faults) {
    json.begin_object()
        .text("name", fault.name)
        .text("side", in_words(fault.side))
        .text("message", fault.message)
        .text("hint", fault.hint)
        .truth("unusual", fault.is_unusual)
        .end_object();
  }
  json.end_array();
}

void write_derived(JsonWriter& json, const Program& program, const Inspection& inspection,
                   std::span<const std::string> languages) {
  const auto order = fallback_order(languages, program.rules);
  json.key("derived").begin_array();
  for (const DerivedValue& value : derived_values(program, inspection)) {
    const Trait& trait = program.rules.traits[value.trait];
    json.begin_object()
        .text("name", trait.name)
        .text("ask", trait.ask.in(order))
        .text("side", in_words(value.side))
        .text("value", value.words)
        .end_object();
  }
  json.end_array();
}

void write_settle(JsonWriter& json, const Program& program, const Inspection& inspection,
                  const Verdict& verdict, std::span<const std::string> languages) {
  const auto order = fallback_order(languages, program.rules);
  json.key("settle").begin_array();
  for (const Missing& missing : verdict.would_settle) {
    const auto questions = missing_questions(program, inspection, {missing}, order);
    json.begin_object()
        .text("name", program.rules.traits[missing.trait].name)
        .text("words", questions.empty() ? std::string{} : questions.front())
        .end_object();
  }
  json.end_array();
}

void write_size_section(JsonWriter& json, const FittingSection& section) {
  json.begin_object()
      .text("title", section.title)
      .texts("lines", section.lines)
      .key("table")
      .begin_array();
  for (const auto& [size, how] : section.table) {
    json.begin_array().text(size).text(how).end_array();
  }
  json.end_array().end_object();
}

void write_sizes(JsonWriter& json, const Program& program, const Inspection& inspection,
                 const Verdict& verdict, std::span<const std::string> languages) {
  const auto window = toe_window(program.rules);
  const auto visit = visit_of_record(program.rules, inspection);
  json.key("sizes").begin_array();
  if (window && visit) {
    const Fitting found = fitting({&*visit, 1}, *window, is_for_children(program.rules));
    for (const FittingSection& section :
         fitting_account(program, inspection, verdict, found, languages)) {
      write_size_section(json, section);
    }
  }
  json.end_array();
}

}  // namespace

std::string answers_json(const Program& program, const SoundAnswers& answers,
                         const Verdict& verdict, std::span<const std::string> languages) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object();
  write_faults(json, answers.faults);
  write_derived(json, program, answers.inspection, languages);
  write_settle(json, program, answers.inspection, verdict, languages);
  write_sizes(json, program, answers.inspection, verdict, languages);
  json.truth("refers", verdict.refers()).end_object();
  return json.take();
}

}  // namespace heelrule
