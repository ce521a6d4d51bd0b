#include "engine/report/plain_json.hpp"

#include <catch2/catch.hpp>
#include <string>

#include "engine/report/json_writer.hpp"

namespace heelrule {
namespace {

TEST_CASE("a text is plain where JSON has it as it is, wherever its one odd byte stands") {
  for (int byte = 0; byte < 256; ++byte) {
    for (std::size_t length = 1; length < 20; ++length) {
      for (std::size_t at = 0; at < length; ++at) {
        std::string text(length, at % 2 == 0 ? 'a' : '~');
        text[at] = static_cast<char>(byte);
        CAPTURE(byte, length, at);
        REQUIRE(is_plain_json(text) == (byte < 0x80 && json_text(text) == '"' + text + '"'));
      }
    }
  }
  CHECK(is_plain_json(""));
}

}  // namespace
}  // namespace heelrule
