// A shoe size as marked. It says what stands on the shoe, not how long the shoe is inside.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/quantity/girth_code.hpp"
#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/quantity/size_system.hpp"

namespace heelrule {

/// A size that exists in its system: in range, and on a step. Makers differ by about a size in what
/// they mark, so two sizes of the same number are equal as marks only.
class ShoeSize {
 public:
  SizeSystem system() const { return system_; }

  /// As marked: 39.5 for `EU 39.5`, 25 for `JP 25.0`, 245 for `MP 245/95`.
  double number() const { return halves_ / 2.0; }

  /// The number in halves, which is exact: 79 for `EU 39.5`.
  int halves() const { return halves_; }

  /// Foot width in mm, where a Mondopoint or Chinese size has one.
  std::optional<Millimetres> width() const { return width_; }

  /// Where a Japanese size has one. What girth it stands for depends on whose shoe it is
  /// (`ball_girth`).
  std::optional<GirthCode> girth_code() const { return girth_code_; }

  bool operator==(const ShoeSize&) const = default;

  friend Parsed<ShoeSize> shoe_size(SizeSystem system, double number);
  friend Parsed<ShoeSize> with_width(ShoeSize size, Millimetres width);
  friend Parsed<ShoeSize> with_girth_code(ShoeSize size, GirthCode code);
  friend std::optional<ShoeSize> next_larger(ShoeSize size);
  friend std::optional<ShoeSize> next_smaller(ShoeSize size);

 private:
  ShoeSize(SizeSystem system, int halves) : system_(system), halves_(halves) {}

  SizeSystem system_;
  int halves_;
  std::optional<Millimetres> width_;
  std::optional<GirthCode> girth_code_;
};

/// The size of this number. A number between two sizes, out of the range of the system, or not
/// finite is a problem. Steps are halves, or 5 mm of foot length; Mondopoint and Russian sizes also
/// know the 7.5 mm steps of special footwear (247.5, 262.5, …).
///
///     shoe_size(SizeSystem::european, 39.3)  ->  problem "`EU 39.3` lies between two sizes",
///                                               hint "write `EU 39` or `EU 39.5`"
Parsed<ShoeSize> shoe_size(SizeSystem system, double number);

/// `size` with a foot width: whole mm, 30 .. 160, Mondopoint and Chinese sizes only.
Parsed<ShoeSize> with_width(ShoeSize size, Millimetres width);

/// `size` with a girth code: Japanese sizes only.
Parsed<ShoeSize> with_girth_code(ShoeSize size, GirthCode code);

/// Reads a size as marked; the system comes first. A half may be `.5` or `½`, the blank may be left
/// out. A length of 80 or more without a system is Mondopoint, as ISO 9407 marks it.
///
///     parse_shoe_size("UK 6½")       ->  British, 6.5
///     parse_shoe_size("245/95")      ->  Mondopoint, 245 mm long, 95 mm wide
///     parse_shoe_size("JP 25.0 EE")  ->  Japanese, 25.0 cm, girth code EE
///     parse_shoe_size("US 9")        ->  problem "`US 9` does not say whose size it is"
///     parse_shoe_size("CN 25")       ->  problem "`CN 25` may be centimetres or the old code"
Parsed<ShoeSize> parse_shoe_size(std::string_view text);

/// As `parse_shoe_size` reads it: `EU 39.5`, `JP 25.0 EE`, `MP 245/95`.
std::string show(const ShoeSize& size);

/// The number alone, as marked: `39.5`, `25.0`, `245`.
std::string show_number(const ShoeSize& size);

/// One step up; none above the largest. Width and girth code stay as marked. After the last
/// children's size, 13½, comes 1: UK adult after UK child, US youth after US child. After the last
/// US youth size comes none, because men's and women's sizes part there. 247.5 mm steps by 7.5 mm,
/// a multiple of 5 mm by 5 mm.
std::optional<ShoeSize> next_larger(ShoeSize size);

/// One step down; none below the smallest. Undoes `next_larger`, but for the 7.5 mm steps.
std::optional<ShoeSize> next_smaller(ShoeSize size);

/// From this size to the next in mm: 3.333 for Paris points, 4.233 for English and American sizes
/// (both in halves, of last length), 5 or 7.5 for foot lengths.
Millimetres size_step(const ShoeSize& size);

}  // namespace heelrule
