#include "engine/report/missed_data.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/range.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

struct MissedTrait {
  std::size_t trait = 0;
  std::vector<Side> sides;
  double weight = 0;              // of the findings that wait for it, in thousandths
  std::size_t last = no_finding;  // of them that was counted

  static constexpr std::size_t no_finding = static_cast<std::size_t>(-1);
};

void add_once(std::vector<Side>& sides, Side side) {
  if (std::find(sides.begin(), sides.end(), side) == sides.end()) {
    sides.push_back(side);
  }
}

std::vector<MissedTrait> missed_traits(const Verdict& verdict) {
  std::vector<MissedTrait> all;
  for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
    for (const Missing& missing : verdict.findings[i].missing) {
      auto found = std::find_if(all.begin(), all.end(),
                                [&](const MissedTrait& one) { return one.trait == missing.trait; });
      if (found == all.end()) {
        found = all.insert(all.end(), MissedTrait{missing.trait, {}, 0, MissedTrait::no_finding});
      }
      add_once(found->sides, missing.side);
      if (found->last != i) {
        found->weight += verdict.findings[i].weight;
        found->last = i;
      }
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const MissedTrait& a, const MissedTrait& b) { return a.weight > b.weight; });
  return all;
}

std::string reason(const Inspection& inspection, const MissedTrait& missed) {
  for (const Side side : missed.sides) {
    const Observation* seen = inspection.find(missed.trait, side);
    const auto* not_seen = seen == nullptr ? nullptr : std::get_if<NotSeen>(&seen->value);
    if (not_seen != nullptr && !not_seen->reason.empty()) {
      return not_seen->reason;
    }
  }
  return "";
}

std::string usual_range(const Trait& trait) {
  const auto* measure = std::get_if<MeasureKind>(&trait.kind);
  if (measure == nullptr || !measure->plausible) {
    return "";
  }
  return show(measure->plausible->value, measure->unit);
}

std::string choices(const Trait& trait, std::span<const std::string> languages) {
  std::string words;
  for (const Level& level : levels_of(trait.kind)) {
    const std::string_view meaning = level.meaning.in(languages);
    words += fmt::format("{}{}{}{}", words.empty() ? "" : "; ", in_words(level.name.value),
                         meaning.empty() ? "" : ": ", meaning);
  }
  return words;
}

}  // namespace

void add_missed(const ReportSubject& subject, PageData& data) {
  const std::vector<MissedTrait> all = missed_traits(subject.record.verdict);
  data.fact("any_missed", !all.empty());
  for (const MissedTrait& missed : all) {
    const Trait& trait = subject.program.rules.traits[missed.trait];
    PageData& entry = data.add("missed");
    entry.words("ask", trait.ask.in(subject.languages));
    const bool is_one_side = missed.sides.size() == 1;
    entry.words("side", is_one_side ? in_words(missed.sides.front()) : std::string_view{});
    entry.words("reason", reason(subject.record.inspection, missed));
    entry.words("how", trait.how.in(subject.languages));
    entry.words("range", usual_range(trait));
    entry.words("choices", choices(trait, subject.languages));
    entry.words("waits", missed.weight > 0 ? with_places(missed.weight / weight_step, 3) : "");
  }
}

}  // namespace heelrule
