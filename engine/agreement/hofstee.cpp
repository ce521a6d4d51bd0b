#include "engine/agreement/hofstee.hpp"

#include <algorithm>

#include "engine/agreement/resampling.hpp"

namespace heelrule {
namespace {

// A step that makes at most a thousand points, whatever the marks are out of.
double step_of(const AcceptablePass& acceptable) {
  constexpr double most_points = 1000;
  const double reach = acceptable.most_mark - acceptable.least_mark;
  return std::fmax(1, std::ceil(reach / most_points));
}

std::vector<FailsAt> curve_of(std::vector<double> marks, const AcceptablePass& acceptable) {
  std::sort(marks.begin(), marks.end());
  const double step = step_of(acceptable);
  std::vector<FailsAt> curve;
  const auto add = [&](double mark) {
    const auto below = std::lower_bound(marks.begin(), marks.end(), mark) - marks.begin();
    curve.push_back({mark, static_cast<double>(below) / static_cast<double>(marks.size())});
  };
  double mark = acceptable.least_mark;
  for (double steps = 1; mark < acceptable.most_mark; ++steps) {
    add(mark);
    mark = acceptable.least_mark + steps * step;
  }
  add(acceptable.most_mark);
  return curve;
}

double line_at(double mark, const AcceptablePass& acceptable) {
  const double along =
      (mark - acceptable.least_mark) / (acceptable.most_mark - acceptable.least_mark);
  return acceptable.most_fails - along * (acceptable.most_fails - acceptable.least_fails);
}

// Where the curve, which rises, meets the line, which falls.
FailsAt meeting(const std::vector<FailsAt>& curve, const AcceptablePass& acceptable) {
  for (std::size_t i = 0; i < curve.size(); ++i) {
    const double above = curve[i].fails - line_at(curve[i].mark, acceptable);
    if (above < 0) {
      continue;
    }
    if (i == 0) {
      return above == 0 ? curve[0] : FailsAt{unknown, unknown};
    }
    const FailsAt& before = curve[i - 1];
    const double below = line_at(before.mark, acceptable) - before.fails;
    const double along = below / (below + above);
    return {before.mark + along * (curve[i].mark - before.mark),
            before.fails + along * (curve[i].fails - before.fails)};
  }
  return {unknown, unknown};
}

}  // namespace

Hofstee hofstee(const std::vector<double>& marks, const AcceptablePass& acceptable) {
  Hofstee result;
  if (marks.empty()) {
    return result;
  }
  result.curve = curve_of(marks, acceptable);
  const FailsAt met = meeting(result.curve, acceptable);
  result.fails = met.fails;
  result.cut = resampled(met.mark, marks.size(), [&](const auto& rows) {
    std::vector<double> drawn;
    drawn.reserve(rows.size());
    for (const std::size_t row : rows) {
      drawn.push_back(marks[row]);
    }
    return meeting(curve_of(std::move(drawn), acceptable), acceptable).mark;
  });
  return result;
}

}  // namespace heelrule
