// Reads bytes as YAML.
#include "engine/reading/text_gate.hpp"
#include "engine/reading/yaml_tree.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  Sources sources;
  const auto source =
      sources.add("fuzz.yaml", std::string(without_byte_order_mark(fuzzed_text(data, size))));
  Diagnostics diagnostics;
  const auto tree = read_yaml(sources, source, diagnostics);
  must_be_explained(tree.has_value(), diagnostics, sources);
  return 0;
}
