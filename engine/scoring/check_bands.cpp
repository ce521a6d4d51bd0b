#include "engine/scoring/check_bands.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/formula/type_words.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/quantity/range.hpp"
#include "engine/scoring/check_rules.hpp"

namespace heelrule {
namespace {

SpokenWords spoken(const Words& words, const SlotsAllowed& allowed, Diagnostics& diagnostics) {
  return {read_phrase(words.say, allowed, diagnostics),
          read_phrase(words.caution, allowed, diagnostics),
          read_phrase(words.referral, allowed, diagnostics),
          read_phrase(words.advice, allowed, diagnostics)};
}

double least(const Credit& credit) { return std::min(credit.from, credit.to); }
double most(const Credit& credit) { return std::max(credit.from, credit.to); }

// The cut toward the neighbour that earns more; of two, the one that earns most, and the lower one
// of equals.
std::optional<std::size_t> better_cut(const std::vector<Band>& bands, std::size_t at) {
  const double own = least(bands[at].earns.value);
  const double below = at > 0 ? most(bands[at - 1].earns.value) : -1;
  const double above = at + 1 < bands.size() ? most(bands[at + 1].earns.value) : -1;
  if (std::max(below, above) <= own) {
    return std::nullopt;
  }
  return below >= above ? at - 1 : at;
}

std::string called(const Band& band) {
  return band.name.value.empty() ? "this band" : fmt::format("band `{}`", band.name.value);
}

class BandChecker {
 public:
  BandChecker(const Trait& trait, const Rule& rule, Unit unit, RuleProgram& program,
              Diagnostics& diagnostics)
      : trait_(trait), rule_(rule), unit_(unit), program_(program), diagnostics_(diagnostics) {}

  void check(bool has_sides) {
    for (std::size_t i = 0; i < rule_.bands.size(); ++i) {
      check_cut(i);
      check_name(i);
      check_ramp(i);
      program_.scale.credits.push_back(rule_.bands[i].earns.value);
      program_.scale.has_ramp |= rule_.bands[i].earns.value.is_ramp();
      const auto better = better_cut(rule_.bands, i);
      program_.better.push_back(better);
      const SlotsAllowed allowed{
          has_sides, better.has_value(), better == i, better.has_value() && better != i, {}};
      program_.band_words.push_back(spoken(rule_.bands[i].words, allowed, diagnostics_));
    }
    if (all_cuts_sound_) {
      check_reach();
    }
  }

 private:
  void check_cut(std::size_t at) {
    const Band& band = rule_.bands[at];
    const bool last = at + 1 == rule_.bands.size();
    if (band.cut_unread) {
      all_cuts_sound_ = false;
      return;
    }
    if (!band.cut) {
      if (!last) {
        all_cuts_sound_ = false;
        diagnostics_.error(band.name.where,
                           fmt::format("{} has no upper end, and a band follows it", called(band)),
                           "add `below:` or `up to:` with its cut point");
      }
      return;
    }
    if (last) {
      diagnostics_.error(band.cut->where,
                         fmt::format("nothing says what values above {} earn", called(band)),
                         "leave the cut point of the last band out, or add a band");
    }
    const Quantity& quantity = band.cut->at;
    const Problem problem = accepts(unit_, quantity.unit, show(quantity.stored, quantity.unit, 9));
    if (!problem.message.empty()) {
      all_cuts_sound_ = false;
      diagnostics_.error(band.cut->where, problem);
      return;
    }
    add_threshold(band, quantity.stored);
  }

  void add_threshold(const Band& band, double cut) {
    const double threshold = band.cut->belongs_below
                                 ? std::nextafter(cut, std::numeric_limits<double>::infinity())
                                 : cut;
    auto& thresholds = program_.scale.thresholds;
    if (!thresholds.empty() && threshold <= thresholds.back()) {
      const double before = program_.cuts.back();
      diagnostics_.error(band.cut->where,
                         cut < before
                             ? fmt::format("the cut points run downward: {} comes after {}",
                                           show(cut, unit_, 9), show(before, unit_, 9))
                             : fmt::format("{} holds no value: it ends at {}, where it begins",
                                           called(band), show(cut, unit_, 9)),
                         cut < before ? "write the bands from the lowest values to the highest"
                                      : "move its cut point, or leave the band out");
      all_cuts_sound_ = false;
    }
    thresholds.push_back(threshold);
    program_.cuts.push_back(cut);
  }

  void check_name(std::size_t at) {
    const Located<std::string>& name = rule_.bands[at].name;
    for (std::size_t i = 0; i < at && !name.value.empty(); ++i) {
      if (rule_.bands[i].name.value == name.value) {
        diagnostics_.error(name.where, fmt::format("two bands are called `{}`", name.value),
                           "give each band a name of its own",
                           {{rule_.bands[i].name.where, "the first one is here"}});
        return;
      }
    }
  }

  void check_ramp(std::size_t at) {
    const Located<Credit>& earns = rule_.bands[at].earns;
    if (earns.value.is_ramp() && (at == 0 || at + 1 == rule_.bands.size())) {
      diagnostics_.error(earns.where,
                         fmt::format("{} is open at one end, so no straight line fits it",
                                     called(rule_.bands[at])),
                         "give one credit, or put a band beyond it");
    }
  }

