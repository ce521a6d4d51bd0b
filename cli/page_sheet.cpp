#include "cli/page_sheet.hpp"

#include <fmt/format.h>

#include <string_view>

#include "engine/page/page_rules.hpp"
#include "engine/page/tree_json.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/school_mark.hpp"

namespace heelrule {

std::string_view sheet_module();
std::string_view sheet_script();
std::string_view sheet_script_digest();
std::string_view sheet_style();
std::string_view sheet_template();

namespace {

char byte_of(std::string_view two_digits) {
  const auto digit = [](char c) { return c <= '9' ? c - '0' : c - 'a' + 10; };
  return static_cast<char>(digit(two_digits[0]) * 16 + digit(two_digits[1]));
}

std::string bytes_of(std::string_view digits) {
  std::string bytes;
  for (std::size_t at = 0; at + 1 < digits.size(); at += 2) {
    bytes += byte_of(digits.substr(at, 2));
  }
  return bytes;
}

// What the script of the page begins with.
std::string page_data(const CompiledRules& rules, const PageOptions& options) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object().truth("blind", options.blind).texts("languages", options.languages);
  if (options.record) {
    json.key("record");
    write_tree(json, *options.record);
  }
  json.end_object();
  std::string text = json.take();
  text.pop_back();
  return fmt::format(R"({},"rules":{}}})", text, page_rules(rules.program->rules.name, rules.tree));
}

}  // namespace

Problem page_engine_missing() {
  if (!sheet_module().empty()) {
    return {};
  }
  return {"this heelrule was built without the engine for pages",
          "install clang-19 lld-19 wasi-libc libc++-19-dev-wasm32 libclang-rt-19-dev-wasm32 and "
          "build it again, or write `--as yaml`"};
}

std::string page_sheet(const CompiledRules& rules, const PageOptions& options) {
  const RuleSet& known = rules.program->rules;
  const std::string title(known.title.in(fallback_order(options.languages, known)));
  PageData data;
  data.words("title", title);
  data.markup("page_data", page_data(rules, options));
  data.markup("page_engine", base64(sheet_module()));
  PageFrame frame;
  frame.title = title + ": recording sheet";
  frame.running_left = title;
  frame.kind = options.blind ? "sheet blind" : "sheet";
  frame.body = *fill_template(sheet_template(), data);
  frame.own_style = sheet_style();
  frame.script = PageScript{std::string(sheet_script()), base64(bytes_of(sheet_script_digest()))};
  return framed_page(frame);
}

}  // namespace heelrule
