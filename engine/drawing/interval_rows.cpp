#include "engine/drawing/interval_rows.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr double row_height = 36;  // pixels: a line of words, and the interval below it
constexpr double heading_height = 30;
constexpr double foot_height = 22;
constexpr std::array<Point, 4> diamond{{{0, -5}, {5, 0}, {0, 5}, {-5, 0}}};
constexpr std::array<Point, 3> left_arrow{{{0, 0}, {6, -4}, {6, 4}}};
constexpr std::array<Point, 3> right_arrow{{{0, 0}, {-6, -4}, {-6, 4}}};

class RowsDrawing {
 public:
  explicit RowsDrawing(const IntervalRows& picture) : picture_(picture) {
    for (const IntervalRow& row : picture.rows) {
      height_ += row.is_heading ? heading_height : row_height;
    }
  }

  std::string draw() const {
    SvgWriter svg = SvgWriter::stretching({picture_.id, picture_.title, description()},
                                          height_ + foot_height, "interval-rows");
    for (const double stroke : picture_.strokes) {
      svg.line({percent(share(stroke)), 0}, {percent(share(stroke)), height_ + 4}, "stroke");
      svg.text({percent(share(stroke)), height_ + 18}, with_places(stroke, 2), anchor(stroke),
               "stroke-words");
    }
    double down = 0;
    for (const IntervalRow& row : picture_.rows) {
      draw_row(svg, row, down);
      down += row.is_heading ? heading_height : row_height;
    }
    return svg.take();
  }

 private:
  double share(double value) const {
    const double along = (value - picture_.from) / (picture_.to - picture_.from);
    return 100 * std::clamp(along, 0.0, 1.0);
  }

  Anchor anchor(double stroke) const {
    return stroke <= picture_.from ? Anchor::start
                                   : (stroke >= picture_.to ? Anchor::end : Anchor::middle);
  }

  void draw_row(SvgWriter& svg, const IntervalRow& row, double down) const {
    if (row.is_heading) {
      svg.text({percent(0), down + 22}, row.name, Anchor::start, "heading");
      return;
    }
    svg.text({percent(0), down + 14}, row.name, Anchor::start, "name");
    svg.text({percent(100), down + 14}, row.words, Anchor::end, "words");
    const double middle = down + 25;
    if (!std::isnan(row.low) && !std::isnan(row.high)) {
      svg.line({percent(share(row.low)), middle}, {percent(share(row.high)), middle}, "interval");
      if (row.low < picture_.from) {
        svg.shape({percent(0), middle}, left_arrow, true, "arrow");
      }
      if (row.high > picture_.to) {
        svg.shape({percent(100), middle}, right_arrow, true, "arrow");
      }
    }
    if (!std::isnan(row.value)) {
      svg.shape({percent(share(row.value)), middle}, diamond, true, "figure");
    }
  }

  std::string description() const {
    std::string words;
    for (const IntervalRow& row : picture_.rows) {
      words += (words.empty() ? "" : " ") + row.name +
               (row.is_heading ? std::string(":") : ": " + row.words + ";");
    }
    return words;
  }

  const IntervalRows& picture_;
  double height_ = 0;
};

}  // namespace

std::string draw(const IntervalRows& picture) { return RowsDrawing(picture).draw(); }

}  // namespace heelrule
