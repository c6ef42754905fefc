// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the window share one application object, one known font and settings of their own.
#include <gmock/gmock.h>

#include <QApplication>
#include <QFont>
#include <QFontDatabase>
#include <QLocale>
#include <QTemporaryDir>
#include <clocale>
#include <cstdio>
#include <cstring>

#include "tests/gui/window/crash_child.hpp"
#include "tests/gui/window/report_child.hpp"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM") &&
      qEnvironmentVariableIsEmpty("HEATLEDGER_TEST_ON_DISPLAY"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  QTemporaryDir home;
  qputenv("XDG_CONFIG_HOME", (home.path() + "/config").toLocal8Bit());
  qputenv("XDG_DATA_HOME", (home.path() + "/data").toLocal8Bit());
  if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR"))
    qputenv("XDG_RUNTIME_DIR", home.path().toLocal8Bit());

  if (argc == 4 && std::strcmp(argv[1], test_support::kTypeInProgram) == 0)
    return test_support::typeInProgram(argc, argv, argv[2], argv[3]);

  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setOrganizationName(QStringLiteral("heatledger-tests"));
  QApplication::setApplicationName(QStringLiteral("heatledger-tests"));
  QLocale::setDefault(QLocale::c());
  // Without any font the offscreen platform draws hollow boxes and says nothing.
  if (QFontDatabase::families().isEmpty()) {
    std::fputs("no font is installed\n", stderr);
    return 1;
  }
  QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 9));
  if (argc == 4 && std::strcmp(argv[1], test_support::kTypeAndWait) == 0)
    return test_support::typeAndWait(argv[2], argv[3]);
  if (argc == 3 && std::strcmp(argv[1], test_support::kWriteReport) == 0)
    return test_support::writeDemoReport(argv[2]);
  testing::InitGoogleMock(&argc, argv);
  return RUN_ALL_TESTS();
}
