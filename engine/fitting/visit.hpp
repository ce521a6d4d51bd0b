// What was measured of two feet on one day, as far as sizes go.
#pragma once

#include <chrono>
#include <optional>
#include <vector>

#include "engine/fitting/measured.hpp"
#include "engine/model/trait.hpp"
#include "engine/quantity/fibre_content.hpp"
#include "engine/quantity/sock_range.hpp"

namespace heelrule {

/// One foot, and what it is worn in.
struct FootMeasures {
  std::optional<Measured> length;  ///< standing, to the longest toe
  std::optional<Measured> seated_length;
  std::optional<Measured> width;  ///< standing, across the ball
  std::optional<Measured> seated_width;
  std::optional<Measured> girth;           ///< standing, around the ball
  std::optional<Measured> length_in_sock;  ///< standing
  std::optional<Measured> inside_length;   ///< of the shoe that is worn now
  bool cuff_grooves = false;               ///< the cuff of the sock leaves a groove
};

struct Visit {
  std::optional<std::chrono::year_month_day> date;
  FootMeasures left;
  FootMeasures right;
  std::optional<double> age;           ///< in years; children
  std::vector<SockRange> socks;        ///< as marked: the sock worn, or those on a rack
  std::optional<FibreContent> fibres;  ///< of the sock worn

  const FootMeasures& foot(Side side) const { return side == Side::left ? left : right; }
};

/// The longer standing foot; the right one of two alike. Nothing where no foot was measured.
std::optional<Side> longer_foot(const Visit& visit);

}  // namespace heelrule
