#include "engine/reading/csv_lines.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/json_lines.hpp"
#include "engine/reading/json_scanner.hpp"
#include "engine/source/show_diagnostic.hpp"
#include "tests/laws/dice.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const RuleSet& rules() {
  static const RuleSet made = graded(R"(title: Rows
sections: {all: {title: All}}
safety:
  fever: {ask: "Fever?", referral: See somebody.}
traits:
  length: {ask: "Length?", measure: mm, per: foot, plausible: 80 mm .. 340 mm}
  mass: {ask: "Mass?", measure: g, per: pair}
  counter: {ask: "Counter?", scale: [soft, firm], per: shoe}
  fibres: {ask: "Fibres?", content: fibres}
  marked: {ask: "Marked?", marked: shoe size}
rules:
  length:
    {reads: length, section: all, weight: 1, bands: [{name: any, earns: 100 %}], because: x, source: y}
grades: {good: {from: 0, means: Good.}}
cautions: {care: Take care.}
)",
                                     "inspection: {rules: rows}\nfound: {mass: 1 g}\n")
                                  .program.rules;
  return made;
}

CsvLineReader reader(const std::string& header) {
  Sources sources;
  const std::uint32_t source = sources.add("rows.csv", header);
  auto columns = read_csv_header(sources, source, rules());
  INFO(show(columns.diagnostics(), sources));
  REQUIRE(columns);
  return {rules(), *std::move(columns), "rows.csv"};
}

// A row read with room behind it.
std::optional<LineFault> read(CsvLineReader& reader, std::string line, std::uint64_t number,
                              InspectionRow& row) {
  const std::size_t length = line.size();
  line.append(JsonScanner::padding, ',');
  return reader.read(std::string_view(line).substr(0, length), number, row);
}

std::optional<LineFault> read(const std::string& header, const std::string& line,
                              std::uint64_t number, InspectionRow& row) {
  CsvLineReader made = reader(header);
  return read(made, line, number, row);
}

bool same_numbers(const InspectionRow& a, const InspectionRow& b) {
  return std::equal(a.numbers.begin(), a.numbers.end(), b.numbers.begin(), b.numbers.end(),
                    [](double x, double y) { return x == y || (x != x && y != y); });
}

// A row of a table and a line of JSON that say the same.
void same(const std::string& header, const std::string& line, std::string json) {
  InspectionRow row;
  InspectionRow expected;
  const auto fault = read(header, line, 2, row);
  INFO((fault ? show(fault->diagnostics, fault->sources) : line));
  REQUIRE_FALSE(fault);
  const std::size_t length = json.size();
  json.append(JsonLineReader::padding, '\0');
  REQUIRE_FALSE(JsonLineReader(rules(), "rows.jsonl")
                    .read(std::string_view(json).substr(0, length), 2, expected));
  REQUIRE(same_numbers(row, expected));
  CHECK(row.inspection.client == expected.inspection.client);
  CHECK(row.inspection.shoe_label == expected.inspection.shoe_label);
  for (const Observation& seen : expected.inspection.observations) {
    const Observation* same = row.inspection.find(seen.trait, seen.side);
    REQUIRE(same != nullptr);
    CHECK(same->note == seen.note);
    CHECK((same->value == seen.value));
  }
}

TEST_CASE("a row means what the record means that it stands for") {
  same("client,shoe,length.left,length.right", "C-014,\"navy, laced\",243 mm,24.6 cm",
       R"({"inspection":{"client":"C-014","shoe":{"label":"navy, laced"}},)"
       R"("found":{"length":{"left":"243 mm","right":"24.6 cm"}}})");
  same("length,fever", "243 mm,no",
       R"({"inspection":{},"safety":{"fever":"no"},"found":{"length":"243 mm"}})");
  same("mass,counter.left", "310; 312 g,firm",
       R"({"inspection":{},"found":{"mass":["310","312 g"],"counter":{"left":"firm"}}})");
  same(
      "fibres,found.marked", "cotton 80 %; elastane 20 %,EU 39",
      R"({"inspection":{},"found":{"fibres":{"cotton":"80 %","elastane":"20 %"},"marked":"EU 39"}})");
  same("length.left,length.left.confirmed", "351 mm,yes",
       R"({"inspection":{},"found":{"length":{"left":{"value":"351 mm","confirmed":"yes"}}}})");
  same("mass,mass.note,length", ",no scales,",
       R"({"inspection":{},"found":{"mass":{"value":"not seen","note":"no scales"}}})");
  same("client", "'=C-014", R"({"inspection":{"client":"=C-014"}})");
}

TEST_CASE("faults of a row stand at their cells") {
  InspectionRow row;
  const auto fault = read("client,length", "C-014,24.6", 9, row);
  REQUIRE(fault);
  CHECK(show(fault->diagnostics, fault->sources) ==
        "rows.csv:9:7: error: `24.6` has no unit, and a length is due here\n"
        "    9 | C-014,24.6\n"
        "      |       ^~~~\n"
        "hint: write the unit: `24.6 mm`\n");
}

TEST_CASE("a row has a cell for each column") {
  InspectionRow row;
  for (const char* line : {"C-014", "C-014,243 mm,", ""}) {
    CHECK(read("client,length", line, 2, row).has_value());
  }
  CHECK_FALSE(read("client,length", ",", 2, row).has_value());
}

TEST_CASE("a row without quotes means the same as with them") {
  const std::vector<std::vector<std::string>> cells{
      {"C-014", "", "Zoë", "\x7F", " ", "C-015 "},
      {"2026-11-03", "", "2026-02-30", "3.11.2026"},
      {"navy", "", "white trainer"},
      {"243 mm", "", "24.3 cm", "not seen", "500 mm", "243", "243; 244 mm"},
      {"243.5 mm", "", "9.6 in", "-1 mm"},
      {"310 g", "", "0.3 kg", "310; 312 g", "not seen"},
      {"firm", "", "soft", "hard", "not seen"},
      {"no", "", "yes", "No"},
  };
  CsvLineReader rows = reader("client,date,shoe,length.left,length.right,mass,counter,fever");
  Dice dice(31);
  int sound = 0;
  for (int i = 0; i < 4'000; ++i) {
    std::string plain;
    std::string quoted;
    for (const std::vector<std::string>& column : cells) {
      const std::string& cell = dice.one_in(2) ? column.front() : dice.pick(column);
      plain += (plain.empty() && &column == cells.data() ? "" : ",") + cell;
      quoted += (&column == cells.data() ? "\"" : ",\"") + cell + "\"";
    }
    INFO(plain);
    InspectionRow row;
    InspectionRow expected;
    const auto fault = read(rows, plain, 2, row);
    const auto fault_in_quotes = read(rows, quoted, 2, expected);
    REQUIRE(fault.has_value() == fault_in_quotes.has_value());
    if (fault) {
      CHECK(fault->diagnostics.by_place().front().message ==
            fault_in_quotes->diagnostics.by_place().front().message);
      continue;
    }
    ++sound;
    REQUIRE(same_numbers(row, expected));
    CHECK(row.inspection.client == expected.inspection.client);
    CHECK(row.inspection.date == expected.inspection.date);
    CHECK(row.inspection.shoe_label == expected.inspection.shoe_label);
  }
  CHECK(sound > 200);
}

}  // namespace
}  // namespace heelrule