  void check_reach() {
    const auto* measure = std::get_if<MeasureKind>(&trait_.kind);
    if (measure == nullptr || !measure->plausible) {
      return;
    }
    const double from = measure->plausible->value.from.stored;
    const double to = measure->plausible->value.to.stored;
    const auto& thresholds = program_.scale.thresholds;
    for (std::size_t i = 0; i < rule_.bands.size(); ++i) {
      const bool above = i > 0 && thresholds[i - 1] > to;
      const bool below = i < thresholds.size() && thresholds[i] <= from;
      if (above || below) {
        diagnostics_.error(
            rule_.bands[i].name.where,
            fmt::format("no plausible value reaches {}: `{}` runs from {}", called(rule_.bands[i]),
                        trait_.name, show(measure->plausible->value, unit_, 9)),
            "leave the band out, or widen `plausible`",
            {{measure->plausible->where, "the plausible range is here"}});
      }
    }
  }

  const Trait& trait_;
  const Rule& rule_;
  Unit unit_;
  RuleProgram& program_;
  Diagnostics& diagnostics_;
  bool all_cuts_sound_ = true;
};

std::vector<std::string> level_names(const Type& type, const RuleSet& rules) {
  if (type.kind == Type::Kind::yes_no) {
    return {"no", "yes"};
  }
  std::vector<std::string> names;
  for (const Level& level : levels_of(rules.traits[type.scale].kind)) {
    names.push_back(level.name.value);
  }
  return names;
}

// The place of each written level on its scale; nothing where a level was unknown or repeated.
std::vector<std::optional<std::size_t>> placed(const Rule& rule,
                                               const std::vector<std::string>& names,
                                               Diagnostics& diagnostics) {
  std::vector<std::optional<std::size_t>> written(names.size());
  for (std::size_t i = 0; i < rule.levels.size(); ++i) {
    const Located<std::string>& level = rule.levels[i].level;
    const auto at = std::find(names.begin(), names.end(), level.value);
    if (at != names.end()) {
      written[static_cast<std::size_t>(at - names.begin())] = i;
      continue;
    }
    Nearest nearest(level.value);
    for (const std::string& name : names) {
      nearest.offer(name);
    }
    if (nearest.found()) {
      // Read as the one that was probably meant, so that one slip is one message.
      auto& meant = written[static_cast<std::size_t>(
          std::find(names.begin(), names.end(), nearest.name()) - names.begin())];
      meant = meant.value_or(i);
    }
    diagnostics.error(
        level.where, fmt::format("`{}` has no level `{}`", rule.reads.value, level.value),
        nearest.found() ? nearest.question()
                        : fmt::format("its levels are `{}`", fmt::join(names, "`, `")));
  }
  return written;
}

}  // namespace

void check_bands(const TraitType& type, const Trait& trait, const RuleSet& rules, const Rule& rule,
                 RuleProgram& program, Diagnostics& diagnostics) {
  if (type.type.kind != Type::Kind::number) {
    const bool leveled =
        type.type.kind == Type::Kind::level || type.type.kind == Type::Kind::yes_no;
    diagnostics.error(rule.credit_where,
                      fmt::format("bands are for measures, and `{}` is {}", trait.name,
                                  in_words(type.type, rules)),
                      leveled ? "write `levels:` with a credit for each"
                              : "derive a measure from it, and let the rule read that");
    return;
  }
  BandChecker(trait, rule, printed_unit(trait, type.type), program, diagnostics)
      .check(type.has_sides);
}

void check_levels(const TraitType& type, const Trait& trait, const RuleSet& rules, const Rule& rule,
                  RuleProgram& program, Diagnostics& diagnostics) {
  if (type.type.kind != Type::Kind::level && type.type.kind != Type::Kind::yes_no) {
    const bool number = type.type.kind == Type::Kind::number;
    diagnostics.error(rule.credit_where,
                      fmt::format("levels are for scales, choices and yes/no, and `{}` is {}",
                                  trait.name, in_words(type.type, rules)),
                      number ? "write `bands:` with cut points"
                             : "derive a measure from it, and let the rule read that");
    return;
  }
  const std::vector<std::string> names = level_names(type.type, rules);
  const auto written = placed(rule, names, diagnostics);
  std::string missing;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!written[i]) {
      missing += fmt::format("{}`{}`", missing.empty() ? "" : ", ", names[i]);
      continue;
    }
    const LevelCredit& level = rule.levels[*written[i]];
    if (level.earns.value.is_ramp()) {
      diagnostics.error(level.earns.where, "a level earns one credit, not a straight line",
                        "write one percentage");
    }
    if (i > 0) {
      program.scale.thresholds.push_back(static_cast<double>(i));
    }
    program.scale.credits.push_back(level.earns.value);
    program.better.emplace_back();
    const SlotsAllowed allowed{type.has_sides, false, false, false, "a level has no limit"};
    program.band_words.push_back(spoken(level.words, allowed, diagnostics));
  }
  if (!missing.empty()) {
    diagnostics.error(
        rule.credit_where,
        fmt::format("these levels of `{}` earn nothing yet: {}", rule.reads.value, missing),
        "give every level a credit");
  }
}

}  // namespace heelrule
