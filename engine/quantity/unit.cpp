#include "engine/quantity/unit.hpp"

#include <cmath>

namespace heelrule {
namespace {

constexpr Dimension number{};
constexpr Dimension length{1, 0, 0, 0, 0};
constexpr Dimension angle{0, 1, 0, 0, 0};
constexpr Dimension mass{0, 0, 1, 0, 0};
constexpr Dimension force{0, 0, 0, 1, 0};
constexpr Dimension duration{0, 0, 0, 0, 1};
constexpr Dimension stiffness{1, -1, 0, 1, 0};

constexpr std::array<UnitFacts, 18> table{{
    {"", "count", "12", number, 1, 0, 2},
    {"%", "percentage", "50 %", number, 1, -2, 1},
    {"mm", "length", "243 mm", length, 1, 0, 1},
    {"cm", "length", "24.3 cm", length, 10, 0, 2},
    {"m", "length", "1.72 m", length, 1000, 0, 3},
    {"in", "length", "9.6 in", length, 254, -1, 2},
    {"°", "angle", "7°", angle, 1, 0, 1},
    {"g", "mass", "310 g", mass, 1, 0, 0},
    {"kg", "mass", "68 kg", mass, 1000, 0, 2},
    {"N", "force", "20 N", force, 1, 0, 1},
    {"N·m/°", "bending stiffness", "0.3 N·m/°", stiffness, 1000, 0, 3},
    {"s", "time", "30 s", duration, 1, 0, 1},
    {"min", "time", "20 min", duration, 60, 0, 1},
    {"h", "time", "6 h", duration, 3600, 0, 1},
    {"days", "time", "14 days", duration, 86'400, 0, 1},
    {"weeks", "time", "6 weeks", duration, 604'800, 0, 1},
    {"months", "time", "8 months", duration, 2'629'800, 0, 1},
    {"years", "time", "5 years", duration, 31'557'600, 0, 1},
}};

struct Spelling {
  std::string_view text;
  Unit unit;
};

constexpr std::array<Spelling, 37> spellings{{
    {"count", Unit::count},
    {"percent", Unit::percent},
    {"%", Unit::percent},
    {"mm", Unit::millimetre},
    {"cm", Unit::centimetre},
    {"m", Unit::metre},
    {"in", Unit::inch},
    {"inch", Unit::inch},
    {"inches", Unit::inch},
    {"°", Unit::degree},
    {"deg", Unit::degree},
    {"degree", Unit::degree},
    {"degrees", Unit::degree},
    {"g", Unit::gram},
    {"kg", Unit::kilogram},
    {"N", Unit::newton},
    {"N·m/°", Unit::newton_metre_per_degree},
    {"N.m/°", Unit::newton_metre_per_degree},
    {"Nm/°", Unit::newton_metre_per_degree},
    {"N·m/deg", Unit::newton_metre_per_degree},
    {"N.m/deg", Unit::newton_metre_per_degree},
    {"Nm/deg", Unit::newton_metre_per_degree},
    {"s", Unit::second},
    {"min", Unit::minute},
    {"h", Unit::hour},
    {"day", Unit::day},
    {"days", Unit::day},
    {"week", Unit::week},
    {"weeks", Unit::week},
    {"month", Unit::month},
    {"months", Unit::month},
    {"year", Unit::year},
    {"years", Unit::year},
    {"hour", Unit::hour},
    {"hours", Unit::hour},
    {"minutes", Unit::minute},
    {"seconds", Unit::second},
}};

void append_factor(std::string& text, std::string_view name, int exponent) {
  if (exponent == 0) {
    return;
  }
  if (!text.empty() && text.back() != '/') {
    text += "·";
  }
  text += name;
  if (exponent == 2) {
    text += "²";
  } else if (exponent == 3) {
    text += "³";
  } else if (exponent != 1) {
    text += "^" + std::to_string(exponent);
  }
}

}  // namespace

Dimension operator*(Dimension a, Dimension b) {
  const auto sum = [](std::int8_t x, std::int8_t y) { return static_cast<std::int8_t>(x + y); };
  return {sum(a.length, b.length), sum(a.angle, b.angle), sum(a.mass, b.mass),
          sum(a.force, b.force), sum(a.time, b.time)};
}

Dimension operator/(Dimension a, Dimension b) {
  const auto less = [](std::int8_t x, std::int8_t y) { return static_cast<std::int8_t>(x - y); };
  return {less(a.length, b.length), less(a.angle, b.angle), less(a.mass, b.mass),
          less(a.force, b.force), less(a.time, b.time)};
}

const UnitFacts& facts(Unit unit) { return table[static_cast<std::size_t>(unit)]; }

std::optional<Unit> find_unit(std::string_view spelling) {
  for (const Spelling& known : spellings) {
    if (known.text == spelling) {
      return known.unit;
    }
  }
  return std::nullopt;
}

double in_unit(double stored, Unit unit) {
  const UnitFacts& known = facts(unit);
  double value = stored;
  for (int shift = known.shift; shift < 0; ++shift) {
    value *= 10;
  }
  return value / known.factor;
}

std::optional<Unit> usual_unit(Dimension dimension) {
  for (const Unit unit : {Unit::count, Unit::millimetre, Unit::degree, Unit::gram, Unit::newton,
                          Unit::newton_metre_per_degree, Unit::day}) {
    if (facts(unit).dimension == dimension) {
      return unit;
    }
  }
  return std::nullopt;
}

std::string in_words(Dimension dimension) {
  if (const auto unit = usual_unit(dimension)) {
    return *unit == Unit::count ? "number" : std::string(facts(*unit).kind);
  }
  const std::array<std::pair<std::string_view, int>, 5> parts{{{"length", dimension.length},
                                                               {"angle", dimension.angle},
                                                               {"mass", dimension.mass},
                                                               {"force", dimension.force},
                                                               {"time", dimension.time}}};
  std::string above;
  std::string below;
  for (const auto& [name, exponent] : parts) {
    append_factor(exponent > 0 ? above : below, name, exponent > 0 ? exponent : -exponent);
  }
  if (above.empty()) {
    above = "1";
  }
  return below.empty() ? above : above + "/" + below;
}

std::string_view unit_spelling(std::size_t index) { return spellings[index].text; }

std::size_t unit_spelling_count() { return spellings.size(); }

}  // namespace heelrule
