// The functions that a formula may call.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace heelrule {

enum class Call : std::uint8_t {
  minimum,
  maximum,
  mean,
  absolute,
  tangent,
  arctangent,
  left,
  right,
  larger,
  smaller,
  mean_of_sides,
  difference,
  share,
  moisture,
  shortest_foot,
  longest_foot,
  monthly_growth,
};

/// A function: its name, and how many values it takes.
struct Function {
  std::string_view name;
  Call call;
  std::size_t fewest;
  std::size_t most;

  /// Whether it takes as many values as there are.
  bool takes_any_number() const { return most > fewest; }
};

/// All of them, in the order of the language's description.
std::span<const Function> known_functions();

}  // namespace heelrule
