#include "engine/scoring/rule_needs.hpp"

#include <algorithm>

namespace heelrule {
namespace {

template <class Number>
void keep_each_once(std::vector<Number>& numbers) {
  std::sort(numbers.begin(), numbers.end());
  numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
}

}  // namespace

std::vector<Register> inputs_needed(const Program& program, std::size_t rule) {
  const RuleProgram& known = program.rule_programs[rule];
  std::vector<Register> inputs = known.applies_needs;
  for (const std::vector<Register>& needs : program.traits[known.trait].needs) {
    inputs.insert(inputs.end(), needs.begin(), needs.end());
  }
  keep_each_once(inputs);
  return inputs;
}

std::vector<std::size_t> traits_needed(const Program& program, std::size_t rule) {
  std::vector<std::size_t> traits;
  for (const Register input : inputs_needed(program, rule)) {
    traits.push_back(program.inputs[input].input.trait);
  }
  keep_each_once(traits);
  return traits;
}

std::vector<std::optional<std::size_t>> sections_of_rules(const Program& program) {
  std::vector<std::optional<std::size_t>> sections(program.traits.size());
  for (std::size_t rule = 0; rule < program.rule_programs.size(); ++rule) {
    for (const std::size_t trait : traits_needed(program, rule)) {
      sections[trait] = sections[trait].value_or(program.rule_programs[rule].section);
    }
  }
  return sections;
}

}  // namespace heelrule
