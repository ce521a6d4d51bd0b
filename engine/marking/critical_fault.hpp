// Faults of a record that could hurt a client.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/marking/comparison.hpp"

namespace heelrule {

enum class CriticalKind : std::uint8_t {
  must_passed_over,  ///< a must fails by the reference, and not by the record
  must_failed,       ///< a must fails by the record, and passes at least in part by the reference
  safety_missed,     ///< a safety question that the reference answers is not answered
  safety_denied,     ///< a safety question that the reference answers with yes is answered with no
  referral_missed,   ///< a finding refers to a practitioner by the reference, and not by the record
};

struct CriticalFault {
  CriticalKind kind = CriticalKind::must_passed_over;
  std::size_t about = 0;           ///< index of the rule, or of the safety question
  std::optional<std::size_t> cap;  ///< the best mark that remains; nothing where it caps none

  bool operator==(const CriticalFault&) const = default;
};

/// Whether it is about a safety question; else it is about a rule.
constexpr bool is_about_safety(const CriticalFault& fault) {
  return fault.kind == CriticalKind::safety_missed || fault.kind == CriticalKind::safety_denied;
}

struct CriticalFaults {
  std::vector<CriticalFault> faults;
  /// Judged otherwise although nothing that it needs is at fault: a value on the edge of a band,
  /// within tolerance, or a split panel. Held against nobody.
  std::vector<CriticalFault> on_the_edge;
};

/// What of `record` is critical beside the reference.
CriticalFaults critical_faults(const Program& program, const MarkingRules& marking,
                               const Reference& reference, const Verdict& verdict,
                               const std::vector<Comparison>& comparisons);

}  // namespace heelrule
