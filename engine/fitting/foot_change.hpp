// What standing up does to a foot, and how far two feet differ.
#pragma once

#include <cstdint>
#include <optional>

#include "engine/fitting/visit.hpp"
#include "engine/quantity/size_system.hpp"

namespace heelrule {

/// How much longer a foot grows under load, in English sizes: a half is 4.233 mm, a whole 8.467 mm.
/// Half a size is what the trade expects, and a whole one is taken as a sign that the foot flattens
/// under load (common practice). No limit is agreed, so none of these is a finding of health.
enum class Lengthening : std::uint8_t {
  misread,      ///< shorter standing than seated, by more than the doubt: one is misread
  as_expected,  ///< up to half a size
  more_than_half,
  whole_size,  ///< a whole size or more
};

/// One foot, seated and standing.
struct LoadChange {
  Side side = Side::none;
  Measured length;
  Lengthening lengthening = Lengthening::as_expected;
  bool whole_size_within_doubt = false;  ///< below a whole size, but it could be one
  std::optional<Measured> width;
};

/// Nothing unless the length was measured both ways.
std::optional<LoadChange> load_change(const Visit& visit, Side side);

/// Which foot is longer standing, and by how much.
struct SidesDifference {
  Side longer = Side::none;
  Measured by;
  bool worth_noting = false;  ///< more than 4 mm, which 19 % of men have (UK survey 2018, n 2890)
};

/// Nothing unless both feet were measured standing.
std::optional<SidesDifference> difference_of_sides(const Visit& visit);

/// Half an English size, and a whole one.
Millimetres half_a_size();
Millimetres whole_english_size();

/// A change of length in whole sizes of a system: 4 mm are 0.6 of a Paris point, 0.4 of Mondopoint.
double in_whole_sizes(Millimetres change, SizeSystem system);

}  // namespace heelrule
