#include "engine/report/page_frame.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

std::size_t place(const std::string& page, const std::string& part) {
  const std::size_t at = page.find(part);
  INFO(part);
  REQUIRE(at != std::string::npos);
  return at;
}

TEST_CASE("a page lets nothing in, and puts what comes first before its body") {
  PageFrame frame;
  frame.title = "A & B";
  frame.first = "<p>FIRST</p>";
  frame.body = "<p>BODY</p>";
  frame.last = "<p>LAST</p>";
  const std::string page = framed_page(frame);
  CHECK(page.starts_with("<!DOCTYPE html>\n"));
  CHECK(place(page, "<meta charset") < place(page, "default-src 'none'; style-src"));
  CHECK(place(page, "default-src") < place(page, "<title>A &amp; B</title>"));
  CHECK(place(page, "<p>FIRST</p>") < place(page, "<p>BODY</p>"));
  CHECK(place(page, "<p>BODY</p>") < place(page, "<p>LAST</p>"));
  CHECK(page.find("<script") == std::string::npos);
}

TEST_CASE("what stands at the edge of paper cannot leave its string") {
  PageFrame frame;
  frame.running_left = "C\"}</style><script>";
  const std::string page = framed_page(frame);
  place(page, R"(@top-left{content:"C\000022\00007d\00003c\00002fstyle)");
  CHECK(page.find("<script") == std::string::npos);
}

TEST_CASE("a school's style cannot leave its element") {
  PageFrame frame;
  frame.style = "h1{color:red}</style><script>1</script>";
  const std::string page = framed_page(frame);
  CHECK(page.find("<script") == std::string::npos);
  place(page, "h1{color:red}\\3c /style>");
}

}  // namespace
}  // namespace heelrule
