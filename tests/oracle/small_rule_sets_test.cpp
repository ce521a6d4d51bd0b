// The engine and the second evaluator agree on all small rule sets: complete where chance would
// only sample.
#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "engine/scoring/block.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "tests/laws/outline.hpp"
#include "tests/oracle/naive_grade.hpp"

namespace heelrule {
namespace {

constexpr int grid_points = 7;

struct CutPoint {
  int at = 0;
  bool belongs_below = false;
};

using Layout = std::vector<CutPoint>;

// Every way to put up to `most` cut points on the grid, each open or closed; two may meet in one
// point where the first leaves the point to the second.
std::vector<Layout> layouts(std::size_t most) {
  std::vector<Layout> all{{}};
  for (std::size_t from = 0; from < all.size(); ++from) {
    const Layout shorter = all[from];
    if (shorter.size() == most) {
      continue;
    }
    const bool leaves_point = !shorter.empty() && !shorter.back().belongs_below;
    if (leaves_point) {
      all.push_back(shorter);
      all.back().push_back({shorter.back().at, true});
    }
    for (int at = shorter.empty() ? 1 : shorter.back().at + 1; at <= grid_points; ++at) {
      for (const bool belongs_below : {false, true}) {
        all.push_back(shorter);
        all.back().push_back({at, belongs_below});
      }
    }
  }
  return all;
}

// Values on every grid point, between each two, and beyond both ends; and one that was not seen.
std::vector<std::optional<double>> values() {
  std::vector<std::optional<double>> all{std::nullopt};
  for (int halves = 1; halves <= 2 * grid_points + 1; ++halves) {
    all.emplace_back(halves / 2.0);
  }
  return all;
}

Text plain(const char* words) { return {{{"", words, {}}}}; }

template <class T>
Located<T> here(T value) {
  return {std::move(value), {}};
}

Trait trait(const std::string& name, Per per, TraitKind kind) {
  Trait made;
  made.name = name;
  made.ask = plain("?");
  made.per = per;
  made.kind = std::move(kind);
  return made;
}

Grade grade(const char* name, double from) {
  Grade made;
  made.name = here<std::string>(name);
  made.from = here(from);
  made.means = plain(name);
  return made;
}

Rule rule(const std::string& name, const std::string& reads, double weight) {
  Rule made;
  made.name = name;
  made.section = here<std::string>("only");
  made.reads = here(reads);
  made.weight = here(weight);
  made.because = plain("because");
  made.source = plain("common practice");
  return made;
}

std::vector<Band> bands(const Layout& layout, const std::vector<Credit>& credits) {
  std::vector<Band> all;
  for (std::size_t i = 0; i < credits.size(); ++i) {
    Band band;
    band.name = here(fmt::format("band_{}", i));
    band.earns = here(credits[i]);
    if (i < layout.size()) {
      band.cut =
          Cut{{static_cast<double>(layout[i].at), Unit::millimetre}, layout[i].belongs_below, {}};
    }
    all.push_back(band);
  }
  return all;
}

// Beside the rule at hand stands one of half its weight, so that every grade is within reach.
RuleSet small_rules(Per per, const Rule& main_rule) {
  RuleSet rules;
  rules.sections = {{here<std::string>("only"), plain("only"), 0}};
  MeasureKind measure;
  measure.unit = Unit::millimetre;
  rules.traits = {trait("gap", per, measure), trait("asked", Per::pair, AnswerKind{}),
                  trait("counter", Per::pair,
                        ScaleKind{{{here<std::string>("soft"), {}},
                                   {here<std::string>("medium"), {}},
                                   {here<std::string>("firm"), {}}}})};
  Rule other = rule("counter", "counter", 1000);
  other.levels = {{here<std::string>("soft"), here(Credit{0, 0}), {}},
                  {here<std::string>("medium"), here(Credit{500'000, 500'000}), {}},
                  {here<std::string>("firm"), here(Credit{1'000'000, 1'000'000}), {}}};
  rules.rules = {main_rule, other};
  rules.grades = {grade("high", 80'000), grade("middle", 50'000), grade("low", 0)};
  return rules;
}

void record(Inspection& inspection, std::size_t trait_index, Side side, Value value) {
  Observation seen;
  seen.trait = trait_index;
  seen.side = side;
  seen.value = std::move(value);
  inspection.observations.push_back(std::move(seen));
}

void record_gap(Inspection& inspection, Side side, const std::optional<double>& millimetres) {
  if (millimetres) {
    Readings readings;
    readings.stored = {*millimetres};
    readings.unit = Unit::millimetre;
    record(inspection, 0, side, std::move(readings));
  }
}

// Grades records in batches, and counts how many agreed.
class Comparison {
 public:
  explicit Comparison(RuleSet rules) {
    auto compiled = compile(std::move(rules));
    REQUIRE(compiled);
    program_ = *std::move(compiled);
  }

