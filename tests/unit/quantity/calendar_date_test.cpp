#include "engine/quantity/calendar_date.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

std::string next(std::string_view date, int days) {
  const auto found = find_date(date);
  REQUIRE(found);
  return show(days_after(*found, days));
}

TEST_CASE("a date is read and shown as ISO 8601 writes it") {
  CHECK(next("2026-10-03", 0) == "2026-10-03");
  CHECK(next("0999-01-01", 0) == "0999-01-01");
}

TEST_CASE("what the calendar does not have is no date") {
  for (const std::string_view text :
       {"", "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-1-01", "26-01-01",
        "2026/01/01", "2026-01-01 ", "2026-01-0x", "-026-01-01", "2026-10-3a", "20261003--"}) {
    CAPTURE(text);
    CHECK_FALSE(find_date(text));
  }
}

TEST_CASE("days are counted over months and leap years") {
  CHECK(next("2026-12-31", 1) == "2027-01-01");
  CHECK(next("2028-02-28", 1) == "2028-02-29");
  CHECK(next("2026-02-28", 1) == "2026-03-01");
  CHECK(next("2026-10-03", 301) == "2027-07-31");
  CHECK(days_between(*find_date("2026-02-03"), *find_date("2026-10-03")) == 242);
  CHECK(days_between(*find_date("2026-10-03"), *find_date("2026-02-03")) == -242);
}

}  // namespace
}  // namespace heelrule
