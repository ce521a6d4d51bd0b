// What a sound record comes to; its faults are in tests/diagnostics.
#include "engine/reading/read_inspection.hpp"

#include <catch2/catch.hpp>

#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

Trait trait(std::string name, TraitKind kind, Per per = Per::pair) {
  Trait made;
  made.name = std::move(name);
  made.kind = std::move(kind);
  made.per = per;
  return made;
}

MeasureKind measure(Unit unit) { return MeasureKind{unit, {}, {}}; }

RuleSet house() {
  MeasureKind length = measure(Unit::millimetre);
  length.plausible = {*parse_range("80 mm .. 340 mm"), {}};
  RuleSet rules;
  rules.name = "house";
  rules.safety = {{0, {}}};
  rules.traits = {trait("numb_feet", AnswerKind{}, Per::client),
                  trait("foot_length", length, Per::foot),
                  trait("mass", measure(Unit::gram)),
                  trait("pairs_owned", measure(Unit::count)),
                  trait("sole_bends", measure(Unit::newton_metre_per_degree)),
                  trait("counter", ScaleKind{{{{"soft", {}}, {}}, {{"firm", {}}, {}}}}, Per::shoe),
                  trait("fibres", FibresKind{}),
                  trait("size", ShoeSizeKind{}),
                  trait("sock", SockRangeKind{})};
  return rules;
}

Inspection read(const std::string& text) {
  static const RuleSet rules = house();
  Sources sources;
  const auto checked = load_inspection(sources, sources.add("r", text), rules);
  CHECK(show(checked.diagnostics(), sources).empty());
  return checked ? *checked : Inspection{};
}

Inspection found(const std::string& values) {
  return read("inspection: {rules: house}\nfound: {" + values + "}\n");
}

const Value& value(const Inspection& inspection, std::size_t trait, Side side = Side::none) {
  static const Value nothing = NotSeen{"nothing recorded"};
  const Observation* seen = inspection.find(trait, side);
  return seen == nullptr ? nothing : seen->value;
}

const Readings& readings(const Inspection& inspection, std::size_t trait, Side side = Side::none) {
  return std::get<Readings>(value(inspection, trait, side));
}

using Numbers = std::vector<double>;

TEST_CASE("the head of a record is kept as it is written") {
  const Inspection inspection = read(
      "inspection:\n  rules: house\n  date: 2024-02-29\n  observer: S-07\n  client: C-014\n"
      "  shoe: {label: navy, marked: EU 39}\n  note: late\n");
  CHECK(inspection.rules == "house");
  CHECK(inspection.date == "2024-02-29");
  CHECK(inspection.observer == "S-07");
  CHECK(inspection.client == "C-014");
  CHECK(inspection.shoe_label == "navy");
  CHECK(inspection.shoe_marked == "EU 39");
  CHECK(inspection.note == "late");
  CHECK(inspection.observations.empty());
}

TEST_CASE("a value in any unit of its kind is stored in one") {
  CHECK(readings(found("mass: 0.31 kg"), 2).stored == Numbers{310});
  CHECK(readings(found("sole_bends: 0.3 Nm/deg"), 4).stored == Numbers{300});
  const Readings inches = readings(found("foot_length: 9.6 in"), 1, Side::left);
  CHECK(inches.stored == Numbers{243.84});
  CHECK(inches.unit == Unit::inch);
  CHECK(readings(found("pairs_owned: 3"), 3).stored == Numbers{3});
}

TEST_CASE("one value stands for both sides") {
  for (const std::string written : {"243 mm", "{both: 243 mm}", "{left: 243 mm, right: 24.3 cm}"}) {
    CAPTURE(written);
    const Inspection inspection = found("foot_length: " + written);
    CHECK(readings(inspection, 1, Side::left).stored == Numbers{243});
    CHECK(readings(inspection, 1, Side::right).stored == Numbers{243});
  }
}

TEST_CASE("a side that is not recorded stays without an observation") {
  const Inspection inspection = found("foot_length: {right: 243 mm}");
  CHECK(inspection.find(1, Side::left) == nullptr);
  CHECK(inspection.find(1, Side::right) != nullptr);
}

TEST_CASE("repeats are kept, and the unit at the end of a list goes for all") {
  const Inspection inspection =
      found("foot_length: {left: [246, 247, 24.5 cm, 246 mm], right: [246 mm]}");
  CHECK(readings(inspection, 1, Side::left).stored == Numbers{246, 247, 245, 246});
  CHECK(readings(inspection, 1, Side::right).stored == Numbers{246});
}

