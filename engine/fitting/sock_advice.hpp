// Whether a marked sock is made for these feet, which of a rack to take, and what a sock does.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/fitting/visit.hpp"

namespace heelrule {

enum class SockFit : std::uint8_t { right, too_short, too_long };

/// A marked range against one standing foot.
struct SockOnFoot {
  Side side = Side::none;
  SockFit fit = SockFit::right;
  Millimetres misses_by;  ///< 0 where it is right
};

/// A range as marked, and the feet that it is made for where that is known.
struct MarkedSock {
  SockRange range;
  Parsed<FootRange> feet;
  std::vector<SockOnFoot> on;  ///< the feet that were measured; none where `feet` is a problem
};

/// How much shorter the foot stands in the sock. By common practice a sock that takes a whole size
/// cramps the toes. In English sizes, as in `Lengthening`.
enum class Cramping : std::uint8_t {
  free,     ///< less than half a size
  tight,    ///< half a size or more
  cramped,  ///< a whole size or more
};

struct SockLengthLost {
  Side side = Side::none;
  Measured lost;
  Cramping cramping = Cramping::free;
};

struct SockAdvice {
  std::vector<MarkedSock> marked;
  std::optional<std::size_t> choose;  ///< index in `marked`
  std::vector<SockLengthLost> lost;
  std::optional<double> moisture;  ///< agreed allowance of the blend (EU 1007/2011 Annex IX), 0..1
  std::optional<double> cotton;    ///< share of it, 0..1
  std::vector<Side> grooves;       ///< where the cuff leaves one
};

/// Which of several ranges to take: one that holds both feet before one that holds the longer
/// alone, and of these the one made for the shortest feet, as the trade does (practice under GOST
/// 8541-2014, secondary source). Nothing where none holds the longer foot.
///
///     25.4 cm against sock 23, 25-27 cm, 24-26 cm  ->  24-26 cm
std::optional<std::size_t> sock_to_choose(const std::vector<MarkedSock>& rack, Side longer);

/// What the marked socks of a visit, the sock that was worn and its fibres come to. What was not
/// measured is left out: no range, no `marked`; no length in the sock, nothing `lost`.
SockAdvice sock_advice(const Visit& visit);

}  // namespace heelrule
