#include "engine/scoring/block.hpp"

#include "engine/formula/operation.hpp"

namespace heelrule {

Block::Block(const Program& program)
    : columns_(program.register_count), input_count_(program.inputs.size()) {
  for (const Constant& constant : program.constants) {
    columns_[constant.result].fill(constant.value);
  }
  clear();
}

void Block::clear() {
  for (std::size_t i = 0; i < input_count_; ++i) {
    columns_[i].fill(operation::not_seen);
  }
}

Outcome Block::outcome(std::size_t row) const {
  const OutcomeColumns& all = outcomes_;
  return {all.earned[row], all.weight[row],     all.open_weight[row],
          all.cap[row],    all.lowest_cap[row], all.open_musts[row]};
}

}  // namespace heelrule
