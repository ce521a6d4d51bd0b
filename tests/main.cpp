// Runs the tests, in the locale named by HEELRULE_TEST_LOCALE where that is set.
//
// No figure that heelrule reads or writes may depend on the locale. So all tests are run once more
// where the decimal sign is a comma: what leans on the locale then reads 12.5 as 12.
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>
#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <cstring>

int main(int count, char* arguments[]) {
  if (const char* name = std::getenv("HEELRULE_TEST_LOCALE")) {
    if (std::setlocale(LC_ALL, name) == nullptr ||
        std::strcmp(std::localeconv()->decimal_point, ",") != 0) {
      std::fprintf(stderr, "%s is no locale of this machine with a decimal comma\n", name);
      return EXIT_FAILURE;
    }
  }
  return Catch::Session().run(count, arguments);
}
