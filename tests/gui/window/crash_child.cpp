// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/window/crash_child.hpp"

#include <QApplication>
#include <QDir>
#include <QTest>
#include <QTimer>
#include <cstdio>

#include "gui/window/main_window.hpp"
#include "gui/window/window_program.hpp"

namespace test_support {
namespace {

void typeAtOnce() {
  for (QWidget* widget : QApplication::topLevelWidgets()) {
    auto* field = widget->findChild<QLineEdit*>(QStringLiteral("/rigs/0/element/power"));
    if (!field || !QTest::qWaitForWindowExposed(widget)) continue;
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("7 kW"));
    std::puts("typed");
    std::fflush(stdout);
  }
}

// The program makes its application object itself and then runs: this is the way in between.
void typeOnceItRuns() { QTimer::singleShot(1000, typeAtOnce); }

}  // namespace

int typeInProgram(int argc, char** argv, const char* data, const char* plan) {
  qputenv("XDG_DATA_HOME", data);
  qAddPreRoutine(typeOnceItRuns);
  return gui::runWindow(argc, argv, plan);
}

int typeAndWait(const char* folder, const char* plan) {
  const QString path = QString::fromLocal8Bit(plan);
  gui::MainWindow window(path == QLatin1String("-") ? QString() : path,
                         QString::fromLocal8Bit(folder));
  window.show();
  if (!QTest::qWaitForWindowExposed(&window)) return 2;
  auto* field = window.findChild<QLineEdit*>(QStringLiteral("/rigs/0/element/power"));
  if (!field) return 3;
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, QStringLiteral("7 kW"));
  const bool kept = QTest::qWaitFor(
      [&] {
        return !QDir(QString::fromLocal8Bit(folder))
                    .entryList({QStringLiteral("*.unsaved")})
                    .isEmpty();
      },
      15000);
  std::puts(kept ? "kept" : "not kept");
  std::fflush(stdout);
  return QApplication::exec();
}

}  // namespace test_support
