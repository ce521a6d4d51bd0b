#include "engine/report/chance_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "engine/quantity/decimal.hpp"

namespace heelrule {

std::string chance_words(double chance, double limit) {
  const double percent = chance * 100;
  const double whole = std::round(percent);
  if (chance > 0 && whole == 0) {
    return "under 1 %";
  }
  if (chance < 1 && whole == 100) {
    return "over 99 %";
  }
  if (chance < limit && whole >= limit * 100) {
    return fmt::format("{} %", with_places(std::floor(percent * 10) / 10, 1));
  }
  return fmt::format("{} %", with_places(whole, 0));
}

double printed_chance(double chance) { return std::round(chance * 1e6) / 1e6; }

}  // namespace heelrule
