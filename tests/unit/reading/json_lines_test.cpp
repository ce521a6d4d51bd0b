#include "engine/reading/json_lines.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/read_inspection.hpp"
#include "engine/source/show_diagnostic.hpp"
#include "tests/laws/dice.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string rule_text = R"(title: Lines
sections: {all: {title: All}}
safety:
  numb_feet: {ask: "Numb?", per: foot, referral: See somebody.}
  fever: {ask: "Fever?", referral: See somebody.}
traits:
  length: {ask: "Length?", measure: mm, per: foot, plausible: 80 mm .. 340 mm}
  mass: {ask: "Mass?", measure: g, per: pair}
  seams: {ask: "Seams?", measure: count, per: shoe}
  counter: {ask: "Counter?", scale: [soft, medium, firm], per: shoe}
  fastening: {ask: "Fastening?", choice: [laces, hook and loop]}
  cracked: {ask: "Cracked?", answer: yes or no, per: shoe}
  fibres: {ask: "Fibres?", content: fibres}
  marked: {ask: "Marked?", marked: shoe size}
  socks: {ask: "Socks?", marked: sock range}
  double_length: {ask: "Twice?", derive: length + length}
rules:
  length:
    {reads: length, section: all, weight: 1, bands: [{name: any, earns: 100 %}], because: x, source: y}
grades: {good: {from: 0, means: Good.}}
cautions: {care: Take care.}
)";

const Program& program() {
  static const Program made =
      graded(rule_text, "inspection: {rules: lines}\nfound: {mass: 1 g}\n").program;
  return made;
}

// A line read by itself, with room behind it for the parser.
std::optional<LineFault> read(std::string line, InspectionRow& row, std::uint64_t number = 2) {
  static JsonLineReader reader(program().rules, "records.jsonl");
  const std::size_t length = line.size();
  line.append(JsonLineReader::padding, '\0');
  return reader.read(std::string_view(line).substr(0, length), number, row);
}

// What a report has words of.
bool speaks(const Observation& seen) {
  const auto* not_seen = std::get_if<NotSeen>(&seen.value);
  const bool plain = std::holds_alternative<Readings>(seen.value) ||
                     std::holds_alternative<LevelSeen>(seen.value) ||
                     std::holds_alternative<Answer>(seen.value);
  return !seen.note.empty() || (not_seen != nullptr ? !not_seen->reason.empty() : !plain);
}

// What a line means as a file, and as a line; checks that they are the same.
bool same_as_a_file(const std::string& line) {
  INFO(line);
  InspectionRow row;
  const auto fault = read(line, row, 1);
  Sources sources;
  const std::uint32_t source = sources.add("records.jsonl", line);
  const auto whole = load_inspection(sources, source, program().rules);
  REQUIRE(static_cast<bool>(whole) == !fault.has_value());
  if (fault) {
    CHECK(show(fault->diagnostics, fault->sources) == show(whole.diagnostics(), sources));
    return false;
  }
  InspectionRow expected;
  fill(expected, *whole, program().rules.traits.size());
  for (std::size_t i = 0; i < expected.numbers.size(); ++i) {
    const bool both_unseen =
        expected.numbers[i] != expected.numbers[i] && row.numbers[i] != row.numbers[i];
    CHECK((both_unseen || expected.numbers[i] == row.numbers[i]));
  }
  std::vector<Observation> spoken;
  for (const Observation& seen : whole->observations) {
    if (speaks(seen)) {
      spoken.push_back(seen);
    }
  }
  std::vector<Observation> kept;
  for (const Observation& seen : row.inspection.observations) {
    if (speaks(seen)) {
      kept.push_back(seen);
    }
  }
  REQUIRE(kept.size() == spoken.size());
  for (std::size_t i = 0; i < kept.size(); ++i) {
    CHECK(kept[i].trait == spoken[i].trait);
    CHECK(kept[i].side == spoken[i].side);
    CHECK(kept[i].note == spoken[i].note);
    CHECK(kept[i].value.index() == spoken[i].value.index());
    if (!std::holds_alternative<Readings>(kept[i].value)) {
      CHECK((kept[i].value == spoken[i].value));
    }
  }
  const Inspection& head = row.inspection;
  CHECK(head.rules == whole->rules);
  CHECK(head.date == whole->date);
  CHECK(head.observer == whole->observer);
  CHECK(head.client == whole->client);
  CHECK(head.note == whole->note);
  CHECK(head.shoe_label == whole->shoe_label);
  CHECK(head.shoe_marked == whole->shoe_marked);
  return true;
}

