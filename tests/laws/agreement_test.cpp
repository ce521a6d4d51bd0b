// What must hold of every table of ratings.
#include <algorithm>
#include <catch2/catch.hpp>
#include <numeric>

#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "engine/quantity/random_sequence.hpp"

namespace heelrule {
namespace {

constexpr std::size_t levels = 4;

// Each observer says what is there with chance `skill`, and anything at all otherwise.
Ratings random_levels(RandomSequence& random, std::size_t subjects, std::size_t observers,
                      double skill, double missing) {
  Ratings ratings(subjects, observers);
  for (std::size_t subject = 0; subject < subjects; ++subject) {
    const std::size_t truth = random.below(levels);
    for (std::size_t observer = 0; observer < observers; ++observer) {
      const bool sees = random.share() < skill;
      const std::size_t said = sees ? truth : random.below(levels);
      if (random.share() >= missing) {
        ratings.set(subject, observer, static_cast<double>(said));
      }
    }
  }
  return ratings;
}

ScaledRatings scaled(const Ratings& ratings) {
  return numbered_level_ratings(ratings, {1, 2, 3, 4});
}

// The sum of twelve even shares, less 6, is about normal with deviation 1.
double normal(RandomSequence& random) {
  double sum = -6;
  for (int i = 0; i < 12; ++i) {
    sum += random.share();
  }
  return sum;
}

TEST_CASE("where all agree, every coefficient is 1") {
  Ratings ratings(8, 3);
  for (std::size_t subject = 0; subject < 8; ++subject) {
    for (std::size_t observer = 0; observer < 3; ++observer) {
      ratings.set(subject, observer, static_cast<double>(subject % levels));
    }
  }
  const auto all = coefficients(scaled(ratings));
  CHECK(all.size() == 25);
  for (const Coefficient& one : all) {
    CHECK(one.estimate.value == Approx(1).epsilon(1e-12));
  }
}

Ratings reordered(const Ratings& ratings, const std::vector<std::size_t>& subjects,
                  const std::vector<std::size_t>& observers) {
  Ratings result(ratings.subjects(), ratings.observers());
  for (std::size_t subject = 0; subject < subjects.size(); ++subject) {
    for (std::size_t observer = 0; observer < observers.size(); ++observer) {
      result.set(subject, observer, ratings.at(subjects[subject], observers[observer]));
    }
  }
  return result;
}

std::vector<std::size_t> shuffled(RandomSequence& random, std::size_t count) {
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), std::size_t{0});
  for (std::size_t i = count; i > 1; --i) {
    std::swap(order[i - 1], order[random.below(i)]);
  }
  return order;
}

TEST_CASE("neither the order of subjects nor that of observers changes a coefficient") {
  RandomSequence random(1);
  for (int round = 0; round < 20; ++round) {
    const Ratings ratings = random_levels(random, 12, 4, 0.6, round % 2 == 0 ? 0 : 0.2);
    const Ratings other = reordered(ratings, shuffled(random, 12), shuffled(random, 4));
    const auto first = coefficients(scaled(ratings));
    const auto second = coefficients(scaled(other));
    REQUIRE(first.size() == second.size());
    for (std::size_t i = 0; i < first.size(); ++i) {
      CAPTURE(i, round);
      if (first[i].estimate.is_known()) {
        CHECK(first[i].estimate.value == Approx(second[i].estimate.value).margin(1e-12));
      } else {
        CHECK(!second[i].estimate.is_known());
      }
      // Drawing subjects again depends on their order, within what it promises.
      if (first[i].estimate.by != IntervalBy::resampling && first[i].estimate.interval.is_known()) {
        CHECK(first[i].estimate.interval.low ==
              Approx(second[i].estimate.interval.low).margin(1e-9));
      }
    }
  }
}

TEST_CASE("other names for the levels change no unweighted coefficient") {
  RandomSequence random(2);
  const Ratings ratings = random_levels(random, 20, 3, 0.5, 0.1);
  Ratings renamed(20, 3);
  for (std::size_t subject = 0; subject < 20; ++subject) {
    for (std::size_t observer = 0; observer < 3; ++observer) {
      if (ratings.has(subject, observer)) {
        renamed.set(subject, observer, 3 - ratings.at(subject, observer));
      }
    }
  }
  const auto first = coefficients(level_ratings(ratings, levels, false));
  const auto second = coefficients(level_ratings(renamed, levels, false));
  for (std::size_t i = 0; i < first.size(); ++i) {
    CHECK(first[i].estimate.value == Approx(second[i].estimate.value).margin(1e-12));
  }
}

// Of all coefficients that know chance, for observers who just guess.
TEST_CASE("observers who guess get 0 within the interval about 19 times in 20") {
  RandomSequence random(3);
  constexpr int rounds = 300;
  std::vector<int> held;
  std::vector<double> sum;
  for (int round = 0; round < rounds; ++round) {
    const auto all = coefficients(level_ratings(random_levels(random, 40, 3, 0, 0), levels, false));
    held.resize(all.size(), 0);
    sum.resize(all.size(), 0);
    for (std::size_t i = 0; i < all.size(); ++i) {
      held[i] += all[i].estimate.interval.low <= 0 && all[i].estimate.interval.high >= 0 ? 1 : 0;
      sum[i] += all[i].estimate.value / rounds;
    }
  }
  const auto all = coefficients(level_ratings(random_levels(random, 40, 3, 0, 0), levels, false));
  for (std::size_t i = 1; i < all.size(); ++i) {  // the first is agreement as counted
    CAPTURE(i);
    CHECK(sum[i] == Approx(0).margin(0.02));
    CHECK(held[i] >= rounds * 91 / 100);  // 3 standard deviations below 95 %
  }
  CHECK(sum[0] == Approx(0.25).margin(0.02));
}

