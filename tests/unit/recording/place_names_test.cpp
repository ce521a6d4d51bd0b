#include "engine/recording/place_names.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/recording/house.hpp"

namespace heelrule {
namespace {

const Program& house() {
  static const Program program =
      house_with(R"(  foot: {ask: Length of the foot, section: feet, measure: mm, per: foot}
  look: {ask: Looks of the pair, section: feet, answer: yes or no})");
  return program;
}

// Places: six of the head, `numb`, `worn`, `foot` left and right, `look`.
struct Named {
  Draft draft{house()};
  PlaceNames names{house().rules, draft, {}};
};

}  // namespace

TEST_CASE("each place stands in a section that begins and ends") {
  const Named house;
  CHECK(house.names.section_count() == 4);
  CHECK(house.names.section_title(0) == "The inspection");
  CHECK(house.names.section_title(6) == "Safety");
  CHECK(house.names.section_number(8) == 3);
  CHECK(house.names.begins_section(8));
  CHECK_FALSE(house.names.ends_section(9));
  CHECK(house.names.ends_section(10));
  CHECK(house.names.question(9) == "Length of the foot");
}

TEST_CASE("a section is found by its name, its number or the start of its title, as a whole") {
  const Named house;
  CHECK(*house.names.find("feet") == PlaceRange{8, 11});
  CHECK(*house.names.find("4") == PlaceRange{8, 11});
  CHECK(*house.names.find("first") == PlaceRange{7, 8});
  CHECK(*house.names.find("inspection") == PlaceRange{0, 6});
}

TEST_CASE("a place is found by its key, its trait or the start of its question, alone") {
  const Named house;
  CHECK(*house.names.find("foot") == PlaceRange{8, 8});
  CHECK(*house.names.find("foot.right") == PlaceRange{9, 9});
  CHECK(*house.names.find("inspection.client") == PlaceRange{2, 2});
  CHECK(*house.names.find("looks of") == PlaceRange{10, 10});
}

TEST_CASE("words that lead nowhere are told with what is near, or with the sections") {
  const Named house;
  CHECK(house.names.find("wron").problem() ==
        Problem{"there is no `wron` to go to", "did you mean `worn`?"});
  CHECK(house.names.find("").problem().hint ==
        "the sections are `inspection`, `safety`, `look`, `feet`");
}

}  // namespace heelrule
