#include "engine/fitting/toe_window.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace heelrule {
namespace {

constexpr std::string_view rule_name = "toe_allowance";

bool earns_all(const Band& band) {
  return band.earns.value.from == full_credit && band.earns.value.to == full_credit;
}

bool earns_nothing(const Band& band) {
  return band.earns.value.from == 0 && band.earns.value.to == 0;
}

// Where the band of this index begins; the first has no lower end.
Millimetres lower_end(const std::vector<Band>& bands, std::size_t band) {
  return Millimetres(band == 0 ? 0 : bands[band - 1].cut->at.stored);
}

bool cuts_are_lengths(const std::vector<Band>& bands) {
  return std::all_of(bands.begin(), bands.end(), [](const Band& band) {
    return !band.cut || facts(band.cut->at.unit).dimension == facts(Unit::millimetre).dimension;
  });
}

}  // namespace

Parsed<ToeWindow> toe_window(const RuleSet& rules) {
  const auto rule = std::find_if(rules.rules.begin(), rules.rules.end(),
                                 [](const Rule& one) { return one.name == rule_name; });
  if (rule == rules.rules.end() || !cuts_are_lengths(rule->bands)) {
    return Problem{fmt::format("`{}` has no rule `{}` with bands of length, which says how much "
                               "space the toes need",
                               rules.name, rule_name),
                   "use a rule set that builds on `fit`"};
  }
  const std::vector<Band>& bands = rule->bands;
  std::size_t first = 0;
  while (first < bands.size() && !earns_all(bands[first])) {
    ++first;
  }
  std::size_t last = first;
  while (last + 1 < bands.size() && earns_all(bands[last + 1])) {
    ++last;
  }
  if (last >= bands.size() || !bands[last].cut) {
    return Problem{fmt::format("the rule `{}` of `{}` does not say between which lengths it earns "
                               "full credit",
                               rule_name, rules.name),
                   "give it a band that earns 100 % and ends at a length"};
  }
  std::size_t useless = 0;
  while (useless < first && earns_nothing(bands[useless])) {
    ++useless;
  }
  return ToeWindow{lower_end(bands, useless), lower_end(bands, first),
                   Millimetres(bands[last].cut->at.stored)};
}

}  // namespace heelrule
