#include "engine/quantity/girth_code.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/same_letters.hpp"

namespace heelrule {
namespace {

constexpr std::array<std::string_view, 10> letters{"A",  "B",   "C",    "D", "E",
                                                   "EE", "EEE", "EEEE", "F", "G"};
constexpr double length_step = 5;
constexpr double girth_per_length_step = 3;
constexpr double girth_per_code = 6;
constexpr double half_band = 3;

struct TableFacts {
  std::string_view whose;
  double shortest;
  double longest;
  double girth_of_shortest_a;
  GirthCode widest;
};

constexpr TableFacts men{"men", 200, 300, 189, GirthCode::g};
constexpr TableFacts women{"women", 195, 270, 183, GirthCode::f};

Problem no_child_girths() {
  return {"girth codes of children's shoes are not turned into girths here",
          "their table could not be checked: try the shoe on"};
}

Problem outside(const TableFacts& table, Millimetres length) {
  return {fmt::format("JIS S 5037 has no girths for {} with a foot of {} mm", table.whose,
                      with_places(length.value(), 1)),
          fmt::format("its table runs from {} mm to {} mm", table.shortest, table.longest)};
}

double narrowest_girth(const TableFacts& table, double length) {
  return table.girth_of_shortest_a +
         girth_per_length_step * ((length - table.shortest) / length_step);
}

}  // namespace

std::string_view show(GirthCode code) { return letters[static_cast<std::size_t>(code)]; }

std::optional<GirthCode> find_girth_code(std::string_view text) {
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (same_letters(text, letters[i])) {
      return static_cast<GirthCode>(i);
    }
  }
  return std::nullopt;
}

Parsed<Millimetres> ball_girth(GirthCode code, Millimetres length, GirthTable table) {
  if (table == GirthTable::children) {
    return no_child_girths();
  }
  const TableFacts& known = table == GirthTable::men ? men : women;
  if (!(length.value() >= known.shortest && length.value() <= known.longest)) {
    return outside(known, length);
  }
  if (std::fmod(length.value(), length_step) != 0) {
    return Problem{fmt::format("{} mm is no length of JIS S 5037", with_places(length.value(), 3)),
                   "its lengths go by 5 mm"};
  }
  if (code > known.widest) {
    return Problem{fmt::format("JIS S 5037 has no code {} for {}", show(code), known.whose),
                   fmt::format("its widest is {}", show(known.widest))};
  }
  return Millimetres(narrowest_girth(known, length.value()) +
                     girth_per_code * static_cast<double>(code));
}

Parsed<GirthCode> girth_code_for(Millimetres length, Millimetres girth, GirthTable table) {
  if (table == GirthTable::children) {
    return no_child_girths();
  }
  const TableFacts& known = table == GirthTable::men ? men : women;
  const double nearest = std::ceil(length.value() / length_step - 0.5) * length_step;
  if (!(nearest >= known.shortest && nearest <= known.longest)) {
    return outside(known, length);
  }
  const double narrowest = narrowest_girth(known, nearest);
  const double code = std::floor((girth.value() - narrowest + half_band) / girth_per_code);
  if (!(code >= 0 && code <= static_cast<double>(known.widest))) {
    return Problem{
        fmt::format("a girth of {} mm has no code of JIS S 5037 for {} with a foot of {} mm",
                    with_places(girth.value(), 1), known.whose, with_places(length.value(), 1)),
        fmt::format("A begins at {} mm, and {} ends below {} mm", narrowest - half_band,
                    show(known.widest),
                    narrowest + girth_per_code * static_cast<double>(known.widest) + half_band)};
  }
  return static_cast<GirthCode>(static_cast<int>(code));
}

}  // namespace heelrule
