// SPDX-License-Identifier: GPL-3.0-or-later
// Photographs the window with each question of the bundled demo, light and dark, into the folder
// named by the only argument. docs/make_window_pictures.sh runs it.
#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QPixmap>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <QTest>
#include <clocale>
#include <cstdio>

#include "gui/window/language.hpp"
#include "gui/window/main_window.hpp"

namespace {

constexpr QSize kSize(1280, 800);
constexpr int kPatience = 60'000;  // ms

QPalette darkPalette() {
  const QColor paper(30, 31, 34);
  const QColor ink(222, 222, 218);
  QPalette dark(ink, QColor(54, 55, 59), QColor(90, 91, 96), QColor(18, 18, 20), QColor(70, 71, 75),
                ink, QColor(24, 25, 27));
  dark.setColor(QPalette::Window, paper);
  dark.setColor(QPalette::ToolTipBase, paper);
  dark.setColor(QPalette::ToolTipText, ink);
  dark.setColor(QPalette::PlaceholderText, QColor(150, 150, 148));
  dark.setColor(QPalette::Highlight, QColor(92, 112, 138));
  dark.setColor(QPalette::HighlightedText, QColor(255, 255, 255));
  dark.setColor(QPalette::Link, QColor(150, 180, 215));
  return dark;
}

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
  const QTemporaryDir recovery;
  gui::MainWindow window({}, recovery.path());
  window.resize(kSize);
  window.show();
  const QString folder = QString::fromLocal8Bit(argv[1]);
  if (!photograph(window, folder, QStringLiteral("light"))) return 1;
  QApplication::setPalette(darkPalette());
  return photograph(window, folder, QStringLiteral("dark")) ? 0 : 1;
}
