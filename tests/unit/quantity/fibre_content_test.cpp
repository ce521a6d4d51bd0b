#include "engine/quantity/fibre_content.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

using Label = std::vector<std::pair<std::string, std::string>>;

Parsed<FibreContent> blend(const Label& label) {
  std::vector<NamedShare> parts;
  for (const auto& [name, share] : label) {
    parts.push_back({name, *parse_quantity(share)});
  }
  return fibre_content(parts);
}

TEST_CASE("a blend lists its largest share first") {
  const auto sock =
      blend({{"elastane", "3 %"}, {"cotton", "80 %"}, {"polyamide filament", "17 %"}});
  REQUIRE(sock);
  CHECK(show(*sock) == "80 % cotton, 17 % polyamide filament, 3 % elastane");
  CHECK(show(*blend({{"silk", "50 %"}, {"cotton", "50 %"}})) == "50 % silk, 50 % cotton");
}

TEST_CASE("the share of a fibre is counted with or without its other form") {
  const auto sock = blend({{"cotton", "40 %"}, {"mercerised cotton", "45 %"}, {"silk", "15 %"}});
  REQUIRE(sock);
  CHECK(sock->share(Fibre::cotton) == 0.4);
  CHECK(sock->share(*parse_fibre_group("cotton")) == 0.85);
  CHECK(sock->share(Fibre::elastane) == 0);
}

TEST_CASE("shares add up to exactly 100 % as they do on paper") {
  CHECK(blend({{"cotton", "33.33 %"}, {"silk", "33.33 %"}, {"hemp", "33.34 %"}}));
  CHECK(blend({{"cotton", "0.1 %"}, {"silk", "0.2 %"}, {"hemp", "99.7 %"}}));
  CHECK(blend({{"cotton", "99.999999 %"}, {"silk", "0.000001 %"}}));
  CHECK(blend({{"cotton", "33.3 %"}, {"silk", "33.3 %"}, {"hemp", "33.3 %"}}).problem() ==
        Problem{"the fibres add up to 99.9 %, and 100 % is due",
                "0.1 % is missing: look at the label again"});
  CHECK(blend({{"cotton", "80 %"}, {"elastane", "25 %"}}).problem() ==
        Problem{"the fibres add up to 105 %, and 100 % is due",
                "5 % is too much: look at the label again"});
  CHECK_FALSE(blend({{"cotton", "99.95 %"}}));
  CHECK_FALSE(blend({{"cotton", "99.999999 %"}}));
}

TEST_CASE("each share is a percentage above 0 % and up to 100 %") {
  CHECK(blend({{"cotton", "0.8"}}).problem() ==
        Problem{"`0.8` has no unit, and a percentage is due here", "write the unit: `0.8 %`"});
  CHECK(blend({{"cotton", "80 mm"}}).problem().message ==
        "`80 mm` is a length, and a percentage is due here");
  const std::string hint = "write more than 0 % and at most 100 %, or leave the fibre out";
  CHECK(blend({{"cotton", "100 %"}, {"silk", "0 %"}}).problem() ==
        Problem{"0 % silk is no share of a blend", hint});
  CHECK(blend({{"cotton", "120 %"}, {"silk", "-20 %"}}).problem() ==
        Problem{"120 % cotton is no share of a blend", hint});
  CHECK(blend({{"silk", "-20 %"}}).problem().message == "-20 % silk is no share of a blend");
  CHECK_FALSE(blend({{"cotton", "100 %"}, {"silk", "0.0000001 %"}}));
}

TEST_CASE("a share that is not finite is refused") {
  for (const double share : {std::numeric_limits<double>::quiet_NaN(),
                             std::numeric_limits<double>::infinity(), 1e300, -1e300}) {
    const std::vector<NamedShare> parts{{"cotton", Quantity{share, Unit::percent}}};
    CHECK_FALSE(fibre_content(parts));
  }
}

TEST_CASE("a fibre is named once, and at least one is named") {
  CHECK(
      blend({}).problem() ==
      Problem{"no fibre is named", "write what the label says: `{cotton: 80 %, elastane: 20 %}`"});
  CHECK(blend({{"silk", "50 %"}, {"silk", "50 %"}}).problem() ==
        Problem{"`silk` is named twice", "add its shares up"});
  CHECK(blend({{"coton", "100 %"}}).problem().message == "`coton` is no fibre known here");
}

TEST_CASE("a blend is read back as it is shown") {
  const std::string text = "80 % cotton, 17 % polyamide filament, 3 % elastane";
  const auto content = parse_fibre_content(text);
  REQUIRE(content);
  CHECK(show(*content) == text);
  CHECK(show(*parse_fibre_content("20% polyester,80% cotton")) == "80 % cotton, 20 % polyester");
}

TEST_CASE("a blend without its shares, or with a part left empty, is refused") {
  CHECK(parse_fibre_content("cotton, polyester").problem() ==
        Problem{"`cotton` does not say how much of the blend it is",
                "write each share before its fibre: `80 % cotton, 20 % polyester`"});
  CHECK(parse_fibre_content("80 % cotton,, 20 % polyester").problem().message ==
        "`` does not say how much of the blend it is");
  CHECK_FALSE(parse_fibre_content(""));
  CHECK_FALSE(parse_fibre_content("80 % cotton"));
  CHECK_FALSE(parse_fibre_content("nan % cotton, 20 % polyester"));
  CHECK_FALSE(parse_fibre_content("80 mm cotton, 20 % polyester"));
}

}  // namespace
}  // namespace heelrule
