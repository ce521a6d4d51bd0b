#include "engine/quantity/size_conversion.hpp"

#include <fmt/format.h>

#include <vector>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/quantity/size_table.hpp"

namespace heelrule {
namespace {

// Foot lengths are counted in twelfths of a millimetre here: every size, and every boundary half
// way between two sizes, is a whole number of them in all systems, so no boundary moves by a
// rounding error.
constexpr int twelfths = 12;
constexpr int half_metric_step = 30;   // 2.5 mm
constexpr int half_special_step = 45;  // 3.75 mm
constexpr int half_paris_step = 20;    // 1.667 mm

constexpr int shortest_foot_known = 80;
constexpr int longest_foot_known = 400;

struct SizePoint {
  int size;  // in halves
  int foot;  // in twelfths of a mm
};

// A conversion: straight lines between points, sizes ascending.
struct Scale {
  std::vector<SizePoint> points;
  int step;        // from size to size, in halves
  int end_margin;  // feet beyond the first and the last point, in twelfths of a mm
  bool is_table;
};

Scale straight(SizePoint first, SizePoint last, int step, int end_margin) {
  return {{first, last}, step, end_margin, false};
}

Scale british_scale(int halves_more) {
  Scale scale{{}, 1, half_metric_step, true};
  for (const AdultSizeRow& row : adult_size_table()) {
    scale.points.push_back({row.british + halves_more, row.foot_length * twelfths});
  }
  return scale;
}

Scale child_scale() {
  Scale scale{{}, 1, half_metric_step, true};
  for (const ChildSizeRow& row : child_size_table()) {
    scale.points.push_back({row.european, row.foot_length * twelfths});
  }
  return scale;
}

Problem not_trusted(SizeSystem system) {
  return {
      fmt::format("{} sizes of children are not turned into foot lengths here, nor back",
                  facts(system).mark.substr(0, 2)),
      "no source confirms their table: use EU or Mondopoint, and measure the inside of the shoe"};
}

Parsed<Scale> scale_of(SizeSystem system, Wearer wearer) {
  const SizeSystemFacts& known = facts(system);
  if (known.length_per_number != 0) {
    return straight({known.lowest, shortest_foot_known * twelfths},
                    {known.highest, longest_foot_known * twelfths}, known.step, half_metric_step);
  }
  switch (system) {
    case SizeSystem::european:
      return wearer == Wearer::child
                 ? child_scale()
                 : straight({28, shortest_foot_known * twelfths},
                            {124, longest_foot_known * twelfths}, 1, half_paris_step);
    case SizeSystem::british:
    case SizeSystem::american_men:
    case SizeSystem::american_women:
      if (wearer == Wearer::child) {
        return not_trusted(system);
      }
      return british_scale(system == SizeSystem::british        ? 0
                           : system == SizeSystem::american_men ? 2
                                                                : 4);
    default:
      return not_trusted(system);
  }
}

bool covers(const Scale& scale, int size) {
  return size >= scale.points.front().size && size <= scale.points.back().size;
}

int foot_at(const Scale& scale, int size) {
  std::size_t next = 1;
  while (scale.points[next].size < size) {
    ++next;
  }
  const SizePoint& a = scale.points[next - 1];
  const SizePoint& b = scale.points[next];
  return a.foot + (b.foot - a.foot) * (size - a.size) / (b.size - a.size);
}

int boundary(const Scale& scale, int size, int neighbour) {
  if (covers(scale, neighbour)) {
    return (foot_at(scale, size) + foot_at(scale, neighbour)) / 2;
  }
  return foot_at(scale, size) + (neighbour > size ? scale.end_margin : -scale.end_margin);
}

Millimetres in_millimetres(int length) { return Millimetres(length / double{twelfths}); }

std::string_view whose(Wearer wearer) { return wearer == Wearer::child ? "children" : "adults"; }

std::string basis(const Scale& scale, Wearer wearer) {
  return fmt::format("{} for {}", scale.is_table ? "the table of ISO 19407" : "the conversion",
                     whose(wearer));
}

std::string sizes_from_to(const Scale& scale, SizeSystem system) {
  return fmt::format("it runs from {0} {1} to {0} {2}", facts(system).mark,
                     shortest(scale.points.front().size / 2.0),
                     shortest(scale.points.back().size / 2.0));
}

Parsed<Scale> scale_with(const ShoeSize& size, Wearer wearer) {
  auto scale = scale_of(size.system(), wearer);
  if (scale && !covers(*scale, size.halves())) {
    return Problem{fmt::format("`{}` is outside {}", show(size), basis(*scale, wearer)),
                   sizes_from_to(*scale, size.system())};
  }
  return scale;
}

}  // namespace

Wearer usual_wearer(const ShoeSize& size) {
  switch (size.system()) {
    case SizeSystem::british_child:
    case SizeSystem::american_child:
    case SizeSystem::american_youth:
      return Wearer::child;
    case SizeSystem::european:
      return size.halves() < adult_size_table().front().european ? Wearer::child : Wearer::adult;
    default:
      return Wearer::adult;
  }
}

Parsed<Millimetres> nominal_foot(const ShoeSize& size, Wearer wearer) {
  const auto scale = scale_with(size, wearer);
  if (!scale) {
    return scale.problem();
  }
  return in_millimetres(foot_at(*scale, size.halves()));
}

Parsed<FootRange> feet_of(const ShoeSize& size, Wearer wearer) {
  const auto scale = scale_with(size, wearer);
  if (!scale) {
    return scale.problem();
  }
  if (size.halves() % scale->step != 0) {
    const int middle = foot_at(*scale, size.halves());
    return FootRange{in_millimetres(middle - half_special_step),
                     in_millimetres(middle + half_special_step)};
  }
  return FootRange{in_millimetres(boundary(*scale, size.halves(), size.halves() - scale->step)),
                   in_millimetres(boundary(*scale, size.halves(), size.halves() + scale->step))};
}

std::optional<Millimetres> shortest_foot(const ShoeSize& size) {
  const auto feet = feet_of(size, usual_wearer(size));
  return feet ? std::optional(feet->shortest) : std::nullopt;
}

std::optional<Millimetres> longest_foot(const ShoeSize& size) {
  const auto feet = feet_of(size, usual_wearer(size));
  return feet ? std::optional(feet->longest) : std::nullopt;
}

Parsed<ShoeSize> size_for(SizeSystem system, Millimetres foot, Wearer wearer) {
  if (!(foot.value() >= shortest_foot_known && foot.value() <= longest_foot_known)) {
    return Problem{fmt::format("no shoe is made for a foot of {} mm", with_places(foot.value(), 1)),
                   fmt::format("measure again: feet are {} mm to {} mm long", shortest_foot_known,
                               longest_foot_known)};
  }
  const auto scale = scale_of(system, wearer);
  if (!scale) {
    return scale.problem();
  }
  const Millimetres length(settled(foot.value()));
  const int smallest = scale->points.front().size;
  const int largest = scale->points.back().size;
  if (length >= in_millimetres(boundary(*scale, smallest, smallest - scale->step))) {
    for (int size = smallest; size <= largest; size += scale->step) {
      if (length <= in_millimetres(boundary(*scale, size, size + scale->step))) {
        return shoe_size(system, size / 2.0);
      }
    }
  }
  return Problem{fmt::format("a foot of {} mm is outside {}", with_places(foot.value(), 1),
                             basis(*scale, wearer)),
                 sizes_from_to(*scale, system) + fmt::format(", {} mm to {} mm",
                                                             scale->points.front().foot / twelfths,
                                                             scale->points.back().foot / twelfths)};
}

}  // namespace heelrule
