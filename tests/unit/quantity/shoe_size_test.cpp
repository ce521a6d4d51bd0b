#include "engine/quantity/shoe_size.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

constexpr int system_count = static_cast<int>(SizeSystem::russian) + 1;

ShoeSize marked(std::string_view text) {
  const auto read = parse_shoe_size(text);
  INFO(text << ": " << read.problem().message);
  REQUIRE(read);
  return *read;
}

std::string reads_as(std::string_view text) { return show(marked(text)); }

Problem problem_of(std::string_view text) { return parse_shoe_size(text).problem(); }

std::string up(std::string_view text) {
  const auto next = next_larger(marked(text));
  return next ? show(*next) : "none";
}

std::string down(std::string_view text) {
  const auto next = next_smaller(marked(text));
  return next ? show(*next) : "none";
}

TEST_CASE("a marked size is read in each system") {
  CHECK(reads_as("EU 39.5") == "EU 39.5");
  CHECK(reads_as("UK 6.5") == "UK 6.5");
  CHECK(reads_as("UK child 13") == "UK child 13");
  CHECK(reads_as("US M 9") == "US M 9");
  CHECK(reads_as("US W 8.5") == "US W 8.5");
  CHECK(reads_as("US child 1") == "US child 1");
  CHECK(reads_as("US youth 1") == "US youth 1");
  CHECK(reads_as("JP 25.0 EE") == "JP 25.0 EE");
  CHECK(reads_as("MP 245/95") == "MP 245/95");
  CHECK(reads_as("CN 245") == "CN 245");
  CHECK(reads_as("RU 245") == "RU 245");
}

TEST_CASE("a half may be written as a sign, with or without a blank") {
  CHECK(marked("EU 39½") == marked("EU 39.5"));
  CHECK(marked("UK 6 ½") == marked("UK 6.5"));
  CHECK(marked("UK child ½") == marked("UK child 0.5"));
  CHECK(marked("JP 24½ E") == marked("JP 24.5 E"));
  CHECK(problem_of("EU 39.5½") ==
        Problem{"`39.5½` is not a number", "write a half as `6.5` or `6½`"});
  CHECK(problem_of("EU 39 1/2") ==
        Problem{"`1/2` behind `EU 39` is not understood", "write a half as `39.5` or `39½`"});
}

TEST_CASE("capitals, blanks and the long names of a system do not matter") {
  CHECK(marked("eu39") == marked("EU 39"));
  CHECK(marked("  Uk 6 ") == marked("UK 6"));
  CHECK(marked("us men 9") == marked("US M 9"));
  CHECK(marked("US women 8.5") == marked("US W 8.5"));
  CHECK(marked("Mondo 245") == marked("MP 245"));
  CHECK(marked("Mondopoint 245 / 95") == marked("MP 245/95"));
  CHECK(marked("jp 25 ee") == marked("JP 25.0 EE"));
}

TEST_CASE("a length without a system is Mondopoint") {
  CHECK(marked("245/95") == marked("MP 245/95"));
  CHECK(marked("245") == marked("MP 245"));
  CHECK(marked("247.5").halves() == 495);
}

TEST_CASE("Chinese sizes may be centimetres with their decimal, and the old code is not guessed") {
  CHECK(marked("CN 24.5") == marked("CN 245"));
  CHECK(marked("CN 25.0") == marked("CN 250"));
  CHECK(marked("CN 245/95").width() == Millimetres(95));
  CHECK(problem_of("CN 25") == Problem{"`CN 25` may be centimetres or the old code",
                                       "write `CN 250` for 25 cm, or `CN 175` for the old code"});
  CHECK(problem_of("CN 40") ==
        Problem{"`CN 40` is in the old code", "write the length in mm: `CN 250`"});
}

