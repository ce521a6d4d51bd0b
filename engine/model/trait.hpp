// One thing to record, or to work out from what was recorded.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/model/text.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// What a trait is recorded of. A trait of a foot or a shoe has a left and a right value.
enum class Per : std::uint8_t { client, pair, foot, shoe };

/// Whether a value is recorded for each side.
constexpr bool has_sides(Per per) { return per == Per::foot || per == Per::shoe; }

enum class Side : std::uint8_t {
  none,  ///< the value has no sides
  left,
  right,
};

constexpr std::array<Side, 3> all_sides{Side::none, Side::left, Side::right};
constexpr std::array<Side, 2> both_sides{Side::left, Side::right};

/// The side beside `side`. Precondition: left or right.
constexpr Side other_side(Side side) { return side == Side::left ? Side::right : Side::left; }

/// The sides on which there is a value: left and right where it has sides, and else none.
constexpr std::span<const Side> sides_of(bool has_sides) {
  const std::span<const Side> sides(all_sides);
  return has_sides ? sides.subspan(1) : sides.first(1);
}

/// A level of a scale, or one of several choices.
struct Level {
  Located<std::string> name;
  Text meaning;

  bool operator==(const Level&) const = default;
};

/// A reading with a unit.
struct MeasureKind {
  Unit unit = Unit::count;  ///< in which it is printed
  std::optional<Located<QuantityRange>>
      plausible;                           ///< outside of it a record must confirm the reading
  std::optional<Located<Quantity>> doubt;  ///< standard uncertainty of one reading
  std::optional<Located<Quantity>> resolution{};  ///< the step to which it is read

  bool operator==(const MeasureKind&) const = default;
};

/// Levels in order, lowest first.
struct ScaleKind {
  std::vector<Level> levels;
  Located<double> confusion{};  ///< chance, 0 to 1, that the true level is the next one up or down

  bool operator==(const ScaleKind&) const = default;
};

/// Levels without an order.
struct ChoiceKind {
  std::vector<Level> levels;
  bool operator==(const ChoiceKind&) const = default;
};

struct AnswerKind {  ///< yes or no
  bool operator==(const AnswerKind&) const = default;
};

struct FibresKind {  ///< fibre content
  bool operator==(const FibresKind&) const = default;
};

struct ShoeSizeKind {  ///< a shoe size as marked
  bool operator==(const ShoeSizeKind&) const = default;
};

struct SockRangeKind {  ///< a sock range as marked
  bool operator==(const SockRangeKind&) const = default;
};

/// Worked out by a formula.
struct DerivedKind {
  Located<std::string> formula;
  std::optional<Located<Unit>> shown;  ///< in which it is printed

  bool operator==(const DerivedKind&) const = default;
};

/// Not said, or not understood. It has been reported; no rule set that compiles holds one.
struct UnreadKind {
  bool operator==(const UnreadKind&) const = default;
};

using TraitKind = std::variant<UnreadKind, MeasureKind, ScaleKind, ChoiceKind, AnswerKind,
                               FibresKind, ShoeSizeKind, SockRangeKind, DerivedKind>;

struct Trait {
  std::string name;
  Span where;                                   ///< of the name
  Text ask;                                     ///< the question
  Text how;                                     ///< how to take it
  std::optional<Located<std::string>> section;  ///< under whose heading it is asked
  double order = 0;     ///< in a section traits are asked by this, then as written
  Per per = Per::pair;  ///< of a derived trait: `pair`; its sides follow from the formula
  TraitKind kind;

  bool operator==(const Trait&) const = default;
};

/// The levels of a scale or a choice; empty for every other kind.
const std::vector<Level>& levels_of(const TraitKind& kind);

/// The index of the level of this name. Precondition: the trait has levels.
///
///     find_level(heel_counter, "frm")  ->  problem "`heel_counter` has no level `frm`",
///                                          hint "did you mean `firm`?"
Parsed<std::size_t> find_level(const Trait& trait, std::string_view name);

}  // namespace heelrule
