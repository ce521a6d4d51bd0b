#include "engine/page/derived_values.hpp"

#include <cmath>
#include <variant>

#include "engine/report/value_words.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/fill_row.hpp"

namespace heelrule {

std::vector<DerivedValue> derived_values(const Program& program, const Inspection& inspection) {
  Block block(program);
  fill_row(program, inspection, block, 0);
  evaluate(program, block);
  std::vector<DerivedValue> found;
  for (std::size_t i = 0; i < program.traits.size(); ++i) {
    if (!std::holds_alternative<DerivedKind>(program.rules.traits[i].kind)) {
      continue;
    }
    for (const Side side : all_sides) {
      const Register at = program.traits[i].values[static_cast<std::size_t>(side)];
      if (at != no_register && !std::isnan(block.column(at)[0])) {
        found.push_back({i, side, value_words(program, i, block.column(at)[0], {})});
      }
    }
  }
  return found;
}

}  // namespace heelrule
