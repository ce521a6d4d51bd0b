#include "engine/page/opened_json.hpp"

#include "engine/page/answer_fields.hpp"
#include "engine/page/tree_json.hpp"
#include "engine/reading/json_tree.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

std::string errors_json(const Diagnostics& diagnostics, const Sources& sources) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object().key("errors").begin_array();
  for (const Diagnostic& diagnostic : diagnostics.by_place()) {
    const LinePosition at = sources.position(diagnostic.where.source, diagnostic.where.begin);
    json.begin_object()
        .number("line", static_cast<double>(at.line))
        .number("column", at.column)
        .text("message", diagnostic.message)
        .text("hint", diagnostic.hint)
        .end_object();
  }
  json.end_array().end_object();
  return json.take();
}

void write_answer(JsonWriter& json, const AnswerFields& answer) {
  json.begin_object()
      .text("name", answer.name)
      .text("side", in_words(answer.side))
      .texts("texts", answer.texts)
      .key("fibres")
      .begin_array();
  for (const auto& [fibre, share] : answer.fibres) {
    json.begin_array().text(fibre).text(share).end_array();
  }
  json.end_array()
      .truth("not_seen", answer.not_seen)
      .text("reason", answer.reason)
      .text("note", answer.note)
      .truth("confirmed", answer.confirmed)
      .text("doubt", answer.doubt)
      .end_object();
}

bool is_own_field(const std::string& key) {
  return key == "inspection" || key == "safety" || key == "found";
}

}  // namespace

std::string opened_json(std::string_view text, const RuleSet& rules) {
  Sources sources;
  const std::uint32_t source = sources.add("record", std::string(without_byte_order_mark(text)));
  Diagnostics diagnostics;
  const auto record = read_json(sources, source, diagnostics);
  if (record) {
    read_inspection(*record, rules, diagnostics);
  }
  if (!record || diagnostics.has_errors()) {
    return errors_json(diagnostics, sources);
  }
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object().key("inspection");
  write_tree(json, *record->find("inspection"));
  json.key("answers").begin_array();
  for (const AnswerFields& answer : answer_fields(*record, rules)) {
    write_answer(json, answer);
  }
  json.end_array().key("other").begin_object();
  for (const Entry& entry : record->entries) {
    if (!is_own_field(entry.key.value)) {
      json.key(entry.key.value);
      write_tree(json, entry.value);
    }
  }
  json.end_object().end_object();
  return json.take();
}

}  // namespace heelrule
