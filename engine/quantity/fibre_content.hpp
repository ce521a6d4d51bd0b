// What a sock or a lining is made of, in percent by mass, as its label says.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/fibre.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/quantity/quantity.hpp"

namespace heelrule {

/// One line of a label, before it is checked.
struct NamedShare {
  std::string_view name;
  Quantity share;
};

/// A fibre and its share as a fraction of the whole: 0.8 for 80 %.
struct FibreShare {
  Fibre fibre = Fibre::cotton;
  double share = 0;

  bool operator==(const FibreShare&) const = default;
};

/// A blend that is accounted for: each fibre once, each share above 0, all shares 100 % together.
class FibreContent {
 public:
  /// Largest share first, as labels list them; equal shares in the order in which they were given.
  const std::vector<FibreShare>& shares() const { return shares_; }

  /// Share of a fibre, or of all forms of one, 0..1.
  double share(Fibre fibre) const { return share(FibreGroup(fibre)); }
  double share(FibreGroup group) const;

  /// Agreed moisture allowance of the blend, 0..1: the mean of the allowances, weighted by mass.
  /// Rounded once.
  ///
  ///     80 % cotton, 17 % polyamide filament, 3 % elastane  ->  0.078225
  double moisture() const;

  bool operator==(const FibreContent&) const = default;

  friend Parsed<FibreContent> fibre_content(std::span<const NamedShare> parts);

 private:
  FibreContent() = default;

  std::vector<FibreShare> shares_;
};

/// The blend of these parts. The shares must add up to exactly 100 %, counted in millionths of a
/// percent: a label that adds up to 99 % leaves open what the rest is, and the moisture would be a
/// guess. Problems: no parts, an unknown fibre, one named twice, a share that is no percentage, or
/// none from a millionth of a percent up to 100 %, a sum other than 100 %.
///
///     cotton 80 %, elastane 3 %  ->  problem "the fibres add up to 83 %, and 100 % is due",
///                                    hint "17 % is missing: look at the label again"
Parsed<FibreContent> fibre_content(std::span<const NamedShare> parts);

/// Reads a blend as its label gives it, and as `show` prints it: `80 % cotton, 20 % polyester`.
Parsed<FibreContent> parse_fibre_content(std::string_view text);

/// `80 % cotton, 17 % polyamide filament, 3 % elastane`.
std::string show(const FibreContent& content);

}  // namespace heelrule
