#include "engine/quantity/girth_code.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

const double not_a_number = std::numeric_limits<double>::quiet_NaN();

TEST_CASE("girth codes are read in capital and small letters") {
  CHECK(find_girth_code("EE") == GirthCode::ee);
  CHECK(find_girth_code("eeee") == GirthCode::eeee);
  CHECK(find_girth_code("g") == GirthCode::g);
  for (const std::string text : {"", "H", "EEEEE", "2E", "E ", "AB"}) {
    CAPTURE(text);
    CHECK_FALSE(find_girth_code(text));
  }
}

TEST_CASE("each girth code reads back as it is shown") {
  for (int i = 0; i <= static_cast<int>(GirthCode::g); ++i) {
    const GirthCode code = static_cast<GirthCode>(i);
    CHECK(find_girth_code(show(code)) == code);
  }
}

TEST_CASE("a girth is found again by its code, over the whole table") {
  for (int length = 200; length <= 300; length += 5) {
    for (int i = 0; i <= static_cast<int>(GirthCode::g); ++i) {
      const GirthCode code = static_cast<GirthCode>(i);
      const auto girth = ball_girth(code, Millimetres(length), GirthTable::men);
      REQUIRE(girth);
      CHECK(*girth_code_for(Millimetres(length), *girth, GirthTable::men) == code);
    }
  }
}

TEST_CASE("the band of a girth code runs from 3 mm below its centre to just under 3 mm above") {
  const auto code = [](double girth) {
    return *girth_code_for(Millimetres(250), Millimetres(girth), GirthTable::men);
  };
  CHECK(code(243 - 3) == GirthCode::e);
  CHECK(code(243 + 2) == GirthCode::e);
  CHECK(code(243 + 2.9) == GirthCode::e);
  CHECK(code(243 + 3) == GirthCode::ee);
  CHECK(code(243 - 3.1) == GirthCode::d);
}

TEST_CASE("a foot between two lengths takes the girths of the nearer one, half way the shorter's") {
  const auto code = [](double length) {
    return *girth_code_for(Millimetres(length), Millimetres(240), GirthTable::men);
  };
  CHECK(code(247.5) == GirthCode::e);  // 245 mm: E is 240
  CHECK(code(250) == GirthCode::e);    // 250 mm: E begins at 240
  CHECK(code(252.5) == GirthCode::e);  // still 250 mm
  CHECK(code(252.6) == GirthCode::d);  // 255 mm: E begins at 243
}

TEST_CASE("children's girths, other lengths and other girths are said to be unknown") {
  CHECK(ball_girth(GirthCode::e, Millimetres(150), GirthTable::children).problem() ==
        Problem{"girth codes of children's shoes are not turned into girths here",
                "their table could not be checked: try the shoe on"});
  CHECK_FALSE(girth_code_for(Millimetres(150), Millimetres(153), GirthTable::children));
  CHECK(ball_girth(GirthCode::e, Millimetres(195), GirthTable::men).problem() ==
        Problem{"JIS S 5037 has no girths for men with a foot of 195 mm",
                "its table runs from 200 mm to 300 mm"});
  CHECK(ball_girth(GirthCode::e, Millimetres(252), GirthTable::men).problem() ==
        Problem{"252 mm is no length of JIS S 5037", "its lengths go by 5 mm"});
  CHECK(ball_girth(GirthCode::g, Millimetres(230), GirthTable::women).problem() ==
        Problem{"JIS S 5037 has no code G for women", "its widest is F"});
  CHECK(girth_code_for(Millimetres(250), Millimetres(215.9), GirthTable::men).problem() ==
        Problem{"a girth of 215.9 mm has no code of JIS S 5037 for men with a foot of 250 mm",
                "A begins at 216 mm, and G ends below 276 mm"});
  CHECK(girth_code_for(Millimetres(250), Millimetres(216), GirthTable::men));
  CHECK_FALSE(girth_code_for(Millimetres(250), Millimetres(276), GirthTable::men));
}

TEST_CASE("a girth or a length that is no number has no code") {
  CHECK_FALSE(ball_girth(GirthCode::a, Millimetres(not_a_number), GirthTable::women));
  CHECK_FALSE(girth_code_for(Millimetres(not_a_number), Millimetres(240), GirthTable::women));
  CHECK_FALSE(girth_code_for(Millimetres(250), Millimetres(not_a_number), GirthTable::women));
  CHECK_FALSE(girth_code_for(Millimetres(-250), Millimetres(240), GirthTable::women));
}

}  // namespace
}  // namespace heelrule