const std::string head =
    R"({"inspection":{"rules":"lines","date":"2026-10-03","observer":"S-07","client":"C-014",)"
    R"("shoe":{"label":"navy","marked":"EU 39"},"note":"late"})";

std::string line_of(const std::string& found, const std::string& safety = "") {
  return head + (safety.empty() ? "" : R"(,"safety":{)" + safety + "}") + R"(,"found":{)" + found +
         "}}";
}

TEST_CASE("the usual forms of a value mean in a line what they mean in a file") {
  for (const char* found : {
           R"("length":"243 mm")",
           R"("length":{"left":"243 mm","right":"24.6 cm"})",
           R"("length":{"left":["243","244","246 mm"]},"mass":["310 g","312 g"])",
           R"("length":{"both":"243 mm"})",
           R"("length":{"value":"243 mm","note":"rough"})",
           R"("length":{"left":{"value":"351 mm","confirmed":"yes","note":"true"}})",
           R"("length":{"left":{"value":["243","245 mm"],"note":"twice"}})",
           R"("length":{"value":"9.6 in","doubt":"2 mm"})",
           R"("length":"not seen","mass":{"not seen":"no scales"})",
           R"("length":{"left":{"not seen":"plaster","note":"later"},"right":"240 mm"})",
           R"("seams":{"left":"3","right":"0"})",
           R"("seams":3,"cracked":{"left":"yes","right":"no"})",
           R"("counter":{"left":"firm","right":{"value":"medium","note":"creased"}})",
           R"("fastening":"hook and loop","cracked":"no")",
           R"("fibres":{"cotton":"80 %","elastane":"20 %"})",
           R"("fibres":{"value":{"cotton":"80 %","elastane":"20 %"},"note":"from the label"})",
           R"("fibres":"not seen","marked":"EU 39.5","socks":"EU 39-42")",
           R"("marked":{"value":"UK 6½","note":"on the tongue"},"socks":"24-26 cm")",
       }) {
    CHECK(same_as_a_file(line_of(found)));
  }
  CHECK(same_as_a_file(line_of(R"("mass":"310 g")", R"("fever":"no","numb_feet":{"left":"yes"})")));
  CHECK(same_as_a_file(R"({"inspection":{}})"));
  CHECK(same_as_a_file(R"({"inspection":{"client":7}})"));
  CHECK(same_as_a_file("  {\"inspection\" : {\"note\":\"tab\\tand \\u00fc\"} }  "));
}

// A line as most programs write it: with a blank behind each colon and comma between tokens.
std::string spaced(const std::string& line) {
  std::string text;
  bool inside = false;
  for (const char c : line) {
    inside = inside != (c == '"');
    text += c;
    text += !inside && (c == ':' || c == ',') ? " " : "";
  }
  return text;
}

TEST_CASE("lines in any order of traits, with any of them left out, mean what files mean") {
  const std::vector<std::string> fields{
      R"("length":{"left":"243 mm","right":"241.5 mm"})",
      R"("length":{"right":"243 mm","left":"241.5 mm"})",
      R"("length":{"left":"243 mm"})",
      R"("mass":"310 g")",
      R"("mass":{"value":"0.3 kg","note":"wet"})",
      R"("seams":{"left":"3","right":"0"})",
      R"("counter":{"left":"firm","right":"not seen"})",
      R"("counter":{"left":"firm","right":"hard"})",
      R"("fastening":"hook and loop")",
      R"("cracked":{"left":"no","right":"yes"})",
      R"("cracked":{"left":"no","right":"yes"} )",
      R"("fibres":{"cotton":"80 %","elastane":"20 %"})",
      R"("marked":"EU 39.5")",
      R"("length":{"left":"243 mm","right":"241.5 mm","both":"1 mm"})",
  };
  Dice dice(66);
  int sound = 0;
  std::vector<std::string> order = fields;
  for (int i = 0; i < 3'000; ++i) {
    if (dice.one_in(8)) {
      dice.shuffle(order);
    }
    std::string found;
    for (const std::string& field : order) {
      if (!dice.one_in(3)) {
        continue;
      }
      found += (found.empty() ? "" : ",") + field;
    }
    const std::string line = line_of(found, dice.one_in(2) ? R"("fever":"no")" : "");
    sound += same_as_a_file(dice.one_in(2) ? line : spaced(line)) ? 1 : 0;
  }
  CHECK(sound > 300);
}

