#include "cli/prompted_lines.hpp"

#include <histedit.h>
#include <poll.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <clocale>
#include <csignal>
#include <cstdio>
#include <cwchar>
#include <string_view>

#include "cli/interruption.hpp"
#include "cli/output.hpp"

namespace heelrule {
namespace {

constexpr std::size_t longest_line = std::size_t{1} << 20U;
constexpr int lines_called_back = 200;

// Waits until there is something to read; false where a stop was asked for. The signals are let in
// while waiting alone, so that none can come between the look and the wait.
bool wait_for_input() {
  sigset_t held;
  sigset_t before;
  sigemptyset(&held);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
    sigaddset(&held, signal);
  }
  ::sigprocmask(SIG_BLOCK, &held, &before);
  pollfd input{STDIN_FILENO, POLLIN, 0};
  while (!Interruption::wanted()) {
    const int ready = ::ppoll(&input, 1, nullptr, &before);
    if (ready > 0 || (ready < 0 && errno != EINTR)) {
      break;
    }
  }
  ::sigprocmask(SIG_SETMASK, &before, nullptr);
  return !Interruption::wanted();
}

PromptedLine interrupted_or_end() {
  return {Interruption::wanted() ? PromptedLine::Kind::interrupted : PromptedLine::Kind::end, {}};
}

}  // namespace

struct PromptedLines::Editor {
  Editor() : line(::el_init("heelrule", stdin, stdout, stderr)), history(::history_init()) {
    HistEvent event{};
    ::history(history, &event, H_SETSIZE, lines_called_back);
    ::el_set(line, EL_CLIENTDATA, this);
    ::el_set(line, EL_PROMPT, show_prompt);
    ::el_set(line, EL_EDITOR, "emacs");
    ::el_set(line, EL_HIST, ::history, history);
    ::el_set(line, EL_GETCFN, read_character);
    // Between two lines too keys reach the editor as they are: whoever types ahead, while an answer
    // goes to the disk, would else have them edited by the terminal.
    ::el_set(line, EL_SETTY, "-x", "-icanon", "-echo", nullptr);
  }
  ~Editor() {
    ::history_end(history);
    ::el_end(line);
  }
  Editor(const Editor&) = delete;
  Editor& operator=(const Editor&) = delete;
  Editor(Editor&&) = delete;
  Editor& operator=(Editor&&) = delete;

  static char* show_prompt(EditLine* edited) {
    Editor* self = nullptr;
    ::el_get(edited, EL_CLIENTDATA, &self);
    return self->prompt.data();
  }

  // One character, of as many bytes as it has. The library's own way would read on after a signal.
  static int read_character(EditLine* /*edited*/, wchar_t* character) {
    std::mbstate_t state{};
    while (wait_for_input()) {
      char byte = 0;
      const ssize_t got = ::read(STDIN_FILENO, &byte, 1);
      if (got <= 0) {
        return got < 0 && errno == EINTR ? -1 : static_cast<int>(got);
      }
      const std::size_t used = std::mbrtowc(character, &byte, 1, &state);
      if (used == static_cast<std::size_t>(-1)) {
        state = {};
      } else if (used != static_cast<std::size_t>(-2)) {
        return 1;
      }
    }
    return -1;
  }

  PromptedLine next(const std::string& wanted_prompt) {
    prompt = wanted_prompt;
    int length = 0;
    const char* text = ::el_gets(line, &length);
    if (text == nullptr || length <= 0 || Interruption::wanted()) {
      return interrupted_or_end();
    }
    std::string typed(text, static_cast<std::size_t>(length));
    while (typed.ends_with('\n') || typed.ends_with('\r')) {
      typed.pop_back();
    }
    if (!typed.empty()) {
      HistEvent event{};
      ::history(history, &event, H_ENTER, typed.c_str());
    }
    return {PromptedLine::Kind::typed, typed};
  }

  EditLine* line;
  History* history;
  std::string prompt;
};

PromptedLines::PromptedLines() {
  if (::isatty(STDIN_FILENO) == 1 && ::isatty(STDOUT_FILENO) == 1) {
    // So that a letter of several bytes is one letter to the editor. Nothing else of the locale
    // changes: numbers and messages stay as they are everywhere.
    std::setlocale(LC_CTYPE, "C.UTF-8");
    editor_ = std::make_unique<Editor>();
  }
}

PromptedLines::~PromptedLines() = default;

PromptedLine PromptedLines::next(const std::string& prompt) {
  return editor_ ? editor_->next(prompt) : next_from_pipe(prompt);
}

PromptedLine PromptedLines::next_from_pipe(const std::string& prompt) {
  std::array<char, 4096> piece{};
  while (read_.find('\n') == std::string::npos) {
    if (read_.size() > longest_line || !wait_for_input()) {
      return interrupted_or_end();
    }
    const ssize_t got = ::read(STDIN_FILENO, piece.data(), piece.size());
    if (got < 0 && errno == EINTR) {
      continue;
    }
    if (got > 0) {
      read_.append(piece.data(), static_cast<std::size_t>(got));
    } else if (got < 0 || read_.empty()) {
      return interrupted_or_end();
    } else {
      read_ += '\n';
    }
  }
  const std::size_t end = read_.find('\n');
  std::string typed = read_.substr(0, end);
  read_.erase(0, end + 1);
  if (typed.ends_with('\r')) {
    typed.pop_back();
  }
  write_output(prompt + typed + "\n");
  return {PromptedLine::Kind::typed, typed};
}

}  // namespace heelrule
