#include "engine/quantity/fibre.hpp"

#include <fmt/format.h>

#include <array>
#include <optional>

#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

struct FibreFacts {
  std::string_view name;
  int allowance;  // in hundredths of a percent
};

constexpr std::array<FibreFacts, 27> table{{
    {"cotton", 850},
    {"mercerised cotton", 1050},
    {"combed wool", 1825},
    {"carded wool", 1700},
    {"flax", 1200},
    {"hemp", 1200},
    {"jute", 1700},
    {"silk", 1100},
    {"viscose", 1300},
    {"modal", 1300},
    {"lyocell", 1300},
    {"cupro", 1300},
    {"acetate", 900},
    {"triacetate", 700},
    {"acrylic", 200},
    {"modacrylic", 200},
    {"polyamide staple", 625},
    {"polyamide filament", 575},
    {"polyester", 150},
    {"polypropylene", 200},
    {"polyethylene", 150},
    {"elastane", 150},
    {"elastomultiester", 150},
    {"elastodiene", 100},
    {"polyurethane staple", 350},
    {"polyurethane filament", 300},
    {"polylactide", 150},
}};

// A fibre with two forms. Cotton is the one whose plain name is a form as well.
struct Family {
  std::string_view name;
  Fibre one;
  Fibre other;
};

constexpr std::array<Family, 4> families{{
    {"cotton", Fibre::cotton, Fibre::mercerised_cotton},
    {"wool", Fibre::combed_wool, Fibre::carded_wool},
    {"polyamide", Fibre::polyamide_staple, Fibre::polyamide_filament},
    {"polyurethane", Fibre::polyurethane_staple, Fibre::polyurethane_filament},
}};

std::optional<Fibre> find_fibre(std::string_view name) {
  for (std::size_t i = 0; i < table.size(); ++i) {
    if (table[i].name == name) {
      return static_cast<Fibre>(i);
    }
  }
  return std::nullopt;
}

const Family* find_family(std::string_view name) {
  for (const Family& family : families) {
    if (family.name == name) {
      return &family;
    }
  }
  return nullptr;
}

Problem unknown(std::string_view name) {
  Nearest nearest(name);
  for (const FibreFacts& known : table) {
    nearest.offer(known.name);
  }
  for (const Family& family : families) {
    nearest.offer(family.name);
  }
  return {fmt::format("`{}` is no fibre known here", name),
          nearest.found() ? nearest.question()
                          : "write a fibre such as `cotton`, `viscose` or `elastane`"};
}

}  // namespace

std::string_view show(Fibre fibre) { return table[static_cast<std::size_t>(fibre)].name; }

double agreed_allowance(Fibre fibre) {
  return table[static_cast<std::size_t>(fibre)].allowance / 10'000.0;
}

Parsed<Fibre> parse_fibre(std::string_view name) {
  if (const auto fibre = find_fibre(name)) {
    return *fibre;
  }
  if (const Family* family = find_family(name)) {
    return Problem{fmt::format("`{}` comes in two forms", name),
                   fmt::format("write `{}` or `{}`", show(family->one), show(family->other))};
  }
  return unknown(name);
}

Parsed<FibreGroup> parse_fibre_group(std::string_view name) {
  if (const Family* family = find_family(name)) {
    return FibreGroup(family->one, family->other);
  }
  if (const auto fibre = find_fibre(name)) {
    return FibreGroup(*fibre);
  }
  return unknown(name);
}

}  // namespace heelrule
