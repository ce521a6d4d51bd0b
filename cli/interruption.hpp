// A request to stop from outside: Ctrl-C, or a signal to end.
#pragma once

namespace heelrule {

/// While one of these lives, the first SIGINT, SIGTERM or SIGHUP asks for a stop and does no more;
/// a second one ends the program at once.
class Interruption {
 public:
  Interruption();
  ~Interruption();
  Interruption(const Interruption&) = delete;
  Interruption& operator=(const Interruption&) = delete;
  Interruption(Interruption&&) = delete;
  Interruption& operator=(Interruption&&) = delete;

  /// Whether a stop was asked for. May be called from any thread.
  static bool wanted();

  /// Ends the program by the signal that asked for the stop, so that the shell sees it; does
  /// nothing if none did.
  static void pass_on();
};

}  // namespace heelrule
