#include "engine/quantity/size_system.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/quantity/nearest.hpp"
#include "engine/quantity/same_letters.hpp"

namespace heelrule {
namespace {

constexpr double paris_point = 20.0 / 3;
constexpr double english_size = 25.4 / 3;
constexpr double metric_size = 10;

constexpr std::array<SizeSystemFacts, 11> table{{
    {"MP", "foot lengths in mm", 160, 800, 10, metric_size, 1},
    {"EU", "Paris points", 26, 124, 1, paris_point, 0},
    {"UK", "English sizes", 2, 48, 1, english_size, 0},
    {"UK child", "English sizes of children", 0, 27, 1, english_size, 0},
    {"US M", "American sizes of men", 2, 50, 1, english_size, 0},
    {"US W", "American sizes of women", 2, 52, 1, english_size, 0},
    {"US child", "American sizes of children", 0, 27, 1, english_size, 0},
    {"US youth", "American sizes of older children", 2, 14, 1, english_size, 0},
    {"JP", "foot lengths in cm", 16, 80, 1, metric_size, 10},
    {"CN", "foot lengths in mm", 160, 800, 10, metric_size, 1},
    {"RU", "foot lengths in mm", 160, 800, 10, metric_size, 1},
}};

struct Spelling {
  std::string_view text;
  SizeSystem system;
};

constexpr std::array<Spelling, 15> spellings{{
    {"EU", SizeSystem::european},
    {"UK", SizeSystem::british},
    {"UK child", SizeSystem::british_child},
    {"US M", SizeSystem::american_men},
    {"US men", SizeSystem::american_men},
    {"US W", SizeSystem::american_women},
    {"US women", SizeSystem::american_women},
    {"US child", SizeSystem::american_child},
    {"US youth", SizeSystem::american_youth},
    {"JP", SizeSystem::japanese},
    {"CN", SizeSystem::chinese},
    {"RU", SizeSystem::russian},
    {"MP", SizeSystem::mondopoint},
    {"Mondo", SizeSystem::mondopoint},
    {"Mondopoint", SizeSystem::mondopoint},
}};

}  // namespace

const SizeSystemFacts& facts(SizeSystem system) { return table[static_cast<std::size_t>(system)]; }

Millimetres whole_size(SizeSystem system) { return Millimetres(facts(system).whole_size); }

Parsed<SizeSystem> parse_size_system(std::string_view mark, std::string_view number) {
  for (const Spelling& known : spellings) {
    if (same_letters(known.text, mark)) {
      return known.system;
    }
  }
  if (same_letters(mark, "US")) {
    return Problem{fmt::format("`{} {}` does not say whose size it is", mark, number),
                   "say whose: `US M`, `US W`, `US child` or `US youth`"};
  }
  if (mark.empty()) {
    return Problem{fmt::format("`{}` does not say in which system it is", number),
                   "write the system in front, as in `EU 39` or `UK 6`"};
  }
  Nearest nearest(mark);
  for (const Spelling& known : spellings) {
    nearest.offer(known.text);
  }
  return Problem{fmt::format("`{}` is no size system known here", mark),
                 nearest.found()
                     ? nearest.question()
                     : "write one of `EU`, `UK`, `UK child`, `US M`, `US W`, `US child`, "
                       "`US youth`, `JP`, `CN`, `RU` and `MP`"};
}

}  // namespace heelrule
