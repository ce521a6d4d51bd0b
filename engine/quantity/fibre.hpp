// Textile fibres, and what a blend of them is agreed to hold in moisture.
#pragma once

#include <compare>
#include <cstdint>
#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// The fibres of shoe linings and hosiery that Annex IX of Regulation (EU) No 1007/2011 lists.
enum class Fibre : std::uint8_t {
  cotton,
  mercerised_cotton,
  combed_wool,
  carded_wool,
  flax,
  hemp,
  jute,
  silk,
  viscose,
  modal,
  lyocell,
  cupro,
  acetate,
  triacetate,
  acrylic,
  modacrylic,
  polyamide_staple,
  polyamide_filament,
  polyester,
  polypropylene,
  polyethylene,
  elastane,
  elastomultiester,
  elastodiene,
  polyurethane_staple,
  polyurethane_filament,
  polylactide,
};

/// `polyamide filament`: the name as written in records and on reports.
std::string_view show(Fibre fibre);

/// Agreed allowance of Annex IX of Regulation (EU) No 1007/2011, as a fraction of the dry mass:
/// 0.085 for cotton. A convention of the trade for weighing; it says nothing about how a sock
/// feels.
double agreed_allowance(Fibre fibre);

/// The fibre of this name, small letters. A name that covers two forms with different allowances is
/// a problem, and so is a misspelt one.
///
///     parse_fibre("wool")  ->  problem "`wool` comes in two forms",
///                              hint "write `combed wool` or `carded wool`"
Parsed<Fibre> parse_fibre(std::string_view name);

/// One fibre, or all forms of one: what a formula may ask the share of.
class FibreGroup {
 public:
  /// No fibre at all.
  FibreGroup() = default;
  explicit FibreGroup(Fibre fibre) : members_(bit(fibre)) {}
  FibreGroup(Fibre one, Fibre other) : members_(bit(one) | bit(other)) {}

  bool holds(Fibre fibre) const { return (members_ & bit(fibre)) != 0; }

  auto operator<=>(const FibreGroup&) const = default;

 private:
  static std::uint32_t bit(Fibre fibre) { return std::uint32_t{1} << static_cast<unsigned>(fibre); }

  std::uint32_t members_ = 0;
};

/// The group of this name: any fibre alone, and `cotton`, `wool`, `polyamide`, `polyurethane` with
/// both of their forms. So a sock of mercerised cotton has a share of cotton.
Parsed<FibreGroup> parse_fibre_group(std::string_view name);

}  // namespace heelrule
