#include "engine/drawing/label_rows.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("labels that would touch take further rows") {
  const auto places = in_rows({{20, 60}, {30, 60}, {80, 60}, {40, 60}}, 300);
  CHECK(places[0].row == 0);
  CHECK(places[1].row == 1);
  CHECK(places[2].row == 0);
  CHECK(places[3].row == 2);
  CHECK(row_count(places) == 3);
}

TEST_CASE("a label that would run over the edge stands at it") {
  const auto places = in_rows({{2, 60}, {50, 60}, {99, 60}}, 300);
  CHECK(places[0].anchor == Anchor::start);
  CHECK(places[0].at == 0);
  CHECK(places[1].anchor == Anchor::middle);
  CHECK(places[2].anchor == Anchor::end);
  CHECK(places[2].at == 100);
  CHECK(row_count({}) == 0);
}

TEST_CASE("a label is as wide as its characters, not its bytes") {
  CHECK(label_width("5½", 10) == Approx(11.6));
}

}  // namespace
}  // namespace heelrule
