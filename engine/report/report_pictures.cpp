#include "engine/report/report_pictures.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/drawing/feet.hpp"
#include "engine/drawing/score_bars.hpp"
#include "engine/drawing/sole_side.hpp"
#include "engine/report/named_measure.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

std::string words_or_none(const std::optional<NamedMeasure>& measure) {
  return measure ? measure->words : "";
}

// `243 × 94.3 mm`, from `243 mm` and `94.3 mm`.
std::string by(const NamedMeasure& length, const NamedMeasure& width) {
  const std::string_view unit = " mm";
  std::string_view first = length.words;
  if (first.ends_with(unit) && std::string_view(width.words).ends_with(unit)) {
    first.remove_suffix(unit.size());
  }
  return fmt::format("{} × {}", first, width.words);
}

class FootMaker {
 public:
  FootMaker(const ReportSubject& subject, Side side) : subject_(subject), side_(side) {}

  FootPicture make() {
    FootPicture foot;
    foot.name = fmt::format("{} foot", in_words(side_));
    foot.standing = form("standing", "foot_length", "foot_width", "ball_length", foot);
    foot.seated = form("seated", "foot_length_seated", "foot_width_seated", "", foot);
    foot.insole = form("insole", "insole_length", "insole_width", "insole_ball_length", foot);
    if (const auto inside = measure("insole_length"); inside && !foot.insole) {
      foot.insole_length = inside->value;
      foot.rows.push_back(fmt::format("insole {} long", inside->words));
    }
    foot.space_in_front = words_or_none(measure("toe_allowance"));
    foot.space_beside = words_or_none(measure("width_allowance"));
    return foot;
  }

 private:
  std::optional<NamedMeasure> measure(std::string_view trait) const {
    const auto found = named_measure(subject_, trait, side_);
    return found ? found : named_measure(subject_, trait, Side::none);
  }

  std::optional<FootForm> form(std::string_view name, std::string_view length,
                               std::string_view width, std::string_view ball,
                               FootPicture& foot) const {
    const auto long_by = measure(length);
    const auto wide_by = measure(width);
    if (!long_by || !wide_by || long_by->value <= 0 || wide_by->value <= 0) {
      return std::nullopt;
    }
    foot.rows.push_back(fmt::format("{} {}", name, by(*long_by, *wide_by)));
    const auto joint = ball.empty() ? std::nullopt : measure(ball);
    return FootForm{long_by->value, wide_by->value, joint ? joint->value : 0};
  }

  const ReportSubject& subject_;
  Side side_;
};

FeetPicture feet_of(const ReportSubject& subject) {
  return {"feet", "The feet on their insoles, from above", FootMaker(subject, Side::left).make(),
          FootMaker(subject, Side::right).make()};
}

std::optional<double> value_of(const std::optional<NamedMeasure>& measure) {
  return measure ? std::optional(measure->value) : std::nullopt;
}

std::string named(std::string_view name, const std::optional<NamedMeasure>& measure) {
  return measure ? fmt::format("{} {}", name, measure->words) : "";
}

std::optional<SolePicture> sole_of(const ReportSubject& subject, Side side) {
  const auto measure = [&](std::string_view trait) {
    const auto found = named_measure(subject, trait, side);
    return found ? found : named_measure(subject, trait, Side::none);
  };
  const auto heel = measure("heel_thickness");
  const auto fore = measure("fore_thickness");
  const auto distance = measure("heel_to_ball");
  if (!heel || !fore || !distance || heel->value < 0 || fore->value < 0 || distance->value <= 0) {
    return std::nullopt;
  }
  SolePicture sole;
  sole.heel_thickness = heel->value;
  sole.fore_thickness = fore->value;
  sole.heel_to_ball = distance->value;
  const auto spring = measure("toe_spring");
  sole.toe_spring = value_of(spring);
  sole.bend_length = value_of(measure("bend_length"));
  sole.inside_length = value_of(measure("insole_length"));
  sole.heel_words = named("heel", heel);
  sole.fore_words = named("ball", fore);
  sole.distance_words = distance->words;
  sole.spring_words = named("spring", spring);
  const std::string rise = named("rise", measure("sole_rise"));
  const std::string slope = named("slope", measure("heel_pitch"));
  sole.slope_words = rise + (rise.empty() || slope.empty() ? "" : ", ") + slope;
  return sole;
}

bool are_alike(const SolePicture& a, const SolePicture& b) {
  return a.heel_words == b.heel_words && a.fore_words == b.fore_words &&
         a.distance_words == b.distance_words && a.spring_words == b.spring_words &&
         a.slope_words == b.slope_words;
}

std::string drawn(SolePicture sole, std::string_view side) {
  sole.id = fmt::format("sole-{}", side);
  sole.title = fmt::format("The sole from the side, {}", side);
  return fmt::format("<p class=\"side-name\">{}</p>{}", side, draw(sole));
}

}  // namespace

std::string feet_picture(const ReportSubject& subject) {
  const FeetPicture feet = feet_of(subject);
  return feet.left.standing || feet.right.standing ? draw(feet) : "";
}

std::string plain_feet_picture(const ReportSubject& subject) {
  FeetPicture feet = feet_of(subject);
  for (FootPicture* foot : {&feet.left, &feet.right}) {
    foot->rows.clear();
    foot->space_beside.clear();
  }
  return feet.left.standing || feet.right.standing ? draw(feet) : "";
}

std::string sole_picture(const ReportSubject& subject) {
  const auto left = sole_of(subject, Side::left);
  const auto right = sole_of(subject, Side::right);
  if (left && right && are_alike(*left, *right)) {
    return drawn(*left, "both");
  }
  return (left ? drawn(*left, "left") : "") + (right ? drawn(*right, "right") : "");
}

std::string score_picture(const ReportSubject& subject) {
  const Verdict& verdict = subject.record.verdict;
  ScoreBars bars{"score", "The score and its sections", {}, {}};
  const auto add = [&](const std::string& name, const Score& score, std::string words,
                       bool is_sum) {
    bars.bars.push_back({name, score.points(), score.lowest_points(), score.highest_points(),
                         std::move(words), is_sum});
  };
  if (!verdict.score.points()) {
    return "";
  }
  add("All together", verdict.score, points_and_reach(subject.program, verdict), true);
  for (std::size_t i = 0; i < verdict.sections.size(); ++i) {
    const Score& score = verdict.sections[i];
    if (score.weight + score.open_weight > 0) {
      add(subject.account.sections[i], score, section_points_words(score), false);
    }
  }
  const std::vector<Grade>& grades = subject.program.rules.grades;
  for (std::size_t i = 0; i < grades.size(); ++i) {
    bars.marks.push_back({subject.program.grade_bounds[i] / 1000, grades[i].name.value});
  }
  return draw(bars);
}

}  // namespace heelrule