TEST_CASE("what was not seen may have a reason and a note") {
  CHECK(value(found("mass: not seen"), 2) == Value(NotSeen{}));
  CHECK(value(found("mass: {not seen: scales away}"), 2) == Value(NotSeen{"scales away"}));
  CHECK(value(found("mass: {not seen: }"), 2) == Value(NotSeen{}));
  CHECK(value(found("mass: {value: not seen, note: again}"), 2) == Value(NotSeen{}));
  const Inspection one_side = found("counter: {left: not seen, right: firm}");
  CHECK(value(one_side, 5, Side::left) == Value(NotSeen{}));
  CHECK(value(one_side, 5, Side::right) == Value(LevelSeen{1}));
}

TEST_CASE("a reading outside the plausible range is taken where it is confirmed") {
  const Inspection inspection = found("foot_length: {value: 351 mm, confirmed: yes, note: twice}");
  CHECK(readings(inspection, 1, Side::right).confirmed);
  CHECK(inspection.find(1, Side::left)->note == "twice");
}

TEST_CASE("the ends of the plausible range are plausible") {
  CHECK(readings(found("foot_length: {left: 80 mm, right: 340 mm}"), 1, Side::right).stored ==
        Numbers{340});
}

TEST_CASE("a reading may state its own uncertainty, in a unit of its own") {
  const Inspection inspection = found("foot_length: {value: [243, 244 mm], doubt: 0.2 cm}");
  CHECK(readings(inspection, 1, Side::left).doubt == 2.0);
}

TEST_CASE("answers, levels, fibres and sizes are read by the kind of their trait") {
  CHECK(value(read("inspection: {rules: house}\nsafety: {numb_feet: yes}\n"), 0) ==
        Value(Answer{true}));
  CHECK(value(found("counter: soft"), 5, Side::left) == Value(LevelSeen{0}));
  const Inspection inspection = found(
      "fibres: {cotton: 80 %, elastane: 3 %, polyamide filament: 17 %}, size: UK 6½, "
      "sock: EU 39-42");
  CHECK(std::get<FibreContent>(value(inspection, 6)).share(Fibre::polyamide_filament) == 0.17);
  CHECK(show(std::get<ShoeSize>(value(inspection, 7))) == "UK 6.5");
  CHECK(show(std::get<SockRange>(value(inspection, 8))) == "EU 39-42");
}

TEST_CASE("JSON of the same shape is the same record") {
  const Inspection yaml = read(
      "inspection: {rules: house, date: 2026-10-03}\nsafety: {numb_feet: no}\nfound:\n"
      "  foot_length: {left: 243 mm, right: [246, 247 mm]}\n  pairs_owned: 3\n  counter: firm\n"
      "  mass: {not seen: no scales}\n");
  const Inspection json = read(
      R"( {"inspection": {"rules": "house", "date": "2026-10-03"}, "safety": {"numb_feet": "no"},
      "found": {"counter": "firm", "pairs_owned": 3, "mass": {"not seen": "no scales"},
      "foot_length": {"left": "243 mm", "right": [246, "247 mm"]}}})");
  REQUIRE(yaml.observations.size() == json.observations.size());
  for (std::size_t i = 0; i < yaml.observations.size(); ++i) {
    CHECK(yaml.observations[i].trait == json.observations[i].trait);
    CHECK(yaml.observations[i].side == json.observations[i].side);
    CHECK(yaml.observations[i].value == json.observations[i].value);
  }
}

TEST_CASE("observations are ordered by trait and side, whatever the order of the record") {
  const Inspection inspection =
      found("size: EU 39, foot_length: {right: 243 mm, left: 242 mm}, mass: 310 g");
  REQUIRE(inspection.observations.size() == 4);
  CHECK(inspection.observations[0].side == Side::left);
  CHECK(inspection.observations[1].side == Side::right);
  CHECK(inspection.observations[3].trait == 7);
}

// ISO 8601 calendar dates; the Gregorian calendar's rule for leap years.
TEST_CASE("a date is one of the calendar") {
  for (const std::string_view date : {"2026-10-03", "2024-02-29", "2000-02-29", "2026-12-31"}) {
    CHECK(is_date(date));
  }
  for (const std::string_view date :
       {"2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "26-10-03",
        "2026-1-3", "2026/10/03", "2026-10-03T00:00", "20261003", "2026-1a-03", ""}) {
    CAPTURE(std::string(date));
    CHECK_FALSE(is_date(date));
  }
}

}  // namespace
}  // namespace heelrule
