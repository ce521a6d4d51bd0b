#include "engine/quantity/sock_range.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

SockRange range(std::string_view text) {
  const auto read = parse_sock_range(text);
  INFO(text << ": " << read.problem().message);
  REQUIRE(read);
  return *read;
}

Problem problem_of(std::string_view text) { return parse_sock_range(text).problem(); }

TEST_CASE("a sock range is shown as it is read") {
  for (const std::string text :
       {"EU 39-42", "UK 6-8.5", "UK child 9-12", "UK child 12-2", "US M 6-12", "US W 5-9",
        "US child 11-1.5", "JP 23.0-25.0", "MP 240-260", "CN 240-260", "24-26 cm", "240-260 mm",
        "9.5-11 in", "23.5-25.5 cm", "sock 25", "US sock 10-13", "US sock 9.5-11"}) {
    CHECK(show(range(text)) == text);
  }
}

TEST_CASE("halves, long dashes and blanks are read") {
  CHECK(range("UK 6-8½") == range("UK 6-8.5"));
  CHECK(range("UK 6½ - 8½") == range("UK 6.5-8.5"));
  CHECK(range("EU 39–42") == range("EU 39-42"));
  CHECK(range(" EU 39 – 42 ") == range("EU 39-42"));
  CHECK(range("24-26cm") == range("24-26 cm"));
}

TEST_CASE("where the numbers fall, the range runs on past the children's sizes") {
  const auto british = std::get<ShoeSizeSpan>(range("UK child 12-2"));
  CHECK(british.from == *parse_shoe_size("UK child 12"));
  CHECK(british.to == *parse_shoe_size("UK 2"));
  const auto american = std::get<ShoeSizeSpan>(range("US child 11-1.5"));
  CHECK(american.to == *parse_shoe_size("US youth 1.5"));
}

TEST_CASE("bare numbers are asked what they are") {
  CHECK(problem_of("39-42") == Problem{"`39-42` does not say in which system it is",
                                       "write the system or the unit: `EU 39-42`, `24-26 cm`"});
  CHECK(problem_of("25") == Problem{"`25` does not say in which system it is",
                                    "write what it is: `sock 25`, `EU 39-42`, `24-26 cm`"});
  CHECK(problem_of("US 6-12").message == "`US 6` does not say whose size it is");
}

TEST_CASE("a single shoe size is no range") {
  CHECK(problem_of("EU 39") ==
        Problem{"`EU 39` is a single size, and socks are marked with a range",
                "write both ends as marked: `EU 39-42`"});
}

TEST_CASE("a range that runs downward is turned round") {
  const std::string hint = "write the smaller end first";
  CHECK(problem_of("EU 42-39") == Problem{"the range `EU 42-39` runs downward", hint});
  CHECK(problem_of("26-24 cm") == Problem{"the range `26-24 cm` runs downward", hint});
  CHECK(problem_of("US sock 13-10") == Problem{"the range `US sock 13-10` runs downward", hint});
  CHECK(problem_of("UK 8-6") == Problem{"the range `UK 8-6` runs downward", hint});
}

TEST_CASE("sock numbers are whole centimetres of foot length") {
  CHECK(problem_of("sock 39") == Problem{"`sock 39` is no sock number",
                                         "sock numbers are foot lengths in whole cm, 10 to 33"});
  CHECK(problem_of("sock 25.5").message == "`sock 25.5` is no sock number");
  CHECK(problem_of("sock 25-27") == Problem{"`sock 25-27` is more than one sock number",
                                            "write foot lengths with their unit: `25-27 cm`"});
}

TEST_CASE("absurd ranges are refused") {
  CHECK(problem_of("24-26 m") ==
        Problem{"no sock is made for feet of 24-26 m", "foot lengths run from 50 mm to 400 mm"});
  CHECK(problem_of("24-26 g") ==
        Problem{"`24-26 g` is no range of foot lengths", "write lengths: `24-26 cm`"});
  CHECK(problem_of("24-26 cn").message == "`cn` is no unit known here");
  CHECK(problem_of("US sock 10-30") ==
        Problem{"`US sock 10-30` is out of range",
                "American sock numbers are about the foot length in inches, 3 to 16"});
  CHECK(problem_of("EU 39-420").message == "`EU 420` is out of range: EU sizes are Paris points");
  const std::string hint = "write it as marked: `EU 39-42`, `UK 6-8½`, `24-26 cm`, `sock 25`";
  for (const std::string text : {"", "one size", "EU", "24 cm", "EU 39-", "EU 39-42-45"}) {
    CAPTURE(text);
    CHECK(problem_of(text) == Problem{"`" + text + "` is no sock range", hint});
  }
  for (const std::string text :
       {"EU -39-42", "-24-26 cm", "nan-26 cm", "24,5-26 cm", "EU 39.5½-42"}) {
    CAPTURE(text);
    CHECK_FALSE(parse_sock_range(text));
  }
  CHECK_FALSE(parse_sock_range(std::string(100'000, '-')));
}

TEST_CASE("a range of children's UK sizes has no foot lengths, and says so") {
  CHECK(feet_of(range("UK child 9-12")).problem().message ==
        "UK sizes of children are not turned into foot lengths here, nor back");
  CHECK_FALSE(shortest_foot(range("UK child 12-2")));
}

TEST_CASE("each end of a range is taken for its usual wearer") {
  CHECK(shortest_foot(range("EU 31-34")) == Millimetres(190));
  CHECK(longest_foot(range("EU 31-34"))->value() == Approx(213.333).epsilon(1e-5));
}

}  // namespace
}  // namespace heelrule
