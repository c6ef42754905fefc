// SPDX-License-Identifier: GPL-3.0-or-later
// Photographs the window with each question of the bundled demo, light and dark, into the folder
// named by the only argument. docs/make_window_pictures.sh runs it.
#include <QApplication>
#include <QFontDatabase>
#include <QPixmap>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <QTest>
#include <clocale>
#include <cstdio>

#include "gui/window/appearance.hpp"
#include "gui/window/language.hpp"
#include "gui/window/main_window.hpp"

namespace {

constexpr QSize kSize(1280, 800);
constexpr int kPatience = 60'000;  // ms

bool photograph(gui::MainWindow& window, const QString& folder, const QString& light) {
  for (const gui::Question question : gui::allQuestions()) {
    window.setQuestion(question);
    if (!QTest::qWaitFor([&] { return window.isSettled(); }, kPatience)) return false;
    QTest::qWait(200);  // layouts follow their contents
    const QString name =
        QStringLiteral("%1/window-%2-%3.png").arg(folder, gui::identifierOf(question), light);
    if (!window.grab().save(name)) return false;
    std::puts(qPrintable(name));
  }
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  if (argc != 2 || QFontDatabase::families().isEmpty()) {
    std::fputs("usage: window_pictures FOLDER (and a font must be installed)\n", stderr);
    return 2;
  }
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 9));
  gui::speak(QStringLiteral("en"));
  QApplication::setPalette(gui::lightPalette());
  const QTemporaryDir recovery;
  gui::MainWindow window({}, recovery.path());
  window.resize(kSize);
  window.show();
  const QString folder = QString::fromLocal8Bit(argv[1]);
  if (!photograph(window, folder, QStringLiteral("light"))) return 1;
  QApplication::setPalette(gui::darkPalette());
  return photograph(window, folder, QStringLiteral("dark")) ? 0 : 1;
}
