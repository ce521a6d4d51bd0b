#include "engine/report/sock_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/decimal.hpp"
#include "engine/report/foot_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

std::string length_words(Millimetres length) { return show(length.value(), Unit::millimetre); }

std::string on_foot_words(const SockOnFoot& foot) {
  const std::string_view side = in_words(foot.side);
  switch (foot.fit) {
    case SockFit::right:
      return fmt::format("right for the {} foot", side);
    case SockFit::too_short:
      return fmt::format("{} too short for the {} foot", length_words(foot.misses_by), side);
    case SockFit::too_long:
      return fmt::format("{} too long for the {} foot", length_words(foot.misses_by), side);
  }
  return {};
}

std::string marked_words(const MarkedSock& sock) {
  if (!sock.feet) {
    return fmt::format("{}: {}.", show(sock.range), sock.feet.problem().message);
  }
  std::string on;
  for (const SockOnFoot& foot : sock.on) {
    on += fmt::format("{}{}", on.empty() ? "" : ", ", on_foot_words(foot));
  }
  const auto holds = [](const SockOnFoot& foot) { return foot.fit == SockFit::right; };
  if (sock.on.size() > 1 && std::all_of(sock.on.begin(), sock.on.end(), holds)) {
    on = "right for both";
  }
  return fmt::format("{} is made for feet of {}: {}.", show(sock.range),
                     from_to_words(sock.feet->shortest, sock.feet->longest), on);
}

std::string choice_words(const SockAdvice& advice, Millimetres foot) {
  if (advice.choose) {
    return fmt::format(
        "Take {}: where several hold the feet, the trade takes the smaller "
        "(practice under GOST 8541-2014, secondary source).",
        show(advice.marked[*advice.choose].range));
  }
  return fmt::format("None of these is made for the longer foot: look for a range that holds {}.",
                     show(foot.value(), Unit::centimetre));
}

std::string_view cramping_words(Cramping cramping) {
  switch (cramping) {
    case Cramping::free:
      return "The toes keep their length.";
    case Cramping::tight:
      return "That is half a size or more, and in the shoe the space looks better than it is.";
    case Cramping::cramped:
      return "A sock that takes a whole size or more cramps the toes (common practice).";
  }
  return "";
}

std::string lost_words(const SockLengthLost& lost) {
  return fmt::format("In the sock the {} foot stands {} shorter, {} of a UK or US size. {}",
                     in_words(lost.side), measured_words(lost.lost),
                     with_places(in_whole_sizes(lost.lost.value, SizeSystem::british), 2),
                     cramping_words(lost.cramping));
}

std::string fibre_words(double moisture, double cotton) {
  return fmt::format(
      "The agreed moisture allowance of its fibres is {} (EU 1007/2011 Annex IX): a convention of "
      "the trade for weighing, and no figure of comfort. {} is cotton; the trade prefers pure "
      "cotton "
      "(common practice).",
      show(moisture, Unit::percent, 2), show(cotton, Unit::percent));
}

std::string groove_words(const std::vector<Side>& sides, bool without_advice) {
  const std::string where =
      sides.size() > 1 ? "both legs" : fmt::format("the {} leg", in_words(sides.front()));
  return fmt::format(
      "The cuff leaves a groove on {}. One that comes with every sock can be a sign of swelling: "
      "mention it to a practitioner.{}",
      where, without_advice ? "" : " Take socks with a wide cuff.");
}

bool any_tight(const std::vector<SockLengthLost>& all) {
  return std::any_of(all.begin(), all.end(),
                     [](const SockLengthLost& one) { return one.cramping != Cramping::free; });
}

}  // namespace

std::vector<std::string> sock_words(const Fitting& fitting, bool without_advice) {
  const SockAdvice& advice = fitting.sock;
  std::vector<std::string> lines(advice.marked.size());
  std::transform(advice.marked.begin(), advice.marked.end(), lines.begin(), marked_words);
  const bool to_choose = advice.marked.size() > 1 || (!advice.marked.empty() && !advice.choose);
  if (to_choose && !without_advice) {
    lines.push_back(choice_words(advice, fitting.shoe.foot.value));
  }
  for (const SockLengthLost& lost : advice.lost) {
    lines.push_back(lost_words(lost));
  }
  if (any_tight(advice.lost) && !without_advice) {
    lines.emplace_back("Take longer socks, or a wider knit, and measure in them once more.");
  }
  if (advice.moisture && advice.cotton) {
    lines.push_back(fibre_words(*advice.moisture, *advice.cotton));
  }
  if (!advice.grooves.empty()) {
    lines.push_back(groove_words(advice.grooves, without_advice));
  }
  return lines;
}

}  // namespace heelrule