  void compare(const std::vector<Inspection>& inspections) {
    Block block(program_);
    for (std::size_t first = 0; first < inspections.size(); first += block_rows) {
      const std::size_t count = std::min(block_rows, inspections.size() - first);
      for (std::size_t row = 0; row < count; ++row) {
        fill_row(program_, inspections[first + row], block, row);
      }
      evaluate(program_, block);
      for (std::size_t row = 0; row < count; ++row) {
        compare(decide(program_, block, row), inspections[first + row]);
      }
    }
  }

 private:
  void compare(const Verdict& verdict, const Inspection& inspection) const {
    const std::string difference = disagreement(verdict, naive_grade(program_.rules, inspection));
    if (!difference.empty()) {
      INFO(outline(program_.rules) << outline(program_.rules, inspection));
      REQUIRE(difference == "");
    }
  }

  Program program_;
};

// Every way to fill each place with one of its choices.
template <class T>
std::vector<std::vector<T>> fillings(const std::vector<std::vector<T>>& choices) {
  std::vector<std::vector<T>> all{{}};
  for (const std::vector<T>& place : choices) {
    std::vector<std::vector<T>> longer;
    for (const std::vector<T>& filled : all) {
      for (const T& choice : place) {
        longer.push_back(filled);
        longer.back().push_back(choice);
      }
    }
    all = std::move(longer);
  }
  return all;
}

const std::vector<Credit> flat{{0, 0}, {500'000, 500'000}, {1'000'000, 1'000'000}};

// What each band of a layout may earn; between two different cut points also a straight line.
std::vector<std::vector<Credit>> choices_of_credit(const Layout& layout) {
  std::vector<std::vector<Credit>> choices(layout.size() + 1, flat);
  for (std::size_t i = 1; i < layout.size(); ++i) {
    if (layout[i].at != layout[i - 1].at) {
      choices[i].push_back({0, 1'000'000});
      choices[i].push_back({900'000, 100'000});
    }
  }
  return choices;
}

std::vector<Inspection> one_sided_records() {
  std::vector<Inspection> records;
  for (const auto& value : values()) {
    Inspection inspection;
    record_gap(inspection, Side::none, value);
    record(inspection, 2, Side::none, LevelSeen{1});
    records.push_back(inspection);
  }
  return records;
}

TEST_CASE("all rules of up to three cut points, with straight lines, agree on every value") {
  const std::vector<Inspection> records = one_sided_records();
  std::size_t rule_sets = 0;
  for (const Layout& layout : layouts(3)) {
    for (const auto& credits : fillings(choices_of_credit(layout))) {
      Rule judged = rule("gap", "gap", 2000);
      judged.bands = bands(layout, credits);
      Comparison(small_rules(Per::pair, judged)).compare(records);
      ++rule_sets;
    }
  }
  // By number of cut points, layouts times credits: 1 · 3, 14 · 9, 84 · 45 and 280 · 225; and with
  // two that meet in one point 7 · 27 and 84 · 135.
  CHECK(rule_sets == 3 + 126 + 3'780 + 63'000 + 189 + 11'340);
}

// Both sides with every value; the answer that `applies` asks for given, denied and not seen.
std::vector<Inspection> two_sided_records(bool applies) {
  const std::vector<std::optional<bool>> answers =
      applies ? std::vector<std::optional<bool>>{true, false, std::nullopt}
              : std::vector<std::optional<bool>>{std::nullopt};
  std::vector<Inspection> records;
  for (const auto& answer : answers) {
    for (const auto& left : values()) {
      for (const auto& right : values()) {
        Inspection inspection;
        record_gap(inspection, Side::left, left);
        record_gap(inspection, Side::right, right);
        if (answer) {
          record(inspection, 1, Side::none, Answer{*answer});
        }
        record(inspection, 2, Side::none, LevelSeen{2});
        records.push_back(inspection);
      }
    }
  }
  return records;
}

std::vector<Credit> distinct_credits(std::size_t count) {
  const std::vector<Credit> all{{0, 0}, {1'000'000, 1'000'000}, {500'000, 500'000}};
  return {all.begin(), all.begin() + static_cast<std::ptrdiff_t>(count)};
}

TEST_CASE("all rules of up to two cut points agree on two sides, musts and what applies") {
  const std::vector<Inspection> always = two_sided_records(false);
  const std::vector<Inspection> at_times = two_sided_records(true);
  for (const Layout& layout : layouts(2)) {
    for (const SideRule sides : {SideRule::worse, SideRule::mean, SideRule::each}) {
      for (const bool must : {false, true}) {
        for (const bool applies : {false, true}) {
          Rule judged = rule("gap", "gap", 2000);
          judged.bands = bands(layout, distinct_credits(layout.size() + 1));
          judged.sides = sides;
          if (must) {
            judged.caps = here<std::string>("middle");
          }
          if (applies) {
            judged.applies = Located<std::string>{"asked", {0, 0, 5}};
          }
          Comparison(small_rules(Per::foot, judged)).compare(applies ? at_times : always);
        }
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
