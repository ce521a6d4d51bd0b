#include "engine/report/json_writer.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

void write_sample(JsonWriter& json) {
  json.begin_object().text("name", "C-014").number("points", 79.96).truth("stands", false);
  json.key("none").null();
  json.key("empty").begin_array().end_array();
  json.key("list").begin_array().number(1).begin_object().end_object().text("two").end_array();
  json.end_object();
}

TEST_CASE("an indented document has a line for each value, two blanks further in a level") {
  JsonWriter json;
  write_sample(json);
  CHECK(json.take() ==
        "{\n"
        "  \"name\": \"C-014\",\n"
        "  \"points\": 79.96,\n"
        "  \"stands\": false,\n"
        "  \"none\": null,\n"
        "  \"empty\": [],\n"
        "  \"list\": [\n"
        "    1,\n"
        "    {},\n"
        "    \"two\"\n"
        "  ]\n"
        "}");
}

TEST_CASE("a compact document is one line without blanks") {
  JsonWriter json(JsonWriter::Layout::compact);
  write_sample(json);
  CHECK(
      json.take() ==
      R"({"name":"C-014","points":79.96,"stands":false,"none":null,"empty":[],"list":[1,{},"two"]})");
}

// RFC 8259, section 7: the quotation mark, the reverse solidus and U+0000 to U+001F must be
// escaped.
TEST_CASE("quotes, backslashes and control characters are escaped") {
  CHECK(json_text("a \"b\" \\ c") == R"("a \"b\" \\ c")");
  CHECK(json_text("a\nb\tc\rd") == R"("a\nb\u0009c\u000dd")");
  CHECK(json_text(std::string_view("\0\x1b\x1f", 3)) == R"("\u0000\u001b\u001f")");
  CHECK(json_text("\x7f\xc2\x80\xc2\x9f\xc2\xa0") == "\"\\u007f\\u0080\\u009f\xc2\xa0\"");
}

// https://html.spec.whatwg.org, "Restrictions for contents of script elements": `<!--` and
// `</script` would end or change an element that holds the document. U+2028 and U+2029 end a line
// of older JavaScript (ECMA-262 before 2019).
TEST_CASE("what would break out of a page or a line of script is escaped") {
  CHECK(json_text("</script>") == R"("\u003c/script>")");
  CHECK(json_text("\xe2\x80\xa8\xe2\x80\xa9") == R"("\u2028\u2029")");
}

TEST_CASE("characters that turn the direction of text are escaped") {
  CHECK(json_text("a\xe2\x80\xae"
                  "b") == R"("a\u202eb")");
  CHECK(json_text("\xe2\x81\xa6") == R"("\u2066")");
}

TEST_CASE("other characters stay as they are") {
  CHECK(json_text("UK 5½ · 7° · größe · 靴 · 👟") == "\"UK 5½ · 7° · größe · 靴 · 👟\"");
}

TEST_CASE("a byte that is not UTF-8 becomes U+FFFD, and the text goes on") {
  CHECK(json_text("a\xff"
                  "b\xc3") == R"("a\ufffdb\ufffd")");
}

TEST_CASE("keys are escaped as texts are") {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object().truth("a\"b", true).end_object();
  CHECK(json.take() == R"({"a\"b":true})");
}

TEST_CASE("a number is the shortest one that reads back the same") {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_array().number(0).number(-0.5).number(1.0 / 3).number(1e21).number(243).end_array();
  CHECK(json.take() == "[0,-0.5,0.3333333333333333,1e+21,243]");
}

}  // namespace
}  // namespace heelrule
