#include "engine/recording/question.hpp"

#include <catch2/catch.hpp>

#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

Question asked(const char* rules, const char* trait) {
  const auto program = shipped_program(rules);
  const auto index = program.rules.find_trait(trait);
  REQUIRE(index);
  return question(program.rules, *index);
}

}  // namespace

TEST_CASE("a question of a measure has its units, its range and its sides") {
  const Question length = asked("everyday", "foot_length");
  CHECK(length.name == "foot_length");
  CHECK(length.form == AnswerForm::measure);
  CHECK(length.sided());
  CHECK_FALSE(length.is_safety);
  CHECK(length.units == std::vector<Unit>{Unit::millimetre, Unit::centimetre, Unit::inch});
  CHECK(plausible_words(length) == "80 mm to 340 mm");
  CHECK(form_words(length) == "in mm, cm or in; plausible is 80 mm to 340 mm");
  CHECK(length.ask.in({}) == "Standing: length from heel to longest toe");
  CHECK_FALSE(length.how.empty());
}

TEST_CASE("units to choose from are of one kind and of like size") {
  CHECK(unit_choices(Unit::percent) == std::vector<Unit>{Unit::percent});
  CHECK(unit_choices(Unit::count) == std::vector<Unit>{Unit::count});
  CHECK(unit_choices(Unit::gram) == std::vector<Unit>{Unit::gram});
  CHECK(unit_choices(Unit::degree) == std::vector<Unit>{Unit::degree});
  CHECK(unit_choices(Unit::month) ==
        std::vector<Unit>{Unit::month, Unit::day, Unit::week, Unit::year});
  CHECK(unit_choices(Unit::metre) == std::vector<Unit>{Unit::metre, Unit::centimetre, Unit::inch});
}

TEST_CASE("every form of answer is put into words") {
  CHECK(form_words(asked("everyday", "heel_counter")) == "soft, medium or firm");
  CHECK(form_words(asked("everyday", "numb_feet")) == "yes or no");
  CHECK(form_words(asked("everyday", "sock_fibres")) ==
        "each fibre with its share, together 100 %");
  CHECK(form_words(asked("everyday", "shoe_marked")) ==
        "the size with its system, such as EU 39.5 or UK 6");
  CHECK(form_words(asked("everyday", "sock_marked")) ==
        "the range as printed, such as EU 39-42 or 24-26 cm");
  Question count;
  count.units = {Unit::count};
  CHECK(form_words(count) == "a whole number");
}

TEST_CASE("safety questions are yes or no") {
  const Question numb = asked("everyday", "numb_feet");
  CHECK(numb.is_safety);
  CHECK(numb.form == AnswerForm::yes_or_no);
  CHECK_FALSE(numb.sided());
}

TEST_CASE("every form has a word") {
  CHECK(in_words(AnswerForm::measure) == "measure");
  CHECK(in_words(AnswerForm::scale) == "scale");
  CHECK(in_words(AnswerForm::choice) == "choice");
  CHECK(in_words(AnswerForm::yes_or_no) == "yes or no");
  CHECK(in_words(AnswerForm::fibres) == "fibres");
  CHECK(in_words(AnswerForm::shoe_size) == "shoe size");
  CHECK(in_words(AnswerForm::sock_range) == "sock range");
}

}  // namespace heelrule
