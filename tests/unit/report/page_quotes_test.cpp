#include "engine/report/page_quotes.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("names between backquotes stand between quotes on a page") {
  CHECK(page_quotes("mix up `firm` and `soft`.") == "mix up ‘firm’ and ‘soft’.");
  CHECK(page_quotes("`firm`") == "‘firm’");
  CHECK(page_quotes("nothing to mark") == "nothing to mark");
  CHECK(page_quotes("").empty());
  CHECK(page_quotes(std::vector<std::string>{"`firm`", "soft"}) ==
        std::vector<std::string>{"‘firm’", "soft"});
}

TEST_CASE("a backquote without its partner stays") {
  CHECK(page_quotes("`firm` and `soft") == "‘firm’ and `soft");
  CHECK(page_quotes("`") == "`");
}

}  // namespace
}  // namespace heelrule
