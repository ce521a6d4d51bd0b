#include "engine/report/account.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// Two musts, a rule that applies to some, a safety question, and levels with a meaning.
const std::string house = R"(title: {en: House, es: Casa}
edition: 2026-11
languages: [en, es]
sections: {fit: {title: Fit}}
safety:
  numb: {ask: Are the feet numb, per: foot, referral: See a practitioner about the feeling.}
  wound: {ask: "Is there a wound?", per: client, referral: See a practitioner about the wound.}
traits:
  gap: {ask: Gap before the toe, measure: mm, per: shoe}
  worn: {ask: "Is the pair worn?", answer: yes or no}
  tread: {ask: Depth of the tread, measure: mm, per: shoe}
  counter: {ask: Heel counter, scale: {soft: gives to the thumb., firm: stands}, per: shoe}
  lace: {ask: {en: Fastening, es: Cierre}, choice: [laces, hook and loop]}
rules:
  space:
    title: {en: Space, es: Espacio}
    section: fit
    weight: 4
    must: {caps: poor}
    reads: gap
    bands:
      - {name: short, below: 10 mm, earns: 0, advice: "{short_by} more, please."}
      - {name: right, earns: 100 %}
    because: {en: Toes need room., es: Los dedos necesitan sitio.}
    source: common practice
  tread_left:
    section: fit
    weight: 2
    reads: tread
    applies: worn
    bands: [{name: gone, below: 1 mm, earns: 0}, {name: left, earns: 100 %}]
    because: Grip.
    source: common practice
    advice: Have it soled.
  heel_counter:
    section: fit
    weight: 3
    must: {caps: fair}
    reads: counter
    levels: {soft: 0, firm: 100 %}
    because: Hold.
    source: common practice
    caution: Press gently.
    despite_referral: yes
    advice: Look for a firm one.
  lacing:
    section: fit
    weight: 1
    reads: lace
    levels: {laces: 100 %, hook and loop: {earns: 50 %, say: {en: Hook and loop., es: Velcro.}}}
    because: Hold.
    source: common practice
grades:
  good: {from: 80, means: Keep the pair.}
  fair: {from: 50, means: Think about it.}
  poor: {from: 0, means: Leave the pair.}
cautions: {none: This is no diagnosis.}
)";

const std::string safe = "safety: {numb: no, wound: no}\n";

Account told(const std::string& record, const std::vector<std::string>& languages = {}) {
  const Graded sample = graded(house, "inspection: {rules: house}\n" + record);
  return account(sample.program, sample.inspection, sample.verdict, languages);
}

const FindingAccount& of_rule(const Account& account, std::string_view title) {
  for (const FindingAccount& finding : account.findings) {
    if (finding.title == title) {
      return finding;
    }
  }
  FAIL("there is no finding called " << title);
  return account.findings.front();
}

TEST_CASE("a pair of which all was seen has a grade that stands") {
  const Account all = told(safe + "found: {gap: 12 mm, worn: no, counter: firm, lace: laces}\n");
  CHECK(all.title == "House");
  CHECK(all.grade == "good");
  CHECK(all.means == "Keep the pair.");
  CHECK(all.certainty == "The grade stands: all that counts was seen.");
  CHECK(all.caps.empty());
  CHECK(all.would_settle.empty());
  CHECK(all.sections == std::vector<std::string>{"Fit"});
}

TEST_CASE("a grade that nothing open can change says so") {
  const Account all = told(safe + "found: {gap: 12 mm, worn: no, counter: firm}\n");
  CHECK(all.certainty == "The grade stands, whatever was not seen.");
}

TEST_CASE("a provisional grade names every grade that it can still become") {
  CHECK(told(safe + "found: {gap: 12 mm, worn: no}\n").certainty ==
        "The grade is provisional: with what was not seen it can still become good or fair.");
  CHECK(told("found: {lace: laces}\n").certainty ==
        "The grade is provisional: with what was not seen it can still become good, fair or poor.");
}

