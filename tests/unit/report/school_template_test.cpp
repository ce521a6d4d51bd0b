#include "engine/report/school_template.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

std::string fault(const std::string& body) { return body_problem(body).message; }
std::string style_fault(const std::string& style) {
  return school_template("<style>" + style + "</style>").problem().message;
}

TEST_CASE("a template is cut into its style and its body") {
  const auto made = school_template("\n<style>h2 { color: teal }</style>\n<p>{{means}}</p>\n");
  REQUIRE(made);
  CHECK(made->style == "h2 { color: teal }");
  CHECK(made->body == "\n<p>{{means}}</p>\n");
  CHECK(school_template("<p>plain</p>")->style.empty());
}

TEST_CASE("plain elements, closed where they were opened, are a sound body") {
  CHECK(fault("<section class=\"a\"><h2>Words</h2><ul><li>one</li><li>two</li></ul><br><hr/>"
              "<table><tbody><tr><td colspan=\"2\">x</td></tr></tbody></table></section>")
            .empty());
  CHECK(fault("<figure><svg class=\"p\" role=\"img\"><title id=\"t\">T</title><line x1=\"0\"/>"
              "</svg></figure>")
            .empty());
  CHECK(fault("no element, and &lt;no sign&gt;").empty());
}

TEST_CASE("what could swallow the cautions is refused") {
  for (const char* body :
       {"<!-- all that follows", "<textarea>", "<title>", "<style>", "<script>", "<plaintext>",
        "<template>", "<noscript>", "<iframe src=\"a\">", "<xmp>", "<select>", "<dialog>",
        "<details>", "<svg><foreignObject>", "<svg><style>", "<math>", "<![CDATA[", "<?php"}) {
    INFO(body);
    CHECK(!fault(body).empty());
  }
}

TEST_CASE("what could close the box around the body is refused") {
  CHECK(fault("</article>") ==
        "the template closes `</article>` where it is not open, in line 1 of the page's body");
  CHECK(!fault("</main>").empty());
  CHECK(!fault("<div></section></div>").empty());
  CHECK(!fault("<article></article>").empty());
  CHECK(fault("<div>\n<p>\n") == "the template does not close `<p>`");
}

TEST_CASE("attributes have their value in double quotes, and run nothing") {
  CHECK(fault("<p class=a>") ==
        "an attribute of `<p>` is not written as NAME=\"VALUE\", in line 1 of the page's body");
  CHECK(!fault("<p class='a'>").empty());
  CHECK(!fault("<p class=\"a").empty());
  CHECK(!fault("<p hidden>").empty());
  CHECK(fault("<p>\n<span onclick=\"a()\"></span></p>") ==
        "the template has `onclick`, and a report runs no script, in line 2 of the page's body");
}

TEST_CASE("messages say what to write instead") {
  CHECK(body_problem("<div><p></div>").hint == "write `</p>` first");
  CHECK(body_problem("<p/>").message ==
        "the template closes `<p/>` in itself, in line 1 of the page's body");
  CHECK(body_problem("<p/>").hint == "write `<p></p>`");
  CHECK(body_problem("<form>").message ==
        "the template has `<form>`, which a report may not hold, in line 1 of the page's body");
  CHECK(body_problem("a < b").message ==
        "the template has a `<` that begins no element, in line 1 of the page's body");
}

TEST_CASE("a style keeps its brackets, quotes and comments closed") {
  CHECK(style_fault("h2::before { content: \"}\"; } /* } */ @media print { p { margin: 0 } }")
            .empty());
  for (const char* style :
       {"}", "h2 { } }", "h2 { content: \"} }", "/* open", "h2 { content: '\n' }",
        "h2 { background: url(a) }", "h2 { background: URL(a) }", "\\7d", "(]", "a <b"}) {
    INFO(style);
    CHECK(
        style_fault(style) ==
        "the style of the template could leave its place: its brackets, quotes or comments do not "
        "close as they were opened");
  }
  CHECK(style_fault("h2 {") == "the style of the template does not close a `{`");
}

TEST_CASE("a style reaches the body alone") {
  CHECK(scoped("p { color: teal }") == "@scope (.school) {\np { color: teal }\n}\n");
  CHECK(scoped("").empty());
}

TEST_CASE("a template that cannot be read says why") {
  CHECK(school_template("<style>h2 {}").problem().message ==
        "the template does not close `<style>`");
  CHECK(school_template(std::string(most_template_bytes + 1, 'a')).problem().message ==
        "the template is larger than 256 KiB");
  CHECK(school_template("a\x01").problem().message.starts_with("the template holds "));
}

}  // namespace
}  // namespace heelrule
