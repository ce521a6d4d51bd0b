// Says what a length is in millimetres: in_millimetres "9.6 in".
#include <cstdio>
#include <string>

#include "engine/quantity/quantity.hpp"

int main(int count, char* arguments[]) {
  if (count != 2) {
    return 64;
  }
  const auto length = heelrule::parse_quantity(arguments[1]);
  if (!length) {
    std::fprintf(stderr, "%s\n", length.problem().message.c_str());
    return 65;
  }
  const std::string shown = heelrule::show(length->stored, heelrule::Unit::millimetre, 1);
  std::printf("%s is %s\n", arguments[1], shown.c_str());
}
