// A sound rule set with a trait of each kind, against which fuzzed files are read.
#pragma once

#include <utility>

#include "engine/reading/load_rules.hpp"
#include "engine/scoring/compile.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

namespace heelrule {

struct KnownRules {
  Node tree;
  Program program;
};

inline KnownRules known_rules() {
  constexpr const char* text = R"(title: Fuzzed records
sections: {fit: {title: Fit}}
safety: {numb_feet: {ask: Numb, referral: See somebody.}}
traits:
  foot_length: {ask: Length, measure: mm, per: foot, plausible: 80 mm .. 340 mm, doubt: 1 mm}
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
    must: {caps: unfit}
    reads: toe_allowance
    bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]
    because: Toes need room.
    source: common practice
  heel_counter:
    section: fit
    weight: 3
    reads: heel_counter
    levels: {soft: 0, medium: 60 %, firm: 100 %}
    because: It holds the heel.
    source: common practice
grades: {sound: {from: 50, means: Keep.}, unfit: {from: 0, means: Leave.}}
)";
  Sources sources;
  const FindFile find = [](std::string_view, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{"rules.yaml", "rules", text};
  };
  LoadedRules loaded = load_rules("rules", find, sources);
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  must(static_cast<bool>(program));
  return {std::move(loaded.tree), *std::move(program)};
}

}  // namespace heelrule
