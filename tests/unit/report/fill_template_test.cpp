#include "engine/report/fill_template.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("words are escaped with two braces and with three, and markup is not") {
  PageData data;
  data.words("note", "<b>&");
  data.markup("picture", "<svg/>");
  CHECK(*fill_template("{{note}}|{{{note}}}|{{&note}}|{{picture}}", data) ==
        "&lt;b&gt;&amp;|&lt;b&gt;&amp;|&lt;b&gt;&amp;|<svg/>");
}

TEST_CASE("lists repeat, facts ask, and what is not there is left out") {
  PageData data;
  data.each("notes", {"one", "two"});
  data.fact("is_good", true);
  data.fact("is_bad", false);
  CHECK(*fill_template("{{#notes}}[{{words}}]{{/notes}}{{#is_good}}good{{/is_good}}"
                       "{{#is_bad}}bad{{/is_bad}}{{^is_bad}}, not bad{{/is_bad}}{{nothing}}",
                       data) == "[one][two]good, not bad");
}

TEST_CASE("braces inside words are words") {
  PageData data;
  data.words("note", "{{note}}");
  CHECK(*fill_template("{{note}}", data) == "{{note}}");
}

TEST_CASE(
    "a part stands in its place with the names around it, and one that is not known does not") {
  PageData data;
  data.each("notes", {"one", "two"});
  const std::string text = "{{#notes}}{{> note}}{{/notes}}{{> nothing}}";
  CHECK(*fill_template(text, data, {{"note", "[{{words}}]"}}) == "[one][two]");
  CHECK(fill_template(text, data)->empty());
}

TEST_CASE("a template that is none is a problem") {
  CHECK(fill_template("{{#a}}", PageData())
            .problem()
            .message.starts_with("the template cannot be read: "));
  CHECK(!fill_template("{{a", PageData()));
}

TEST_CASE("lists inside themselves come to an end") {
  PageData data;
  for (int i = 0; i < 1000; ++i) {
    data.add("a").words("words", "x");
  }
  const std::string open = "{{#a}}{{#a}}{{#a}}{{#a}}{{#a}}{{#a}}";
  const std::string close = "{{/a}}{{/a}}{{/a}}{{/a}}{{/a}}{{/a}}";
  CHECK(fill_template(open + "{{words}}" + close, data).problem().message ==
        "the template makes a page of more than 64 MiB");
}

}  // namespace
}  // namespace heelrule
