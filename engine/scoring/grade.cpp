#include "engine/scoring/grade.hpp"

#include "engine/scoring/block.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"

namespace heelrule {

Verdict grade(const Program& program, const Inspection& inspection) {
  Block block(program);
  fill_row(program, inspection, block, 0);
  evaluate(program, block);
  return decide(program, block, 0);
}

}  // namespace heelrule
