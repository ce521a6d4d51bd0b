// A record beside the reference, trait by trait and side by side.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/marking/reference.hpp"

namespace heelrule {

enum class Likeness : std::uint8_t {
  right,     ///< the same as the reference
  within,    ///< within tolerance of it
  off,       ///< recorded, and not right
  missed,    ///< the reference has a value, and the record has none
  invented,  ///< the record has a value where the reference says that nothing is to be seen
  not_held,  ///< the panel is split or the reference says nothing: held against nobody
};

/// Where a tolerance comes from.
enum class ToleranceSource : std::uint8_t {
  none,         ///< there is none: only the same is right
  trainer,      ///< stated in the marking file
  uncertainty,  ///< the expanded uncertainties of both readings (normalised error, ISO 13528)
  panel,        ///< two robust deviations of the panel's readings (z score, ISO 13528)
};

/// One trait on one side.
struct Comparison {
  std::size_t item = 0;  ///< index in `Reference::items`
  Likeness likeness = Likeness::right;
  double credit = 0;                 ///< 0 to 1
  double weight = 0;                 ///< its share of the trait's weight; 0 where it is not held
  std::optional<double> difference;  ///< record less reference: stored unit, levels, or a fraction
  double tolerance = 0;              ///< in the same
  ToleranceSource source = ToleranceSource::none;
  std::optional<double> normalised_error;  ///< |difference| over both expanded uncertainties
};

/// Whether it counts and is not right.
constexpr bool is_fault(Likeness likeness) {
  return likeness == Likeness::off || likeness == Likeness::missed ||
         likeness == Likeness::invented;
}

/// Every trait and side of which the record or the reference has a value, in their order.
///
/// A measure is within tolerance where it differs by no more than the trainer's tolerance. Where
/// there is none, by the normalised error E_n = |x − X| / √(U(x)² + U(X)²) ≤ 1 with U = 2·u (ISO
/// 13528:2015, 9.7, from memory), where u of the record's reading is that of one reading by the
/// rule set, so that a wide doubt or scatter of one's own buys no tolerance; only where the rule
/// set says nothing, what the record says. Where one of the two has no uncertainty and a panel of
/// three or more has one by its scatter, by two robust deviations. Else only the same is right.
///
/// A level of a scale within the trainer's tolerance is right; beyond, each level off costs
/// `MarkingRules::level_off`, counted from the reference. Fibres are right where each share is
/// within the tolerance. All else is right or wrong.
///
/// A trait weighs what the trainer says, or else what it is worth in the reference's verdict,
/// shared by its sides that count.
std::vector<Comparison> compare(const Program& program, const MarkingRules& marking,
                                const Reference& reference, const Inspection& record);

}  // namespace heelrule
