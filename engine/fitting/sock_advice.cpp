#include "engine/fitting/sock_advice.hpp"

#include <algorithm>
#include <utility>

#include "engine/fitting/foot_change.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

SockOnFoot on_foot(Side side, Millimetres foot, const FootRange& feet) {
  const auto apart = [](Millimetres a, Millimetres b) {
    return Millimetres(settled((a - b).value()));
  };
  if (foot > feet.longest) {
    return {side, SockFit::too_short, apart(foot, feet.longest)};
  }
  return foot < feet.shortest ? SockOnFoot{side, SockFit::too_long, apart(feet.shortest, foot)}
                              : SockOnFoot{side, SockFit::right, Millimetres(0)};
}

MarkedSock marked_sock(const SockRange& range, const Visit& visit) {
  MarkedSock sock{range, feet_of(range), {}};
  for (const Side side : both_sides) {
    if (const auto& length = visit.foot(side).length; length && sock.feet) {
      sock.on.push_back(on_foot(side, length->value, *sock.feet));
    }
  }
  return sock;
}

bool holds(const SockOnFoot& foot) { return foot.fit == SockFit::right; }

bool holds(const MarkedSock& sock, Side side) {
  return std::any_of(sock.on.begin(), sock.on.end(),
                     [&](const SockOnFoot& foot) { return foot.side == side && holds(foot); });
}

bool holds_all(const MarkedSock& sock) {
  return std::all_of(sock.on.begin(), sock.on.end(),
                     [](const SockOnFoot& foot) { return holds(foot); });
}

Cramping cramping_of(Millimetres lost) {
  return lost >= whole_english_size() ? Cramping::cramped
         : lost >= half_a_size()      ? Cramping::tight
                                      : Cramping::free;
}

}  // namespace

std::optional<std::size_t> sock_to_choose(const std::vector<MarkedSock>& rack, Side longer) {
  std::optional<std::size_t> best;
  const auto rank = [&](std::size_t i) {
    return std::pair(!holds_all(rack[i]), std::pair(rack[i].feet->longest, rack[i].feet->shortest));
  };
  for (std::size_t i = 0; i < rack.size(); ++i) {
    if (holds(rack[i], longer) && (!best || rank(i) < rank(*best))) {
      best = i;
    }
  }
  return best;
}

SockAdvice sock_advice(const Visit& visit) {
  SockAdvice advice;
  for (const SockRange& range : visit.socks) {
    advice.marked.push_back(marked_sock(range, visit));
  }
  if (const auto longer = longer_foot(visit)) {
    advice.choose = sock_to_choose(advice.marked, *longer);
  }
  for (const Side side : both_sides) {
    const FootMeasures& foot = visit.foot(side);
    if (foot.length && foot.length_in_sock) {
      const Measured lost = *foot.length - *foot.length_in_sock;
      advice.lost.push_back({side, lost, cramping_of(lost.value)});
    }
    if (foot.cuff_grooves) {
      advice.grooves.push_back(side);
    }
  }
  if (visit.fibres) {
    advice.moisture = visit.fibres->moisture();
    advice.cotton = visit.fibres->share(FibreGroup(Fibre::cotton, Fibre::mercerised_cotton));
  }
  return advice;
}

}  // namespace heelrule
