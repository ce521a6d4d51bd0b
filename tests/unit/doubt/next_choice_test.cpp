#include "engine/doubt/next_choice.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using Choice = std::vector<std::size_t>;

std::vector<Choice> all_choices(std::size_t size, std::size_t count) {
  std::vector<Choice> all;
  Choice chosen = first_choice(size);
  do {
    all.push_back(chosen);
  } while (next_choice(chosen, count));
  CHECK(chosen == all.back());
  return all;
}

TEST_CASE("choices come in the order in which a person would list them") {
  CHECK(all_choices(2, 4) == std::vector<Choice>{{0, 1}, {0, 2}, {0, 3}, {1, 2}, {1, 3}, {2, 3}});
  CHECK(all_choices(3, 3) == std::vector<Choice>{{0, 1, 2}});
  CHECK(all_choices(1, 1) == std::vector<Choice>{{0}});
  CHECK(all_choices(0, 5) == std::vector<Choice>{{}});
}

// Binomial coefficients, as in Abramowitz and Stegun, table 24.1.
TEST_CASE("there are as many choices as the binomial coefficient says, each once and in order") {
  for (const auto& [size, count, expected] :
       {std::tuple{3U, 12U, 220U}, {6U, 12U, 924U}, {5U, 15U, 3003U}}) {
    const std::vector<Choice> all = all_choices(size, count);
    CHECK(all.size() == expected);
    CHECK(std::is_sorted(all.begin(), all.end(), std::less_equal<Choice>{}));
    CHECK(std::all_of(all.begin(), all.end(), [&](const Choice& one) {
      return one.size() == size && one.back() < count && std::is_sorted(one.begin(), one.end());
    }));
  }
}

}  // namespace
}  // namespace heelrule
