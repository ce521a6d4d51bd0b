#include "engine/report/graded_page.hpp"

#include <catch2/catch.hpp>

#include "engine/doubt/doubt.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string house = R"(title: House
sections: {fit: {title: Fit}}
safety:
  numb: {ask: "Are the feet numb?", per: client, referral: See somebody about the feeling.}
traits:
  foot: {ask: Length of the foot, measure: mm, per: foot, doubt: 1 mm}
  inside: {ask: Length inside, measure: mm, per: shoe}
  gap: {ask: Gap, derive: inside - foot, shown: mm}
  firm: {ask: Is it firm, answer: yes or no}
rules:
  gap: {section: fit, weight: 3, must: {caps: poor}, reads: gap, because: Toes need room.,
    source: common practice, caution: Toes may lie back., advice: Try the next length.,
    bands: [{name: short, below: 10 mm, earns: 0}, {name: right, earns: 100 %}]}
  firm: {section: fit, weight: 1, reads: firm, because: It holds., source: house choice: ours,
    levels: {yes: 100 %, no: 0}}
grades: {good: {from: 80, means: Keep it.}, poor: {from: 0, means: Leave it.}}
cautions: {none: This is no diagnosis.}
)";

std::string page(const std::string& record) {
  std::string rules = house;
  rules.replace(rules.find("house choice: ours"), 18, "\"house choice: ours\"");
  const Graded sample =
      graded(rules, "inspection: {rules: house, client: C-001, date: 2026-10-03}\n" + record);
  return *graded_page(sample.program, {sample.inspection, sample.verdict}, nullptr, {});
}

