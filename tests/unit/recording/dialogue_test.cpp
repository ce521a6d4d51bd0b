#include "engine/recording/dialogue.hpp"

#include <catch2/catch.hpp>

#include "engine/recording/record_yaml.hpp"
#include "tests/unit/recording/house.hpp"

namespace heelrule {
namespace {

const Program& house() {
  static const Program program =
      house_with(R"(  closed_by: {ask: Closed by, section: look, choice: [laces, back]}
  foot:
    ask: Length of the foot
    section: feet
    how: Read at the longest toe.
    measure: mm
    per: foot
    plausible: 80 mm .. 340 mm)");
  return program;
}

struct Bench {
  Draft draft{house()};
  Dialogue dialogue{house(), draft, {}, "2026-10-03"};
  std::vector<JournalEntry> kept;

  Turn type(const std::string& line) {
    Turn turn = dialogue.take(line);
    kept.insert(kept.end(), turn.to_keep.begin(), turn.to_keep.end());
    return turn;
  }
  Bench& lines(const std::vector<std::string>& all) {
    for (const std::string& line : all) {
      const Turn turn = type(line);
      INFO(line << ": " << turn.refused.value_or(Problem{}).message);
      CHECK_FALSE(turn.refused);
    }
    return *this;
  }
  std::string yaml() const { return record_yaml(draft.record(std::nullopt)); }
};

const std::vector<std::string> all_answers{"",   "S-07", "C-014", "",       "",           "",
                                           "no", "yes",  "laces", "243 mm", "246, 247 mm"};

}  // namespace

TEST_CASE("questions come in order, under their headings, the sides after one another") {
  Bench bench;
  CHECK(bench.dialogue.question() ==
        "\nThe inspection (1 of 4)\n\nDay of the inspection\n"
        "  year, month and day; Enter alone is 2026-10-03\n");
  CHECK(bench.dialogue.prompt() == "> ");
  bench.lines({"", "S-07", "C-014", "", "", ""});
  CHECK(bench.dialogue.question() == "\nSafety (2 of 4)\n\nNumb?\n  yes or no\n");
  bench.lines({"no", "yes", "laces"});
  CHECK(bench.dialogue.question() ==
        "\nFeet (4 of 4)\n\nLength of the foot\n"
        "  in mm, cm or in; plausible is 80 mm to 340 mm\n");
  CHECK(bench.dialogue.prompt() == "left> ");
  bench.lines({"243 mm"});
  CHECK(bench.dialogue.question().empty());
  CHECK(bench.dialogue.prompt() == "right> ");
}

TEST_CASE("a whole sitting makes a whole record") {
  Bench bench;
  bench.lines(all_answers);
  CHECK(bench.dialogue.prompt() == "what next> ");
  CHECK(bench.dialogue.question().find("Everything is answered.") != std::string::npos);
  CHECK(bench.type("finish").finished);
  CHECK(bench.yaml() ==
        "inspection:\n  rules: \"house\"\n  date: \"2026-10-03\"\n  observer: \"S-07\"\n"
        "  client: \"C-014\"\n\n"
        "safety:\n  numb: \"no\"\n\n"
        "found:\n  worn: \"yes\"\n  closed_by: \"laces\"\n"
        "  foot: {left: \"243 mm\", right: [\"246\", \"247 mm\"]}\n");
}

TEST_CASE("what was kept, played again, makes the same record at every point") {
  Bench bench;
  bench.lines({"", "S-07", "C-014", "", "", "", "skip nobody to ask", "yes", "go worn", "back",
               "n # asked twice", "go foot", "both 243 mm", "go feet", "9.5 in"});
  for (std::size_t count = 0; count <= bench.kept.size(); ++count) {
    Bench again;
    for (std::size_t i = 0; i < count; ++i) {
      CHECK(again.dialogue.replay(bench.kept[i]).message.empty());
    }
    Bench first;
    for (std::size_t i = 0; i < count; ++i) {
      first.type("go " + bench.kept[i].key);
      first.type((bench.kept[i].key == "foot" ? "both " : "") + bench.kept[i].typed);
    }
    CHECK(again.yaml() == first.yaml());
    if (count == bench.kept.size()) {
      CHECK(again.yaml() == bench.yaml());
    }
  }
}

TEST_CASE("a refused answer changes nothing, and the question stands") {
  Bench bench;
  const Turn date = bench.type("yesterday");
  REQUIRE(date.refused);
  CHECK(date.refused->message == "`yesterday` is no date");
  CHECK(date.to_keep.empty());
  bench.lines({"", "", "", "", "", ""});
  const std::string before = bench.yaml();
  CHECK(bench.type("perhaps").refused);
  CHECK(bench.type("both no").refused->message == "this has no sides");
  CHECK(bench.yaml() == before);
  CHECK(bench.dialogue.question().find("Numb?") != std::string::npos);
}

TEST_CASE("Enter alone leaves open what is open, and keeps what stands there") {
  Bench bench;
  bench.lines(all_answers);
  bench.lines({"go worn"});
  CHECK(bench.dialogue.question().find("now yes; Enter alone keeps it") != std::string::npos);
  const std::string before = bench.yaml();
  bench.lines({"", "", "", ""});
  CHECK(bench.yaml() == before);
  CHECK(bench.dialogue.prompt() == "what next> ");
  Bench other;
  other.lines({"", "", "", "", "", "", "", "", "", "", ""});
  CHECK(other.dialogue.question().find("5 answers are open.") != std::string::npos);
}

TEST_CASE("once everything was asked, what is open is asked alone") {
  Bench bench;
  bench.lines({"", "", "", "", "", "", "no", "", "laces", "", "246 mm"});
  CHECK(bench.dialogue.prompt() == "what next> ");
  CHECK(bench.dialogue.question().find("2 answers are open. Enter alone leads to the first") !=
        std::string::npos);
  bench.lines({""});
  CHECK(bench.dialogue.question().find("Worn?") != std::string::npos);
  bench.lines({"yes"});
  CHECK(bench.dialogue.prompt() == "left> ");
  bench.lines({"243 mm"});
  CHECK(bench.dialogue.prompt() == "right> ");
  bench.lines({""});
  CHECK(bench.dialogue.question().find("Everything is answered.") != std::string::npos);
  bench.lines({""});
  CHECK(bench.dialogue.prompt() == "what next> ");
}

TEST_CASE("a yes to a safety question says at once who comes first") {
  Bench bench;
  bench.lines({"go numb"});
  CHECK(bench.type("no").words.empty());
  bench.lines({"go numb"});
  CHECK(bench.type("yes").words == "  See a licensed practitioner first: See somebody.\n");
  bench.lines({"go numb"});
  CHECK(bench.type("y # both feet").words ==
        "  yes (note: both feet)\n  See a licensed practitioner first: See somebody.\n");
}

TEST_CASE("whoever finishes early is first told what is open") {
  Bench bench;
  bench.lines({"", "", "", "", "", "", "no"});
  CHECK_FALSE(bench.type("finish").finished);
  CHECK(bench.dialogue.question().find("4 answers are open.") != std::string::npos);
  CHECK(bench.type("finish").finished);
}

TEST_CASE("in a record that is amended each change leads back to the end") {
  Bench bench;
  bench.dialogue.begin_at_end();
  bench.lines({"go worn", "no"});
  CHECK(bench.dialogue.prompt() == "what next> ");
  bench.lines({"go foot", "243 mm"});
  CHECK(bench.dialogue.prompt() == "right> ");
  bench.lines({""});
  CHECK(bench.dialogue.prompt() == "what next> ");
  bench.lines({"go inspection.note", "go end"});
  CHECK(bench.dialogue.prompt() == "what next> ");
  bench.lines({"go look", "", "laces"});
  CHECK(bench.dialogue.prompt() == "what next> ");
}

TEST_CASE("both sides may be skipped at once, with one reason") {
  Bench bench;
  bench.lines({"go foot", "both skip no tape at hand"});
  CHECK(bench.kept.back() == JournalEntry{"foot", "skip no tape at hand"});
  CHECK(bench.yaml().find("foot: {\"not seen\": \"no tape at hand\"}") != std::string::npos);
  Bench again;
  CHECK(again.dialogue.replay(bench.kept.back()).message.empty());
  CHECK(again.yaml() == Bench{}.lines({"go foot", "both skip no tape at hand"}).yaml());
  CHECK(bench.lines({"go foot"}).type("both").refused->message == "`both` has no value");
}

TEST_CASE("a level that is called as a command is an answer where it is one") {
  Bench bench;
  bench.lines({"go closed_by", "back"});
  CHECK(bench.yaml().find("closed_by: \"back\"") != std::string::npos);
}

TEST_CASE("go finds sections by name, number and title, and traits by name and question") {
  for (const char* place : {"foot", "foot.left", "feet", "4", "Feet", "length of the"}) {
    CAPTURE(place);
    Bench bench;
    bench.lines({std::string("go ") + place});
    CHECK(bench.dialogue.prompt() == "left> ");
  }
  Bench bench;
  CHECK(bench.type("go fete").refused->hint == "did you mean `feet`?");
  CHECK(bench.type("go").refused->hint ==
        "the sections are `inspection`, `safety`, `look`, `feet`");
}

TEST_CASE("? tells how to measure, and what may be typed") {
  Bench bench;
  bench.lines({"go foot"});
  const std::string words = bench.type("?").words;
  CHECK(words.find("Read at the longest toe.") != std::string::npos);
  CHECK(words.find("skip REASON") != std::string::npos);
}

TEST_CASE("what was completed or taken apart is shown again") {
  Bench bench;
  bench.lines({"go worn"});
  CHECK(bench.type("y").words == "  yes\n");
  bench.lines({"go foot"});
  CHECK(bench.type("243 mm").words.empty());
  CHECK(bench.type("360 mm ! # tall").words == "  360 mm (confirmed: yes; note: tall)\n");
}

TEST_CASE("review shows all that was answered, and what is open") {
  Bench bench;
  bench.lines({"", "S-07", "C-014", "", "", "", "no", "skip lost", "", "243 mm"});
  const std::string words = bench.type("review").words;
  CHECK(words.find("Numb?") != std::string::npos);
  CHECK(words.find("not seen: lost") != std::string::npos);
  CHECK(words.find("left 243 mm, right open") != std::string::npos);
}

TEST_CASE("a kept answer that the rules do not know any more is told of") {
  Bench bench;
  CHECK(bench.dialogue.replay({"gone.left", "1 mm"}).message ==
        "there is no `gone.left` in these rules");
  CHECK_FALSE(bench.dialogue.replay({"foot.left", "999 mm"}).message.empty());
}

}  // namespace heelrule
