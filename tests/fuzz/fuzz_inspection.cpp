// Reads bytes as a record, and grades it where nothing is wrong with it.
#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

namespace heelrule {
namespace {

// A trait of each kind.
constexpr const char* rules = R"(title: Fuzzed records
sections: {fit: {title: Fit}}
safety: {numb_feet: {ask: Numb, referral: See somebody.}}
traits:
  foot_length: {ask: Length, measure: mm, per: foot, plausible: 80 mm .. 340 mm}
  insole_length: {ask: Length, measure: mm, per: shoe}
  pairs_owned: {ask: How many, measure: count, per: client}
  sole_bends: {ask: How stiff, measure: N·m/°}
  heel_counter: {ask: How firm, scale: [soft, medium, firm], per: shoe}
  fastening: {ask: What, choice: [laces, hook and loop]}
  removable_insole: {ask: Does it come out, answer: yes or no, per: shoe}
  sock_fibres: {ask: Of what, content: fibres}
  marked_size: {ask: What is marked, marked: shoe size}
  sock_size: {ask: What is marked, marked: sock range}
  toe_allowance: {ask: How much, derive: insole_length - foot_length}
rules:
  toe_allowance:
    section: fit
    weight: 12
    reads: toe_allowance
    bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]
    because: Toes need room.
    source: common practice
grades: {sound: {from: 50, means: Keep.}, unfit: {from: 0, means: Leave.}}
)";

Program compiled() {
  Sources sources;
  const FindFile find = [](std::string_view, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{"rules.yaml", "rules", rules};
  };
  LoadedRules loaded = load_rules("rules", find, sources);
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  must(static_cast<bool>(program));
  return *std::move(program);
}

}  // namespace
}  // namespace heelrule

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  static const Program program = compiled();
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
