#include "engine/report/kept_words.hpp"

#include <catch2/catch.hpp>
#include <string>

namespace heelrule {
namespace {

std::string text_of(const WordCase& of) {
  return "{" + std::to_string(of.first) + " " + std::to_string(of.second) + " " +
         std::to_string(of.open) + "},";
}

std::string told(const KeptWords& kept, std::size_t row) {
  GrowingText line;
  kept.append(row, line);
  return std::string(line.text());
}

// Tells of the cases `number`, `number + 1` … in all rows of a block; says how many were made.
int made_of(KeptWords& kept, std::size_t contribution, std::uint64_t number) {
  int made = 0;
  const auto case_of = [&](std::size_t row) {
    return WordCase{number + row, (number + row) / 2, static_cast<std::uint32_t>(row % 2)};
  };
  kept.begin();
  kept.tell(contribution, first_rows(block_rows), case_of, [&](std::size_t row) {
    ++made;
    return text_of(case_of(row));
  });
  for (std::size_t row = 0; row < block_rows; ++row) {
    std::string expected = text_of(case_of(row));
    expected.pop_back();
    REQUIRE(told(kept, row) == expected);
  }
  return made;
}

TEST_CASE("the words of a case are made once") {
  KeptWords kept(2);
  for (std::uint64_t number = 0; number < 1000; number += 64) {
    CHECK(made_of(kept, 0, number) == 64);
  }
  for (std::uint64_t number = 0; number < 1000; number += 64) {
    CHECK(made_of(kept, 0, number) == 0);
  }
  CHECK(made_of(kept, 1, 0) == 64);  // of another contribution
}

TEST_CASE("with more cases than there is room for, each still has its own words") {
  KeptWords kept(1);
  int made = 0;
  for (std::uint64_t number = 0; number < 200'000; number += 64) {
    made += made_of(kept, 0, number);
  }
  CHECK(made >= 200'000);
  CHECK(made_of(kept, 0, 0) == 64);  // forgotten meanwhile
}

TEST_CASE("cases that have the same words take room for them once") {
  KeptWords kept(1);
  int made = 0;
  for (std::uint64_t turn = 0; turn < 2; ++turn) {
    made = 0;
    for (std::uint64_t number = 0; number < 10'000; number += 64) {
      kept.begin();
      kept.tell(
          0, first_rows(block_rows), [&](std::size_t row) { return WordCase{number + row, 0, 0}; },
          [&](std::size_t) {
            ++made;
            return std::string(2000, 'x');
          });
    }
  }
  CHECK(made == 0);
}

TEST_CASE("a row is told of in the order of telling, and others are not") {
  KeptWords kept(2);
  const auto case_of = [](std::size_t) { return WordCase{}; };
  kept.begin();
  CHECK_FALSE(kept.has(5));
  CHECK(told(kept, 5).empty());
  kept.tell(0, Rows{1} << 5U, case_of, [](std::size_t) { return std::string("first,"); });
  kept.tell_once(5, "once,");
  kept.tell(1, Rows{3} << 5U, case_of, [](std::size_t) { return std::string("second,"); });
  CHECK(told(kept, 5) == "first,once,second");
  CHECK(told(kept, 6) == "second");
  CHECK(told(kept, 7).empty());
  kept.begin();
  CHECK_FALSE(kept.has(5));
}

TEST_CASE("a case may have nothing to tell") {
  KeptWords kept(1);
  kept.begin();
  kept.tell(
      0, 1, [](std::size_t) { return WordCase{}; }, [](std::size_t) { return std::string(); });
  CHECK_FALSE(kept.has(0));
  CHECK(told(kept, 0).empty());
}

}  // namespace
}  // namespace heelrule
