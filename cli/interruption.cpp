#include "cli/interruption.hpp"

#include <array>
#include <atomic>
#include <csignal>

namespace heelrule {
namespace {

constexpr std::array<int, 3> signals{SIGINT, SIGTERM, SIGHUP};

// A handler can reach nothing but what is global.
std::atomic<int> caught{0};
static_assert(std::atomic<int>::is_always_lock_free);

void take_note(int signal) { caught.store(signal, std::memory_order_relaxed); }

}  // namespace

Interruption::Interruption() {
  struct sigaction action{};
  action.sa_handler = take_note;
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  for (const int signal : signals) {
    struct sigaction before{};
    ::sigaction(signal, nullptr, &before);
    if (before.sa_handler != SIG_IGN) {
      ::sigaction(signal, &action, nullptr);
    }
  }
}

Interruption::~Interruption() {
  for (const int signal : signals) {
    struct sigaction before{};
    ::sigaction(signal, nullptr, &before);
    if (before.sa_handler == take_note) {
      std::signal(signal, SIG_DFL);
    }
  }
}

bool Interruption::wanted() { return caught.load(std::memory_order_relaxed) != 0; }

void Interruption::pass_on() {
  if (const int signal = caught.load(std::memory_order_relaxed); signal != 0) {
    std::signal(signal, SIG_DFL);
    std::raise(signal);
  }
}

}  // namespace heelrule
