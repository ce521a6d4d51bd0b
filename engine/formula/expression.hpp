// A formula whose names, types, units and sides are known.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/formula/operation.hpp"
#include "engine/quantity/fibre.hpp"
#include "engine/quantity/unit.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// What kind of value a formula, or a trait in it, has.
struct Type {
  enum class Kind : std::uint8_t { number, yes_no, level, fibres, shoe_size, sock_range };

  Kind kind = Kind::number;
  Dimension dimension;      ///< of a number
  std::uint32_t scale = 0;  ///< of a level: the trait that declares the levels
  bool ordered = false;     ///< of a level: a scale, not a choice

  bool operator==(const Type&) const = default;
};

/// What is known of a trait before a formula that reads it is checked.
struct TraitType {
  Type type;
  bool has_sides = false;

  bool operator==(const TraitType&) const = default;
};

/// Which of a trait's numbers is read.
enum class Facet : std::uint8_t {
  value,
  share,          ///< of a fibre or a group of them, as a number from 0 to 1
  moisture,       ///< agreed moisture allowance of the blend, as a number from 0 to 1
  shortest_foot,  ///< in mm
  longest_foot,   ///< in mm
};

/// One number read from an inspection.
struct Input {
  std::uint32_t trait = 0;
  Facet facet = Facet::value;
  FibreGroup fibres;  ///< of a share

  auto operator<=>(const Input&) const = default;
};

/// A step of an expression; its operands stand before it.
struct Step {
  Operation operation = Operation::constant;
  double constant = 0;
  Input input;
  std::vector<std::uint32_t> operands;
};

/// Steps in an order in which each only needs earlier ones; the last is the result.
struct Expression {
  std::vector<Step> steps;
  Type type;
  bool has_sides = false;
};

}  // namespace heelrule
