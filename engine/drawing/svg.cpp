#include "engine/drawing/svg.hpp"

#include <fmt/format.h>

#include <cmath>
#include <iterator>

#include "engine/drawing/markup.hpp"
#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr double farthest = 1e6;

std::string written(Across distance) {
  return svg_number(distance.value) + (distance.in_percent ? "%" : "");
}

std::string_view in_words(Anchor anchor) {
  switch (anchor) {
    case Anchor::start:
      return "start";
    case Anchor::middle:
      return "middle";
    case Anchor::end:
      return "end";
  }
  return "";
}

std::string pair(Point point) {
  return fmt::format("{} {}", svg_number(point.x), svg_number(point.y));
}

Point plus(Point at, Point from, Point to, double share) {
  return {at.x + (to.x - from.x) * share, at.y + (to.y - from.y) * share};
}

}  // namespace

std::string svg_number(double value) {
  return std::isfinite(value) && std::fabs(value) <= farthest ? with_places(value, 3) : "0";
}

SvgWriter::SvgWriter(const PictureWords& words, std::string_view sizes, std::string_view kind) {
  picture_ = fmt::format(
      "<svg class=\"picture {0}\" {1} role=\"img\" aria-labelledby=\"{2}-title {2}-words\">"
      "<title id=\"{2}-title\">{3}</title><desc id=\"{2}-words\">{4}</desc>",
      kind, sizes, words.id, markup_text(words.title), markup_text(words.description));
}

SvgWriter SvgWriter::to_scale(const PictureWords& words, double width, double height,
                              std::string_view kind) {
  return {words,
          fmt::format("viewBox=\"0 0 {} {}\" width=\"{}\" height=\"{}\"", svg_number(width),
                      svg_number(height), svg_number(width * pixels_a_unit),
                      svg_number(height * pixels_a_unit)),
          kind};
}

SvgWriter SvgWriter::stretching(const PictureWords& words, double height, std::string_view kind) {
  return {words, fmt::format("width=\"100%\" height=\"{}\"", svg_number(height)), kind};
}

void SvgWriter::line(Place from, Place to, std::string_view kind) {
  fmt::format_to(
      std::back_inserter(picture_), R"(<line class="{}" x1="{}" y1="{}" x2="{}" y2="{}"/>)", kind,
      written(from.across), svg_number(from.down), written(to.across), svg_number(to.down));
}

void SvgWriter::box(Place corner, Across width, double height, std::string_view kind) {
  fmt::format_to(
      std::back_inserter(picture_), R"(<rect class="{}" x="{}" y="{}" width="{}" height="{}"/>)",
      kind, written(corner.across), svg_number(corner.down), written(width), svg_number(height));
}

void SvgWriter::circle(Point centre, double radius, std::string_view kind) {
  fmt::format_to(std::back_inserter(picture_), R"(<circle class="{}" cx="{}" cy="{}" r="{}"/>)",
                 kind, svg_number(centre.x), svg_number(centre.y), svg_number(radius));
}

void SvgWriter::text(Place at, std::string_view words, Anchor anchor, std::string_view kind) {
  fmt::format_to(std::back_inserter(picture_),
                 R"(<text class="{}" x="{}" y="{}" text-anchor="{}">{}</text>)", kind,
                 written(at.across), svg_number(at.down), in_words(anchor), markup_text(words));
}

void SvgWriter::shape(Place origin, std::span<const Point> points, bool closed,
                      std::string_view kind) {
  std::string path;
  for (const Point& point : points) {
    path += (path.empty() ? "M" : " L") + pair(point);
  }
  fmt::format_to(std::back_inserter(picture_),
                 R"(<svg x="{}" y="{}" overflow="visible"><path class="{}" d="{}{}"/></svg>)",
                 written(origin.across), svg_number(origin.down), kind, path, closed ? "Z" : "");
}

void SvgWriter::curve(std::span<const Point> points, bool closed, std::string_view kind) {
  const std::size_t count = points.size();
  if (count < 2) {
    return;
  }
  const auto at = [&](std::size_t i) { return points[i % count]; };
  std::string path = "M" + pair(points[0]);
  for (std::size_t i = 0; i + (closed ? 0 : 1) < count; ++i) {
    const Point before = closed || i > 0 ? at(i + count - 1) : at(i);
    const Point after = closed || i + 2 < count ? at(i + 2) : at(i + 1);
    const Point leaving = plus(at(i), before, at(i + 1), 1.0 / 6);
    const Point arriving = plus(at(i + 1), at(i), after, -1.0 / 6);
    path += fmt::format(" C{} {} {}", pair(leaving), pair(arriving), pair(at(i + 1)));
  }
  fmt::format_to(std::back_inserter(picture_), R"(<path class="{}" d="{}{}"/>)", kind, path,
                 closed ? "Z" : "");
}

std::string SvgWriter::take() {
  picture_ += "</svg>";
  return std::move(picture_);
}

std::string_view picture_patterns() {
  return R"(<svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false"><defs>)"
         R"(<pattern id="hatch-dense" width="4" height="4" patternUnits="userSpaceOnUse">)"
         R"(<path class="hatch" d="M-1 1 L1 -1 M0 4 L4 0 M3 5 L5 3"/></pattern>)"
         R"(<pattern id="hatch-sparse" width="9" height="9" patternUnits="userSpaceOnUse">)"
         R"(<path class="hatch" d="M-1 1 L1 -1 M0 9 L9 0 M8 10 L10 8"/></pattern>)"
         R"(</defs></svg>)";
}

}  // namespace heelrule
