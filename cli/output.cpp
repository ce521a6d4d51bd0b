#include "cli/output.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <string>

#include "cli/descriptor.hpp"

namespace heelrule {
void prepare_streams() {
  // A closed standard stream would lend its number to the next file that is opened. Opened the
  // wrong way round, it still fails as a closed one does, so that no report is lost in silence.
  for (int number = STDIN_FILENO; number <= STDERR_FILENO; ++number) {
    if (::fcntl(number, F_GETFD) < 0) {
      ::open("/dev/null", number == STDIN_FILENO ? O_WRONLY : O_RDONLY);
    }
  }
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
}

ExitStatus write_output(std::string_view text) {
  const int reason = write_all(STDOUT_FILENO, text);
  if (reason == 0) {
    return ExitStatus::done;
  }
  if (reason != EPIPE) {
    write_error(fmt::format("heelrule: error: cannot write to standard output: {}\n",
                            std::strerror(reason)));
  }
  return ExitStatus::io_error;
}

void write_error(std::string_view text) { write_all(STDERR_FILENO, text); }

bool colour_wanted() {
  const char* refused = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  const bool dumb = terminal == nullptr || std::string_view(terminal) == "dumb";
  return ::isatty(STDOUT_FILENO) == 1 && !dumb && (refused == nullptr || *refused == '\0');
}

}  // namespace heelrule
