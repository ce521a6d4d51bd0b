#include "engine/report/growth_words.hpp"

#include <fmt/format.h>

#include "engine/fitting/growth.hpp"
#include "engine/quantity/calendar_date.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/foot_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr double seconds_in_a_day = 86'400;

// Rates are told in hundredths of a millimetre: a tenth is a tenth of a child's growth.
std::string rate_words(double a_month) { return with_places(a_month, 2) + " mm"; }

std::string date_words(const Visit& visit, int day) { return show(days_after(*visit.date, day)); }

std::string months_words(double days) { return show(days * seconds_in_a_day, Unit::month); }

std::string table_words(const ChildOutlook& child) {
  const GrowthStage& stage = growth_stage(child.age);
  if (stage.pace.fast == 0) {
    return fmt::format("At {} years feet hardly grow any more ({}).", with_places(child.age, 1),
                       stage.source);
  }
  return fmt::format("At {} years feet grow by about {} a month, {} to {} ({}).",
                     with_places(child.age, 1), rate_words(stage.pace.expected),
                     with_places(stage.pace.slow, 2), with_places(stage.pace.fast, 2),
                     stage.source);
}

std::string own_words(const ChildOutlook& child) {
  const OwnGrowth& own = *child.own;
  const std::string found = fmt::format(
      "Over {} visits in {} the {} grew by {} ± {} a month{}", own.visits,
      months_words(own.months * days_in_a_month), own.both_feet ? "feet" : "foot",
      with_places(own.a_month, 2), rate_words(2 * own.doubt), own.scatters ? ", unevenly" : "");
  if (child.by_own_rate) {
    return fmt::format("{}. That is surer than the table, so it is used.", found);
  }
  return own.a_month > 0
             ? fmt::format("{}. The table is surer, so it is used.", found)
             : fmt::format("{}. Feet do not shrink: measure once more; the table is used.", found);
}

std::string day_or_never(const Visit& visit, const std::optional<int>& day) {
  return day ? day_words(visit, *day) : "not within three years";
}

std::string lasting_words(const Visit& visit, const Outgrowing& outgrown) {
  if (!outgrown.expected) {
    return "is not outgrown within three years, by this reckoning";
  }
  return fmt::format("is outgrown {} (earliest {}, latest {})",
                     visit.date ? "about " + date_words(visit, *outgrown.expected)
                                : "in about " + months_words(*outgrown.expected),
                     day_or_never(visit, outgrown.earliest), day_or_never(visit, outgrown.latest));
}

std::string pair_words(const Visit& visit, const PairOutlook& pair, std::string_view which) {
  const Millimetres reserve = pair.reserve.value;
  if (reserve <= Millimetres(0)) {
    return fmt::format("{} has no space left to grow into on the {} side: it is outgrown.", which,
                       in_words(pair.side));
  }
  return fmt::format("{} has {} left to grow into, and {}.", which, measured_words(pair.reserve),
                     lasting_words(visit, pair.outgrown));
}

}  // namespace

std::string day_words(const Visit& visit, int day) {
  if (visit.date) {
    return date_words(visit, day);
  }
  return day == 0 ? "today" : fmt::format("in {}", months_words(day));
}

std::vector<std::string> growth_words(const Fitting& fitting, bool for_children) {
  if (!fitting.child) {
    return for_children ? std::vector<std::string>{"The age was not recorded, and without it "
                                                   "nothing can be said about growth."}
                        : std::vector<std::string>{};
  }
  const ChildOutlook& child = *fitting.child;
  const Visit& visit = fitting.visit;
  std::vector<std::string> lines{table_words(child)};
  if (child.own) {
    lines.push_back(own_words(child));
  }
  if (child.present) {
    lines.push_back(pair_words(visit, *child.present, "The pair that is worn now"));
  }
  lines.push_back(pair_words(
      visit, child.fresh,
      fmt::format("A new pair with {} in front of the {} foot",
                  show(fresh_space.value(), Unit::millimetre), in_words(child.fresh.side))));
  lines.push_back(fmt::format("Measure again {}{}, at the latest: growth is not even.",
                              visit.date ? "by " : "", day_words(visit, child.look_again)));
  return lines;
}

}  // namespace heelrule
