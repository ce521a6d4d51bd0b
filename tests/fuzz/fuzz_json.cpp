// Reads bytes as JSON.
#include "engine/reading/json_tree.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  Sources sources;
  const auto source = sources.add("fuzz.json", fuzzed_text(data, size));
  Diagnostics diagnostics;
  const auto tree = read_json(sources, source, diagnostics);
  must_be_explained(tree.has_value(), diagnostics, sources);
  return 0;
}