TEST_CASE("every size of every system reads back as it is shown") {
  for (int i = 0; i < system_count; ++i) {
    const SizeSystem system = static_cast<SizeSystem>(i);
    int sizes = 0;
    for (int halves = facts(system).lowest; halves <= facts(system).highest; ++halves) {
      if (const auto made = shoe_size(system, halves / 2.0)) {
        CHECK(*made == marked(show(*made)));
        ++sizes;
      }
    }
    CHECK(sizes >= 13);
  }
}

TEST_CASE("a size without its system, or with it behind, is asked for its system") {
  CHECK(problem_of("39") == Problem{"`39` does not say in which system it is",
                                    "write the system in front, as in `EU 39` or `UK 6`"});
  CHECK(problem_of("39 EU") ==
        Problem{"`39 EU` has its system behind the number", "write `EU 39`"});
  CHECK(problem_of("25.0 EE") ==
        Problem{"`25.0 EE` does not say in which system it is", "write `JP 25.0 EE`"});
  CHECK(problem_of("US 9") == Problem{"`US 9` does not say whose size it is",
                                      "say whose: `US M`, `US W`, `US child` or `US youth`"});
  CHECK(problem_of("EUR 39") ==
        Problem{"`EUR` is no size system known here", "did you mean `EU`?"});
  CHECK(problem_of("US-M 9") ==
        Problem{"`US-M` is no size system known here", "did you mean `US M`?"});
  CHECK(problem_of("shoe 39") ==
        Problem{"`shoe` is no size system known here",
                "write one of `EU`, `UK`, `UK child`, `US M`, `US W`, `US child`, `US youth`, "
                "`JP`, `CN`, `RU` and `MP`"});
}

TEST_CASE("a size between two sizes is told both") {
  CHECK(problem_of("EU 39.3") ==
        Problem{"`EU 39.3` lies between two sizes", "write `EU 39` or `EU 39.5`"});
  CHECK(problem_of("MP 243") ==
        Problem{"`MP 243` lies between two sizes", "write `MP 240` or `MP 245`"});
  CHECK(problem_of("JP 24.8") ==
        Problem{"`JP 24.8` lies between two sizes", "write `JP 24.5` or `JP 25.0`"});
  CHECK(problem_of("CN 247.5") ==
        Problem{"`CN 247.5` lies between two sizes", "write `CN 245` or `CN 250`"});
}

TEST_CASE("a size out of range is told what the numbers are") {
  CHECK(problem_of("EU 390") ==
        Problem{"`EU 390` is out of range: EU sizes are Paris points", "they run from 13 to 62"});
  CHECK(problem_of("EU -39").message == "`EU -39` is out of range: EU sizes are Paris points");
  CHECK(problem_of("RU 38") == Problem{"`RU 38` is out of range: RU sizes are foot lengths in mm",
                                       "they run from 80 to 400"});
  CHECK(problem_of("MP 24.5") ==
        Problem{"`MP 24.5` is out of range: MP sizes are foot lengths in mm", "write `MP 245`"});
  CHECK(problem_of("MP 38").hint == "they run from 80 to 400");
  CHECK(problem_of("JP 250") ==
        Problem{"`JP 250.0` is out of range: JP sizes are foot lengths in cm", "write `JP 25.0`"});
  CHECK(problem_of("UK child 14").hint == "they run from 0 to 13.5");
  CHECK(problem_of("UK 0") ==
        Problem{"`UK 0` is out of range: UK sizes are English sizes", "write `UK child 13`"});
  CHECK(problem_of("UK ½").hint == "write `UK child 13.5`");
}

TEST_CASE("a width stands where one is due, and a girth code where one is due") {
  CHECK(problem_of("EU 39/95") == Problem{"`EU 39` has no width in mm",
                                          "only Mondopoint and Chinese sizes have one: `245/95`"});
  CHECK(problem_of("245/9") ==
        Problem{"`9` is no foot width", "write whole mm from 30 to 160: `245/95`"});
  CHECK(problem_of("245/95.5").message == "`95.5` is no foot width");
  CHECK(problem_of("245/").message == "`` is not a number");
  CHECK(problem_of("UK 6 E") ==
        Problem{"`UK 6` has no girth code", "only Japanese sizes have one: `JP 25.0 EE`"});
  CHECK(problem_of("JP 25.0 H") ==
        Problem{"`H` behind `JP 25.0` is not understood", "write `JP 25.0` alone"});
}

