#include "engine/report/doubt_json.hpp"

#include "engine/report/chance_words.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

JsonWriter& chance(JsonWriter& json, std::string_view name, double value) {
  return json.number(name, printed_chance(value));
}

void write_side(JsonWriter& json, const Program& program, const Finding& finding,
                const SideReading& reading, const SideDoubt& doubt) {
  const RuleProgram& rule = program.rule_programs[finding.rule];
  const TraitProgram& trait = program.traits[rule.trait];
  json.begin_object();
  json.text("side", in_words(reading.side));
  if (trait.type.kind == Type::Kind::number) {
    json.number("uncertainty", in_unit(printed_chance(doubt.uncertainty), trait.unit))
        .text("unit", facts(trait.unit).symbol);
  }
  json.key("bands").begin_array();
  for (std::size_t band = 0; band < doubt.bands.size(); ++band) {
    json.begin_object();
    json.text("name", band_name(program, finding.rule, band));
    chance(json, "chance", doubt.bands[band]);
    json.end_object();
  }
  json.end_array().key("guarded");
  if (doubt.guarded) {
    json.text(band_name(program, finding.rule, *doubt.guarded));
  } else {
    json.null();
  }
  json.end_object();
}

void write_reading_name(JsonWriter& json, const Program& program, const DoubtfulReading& reading) {
  json.text("trait", program.rules.traits[reading.trait].name).text("side", in_words(reading.side));
}

void write_take_again(JsonWriter& json, const Program& program, const Doubt& doubt,
                      const DoubtAccount& told) {
  json.key("take_again").begin_object();
  json.text("sentence", told.take_again_first)
      .text("of", doubt.target == Target::grade ? "grade" : "score");
  json.key("readings").begin_array();
  for (std::size_t i = 0; i < told.take_again.size(); ++i) {
    const ReadingEffect& one = doubt.take_again[i];
    json.begin_object();
    write_reading_name(json, program, doubt.readings[one.reading]);
    json.text("question", told.take_again[i]);
    chance(json, "first", one.effect.first);
    chance(json, "total", one.effect.total);
    json.end_object();
  }
  json.end_array();
  json.end_object();
}

void write_fewest(JsonWriter& json, const Program& program, const Doubt& doubt,
                  const DoubtAccount& told) {
  const auto& move = doubt.fewest.move;
  json.key("fewest_readings").begin_object();
  json.text("sentence", told.fewest).number("tried", static_cast<double>(doubt.fewest.tried));
  json.key("grade");
  if (move) {
    json.text(program.rules.grades[move->grade].name.value);
  } else {
    json.null();
  }
  json.key("readings").begin_array();
  for (const OffReading& off : move ? move->readings : std::vector<OffReading>{}) {
    const DoubtfulReading& reading = doubt.readings[off.reading];
    json.begin_object();
    write_reading_name(json, program, reading);
    json.text("recorded", value_words(program, reading.trait, reading.value, {}))
        .text("off", value_words(program, reading.trait, a_little_off(reading, off.up), {}));
    json.end_object();
  }
  json.end_array();
  json.end_object();
}

// Where a practitioner comes first the sentences are held back, and so are the ways.
void write_better(JsonWriter& json, const Program& program, const Doubt& doubt,
                  const DoubtAccount& told) {
  json.key("better_grades").begin_object();
  json.texts("sentences", told.better).key("grades").begin_array();
  for (const BetterGrade& better :
       told.better.empty() ? std::vector<BetterGrade>{} : doubt.better) {
    json.begin_object();
    json.text("grade", program.rules.grades[better.grade].name.value).key("changes");
    if (better.changes) {
      json.begin_array();
      for (const std::size_t change : *better.changes) {
        json.text(program.rules.changes[change].name);
      }
      json.end_array();
    } else {
      json.null();
    }
    json.end_object();
  }
  json.end_array();
  json.end_object();
}

}  // namespace

void write_doubt(JsonWriter& json, const Program& program, const Doubt& doubt,
                 const DoubtAccount& told) {
  json.begin_object();
  json.number("draws", static_cast<double>(doubt.draws))
      .number("clear_from", program.rules.decision.clear_from)
      .number("guard", program.rules.decision.guard)
      .text("sentence", told.grade);
  json.key("grades").begin_array();
  for (std::size_t i = 0; i < doubt.grades.size(); ++i) {
    json.begin_object();
    json.text("name", program.rules.grades[i].name.value);
    chance(json, "chance", doubt.grades[i].chance);
    chance(json, "lowest", doubt.grades[i].surely);
    chance(json, "highest", doubt.grades[i].possibly);
    json.end_object();
  }
  json.end_array();
  write_take_again(json, program, doubt, told);
  write_fewest(json, program, doubt, told);
  json.text("within_doubt", told.within_doubt).texts("guarded", told.guarded);
  write_better(json, program, doubt, told);
  json.end_object();
}

void write_finding_doubt(JsonWriter& json, const Program& program, const Finding& finding,
                         const FindingDoubt& doubt, const FindingDoubtAccount& told) {
  json.begin_object();
  json.text("words", told.words).text("sentence", told.sentence);
  chance(json, "sure", doubt.sure);
  chance(json, "pass", doubt.chances.pass);
  chance(json, "part", doubt.chances.part);
  chance(json, "fail", doubt.chances.fail);
  chance(json, "open", doubt.chances.open);
  json.key("readings").begin_array();
  for (std::size_t i = 0; i < doubt.sides.size(); ++i) {
    write_side(json, program, finding, finding.readings[i], doubt.sides[i]);
  }
  json.end_array();
  json.end_object();
}

}  // namespace heelrule
