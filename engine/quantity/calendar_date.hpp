// Dates of the calendar, as ISO 8601 writes them. The engine has no clock: every date comes from a
// record or a person.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace heelrule {

/// A date that the calendar has, from its text; nothing for any other text.
///
///     find_date("2026-10-03")  ->  3 October 2026
///     find_date("2026-02-30")  ->  nothing
std::optional<std::chrono::year_month_day> find_date(std::string_view text);

/// `2026-10-03`. Precondition: a year from 0 to 9999.
std::string show(std::chrono::year_month_day date);

/// From one date to another, in days; below 0 where it is the earlier one.
int days_between(std::chrono::year_month_day from, std::chrono::year_month_day to);

/// The date so many days on.
std::chrono::year_month_day days_after(std::chrono::year_month_day date, int days);

}  // namespace heelrule