// The true value is what very many subjects give.
TEST_CASE("intervals hold the true value about 19 times in 20") {
  RandomSequence random(4);
  const auto truth =
      coefficients(level_ratings(random_levels(random, 40'000, 3, 0.6, 0), levels, false));
  constexpr int rounds = 300;
  std::vector<int> held(truth.size(), 0);
  for (int round = 0; round < rounds; ++round) {
    const auto all =
        coefficients(level_ratings(random_levels(random, 40, 3, 0.6, 0), levels, false));
    for (std::size_t i = 0; i < all.size(); ++i) {
      const Interval& interval = all[i].estimate.interval;
      const double value = truth[i].estimate.value;
      held[i] += interval.low <= value && interval.high >= value ? 1 : 0;
    }
  }
  for (std::size_t i = 0; i < held.size(); ++i) {
    CAPTURE(i);
    CHECK(held[i] >= rounds * 91 / 100);
    CHECK(held[i] <= rounds * 99 / 100);
  }
}

// Subjects with deviation 2, observers with 1, readings with 1: ICC(2,1) 4 / 6, ICC(1,1) the same,
// ICC(3,1) 4 / 5.
TEST_CASE("intraclass correlations and errors of measurement find what went into the readings") {
  RandomSequence random(5);
  constexpr int rounds = 200;
  int held_one_way = 0;
  int held_consistency = 0;
  int held_technical = 0;
  double agreement = 0;
  for (int round = 0; round < rounds; ++round) {
    Ratings ratings(30, 5);
    Ratings nested(30, 5);  // other observers for each subject
    std::vector<double> habit(5);
    for (double& one : habit) {
      one = normal(random);
    }
    for (std::size_t subject = 0; subject < 30; ++subject) {
      const double truth = 240 + 2 * normal(random);
      for (std::size_t observer = 0; observer < 5; ++observer) {
        ratings.set(subject, observer, truth + habit[observer] + normal(random));
        nested.set(subject, observer, truth + normal(random) + normal(random));
      }
    }
    const auto within = [](const Interval& interval, double value) {
      return interval.low <= value && interval.high >= value ? 1 : 0;
    };
    const auto all = coefficients(measured_ratings(ratings));
    const auto one_way = coefficients(measured_ratings(nested));
    held_one_way += within(find(one_way, CoefficientName::icc_1_1)->estimate.interval, 4.0 / 6);
    held_consistency += within(find(all, CoefficientName::icc_3_1)->estimate.interval, 4.0 / 5);
    agreement += find(all, CoefficientName::icc_2_1)->estimate.value / rounds;
    held_technical += within(measurement_error(nested).technical.interval, std::sqrt(2.0));
  }
  CHECK(held_one_way >= rounds * 90 / 100);
  CHECK(held_consistency >= rounds * 90 / 100);
  CHECK(held_technical >= rounds * 90 / 100);
  CHECK(agreement == Approx(4.0 / 6).margin(0.05));
}

TEST_CASE("however odd the readings, figures are finite or unknown, and lie in their intervals") {
  RandomSequence random(6);
  const double odd[] = {0, 0, 1, -1, 1e14, -1e14, 1e-8, 3.5};
  for (int round = 0; round < 500; ++round) {
    const std::size_t subjects = 1 + random.below(4);
    const std::size_t observers = 2 + random.below(3);
    Ratings ratings(subjects, observers);
    for (std::size_t subject = 0; subject < subjects; ++subject) {
      for (std::size_t observer = 0; observer < observers; ++observer) {
        if (random.below(8) > 0) {
          ratings.set(subject, observer, odd[random.below(8)]);
        }
      }
    }
    if (ratings.count() == 0) {
      continue;
    }
    for (const Coefficient& one : coefficients(measured_ratings(ratings))) {
      const Estimate& found = one.estimate;
      CAPTURE(round, static_cast<int>(one.name));
      CHECK(!std::isinf(found.value));
      if (found.interval.is_known() && found.by != IntervalBy::resampling) {
        CHECK(std::isfinite(found.interval.low));
        CHECK(std::isfinite(found.interval.high));
        CHECK(found.interval.low <= found.value + 1e-9);
        CHECK(found.interval.high >= found.value - 1e-9);
      }
    }
  }
}

TEST_CASE("one rating for each subject, or none, gives no coefficient and no fault") {
  Ratings ratings(3, 2);
  for (const Coefficient& one : coefficients(level_ratings(ratings, 2, true))) {
    CHECK(!one.estimate.is_known());
  }
  ratings.set(0, 0, 1);
  ratings.set(1, 1, 0);
  for (const Coefficient& one : coefficients(level_ratings(ratings, 2, true))) {
    CHECK(!one.estimate.is_known());
  }
}

}  // namespace
}  // namespace heelrule
