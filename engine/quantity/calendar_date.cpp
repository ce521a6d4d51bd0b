#include "engine/quantity/calendar_date.hpp"

#include <fmt/format.h>

namespace heelrule {

std::optional<std::chrono::year_month_day> find_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
    return std::nullopt;
  }
  unsigned number = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i == 4 || i == 7) {
      continue;
    }
    if (text[i] < '0' || text[i] > '9') {
      return std::nullopt;
    }
    number = number * 10 + static_cast<unsigned>(text[i] - '0');
  }
  const std::chrono::year_month_day date{std::chrono::year(static_cast<int>(number / 10'000)),
                                         std::chrono::month(number / 100 % 100),
                                         std::chrono::day(number % 100)};
  return date.ok() ? std::optional(date) : std::nullopt;
}

std::string show(std::chrono::year_month_day date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

int days_between(std::chrono::year_month_day from, std::chrono::year_month_day to) {
  return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

std::chrono::year_month_day days_after(std::chrono::year_month_day date, int days) {
  return std::chrono::sys_days(date) + std::chrono::days(days);
}

}  // namespace heelrule
