#include "engine/reading/load_rules.hpp"

#include <catch2/catch.hpp>
#include <map>

#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

using Files = std::map<std::string, std::string, std::less<>>;

struct Loading {
  Sources sources;
  LoadedRules loaded;

  std::string said() const { return show(loaded.diagnostics, sources); }
  std::string first_line() const { return said().substr(0, said().find('\n')); }
};

Loading load(const Files& files, std::string_view name = "a") {
  Loading loading;
  loading.loaded = load_rules(
      name,
      [&](std::string_view wanted, std::string_view) -> Parsed<FoundFile> {
        const auto found = files.find(wanted);
        if (found == files.end()) {
          return Problem{"there is no rule set `" + std::string(wanted) + "`", "name another"};
        }
        return FoundFile{found->first, found->first, found->second};
      },
      loading.sources);
  return loading;
}

// A rule set of its own in which only the title and one weight are of interest.
std::string whole(const std::string& title, const std::string& weight) {
  return "title: " + title +
         "\nsections: {fit: {title: Fit}}\n"
         "traits: {gap: {ask: Gap, measure: mm}}\n"
         "rules:\n  gap: {section: fit, weight: " +
         weight +
         ", reads: gap, bands: [{name: any, earns: 100 %}], because: B., source: common practice}\n"
         "grades: {all: {from: 0, means: All.}}\n";
}

std::string extending(const std::string& parents, const std::string& rest = "") {
  return "title: T\nextends: [" + parents + "]\n" + rest;
}

