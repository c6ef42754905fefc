// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a copy that a crashed window has left: offered or passed over, and never in the way.
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "gui/window/files/recovery.hpp"
#include "rigs/plans/plan.hpp"
#include "tests/fuzz/fuzzed.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const QTemporaryDir folder(QStringLiteral("/dev/shm/heatledger-fuzz-XXXXXX"));
  fuzz::require(folder.isValid());
  QFile copy(folder.filePath(QStringLiteral("left.unsaved")));
  fuzz::require(copy.open(QFile::WriteOnly | QFile::Truncate));
  copy.write(reinterpret_cast<const char*>(data), static_cast<qint64>(size));
  copy.close();
  gui::Recovery recovery(folder.path());
  for (const gui::Leftover& one : recovery.leftovers()) {
    rigs::Problems problems;
    fuzz::requireTold(rigs::readPlan(one.text, "/nonexistent", problems).has_value(), problems);
    recovery.forget(one);
  }
  fuzz::require(recovery.leftovers().isEmpty());
  return 0;
}
