#include "engine/reading/map_reader.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

struct Map {
  explicit Map(const std::string& text) {
    const auto source = sources.add("m", text);
    node = *read_yaml(sources, source, diagnostics);
  }

  std::string said() const {
    std::string messages;
    for (const Diagnostic& diagnostic : diagnostics.by_place()) {
      messages += diagnostic.message + " / " + diagnostic.hint + "\n";
    }
    return messages;
  }

  Sources sources;
  Diagnostics diagnostics;
  Node node;
};

TEST_CASE("a misspelt key is read as the one that was probably meant, and reported once") {
  Map map("wieght: 5\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  CHECK(reader.required_text("weight", "5").value == "5");
  reader.finish();
  CHECK(map.said() == "`wieght` is no key of a rule / did you mean `weight`?\n");
}

TEST_CASE("the right key goes before one that is like it") {
  Map map("wieght: 5\nweight: 7\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  CHECK(reader.text("weight").value == "7");
  reader.finish();
  CHECK(map.said() == "`wieght` is no key of a rule / did you mean `weight`?\n");
}

TEST_CASE("keys that are missing are reported with a sample") {
  Map map("weight: 5\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  reader.text("weight");
  reader.required_text("reads", "toe_allowance");
  reader.finish();
  CHECK(map.said() == "a rule needs `reads` / add `reads: toe_allowance`\n");
}

TEST_CASE("nothing and blanks are no value, except of a remark") {
  Map map("weight:\nreads: '  '\nnote:\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  reader.text("weight");
  reader.required_text("reads", "toe_allowance");
  CHECK(reader.remark("note").empty());
  reader.finish();
  CHECK(map.said() ==
        "`weight` has no value / write one, or leave the key out\n"
        "`reads` has no value / write one, or leave the key out\n");
}

TEST_CASE("a key that is known twice is listed once") {
  Map map("colour: red\n");
  MapReader reader(map.node, {}, "a grade", map.diagnostics);
  reader.take("from");
  reader.take("from");
  reader.take("means");
  reader.finish();
  CHECK(map.said() == "`colour` is no key of a grade / its keys are `from`, `means`\n");
}

TEST_CASE("a blank missing after the colon, and a comma in a number, are told apart") {
  Map map("{weight:5, cut: 24, 3 mm, }\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  reader.text("cut");
  reader.finish();
  CHECK(map.said() ==
        "`weight:5` is no key of a rule / write a blank after the `:`\n"
        "`3 mm` is no key of a rule / a comma ends the value before it: write a decimal point\n");
}

TEST_CASE("where a map is due and something else stands, that is all that is said") {
  Map map("[a, b]\n");
  MapReader reader(map.node, {}, "a rule", map.diagnostics);
  reader.required_text("reads", "toe_allowance");
  CHECK(reader.excuses_missing());
  reader.finish();
  CHECK(map.said() ==
        "a rule is a map of keys, and this is a list / write `key: value` lines below it, "
        "indented\n");
}

TEST_CASE("names are small ASCII letters, digits and underscores") {
  Diagnostics diagnostics;
  for (const std::string name : {"a", "toe_allowance", "x2", "a_"}) {
    CHECK(check_name({name, {}}, "rule", diagnostics));
  }
  for (const std::string name : {"", "A", "1st", "_a", "a-b", "a b", "é", "a.b"}) {
    CHECK_FALSE(check_name({name, {}}, "rule", diagnostics));
  }
  CHECK(check_name({std::string(64, 'a'), {}}, "rule", diagnostics));
  CHECK_FALSE(check_name({std::string(65, 'a'), {}}, "rule", diagnostics));
}

}  // namespace
}  // namespace heelrule