std::size_t place(const std::string& text, const std::string& part) {
  const std::size_t at = text.find(part);
  INFO(part);
  REQUIRE(at != std::string::npos);
  return at;
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

const std::string seen =
    "found: {foot: {left: 240 mm, right: 243 mm}, inside: 251 mm, firm: yes}\n";

TEST_CASE("a page says whom it is about, then what a practitioner must see, then the grade") {
  const std::string text = page("safety: {numb: yes}\n" + seen);
  CHECK(place(text, "<h1>House</h1>") < place(text, "See a licensed practitioner first"));
  CHECK(place(text, "See somebody about the feeling.") < place(text, ">poor</p>"));
  CHECK(place(text, ">poor") < place(text, "<strong>Gap:</strong> Toes may lie back."));
  CHECK(place(text, "Toes may lie back.") < place(text, "<li>This is no diagnosis.</li>"));
}

TEST_CASE("advice that waits for a practitioner is counted, and stands nowhere on the page") {
  const std::string text = page("safety: {numb: yes}\n" + seen);
  CHECK(holds(text, "1 piece of advice is held back"));
  CHECK(!holds(text, "Try the next length."));
  CHECK(holds(page("safety: {numb: no}\n" + seen), "Try the next length."));
}

TEST_CASE("every number can be followed from what was recorded to the score") {
  const std::string text = page("safety: {numb: no}\n" + seen);
  CHECK(holds(text, "doubt 1 mm</span></th><td>240 mm</td><td>243 mm</td>"));  // what was read
  CHECK(holds(text, "<td>11 mm</td><td>8 mm</td>"));  // what follows from it
  CHECK(holds(text, "gap = inside - foot"));          // how
  CHECK(holds(text, "left 11 mm, right 8 mm"));       // what the rule read
  CHECK(holds(text, "earns 0 of 3, must"));           // what it earned
  CHECK(holds(text, "Toes need room."));              // why
  CHECK(holds(text, "common practice"));              // by whom
  CHECK(holds(text, "<td class=\"number\">1</td><td class=\"number\">4</td>"));  // the sum
  CHECK(holds(text, "Score 25.0 of 100."));
}

TEST_CASE("a measure has its ruler, with the numbers of the words beside it") {
  const std::string text = page("safety: {numb: no}\n" + seen);
  CHECK(holds(text, ">left 11 mm</text>"));
  CHECK(holds(text, ">right 8 mm</text>"));
  CHECK(holds(text, "<title id=\"ruler-1-title\">Gap</title>"));
}

TEST_CASE("what was not seen is named with what it needs, and leaves the grade open") {
  const std::string text = page("safety: {numb: no}\nfound: {firm: yes}\n");
  CHECK(holds(text, "<h2>Not seen</h2>"));
  CHECK(holds(text, "It needs: Length of the foot; Length inside."));
  CHECK(holds(text, "To settle it, record:"));
}

TEST_CASE("a record of nothing has a page all the same") {
  const std::string text = page("");
  CHECK(holds(text, "There is no grade: nothing that counts was seen."));
  CHECK(holds(text, "Safety questions without an answer: ask them first"));
}

TEST_CASE("words from a record are words on the page") {
  Graded sample =
      graded(one_rule("[{name: low, below: 9 mm, earns: 0}, {name: high, earns: 100 %}]"),
             one_record("8 mm", "8 mm"));
  sample.inspection.client = "</title><script>alert(1)</script>";
  sample.inspection.note = "a \"quoted\" <b>note</b>";
  sample.inspection.observations[0].note = "<img src=x onerror=alert(1)>";
  const std::string text =
      *graded_page(sample.program, {sample.inspection, sample.verdict}, nullptr, {});
  CHECK(!holds(text, "<script"));
  CHECK(!holds(text, "<b>note"));
  CHECK(!holds(text, "<img"));
  CHECK(holds(text, "&lt;script&gt;"));
}

std::string page_for(ReportReader reader, const std::string& record, const std::string& more = "") {
  std::string rules = house;
  rules.replace(rules.find("house choice: ours"), 18, "\"house choice: ours\"");
  const Graded sample =
      graded(rules + more, "inspection: {rules: house, client: C-001}\n" + record);
  PageWishes wishes;
  wishes.reader = reader;
  return *graded_page(sample.program, {sample.inspection, sample.verdict}, nullptr, wishes);
}

TEST_CASE("a client reads no score unless the rule set says so, and no reasoning") {
  const std::string record = "safety: {numb: no}\n" + seen;
  const std::string plain = page_for(ReportReader::client, record);
  CHECK(!holds(plain, "25.0"));
  CHECK(!holds(plain, "earns"));
  CHECK(!holds(plain, "common practice"));
  CHECK(holds(plain, "Leave it."));
  CHECK(holds(plain, "Try the next length."));
  CHECK(holds(page_for(ReportReader::client, record, "client: {score: yes}\n"),
              "Score 25.0 of 100."));
}

TEST_CASE("a client who must see a practitioner first is told nothing to buy") {
  const std::string text = page_for(ReportReader::client, "safety: {numb: yes}\n" + seen);
  CHECK(place(text, "See somebody about the feeling.") < place(text, "Leave it."));
  CHECK(holds(text, "Nothing yet. First see the practitioner"));
  CHECK(!holds(text, "Try the next length."));
  CHECK(!holds(text, "long inside"));
}

TEST_CASE("every reader has the cautions and what a practitioner must see") {
  for (const auto reader : {ReportReader::assessor, ReportReader::student, ReportReader::client}) {
    const std::string text = page_for(reader, "safety: {numb: yes}\n" + seen);
    CHECK(holds(text, "See somebody about the feeling."));
    CHECK(holds(text, "Toes may lie back."));
    CHECK(holds(text, "This is no diagnosis."));
    CHECK(holds(text, "Local codes and licensed practice come before them."));
  }
}

TEST_CASE("a client is told once what was answered with yes, and is asked the rest") {
  const std::string more = "When to see a licensed practitioner";
  CHECK(!holds(page_for(ReportReader::client, "safety: {numb: yes}\n" + seen), more));
  CHECK(holds(page_for(ReportReader::client, "safety: {numb: no}\n" + seen), more));
  CHECK(holds(page_for(ReportReader::client, seen), more));
}

TEST_CASE("findings that call for the same caution share it") {
  const Graded sample =
      graded(R"(title: House
sections: {fit: {title: Fit}}
traits:
  firm: {ask: Is it firm, answer: yes or no}
  dry: {ask: Is it dry, answer: yes or no}
  whole: {ask: Is it whole, answer: yes or no}
rules:
  firm: {section: fit, weight: 1, reads: firm, because: It holds., source: common practice,
    caution: Look at the skin., levels: {yes: 100 %, no: 0}}
  dry: {section: fit, weight: 1, reads: dry, because: It holds., source: common practice,
    caution: Let it dry., levels: {yes: 100 %, no: 0}}
  whole: {section: fit, weight: 1, reads: whole, because: It holds., source: common practice,
    caution: Look at the skin., levels: {yes: 100 %, no: 0}}
grades: {good: {from: 80, means: Keep it.}, poor: {from: 0, means: Leave it.}}
)",
             "inspection: {rules: house}\nfound: {firm: no, dry: no, whole: no}\n");
  const std::string text =
      *graded_page(sample.program, {sample.inspection, sample.verdict}, nullptr, {});
  CHECK(place(text, "<li><strong>Firm; Whole:</strong> Look at the skin.</li>") <
        place(text, "<li><strong>Dry:</strong> Let it dry.</li>"));
}

