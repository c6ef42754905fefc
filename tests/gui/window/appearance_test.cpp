// SPDX-License-Identifier: GPL-3.0-or-later
// Light and dark, chosen in the menu, remembered, worn by everything at once and readable.
#include "gui/window/appearance.hpp"

#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QSettings>
#include <QTest>
#include <QTimer>

#include "gui/window/charts/plan_chart.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

class TheAppearance : public WindowTest {
 protected:
  void TearDown() override {
    gui::choose(gui::Appearance::AsSystem);
    WindowTest::TearDown();
  }
  QAction* entry(const QString& text) {
    for (QAction* action : window().findChildren<QAction*>())
      if (action->text() == text) return action;
    return nullptr;
  }
};

TEST_F(TheAppearance, IsChosenInTheMenuAndRemembered) {
  ASSERT_TRUE(settles());
  const auto corner = [&] {
    auto* chart = window().page().findChild<gui::PlanChart*>();
    return qGray(chart->grab().toImage().pixel(chart->width() - 3, chart->height() / 2));
  };
  ASSERT_NE(entry("&Dark"), nullptr);
  entry("&Dark")->trigger();
  QApplication::processEvents();  // widgets are told by an event
  EXPECT_LT(corner(), 60);
  EXPECT_LT(qGray(window().grab().toImage().pixel(3, window().height() - 3)), 60);
  EXPECT_EQ(gui::chosenAppearance(), gui::Appearance::Dark);
  reopen();
  gui::wearChosenAppearance();
  QApplication::processEvents();
  EXPECT_TRUE(entry("&Dark")->isChecked());
  ASSERT_TRUE(settles());
  EXPECT_LT(corner(), 60);
  entry("&Light")->trigger();
  QApplication::processEvents();
  EXPECT_GT(corner(), 200);
  EXPECT_EQ(gui::chosenAppearance(), gui::Appearance::Light);
}

// WCAG 2.1: 1.4.3 asks 4.5 for text; what is disabled is exempt there but read here all the same.
TEST(ThePalettes, KeepTextReadable) {
  for (const QPalette& palette : {gui::lightPalette(), gui::darkPalette()}) {
    SCOPED_TRACE(palette.color(QPalette::Window).name().toStdString());
    const auto contrast = [&](QPalette::ColorRole ink, QPalette::ColorRole paper) {
      return gui::contrastRatio(palette.color(ink), palette.color(paper));
    };
    EXPECT_GE(contrast(QPalette::WindowText, QPalette::Window), 4.5);
    EXPECT_GE(contrast(QPalette::Text, QPalette::Base), 4.5);
    EXPECT_GE(contrast(QPalette::Text, QPalette::AlternateBase), 4.5);
    EXPECT_GE(contrast(QPalette::ButtonText, QPalette::Button), 4.5);
    EXPECT_GE(contrast(QPalette::ToolTipText, QPalette::ToolTipBase), 4.5);
    EXPECT_GE(contrast(QPalette::HighlightedText, QPalette::Highlight), 4.5);
    EXPECT_GE(contrast(QPalette::Link, QPalette::Window), 4.5);
    EXPECT_GE(contrast(QPalette::Link, QPalette::Base), 4.5);
    EXPECT_GE(contrast(QPalette::PlaceholderText, QPalette::Base), 4.5);
    EXPECT_GE(contrast(QPalette::PlaceholderText, QPalette::Window), 4.5);
  }
}

// Hairlines are lines, which ask for no contrast of text; the accent marks what is chosen.
TEST(ThePalettes, FollowTheDesktop) {
  QPalette desktop(QColor(239, 239, 239));
  EXPECT_EQ(gui::likeDesktop(desktop), gui::lightPalette());
  desktop = QPalette(QColor(40, 40, 44));
  EXPECT_EQ(gui::likeDesktop(desktop), gui::darkPalette());
  // Who needs all the contrast that there is keeps it.
  for (const auto& [ink, paper] :
       {std::pair(Qt::white, Qt::black), std::pair(Qt::black, Qt::white)}) {
    QPalette all;
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::ButtonText})
      all.setColor(role, ink);
    for (const QPalette::ColorRole role : {QPalette::Window, QPalette::Button})
      all.setColor(role, paper);
    EXPECT_EQ(gui::likeDesktop(all), all);
  }
  for (const QPalette& own : {gui::lightPalette(), gui::darkPalette()}) {
    EXPECT_GE(gui::contrastRatio(own.color(QPalette::Highlight), own.color(QPalette::Window)), 4.5);
    EXPECT_GE(
        gui::contrastRatio(own.color(QPalette::WindowText), own.color(QPalette::AlternateBase)),
        4.5);
    EXPECT_GE(gui::contrastRatio(own.color(QPalette::PlaceholderText),
                                 own.color(QPalette::AlternateBase)),
              4.5);
  }
}

// What every label and field of the window really wears.
TEST_F(TheAppearance, IsReadableInEveryWidget) {
  for (const gui::Appearance appearance : {gui::Appearance::Light, gui::Appearance::Dark}) {
    gui::choose(appearance);
    QApplication::processEvents();
    int looked = 0;
    for (const QWidget* widget : window().findChildren<QWidget*>()) {
      if (!widget->isEnabled()) continue;
      ++looked;
      const QPalette& palette = widget->palette();
      EXPECT_GE(gui::contrastRatio(palette.color(widget->foregroundRole()),
                                   palette.color(widget->backgroundRole())),
                4.5)
          << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
    EXPECT_GT(looked, 200);
  }
}

// As the desktop tells it: light becomes dark under a window that is open.
TEST_F(TheAppearance, FollowsTheDesktopWhileItRuns) {
  gui::choose(gui::Appearance::AsSystem);
  QApplication::setPalette(gui::darkPalette());  // whatever it was before
  QApplication::setPalette(QPalette());
  const QPalette desktop = QApplication::palette();
  QEvent change(QEvent::ThemeChange);
  QApplication::sendEvent(window().windowHandle(), &change);
  QApplication::processEvents();
  EXPECT_NE(QApplication::palette().color(QPalette::Window), desktop.color(QPalette::Window));
  EXPECT_EQ(QApplication::palette().color(QPalette::Window),
            gui::likeDesktop(desktop).color(QPalette::Window));
}

TEST_F(TheAppearance, OfTheAboutBoxNamesLicences) {
  QString said;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return;
    timer.stop();
    said = box->text() + box->informativeText();
    QTest::mouseClick(box->button(QMessageBox::Ok), Qt::LeftButton);
  });
  timer.start(10);
  ASSERT_NE(entry("&About Heat Ledger"), nullptr);
  entry("&About Heat Ledger")->trigger();
  for (const char* part : {"GNU General Public License, version 3", "without any warranty",
                           "LGPL 3", "Qt Charts (GPL 3)", "Boost Software License", "MIT"}) {
    EXPECT_TRUE(said.contains(QLatin1String(part))) << part << said.toStdString();
  }
  EXPECT_TRUE(said.contains(QString::fromUtf8(qVersion())));
}

}  // namespace
