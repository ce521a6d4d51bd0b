#include "engine/marking/critical_fault.hpp"

#include <algorithm>

#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

class Search {
 public:
  Search(const Program& program, const MarkingRules& marking, const Reference& reference,
         const Verdict& verdict, const std::vector<Comparison>& comparisons)
      : program_(program), caps_(marking.caps), expected_(reference.verdict), verdict_(verdict) {
    is_at_fault_.assign(program.traits.size(), false);
    for (const Comparison& one : comparisons) {
      if (is_fault(one.likeness)) {
        is_at_fault_[reference.items[one.item].trait] = true;
      }
    }
  }

  CriticalFaults find() {
    for (std::size_t i = 0; i < expected_.safety.size(); ++i) {
      look_at_safety(i);
    }
    for (std::size_t i = 0; i < expected_.findings.size(); ++i) {
      look_at_must(expected_.findings[i], verdict_.findings[i]);
    }
    look_at_referrals();
    return std::move(found_);
  }

 private:
  void add(CriticalKind kind, std::size_t about, std::optional<std::size_t> cap,
           const std::vector<std::size_t>& needs) {
    const bool is_held = std::any_of(needs.begin(), needs.end(),
                                     [&](std::size_t trait) { return is_at_fault_[trait]; });
    std::vector<CriticalFault>& list = is_held ? found_.faults : found_.on_the_edge;
    const CriticalFault fault{kind, about, cap};
    if (std::find(list.begin(), list.end(), fault) == list.end()) {
      list.push_back(fault);
    }
  }

  void look_at_safety(std::size_t question) {
    const SafetyAnswer& expected = expected_.safety[question];
    const SafetyAnswer& answer = verdict_.safety[question];
    const std::vector<std::size_t> needs{program_.rules.safety[question].trait};
    if (expected.asked && !answer.asked) {
      add(CriticalKind::safety_missed, question, caps_.safety, needs);
    } else if (expected.yes && !answer.yes) {
      add(CriticalKind::safety_denied, question, caps_.safety, needs);
    }
  }

  void look_at_must(const Finding& expected, const Finding& found) {
    if (!program_.rules.rules[expected.rule].caps) {
      return;
    }
    const bool should_fail = expected.status == Status::fail;
    const bool fails = found.status == Status::fail;
    if (should_fail && !fails) {
      add(CriticalKind::must_passed_over, expected.rule, caps_.must,
          traits_needed(program_, expected.rule));
    }
    const bool passes = expected.status == Status::pass || expected.status == Status::part;
    if (fails && passes) {
      add(CriticalKind::must_failed, expected.rule, caps_.must,
          traits_needed(program_, expected.rule));
    }
  }

  void look_at_referrals() {
    for (const Spoken& spoken : expected_.referrals) {
      const std::size_t rule = expected_.findings[spoken.finding].rule;
      const bool is_said = std::any_of(
          verdict_.referrals.begin(), verdict_.referrals.end(),
          [&](const Spoken& other) { return verdict_.findings[other.finding].rule == rule; });
      if (!is_said) {
        add(CriticalKind::referral_missed, rule, caps_.referral, traits_needed(program_, rule));
      }
    }
  }

  const Program& program_;
  const CriticalCaps& caps_;
  const Verdict& expected_;
  const Verdict& verdict_;
  std::vector<bool> is_at_fault_;  // by trait
  CriticalFaults found_;
};

}  // namespace

CriticalFaults critical_faults(const Program& program, const MarkingRules& marking,
                               const Reference& reference, const Verdict& verdict,
                               const std::vector<Comparison>& comparisons) {
  return Search(program, marking, reference, verdict, comparisons).find();
}

}  // namespace heelrule
