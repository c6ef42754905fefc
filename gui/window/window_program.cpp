// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/window_program.hpp"

#include <QApplication>
#include <QDir>
#include <QIcon>
#include <QLibraryInfo>
#include <QSettings>
#include <QTimer>
#include <clocale>

#include "gui/window/appearance.hpp"
#include "gui/window/ending_signals.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/words/language.hpp"
#include "version.hpp"

namespace gui {

bool hasPlatform() {
  const QString wanted = qEnvironmentVariable("QT_QPA_PLATFORM");
  // The others come with Qt, and of several Qt takes the first that there is.
  if (!wanted.startsWith(QLatin1String("wayland")) || wanted.contains(QLatin1Char(';')))
    return true;
  const QStringList found =
      QDir(QLibraryInfo::path(QLibraryInfo::PluginsPath) + QStringLiteral("/platforms"))
          .entryList({QStringLiteral("*wayland*")}, QDir::Files);
  return !found.isEmpty();
}

// A window that was closed has left where it stood.
bool isFirstRun(const std::string& plan) {
  return plan.empty() && !QSettings().contains(QStringLiteral("geometry"));
}

int runWindow(int argc, char** argv, const std::string& plan) {
  QApplication app(argc, argv);
  // The application object adopts the person's locale, with which strtod() reads "3.5" as 3.
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setOrganizationName(QStringLiteral("heatledger"));
  QApplication::setApplicationName(QStringLiteral("heatledger"));
  QApplication::setApplicationVersion(QString::fromUtf8(std::string(kVersion).c_str()));
  QApplication::setDesktopFileName(QStringLiteral("heatledger"));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/heatledger.svg")));
  wearChosenAppearance();
  speak(QSettings().value(QStringLiteral("language"), systemLanguage()).toString());
  const bool firstRun = isFirstRun(plan);
  MainWindow window(QString::fromStdString(plan));
  const EndingSignals ending;
  window.show();
  QTimer::singleShot(0, &window, [&window, firstRun] {
    if (!window.offerLeftovers() && firstRun) window.offerStart();
  });
  return QApplication::exec();
}

}  // namespace gui