TEST_CASE("what is wrong with a line is told as of a file") {
  for (const char* found : {
           R"("length":"243")",
           R"("length":"24.6 kg")",
           R"("length":"500 mm")",
           R"("length":["243 mm","500 mm"])",
           R"("length":[])",
           R"("lenght":"243 mm")",
           R"("length":"243 mm","length":"244 mm")",
           R"("length":{"left":"243 mm","left":"244 mm"})",
           R"("length":{"left":"243 mm","value":"244 mm"})",
           R"("length":{"value":"243 mm","left":"244 mm"})",
           R"("length":{"both":"243 mm","left":"244 mm"})",
           R"("length":{})",
           R"("length":null)",
           R"("length":{"left":{"value":"351 mm","confirmed":"perhaps"}})",
           R"("length":{"value":"243 mm","not seen":"both"})",
           R"("seams":"2.5")",
           R"("seams":{"left":2.5})",
           R"("mass":{"left":"310 g"})",
           R"("counter":"hard")",
           R"("counter":["firm"])",
           R"("cracked":true)",
           R"("fibres":{"cotton":"80 %"})",
           R"("fibres":{"cotton":"50 %","cotton":"50 %"})",
           R"("fibres":{"cotton":"80","elastane":"20 %"})",
           R"("fibres":"cotton")",
           R"("marked":"US 9")",
           R"("socks":"39-42")",
           R"("double_length":"480 mm")",
           R"("fever":"no")",
       }) {
    CHECK_FALSE(same_as_a_file(line_of(found)));
  }
  for (const char* line : {
           R"({"found":{}})",
           R"({"inspection":{"date":"2026-02-30"}})",
           R"({"inspection":{"date":"2026-02-03","date":"2026-02-03"}})",
           R"({"inspection":{"shoe":"navy"}})",
           R"({"inspection":{"shoe":{"color":"navy"}}})",
           R"({"inspection":{},"inspection":{}})",
           R"({"inspection":{},"safety":{"length":"243 mm"}})",
           R"({"inspection":{},"more":{}})",
           "{\"inspection\":{\"note\":\"\xE2\x80\xAE\"}}",
           "{\"inspection\":{\"note\":\"\\u202e\"}}",
           "{\"inspection\":{\"note\":\"\xFF\"}}",
           "{\"inspection\":{\"note\":\"\x7F\"}}",
           R"({"inspection":{}} {"inspection":{}})",
           R"({"inspection":{})",
           R"({"inspection":{"client":"C-0)",
       }) {
    CHECK_FALSE(same_as_a_file(line));
  }
}

TEST_CASE("a line that was damaged anywhere means what it would mean as a file") {
  const std::string sound =
      line_of(R"("length":{"left":"243 mm","right":["240","241 mm"]},"counter":"firm",)"
              R"("marked":"EU 39","mass":{"value":"310 g","note":"wet"},"cracked":"not seen")",
              R"("fever":"no")");
  Dice dice(65);
  int read_anyway = 0;
  for (int i = 0; i < 6'000; ++i) {
    std::string line = dice.one_in(2) ? sound : spaced(sound);
    const std::size_t at = 1 + dice.below(line.size() - 1);
    switch (dice.below(3)) {
      case 0:
        line.erase(at, 1 + dice.below(3));
        break;
      case 1:
        line[at] = "{}[],:\" 0a.m\\"[dice.below(13)];
        break;
      default:
        line.insert(at, sound.substr(dice.below(sound.size()), 1 + dice.below(12)));
        break;
    }
    read_anyway += same_as_a_file(line) ? 1 : 0;
  }
  CHECK(read_anyway > 100);
}

TEST_CASE("the place of a fault is its line in the file, and its column") {
  InspectionRow row;
  const auto fault = read(line_of(R"("length":"243 mn")"), row, 41);
  REQUIRE(fault);
  CHECK(show(fault->diagnostics, fault->sources).starts_with("records.jsonl:41:162: error: "));
}

TEST_CASE("an empty line and one that is too long are said to be that") {
  InspectionRow row;
  const auto empty = read("", row, 5);
  REQUIRE(empty);
  CHECK(show(empty->diagnostics, empty->sources) ==
        "records.jsonl:5:1: error: this line is empty\n"
        "    5 | \n"
        "      | ^\n"
        "hint: write one record on each line\n");
  const auto lengthy = read(std::string((std::size_t{4} << 20U) + 1, ' ') + "x", row);
  REQUIRE(lengthy);
  CHECK(lengthy->diagnostics.by_place().front().message == "this line is longer than 4 MiB");
}

TEST_CASE("a byte order mark may stand before the first line alone") {
  InspectionRow row;
  CHECK_FALSE(read("\xEF\xBB\xBF{\"inspection\":{}}", row, 1));
  CHECK(read("\xEF\xBB\xBF{\"inspection\":{}}", row, 2));
}

}  // namespace
}  // namespace heelrule
