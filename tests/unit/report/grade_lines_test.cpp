#include "engine/report/grade_lines.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/count.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const Program& program() {
  static const Program made =
      graded(one_rule("[{name: short, below: 10 mm, earns: 0}, {name: right, earns: 100 %}]"),
             one_record("12 mm", "12 mm"))
          .program;
  return made;
}

std::string record(int number, const std::string& space) {
  return R"({"inspection":{"client":"C-)" + std::to_string(number) + R"("},"found":{"gap":")" +
         space + "\"}}\n";
}

class Run {
 public:
  explicit Run(const GradingOrder& order = {})
      : grader_(program(), JsonLineReader(program().rules, "records.jsonl"),
                json_lines(program(), {}, Detail::brief), order) {}

  GradedLines grade(std::string text, std::uint64_t first_line = 1) {
    const std::size_t length = text.size();
    text.append(JsonLineReader::padding, '\0');
    GradedLines graded;
    grader_.grade({std::string_view(text).substr(0, length), first_line}, graded);
    return graded;
  }

 private:
  LineGrader grader_;
};

TEST_CASE("more rows than one block holds give a line each, in order") {
  std::string text;
  for (int i = 0; i < 200; ++i) {
    text += record(i, i % 3 == 0 ? "9 mm" : "11 mm");
  }
  const GradedLines graded = Run().grade(text);
  CHECK(graded.lines == 200);
  CHECK(graded.faulty == 0);
  CHECK(graded.bytes == text.size());
  std::size_t at = 0;
  for (int i = 0; i < 200; ++i) {
    at = graded.text.text().find("\"C-" + std::to_string(i) + "\"", at);
    REQUIRE(at != std::string::npos);
  }
  CHECK(count(std::string(graded.text.text()), "\n") == 200);
}

TEST_CASE("in which pieces an input comes makes no difference") {
  std::string whole;
  std::string in_pieces;
  Run run;
  for (int i = 0; i < 150; ++i) {
    whole += i == 77 ? "{\"inspection\":\n" : record(i, std::to_string(i % 40) + ".5 mm");
  }
  for (std::size_t begin = 0; begin < whole.size();) {
    const std::size_t from = std::min(begin + begin % 900, whole.size() - 1);
    const std::size_t end = whole.find('\n', from) + 1;
    in_pieces += run.grade(whole.substr(begin, end - begin)).text.text();
    begin = end;
  }
  CHECK(run.grade(whole).text.text() == in_pieces);
}

TEST_CASE("a record that cannot be read has a line in its place, and is told of by its number") {
  const GradedLines graded =
      Run().grade(record(1, "12 mm") + record(2, "12") + record(3, "8 mm"), 70);
  CHECK(graded.lines == 3);
  CHECK(graded.faulty == 1);
  REQUIRE(graded.complaints.size() == 1);
  CHECK(graded.complaints.front().starts_with("records.jsonl:71:48: error: `12` has no unit"));
  const std::size_t fault = graded.text.text().find(
      "{\"format\":\"heelrule error\",\"version\":1,\"errors\":"
      "[{\"column\":48,\"message\":\"`12` has no unit");
  CHECK(fault > graded.text.text().find("C-1"));
  CHECK(fault < graded.text.text().find("C-3"));
}

TEST_CASE("a strict run ends with the first record that cannot be read") {
  GradingOrder order;
  order.stop_at_fault = true;
  const GradedLines graded = Run(order).grade(record(1, "12 mm") + "\n" + record(3, "8 mm"));
  CHECK(graded.is_cut_short);
  CHECK(graded.lines == 2);
  CHECK(graded.text.text().find("C-3") == std::string::npos);
}

TEST_CASE("a last line may lack its line feed, and half of one is a fault") {
  std::string text = record(1, "12 mm");
  text.pop_back();
  CHECK(Run().grade(text).faulty == 0);
  text.resize(text.size() - 5);
  CHECK(Run().grade(text).faulty == 1);
}

TEST_CASE("lines may end as they do elsewhere") {
  std::string text = record(1, "12 mm");
  text.back() = '\r';
  text += '\n';
  CHECK(Run().grade(text).faulty == 0);
}

TEST_CASE("a grade that is not reached is seen, also where it may not be reached") {
  GradingOrder order;
  order.at_least = 0;
  CHECK_FALSE(Run(order).grade(record(1, "12 mm")).falls_short);
  CHECK(Run(order).grade(record(1, "12 mm") + record(2, "9 mm")).falls_short);
  CHECK(Run(order).grade(record(1, "not seen")).falls_short);
}

}  // namespace
}  // namespace heelrule
