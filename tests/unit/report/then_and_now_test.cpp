#include <catch2/catch.hpp>

#include "engine/report/graded_page.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string house = R"(title: House
sections: {fit: {title: Fit}}
traits:
  foot: {ask: Length of the foot, measure: mm, per: foot}
  tread: {ask: Depth of the tread, measure: mm, per: shoe}
  inside: {ask: Length inside, measure: mm, per: shoe}
  gap: {ask: Gap, derive: inside - foot, shown: mm}
rules:
  gap: {section: fit, weight: 3, must: {caps: poor}, reads: gap, because: Toes need room.,
    source: common practice,
    bands: [{name: short, below: 10 mm, earns: 0}, {name: right, earns: 100 %}]}
  tread: {section: fit, weight: 1, reads: tread, because: It grips., source: common practice,
    bands: [{name: worn, below: 2 mm, earns: 0}, {name: deep, earns: 100 %}]}
grades: {good: {from: 80, means: Keep it.}, poor: {from: 0, means: Leave it.}}
)";

Graded record(const std::string& date, const std::string& found) {
  return graded(house, "inspection: {rules: house, client: C-001, date: " + date + "}\nfound: {" +
                           found + "}\n");
}

std::string page(const Graded& now, const Graded& then) {
  const GradedRecord before{then.inspection, then.verdict};
  return *graded_page(now.program, {now.inspection, now.verdict}, &before, {});
}

bool holds(const std::string& text, const std::string& part) {
  INFO(part);
  return text.find(part) != std::string::npos;
}

TEST_CASE("two dates of one client stand side by side, with what grew, what wore, and why") {
  const std::string text = page(
      record("2026-10-03", "foot: {left: 247 mm, right: 240 mm}, inside: 255 mm, tread: 1.5 mm"),
      record("2026-02-03", "foot: {left: 243 mm, right: 240 mm}, inside: 255 mm, tread: 3 mm"));
  CHECK(holds(text, "<h2>Since 2026-02-03</h2>"));
  CHECK(holds(text,
              "The grade went from good to poor. The score went from 100.0 to 0.0. "
              "Musts that fail now: Gap."));
  CHECK(holds(text, "<td>left</td><td>243 mm</td><td>247 mm</td><td>4 mm more</td>"));
  CHECK(holds(text, "<td>right</td><td>240 mm</td><td>240 mm</td><td>the same</td>"));
  CHECK(holds(text, "<td>3 mm</td><td>1.5 mm</td><td>1.5 mm less</td>"));
  CHECK(holds(text, "<td>pass: left 12 mm, right 15 mm</td><td><strong>fail</strong>: left 8 mm"));
  CHECK(holds(text, "class=\"earlier-words\""));
}

TEST_CASE("where nothing moved, the page says so") {
  const std::string found = "foot: 243 mm, inside: 255 mm, tread: 3 mm";
  const std::string text = page(record("2026-10-03", found), record("2026-02-03", found));
  CHECK(holds(text, "The grade is good, as it was. The score is 100.0, as it was."));
  CHECK(!holds(text, "Findings that came out otherwise"));
}

TEST_CASE("a difference that comes from not looking is said to be one") {
  CHECK(holds(page(record("2026-10-03", "foot: 243 mm, inside: 255 mm, tread: 3 mm"),
                   record("2026-02-03", "foot: 243 mm, inside: 255 mm")),
              "Not the same was seen both times, so part of the difference may come from that."));
}

}  // namespace
}  // namespace heelrule
