#include "engine/report/shoe_words.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/report/foot_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

std::string length_words(Millimetres length) { return show(length.value(), Unit::millimetre); }

std::string code_words(const Parsed<GirthCode>& code, std::string_view whose) {
  return code ? fmt::format("{} for {}", show(*code), whose) : fmt::format("none for {}", whose);
}

std::string girth_words(const GirthAdvice& advice) {
  return fmt::format("Girth of the fuller foot {}: by JIS S 5037 (secondary source) {}, {}.",
                     measured_words(advice.girth), code_words(advice.men, "men"),
                     code_words(advice.women, "women"));
}

std::string width_words(const ShoeAdvice& advice) {
  const std::string width =
      fmt::format("Width of the wider foot {}", measured_words(*advice.width));
  return advice.with_width ? fmt::format("{}: in Mondopoint {}.", width, show(*advice.with_width))
                           : fmt::format("{}.", width);
}

// English sizes of children have no table that anything confirms, see `nominal_foot`.
std::string why_none(const SizeToAsk& ask) {
  const bool is_english_child =
      ask.system == SizeSystem::british_child || ask.system == SizeSystem::american_child;
  return is_english_child ? "no table of them is confirmed; ask by the inside length"
                          : ask.size.problem().message;
}

// The systems without a size, each reason once.
std::vector<std::string> missing_words(const ShoeAdvice& advice) {
  std::vector<std::string> lines;
  std::string told;
  for (const SizeToAsk& ask : advice.sizes) {
    if (ask.size) {
      continue;
    }
    const std::string_view mark = facts(ask.system).mark;
    if (why_none(ask) == told) {
      lines.back().insert(lines.back().find(':'), fmt::format(", {}", mark));
      continue;
    }
    told = why_none(ask);
    lines.push_back(fmt::format("No size in {}: {}.", mark, told));
  }
  return lines;
}

std::string inside_words(const Fitting& fitting) {
  return fmt::format(
      "An inside length of {}: the longer standing foot, and {} in front of its toes. "
      "Take the insole out and measure it.",
      from_to_words(fitting.shoe.inside_least, fitting.shoe.inside_most),
      from_to_words(fitting.window.least, fitting.window.most));
}

std::string smaller_foot_words(const SmallerFoot& smaller, Millimetres inside_least) {
  const std::string_view side = in_words(smaller.side);
  const std::string space =
      fmt::format("The {} foot is {} shorter, and has {} in front of it in such a pair", side,
                  length_words(smaller.shorter_by.value),
                  from_to_words(smaller.least_space, smaller.most_space));
  switch (smaller.remedy) {
    case Remedy::one_pair:
      return fmt::format("{}; an inside of {} is right for both.", space,
                         from_to_words(inside_least, smaller.shared_most));
    case Remedy::fill:
      return fmt::format(
          "{}: take it up with a thin insole, a pad under the tongue or tighter "
          "lacing on that side (common practice).",
          space);
    case Remedy::two_pairs:
      return fmt::format(
          "{}, a whole size too much for insoles and lacing: look for a maker that "
          "sells single shoes, or buy two pairs (common practice).",
          space);
  }
  return {};
}

}  // namespace

std::vector<std::pair<std::string, std::string>> size_rows(const ShoeAdvice& advice) {
  std::vector<std::pair<std::string, std::string>> rows;
  for (const SizeToAsk& ask : advice.sizes) {
    if (ask.size) {
      rows.emplace_back(show(*ask.size), ask.reason);
    }
  }
  return rows;
}

std::vector<std::string> shoe_words(const Fitting& fitting) {
  const ShoeAdvice& advice = fitting.shoe;
  std::vector<std::string> lines{inside_words(fitting)};
  if (advice.smaller && advice.smaller->shorter_by.value > Millimetres(0)) {
    lines.push_back(smaller_foot_words(*advice.smaller, advice.inside_least));
  }
  if (advice.width) {
    lines.push_back(width_words(advice));
  }
  if (advice.girth) {
    lines.push_back(girth_words(*advice.girth));
  }
  for (std::string& line : missing_words(advice)) {
    lines.push_back(std::move(line));
  }
  lines.emplace_back("Try both shoes on standing, in the socks that will be worn.");
  lines.emplace_back(
      "These printed sizes are where to begin (ISO 19407 from a secondary source). Makers differ "
      "by "
      "about a whole size, so the inside of the shoe decides:");
  return lines;
}

}  // namespace heelrule
