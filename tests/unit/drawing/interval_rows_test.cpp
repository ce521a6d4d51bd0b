#include "engine/drawing/interval_rows.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

IntervalRows two_rows() {
  return {"forest",
          "Agreement",
          0,
          1,
          {0, 0.5, 1},
          {{"Questions", 0, 0, 0, "", true},
           {"Heel counter", 0.5, 0.25, 0.75, "0.50 (0.25 to 0.75)", false},
           {"Creases", 0.1, -0.2, 0.4, "0.10 (-0.20 to 0.40)", false}}};
}

TEST_CASE("a figure stands at its place between the ends of its interval") {
  const std::string drawn = draw(two_rows());
  CHECK(drawn.find(R"(<line class="interval" x1="25%")") != std::string::npos);
  CHECK(drawn.find(R"(x2="75%")") != std::string::npos);
  CHECK(drawn.find(R"(<svg x="50%")") != std::string::npos);
}

TEST_CASE("an interval that reaches over the edge ends there in an arrow") {
  const std::string drawn = draw(two_rows());
  CHECK(drawn.find(R"(<line class="interval" x1="0%")") != std::string::npos);
  CHECK(drawn.find(R"(class="arrow")") != std::string::npos);
}

TEST_CASE("the text equivalent has every name with its figure") {
  CHECK(draw(two_rows())
            .find("Questions: Heel counter: 0.50 (0.25 to 0.75); Creases: 0.10 (-0.20 "
                  "to 0.40);</desc>") != std::string::npos);
}

TEST_CASE("what is not known is not drawn") {
  IntervalRows picture = two_rows();
  constexpr double none = std::numeric_limits<double>::quiet_NaN();
  picture.rows = {{"Fastening", none, none, none, "", false}};
  const std::string drawn = draw(picture);
  CHECK(drawn.find("nan") == std::string::npos);
  CHECK(drawn.find("class=\"figure\"") == std::string::npos);
}

}  // namespace
}  // namespace heelrule
