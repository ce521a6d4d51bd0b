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
  inspection.amendments = {
      {"inspection.client", "C-013", "2026-10-04T08:12Z", "A-02", "wrong client"},
      {"inspection.note", "the niece of C-015, as she says", "2026-10-04T08:12Z", "A-02", ""},
      {"foot_length.left", "234 mm (note: her left)", "2026-10-04T08:12Z", "A-02",
       "the niece said so"}};
  const Inspection left = without_client(inspection);
  CHECK(left.client.empty());
  CHECK(left.note.empty());
  CHECK(left.observations[0].note.empty());
  CHECK(std::get<Answer>(left.observations[0].value).yes);
  CHECK(std::get<NotSeen>(left.observations[1].value).reason == "too dark");
  CHECK(left.date == "2026-10-03");
  CHECK(left.amendments ==
        std::vector<Amendment>{{"foot_length.left", "234 mm", "2026-10-04T08:12Z", "A-02", ""}});
}

}  // namespace
}  // namespace heelrule
