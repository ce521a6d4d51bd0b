// Reads bytes as a shoe size and as a sock range; what was read is read again from how it is shown.
#include "engine/quantity/shoe_size.hpp"
#include "engine/quantity/sock_range.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  const std::string text = fuzzed_text(data, size);
  const auto shoe = parse_shoe_size(text);
  must(static_cast<bool>(shoe) == shoe.problem().message.empty());
  if (shoe) {
    const auto again = parse_shoe_size(show(*shoe));
    must(again && *again == *shoe);
  }
  const auto sock = parse_sock_range(text);
  must(static_cast<bool>(sock) == sock.problem().message.empty());
  if (sock) {
    const auto again = parse_sock_range(show(*sock));
    must(again && *again == *sock);
  }
  return 0;
}
