#include "engine/drawing/blank_ruler.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/count.hpp"

namespace heelrule {

TEST_CASE("a blank ruler has strokes at round numbers, and every fifth has its number") {
  const std::string drawn = draw(BlankRuler{"foot", "Length", {80, 340}, "mm"});
  // 80 to 340 in steps of 10: 27 strokes and the line; numbers at 100, 150, …, 300.
  CHECK(count(drawn, "<line") == 28);
  CHECK(count(drawn, "<text") == 5);
  CHECK(drawn.find(">100<") != std::string::npos);
  CHECK(drawn.find(">300<") != std::string::npos);
  CHECK(drawn.find("A ruler from 80 to 340 mm") != std::string::npos);
}

TEST_CASE("a stroke stands where its number lies") {
  const std::string drawn = draw(BlankRuler{"rise", "Rise", {-10, 10}, "mm"});
  CHECK(drawn.find("x=\"50%\"") != std::string::npos);  // of the number 0
  CHECK(drawn.find(">0<") != std::string::npos);
}

}  // namespace heelrule
