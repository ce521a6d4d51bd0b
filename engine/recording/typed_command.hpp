// What a person wants who types a line at a question.
#pragma once

#include <string>
#include <string_view>
#include <variant>

namespace heelrule {

/// An empty line: go on, and leave what stands here as it is.
struct GoOn {};
/// `?`: how is it taken, and what may be written?
struct TellHow {};
/// `back`: the question before.
struct GoBack {};
/// `skip REASON`: not seen; the reason may be empty.
struct Skip {
  std::string reason;
};
/// `go PLACE`: a section or a trait.
struct GoTo {
  std::string place;
};
/// `review`: all that was answered, and what is open.
struct Review {};
/// `finish`: write the record.
struct Finish {};
/// `both VALUE`: left and right alike.
struct AnswerBoth {
  std::string words;
};
/// Anything else.
struct AnswerOne {
  std::string words;
};

using TypedCommand =
    std::variant<GoOn, TellHow, GoBack, Skip, GoTo, Review, Finish, AnswerBoth, AnswerOne>;

/// Reads a line. A command is a word of its own at the start of the line.
TypedCommand typed_command(std::string_view line);

/// All commands in a few lines, for people who ask.
std::string_view command_help();

}  // namespace heelrule
