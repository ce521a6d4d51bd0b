#include "engine/drawing/markup.hpp"

#include <catch2/catch.hpp>
#include <string>

namespace heelrule {
namespace {

TEST_CASE("what is syntax in HTML becomes a reference, and other text stays as it is") {
  CHECK(markup_text("<script>alert('1' & \"2\")</script>") ==
        "&lt;script&gt;alert(&#39;1&#39; &amp; &quot;2&quot;)&lt;/script&gt;");
  CHECK(markup_text("5½ – größer 足") == "5½ – größer 足");
  CHECK(markup_text("") == "");
}

TEST_CASE("what XML forbids and what turns text around is made visible") {
  CHECK(markup_text("a\x1B"
                    "b\x7F") ==
        "a\xEF\xBF\xBD"
        "b\xEF\xBF\xBD");
  CHECK(markup_text("\xFF") == "\xEF\xBF\xBD");
  CHECK(markup_text("a\u202Eb") == "a\\u202eb");
  CHECK(markup_text("two\nlines") == "two lines");
}

TEST_CASE("a tower of combining marks keeps four of them") {
  std::string tower = "a";
  for (int i = 0; i < 2000; ++i) {
    tower += "\u0301";
  }
  CHECK(markup_text(tower + "b") ==
        "a\u0301\u0301\u0301\u0301\xEF\xBF\xBD"
        "b");
  CHECK(markup_text("e\u0301e\u0301") == "e\u0301e\u0301");
}

TEST_CASE("a string of CSS holds nothing but letters, digits, blanks and escapes") {
  CHECK(css_string("C 14", 40) == "\"C 14\"");
  CHECK(css_string("\"}</style>\\", 40) == R"("\000022\00007d\00003c\00002fstyle\00003e\00005c")");
  CHECK(css_string("12, 5  a b", 40) == R"("12\00002c\0000205  a b")");
  CHECK(css_string("é", 40) == R"("\0000e9")");
  CHECK(css_string("a\u202E\u0301\x1B", 40) == R"("a\00fffd\00fffd\00fffd")");
  CHECK(css_string("abcdef", 3) == R"("abc\002026")");
}

}  // namespace
}  // namespace heelrule