TEST_CASE("what is no size at all is shown one") {
  const std::string hint =
      "write the system and the number: `EU 39.5`, `UK 6½`, `US W 8.5`, `JP 25.0 EE`, `MP 245/95`";
  CHECK(problem_of("") == Problem{"`` is no shoe size", hint});
  CHECK(problem_of(" EU ") == Problem{"`EU` is no shoe size", hint});
  CHECK(problem_of("EU nan") == Problem{"`EU nan` is no shoe size", hint});
  CHECK(problem_of("EU 39,5") ==
        Problem{"`39,5` is not a number", "write a decimal point: `39.5`"});
  CHECK(problem_of("EU 1e3").message == "`EU 1` is out of range: EU sizes are Paris points");
  CHECK_FALSE(parse_shoe_size(std::string(100'000, '9')));
  CHECK_FALSE(parse_shoe_size(std::string(100'000, 'E')));
}

TEST_CASE("a number that is not finite makes no size") {
  for (int i = 0; i < system_count; ++i) {
    const SizeSystem system = static_cast<SizeSystem>(i);
    CHECK_FALSE(shoe_size(system, std::numeric_limits<double>::quiet_NaN()));
    CHECK_FALSE(shoe_size(system, std::numeric_limits<double>::infinity()));
    CHECK_FALSE(shoe_size(system, -std::numeric_limits<double>::infinity()));
    CHECK_FALSE(shoe_size(system, 1e300));
    CHECK_FALSE(shoe_size(system, -1));
  }
  CHECK_FALSE(with_width(marked("245"), Millimetres(std::numeric_limits<double>::quiet_NaN())));
}

TEST_CASE("sizes step in the steps of their own system") {
  CHECK(up("EU 39") == "EU 39.5");
  CHECK(down("EU 39") == "EU 38.5");
  CHECK(up("UK 6") == "UK 6.5");
  CHECK(up("JP 25.0 EE") == "JP 25.5 EE");
  CHECK(up("245/95") == "MP 250/95");
  CHECK(down("CN 245") == "CN 240");
  CHECK(up("RU 245") == "RU 250");
}

TEST_CASE("special footwear steps by 7.5 mm") {
  CHECK(up("MP 247.5") == "MP 255");
  CHECK(down("RU 262.5") == "RU 255");
  CHECK(size_step(marked("MP 247.5")) == Millimetres(7.5));
}

TEST_CASE("after the last size of children comes 1, and before 1 the last size of children") {
  CHECK(up("UK child 13.5") == "UK 1");
  CHECK(down("UK 1") == "UK child 13.5");
  CHECK(up("US child 13.5") == "US youth 1");
  CHECK(down("US youth 1") == "US child 13.5");
}

TEST_CASE(
    "no size lies beyond the ends, and men's and women's sizes have no children's before them") {
  CHECK(up("EU 62") == "none");
  CHECK(down("EU 13") == "none");
  CHECK(down("UK child 0") == "none");
  CHECK(up("US youth 7") == "none");
  CHECK(down("US M 1") == "none");
  CHECK(down("US W 1") == "none");
  CHECK(up("MP 400") == "none");
  CHECK(down("MP 80") == "none");
}

TEST_CASE("a step up is undone by a step down, over each whole system") {
  for (int i = 0; i < system_count; ++i) {
    const SizeSystem system = static_cast<SizeSystem>(i);
    const int step = facts(system).step;
    for (int halves = facts(system).lowest; halves < facts(system).highest; halves += step) {
      const ShoeSize here = *shoe_size(system, halves / 2.0);
      CHECK(next_smaller(*next_larger(here)) == here);
    }
  }
}

}  // namespace
}  // namespace heelrule