TEST_CASE("a student is told what was missed, why, and how to take it") {
  const std::string text = page_for(ReportReader::student,
                                    "safety: {numb: no}\nfound: {foot: {left: 240 mm, right: {not "
                                    "seen: too sore}}, firm: yes}\n");
  CHECK(holds(text, "<h3>Length inside</h3><p class=\"worth\">weight 3 waits for it</p>"));
  CHECK(holds(text, "<h3>Length of the foot (right)</h3>"));
  CHECK(holds(text, "You wrote: too sore"));
}

TEST_CASE("a school's template fills the body, and cannot leave out what stands around it") {
  const Graded sample =
      graded(one_rule("[{name: low, below: 9 mm, earns: 0}, {name: high, earns: 100 %}]"),
             one_record("8 mm", "8 mm"));
  const GradedRecord record{sample.inspection, sample.verdict};
  PageWishes wishes;
  wishes.body = SchoolTemplate{"p { color: teal }", "<p>{{means}} {{nothing}}</p>"};
  const std::string text = *graded_page(sample.program, record, nullptr, wishes);
  CHECK(holds(text, "<article class=\"school\">\n<p>Leave it. </p></article></article>"));
  CHECK(holds(text, "@scope (.school) {\np { color: teal }"));
  CHECK(holds(text, "Local codes and licensed practice come before them."));
  wishes.body = SchoolTemplate{"", "<!-- "};
  CHECK(!graded_page(sample.program, record, nullptr, wishes));
  wishes.body = SchoolTemplate{"", "{{#open"};
  CHECK(graded_page(sample.program, record, nullptr, wishes)
            .problem()
            .message.starts_with("the template cannot be read"));
}

// The right gap lies one standard uncertainty over the limit: it is right with a chance of 0.8413
// (standard normal distribution, any table). The left one is out of doubt.
const std::string near_the_limit =
    "safety: {numb: no}\n"
    "found: {foot: {left: 231 mm, right: 240 mm}, inside: 251 mm, firm: yes}\n";

std::string doubted_page(ReportReader reader, const std::string& more = "") {
  std::string rules = house;
  rules.replace(rules.find("house choice: ours"), 18, "\"house choice: ours\"");
  const Graded sample =
      graded(rules + more, "inspection: {rules: house, client: C-001}\n" + near_the_limit);
  PageWishes wishes;
  wishes.reader = reader;
  const Doubt doubt = doubt_of(sample.program, sample.inspection, sample.verdict);
  return *graded_page(sample.program, {sample.inspection, sample.verdict, doubt}, nullptr, wishes);
}

TEST_CASE("an assessor reads how sure the grade is, in words and as a bar") {
  const std::string text = doubted_page(ReportReader::assessor);
  CHECK(holds(text, "By how exactly they can be read, it is good with a chance of 84 %."));
  CHECK(holds(text, ">poor 16 %; good 84 %.</desc>"));
  CHECK(holds(text, "Take this reading again first: &quot;Length of the foot (right)&quot;."));
  CHECK(holds(text, "One reading a little off would make the grade poor:"));
  CHECK(holds(text, "pass within doubt, 84 % sure; else a fail 16 % (± 2 mm)."));
  CHECK(holds(text, "notch doubt"));
}

TEST_CASE("a student is told which reading to take again, and how") {
  const std::string text = doubted_page(ReportReader::student);
  CHECK(holds(text, "What to take again"));
  CHECK(holds(text, "Take this reading again first: &quot;Length of the foot (right)&quot;."));
}

TEST_CASE("a client is told that it is close, and how close only where scores are shown") {
  const std::string plain = doubted_page(ReportReader::client);
  CHECK(holds(plain, "This is close."));
  CHECK(holds(plain, "<strong>Length of the foot (right)</strong>"));
  CHECK(!holds(plain, "84 %"));
  CHECK(holds(doubted_page(ReportReader::client, "client: {score: yes}\n"),
              "holds with a chance of 84 %."));
}

TEST_CASE("readings that are taken as they stand say nothing of doubt") {
  for (const auto reader : {ReportReader::assessor, ReportReader::student, ReportReader::client}) {
    const std::string text = page_for(reader, near_the_limit);
    for (const char* words : {"How sure", "take again", "This is close", "within doubt", "±",
                              "notch doubt\"", "chances\""}) {
      INFO(words);
      CHECK(!holds(text, words));
    }
  }
}

}  // namespace
}  // namespace heelrule
