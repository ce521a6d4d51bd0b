#include "engine/report/json_report.hpp"

#include "engine/report/account.hpp"
#include "engine/report/doubt_account.hpp"
#include "engine/report/doubt_json.hpp"
#include "engine/report/json_parts.hpp"

namespace heelrule {
namespace {

class JsonReporter {
 public:
  JsonReporter(const Program& program, const Inspection& inspection, const Verdict& verdict,
               std::span<const std::string> languages, const Doubt* doubt)
      : program_(program),
        rules_(program.rules),
        inspection_(inspection),
        verdict_(verdict),
        doubt_(doubt),
        account_(account(program, inspection, verdict, languages)) {
    if (doubt_ != nullptr) {
      told_ = doubt_account(program, verdict, *doubt_, account_, languages);
    }
  }

  std::string write() {
    json_.begin_object();
    write_format(json_, program_, account_.title);
    about();
    safety();
    said("referrals", account_.referrals);
    json_.key("grade");
    write_grade(json_, program_, account_, verdict_);
    json_.key("score");
    score(verdict_.score);
    sections();
    findings();
    said("cautions", account_.cautions);
    said("advice", account_.advice);
    said("advice_held_back", account_.held_advice);
    json_.texts("would_settle", account_.would_settle);
    if (doubt_ != nullptr) {
      json_.key("doubt");
      write_doubt(json_, program_, *doubt_, told_);
    }
    json_.texts("usual_cautions", account_.usual_cautions);
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void about() {
    json_.key("inspection").begin_object();
    json_.text("rules", inspection_.rules)
        .text("date", inspection_.date)
        .text("observer", inspection_.observer)
        .text("client", inspection_.client)
        .text("shoe", inspection_.shoe_label)
        .text("marked", inspection_.shoe_marked)
        .text("note", inspection_.note);
    amendments();
    json_.end_object();
  }

  void amendments() {
    if (inspection_.amendments.empty()) {
      return;
    }
    json_.key("amended").begin_array();
    for (const Amendment& one : inspection_.amendments) {
      json_.begin_object();
      json_.text("answer", one.answer)
          .text("was", one.was)
          .text("when", one.when)
          .text("by", one.by)
          .text("because", one.because);
      json_.end_object();
    }
    json_.end_array();
  }

  void safety() {
    json_.truth("see_practitioner_first", verdict_.refers());
    json_.key("safety").begin_array();
    for (const SafetyAccount& told : account_.safety) {
      write_safety(json_, program_, told, verdict_.safety[told.answer]);
    }
    json_.end_array();
  }

  void score(const Score& score) {
    json_.begin_object();
    const auto points = score.points();
    json_.number_or_null("points", points.value_or(0), points.has_value())
        .number("lowest", score.lowest_points())
        .number("highest", score.highest_points())
        .number("weight_seen", score.weight / weight_step)
        .number("weight_open", score.open_weight / weight_step);
    json_.end_object();
  }

  void sections() {
    json_.key("sections").begin_array();
    for (std::size_t i = 0; i < account_.sections.size(); ++i) {
      json_.begin_object();
      json_.text("name", rules_.sections[i].name.value).text("title", account_.sections[i]);
      json_.key("score");
      score(verdict_.sections[i]);
      json_.end_object();
    }
    json_.end_array();
  }

  void findings() {
    json_.key("findings").begin_array();
    for (const FindingAccount& told : account_.findings) {
      finding(told);
    }
    json_.end_array();
  }

  void finding(const FindingAccount& told) {
    const Finding& finding = verdict_.findings[told.finding];
    json_.begin_object();
    write_finding_head(json_, program_, finding, told.title);
    json_.number_or_null("gain", finding.gain, is_judged(finding.status));
    write_finding_must(json_, program_, finding);
    json_.key("readings").begin_array();
    for (const SideReading& reading : finding.readings) {
      write_reading(json_, program_, finding, reading);
    }
    json_.end_array().key("missing").begin_array();
    for (const Missing& missing : finding.missing) {
      write_missing(json_, program_, missing);
    }
    json_.end_array().text("sentence", told.sentence);
    write_finding_reasons(json_, told.because, told.source);
    json_.texts("notes", told.notes);
    if (doubt_ != nullptr) {
      json_.key("doubt");
      write_finding_doubt(json_, program_, finding, doubt_->findings[told.finding],
                          told_.findings[told.finding]);
    }
    json_.end_object();
  }

  void said(std::string_view name, const std::vector<Said>& all) {
    json_.key(name).begin_array();
    for (const Said& one : all) {
      const Finding& finding = verdict_.findings[one.finding];
      json_.begin_object();
      write_said(json_, program_, finding, one.title, one.words);
      json_.number("gain", finding.gain);
      json_.end_object();
    }
    json_.end_array();
  }

  const Program& program_;
  const RuleSet& rules_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  const Doubt* doubt_;
  Account account_;
  DoubtAccount told_;
  JsonWriter json_;
};

}  // namespace

std::string json_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, std::span<const std::string> languages,
                        const Doubt* doubt) {
  return JsonReporter(program, inspection, verdict, languages, doubt).write();
}

}  // namespace heelrule
