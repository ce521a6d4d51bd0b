// Reads bytes as records, one a line, and grades them in full, by what failed, and in brief. What
// came before and how the lines are cut into pieces must make no difference.
#include <algorithm>
#include <array>

#include "engine/report/grade_lines.hpp"
#include "tests/fuzz/known_rules.hpp"

namespace {

using namespace heelrule;

constexpr std::array details{Detail::full, Detail::failed, Detail::brief};

LineGrader new_grader(const Program& program, Detail detail) {
  return {program, JsonLineReader(program.rules, "fuzz.jsonl"), json_lines(program, {}, detail),
          GradingOrder{false, std::nullopt, 2}};
}

std::uint64_t line_feeds(std::string_view text) {
  return static_cast<std::uint64_t>(std::count(text.begin(), text.end(), '\n'));
}

// `text` has the padding of a piece behind it.
std::string graded(LineGrader& grader, std::string_view text, std::uint64_t first_line) {
  GradedLines lines;
  grader.grade({text, first_line}, lines);
  must(line_feeds(lines.text.text()) == lines.lines);
  must(lines.faulty <= lines.lines);
  return std::string(lines.text.text());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const Program program = known_rules().program;
  static std::array used{new_grader(program, details[0]), new_grader(program, details[1]),
                         new_grader(program, details[2])};
  std::string padded = fuzzed_text(data, size);
  padded.append(JsonLineReader::padding, '\0');
  const std::string_view text = std::string_view(padded).substr(0, size);
  const std::string_view first = text.substr(0, text.find('\n', size / 2) + 1);
  const std::string_view second = text.substr(first.size());
  for (std::size_t i = 0; i < details.size(); ++i) {
    LineGrader unused = new_grader(program, details[i]);
    const std::string whole = graded(used[i], text, 1);
    must(whole == graded(unused, text, 1));
    must(whole == graded(used[i], first, 1) + graded(used[i], second, 1 + line_feeds(first)));
  }
  return 0;
}
