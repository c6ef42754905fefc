// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/interruption.hpp"

#include <atomic>

namespace gui {
namespace {

static_assert(std::atomic<int>::is_always_lock_free, "a signal's handler may set it");
std::atomic<int> interruptedBy = 0;
extern "C" void noteInterruption(int signal) { interruptedBy = signal; }

}  // namespace

Interruption::Interruption(Second second) {
  interruptedBy = 0;
  for (auto& [signal, before] : before_) {
    struct sigaction noted = {};
    noted.sa_handler = noteInterruption;
    ::sigemptyset(&noted.sa_mask);
    noted.sa_flags = SA_RESTART;
    if (second == Second::Ends) noted.sa_flags |= static_cast<int>(SA_RESETHAND);
    ::sigaction(signal, &noted, &before);
    // Whoever runs it unattended has said that nothing is to end it.
    if (before.sa_handler == SIG_IGN) ::sigaction(signal, &before, nullptr);
  }
}

Interruption::~Interruption() {
  for (const auto& [signal, before] : before_) ::sigaction(signal, &before, nullptr);
}

int Interruption::signal() { return interruptedBy; }

}  // namespace gui
