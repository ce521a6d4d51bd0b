#include "engine/recording/typed_command.hpp"

#include "engine/quantity/trimmed.hpp"

namespace heelrule {

TypedCommand typed_command(std::string_view line) {
  line = trimmed(line);
  const std::string_view word = line.substr(0, line.find(' '));
  const std::string rest(trimmed(line.substr(word.size())));
  if (line.empty()) {
    return GoOn{};
  }
  if (line == "?") {
    return TellHow{};
  }
  if (line == "back") {
    return GoBack{};
  }
  if (line == "review") {
    return Review{};
  }
  if (line == "finish") {
    return Finish{};
  }
  if (word == "skip") {
    return Skip{rest};
  }
  if (word == "go") {
    return GoTo{rest};
  }
  if (word == "both") {
    return AnswerBoth{rest};
  }
  return AnswerOne{std::string(line)};
}

std::string_view command_help() {
  return R"(  a value          as in a file: 243 mm, firm, yes; words may be cut short
  246, 247 mm      readings taken again
  firm # creased   a value with a note
  131 mm !         unusual, and true
  both firm        left and right alike, one reading of the two
  Enter alone      go on; what stands here stays, what is open stays open
  skip REASON      not seen, and why; `both skip REASON` of both sides
  back             the question before
  go PLACE         a section or a trait, by its name or the start of its title;
                   `go end` leads to the end
  review           what was answered, and what is open
  finish           write the record; first it is said what is open
  ?                how to take it, and this list
)";
}

}  // namespace heelrule
