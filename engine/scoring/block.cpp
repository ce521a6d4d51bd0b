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

}  // namespace heelrule
