#include "engine/model/verdict.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// By hand: weight 12 with half credit, 6 with full credit, and 2 not seen.
Score sample() {
  Score score;
  score.earned = 12'000 * 500'000.0 + 6'000 * 1'000'000.0;
  score.weight = 18'000;
  score.open_weight = 2'000;
  return score;
}

TEST_CASE("points are the earned share of the weight that was seen, of a hundred") {
  CHECK(*sample().points() == Approx(100 * 12.0 / 18).epsilon(1e-15));
}

TEST_CASE("what was not seen can fail or pass in full") {
  CHECK(sample().lowest_points() == 60);
  CHECK(sample().highest_points() == 70);
}

TEST_CASE("where nothing was seen there are no points, and all can still come") {
  Score open;
  open.open_weight = 5'000;
  CHECK_FALSE(open.points());
  CHECK(open.lowest_points() == 0);
  CHECK(open.highest_points() == 100);
  CHECK_FALSE(Score{}.points());
  CHECK(Score{}.lowest_points() == 0);
  CHECK(Score{}.highest_points() == 100);
}

TEST_CASE("a referral or a yes to a safety question sends the client to a practitioner") {
  Verdict verdict;
  verdict.safety.push_back({0, false, true, {}});
  CHECK_FALSE(verdict.refers());
  Verdict by_answer = verdict;
  by_answer.safety.push_back({1, true, true, {Side::left}});
  CHECK(by_answer.refers());
  Verdict by_rule = verdict;
  by_rule.referrals.push_back({0, std::nullopt});
  CHECK(by_rule.refers());
}

}  // namespace
}  // namespace heelrule
