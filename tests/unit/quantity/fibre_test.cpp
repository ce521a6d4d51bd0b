#include "engine/quantity/fibre.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

constexpr int fibre_count = static_cast<int>(Fibre::polylactide) + 1;

TEST_CASE("every fibre is found by its name, as a fibre or as one of two forms") {
  for (int i = 0; i < fibre_count; ++i) {
    const Fibre fibre = static_cast<Fibre>(i);
    CAPTURE(show(fibre));
    CHECK(*parse_fibre(show(fibre)) == fibre);
    CHECK(parse_fibre_group(show(fibre))->holds(fibre));
  }
}

TEST_CASE("a name that covers two forms is asked which") {
  CHECK(parse_fibre("wool").problem() ==
        Problem{"`wool` comes in two forms", "write `combed wool` or `carded wool`"});
  CHECK(parse_fibre("polyamide").problem() ==
        Problem{"`polyamide` comes in two forms",
                "write `polyamide staple` or `polyamide filament`"});
  CHECK(*parse_fibre("cotton") == Fibre::cotton);
}

TEST_CASE("a misspelt fibre gets a question") {
  CHECK(parse_fibre("coton").problem() ==
        Problem{"`coton` is no fibre known here", "did you mean `cotton`?"});
  CHECK(parse_fibre("polyester ").problem().hint == "did you mean `polyester`?");
  CHECK(parse_fibre("plastic").problem() ==
        Problem{"`plastic` is no fibre known here",
                "write a fibre such as `cotton`, `viscose` or `elastane`"});
  CHECK_FALSE(parse_fibre(""));
  CHECK(parse_fibre_group("woool").problem().hint == "did you mean `wool`?");
}

TEST_CASE("a group holds all forms of its fibre and nothing else") {
  const FibreGroup cotton = *parse_fibre_group("cotton");
  CHECK(cotton.holds(Fibre::cotton));
  CHECK(cotton.holds(Fibre::mercerised_cotton));
  CHECK_FALSE(cotton.holds(Fibre::carded_wool));
  CHECK(*parse_fibre_group("silk") == FibreGroup(Fibre::silk));
  CHECK(*parse_fibre_group("polyamide") ==
        FibreGroup(Fibre::polyamide_staple, Fibre::polyamide_filament));
}

}  // namespace
}  // namespace heelrule
