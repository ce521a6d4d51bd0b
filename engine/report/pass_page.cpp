#include "engine/report/pass_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/drawing/interval_rows.hpp"
#include "engine/drawing/plane.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/page_data.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/page_quotes.hpp"

namespace heelrule {

std::string_view pass_page_template();

namespace {

class PassPage {
 public:
  PassPage(const PassSheet& sheet, const PassMarks& marks) : sheet_(sheet), marks_(marks) {}

  std::string write() {
    const std::string title = sheet_.title.empty() ? "Pass mark" : sheet_.title;
    data_.words("title", title);
    data_.each("head", {fmt::format("{} students", sheet_.students.size()),
                        fmt::format("marks from 0 to {}", shortest(sheet_.most))});
    for (const PassMark& mark : marks_.marks) {
      one_mark(mark);
    }
    const std::vector<std::string> said = pass_remarks(sheet_, marks_);
    data_.fact("has_said", !said.empty());
    data_.each("said", page_quotes(said));
    PageFrame frame;
    frame.title = title;
    frame.running_left = title;
    frame.kind = "pass";
    frame.body = *fill_template(pass_page_template(), data_);
    return framed_page(frame);
  }

 private:
  void one_mark(const PassMark& mark) {
    PageData& one = data_.add("marks");
    one.words("method", title_of(mark.method));
    one.words("cut", points_words(mark.cut.value));
    one.words("interval", mark.cut.interval.is_known()
                              ? fmt::format("{} to {}", points_words(mark.cut.interval.low),
                                            points_words(mark.cut.interval.high))
                              : "–");
    one.words("error",
              std::isnan(mark.cut.standard_error) ? "–" : with_places(mark.cut.standard_error, 2));
    one.words("pass",
              mark.pass ? fmt::format("{} of {}", *mark.pass, sheet_.students.size()) : "–");
    one.words("says", page_quotes(pass_mark_words(sheet_, marks_, mark)));
    if (mark.cut.is_known()) {
      add_picture(mark, one);
    }
  }

  void add_picture(const PassMark& mark, PageData& one) const {
    switch (mark.method) {
      case PassMethod::borderline_regression:
        one.markup("picture", draw(regression(mark)));
        one.words("caption",
                  "Each circle is a student; ratings count from the worst. The pass mark is where "
                  "the line stands over the border.");
        return;
      case PassMethod::borderline_group:
        return;
      case PassMethod::angoff:
        one.markup("picture", draw(judges(mark)));
        one.words("caption", "What each judge expects, in points, and the mean of all.");
        return;
      case PassMethod::hofstee:
        one.markup("picture", draw(compromise(mark)));
        one.words("caption",
                  "The curve is the share that would fail at each mark; the broken line leads from "
                  "the most fails that are acceptable to the fewest.");
        return;
    }
  }

  Plane regression(const PassMark& mark) const {
    Plane plane;
    plane.id = "regression";
    plane.title = "Marks over ratings";
    plane.description = page_quotes(pass_mark_words(sheet_, marks_, mark));
    plane.across = "rating, from the worst";
    plane.places = sheet_.ratings;
    plane.up = "mark";
    for (const MarkedStudent& student : sheet_.students) {
      if (student.rating) {
        plane.points.push_back(
            {{static_cast<double>(*student.rating + 1), student.mark}, PointMark::usual});
      }
    }
    const BorderlineRegression& line = *marks_.regression;
    const double border = static_cast<double>(sheet_.borderline + 1);
    const auto best = static_cast<double>(sheet_.ratings.size());
    plane.lines.push_back(
        {{{1, line.at_zero + line.slope}, {best, line.at_zero + line.slope * best}},
         PlaneLineKind::main,
         "line of all marks"});
    plane.lines.push_back(
        {{{border, 0.0}, {border, mark.cut.value}, {1, mark.cut.value}}, PlaneLineKind::limit, {}});
    plane.lines.back().through.front().y = std::fmin(mark.cut.value, lowest_mark());
    plane.lines.push_back({{{best, mark.cut.value}},
                           PlaneLineKind::thin,
                           fmt::format("pass mark {}", points_words(mark.cut.value))});
    return plane;
  }

  double lowest_mark() const {
    double lowest = HUGE_VAL;
    for (const MarkedStudent& student : sheet_.students) {
      lowest = std::fmin(lowest, student.mark);
    }
    return lowest;
  }

  IntervalRows judges(const PassMark& mark) const {
    const double point = sheet_.most / static_cast<double>(marks_.judges->task_means.size());
    IntervalRows picture{"judges",    "What judges expect",         0,
                         sheet_.most, axis_strokes(0, sheet_.most), {}};
    for (std::size_t i = 0; i < sheet_.judges.size(); ++i) {
      const double cut = marks_.judges->judge_cuts[i] * point;
      picture.rows.push_back(
          {sheet_.judges[i].name, cut, unknown, unknown, points_words(cut), false});
    }
    picture.rows.push_back({"mean of all", mark.cut.value, mark.cut.interval.low,
                            mark.cut.interval.high, points_words(mark.cut.value), false});
    return picture;
  }

  Plane compromise(const PassMark& mark) const {
    const AcceptablePass& acceptable = *sheet_.acceptable;
    Plane plane;
    plane.id = "compromise";
    plane.title = "Who would fail at each mark";
    plane.description = page_quotes(pass_mark_words(sheet_, marks_, mark));
    plane.across = "pass mark";
    plane.up = "share that fails, percent";
    PlaneLine curve{{}, PlaneLineKind::main, "who fails"};
    for (const FailsAt& at : marks_.compromise->curve) {
      curve.through.push_back({at.mark, 100 * at.fails});
    }
    plane.lines.push_back(std::move(curve));
    plane.lines.push_back({{{acceptable.least_mark, 100 * acceptable.most_fails},
                            {acceptable.most_mark, 100 * acceptable.least_fails}},
                           PlaneLineKind::limit,
                           "acceptable"});
    plane.points.push_back({{mark.cut.value, 100 * marks_.compromise->fails}, PointMark::far});
    return plane;
  }

  const PassSheet& sheet_;
  const PassMarks& marks_;
  PageData data_;
};

}  // namespace

std::string pass_page(const PassSheet& sheet, const PassMarks& marks) {
  return PassPage(sheet, marks).write();
}

}  // namespace heelrule
