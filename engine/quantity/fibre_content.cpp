#include "engine/quantity/fibre_content.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/trimmed.hpp"

namespace heelrule {
namespace {

// Shares are counted in millionths of a percent, in which sums are exact.
constexpr std::int64_t whole = 100'000'000;
constexpr std::int64_t one_percent = 1'000'000;

std::int64_t counted(double share) { return std::llround(share * static_cast<double>(whole)); }

std::string percent(std::int64_t count) {
  return with_places(static_cast<double>(count) / static_cast<double>(one_percent), 6) + " %";
}

Problem share_problem(const NamedShare& part) {
  const std::string text = show(part.share.stored, part.share.unit, 6);
  Problem wrong_unit = accepts(Unit::percent, part.share.unit, text);
  if (wrong_unit != Problem{}) {
    return wrong_unit;
  }
  if (!(part.share.stored > 0 && part.share.stored <= 1) || counted(part.share.stored) == 0) {
    return {fmt::format("{} {} is no share of a blend", text, part.name),
            "write more than 0 % and at most 100 %, or leave the fibre out"};
  }
  return {};
}

Problem sum_problem(std::int64_t sum) {
  return {fmt::format("the fibres add up to {}, and 100 % is due", percent(sum)),
          fmt::format("{} is {}: look at the label again", percent(std::abs(whole - sum)),
                      sum < whole ? "missing" : "too much")};
}

}  // namespace

Parsed<FibreContent> fibre_content(std::span<const NamedShare> parts) {
  if (parts.empty()) {
    return Problem{"no fibre is named",
                   "write what the label says: `{cotton: 80 %, elastane: 20 %}`"};
  }
  FibreContent content;
  std::int64_t sum = 0;
  for (const NamedShare& part : parts) {
    const auto fibre = parse_fibre(part.name);
    if (!fibre) {
      return fibre.problem();
    }
    if (content.share(*fibre) > 0) {
      return Problem{fmt::format("`{}` is named twice", part.name), "add its shares up"};
    }
    Problem wrong_share = share_problem(part);
    if (wrong_share != Problem{}) {
      return wrong_share;
    }
    content.shares_.push_back({*fibre, part.share.stored});
    sum += counted(part.share.stored);
  }
  if (sum != whole) {
    return sum_problem(sum);
  }
  std::stable_sort(content.shares_.begin(), content.shares_.end(),
                   [](const FibreShare& a, const FibreShare& b) { return a.share > b.share; });
  return content;
}

double FibreContent::share(FibreGroup group) const {
  std::int64_t sum = 0;
  for (const FibreShare& part : shares_) {
    sum += group.holds(part.fibre) ? counted(part.share) : 0;
  }
  return static_cast<double>(sum) / static_cast<double>(whole);
}

double FibreContent::moisture() const {
  constexpr double hundredths_of_a_percent = 10'000;
  std::int64_t sum = 0;
  for (const FibreShare& part : shares_) {
    sum +=
        counted(part.share) * std::llround(agreed_allowance(part.fibre) * hundredths_of_a_percent);
  }
  return static_cast<double>(sum) / (static_cast<double>(whole) * hundredths_of_a_percent);
}

Parsed<FibreContent> parse_fibre_content(std::string_view text) {
  std::vector<NamedShare> parts;
  while (!text.empty()) {
    const std::string_view part = trimmed(text.substr(0, text.find(',')));
    text.remove_prefix(std::min(text.size(), text.find(',')));
    text.remove_prefix(text.empty() ? 0 : 1);
    const std::size_t sign = part.find('%');
    if (sign == std::string_view::npos) {
      return Problem{fmt::format("`{}` does not say how much of the blend it is", part),
                     "write each share before its fibre: `80 % cotton, 20 % polyester`"};
    }
    const auto share = parse_quantity(part.substr(0, sign + 1));
    if (!share) {
      return share.problem();
    }
    parts.push_back({trimmed(part.substr(sign + 1)), *share});
  }
  return fibre_content(parts);
}

std::string show(const FibreContent& content) {
  std::string text;
  for (const FibreShare& part : content.shares()) {
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", percent(counted(part.share)),
                        show(part.fibre));
  }
  return text;
}

}  // namespace heelrule
