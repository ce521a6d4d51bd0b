#include "engine/source/diagnostic.hpp"

#include <catch2/catch.hpp>

#include "engine/source/checked.hpp"

namespace heelrule {
namespace {

std::string in_order(const Diagnostics& diagnostics) {
  std::string messages;
  for (const Diagnostic& diagnostic : diagnostics.by_place()) {
    messages += diagnostic.message + " ";
  }
  return messages;
}

TEST_CASE("diagnostics come by source, then by place, and else as they were found") {
  Diagnostics diagnostics;
  diagnostics.error({1, 0, 1}, "other");
  diagnostics.error({0, 9, 10}, "late");
  diagnostics.warning({0, 2, 8}, "first");
  diagnostics.error({0, 2, 3}, "second");
  CHECK(in_order(diagnostics) == "first second late other ");
}

TEST_CASE("what is said twice in the same words at the same place comes once") {
  Diagnostics diagnostics;
  diagnostics.error({0, 2, 3}, "again", "hint");
  diagnostics.error({0, 2, 3}, "again", "hint");
  diagnostics.error({0, 2, 3}, "again", "another hint");
  CHECK(in_order(diagnostics) == "again again ");
}

TEST_CASE("errors and warnings are counted apart") {
  Diagnostics diagnostics;
  CHECK(diagnostics.empty());
  diagnostics.warning({0, 0, 1}, "doubtful");
  CHECK_FALSE(diagnostics.has_errors());
  diagnostics.error({0, 0, 1}, Problem{"wrong", "mend it"});
  CHECK(diagnostics.error_count() == 1);
  CHECK(diagnostics.warning_count() == 1);
}

TEST_CASE("a checked value is there with warnings, and not with an error") {
  Diagnostics doubtful;
  doubtful.warning({0, 0, 1}, "doubtful");
  const Checked<int> value(7, doubtful);
  REQUIRE(value);
  CHECK(*value == 7);
  CHECK(value.diagnostics().warning_count() == 1);
  Diagnostics wrong;
  wrong.error({0, 0, 1}, "wrong");
  CHECK_FALSE(Checked<int>(7, wrong));
}

}  // namespace
}  // namespace heelrule
