#include "engine/report/json_parts.hpp"

#include "engine/report/value_words.hpp"
#include "engine/scoring/limit.hpp"

namespace heelrule {
namespace {

void write_grade_name(JsonWriter& json, const Program& program, std::string_view key,
                      std::optional<std::size_t> grade) {
  json.key(key);
  if (grade) {
    json.text(program.rules.grades[*grade].name.value);
  } else {
    json.null();
  }
}

void write_other_grades(JsonWriter& json, const Program& program, const Verdict& verdict) {
  write_grade_name(json, program, "by_score_alone", verdict.uncapped);
  write_grade_name(json, program, "worst_possible", verdict.lowest_grade);
  write_grade_name(json, program, "best_possible", verdict.highest_grade);
}

}  // namespace

std::string band_name(const Program& program, std::size_t rule, std::size_t band) {
  const Rule& written = program.rules.rules[rule];
  return written.bands.empty() ? band_words(program, rule, band) : written.bands[band].name.value;
}

void write_format(JsonWriter& json, const Program& program, std::string_view title) {
  json.text("format", "heelrule verdict").number("version", json_report_version);
  json.key("rules").begin_object();
  json.text("name", program.rules.name).text("title", title).text("edition", program.rules.edition);
  json.end_object();
}

void write_safety(JsonWriter& json, const Program& program, const SafetyAccount& told,
                  const SafetyAnswer& answer) {
  json.begin_object();
  json.text("name", program.rules.traits[program.rules.safety[answer.question].trait].name)
      .text("question", told.question)
      .text("answer", answer.yes     ? "yes"
                      : answer.asked ? "no"
                                     : "not answered")
      .text("referral", told.referral)
      .text("reason", told.reason);
  json.key("sides").begin_array();
  for (const Side side : answer.sides) {
    if (side != Side::none) {
      json.text(in_words(side));
    }
  }
  json.end_array().texts("notes", told.notes);
  json.end_object();
}

void write_grade(JsonWriter& json, const Program& program, const Account& account,
                 const Verdict& verdict) {
  json.begin_object();
  write_grade_name(json, program, "name", verdict.grade);
  json.text("means", account.means).truth("stands", verdict.stands);
  write_other_grades(json, program, verdict);
  json.text("certainty", account.certainty).text("caps", account.caps);
  json.end_object();
}

void write_grade_names(JsonWriter& json, const Program& program, const Verdict& verdict) {
  json.begin_object();
  write_grade_name(json, program, "name", verdict.grade);
  json.truth("stands", verdict.stands);
  write_other_grades(json, program, verdict);
  json.end_object();
}

void write_finding_head(JsonWriter& json, const Program& program, const Finding& finding,
                        std::string_view title) {
  const Rule& rule = program.rules.rules[finding.rule];
  json.text("rule", rule.name)
      .text("title", title)
      .text("section", rule.section.value)
      .text("reads", rule.reads.value)
      .text("status", in_words(finding.status))
      .number("weight", finding.weight / weight_step)
      .number_or_null("credit", finding.credit / full_credit, is_judged(finding.status));
}

void write_rule(JsonWriter& json, const Program& program, std::size_t rule, Side side) {
  json.text("rule", program.rules.rules[rule].name);
  if (side != Side::none) {
    json.text("side", in_words(side));
  }
}

void write_finding_must(JsonWriter& json, const Program& program, const Finding& finding) {
  json.truth("must", program.rules.rules[finding.rule].caps.has_value());
  write_grade_name(json, program, "caps_at", finding.cap);
}

void write_reading(JsonWriter& json, const Program& program, const Finding& finding,
                   const SideReading& reading) {
  const RuleProgram& prepared = program.rule_programs[finding.rule];
  const TraitProgram& trait = program.traits[prepared.trait];
  json.begin_object();
  json.text("side", in_words(reading.side))
      .text("value", value_words(program, prepared.trait, reading.value, prepared.cuts));
  if (trait.type.kind == Type::Kind::number) {
    json.number("number", in_unit(reading.value, trait.unit))
        .text("unit", facts(trait.unit).symbol);
  }
  json.text("band", band_name(program, finding.rule, reading.band))
      .number("credit", reading.credit / full_credit);
  if (const auto limit = limit_of(prepared, reading)) {
    json.number("limit", in_unit(limit->at, trait.unit))
        .number(limit->value_is_short ? "short_by" : "over_by",
                in_unit(limit->distance, trait.unit));
  }
  json.end_object();
}

void write_missing(JsonWriter& json, const Program& program, const Missing& missing) {
  json.begin_object();
  json.text("trait", program.rules.traits[missing.trait].name).text("side", in_words(missing.side));
  json.end_object();
}

void write_finding_reasons(JsonWriter& json, std::string_view because, std::string_view source) {
  json.text("because", because).text("source", source);
}

void write_said(JsonWriter& json, const Program& program, const Finding& finding,
                std::string_view title, std::string_view words) {
  json.text("rule", program.rules.rules[finding.rule].name)
      .text("title", title)
      .text("words", words);
}

}  // namespace heelrule