TEST_CASE("where only an unseen must is open, the one possible grade is named") {
  const Account all = told(safe + "found: {gap: 5 mm, worn: no, lace: laces}\n");
  CHECK(all.grade == "poor");
  CHECK(all.certainty ==
        "The grade is provisional: a must was not seen. Even so, it can only come out as poor.");
  CHECK(all.would_settle == std::vector<std::string>{"Heel counter"});
}

TEST_CASE("an empty record has no grade") {
  const Account all = told("");
  CHECK(all.grade.empty());
  CHECK(all.means.empty());
  CHECK(all.certainty == "There is no grade: nothing that counts was seen.");
}

TEST_CASE("the failed musts that lowered a grade are named, and no others") {
  const Account one = told(safe + "found: {gap: 12 mm, worn: no, counter: soft, lace: laces}\n");
  CHECK(one.grade == "fair");
  CHECK(one.caps.empty());
  const Account two =
      told(safe + "found: {gap: 5 mm, worn: yes, tread: 3 mm, counter: firm, lace: laces}\n");
  CHECK(two.caps == "The score alone would give fair, but a must failed: Space (at best poor).");
}

TEST_CASE("several failed musts are told in one sentence") {
  std::string heavy = house;
  const std::string weight = "    weight: 1\n    reads: lace";
  heavy.replace(heavy.find(weight), weight.size(), "    weight: 60\n    reads: lace");
  const Graded sample =
      graded(heavy, "inspection: {rules: house}\n" + safe +
                        "found: {gap: 5 mm, worn: no, counter: soft, lace: laces}\n");
  CHECK(account(sample.program, sample.inspection, sample.verdict, {}).caps ==
        "The score alone would give good, but musts failed: Space (at best poor); "
        "Heel counter (at best fair).");
}

TEST_CASE("a sentence is made up from the band where the rule set has no words") {
  const Account all = told(safe + "found: {gap: {left: 9.96 mm, right: 12 mm}}\n");
  const FindingAccount& space = of_rule(all, "Space");
  CHECK(space.readings == "left 9.96 mm, right 12 mm");
  CHECK(space.sentence == "Left: 9.96 mm is short (below 10 mm), 0.04 mm short of 10 mm.");
  CHECK_FALSE(space.own_words);
  CHECK(space.because == "Toes need room.");
}

TEST_CASE("a level speaks by its meaning, with one full stop") {
  CHECK(of_rule(told("found: {counter: soft}\n"), "Heel counter").sentence ==
        "Soft: gives to the thumb.");
  CHECK(of_rule(told("found: {counter: firm}\n"), "Heel counter").sentence == "Firm: stands.");
  CHECK(of_rule(told("found: {lace: laces}\n"), "Lacing").sentence.empty());
}

TEST_CASE("what was not seen names the questions, each once, with sides and reasons") {
  const auto space = [](const std::string& record) {
    return of_rule(told(record), "Space").sentence;
  };
  CHECK(space("") == "It needs: Gap before the toe.");
  CHECK(space("found: {gap: {left: 12 mm}}\n") == "It needs: Gap before the toe (right).");
  CHECK(space("found: {gap: {not seen: no gauge}}\n") ==
        "It needs: Gap before the toe (no gauge).");
  CHECK(space("found: {gap: {left: {not seen: swollen}, right: {not seen: no gauge}}}\n") ==
        "It needs: Gap before the toe (swollen) (no gauge).");
}

TEST_CASE("a question mark ends a sentence") {
  const Account all = told("found: {tread: 3 mm}\n");
  CHECK(of_rule(all, "Tread left").sentence ==
        "Whether it applies is open. It needs: Is the pair worn?");
}

TEST_CASE("a rule that does not apply says no more than that") {
  const FindingAccount tread = of_rule(told("found: {worn: no, tread: 0 mm}\n"), "Tread left");
  CHECK(tread.sentence == "Does not apply here.");
  CHECK(tread.readings.empty());
}

TEST_CASE("notes beside the readings of a finding are told, each once") {
  const Account all = told(
      "found: {gap: {left: {value: 12 mm, note: creased}, right: {value: 13 mm, note: creased}},"
      " lace: {value: laces, note: frayed}}\n");
  CHECK(of_rule(all, "Space").notes == std::vector<std::string>{"creased"});
  CHECK(of_rule(all, "Lacing").notes == std::vector<std::string>{"frayed"});
  CHECK(of_rule(all, "Heel counter").notes.empty());
}

