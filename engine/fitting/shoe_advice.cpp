#include "engine/fitting/shoe_advice.hpp"

#include <array>
#include <cmath>
#include <span>

#include "engine/quantity/settle.hpp"
#include "engine/quantity/size_formula.hpp"
#include "engine/quantity/size_table.hpp"

namespace heelrule {
namespace {

constexpr Millimetres half_step{2.5};

constexpr std::array adult_systems{SizeSystem::mondopoint,     SizeSystem::european,
                                   SizeSystem::british,        SizeSystem::american_men,
                                   SizeSystem::american_women, SizeSystem::japanese};

constexpr std::array child_systems{SizeSystem::mondopoint, SizeSystem::european,
                                   SizeSystem::british_child, SizeSystem::american_child,
                                   SizeSystem::japanese};

Wearer wearer_of(Millimetres foot, bool is_child) {
  const Millimetres longest(child_size_table().back().foot_length);
  return is_child && foot <= longest + half_step ? Wearer::child : Wearer::adult;
}

std::vector<SizeToAsk> sizes_to_ask(Millimetres foot, Wearer wearer) {
  using Systems = std::span<const SizeSystem>;
  std::vector<SizeToAsk> sizes;
  for (const SizeSystem system :
       wearer == Wearer::child ? Systems(child_systems) : Systems(adult_systems)) {
    sizes.push_back({system, size_for(system, foot, wearer), size_reason(system, foot, wearer)});
  }
  return sizes;
}

Millimetres plus(Millimetres a, Millimetres b) { return Millimetres(settled((a + b).value())); }

SmallerFoot smaller_foot(const Visit& visit, Side longer, const ToeWindow& window) {
  SmallerFoot smaller;
  smaller.side = other_side(longer);
  const Measured& foot = *visit.foot(smaller.side).length;
  smaller.shorter_by = *visit.foot(longer).length - foot;
  const Millimetres by = smaller.shorter_by.value;
  smaller.least_space = plus(window.least, by);
  smaller.most_space = plus(window.most, by);
  smaller.shared_most = plus(foot.value, window.most);
  const bool a_size_apart = by >= whole_size(SizeSystem::european);
  smaller.remedy = a_size_apart                       ? Remedy::two_pairs
                   : by <= window.most - window.least ? Remedy::one_pair
                                                      : Remedy::fill;
  return smaller;
}

using MeasureOfFoot = std::optional<Measured> FootMeasures::*;

// The larger of both feet.
std::optional<Measured> larger(const Visit& visit, MeasureOfFoot which) {
  const auto& left = visit.left.*which;
  const auto& right = visit.right.*which;
  return !right || (left && left->value > right->value) ? left : right;
}

std::optional<ShoeSize> mondopoint_with_width(Millimetres foot, Millimetres width, Wearer wearer) {
  const auto size = size_for(SizeSystem::mondopoint, foot, wearer);
  if (!size) {
    return std::nullopt;
  }
  const auto wide = with_width(*size, Millimetres(std::round(width.value())));
  return wide ? std::optional(*wide) : std::nullopt;
}

}  // namespace

ShoeAdvice shoe_advice(const Visit& visit, const ToeWindow& window, bool is_child) {
  ShoeAdvice advice;
  advice.longer = *longer_foot(visit);
  advice.foot = *visit.foot(advice.longer).length;
  const Millimetres foot = advice.foot.value;
  advice.wearer = wearer_of(foot, is_child);
  advice.inside_least = plus(foot, window.least);
  advice.inside_most = plus(foot, window.most);
  advice.sizes = sizes_to_ask(foot, advice.wearer);
  if (visit.left.length && visit.right.length) {
    advice.smaller = smaller_foot(visit, advice.longer, window);
  }
  advice.width = larger(visit, &FootMeasures::width);
  if (advice.width) {
    advice.with_width = mondopoint_with_width(foot, advice.width->value, advice.wearer);
  }
  const auto girth = larger(visit, &FootMeasures::girth);
  if (girth && advice.wearer == Wearer::adult) {
    advice.girth = GirthAdvice{*girth, girth_code_for(foot, girth->value, GirthTable::men),
                               girth_code_for(foot, girth->value, GirthTable::women)};
  }
  return advice;
}

}  // namespace heelrule
