#include "engine/report/json_report.hpp"

#include <optional>

#include "engine/report/account.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

class JsonReporter {
 public:
  JsonReporter(const Program& program, const Inspection& inspection, const Verdict& verdict,
               std::span<const std::string> languages)
      : program_(program),
        rules_(program.rules),
        inspection_(inspection),
        verdict_(verdict),
        account_(account(program, inspection, verdict, languages)) {}

  std::string write() {
    json_.begin_object();
    json_.text("format", "heelrule verdict").number("version", json_report_version);
    json_.key("rules").begin_object();
    json_.text("name", rules_.name).text("title", account_.title).text("edition", rules_.edition);
    json_.end_object();
    about();
    safety();
    said("referrals", account_.referrals);
    grade();
    json_.key("score");
    score(verdict_.score);
    sections();
    findings();
    said("cautions", account_.cautions);
    said("advice", account_.advice);
    said("advice_held_back", account_.held_advice);
    texts("would_settle", account_.would_settle);
    texts("usual_cautions", account_.usual_cautions);
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
    json_.end_object();
  }

  void texts(std::string_view name, const std::vector<std::string>& all) {
    json_.key(name).begin_array();
    for (const std::string& one : all) {
      json_.text(one);
    }
    json_.end_array();
  }

  void safety() {
    json_.truth("see_practitioner_first", verdict_.refers());
    json_.key("safety").begin_array();
    for (const SafetyAccount& told : account_.safety) {
      const SafetyAnswer& answer = verdict_.safety[told.answer];
      json_.begin_object();
      json_.text("name", rules_.traits[rules_.safety[answer.question].trait].name)
          .text("question", told.question)
          .text("answer", answer.yes     ? "yes"
                          : answer.asked ? "no"
                                         : "not asked")
          .text("referral", told.referral);
      json_.end_object();
    }
    json_.end_array();
  }

  void grade_name(std::string_view name, std::optional<std::size_t> grade) {
    json_.key(name);
    if (grade) {
      json_.text(rules_.grades[*grade].name.value);
    } else {
      json_.null();
    }
  }

  void grade() {
    json_.key("grade").begin_object();
    grade_name("name", verdict_.grade);
    json_.text("means", account_.means).truth("stands", verdict_.stands);
    grade_name("by_score_alone", verdict_.uncapped);
    grade_name("worst_possible", verdict_.lowest_grade);
    grade_name("best_possible", verdict_.highest_grade);
    json_.text("certainty", account_.certainty);
    json_.text("caps", account_.caps);
    json_.end_object();
  }

  void score(const Score& score) {
    json_.begin_object();
    json_.key("points");
    if (const auto points = score.points()) {
      json_.number(*points);
    } else {
      json_.null();
    }
    json_.number("lowest", score.lowest_points())
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
    const Rule& rule = rules_.rules[finding.rule];
    json_.begin_object();
    json_.text("rule", rule.name)
        .text("title", told.title)
        .text("section", rule.section.value)
        .text("reads", rule.reads.value)
        .text("status", in_words(finding.status))
        .number("weight", finding.weight / weight_step);
    const bool seen = finding.status == Status::pass || finding.status == Status::part ||
                      finding.status == Status::fail;
    json_.key("credit");
    if (seen) {
      json_.number(finding.credit / full_credit);
      json_.number("gain", finding.gain);
    } else {
      json_.null();
    }
    json_.truth("must", rule.caps.has_value());
    readings(finding);
    missing(finding);
    json_.text("sentence", told.sentence).text("because", told.because).text("source", told.source);
    texts("notes", told.notes);
    json_.end_object();
  }

  void readings(const Finding& finding) {
    const RuleProgram& prepared = program_.rule_programs[finding.rule];
    const TraitProgram& trait = program_.traits[prepared.trait];
    const bool is_number = trait.type.kind == Type::Kind::number;
    json_.key("readings").begin_array();
    for (const SideReading& reading : finding.readings) {
      json_.begin_object();
      json_.text("side", in_words(reading.side))
          .text("value", value_words(program_, prepared.trait, reading.value, prepared.cuts));
      if (is_number) {
        json_.number("number", in_unit(reading.value, trait.unit))
            .text("unit", facts(trait.unit).symbol)
            .text("band", rules_.rules[finding.rule].bands[reading.band].name.value);
      }
      json_.number("credit", reading.credit / full_credit);
      if (reading.limit) {
        json_.number("limit", in_unit(reading.limit->at, trait.unit))
            .number(reading.limit->value_is_short ? "short_by" : "over_by",
                    in_unit(reading.limit->distance, trait.unit));
      }
      json_.end_object();
    }
    json_.end_array();
  }

  void missing(const Finding& finding) {
    json_.key("missing").begin_array();
    for (const Missing& one : finding.missing) {
      json_.begin_object();
      json_.text("trait", rules_.traits[one.trait].name).text("side", in_words(one.side));
      json_.end_object();
    }
    json_.end_array();
  }

  void said(std::string_view name, const std::vector<Said>& all) {
    json_.key(name).begin_array();
    for (const Said& one : all) {
      const Finding& finding = verdict_.findings[one.finding];
      json_.begin_object();
      json_.text("rule", rules_.rules[finding.rule].name)
          .text("title", one.title)
          .text("words", one.words)
          .number("gain", finding.gain);
      json_.end_object();
    }
    json_.end_array();
  }

  const Program& program_;
  const RuleSet& rules_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  Account account_;
  JsonWriter json_;
};

}  // namespace

std::string json_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, std::span<const std::string> languages) {
  return JsonReporter(program, inspection, verdict, languages).write();
}

}  // namespace heelrule
