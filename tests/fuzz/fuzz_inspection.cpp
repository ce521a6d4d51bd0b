// Reads bytes as a record, and grades it where nothing is wrong with it.
#include "engine/reading/read_inspection.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/fuzz/known_rules.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  static const Program program = known_rules().program;
  Sources sources;
  const auto source = sources.add("fuzz.yaml", fuzzed_text(data, size));
  const auto inspection = load_inspection(sources, source, program.rules);
  must_be_explained(static_cast<bool>(inspection), inspection.diagnostics(), sources);
  if (inspection) {
    const Verdict verdict = grade(program, *inspection);
    must(verdict.score.lowest_points() <= verdict.score.highest_points());
  }
  return 0;
}
