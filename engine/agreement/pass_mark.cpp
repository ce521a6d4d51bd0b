#include "engine/agreement/pass_mark.hpp"

#include <algorithm>

#include "engine/agreement/proportion.hpp"

namespace heelrule {
namespace {

class PassReader {
 public:
  explicit PassReader(const PassSheet& sheet) : sheet_(sheet) {}

  PassMarks read() {
    by_ratings();
    by_judges();
    if (sheet_.acceptable) {
      std::vector<double> marks;
      marks.reserve(sheet_.students.size());
      for (const MarkedStudent& student : sheet_.students) {
        marks.push_back(student.mark);
      }
      result_.compromise = hofstee(marks, *sheet_.acceptable);
      add(PassMethod::hofstee, result_.compromise->cut);
    }
    return result_;
  }

 private:
  void by_ratings() {
    std::vector<RatedMark> rated;
    std::vector<double> on_the_border;
    for (const MarkedStudent& student : sheet_.students) {
      if (student.rating) {
        rated.push_back({static_cast<double>(*student.rating + 1), student.mark});
        if (*student.rating == sheet_.borderline) {
          on_the_border.push_back(student.mark);
        }
      }
    }
    if (rated.empty()) {
      return;
    }
    result_.regression = borderline_regression(rated, static_cast<double>(sheet_.borderline + 1));
    add(PassMethod::borderline_regression, result_.regression->cut);
    result_.group = borderline_group(on_the_border);
    add(PassMethod::borderline_group, result_.group->mean);
  }

  void by_judges() {
    if (sheet_.judges.empty()) {
      return;
    }
    const std::size_t tasks = sheet_.judges.front().chances.size();
    Ratings chances(sheet_.judges.size(), tasks);
    for (std::size_t judge = 0; judge < sheet_.judges.size(); ++judge) {
      for (std::size_t task = 0; task < tasks; ++task) {
        chances.set(judge, task, sheet_.judges[judge].chances[task]);
      }
    }
    result_.judges = angoff(chances);
    Estimate points = result_.judges->cut;
    const double point = sheet_.most / static_cast<double>(tasks);
    points.value *= point;
    points.standard_error *= point;
    points.interval.low *= point;
    points.interval.high *= point;
    add(PassMethod::angoff, points);
  }

  void add(PassMethod method, const Estimate& cut) {
    PassMark mark{method, cut, std::nullopt, {}};
    if (cut.is_known() && !sheet_.students.empty()) {
      mark.pass = static_cast<std::size_t>(
          std::count_if(sheet_.students.begin(), sheet_.students.end(),
                        [&](const MarkedStudent& one) { return one.mark >= cut.value; }));
      mark.pass_share =
          proportion(static_cast<double>(*mark.pass), static_cast<double>(sheet_.students.size()));
    }
    result_.marks.push_back(mark);
  }

  const PassSheet& sheet_;
  PassMarks result_;
};

}  // namespace

PassMarks pass_marks(const PassSheet& sheet) { return PassReader(sheet).read(); }

}  // namespace heelrule
