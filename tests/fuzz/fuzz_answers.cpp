// Reads bytes as the answers of a page, sound or not. What the engine says of them is JSON, and of
// a record without a fault it is what the command says.
#include "engine/page/page_engine.hpp"
#include "engine/page/page_rules.hpp"
#include "engine/reading/json_tree.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/report/json_report.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/fuzz/known_rules.hpp"

namespace heelrule {
namespace {

PageEngine page_engine(const KnownRules& known) {
  const auto engine = PageEngine::open(page_rules(known.program.rules.name, known.tree));
  must(static_cast<bool>(engine));
  return *engine;
}

void must_be_json(std::string text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto source = sources.add("answer", std::move(text));
  must(read_json(sources, source, diagnostics).has_value());
}

}  // namespace
}  // namespace heelrule

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  static const KnownRules known = known_rules();
  static const PageEngine engine = page_engine(known);
  const std::string text = fuzzed_text(data, size);
  must_be_json(engine.answers(text));
  must_be_json(engine.verdict(text));
  must_be_json(engine.opened(text));

  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_json(sources, sources.add("fuzz.json", text), diagnostics);
  if (!tree) {
    return 0;
  }
  const std::string kept = engine.file(text);
  must(engine.file(kept) == kept);
  const Inspection inspection = read_inspection(*tree, known.program.rules, diagnostics);
  if (!diagnostics.has_errors()) {
    must(sound_answers(*tree, known.program.rules).faults.empty());
    must(engine.verdict(text) ==
         json_report(known.program, inspection, grade(known.program, inspection), {}));
  }
  return 0;
}
