#include "engine/quantity/shoe_size.hpp"

#include <fmt/format.h>

#include <cmath>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr int special_step = 15;             // 7.5 mm, in halves
constexpr double longest_likely_foot = 320;  // mm
constexpr double narrowest_width = 30;
constexpr double widest_width = 160;

bool knows_special_steps(SizeSystem system) {
  return system == SizeSystem::mondopoint || system == SizeSystem::russian;
}

int step_from(SizeSystem system, int halves) {
  const int usual = facts(system).step;
  return halves % usual == 0 ? usual : special_step;
}

bool is_in_range(SizeSystem system, double number) {
  return number * 2 >= facts(system).lowest && number * 2 <= facts(system).highest;
}

bool is_on_a_step(SizeSystem system, double number) {
  return std::fmod(number * 2, facts(system).step) == 0 ||
         (knows_special_steps(system) && std::fmod(number * 2, special_step) == 0);
}

bool is_size(SizeSystem system, double number) {
  return is_in_range(system, number) && is_on_a_step(system, number);
}

// Where a children's run ends, the numbers begin again.
std::optional<SizeSystem> run_after(SizeSystem system) {
  switch (system) {
    case SizeSystem::british_child:
      return SizeSystem::british;
    case SizeSystem::american_child:
      return SizeSystem::american_youth;
    default:
      return std::nullopt;
  }
}

std::optional<SizeSystem> run_before(SizeSystem system) {
  switch (system) {
    case SizeSystem::british:
      return SizeSystem::british_child;
    case SizeSystem::american_youth:
      return SizeSystem::american_child;
    default:
      return std::nullopt;
  }
}

bool may_be_in_the_other_unit(SizeSystem system) {
  return system == SizeSystem::mondopoint || system == SizeSystem::japanese;
}

std::string number_text(SizeSystem system, double number) {
  return system == SizeSystem::japanese && std::floor(number * 2) == number * 2
             ? fmt::format("{:.1f}", number)
             : shortest(number);
}

std::string size_text(SizeSystem system, double number) {
  return fmt::format("{} {}", facts(system).mark, number_text(system, number));
}

Problem out_of_range(SizeSystem system, double number) {
  const SizeSystemFacts& known = facts(system);
  std::string hint = fmt::format("they run from {} to {}", number_text(system, known.lowest / 2.0),
                                 number_text(system, known.highest / 2.0));
  if (system == SizeSystem::british && (number == 0 || number == 0.5)) {
    hint = fmt::format("write `UK child {}`", number_text(system, number + 13));
  }
  const double other_unit = number < known.lowest / 2.0 ? number * 10 : number / 10;
  if (may_be_in_the_other_unit(system) && other_unit <= longest_likely_foot &&
      is_size(system, other_unit)) {
    hint = fmt::format("write `{}`", size_text(system, other_unit));
  }
  return {fmt::format("`{}` is out of range: {} sizes are {}", size_text(system, number),
                      known.mark, known.numbers),
          std::move(hint)};
}

Problem between_sizes(SizeSystem system, double number) {
  const int step = facts(system).step;
  const double below = std::floor(number * 2 / step) * step / 2;
  return {fmt::format("`{}` lies between two sizes", size_text(system, number)),
          fmt::format("write `{}` or `{}`", size_text(system, below),
                      size_text(system, below + step / 2.0))};
}

}  // namespace

Parsed<ShoeSize> shoe_size(SizeSystem system, double number) {
  if (!is_in_range(system, number)) {
    return out_of_range(system, number);
  }
  if (!is_on_a_step(system, number)) {
    return between_sizes(system, number);
  }
  return ShoeSize(system, static_cast<int>(number * 2));
}

Parsed<ShoeSize> with_width(ShoeSize size, Millimetres width) {
  if (size.system_ != SizeSystem::mondopoint && size.system_ != SizeSystem::chinese) {
    return Problem{fmt::format("`{}` has no width in mm", show(size)),
                   "only Mondopoint and Chinese sizes have one: `245/95`"};
  }
  const double value = width.value();
  if (!(value >= narrowest_width && value <= widest_width) || std::floor(value) != value) {
    return Problem{
        fmt::format("`{}` is no foot width", shortest(value)),
        fmt::format("write whole mm from {} to {}: `245/95`", narrowest_width, widest_width)};
  }
  size.width_ = width;
  return size;
}

Parsed<ShoeSize> with_girth_code(ShoeSize size, GirthCode code) {
  if (size.system_ != SizeSystem::japanese) {
    return Problem{fmt::format("`{}` has no girth code", show(size)),
                   "only Japanese sizes have one: `JP 25.0 EE`"};
  }
  size.girth_code_ = code;
  return size;
}

std::string show_number(const ShoeSize& size) { return number_text(size.system(), size.number()); }

std::string show(const ShoeSize& size) {
  std::string text = size_text(size.system(), size.number());
  if (const auto width = size.width()) {
    text += "/" + shortest(width->value());
  }
  if (const auto code = size.girth_code()) {
    text += fmt::format(" {}", show(*code));
  }
  return text;
}

std::optional<ShoeSize> next_larger(ShoeSize size) {
  size.halves_ += step_from(size.system_, size.halves_);
  if (size.halves_ <= facts(size.system_).highest) {
    return size;
  }
  const auto next = run_after(size.system_);
  if (!next) {
    return std::nullopt;
  }
  size.system_ = *next;
  size.halves_ = facts(*next).lowest;
  return size;
}

std::optional<ShoeSize> next_smaller(ShoeSize size) {
  size.halves_ -= step_from(size.system_, size.halves_);
  if (size.halves_ >= facts(size.system_).lowest) {
    return size;
  }
  const auto before = run_before(size.system_);
  if (!before) {
    return std::nullopt;
  }
  size.system_ = *before;
  size.halves_ = facts(*before).highest;
  return size;
}

Millimetres size_step(const ShoeSize& size) {
  if (size.halves() % facts(size.system()).step != 0) {
    return Millimetres(special_step / 2.0);
  }
  return Millimetres(facts(size.system()).whole_size / 2);
}

}  // namespace heelrule
