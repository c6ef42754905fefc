// SPDX-License-Identifier: GPL-3.0-or-later
// Exported from the window as it is seen: its zoom, its colours, and a word when it is done.
#include <QApplication>
#include <QFileInfo>
#include <QImage>
#include <QJsonDocument>
#include <QSettings>
#include <QStatusBar>
#include <QTest>

#include "gui/window/appearance.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::readFile;
using test_support::WindowTest;

class TheSeen : public WindowTest {
 protected:
  void TearDown() override {
    gui::choose(gui::Appearance::AsSystem);
    WindowTest::TearDown();
  }
  std::string exported(const QString& name) {
    window().exportSeen(fileIn(name));
    const bool said =
        QTest::qWaitFor([&] { return window().statusBar()->currentMessage().contains(name); },
                        test_support::kPatience);
    EXPECT_TRUE(said) << window().statusBar()->currentMessage().toStdString();
    return readFile(fileIn(name));
  }
};

TEST_F(TheSeen, IsZoomedAsOnTheScreen) {
  window().setQuestion(gui::telling::Question::HowLong);
  ASSERT_TRUE(settles());
  const std::string whole = exported("whole.svg");
  auto* chart = window().page().findChild<gui::PlanChart*>();
  for (int i = 0; i < 3; ++i) QTest::keyClick(chart, Qt::Key_Plus);
  const gui::ChartWindow seen = chart->visibleWindow();
  ASSERT_GT(seen.xFrom, 20.0);
  const std::string zoomed = exported("zoomed.svg");
  EXPECT_NE(whole.find(">0:00<"), std::string::npos);
  const gui::telling::Answer answer = window().page().seenAnswer();
  EXPECT_EQ(gui::fullWindow(answer.pictures[0]).xFrom, seen.xFrom);
  EXPECT_EQ(gui::fullWindow(answer.pictures[0]).xTo, seen.xTo);
  EXPECT_EQ(gui::fullWindow(answer.pictures[0]).yTo, seen.yTo);
  // The first picture's axis starts later; the second, which is not zoomed, still at 0:00.
  const auto count = [](const std::string& text) {
    int found = 0;
    for (std::size_t at = text.find(">0:00<"); at != std::string::npos;
         at = text.find(">0:00<", at + 1))
      ++found;
    return found;
  };
  EXPECT_EQ(count(zoomed), count(whole) - 1);
}

TEST_F(TheSeen, HasTheWindowsColoursOrPaper) {
  ASSERT_TRUE(settles());
  gui::choose(gui::Appearance::Dark);
  QApplication::processEvents();  // widgets are told by an event
  const auto corner = [&](const QString& name) {
    exported(name);
    return qGray(QImage(fileIn(name)).pixel(2, 2));
  };
  EXPECT_LT(corner("dark.png"), 60);
  QSettings().setValue(QLatin1String(gui::MainWindow::kOnPaper), true);
  EXPECT_EQ(corner("paper.png"), 255);
}

// Byte for byte what the terminal says of the same plan, though the window was never held up.
TEST_F(TheSeen, HasTheTerminalsNumbersAsJson) {
  type("/batch/boil", "75 min");
  ASSERT_TRUE(settles());
  window().exportSeen(fileIn("seen.json"));
  EXPECT_FALSE(QFile::exists(fileIn("seen.json")));  // not on this thread
  const std::string text = exported("seen.json");
  ASSERT_FALSE(QJsonDocument::fromJson(QByteArray::fromStdString(text)).isNull());
  const rigs::Plan& plan = *document().plan();
  std::string result = rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Everything));
  while (result.back() == '\n') result.pop_back();
  EXPECT_NE(text.find(result), std::string::npos);
}

TEST_F(TheSeen, ComplainsAboutAPlaceItCannotWriteTo) {
  ASSERT_TRUE(settles());
  answerBoxWith(QMessageBox::Ok);
  window().exportSeen(fileIn("nowhere/seen.svg"));
  EXPECT_EQ(boxes_, 1);
}

// However the file's name is written, and though a file dialog was told to replace it.
TEST_F(TheSeen, IsNeverWrittenOverTheOpenPlan) {
  const QString plan = fileIn("my-plan.json");
  ASSERT_TRUE(window().savePlanAs(plan));
  ASSERT_TRUE(settles());
  const std::string before = readFile(plan);
  ASSERT_TRUE(QFile::link(plan, fileIn("link.pdf")));
  for (const QString& path :
       {plan, fileIn("../" + QFileInfo(folder_.path()).fileName() + "/my-plan.json")}) {
    answerBoxWith(QMessageBox::Ok);
    window().exportSeen(path);
  }
  answerBoxWith(QMessageBox::Ok);
  window().saveReport(fileIn("link.pdf"));
  EXPECT_EQ(boxes_, 3);
  QTest::qWait(50);
  EXPECT_EQ(readFile(plan), before);
}

}  // namespace
