#include "engine/drawing/sole_side.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "engine/drawing/label_rows.hpp"
#include "engine/drawing/svg.hpp"

namespace heelrule {
namespace {

// In millimetres, as all of the picture; letters are as high as the style says, at most this.
constexpr double letters = 12;
constexpr double row_height = 15;
constexpr double margin = 10;
constexpr double usual_ball_share = 0.74;

class SoleDrawing {
 public:
  explicit SoleDrawing(const SolePicture& sole) : sole_(sole) {
    const double guess = sole.heel_to_ball * 1.25;  // the heel is measured in its middle
    ball_ = std::max(sole.bend_length.value_or(guess), sole.heel_to_ball);
    heel_ = ball_ - sole.heel_to_ball;
    length_ = std::max(sole.inside_length.value_or(ball_ / usual_ball_share), ball_ + 1);
    const double highest = std::max({sole.heel_thickness, sole.fore_thickness,
                                     sole.toe_spring.value_or(0) + sole.fore_thickness});
    floor_ = 2 * row_height + highest;
    for (const auto& [at, words] :
         {std::pair(heel_, &sole.heel_words), std::pair(ball_, &sole.fore_words),
          std::pair(length_, &sole.spring_words)}) {
      if (!words->empty()) {
        labels_.push_back({100 * (margin + at) / width(), label_width(*words, letters)});
        words_.push_back(words);
      }
    }
    places_ = in_rows(labels_, width());
  }

  std::string draw() {
    const double rows = static_cast<double>(row_count(places_) + 1);
    SvgWriter svg = SvgWriter::to_scale({sole_.id, sole_.title, description()}, width(),
                                        floor_ + 8 + rows * row_height + 8, "sole");
    svg.shape({across(0), 0}, side(), true, "side");
    svg.line({across(0), floor_}, {across(width()), floor_}, "floor");
    draw_measures(svg);
    draw_words(svg);
    return svg.take();
  }

 private:
  double width() const { return length_ + 2 * margin; }
  Point at(double along, double up) const { return {margin + along, floor_ - up}; }

  double spring() const { return sole_.toe_spring.value_or(0); }

  // Underside and upper side rise together from the ball on, more and more.
  double lift(double share) const { return spring() * share * share; }

  std::vector<Point> side() const {
    constexpr int steps = 8;
    constexpr double tip_share = 0.6;  // of the thickness that is left at the tip
    std::vector<Point> points{at(0, 0), at(ball_, 0)};
    for (int step = 1; step <= steps; ++step) {
      const double share = static_cast<double>(step) / steps;
      points.push_back(at(ball_ + share * (length_ - ball_), lift(share)));
    }
    for (int step = steps; step >= 1; --step) {
      const double share = static_cast<double>(step) / steps;
      const double thickness = sole_.fore_thickness * (1 - (1 - tip_share) * share * share);
      points.push_back(at(ball_ + share * (length_ - ball_), lift(share) + thickness));
    }
    points.push_back(at(ball_, sole_.fore_thickness));
    points.push_back(at(heel_, sole_.heel_thickness));
    points.push_back(at(0, sole_.heel_thickness));
    return points;
  }

  void line(SvgWriter& svg, Point from, Point to, std::string_view kind) const {
    svg.line({across(from.x), from.y}, {across(to.x), to.y}, kind);
  }

  // A measured height: a line with a stroke across each end.
  void height(SvgWriter& svg, double along, double from, double to) const {
    constexpr double half = 4;
    line(svg, at(along, from), at(along, to), "dimension");
    for (const double up : {from, to}) {
      line(svg, at(along - half, up), at(along + half, up), "dimension");
    }
  }

  void draw_measures(SvgWriter& svg) const {
    height(svg, heel_, 0, sole_.heel_thickness);
    height(svg, ball_, 0, sole_.fore_thickness);
    if (sole_.toe_spring) {
      height(svg, length_, 0, spring());
    }
    // The rise, between the level of the ball and that of the heel.
    line(svg, at(ball_, sole_.fore_thickness), at(heel_, sole_.fore_thickness), "level");
  }

  void draw_words(SvgWriter& svg) const {
    if (!sole_.slope_words.empty()) {
      const double up = std::max(sole_.heel_thickness, sole_.fore_thickness) + 8;
      const Point middle = at((heel_ + ball_) / 2, up);
      svg.text({across(middle.x), middle.y}, sole_.slope_words, Anchor::middle, "measure");
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
      const double down = floor_ + 2 + static_cast<double>(places_[i].row + 1) * row_height;
      svg.text({across(places_[i].at * width() / 100), down}, *words_[i], places_[i].anchor,
               "measure");
    }
    const double down = floor_ + 10 + static_cast<double>(row_count(places_)) * row_height;
    const Point from = at(heel_, 0);
    const Point to = at(ball_, 0);
    svg.line({across(from.x), down}, {across(to.x), down}, "dimension");
    for (const double x : {from.x, to.x}) {
      svg.line({across(x), down - 4}, {across(x), down + 4}, "dimension");
    }
    svg.text({across((from.x + to.x) / 2), down + row_height - 2}, sole_.distance_words,
             Anchor::middle, "measure");
  }

  std::string description() const {
    std::string words;
    for (const std::string* part : {&sole_.heel_words, &sole_.fore_words, &sole_.distance_words,
                                    &sole_.slope_words, &sole_.spring_words}) {
      if (!part->empty()) {
        words += fmt::format("{}{}", words.empty() ? "" : ", ", *part);
      }
    }
    return words + ".";
  }

  const SolePicture& sole_;
  double heel_ = 0;  // where the thicknesses were measured, from the heel end
  double ball_ = 0;
  double length_ = 0;
  double floor_ = 0;
  std::vector<Label> labels_;
  std::vector<const std::string*> words_;
  std::vector<LabelPlace> places_;
};

}  // namespace

std::string draw(const SolePicture& sole) { return SoleDrawing(sole).draw(); }

}  // namespace heelrule
