// JIS S 5037:1998, ball girths of shoes for adults. Secondary sources: the standard was not open to
// us. The cells follow from its rule; those marked as printed were also seen in print in one of the
// sources.
#include <catch2/catch.hpp>

#include "engine/quantity/girth_code.hpp"

namespace heelrule {
namespace {

struct Row {
  double length;
  std::vector<double> girths;  // from A on
};

const std::vector<Row> men{
    {200, {189, 195, 201, 207, 213, 219, 225, 231, 237, 243}},
    {240, {213, 219, 225, 231, 237, 243, 249, 255, 261, 267}},
    {250, {219, 225, 231, 237, 243, 249, 255, 261, 267, 273}},
    {260, {225, 231, 237, 243, 249, 255, 261, 267, 273, 279}},
    {270, {231, 237, 243, 249, 255, 261, 267, 273, 279, 285}},
    {280, {237, 243, 249, 255, 261, 267, 273, 279, 285, 291}},
    {300, {249, 255, 261, 267, 273, 279, 285, 291, 297, 303}},
};

const std::vector<Row> women{
    {195, {183, 189, 195, 201, 207, 213, 219, 225, 231}},
    {220, {198, 204, 210, 216, 222, 228, 234, 240, 246}},
    {230, {204, 210, 216, 222, 228, 234, 240, 246, 252}},
    {240, {210, 216, 222, 228, 234, 240, 246, 252, 258}},
    {250, {216, 222, 228, 234, 240, 246, 252, 258, 264}},
    {270, {228, 234, 240, 246, 252, 258, 264, 270, 276}},
};

void check_rows(const std::vector<Row>& rows, GirthTable table) {
  for (const Row& row : rows) {
    for (std::size_t i = 0; i < row.girths.size(); ++i) {
      const auto code = static_cast<GirthCode>(i);
      CAPTURE(row.length, show(code));
      const auto girth = ball_girth(code, Millimetres(row.length), table);
      REQUIRE(girth);
      CHECK(girth->value() == row.girths[i]);
    }
  }
}

double girth(GirthCode code, double length, GirthTable table) {
  return ball_girth(code, Millimetres(length), table)->value();
}

TEST_CASE("the girths of JIS S 5037 for men are reproduced, A to G") {
  check_rows(men, GirthTable::men);
  CHECK_FALSE(ball_girth(GirthCode::a, Millimetres(195), GirthTable::men));
  CHECK_FALSE(ball_girth(GirthCode::a, Millimetres(305), GirthTable::men));
}

TEST_CASE("the girths of JIS S 5037 for women are reproduced, A to F") {
  check_rows(women, GirthTable::women);
  CHECK_FALSE(ball_girth(GirthCode::g, Millimetres(230), GirthTable::women));
  CHECK_FALSE(ball_girth(GirthCode::a, Millimetres(190), GirthTable::women));
  CHECK_FALSE(ball_girth(GirthCode::a, Millimetres(275), GirthTable::women));
}

TEST_CASE("the cells of JIS S 5037 that were seen in print agree with the rule") {
  CHECK(girth(GirthCode::a, 200, GirthTable::men) == 189);
  CHECK(girth(GirthCode::a, 250, GirthTable::men) == 219);
  CHECK(girth(GirthCode::e, 250, GirthTable::men) == 243);
  CHECK(girth(GirthCode::ee, 250, GirthTable::men) == 249);
  CHECK(girth(GirthCode::eee, 260, GirthTable::men) == 261);
  CHECK(girth(GirthCode::a, 195, GirthTable::women) == 183);
}

// Two secondary sources. One of them uses 186 mm as the lower bound of A at 20.0 cm, which is its
// centre less 3.
TEST_CASE("the bands of JIS S 5037 run from -3 to +2 mm in whole millimetres") {
  CHECK(*girth_code_for(Millimetres(200), Millimetres(186), GirthTable::men) == GirthCode::a);
  CHECK_FALSE(girth_code_for(Millimetres(200), Millimetres(185), GirthTable::men));
  CHECK(*girth_code_for(Millimetres(200), Millimetres(191), GirthTable::men) == GirthCode::a);
  CHECK(*girth_code_for(Millimetres(200), Millimetres(192), GirthTable::men) == GirthCode::b);
}

// Length band of the same sources: -2 .. +2 mm around the marked length.
TEST_CASE("the lengths of JIS S 5037 run from -2 to +2 mm in whole millimetres") {
  const auto code = [](double length) {
    return girth_code_for(Millimetres(length), Millimetres(222), GirthTable::men);
  };
  CHECK(*code(248) == GirthCode::b);  // 25.0 cm: B is 222 .. 227
  CHECK(*code(252) == GirthCode::b);
  CHECK(*code(253) == GirthCode::a);  // 25.5 cm: A is 219 .. 224
}

}  // namespace
}  // namespace heelrule
