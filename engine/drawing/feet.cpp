#include "engine/drawing/feet.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace heelrule {
namespace {

// In millimetres, as all of the picture; letters are as high as the style says, at most this.
constexpr double letters = 12;
constexpr double row_height = 15;
constexpr double outer_margin = 44;  // room for the words about the space beside
constexpr double between = 40;
constexpr double above = 26;         // room for the words about the space in front
constexpr double least_width = 100;  // rows of words below a child's foot need as much

double widest(const FootPicture& foot) {
  double width = least_width;
  for (const auto& form : {foot.standing, foot.seated, foot.insole}) {
    width = std::max(width, form ? form->width : 0);
  }
  return width;
}

double longest(const FootPicture& foot) {
  double length = foot.insole_length.value_or(0);
  for (const auto& form : {foot.standing, foot.seated, foot.insole}) {
    length = std::max(length, form ? form->length : 0);
  }
  return length;
}

class FeetDrawing {
 public:
  explicit FeetDrawing(const FeetPicture& feet)
      : feet_(feet),
        left_width_(widest(feet.left)),
        right_width_(widest(feet.right)),
        heel_(above + std::max(longest(feet.left), longest(feet.right))) {}

  std::string draw() {
    const double width = 2 * outer_margin + left_width_ + between + right_width_;
    const double rows =
        static_cast<double>(1 + std::max(feet_.left.rows.size(), feet_.right.rows.size()));
    SvgWriter svg = SvgWriter::to_scale({feet_.id, feet_.title, description()}, width,
                                        heel_ + 8 + rows * row_height, "feet");
    draw_foot(svg, feet_.left, outer_margin + left_width_ / 2, BigToe::to_the_right);
    draw_foot(svg, feet_.right, width - outer_margin - right_width_ / 2, BigToe::to_the_left);
    return svg.take();
  }

 private:
  std::vector<Point> placed(std::vector<Point> points, double middle) const {
    for (Point& point : points) {
      point = {middle + point.x, heel_ - point.y};
    }
    return points;
  }

  void draw_foot(SvgWriter& svg, const FootPicture& foot, double middle, BigToe big_toe) const {
    if (foot.insole) {
      svg.curve(placed(insole_outline(*foot.insole, big_toe), middle), true, "insole");
    }
    if (foot.seated) {
      svg.curve(placed(foot_outline(*foot.seated, big_toe), middle), true, "foot seated");
    }
    if (foot.standing) {
      svg.curve(placed(foot_outline(*foot.standing, big_toe), middle), true, "foot standing");
      draw_space_in_front(svg, foot, middle);
      draw_space_beside(svg, foot, middle, big_toe);
    }
    double down = heel_ + 4 + row_height;
    svg.text({across(middle), down}, foot.name, Anchor::middle, "name");
    for (const std::string& row : foot.rows) {
      down += row_height;
      svg.text({across(middle), down}, row, Anchor::middle, "row");
    }
  }

  // A measured distance: two strokes across it, and a line between them.
  static void dimension(SvgWriter& svg, Point from, Point to) {
    constexpr double half = 5;
    const bool upright = from.x == to.x;
    for (const Point& end : {from, to}) {
      svg.line({across(end.x - (upright ? half : 0)), end.y - (upright ? 0 : half)},
               {across(end.x + (upright ? half : 0)), end.y + (upright ? 0 : half)}, "dimension");
    }
    svg.line({across(from.x), from.y}, {across(to.x), to.y}, "dimension");
  }

  void draw_space_in_front(SvgWriter& svg, const FootPicture& foot, double middle) const {
    const double inside = foot.insole ? foot.insole->length : foot.insole_length.value_or(0);
    if (inside <= 0 || foot.space_in_front.empty()) {
      return;
    }
    const double front = heel_ - inside;
    const double toe = heel_ - foot.standing->length;
    if (!foot.insole) {
      svg.line({across(middle - 24), front}, {across(middle + 24), front}, "insole");
    }
    dimension(svg, {middle, toe}, {middle, front});
    svg.text({across(middle), std::min(front, toe) - 8}, foot.space_in_front, Anchor::middle,
             "measure");
  }

  // The words stand on the outer side; the space is drawn there and on the inner side alike.
  void draw_space_beside(SvgWriter& svg, const FootPicture& foot, double middle,
                         BigToe big_toe) const {
    if (!foot.insole || foot.space_beside.empty()) {
      return;
    }
    const double outward = big_toe == BigToe::to_the_right ? -1 : 1;
    const double down = heel_ - 0.66 * foot.standing->length;
    for (const double side : {outward, -outward}) {
      dimension(svg, {middle + side * foot.standing->width / 2, down},
                {middle + side * foot.insole->width / 2, down});
    }
    const double edge = std::max(foot.standing->width, foot.insole->width) / 2 + 4;
    svg.text({across(middle + outward * edge), down + letters / 3}, foot.space_beside,
             outward < 0 ? Anchor::end : Anchor::start, "measure");
  }

  static std::string words_of(const FootPicture& foot) {
    std::vector<std::string> words = foot.rows;
    if (!foot.space_in_front.empty()) {
      words.push_back(fmt::format("{} in front of the toes", foot.space_in_front));
    }
    if (!foot.space_beside.empty()) {
      words.push_back(fmt::format("insole wider than the foot by {}", foot.space_beside));
    }
    return fmt::format("{}: {}", foot.name,
                       words.empty() ? "not measured" : fmt::format("{}", fmt::join(words, ", ")));
  }

  std::string description() const {
    return fmt::format("{}; {}.", words_of(feet_.left), words_of(feet_.right));
  }

  const FeetPicture& feet_;
  double left_width_;
  double right_width_;
  double heel_;  // how far down the heel ends lie
};

}  // namespace

std::string draw(const FeetPicture& feet) { return FeetDrawing(feet).draw(); }

}  // namespace heelrule
