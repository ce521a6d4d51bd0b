#include "engine/scoring/check_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/quantity/nearest.hpp"
#include "engine/scoring/check_bands.hpp"

namespace heelrule {
namespace {

// So many names still make a hint that is read.
constexpr std::size_t most_listed = 12;

class RuleChecker {
 public:
  RuleChecker(const RuleSet& rules, const TraitTypes& traits, const Rule& rule,
              Diagnostics& diagnostics)
      : rules_(rules), traits_(traits), rule_(rule), diagnostics_(diagnostics) {}

  std::optional<RuleProgram> check() {
    const std::size_t errors_before = diagnostics_.error_count();
    RuleProgram program;
    check_section(program);
    check_cap();
    const TraitType* read = check_trait(program);
    if (read != nullptr) {
      check_sides(*read);
      if (rule_.bands.empty() && rule_.levels.empty()) {
        return std::nullopt;  // has been reported
      }
      if (rule_.bands.empty()) {
        check_levels(*read, rules_.traits[program.trait], rules_, rule_, program, diagnostics_);
      } else {
        check_bands(*read, rules_.traits[program.trait], rules_, rule_, program, diagnostics_);
      }
      check_words(*read, program);
    }
    const bool sound = read != nullptr && diagnostics_.error_count() == errors_before;
    return sound ? std::optional(std::move(program)) : std::nullopt;
  }

 private:
  // What `name` means in `list`, or an error that asks for the nearest name.
  template <class List, class NameOf>
  void unknown(const Located<std::string>& name, std::string_view kind, const List& list,
               NameOf name_of) {
    if (name.value.empty()) {
      return;  // its absence has been reported
    }
    Nearest nearest(name.value);
    std::vector<std::string_view> known;
    for (const auto& entry : list) {
      nearest.offer(name_of(entry));
      known.push_back(name_of(entry));
    }
    std::string hint = nearest.question();
    if (known.empty()) {
      hint = fmt::format("this rule set has none yet: add it under `{}s:`", kind);
    } else if (!nearest.found() && known.size() <= most_listed) {
      hint = fmt::format("its {}s are `{}`", kind, fmt::join(known, "`, `"));
    } else if (!nearest.found()) {
      hint = fmt::format("name a {} of this rule set", kind);
    }
    diagnostics_.error(name.where, fmt::format("there is no {} `{}`", kind, name.value),
                       std::move(hint));
  }

  void check_section(RuleProgram& program) {
    if (const auto section = rules_.find_section(rule_.section.value)) {
      program.section = static_cast<std::uint32_t>(*section);
    } else {
      unknown(rule_.section, "section", rules_.sections,
              [](const Section& s) -> const std::string& { return s.name.value; });
    }
  }

  void check_cap() {
    if (!rule_.caps) {
      return;
    }
    const auto grade = rules_.find_grade(rule_.caps->value);
    if (!grade) {
      unknown(*rule_.caps, "grade", rules_.grades,
              [](const Grade& g) -> const std::string& { return g.name.value; });
    } else if (*grade == 0) {
      diagnostics_.error(
          rule_.caps->where,
          fmt::format("`{}` is the best grade, so this must caps nothing", rule_.caps->value),
          "name a lower grade, or leave `must` out");
    }
  }

  const TraitType* check_trait(RuleProgram& program) {
    const auto trait = rules_.find_trait(rule_.reads.value);
    if (!trait) {
      unknown(rule_.reads, "trait", rules_.traits,
              [](const Trait& t) -> const std::string& { return t.name; });
      return nullptr;
    }
    program.trait = static_cast<std::uint32_t>(*trait);
    const auto& type = traits_.types[*trait];
    return type ? &*type : nullptr;
  }

  void check_sides(const TraitType& read) {
    if (rule_.sides != SideRule::worse && !read.has_sides) {
      diagnostics_.error(
          rule_.reads.where,
          fmt::format("`{}` has no sides, and the rule says how sides count", rule_.reads.value),
          "leave `sides` out");
    }
  }

  void check_words(const TraitType& read, RuleProgram& program) {
    const SlotsAllowed allowed{read.has_sides, false, false, false,
                               "these words go with every band or level"};
    program.words = {{},
                     read_phrase(rule_.words.caution, allowed, diagnostics_),
                     read_phrase(rule_.words.referral, allowed, diagnostics_),
                     read_phrase(rule_.words.advice, allowed, diagnostics_)};
  }

  const RuleSet& rules_;
  const TraitTypes& traits_;
  const Rule& rule_;
  Diagnostics& diagnostics_;
};

}  // namespace

std::vector<std::optional<RuleProgram>> check_rules(const RuleSet& rules, const TraitTypes& traits,
                                                    Diagnostics& diagnostics) {
  std::vector<std::optional<RuleProgram>> programs;
  programs.reserve(rules.rules.size());
  for (const Rule& rule : rules.rules) {
    programs.push_back(RuleChecker(rules, traits, rule, diagnostics).check());
  }
  return programs;
}

Unit printed_unit(const Trait& trait, const Type& type) {
  if (const auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
    return measure->unit;
  }
  if (const auto* derived = std::get_if<DerivedKind>(&trait.kind); derived && derived->shown) {
    return derived->shown->value;
  }
  return usual_unit(type.dimension).value_or(Unit::count);
}

}  // namespace heelrule
