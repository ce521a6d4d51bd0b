// Reads bytes as a quantity, a range and a number; what was read can be shown and read again.
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/quantity.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  const std::string text = fuzzed_text(data, size);
  const auto quantity = parse_quantity(text);
  must(static_cast<bool>(quantity) == quantity.problem().message.empty());
  if (quantity) {
    must(std::isfinite(quantity->stored));
    // A longer number with decimals has more digits than are read.
    must(std::fabs(quantity->stored) > 1e9 ||
         parse_quantity(show(quantity->stored, quantity->unit)));
  }
  const auto range = parse_range(text);
  must(static_cast<bool>(range) == range.problem().message.empty());
  must(!range || range->from.stored <= range->to.stored);
  const auto number = parse_decimal(text);
  must(static_cast<bool>(number) == number.problem().message.empty());
  must(!number || std::isfinite(scaled(*number)));
  return 0;
}
