// Many verdicts in lines say what each report says alone.
#include <catch2/catch.hpp>

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_report.hpp"
#include "engine/report/short_lines.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/verdict_lines.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// JSON without the white space between its tokens.
std::string squeezed(const std::string& json) {
  std::string text;
  bool inside = false;
  for (std::size_t i = 0; i < json.size(); ++i) {
    const char c = json[i];
    if (inside && c == '\\') {
      text += json.substr(i++, 2);
      continue;
    }
    inside = inside != (c == '"');
    if (inside || (c != ' ' && c != '\n')) {
      text += c;
    }
  }
  return text + "\n";
}

// A short line, written at once and from the words of a whole report.
class ShortLine {
 public:
  ShortLine(const Program& program, const Inspection& inspection, const Verdict& verdict)
      : program_(program),
        inspection_(inspection),
        verdict_(verdict),
        words_(account(program, inspection, verdict, {})) {}

  std::string write(Detail detail) {
    json_.begin_object();
    write_format(json_, program_, words_.title);
    json_.key("inspection").begin_object();
    json_.text("date", inspection_.date).text("observer", inspection_.observer);
    json_.text("client", inspection_.client).text("shoe", inspection_.shoe_label);
    json_.text("marked", inspection_.shoe_marked).end_object();
    json_.truth("see_practitioner_first", verdict_.refers());
    json_.key("safety").begin_array();
    for (const SafetyAccount& told : words_.safety) {
      if (verdict_.safety[told.answer].yes) {
        write_safety(json_, program_, told, verdict_.safety[told.answer]);
      }
    }
    json_.end_array();
    write("referrals", words_.referrals);
    json_.key("grade");
    write_grade_names(json_, program_, verdict_);
    const Score& score = verdict_.score;
    json_.key("score").begin_object();
    json_.number_or_null("points", score.points().value_or(0), score.points().has_value());
    json_.number("lowest", score.lowest_points()).number("highest", score.highest_points());
    json_.end_object();
    if (detail == Detail::failed) {
      write_findings();
    }
    write("cautions", words_.cautions);
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void write(const std::string& key, const std::vector<Said>& all) {
    json_.key(key).begin_array();
    for (const Said& said : all) {
      begin(verdict_.findings[said.finding]);
      json_.text("words", said.words).end_object();
    }
    json_.end_array();
  }

  void write_findings() {
    json_.key("findings").begin_array();
    for (const FindingAccount& told : words_.findings) {
      const Finding& finding = verdict_.findings[told.finding];
      if (finding.status != Status::pass && finding.status != Status::does_not_apply) {
        begin(finding);
        json_.text("status", in_words(finding.status));
        json_.text("words", told.sentence.empty() ? told.readings : told.sentence).end_object();
      }
    }
    json_.end_array();
  }

  void begin(const Finding& finding) {
    json_.begin_object().text("rule", program_.rules.rules[finding.rule].name);
    if (finding.side != Side::none) {
      json_.text("side", in_words(finding.side));
    }
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  Account words_;
  JsonWriter json_ = JsonWriter(JsonWriter::Layout::compact);
};

Inspection random_record(const RuleSet& rules, Dice& dice) {
  Inspection inspection = random_inspection(rules, dice);
  inspection.client = dice.one_in(2) ? "C-014" : "C-<\"15\">";
  inspection.note = dice.one_in(3) ? "Zu spät\tgemessen" : "";
  for (Observation& seen : inspection.observations) {
    if (auto* not_seen = std::get_if<NotSeen>(&seen.value); not_seen != nullptr && dice.one_in(3)) {
      not_seen->reason = dice.one_in(2) ? "sole was wet" : "out of time";
    }
    if (dice.one_in(12)) {
      seen.note = dice.one_in(2) ? "creased" : "new";
    }
  }
  return inspection;
}

TEST_CASE("a full line is the report without its white space") {
  Dice dice(80);
  for (int i = 0; i < 120; ++i) {
    const Program program = random_program(dice);
    VerdictLines lines(program, {});
    for (int row = 0; row < 40; ++row) {
      const Inspection inspection = random_record(program.rules, dice);
      const Verdict verdict = grade(program, inspection);
      GrowingText line;
      lines.append(inspection, verdict, line);
      INFO(outline(program.rules) << outline(program.rules, inspection));
      REQUIRE(line.text() == squeezed(json_report(program, inspection, verdict, {})));
    }
  }
}

TEST_CASE("a short line says what a whole report says, as far as it goes") {
  Dice dice(81);
  for (int i = 0; i < 100; ++i) {
    const Program program = random_program(dice);
    ShortLines failed(program, {}, Detail::failed);
    ShortLines brief(program, {}, Detail::brief);
    Block block(program);
    for (int turn = 0; turn < 3; ++turn) {
      std::vector<InspectionRow> rows(1 + dice.below(block_rows));
      for (std::size_t row = 0; row < rows.size(); ++row) {
        fill(rows[row], random_record(program.rules, dice), program.rules.traits.size());
        fill_row(program, rows[row], block, row);
      }
      evaluate(program, block);
      failed.turn_to(block, rows);
      brief.turn_to(block, rows);
      for (std::size_t row = 0; row < rows.size(); ++row) {
        const Inspection& inspection = rows[row].inspection;
        const Verdict whole = grade(program, inspection);
        INFO(outline(program.rules) << outline(program.rules, inspection));
        GrowingText some;
        failed.append(row, some);
        REQUIRE(some.text() == ShortLine(program, inspection, whole).write(Detail::failed));
        GrowingText least;
        brief.append(row, least);
        REQUIRE(least.text() == ShortLine(program, inspection, whole).write(Detail::brief));
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
