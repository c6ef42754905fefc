// SPDX-License-Identifier: GPL-3.0-or-later
// Photographs the window with the sheet that a plan begins with and each question of the bundled
// demo, light and dark, into the folder named first. docs/make_window_pictures.sh runs it. With a
// size as WIDTHxHEIGHT, light only, and the forms further down as well: to see what another screen
// cuts off (QT_SCALE_FACTOR).
#include <QApplication>
#include <QFontDatabase>
#include <QLineEdit>
#include <QPixmap>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleFactory>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <clocale>
#include <cstdio>

#include "gui/window/appearance.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/start/start_sheet.hpp"
#include "gui/window/words/language.hpp"

namespace {

constexpr QSize kSize(1280, 800);
constexpr int kPatience = 60'000;  // ms

bool take(QWidget& window, const QString& name) {
  QTest::qWait(200);  // layouts follow their contents
  if (!window.grab().save(name)) return false;
  std::puts(qPrintable(name));
  return true;
}

// Every tab of the plan, screen by screen.
bool photographForms(gui::MainWindow& window, const QString& folder) {
  window.setFormsShown(true);
  auto* tabs = window.findChild<QTabWidget*>();
  for (int tab = 0; tabs && tab < tabs->count(); ++tab) {
    tabs->setCurrentIndex(tab);
    QTest::qWait(100);
    for (int screen = 0; screen < 8; ++screen) {
      if (!take(window, QStringLiteral("%1/form-%2-%3.png").arg(folder).arg(tab).arg(screen)))
        return false;
      auto* area = tabs->currentWidget()->findChild<QScrollArea*>();
      if (!area) area = qobject_cast<QScrollArea*>(tabs->currentWidget());
      if (!area) break;
      QScrollBar* bar = area->verticalScrollBar();
      if (bar->value() >= bar->maximum()) break;
      bar->setValue(bar->value() + bar->pageStep());
    }
  }
  return true;
}

bool photograph(gui::MainWindow& window, const QString& folder, const QString& light) {
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    window.setQuestion(question);
    if (!QTest::qWaitFor([&] { return window.isSettled(); }, kPatience)) return false;
    const std::string name(gui::telling::identifierOf(question));
    if (!take(
            window,
            QStringLiteral("%1/window-%2-%3.png").arg(folder, QString::fromStdString(name), light)))
      return false;
  }
  return true;
}

// The sheet with a kettle as somebody types it, and the examples.
bool photographStart(gui::MainWindow& window, const QString& folder, const QString& light) {
  window.offerStart();
  auto* sheet = window.findChild<gui::StartSheet*>();
  const auto type = [&](const char* field, const char* keys) {
    auto* line = sheet->findChild<QLineEdit*>(QLatin1String(field));
    line->setFocus();
    QTest::keyClicks(line, QLatin1String(keys));
  };
  type("start/volume", "45");
  type("start/power", "2.2");
  sheet->kettle().commit();
  if (!QTest::qWaitFor([&] { return sheet->kettle().isSettled(); }, kPatience)) return false;
  const QString name = QStringLiteral("%1/window-%2-%3.png");
  if (!take(*sheet, name.arg(folder, QStringLiteral("start"), light))) return false;
  sheet->setWay(gui::StartSheet::Way::Example);
  if (!take(*sheet, name.arg(folder, QStringLiteral("examples"), light))) return false;
  sheet->reject();
  return QTest::qWaitFor([&] { return !window.findChild<gui::StartSheet*>(); }, kPatience);
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QSize size = kSize;
  const QStringList asked =
      argc == 3 ? QString::fromLocal8Bit(argv[2]).split(QLatin1Char('x')) : QStringList();
  if (asked.size() == 2) size = QSize(asked[0].toInt(), asked[1].toInt());
  if (argc < 2 || argc > 3 || size.isEmpty() || QFontDatabase::families().isEmpty()) {
    std::fputs("usage: window_pictures FOLDER [WIDTHxHEIGHT] (and a font must be installed)\n",
               stderr);
    return 2;
  }
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 9));
  gui::speak(QStringLiteral("en"));
  QApplication::setPalette(gui::lightPalette());
  const QTemporaryDir recovery;
  gui::MainWindow window({}, recovery.path());
  window.resize(size);
  window.show();
  const QString folder = QString::fromLocal8Bit(argv[1]);
  if (!photographStart(window, folder, QStringLiteral("light"))) return 1;
  if (!photograph(window, folder, QStringLiteral("light"))) return 1;
  if (argc == 3) return photographForms(window, folder) ? 0 : 1;
  QApplication::setPalette(gui::darkPalette());
  return photographStart(window, folder, QStringLiteral("dark")) &&
                 photograph(window, folder, QStringLiteral("dark"))
             ? 0
             : 1;
}
