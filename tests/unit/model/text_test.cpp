#include "engine/model/text.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using Languages = std::vector<std::string>;

const Text in_two{{{"en", "Length", {}}, {"es", "Longitud", {}}}};
const Text with_plain{{{"es", "Longitud", {}}, {"", "Length", {}}}};

TEST_CASE("a text is given in the first language that it has") {
  CHECK(in_two.in(Languages{"es", "en"}) == "Longitud");
  CHECK(in_two.in(Languages{"de", "en"}) == "Length");
}

TEST_CASE("without a language that fits, the plain wording is given, else the first") {
  CHECK(with_plain.in(Languages{"de"}) == "Length");
  CHECK(with_plain.in(Languages{}) == "Length");
  CHECK(in_two.in(Languages{"de"}) == "Length");
}

TEST_CASE("a text that was left out is empty in every language") {
  CHECK(Text{}.empty());
  CHECK(Text{}.in(Languages{"en"}).empty());
}

}  // namespace
}  // namespace heelrule
