#include "engine/marking/rule_needs.hpp"

#include <algorithm>

namespace heelrule {

std::vector<std::size_t> traits_needed(const Program& program, std::size_t rule) {
  std::vector<std::size_t> traits;
  const auto add = [&](const std::vector<Register>& needs) {
    for (const Register input : needs) {
      traits.push_back(program.inputs[input].input.trait);
    }
  };
  const RuleProgram& known = program.rule_programs[rule];
  add(known.applies_needs);
  for (const std::vector<Register>& needs : program.traits[known.trait].needs) {
    add(needs);
  }
  std::sort(traits.begin(), traits.end());
  traits.erase(std::unique(traits.begin(), traits.end()), traits.end());
  return traits;
}

}  // namespace heelrule
