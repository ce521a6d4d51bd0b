// A formula as written: its shape, before anything is known of its names.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/quantity.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

enum class Form : std::uint8_t {
  value,   ///< `6 mm`
  name,    ///< a trait, or a level where one is compared
  quoted,  ///< `"hook and loop"`: a level whose name is no single word
  yes,
  no,
  negate,
  logical_not,
  add,
  subtract,
  multiply,
  divide,
  less,
  at_most,
  more,
  at_least,
  is,
  is_not,
  logical_and,
  logical_or,
  choose,  ///< `if a then b else c`: three parts
  call,    ///< `max(a, b)`: the parts are the arguments
};

/// A formula or a part of one.
struct Syntax {
  Form form = Form::no;
  Span where;
  Quantity value;             ///< of `value`
  std::string name;           ///< of `name`, `quoted` and `call`
  std::vector<Syntax> parts;  ///< in the order written
};

/// Reads a formula. Faults are reported at their place inside `formula.where`, provided that the
/// span is as long as the text (a folded or escaped YAML text is longer; then the whole span is
/// marked). Formulas may have 500 parts and be nested 60 deep.
std::optional<Syntax> parse_formula(const Located<std::string>& formula, Diagnostics& diagnostics);

/// Whether a form compares: `<` to `is not`.
constexpr bool compares(Form form) { return form >= Form::less && form <= Form::is_not; }

}  // namespace heelrule
