// In which order things are asked at the bench.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// Questions that are asked one after the other, under one heading.
struct BenchSection {
  enum class Kind : std::uint8_t {
    safety,  ///< the safety questions
    house,   ///< a section of the rule set
    rest,    ///< traits that no section claims
  };

  Kind kind = Kind::house;
  std::size_t section = 0;          ///< of `house`: index in `RuleSet::sections`
  std::vector<std::size_t> traits;  ///< indices in `RuleSet::traits`; never empty

  bool operator==(const BenchSection&) const = default;
};

/// Everything that is recorded, once: the safety questions, then the sections of the rule set by
/// their order, then the rest. A trait stands in the section that it names; where it names none, in
/// that of the first rule which needs it. Within a section traits stand by their `order`, then as
/// written.
/// Derived traits are not asked for.
std::vector<BenchSection> bench_order(const Program& program);

/// A heading: the section's title, `Safety`, or `More to record`.
std::string_view heading(const BenchSection& section, const RuleSet& rules,
                         std::span<const std::string> languages);

/// A word by which a person names the section: its name, `safety`, or `more`.
std::string_view short_name(const BenchSection& section, const RuleSet& rules);

}  // namespace heelrule
