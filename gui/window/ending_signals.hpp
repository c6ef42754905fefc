// SPDX-License-Identifier: GPL-3.0-or-later
// What the system sends to end a program, and a terminal when it is closed, ends the event loop in
// order: QCoreApplication::aboutToQuit is emitted, nobody is asked anything.
#pragma once

#include <QSocketNotifier>
#include <memory>

namespace gui {

// One at a time, while the application object lives. A signal that whoever started the program
// chose to ignore, as nohup does, stays ignored; a second one ends a program that hangs.
class EndingSignals {
 public:
  EndingSignals();
  ~EndingSignals();
  EndingSignals(const EndingSignals&) = delete;
  EndingSignals& operator=(const EndingSignals&) = delete;

 private:
  std::unique_ptr<QSocketNotifier> arrived_;
};

}  // namespace gui
