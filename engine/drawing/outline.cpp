#include "engine/drawing/outline.hpp"

#include <algorithm>
#include <array>
#include <span>

namespace heelrule {
namespace {

constexpr double usual_ball_share = 0.74;

// Along: 0 at the heel end, 1 beside the joint of the big toe, 2 at the front end. Across: in half
// widths, the inner side above 0. Drawn by us after no foot in particular.
struct FormPoint {
  double along = 0;
  double across = 0;
};

constexpr std::array<FormPoint, 22> foot_form{
    {{0, 0},        {0.06, 0.42}, {0.2, 0.62},   {0.37, 0.56},  {0.54, 0.52}, {0.71, 0.66},
     {0.87, 0.92},  {1.02, 1},    {1.3, 0.94},   {1.62, 0.88},  {1.9, 0.72},  {2, 0.45},
     {1.88, 0.14},  {1.68, -0.2}, {1.42, -0.58}, {1.12, -0.88}, {0.93, -1},   {0.76, -0.96},
     {0.58, -0.85}, {0.4, -0.74}, {0.22, -0.66}, {0.06, -0.42}}};

constexpr std::array<FormPoint, 22> insole_form{
    {{0, 0},        {0.06, 0.43},  {0.2, 0.64},  {0.37, 0.62},  {0.54, 0.62}, {0.71, 0.74},
     {0.87, 0.94},  {1, 1},        {1.28, 0.97}, {1.58, 0.89},  {1.86, 0.67}, {2, 0.3},
     {1.93, -0.16}, {1.72, -0.52}, {1.42, -0.8}, {1.12, -0.96}, {0.9, -1},    {0.72, -0.95},
     {0.55, -0.85}, {0.38, -0.75}, {0.2, -0.67}, {0.06, -0.43}}};

struct Extent {
  Point least;
  Point most;
};

double between(double from, double leaving, double arriving, double to, double share) {
  const double rest = 1 - share;
  return rest * rest * rest * from + 3 * rest * rest * share * leaving +
         3 * rest * share * share * arriving + share * share * share * to;
}

// How far the curve through the points reaches: here and there a little beyond them.
Extent extent(const std::vector<Point>& points) {
  constexpr int steps = 16;
  Extent found{points[0], points[0]};
  const std::size_t count = points.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Point& before = points[(i + count - 1) % count];
    const Point& from = points[i];
    const Point& to = points[(i + 1) % count];
    const Point& after = points[(i + 2) % count];
    for (int step = 0; step < steps; ++step) {
      const double share = static_cast<double>(step) / steps;
      const auto at = [&](double Point::* axis) {
        return between(from.*axis, from.*axis + (to.*axis - before.*axis) / 6,
                       to.*axis - (after.*axis - from.*axis) / 6, to.*axis, share);
      };
      const Point place{at(&Point::x), at(&Point::y)};
      found.least = {std::min(found.least.x, place.x), std::min(found.least.y, place.y)};
      found.most = {std::max(found.most.x, place.x), std::max(found.most.y, place.y)};
    }
  }
  return found;
}

std::vector<Point> outline(const FootForm& form, BigToe big_toe, std::span<const FormPoint> shape) {
  const double usual = usual_ball_share * form.length;
  const double joint = form.ball_length > 0
                           ? std::clamp(form.ball_length, 0.5 * form.length, 0.9 * form.length)
                           : usual;
  std::vector<Point> points;
  for (const FormPoint& at : shape) {
    points.push_back(
        {at.across * form.width / 2,
         at.along <= 1 ? at.along * joint : joint + (at.along - 1) * (form.length - joint)});
  }
  const Extent drawn = extent(points);
  const double mirror = big_toe == BigToe::to_the_right ? 1 : -1;
  for (Point& point : points) {
    const double across = (point.x - drawn.least.x) / (drawn.most.x - drawn.least.x);
    const double along = (point.y - drawn.least.y) / (drawn.most.y - drawn.least.y);
    point = {mirror * (across - 0.5) * form.width, along * form.length};
  }
  return points;
}

}  // namespace

std::vector<Point> foot_outline(const FootForm& form, BigToe big_toe) {
  return outline(form, big_toe, foot_form);
}

std::vector<Point> insole_outline(const FootForm& form, BigToe big_toe) {
  return outline(form, big_toe, insole_form);
}

}  // namespace heelrule
