#include "engine/report/fault_line.hpp"

#include <fmt/format.h>

#include "engine/report/json_parts.hpp"

namespace heelrule {
namespace {

std::uint32_t column(const Diagnostic& diagnostic, const Sources& sources) {
  return sources.position(diagnostic.where.source, diagnostic.where.begin).column;
}

}  // namespace

std::string fault_line(const LineFault& fault) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object();
  json.text("format", "heelrule error").number("version", json_report_version);
  json.key("errors").begin_array();
  for (const Diagnostic& diagnostic : fault.diagnostics.by_place()) {
    json.begin_object();
    json.number("column", column(diagnostic, fault.sources))
        .text("message", diagnostic.message)
        .text("hint", diagnostic.hint);
    json.end_object();
  }
  json.end_array().end_object();
  return json.take() + "\n";
}

std::string fault_words(const LineFault& fault) {
  std::string words;
  for (const Diagnostic& diagnostic : fault.diagnostics.by_place()) {
    words += fmt::format("{}column {}: {}", words.empty() ? "" : "; ",
                         column(diagnostic, fault.sources), diagnostic.message);
  }
  return words;
}

}  // namespace heelrule
