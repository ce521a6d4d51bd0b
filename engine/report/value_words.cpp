#include "engine/report/value_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/scoring/limit.hpp"

namespace heelrule {
namespace {

constexpr int most_places = 9;

int compare(double a, double b) { return a < b ? -1 : (a > b ? 1 : 0); }

// The number that a reader makes of the printed text: rounding it here again could fall to the
// other side of a half.
double as_printed(double value, int places) {
  const auto printed = parse_decimal(with_places(value, places));
  return printed ? scaled(*printed) : value;
}

double rounded(double value, int places) {
  const double scale = std::pow(10.0, places);
  return std::round(value * scale) / scale;
}

double cut_off(double value, int places) {
  const double scale = std::pow(10.0, places);
  return std::floor(value * scale) / scale;
}

std::string number_words(double value, Unit unit, std::span<const double> cuts) {
  const double printed = in_unit(value, unit);
  int places = facts(unit).places;
  const auto agrees = [&](double cut) {
    return compare(as_printed(printed, places), in_unit(cut, unit)) == compare(value, cut);
  };
  while (places < most_places && !std::all_of(cuts.begin(), cuts.end(), agrees)) {
    ++places;
  }
  return show(value, unit, places);
}

std::string level_words(const Program& program, const Type& type, double value) {
  if (type.kind == Type::Kind::yes_no) {
    return value == 1 ? "yes" : "no";
  }
  const std::vector<Level>& levels = levels_of(program.rules.traits[type.scale].kind);
  return in_words(levels[static_cast<std::size_t>(value)].name.value);
}

// As a rule set's own words name it: of a rule whose sides count each, the side itself.
std::string_view side_slot(const Finding& finding, const SideReading& reading) {
  return finding.sides_alike ? std::string_view("both") : in_words(reading.side);
}

}  // namespace

std::string_view in_words(Side side) {
  switch (side) {
    case Side::none:
      return "";
    case Side::left:
      return "left";
    case Side::right:
      return "right";
  }
  return "";
}

std::string_view side_words(const Finding& finding, const SideReading& reading) {
  return finding.side != Side::none ? "" : side_slot(finding, reading);
}

std::string value_words(const Program& program, std::size_t trait, double value,
                        std::span<const double> cuts) {
  const TraitProgram& known = program.traits[trait];
  if (known.type.kind != Type::Kind::number) {
    return level_words(program, known.type, value);
  }
  return number_words(value, known.unit, cuts);
}

std::string distance_words(Unit unit, double distance) {
  const double none = 0;
  return number_words(distance, unit, {&none, 1});
}

std::string score_words(double points, std::span<const GradeBound> bounds) {
  const auto agrees = [&](double printed) {
    return std::all_of(bounds.begin(), bounds.end(), [&](GradeBound bound) {
      return (printed < bound / 1000) == (points < bound / 1000);
    });
  };
  int places = 1;
  while (places < most_places && !agrees(rounded(points, places)) &&
         !agrees(cut_off(points, places))) {
    ++places;
  }
  const double nearest = rounded(points, places);
  return fmt::format("{:.{}f}", agrees(nearest) ? nearest : cut_off(points, places), places);
}

std::string readings_words(const Program& program, const Finding& finding) {
  const RuleProgram& rule = program.rule_programs[finding.rule];
  std::string words;
  for (const SideReading& reading : finding.readings) {
    if (finding.sides_alike && !words.empty()) {
      break;
    }
    const std::string_view side = side_words(finding, reading);
    words += fmt::format("{}{}{}{}", words.empty() ? "" : ", ", side, side.empty() ? "" : " ",
                         value_words(program, rule.trait, reading.value, rule.cuts));
  }
  return words;
}

std::string band_words(const Program& program, std::size_t rule, std::size_t band) {
  const Rule& written = program.rules.rules[rule];
  const RuleProgram& prepared = program.rule_programs[rule];
  if (written.bands.empty()) {
    return level_words(program, program.traits[prepared.trait].type, static_cast<double>(band));
  }
  const Unit unit = program.traits[prepared.trait].unit;
  const auto cut = [&](std::size_t at) { return show(prepared.cuts[at], unit, most_places); };
  const std::string& name = written.bands[band].name.value;
  const bool first = band == 0;
  const bool last = band == prepared.cuts.size();
  if (first && last) {
    return in_words(name);
  }
  const auto lower = [&] {
    return fmt::format("{}{}", written.bands[band - 1].cut->belongs_below ? "above " : "",
                       cut(band - 1));
  };
  const auto upper = [&] {
    return fmt::format("{}{}", written.bands[band].cut->belongs_below ? "up to " : "below ",
                       cut(band));
  };
  if (first) {
    return fmt::format("{} ({})", in_words(name), upper());
  }
  if (last) {
    const bool above = written.bands[band - 1].cut->belongs_below;
    return fmt::format("{} ({}{})", in_words(name), lower(), above ? "" : " or more");
  }
  const bool up_to = written.bands[band].cut->belongs_below;
  return up_to ? fmt::format("{} ({} to {})", in_words(name), lower(), cut(band))
               : fmt::format("{} ({} to {})", in_words(name), lower(), upper());
}

std::string fill(const Phrase& phrase, std::span<const std::string> languages,
                 const Program& program, const Finding& finding, const SideReading& reading) {
  if (phrase.empty()) {
    return {};
  }
  const RuleProgram& rule = program.rule_programs[finding.rule];
  const Unit unit = program.traits[rule.trait].unit;
  const std::optional<Limit> limit = limit_of(rule, reading);
  std::string words;
  for (const Piece& piece : choose(phrase, languages).pieces) {
    switch (piece.slot) {
      case Slot::none:
        words += piece.words;
        break;
      case Slot::value:
        words += value_words(program, rule.trait, reading.value, rule.cuts);
        break;
      case Slot::side:
        words += side_slot(finding, reading);
        break;
      case Slot::limit:
        words += limit ? show(limit->at, unit, most_places) : "";
        break;
      case Slot::short_by:
      case Slot::over_by:
        words += limit ? distance_words(unit, limit->distance) : "";
        break;
      case Slot::band:
        words += program.rules.rules[finding.rule].bands.empty()
                     ? value_words(program, rule.trait, reading.value, {})
                     : in_words(program.rules.rules[finding.rule].bands[reading.band].name.value);
        break;
    }
  }
  return words;
}

}  // namespace heelrule
