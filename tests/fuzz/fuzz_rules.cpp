// Reads bytes as a rule set, which may extend itself and one that is sound, and compiles it.
#include "engine/reading/load_rules.hpp"
#include "engine/scoring/compile.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

namespace {

constexpr const char* base =
    "title: base\ntraits: {a: {ask: A, measure: mm}}\ngrades: {all: {from: 0, means: All.}}\n";

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  const std::string text = fuzzed_text(data, size);
  const FindFile find = [&](std::string_view name, std::string_view) -> Parsed<FoundFile> {
    if (name == "base") {
      return FoundFile{"base.yaml", "base", base};
    }
    return name == "fuzz" ? Parsed<FoundFile>(FoundFile{"fuzz.yaml", "fuzz", text})
                          : Problem{"there is no such rule set", "name another"};
  };
  Sources sources;
  LoadedRules loaded = load_rules("fuzz", find, sources);
  must(loaded.complete || loaded.diagnostics.has_errors());
  const auto program = loaded.complete
                           ? compile(std::move(loaded.rules), std::move(loaded.diagnostics))
                           : Checked<Program>(std::move(loaded.diagnostics));
  must_be_explained(static_cast<bool>(program), program.diagnostics(), sources);
  return 0;
}
