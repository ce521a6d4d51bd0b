// Agreed allowances of Annex IX of Regulation (EU) No 1007/2011, read in the text of the regulation
// as reprinted by a portal on textile labelling.
#include <catch2/catch.hpp>

#include "engine/quantity/fibre_content.hpp"

namespace heelrule {
namespace {

struct Allowance {
  std::string_view fibre;
  double percent;
};

const std::vector<Allowance> annex_ix{
    {"cotton", 8.50},
    {"mercerised cotton", 10.50},
    {"combed wool", 18.25},
    {"carded wool", 17.00},
    {"flax", 12.00},
    {"hemp", 12.00},
    {"jute", 17.00},
    {"silk", 11.00},
    {"viscose", 13.00},
    {"modal", 13.00},
    {"lyocell", 13.00},
    {"cupro", 13.00},
    {"acetate", 9.00},
    {"triacetate", 7.00},
    {"acrylic", 2.00},
    {"modacrylic", 2.00},
    {"polyamide staple", 6.25},
    {"polyamide filament", 5.75},
    {"polyester", 1.50},
    {"polypropylene", 2.00},
    {"polyethylene", 1.50},
    {"elastane", 1.50},
    {"elastomultiester", 1.50},
    {"elastodiene", 1.00},
    {"polyurethane staple", 3.50},
    {"polyurethane filament", 3.00},
    {"polylactide", 1.50},
};

double moisture_in_percent(const std::vector<std::pair<std::string_view, double>>& label) {
  std::vector<NamedShare> parts;
  parts.reserve(label.size());
  for (const auto& [name, percent] : label) {
    parts.push_back({name, Quantity{percent / 100, Unit::percent}});
  }
  const auto content = fibre_content(parts);
  INFO(content.problem().message);
  REQUIRE(content);
  return 100 * content->moisture();
}

TEST_CASE("each fibre has the agreed allowance of Annex IX, alone and as a blend of itself") {
  for (const Allowance& row : annex_ix) {
    CAPTURE(row.fibre);
    CHECK(100 * agreed_allowance(*parse_fibre(row.fibre)) == Approx(row.percent).epsilon(1e-14));
    CHECK(moisture_in_percent({{row.fibre, 100}}) == Approx(row.percent).epsilon(1e-14));
  }
}

// Worked out by hand: 0.80 · 8.50 + 0.17 · 5.75 + 0.03 · 1.50 = 6.8 + 0.9775 + 0.045.
TEST_CASE("a cotton sock with polyamide and elastane holds 7.8225 % by agreement") {
  CHECK(moisture_in_percent({{"cotton", 80}, {"polyamide filament", 17}, {"elastane", 3}}) ==
        Approx(7.8225).epsilon(1e-12));
}

// Worked out by hand: 0.70 · 17.00 + 0.28 · 6.25 + 0.02 · 1.50 = 11.9 + 1.75 + 0.03.
TEST_CASE("a woollen sock with polyamide and elastane holds 13.68 % by agreement") {
  CHECK(moisture_in_percent({{"carded wool", 70}, {"polyamide staple", 28}, {"elastane", 2}}) ==
        Approx(13.68).epsilon(1e-12));
}

}  // namespace
}  // namespace heelrule
