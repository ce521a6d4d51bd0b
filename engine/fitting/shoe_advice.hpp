// What to ask for in a shop: an inside length, a size in each system, a width.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/fitting/toe_window.hpp"
#include "engine/fitting/visit.hpp"
#include "engine/quantity/girth_code.hpp"
#include "engine/quantity/size_conversion.hpp"

namespace heelrule {

/// The size to ask for in one system, or why there is none.
struct SizeToAsk {
  SizeSystem system = SizeSystem::mondopoint;
  Parsed<ShoeSize> size;
  std::string reason;  ///< how it came about; empty where there is none
};

/// How one pair can serve two feet of different length. Common practice.
enum class Remedy : std::uint8_t {
  one_pair,   ///< some inside length leaves both feet the right space
  fill,       ///< an insole, a pad under the tongue, or tighter lacing on the smaller foot
  two_pairs,  ///< the feet differ by a Paris point or more, which is a whole size on the label
};

/// The shorter foot in a pair that is chosen for the longer one.
struct SmallerFoot {
  Side side = Side::none;
  Measured shorter_by;
  Millimetres least_space;  ///< in front of its toes, in the shortest inside that is right
  Millimetres most_space;   ///< in the longest
  Millimetres shared_most;  ///< the longest inside that is still right for both; of `one_pair`
  Remedy remedy = Remedy::one_pair;
};

/// The girth around the ball as a letter of JIS S 5037, which means another girth for men and
/// women.
struct GirthAdvice {
  Measured girth;
  Parsed<GirthCode> men;
  Parsed<GirthCode> women;
};

struct ShoeAdvice {
  Side longer = Side::none;  ///< the foot that everything is chosen for
  Measured foot;
  Wearer wearer = Wearer::adult;
  Millimetres inside_least;
  Millimetres inside_most;
  std::vector<SizeToAsk> sizes;
  std::optional<SmallerFoot> smaller;  ///< where both feet were measured
  std::optional<Measured> width;       ///< of the wider foot
  std::optional<ShoeSize> with_width;  ///< Mondopoint, length and width
  std::optional<GirthAdvice> girth;    ///< of the fuller foot; adults
};

/// The advice for the longer standing foot. Sizes are those of adults, in which US sizes are given
/// for men and for women; for a child up to the last row of the children's table (225 mm, and half
/// a step more) those of children, and adults' beyond. Precondition: a foot was measured standing.
ShoeAdvice shoe_advice(const Visit& visit, const ToeWindow& window, bool is_child);

}  // namespace heelrule
