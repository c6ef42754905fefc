// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/ending_signals.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <QCoreApplication>
#include <array>
#include <cerrno>
#include <csignal>

namespace gui {
namespace {

constexpr std::array kEnding{SIGTERM, SIGHUP, SIGINT};

// A handler may do next to nothing but write: the event loop reads at the other end.
std::array<int, 2> ends{-1, -1};

void pass(int /*signal*/) {
  const int error = errno;
  const char one = 1;
  [[maybe_unused]] const ssize_t written = ::write(ends[1], &one, 1);
  errno = error;
}

}  // namespace

EndingSignals::EndingSignals() {
  if (::pipe2(ends.data(), O_CLOEXEC | O_NONBLOCK) != 0) return;  // then they end it at once
  arrived_ = std::make_unique<QSocketNotifier>(ends[0], QSocketNotifier::Read);
  QObject::connect(arrived_.get(), &QSocketNotifier::activated, arrived_.get(), [this] {
    arrived_->setEnabled(false);
    QCoreApplication::exit(0);
  });
  for (const int signal : kEnding) {
    struct sigaction now = {};
    if (::sigaction(signal, nullptr, &now) != 0 || now.sa_handler == SIG_IGN) continue;
    struct sigaction passed = {};
    passed.sa_handler = pass;
    passed.sa_flags = SA_RESTART | static_cast<int>(SA_RESETHAND);
    ::sigemptyset(&passed.sa_mask);
    ::sigaction(signal, &passed, nullptr);
  }
}

EndingSignals::~EndingSignals() {
  if (!arrived_) return;
  for (const int signal : kEnding) {
    struct sigaction now = {};
    if (::sigaction(signal, nullptr, &now) == 0 && now.sa_handler == pass)
      std::signal(signal, SIG_DFL);
  }
  arrived_.reset();
  for (int& end : ends) {
    ::close(end);
    end = -1;
  }
}

}  // namespace gui
