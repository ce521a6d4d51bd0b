#include "engine/report/pass_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/report/agreement_json.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/text_page.hpp"

namespace heelrule {

std::string points_words(double value) { return std::isnan(value) ? "–" : with_places(value, 1); }

namespace {

std::string points_and_interval(const Estimate& cut) {
  if (!cut.interval.is_known()) {
    return points_words(cut.value);
  }
  return fmt::format("{} ({} to {})", points_words(cut.value), points_words(cut.interval.low),
                     points_words(cut.interval.high));
}

class PassWriter {
 public:
  PassWriter(const PassSheet& sheet, const PassMarks& marks) : sheet_(sheet), marks_(marks) {}

  std::string write() {
    json_.begin_object();
    json_.text("format", "heelrule pass").number("version", pass_json_version);
    json_.text("title", sheet_.title).number("most", sheet_.most);
    json_.number("students", static_cast<double>(sheet_.students.size()));
    json_.number("confidence", confidence);
    json_.texts("said", pass_remarks(sheet_, marks_));
    json_.key("pass_marks").begin_array();
    for (const PassMark& mark : marks_.marks) {
      one_mark(mark);
    }
    json_.end_array();
    regression();
    group();
    judges();
    compromise();
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void one_mark(const PassMark& mark) {
    json_.begin_object().text("method", key_of(mark.method));
    write_estimate(json_, "cut", mark.cut);
    json_.number_or_null("pass", static_cast<double>(mark.pass.value_or(0)), mark.pass.has_value());
    json_.key("pass_share");
    if (mark.pass) {
      json_.begin_object().number("value", mark.pass_share.value);
      json_.number("low", mark.pass_share.interval.low);
      json_.number("high", mark.pass_share.interval.high).end_object();
    } else {
      json_.null();
    }
    json_.text("says", pass_mark_words(sheet_, marks_, mark)).end_object();
  }

  void regression() {
    json_.key("borderline_regression");
    if (!marks_.regression) {
      json_.null();
      return;
    }
    const BorderlineRegression& line = *marks_.regression;
    json_.begin_object().number("students", line.students);
    write_number(json_, "slope", line.slope);
    write_number(json_, "at_zero", line.at_zero);
    write_number(json_, "explained", line.explained);
    write_number(json_, "deviation", line.deviation);
    json_.end_object();
  }

  void group() {
    json_.key("borderline_group");
    if (!marks_.group) {
      json_.null();
      return;
    }
    json_.begin_object().number("students", marks_.group->students);
    write_number(json_, "mean", marks_.group->mean.value);
    write_number(json_, "median", marks_.group->median);
    json_.end_object();
  }

  void numbers(std::string_view name, const std::vector<double>& values) {
    json_.key(name).begin_array();
    for (const double value : values) {
      json_.number(value);
    }
    json_.end_array();
  }

  void judges() {
    json_.key("angoff");
    if (!marks_.judges) {
      json_.null();
      return;
    }
    const Angoff& found = *marks_.judges;
    json_.begin_object();
    json_.key("judges").begin_array();
    for (std::size_t i = 0; i < found.judge_cuts.size(); ++i) {
      json_.begin_object().text("judge", sheet_.judges[i].name);
      json_.number("cut", found.judge_cuts[i]).end_object();
    }
    json_.end_array();
    numbers("task_means", found.task_means);
    write_estimate(json_, "tasks", found.cut);
    write_number(json_, "deviation", found.deviation);
    write_number(json_, "share", found.share);
    json_.end_object();
  }

  void compromise() {
    json_.key("hofstee");
    if (!marks_.compromise) {
      json_.null();
      return;
    }
    json_.begin_object();
    write_number(json_, "fails", marks_.compromise->fails);
    json_.key("curve").begin_array();
    for (const FailsAt& at : marks_.compromise->curve) {
      json_.begin_object().number("mark", at.mark).number("fails", at.fails).end_object();
    }
    json_.end_array().end_object();
  }

  const PassSheet& sheet_;
  const PassMarks& marks_;
  JsonWriter json_;
};

std::string why_unknown(const PassMarks& marks, PassMethod method) {
  switch (method) {
    case PassMethod::borderline_regression:
      return "The line needs three students and two different ratings.";
    case PassMethod::borderline_group:
      return "Nobody was rated to lie on the border.";
    case PassMethod::angoff:
      return "There are no judgements.";
    case PassMethod::hofstee:
      return marks.compromise && marks.compromise->curve.empty()
                 ? "There are no marks."
                 : "No mark in the acceptable range fails an acceptable share of the students: "
                   "either the range or the work set is to be looked at.";
  }
  return {};
}

}  // namespace

std::string_view key_of(PassMethod method) {
  switch (method) {
    case PassMethod::borderline_regression:
      return "borderline_regression";
    case PassMethod::borderline_group:
      return "borderline_group";
    case PassMethod::angoff:
      return "angoff";
    case PassMethod::hofstee:
      return "hofstee";
  }
  return {};
}

std::string_view title_of(PassMethod method) {
  switch (method) {
    case PassMethod::borderline_regression:
      return "Borderline regression";
    case PassMethod::borderline_group:
      return "Borderline group";
    case PassMethod::angoff:
      return "Angoff";
    case PassMethod::hofstee:
      return "Hofstee (as a cross-check)";
  }
  return {};
}

std::string pass_mark_words(const PassSheet& sheet, const PassMarks& marks, const PassMark& mark) {
  if (!mark.cut.is_known()) {
    return why_unknown(marks, mark.method);
  }
  switch (mark.method) {
    case PassMethod::borderline_regression:
      return fmt::format(
          "Marks rise by {} a step of the rating, and the line reads {} at `{}`; it explains {} of "
          "their spread.",
          points_words(marks.regression->slope), points_words(mark.cut.value),
          sheet.ratings[sheet.borderline], share_words(marks.regression->explained));
    case PassMethod::borderline_group:
      return fmt::format("The mean mark of the {:.0f} rated `{}`; their median is {}.",
                         marks.group->students, sheet.ratings[sheet.borderline],
                         points_words(marks.group->median));
    case PassMethod::angoff:
      return fmt::format("{} somebody who just passes to get {} of {} tasks right{}.",
                         sheet.judges.size() == 1
                             ? std::string("One judge expects")
                             : fmt::format("{} judges expect", sheet.judges.size()),
                         with_places(marks.judges->cut.value, 2), marks.judges->task_means.size(),
                         std::isnan(marks.judges->deviation)
                             ? std::string{}
                             : fmt::format("; they differ by {} (standard deviation)",
                                           with_places(marks.judges->deviation, 2)));
    case PassMethod::hofstee:
      return fmt::format("There {} fail, which meets what was said to be acceptable.",
                         share_words(marks.compromise->fails));
  }
  return {};
}

std::vector<std::string> pass_remarks(const PassSheet& sheet, const PassMarks& marks) {
  constexpr std::size_t few_students = 30;
  std::vector<std::string> said;
  double lowest = unknown;
  double highest = unknown;
  double error = 0;
  for (const PassMark& mark : marks.marks) {
    lowest = std::fmin(lowest, mark.cut.value);
    highest = std::fmax(highest, mark.cut.value);
    error = std::fmax(error, std::isnan(mark.cut.standard_error) ? 0 : mark.cut.standard_error);
  }
  if (highest - lowest > 2 * error && highest > lowest) {
    said.push_back(fmt::format(
        "The methods lie {} points apart, which is more than their doubt. They ask different "
        "things: "
        "what students at the border reach, what judges expect, what a school can bear. Choose one "
        "beforehand, and say why.",
        points_words(highest - lowest)));
  }
  if (!sheet.students.empty() && sheet.students.size() < few_students) {
    said.push_back(fmt::format(
        "{} students: a pass mark from so few moves much from class to class (common practice: 30 "
        "and more).",
        sheet.students.size()));
  }
  return said;
}

std::string pass_json(const PassSheet& sheet, const PassMarks& marks) {
  return PassWriter(sheet, marks).write();
}

std::string pass_text(const PassSheet& sheet, const PassMarks& marks, bool colour) {
  TextPage page(colour);
  page.title(sheet.title.empty() ? "Pass mark" : sheet.title);
  page.line(fmt::format(
      "{}marks from 0 to {}",
      sheet.students.empty() ? std::string{} : fmt::format("{} students · ", sheet.students.size()),
      shortest(sheet.most)));
  page.line("In brackets: the interval that holds the true figure 19 times in 20.");
  for (const PassMark& mark : marks.marks) {
    page.heading(title_of(mark.method));
    page.item(fmt::format(
        "Pass mark {}{}", points_and_interval(mark.cut),
        std::isnan(mark.cut.standard_error)
            ? std::string{}
            : fmt::format(", standard error {}", with_places(mark.cut.standard_error, 2))));
    page.item(pass_mark_words(sheet, marks, mark));
    if (mark.pass) {
      page.item(fmt::format("{} of {} would pass, {} ({} to {}).", *mark.pass,
                            sheet.students.size(), share_words(mark.pass_share.value),
                            share_words(mark.pass_share.interval.low),
                            share_words(mark.pass_share.interval.high)));
    }
  }
  const std::vector<std::string> said = pass_remarks(sheet, marks);
  if (!said.empty()) {
    page.heading("To be borne in mind");
    for (const std::string& sentence : said) {
      page.item(sentence);
    }
  }
  return page.take();
}

}  // namespace heelrule
