#include "engine/report/without_client.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("a record without its client keeps its readings, and says nothing of a person") {
  Inspection inspection;
  inspection.client = "C-014";
  inspection.date = "2026-10-03";
  inspection.note = "the niece of C-015";
  inspection.observations.push_back({0, Side::left, Answer{true}, "her left", {}});
  inspection.observations.push_back({1, Side::none, NotSeen{"too dark"}, "", {}});
  const Inspection left = without_client(inspection);
  CHECK(left.client.empty());
  CHECK(left.note.empty());
  CHECK(left.observations[0].note.empty());
  CHECK(std::get<Answer>(left.observations[0].value).yes);
  CHECK(std::get<NotSeen>(left.observations[1].value).reason == "too dark");
  CHECK(left.date == "2026-10-03");
}

}  // namespace
}  // namespace heelrule
