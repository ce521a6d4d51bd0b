#include "engine/agreement/level_confusion.hpp"

#include <catch2/catch.hpp>

#include "engine/quantity/random_sequence.hpp"

namespace heelrule {
namespace {

LevelCounts looks(RandomSequence& random, double confusion, std::size_t levels) {
  LevelCounts counts(4000, levels);
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    const std::size_t truth = random.below(levels);
    for (int observer = 0; observer < 3; ++observer) {
      const double drawn = random.share();
      std::size_t said = truth;
      if (drawn < confusion / 2 && truth > 0) {
        said = truth - 1;
      } else if (drawn > 1 - confusion / 2 && truth + 1 < levels) {
        said = truth + 1;
      }
      counts.add(subject, said, 1.0);
    }
  }
  return counts;
}

TEST_CASE("the confusion that went into the looks is found again") {
  RandomSequence random(1);
  for (const double confusion : {0.0, 0.05, 0.2, 0.4}) {
    for (const std::size_t levels : {2U, 3U, 5U}) {
      CAPTURE(confusion, levels);
      const Estimate found = level_confusion(looks(random, confusion, levels));
      CHECK(found.value == Approx(confusion).margin(0.02));
    }
  }
}

TEST_CASE("observers who meet less than half confusion allows are told to confuse by half") {
  LevelCounts counts(2, 3);
  counts.add(0, 0, 1.0);
  counts.add(0, 2, 1.0);
  counts.add(1, 1, 1.0);
  counts.add(1, 2, 1.0);
  CHECK(level_confusion(counts).value == Approx(most_confusion).margin(1e-9));
  CHECK(!level_confusion(LevelCounts(0, 3)).is_known());
}

}  // namespace
}  // namespace heelrule
