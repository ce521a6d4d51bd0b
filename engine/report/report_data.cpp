#include "engine/report/report_data.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/report/amendment_words.hpp"
#include "engine/report/client_data.hpp"
#include "engine/report/doubt_data.hpp"
#include "engine/report/finding_data.hpp"
#include "engine/report/missed_data.hpp"
#include "engine/report/readings_data.hpp"
#include "engine/report/report_pictures.hpp"
#include "engine/report/then_and_now.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

constexpr std::size_t most_questions = 10;  // that a reader takes in beside the grade

class ReportData {
 public:
  explicit ReportData(const ReportSubject& subject)
      : subject_(subject),
        program_(subject.program),
        inspection_(subject.record.inspection),
        verdict_(subject.record.verdict),
        account_(subject.account) {}

  PageData collect() {
    about();
    grade();
    sections();
    add_doubt(subject_, data_);
    data_.markup("score_picture", score_picture(subject_));
    data_.markup("feet_picture", feet_picture(subject_));
    data_.markup("plain_feet_picture", plain_feet_picture(subject_));
    data_.markup("sole_picture", sole_picture(subject_));
    add_findings(subject_, data_);
    add_readings(subject_, data_);
    amendments();
    advice();
    add_missed(subject_, data_);
    add_client_words(subject_, data_);
    add_then_and_now(subject_, data_);
    return std::move(data_);
  }

 private:
  void about() {
    data_.words("title", account_.title);
    data_.words("client", inspection_.client);
    data_.words("shoe", inspection_.shoe_label);
    data_.words("marked", inspection_.shoe_marked);
    data_.words("observer", inspection_.observer);
    data_.words("date", inspection_.date);
    data_.words("rules", program_.rules.name);
    data_.words("edition", program_.rules.edition);
    data_.words("other_rules", other_rules(program_, inspection_));
    data_.words("note", inspection_.note);
  }

  void grade() {
    data_.words("grade", account_.grade);
    data_.fact("stands", verdict_.stands);
    data_.fact("provisional", verdict_.grade && !verdict_.stands);
    data_.fact("refers", verdict_.refers());
    data_.words("means", account_.means);
    data_.words("points", points_words(program_, verdict_));
    if (verdict_.score.points()) {
      data_.words("score", score_sentence(program_, verdict_));
    }
    data_.fact("show_score", program_.rules.client.score && verdict_.score.points());
    data_.words("certainty", account_.certainty);
    data_.words("caps", account_.caps);
    const std::vector<std::string>& open = account_.would_settle;
    data_.fact("any_to_settle", !open.empty());
    for (std::size_t i = 0; i < open.size() && i < most_questions; ++i) {
      data_.add("to_settle").words("words", open[i]);
    }
    if (open.size() > most_questions) {
      data_.words("more_to_settle", fmt::format("{}", open.size() - most_questions));
    }
    boundaries();
  }

  // Where each grade begins, best first.
  void boundaries() {
    const std::vector<Grade>& grades = program_.rules.grades;
    for (std::size_t i = 0; i < grades.size(); ++i) {
      PageData& grade = data_.add("grades");
      grade.words("name", grades[i].name.value);
      grade.words("from", with_places(program_.grade_bounds[i] / 1000, 3));
      grade.words("words", grades[i].means.in(subject_.languages));
      grade.fact("is_it", verdict_.grade == i);
      grade.fact("by_score_alone", verdict_.uncapped == i && verdict_.grade != i);
    }
  }

  static void sum(const Score& score, PageData& row) {
    row.words("earned", with_places(score.earned / full_credit / weight_step, 2));
    row.words("weight", with_places(score.weight / weight_step, 3));
    row.words("open", score.open_weight > 0 ? with_places(score.open_weight / weight_step, 3) : "");
  }

  void sections() {
    for (std::size_t i = 0; i < account_.sections.size(); ++i) {
      const Score& score = verdict_.sections[i];
      if (score.weight + score.open_weight > 0) {
        PageData& row = data_.add("sections");
        row.words("name", account_.sections[i]);
        const auto points = score.points();
        row.words("points", points ? fmt::format("{:.1f}", *points) : "not seen");
        sum(score, row);
      }
    }
    data_.fact("any_open_weight", verdict_.score.open_weight > 0);
    if (verdict_.score.weight + verdict_.score.open_weight > 0) {
      PageData& all = data_.add("total");
      all.words("points", points_words(program_, verdict_));
      sum(verdict_.score, all);
    }
  }

  void amendments() {
    const auto words = amendment_words(program_.rules, inspection_, subject_.languages);
    data_.fact("any_amended", !words.empty());
    data_.each("amended", words);
  }

  void advice() {
    data_.fact("any_advice", !account_.advice.empty());
    for (const Said& said : account_.advice) {
      PageData& item = data_.add("advice");
      item.words("title", said.title);
      item.words("words", said.words);
      item.words("gain", gain_words(verdict_.findings[said.finding].gain));
    }
    if (!account_.held_advice.empty()) {
      data_.words("held_back", held_back_words(account_.held_advice.size()));
    }
  }

  const ReportSubject& subject_;
  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  const Account& account_;
  PageData data_;
};

}  // namespace

PageData report_data(const ReportSubject& subject) { return ReportData(subject).collect(); }

}  // namespace heelrule
