// Lines that a person types, or that a pipe brings.
#pragma once

#include <memory>
#include <string>

namespace heelrule {

/// What reading a line came to.
struct PromptedLine {
  enum class Kind { typed, end, interrupted };

  Kind kind = Kind::end;
  std::string text;  ///< without its line end
};

/// Reads standard input line by line, each after a prompt. At a terminal a line can be edited, and
/// earlier ones called back; from a pipe it is shown as it was read. Ends where an `Interruption`
/// asks for it.
class PromptedLines {
 public:
  PromptedLines();
  ~PromptedLines();
  PromptedLines(const PromptedLines&) = delete;
  PromptedLines& operator=(const PromptedLines&) = delete;
  PromptedLines(PromptedLines&&) = delete;
  PromptedLines& operator=(PromptedLines&&) = delete;

  /// Whether a person types at a terminal and sees what is printed.
  bool at_terminal() const { return editor_ != nullptr; }

  PromptedLine next(const std::string& prompt);

 private:
  struct Editor;

  PromptedLine next_from_pipe(const std::string& prompt);

  std::unique_ptr<Editor> editor_;
  std::string read_;  // from a pipe, and not handed out yet
};

}  // namespace heelrule
