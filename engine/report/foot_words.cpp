#include "engine/report/foot_words.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/quantity/decimal.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

std::string standing_words(const Fitting& fitting) {
  const auto& left = fitting.visit.left.length;
  const auto& right = fitting.visit.right.length;
  if (!left || !right) {
    return fmt::format(
        "Standing: {} {}. The other foot was not measured, and may be the longer one: measure "
        "both.",
        in_words(fitting.shoe.longer), measured_words(fitting.shoe.foot));
  }
  return fmt::format("Standing: left {}, right {} (19 times in 20 the true length lies within ±).",
                     measured_words(*left), measured_words(*right));
}

std::string sides_words(const SidesDifference& sides) {
  if (sides.by.value == Millimetres(0)) {
    return "Both feet are alike in length.";
  }
  return fmt::format(
      "The {} foot is longer by {}, and a pair is bought for it.{}", in_words(sides.longer),
      measured_words(sides.by),
      sides.worth_noting
          ? " Those of 4 in 5 men differ by 4 mm at most (UK survey 2018): measure both once "
            "more."
          : "");
}

std::string_view judgement(const LoadChange& change) {
  switch (change.lengthening) {
    case Lengthening::misread:
      return "A foot does not shorten under load, so one of its two lengths is misread.";
    case Lengthening::as_expected:
      return "Up to half a size is usual (common practice).";
    case Lengthening::more_than_half:
      return "That is more than the usual half a size (common practice): measure once more.";
    case Lengthening::whole_size:
      return "The trade takes a whole size or more as a sign of a foot that flattens under load "
             "(common practice, no diagnosis): measure once more.";
  }
  return "";
}

std::string change_words(const LoadChange& change) {
  const auto sizes = [&](SizeSystem system) {
    return with_places(in_whole_sizes(change.length.value, system), 2);
  };
  return fmt::format(
      "{}{}, {} of a UK or US, {} of an EU, {} of a Mondopoint size", measured_words(change.length),
      change.width ? fmt::format(" (and wider by {})", measured_words(*change.width)) : "",
      sizes(SizeSystem::british), sizes(SizeSystem::european), sizes(SizeSystem::mondopoint));
}

std::string_view doubt_words(const LoadChange& change) {
  const bool is_below = change.lengthening == Lengthening::more_than_half;
  return is_below && change.whole_size_within_doubt ? " Within its doubt it could be a whole size."
                                                    : "";
}

// What is judged alike is judged once.
std::vector<std::string> load_words(const std::vector<LoadChange>& changes) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < changes.size(); ++i) {
    const LoadChange& change = changes[i];
    const bool again = i + 1 < changes.size() && changes[i + 1].lengthening == change.lengthening &&
                       changes[i + 1].whole_size_within_doubt == change.whole_size_within_doubt;
    lines.push_back(fmt::format("Standing up lengthens the {} foot by {}.{}{}{}",
                                in_words(change.side), change_words(change), again ? "" : " ",
                                again ? "" : judgement(change), again ? "" : doubt_words(change)));
  }
  return lines;
}

}  // namespace

std::string measured_words(const Measured& length) {
  return length.doubt > Millimetres(0)
             ? fmt::format("{} ± {} mm", with_places(length.value.value(), 1),
                           with_places((2 * length.doubt).value(), 1))
             : show(length.value.value(), Unit::millimetre);
}

std::string from_to_words(Millimetres from, Millimetres to) {
  return fmt::format("{} to {} mm", with_places(from.value(), 1), with_places(to.value(), 1));
}

std::vector<std::string> foot_words(const Fitting& fitting) {
  std::vector<std::string> lines{standing_words(fitting)};
  if (fitting.sides) {
    lines.push_back(sides_words(*fitting.sides));
  }
  for (std::string& line : load_words(fitting.changes)) {
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace heelrule
