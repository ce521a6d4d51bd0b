#include "engine/drawing/blank_ruler.hpp"

#include <fmt/format.h>

#include <cmath>

namespace heelrule {
namespace {

constexpr double height = 24;
constexpr double line_at = 13;  // pixels from above
constexpr double long_stroke = 8;
constexpr double short_stroke = 5;
constexpr double numbers_at = 22;

}  // namespace

std::string draw(const BlankRuler& ruler) {
  const double from = ruler.reach.from;
  const double to = ruler.reach.to;
  const std::string words =
      fmt::format("A ruler from {} to {} {} to mark the reading on.", from, to, ruler.unit);
  SvgWriter svg = SvgWriter::stretching({ruler.id, ruler.title, words}, height, "blank-ruler");
  const auto share = [&](double value) { return percent(100 * (value - from) / (to - from)); };
  svg.line({percent(0), line_at}, {percent(100), line_at}, "stroke");
  const double step = stroke_step(ruler.reach);
  const double last = std::floor(to / step + 1e-9);
  for (double i = std::ceil(from / step - 1e-9); i <= last; ++i) {
    const bool is_fifth = std::fmod(std::fabs(i), 5) < 0.5;
    const Across at = share(i * step);
    svg.line({at, line_at - (is_fifth ? long_stroke : short_stroke)}, {at, line_at}, "stroke");
    if (is_fifth) {
      const Anchor anchor = at.value < 4    ? Anchor::start
                            : at.value > 96 ? Anchor::end
                                            : Anchor::middle;
      svg.text({at, numbers_at}, svg_number(i * step), anchor, "number");
    }
  }
  return svg.take();
}

}  // namespace heelrule
