#include "engine/report/school_mark.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using namespace std::string_literals;

std::string png(const std::string& width, const std::string& height) {
  return "\x89PNG\r\n\x1A\n\0\0\0\rIHDR"s + width + height + "\x08\x06\0\0\0"s;
}

// RFC 4648, section 10.
TEST_CASE("base64 as in its RFC") {
  CHECK(base64("") == "");
  CHECK(base64("f") == "Zg==");
  CHECK(base64("fo") == "Zm8=");
  CHECK(base64("foo") == "Zm9v");
  CHECK(base64("foob") == "Zm9vYg==");
  CHECK(base64("fooba") == "Zm9vYmE=");
  CHECK(base64("foobar") == "Zm9vYmFy");
}

TEST_CASE("a PNG is one by its bytes, and of a size that can be shown") {
  const auto mark = school_mark(png("\0\0\0\x40"s, "\0\0\0\x20"s));
  REQUIRE(mark);
  CHECK(mark->address().starts_with("data:image/png;base64,iVBORw0KGgo"));
  CHECK(school_mark(png("\0\0\x20\0"s, "\0\0\0\x20"s)).problem().message ==
        "the mark has 8192 pixels one way");
  CHECK(school_mark(png("\0\0\0\x20"s, "\0\0\0\0"s)).problem().message ==
        "the mark has 0 pixels one way");
  CHECK(school_mark("\x89PNG\r\n\x1A\n").problem().message == "the mark is a PNG that breaks off");
  CHECK(school_mark(std::string(most_mark_bytes + 1, 'a')).problem().message ==
        "the mark is larger than 256 KiB");
}

TEST_CASE("an SVG is one by its first element, and holds no document type") {
  const auto mark = school_mark("<?xml version=\"1.0\"?>\n<!-- a -->\n<svg></svg>");
  REQUIRE(mark);
  CHECK(mark->address().starts_with("data:image/svg+xml;base64,PD94bWw"));
  CHECK(school_mark("<!DOCTYPE svg [<!ENTITY a \"aaa\">]><svg>&a;</svg>").problem().message ==
        "the mark has a document type, which could grow without end");
  CHECK(school_mark("<svg>\xFF</svg>").problem().message ==
        "the mark holds a byte that is not UTF-8 (0xff)");
}

TEST_CASE("anything else is no mark") {
  for (const std::string bytes : {"", "GIF89a", "<html><svg></svg></html>", "<svgx/>", "<!--"}) {
    CHECK(school_mark(bytes).problem().message == "the mark is neither a PNG nor an SVG");
  }
}

}  // namespace
}  // namespace heelrule
