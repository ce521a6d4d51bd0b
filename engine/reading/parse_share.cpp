#include "engine/reading/parse_share.hpp"

#include <fmt/format.h>

#include "engine/quantity/quantity.hpp"

namespace heelrule {

Parsed<double> parse_share(std::string_view text) {
  const auto quantity = parse_quantity(text);
  if (!quantity) {
    return quantity.problem();
  }
  const std::string_view hint = "write a percentage, `0 %` to `100 %`";
  if (quantity->unit != Unit::percent && quantity->stored != 0) {
    return Problem{fmt::format("`{}` is no percentage", text), std::string(hint)};
  }
  if (quantity->stored < 0 || quantity->stored > 1) {
    return Problem{fmt::format("{} is not between 0 % and 100 %", text), std::string(hint)};
  }
  return quantity->stored;
}

}  // namespace heelrule
