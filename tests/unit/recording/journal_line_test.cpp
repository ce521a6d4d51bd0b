#include "engine/recording/journal_line.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

const std::vector<JournalEntry> three{{"inspection.client", "C-014"},
                                      {"foot_length.left", "243 mm # \"twice\""},
                                      {"foot_length.right", "24,6 é \\"}};

std::string journal(std::size_t count) {
  std::string text;
  for (std::size_t i = 0; i < count; ++i) {
    text += journal_line(i + 1, three[i]);
  }
  return text;
}

}  // namespace

// The check value of CRC-32 as in ISO 3309 and ITU-T V.42 (catalogue of parametrised CRC
// algorithms, CRC-32/ISO-HDLC).
TEST_CASE("the checksum is that of the standard") { CHECK(checksum("123456789") == "cbf43926"); }

TEST_CASE("a journal reads back as it was written") {
  const auto read = read_journal(journal(3));
  REQUIRE(read);
  CHECK(read->entries == three);
  CHECK(read->whole_bytes == journal(3).size());
}

TEST_CASE("wherever a journal is cut, whole lines are kept and the rest is left out") {
  const std::string whole = journal(3);
  for (std::size_t cut = 0; cut < whole.size(); ++cut) {
    CAPTURE(cut);
    const auto read = read_journal(std::string_view(whole).substr(0, cut));
    REQUIRE(read);
    const std::size_t lines = cut >= journal(2).size() ? 2 : cut >= journal(1).size() ? 1 : 0;
    CHECK(read->entries.size() == lines);
    CHECK(read->whole_bytes == journal(lines).size());
  }
}

TEST_CASE("a last line that the disk spoiled is left out") {
  std::string text = journal(3);
  text[text.size() - 10] = '\0';
  const auto read = read_journal(text);
  REQUIRE(read);
  CHECK(read->entries.size() == 2);
}

TEST_CASE("a line that somebody changed is a fault") {
  std::string text = journal(3);
  text[text.find("243")] = '9';
  const auto read = read_journal(text);
  CHECK_FALSE(read);
  CHECK(read.problem().message == "line 2 of the journal is not as it was written");
}

TEST_CASE("a line that is missing, or there twice, is a fault") {
  CHECK_FALSE(read_journal(journal_line(1, three[0]) + journal_line(3, three[2]) + journal(1)));
  CHECK_FALSE(read_journal(journal(1) + journal(2)));
}

}  // namespace heelrule
