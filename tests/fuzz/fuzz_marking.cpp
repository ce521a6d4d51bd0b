// Reads bytes as a marking file, and marks a record by it where nothing is wrong with it.
#include <algorithm>

#include "engine/marking/mark.hpp"
#include "engine/reading/read_inspection.hpp"
#include "tests/fuzz/known_rules.hpp"

namespace heelrule {
namespace {

Inspection recorded(const Program& program, std::string text) {
  Sources sources;
  const auto source = sources.add("record.yaml", std::move(text));
  const auto inspection = load_inspection(sources, source, program.rules);
  must(static_cast<bool>(inspection));
  return *inspection;
}

// Every kind of trait is right once and wrong once.
std::string record(bool right) {
  return std::string("inspection: {rules: rules}\nsafety: {numb_feet: ") + (right ? "yes" : "no") +
         "}\nfound:\n  foot_length: {left: 243 mm, right: " + (right ? "246" : "249") +
         " mm}\n  insole_length: " + (right ? "248" : "256") +
         " mm\n  pairs_owned: 3\n  heel_counter: {left: firm, right: " + (right ? "firm" : "soft") +
         "}\n  fastening: laces\n  sock_fibres: {cotton: " + (right ? "80" : "75") +
         " %, polyester: " + (right ? "20" : "25") + " %}\n  marked_size: EU 39\n";
}

void must_be_sound(const MarkingRules& marking, const RuleSet& rules) {
  must(marking.tolerances.size() == rules.traits.size());
  must(marking.weights.size() == rules.traits.size());
  for (const auto* amounts : {&marking.tolerances, &marking.weights}) {
    must(std::all_of(amounts->begin(), amounts->end(),
                     [](const std::optional<double>& one) { return !one || *one >= 0; }));
  }
  must(marking.level_off >= 0 && marking.level_off <= 1);
  must(!marking.marks.empty() && marking.marks.back().from == 0);
  for (std::size_t i = 1; i < marking.marks.size(); ++i) {
    must(marking.marks[i].from < marking.marks[i - 1].from);
  }
  for (const auto& cap : {marking.caps.must, marking.caps.safety, marking.caps.referral}) {
    must(!cap || *cap < marking.marks.size());
  }
}

}  // namespace
}  // namespace heelrule

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  static const Program program = known_rules().program;
  static const Inspection expected = recorded(program, record(true));
  static const Inspection handed_in = recorded(program, record(false));
  Sources sources;
  const auto source = sources.add("fuzz.yaml", fuzzed_text(data, size));
  const auto marking = load_marking_rules(sources, source, program.rules);
  must_be_explained(static_cast<bool>(marking), marking.diagnostics(), sources);
  if (marking) {
    must_be_sound(*marking, program.rules);
    const Reference reference = make_reference(program, *marking, {expected});
    const Mark mark = mark_record(program, *marking, reference, handed_in);
    must(!mark.points || (*mark.points >= 0 && *mark.points <= 100));
    must(!mark.mark || (*mark.mark >= *mark.uncapped && *mark.mark < marking->marks.size()));
    const Mark full = mark_record(program, *marking, reference, expected);
    must(!full.points || *full.points == 100);
  }
  return 0;
}
