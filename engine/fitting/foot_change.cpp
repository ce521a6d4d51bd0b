#include "engine/fitting/foot_change.hpp"

namespace heelrule {
namespace {

constexpr Millimetres usual_difference{4};

Lengthening lengthening_of(const Measured& change) {
  if (change.highest() < Millimetres(0)) {
    return Lengthening::misread;
  }
  if (change.value >= whole_english_size()) {
    return Lengthening::whole_size;
  }
  return change.value <= half_a_size() ? Lengthening::as_expected : Lengthening::more_than_half;
}

}  // namespace

Millimetres whole_english_size() { return whole_size(SizeSystem::british); }

Millimetres half_a_size() { return 0.5 * whole_english_size(); }

double in_whole_sizes(Millimetres change, SizeSystem system) { return change / whole_size(system); }

std::optional<LoadChange> load_change(const Visit& visit, Side side) {
  const FootMeasures& foot = visit.foot(side);
  if (!foot.length || !foot.seated_length) {
    return std::nullopt;
  }
  LoadChange change;
  change.side = side;
  change.length = *foot.length - *foot.seated_length;
  change.lengthening = lengthening_of(change.length);
  change.whole_size_within_doubt =
      change.length.value < whole_english_size() && change.length.highest() >= whole_english_size();
  if (foot.width && foot.seated_width) {
    change.width = *foot.width - *foot.seated_width;
  }
  return change;
}

std::optional<SidesDifference> difference_of_sides(const Visit& visit) {
  if (!visit.left.length || !visit.right.length) {
    return std::nullopt;
  }
  const Side longer = *longer_foot(visit);
  const Measured by = *visit.foot(longer).length - *visit.foot(other_side(longer)).length;
  return SidesDifference{longer, by, by.value > usual_difference};
}

}  // namespace heelrule
