#include "engine/report/text_page.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using Tone = TextPage::Tone;

TEST_CASE("a title is underlined, and a heading stands after an empty line") {
  TextPage page(false);
  page.title("Größe");
  page.line("client C-014");
  page.line("");
  page.heading("Failed", Tone::urgent);
  page.item("one");
  page.detail("more of it");
  page.inner_item("below");
  page.numbered(12, "twelve");
  CHECK(page.take() ==
        "Größe\n"
        "=====\n"
        "client C-014\n"
        "\n"
        "Failed\n"
        "  - one\n"
        "      more of it\n"
        "      - below\n"
        " 12. twelve\n");
}

TEST_CASE("the underline of a long title is no longer than a line") {
  TextPage page(false);
  std::string title;
  for (int i = 0; i < 20; ++i) {
    title += "walking ";
  }
  page.title(title);
  const std::string text = page.take();
  CHECK(text.find("\n" + std::string(80, '=') + "\n") != std::string::npos);
  CHECK(text.find(std::string(81, '=')) == std::string::npos);
}

TEST_CASE("colour is around titles and headings alone, and takes no word away") {
  TextPage plain(false);
  TextPage painted(true);
  for (TextPage* page : {&plain, &painted}) {
    page->title("A pair");
    page->heading("See somebody first", Tone::urgent);
    page->heading("Passed");
    page->item("one");
  }
  std::string text = painted.take();
  CHECK(text ==
        "\x1b[1mA pair\x1b[0m\n======\n\n\x1b[1;31mSee somebody first\x1b[0m\n\n"
        "\x1b[1mPassed\x1b[0m\n  - one\n");
  for (std::size_t at = text.find('\x1b'); at != std::string::npos; at = text.find('\x1b')) {
    text.erase(at, text.find('m', at) - at + 1);
  }
  CHECK(text == plain.take());
}

TEST_CASE("the second words of a table stand in one column") {
  TextPage page(false);
  page.table({{"Fit", "100"}, {"Größe", "7"}});
  CHECK(page.take() == "\n  Fit    100\n  Größe  7\n");
}

TEST_CASE("a row whose first words are too long ends beside its second words") {
  TextPage page(false);
  page.table({{"Fit", "1"}, {"How the pair sits on both feet while the client walks", "2"}});
  CHECK(page.take() ==
        "\n"
        "  Fit             1\n"
        "  How the pair sits on both feet while the\n"
        "    client walks  2\n");
}

TEST_CASE("a table without rows is nothing") {
  TextPage page(false);
  page.table({});
  CHECK(page.take().empty());
}

TEST_CASE("words from a record cannot paint the page") {
  TextPage page(true);
  page.title("\x1b[8mhidden");
  page.heading(
      "\xc2\x9b"
      "31m");
  page.item("\x1b]0;owned\x07");
  page.table({{"\x1b[2J", "1"}});
  const std::string text = page.take();
  CHECK(text ==
        "\x1b[1m\\x1b[8mhidden\x1b[0m\n=============\n\n\x1b[1m\\x9b31m\x1b[0m\n"
        "  - \\x1b]0;owned\\x07\n\n  \\x1b[2J  1\n");
}

}  // namespace
}  // namespace heelrule