TEST_CASE("a rule set without parents is read as it is") {
  const Loading loading = load({{"a", whole("A", "5")}});
  CHECK(loading.said().empty());
  CHECK(loading.loaded.complete);
  CHECK(loading.loaded.rules.rules[0].weight.value == 5'000);
}

TEST_CASE("a rule set that is not to be had at all has no place") {
  const Loading loading = load({});
  CHECK(loading.said().empty());
  CHECK(loading.loaded.not_found == Problem{"there is no rule set `a`", "name another"});
  CHECK_FALSE(loading.loaded.complete);
}

TEST_CASE("a single key is changed, and all others stay") {
  const Loading loading =
      load({{"a", extending("b", "rules: {gap: {weight: 20}}\n")}, {"b", whole("B", "5")}});
  CHECK(loading.said().empty());
  CHECK(loading.loaded.rules.rules[0].weight.value == 20'000);
  CHECK(loading.loaded.rules.rules[0].reads.value == "gap");
}

TEST_CASE("what a parent says of itself is not inherited") {
  const Loading loading =
      load({{"a", extending("b")}, {"b", "edition: old\nabout: The parent.\n" + whole("B", "5")}});
  CHECK(loading.loaded.rules.title.in({}) == "T");
  CHECK(loading.loaded.rules.edition.empty());
  CHECK(loading.loaded.rules.about.empty());
}

TEST_CASE("several parents are taken in, in order") {
  const Loading loading = load({{"a", extending("b, c")},
                                {"b", whole("B", "5")},
                                {"c", "title: C\ntraits: {tilt: {ask: Tilt, measure: °}}\n"}});
  CHECK(loading.said().empty());
  REQUIRE(loading.loaded.rules.traits.size() == 2);
  CHECK(loading.loaded.rules.traits[1].name == "tilt");
}

TEST_CASE("a diamond is one file, and an override on one way beats it on the other") {
  for (const std::string parents : {"b, c", "c, b", "b, d", "d, b, c"}) {
    CAPTURE(parents);
    const Loading loading =
        load({{"a", extending(parents)},
              {"b", extending("d", "rules: {gap: {weight: 20}}\n")},
              {"c", extending("d", "traits: {tilt: {ask: Tilt, measure: °}}\n")},
              {"d", whole("D", "5")}});
    CHECK(loading.said().empty());
    CHECK(loading.loaded.rules.rules[0].weight.value == 20'000);
  }
}

TEST_CASE("two parents that disagree are an error with both places, unless the file decides") {
  Files files{{"a", extending("b, c")}, {"b", whole("B", "5")}, {"c", whole("C", "7")}};
  CHECK(load(files).said() ==
        "a:2:10: error: two of these say different things about `rules.gap.weight`\n"
        "    2 | extends: [b, c]\n"
        "      |          ^\n"
        "b:5:31: note: one says this\n"
        "    5 |   gap: {section: fit, weight: 5, reads: gap, bands: [{name: any, earns: 100 %}], "
        "because: B., source: common practice}\n"
        "      |                               ^\n"
        "c:5:31: note: the other says this\n"
        "    5 |   gap: {section: fit, weight: 7, reads: gap, bands: [{name: any, earns: 100 %}], "
        "because: B., source: common practice}\n"
        "      |                               ^\n"
        "hint: say it in this file too, which decides it, or drop it\n");
  files["a"] = extending("b, c", "rules: {gap: {weight: 6}}\n");
  CHECK(load(files).said().empty());
  CHECK(load(files).loaded.rules.rules[0].weight.value == 6'000);
  files["a"] = extending("b, c", "drop: [rules.gap]\n");
  CHECK(load(files).said().empty());
  CHECK(load(files).loaded.rules.rules.empty());
}

TEST_CASE("a whole rule or a single key is dropped, and can be written anew") {
  Files files{{"a", extending("b",
                              "drop: [rules.gap.bands]\nrules: {gap: {bands: [{name: all, "
                              "earns: 50 %}]}}\n")},
              {"b", whole("B", "5")}};
  CHECK(load(files).said().empty());
  CHECK(load(files).loaded.rules.rules[0].bands[0].name.value == "all");
  files["a"] = extending("b", "drop: [rules.gop]\n");
  CHECK(load(files).first_line() == "a:3:8: error: there is no `rules.gop` to drop");
}

TEST_CASE("a circle is named with every rule set of it") {
  const Loading loading =
      load({{"a", extending("b")}, {"b", extending("c")}, {"c", extending("b")}});
  CHECK(loading.first_line() ==
        "c:2:11: error: these rule sets run in a circle: `b` extends `c` extends `b`");
  CHECK(loading.loaded.diagnostics.error_count() == 1);
  CHECK_FALSE(loading.loaded.complete);
}

TEST_CASE("a chain of files has an end") {
  Files files;
  for (int i = 0; i < 40; ++i) {
    files["f" + std::to_string(i)] = extending("f" + std::to_string(i + 1));
  }
  const Loading loading = load(files, "f0");
  CHECK(loading.said() ==
        "f31:2:11: error: this builds on more than 32 files in a row or 1000 in all\n"
        "    2 | extends: [f32]\n"
        "      |           ^~~\n"
        "hint: build on fewer\n");
}

TEST_CASE("a thousand files are enough") {
  Files files;
  std::string all;
  for (int i = 0; i < 1'001; ++i) {
    const std::string name = "f" + std::to_string(i);
    files[name] = "title: " + name + "\n";
    all += (i == 0 ? "" : ", ") + name;
  }
  files["a"] = extending(all);
  const Loading loading = load(files);
  CHECK(loading.loaded.diagnostics.error_count() == 1);
  CHECK_FALSE(loading.loaded.complete);
}

TEST_CASE("a parent that cannot be read is one error, and what it may hold is not missed") {
  const std::string own = extending("b, nowhere",
                                    "drop: [rules.other]\n"
                                    "traits: {tilt: {per: shoe}}\n"
                                    "rules: {gap: {weight: 20}, heel: {wieght: 5}}\n");
  const Loading loading = load({{"a", own}, {"b", "title: B\ntraits: {gap: \n"}});
  CHECK(loading.said() ==
        "a:2:14: error: there is no rule set `nowhere`\n"
        "    2 | extends: [b, nowhere]\n"
        "      |              ^~~~~~~\n"
        "hint: name another\n"
        "a:5:35: error: `wieght` is no key of a rule\n"
        "    5 | rules: {gap: {weight: 20}, heel: {wieght: 5}}\n"
        "      |                                   ^~~~~~\n"
        "hint: did you mean `weight`?\n"
        "b:2:9: error: this `{` is never closed\n"
        "    2 | traits: {gap: \n"
        "      |         ^\n"
        "hint: write the `}` that belongs to it\n");
  CHECK_FALSE(loading.loaded.complete);
}

TEST_CASE("each file says for which version of the language it is written") {
  CHECK(load({{"a", "heelrule: 1\n" + whole("A", "5")}}).said().empty());
  const Loading loading = load({{"a", extending("b")}, {"b", "heelrule: 2\n" + whole("B", "5")}});
  CHECK(loading.first_line() ==
        "b:1:11: error: version `2` of the rule language is not known here");
}

TEST_CASE("a byte order mark at the start of a rule file is taken off") {
  CHECK(load({{"a", "\xEF\xBB\xBF" + whole("A", "5")}}).said().empty());
}

}  // namespace
}  // namespace heelrule
