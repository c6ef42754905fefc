// SPDX-License-Identifier: GPL-3.0-or-later
// Being asked to stop while something takes long.
#pragma once

#include <csignal>
#include <utility>

namespace gui {

// While one lives, the signals of Ctrl-C and of whoever ends programs are noted instead of ending
// this one; a signal that the caller had ignored stays ignored. One at a time.
class Interruption {
 public:
  // A second signal ends the program at once, or has nothing to add: some who send it send it
  // twice, which matters where the answer is shown only when all is done.
  enum class Second { Ends, IsNothing };
  explicit Interruption(Second second);
  ~Interruption();
  Interruption(const Interruption&) = delete;
  Interruption& operator=(const Interruption&) = delete;

  // The signal that came, 0 before one did. From any thread.
  static int signal();

 private:
  std::pair<int, struct sigaction> before_[2] = {{SIGINT, {}}, {SIGTERM, {}}};
};

}  // namespace gui