TEST_CASE("a safety answer comes with its sides, its notes and the reason why there is none") {
  const Account all = told(
      "safety: {numb: {left: no, right: {value: yes, note: since May}},"
      " wound: {not seen: bandaged}}\n");
  REQUIRE(all.safety.size() == 2);
  CHECK(all.safety[0].question == "Are the feet numb");
  CHECK(all.safety[0].sides == "right");
  CHECK(all.safety[0].referral == "See a practitioner about the feeling.");
  CHECK(all.safety[0].notes == std::vector<std::string>{"since May"});
  CHECK(all.safety[0].reason.empty());
  CHECK(all.safety[1].referral.empty());
  CHECK(all.safety[1].reason == "bandaged");
  CHECK(told("safety: {numb: yes}\n").safety[0].sides == "left and right");
}

TEST_CASE("advice is held back by a yes, but for the rules that say otherwise") {
  const std::string found = "found: {gap: 5 mm, worn: yes, tread: 0 mm, counter: soft}\n";
  const Account free = told(safe + found);
  CHECK(free.advice.size() == 3);
  CHECK(free.held_advice.empty());
  const Account held = told("safety: {numb: yes}\n" + found);
  REQUIRE(held.advice.size() == 1);
  CHECK(held.advice[0].title == "Heel counter");
  CHECK(held.held_advice.size() == 2);
}

TEST_CASE("words are filled, and go with the rule that they belong to") {
  const Account all = told(safe + "found: {gap: {left: 12 mm, right: 7.5 mm}, counter: soft}\n");
  REQUIRE(all.advice.size() == 2);
  CHECK(all.advice[0].title == "Space");
  CHECK(all.advice[0].words == "2.5 mm more, please.");
  REQUIRE(all.cautions.size() == 1);
  CHECK(all.cautions[0].title == "Heel counter");
  CHECK(all.cautions[0].words == "Press gently.");
}

TEST_CASE("the usual cautions of the rule set come before our own") {
  CHECK(
      told("").usual_cautions ==
      std::vector<std::string>{
          "This is no diagnosis.",
          "This report follows house rules. Local codes and licensed practice come before them."});
}

TEST_CASE("words are in the reader's language where there are any") {
  const Account all = told("found: {gap: 5 mm, lace: hook and loop}\n", {"es"});
  CHECK(all.title == "Casa");
  CHECK(of_rule(all, "Espacio").because == "Los dedos necesitan sitio.");
  CHECK(of_rule(all, "Lacing").sentence == "Velcro.");
  CHECK(of_rule(all, "Lacing").because == "Hold.");
}

TEST_CASE("a language that the rule set lacks falls back to its own order") {
  CHECK(told("", {"fr"}).title == "House");
  CHECK(told("", {"fr", "es"}).title == "Casa");
  const Graded sample = graded(house, "inspection: {rules: house}\n");
  const std::vector<std::string> reader{"fr"};
  CHECK(fallback_order(reader, sample.program.rules) == std::vector<std::string>{"fr", "en", "es"});
}

// RFC 4647, section 3.4, whose example falls back from `zh-Hant-CN-x-private1-private2`.
TEST_CASE("a language tag falls back part by part") {
  const Graded sample = graded(house, "inspection: {rules: house}\n");
  const std::vector<std::string> reader{"zh-Hant-CN-x-private1-private2", "es-MX"};
  CHECK(fallback_order(reader, sample.program.rules) ==
        std::vector<std::string>{"zh-Hant-CN-x-private1-private2", "zh-Hant-CN-x-private1",
                                 "zh-Hant-CN", "zh-Hant", "zh", "es-MX", "es", "en", "es"});
  CHECK(told("", {"es-MX"}).title == "Casa");
}

TEST_CASE("a rule without a title is called by its name in words") {
  CHECK(told("").findings[1].title == "Tread left");
}

}  // namespace
}  // namespace heelrule
