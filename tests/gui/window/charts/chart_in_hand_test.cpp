// SPDX-License-Identifier: GPL-3.0-or-later
// A picture under mouse and menu: rigs that stand out or are taken out, stages, pieces of bars.
#include <gtest/gtest.h>

#include <QApplication>
#include <QContextMenuEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <cmath>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/question_page.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::PlanChart;
using gui::telling::Question;

gui::telling::Picture firstPictureOf(Question question) {
  return test_support::askDemo(question).pictures[0];
}

// With the events of a mouse: under a display the pointer itself may rest anywhere.
class ChartInHand : public testing::Test {
 protected:
  void showing(const gui::telling::Picture& picture) {
    chart_.resize(900, 500);
    chart_.show(picture);
    static_cast<QWidget&>(chart_).show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&chart_));
    chart_.repaint();
  }
  gui::ChartLayout layout() const {
    return gui::layOut(chart_.picture(), chart_.size(),
                       gui::lookOf(chart_.palette(), chart_.font(), chart_.locale()));
  }
  void move(QPointF to) {
    QMouseEvent event(QEvent::MouseMove, to, chart_.mapToGlobal(to), Qt::NoButton, Qt::NoButton,
                      {});
    QApplication::sendEvent(&chart_, &event);
  }
  QPointF nameOf(int rig) const {
    for (const gui::ChartLayout::Label& label : layout().legend)
      if (label.kind == gui::LegendSample::Line && label.index == rig) return label.box.center();
    return {};
  }
  QPointF onLine(int rig, double share) const {
    for (const gui::telling::PictureLine& line : chart_.picture().lines) {
      if (line.rig != rig || line.faint) continue;
      const double x = share * line.points.back().x;
      return layout().at({x, gui::telling::valueAt(line.points, x).value_or(0.0)});
    }
    return {};
  }
  PlanChart chart_;
};

TEST_F(ChartInHand, LiftsTheRigWhoseNameOrLineIsPointedAt) {
  showing(firstPictureOf(Question::HowLong));
  QSignalSpy pointed(&chart_, &PlanChart::rigPointed);
  const QImage calm = chart_.grab().toImage();
  move(nameOf(2));
  EXPECT_EQ(chart_.lifted(), 2);
  const QImage lifted = chart_.grab().toImage();
  EXPECT_NE(lifted, calm);
  move(onLine(0, 0.2));
  EXPECT_EQ(chart_.lifted(), 0);
  move(QPointF(2, 2));
  EXPECT_EQ(chart_.lifted(), std::nullopt);
  EXPECT_EQ(pointed.count(), 3);
  EXPECT_EQ(chart_.grab().toImage(), calm);
}

// The line that stands out keeps its shade, the others go towards the paper.
TEST_F(ChartInHand, FadesTheOthers) {
  gui::telling::Picture picture;
  picture.lines = {{.rig = 1, .name = "one", .points = {{0, 1}, {10, 1}}},
                   {.rig = 2, .name = "other", .points = {{0, 3}, {10, 3}}}};
  showing(picture);
  const auto darkest = [&](int rig) {
    const QImage image = chart_.grab().toImage();
    const QPoint at = onLine(rig, 0.5).toPoint();
    int least = 255;
    for (int x = at.x() - 20; x < at.x() + 20; ++x)
      for (int y = at.y() - 2; y <= at.y() + 2; ++y)
        least = std::min(least, qGray(image.pixel(x, y)));
    return least;
  };
  const int calm = darkest(2);
  chart_.lift(1);
  EXPECT_GT(darkest(2), calm + 60);
  chart_.lift(2);
  EXPECT_LE(darkest(2), calm + 2);
}

TEST_F(ChartInHand, AsksToTakeOutTheRigWhoseNameIsClicked) {
  showing(firstPictureOf(Question::HowLong));
  QSignalSpy toggled(&chart_, &PlanChart::rigToggled);
  QTest::mouseClick(&chart_, Qt::LeftButton, {}, nameOf(3).toPoint());
  ASSERT_EQ(toggled.count(), 1);
  EXPECT_EQ(toggled[0][0].toInt(), 3);
  // Let go elsewhere, it was not meant.
  QTest::mousePress(&chart_, Qt::LeftButton, {}, nameOf(3).toPoint());
  QTest::mouseRelease(&chart_, Qt::LeftButton, {}, nameOf(1).toPoint());
  EXPECT_EQ(toggled.count(), 1);
}

// A mash that loses two kelvins is not to be five pixels high.
TEST_F(ChartInHand, FillsItsHeightWithTheStageThatIsAskedFor) {
  showing(firstPictureOf(Question::HowLong));
  QMenu menu;
  chart_.fillMenu(menu);
  QAction* rest = nullptr;
  for (const QMenu* sub : menu.findChildren<QMenu*>())
    for (QAction* action : sub->actions())
      if (action->text() == QLatin1String("Rest 1")) rest = action;
  ASSERT_NE(rest, nullptr);
  rest->trigger();
  EXPECT_TRUE(chart_.isZoomed());
  const gui::ChartWindow seen = chart_.visibleWindow();
  const gui::telling::PictureLine& line = chart_.picture().lines[1];
  double least = 1e9;
  double most = -1e9;
  for (const gui::telling::PicturePoint& p : line.points) {
    if (p.x < seen.xFrom || p.x > seen.xTo) continue;
    least = std::min(least, p.y);
    most = std::max(most, p.y);
  }
  EXPECT_LE(seen.yFrom, least);
  EXPECT_GE(seen.yTo, most);
  QTest::keyClick(&chart_, Qt::Key_0);
  EXPECT_FALSE(chart_.isZoomed());
}

TEST_F(ChartInHand, IsAsHighAsTheLinesAreWhereItIsZoomedTo) {
  gui::telling::Picture mash;
  mash.lines = {{.rig = 0, .name = "mash", .points = {{0, 10}, {60, 67}, {120, 65}, {180, 100}}}};
  showing(mash);
  chart_.showOnly(60.0, 120.0);
  EXPECT_GE(2.0 / chart_.visibleWindow().height(), 0.5);
  EXPECT_LE(chart_.visibleWindow().yFrom, 65.0);
  EXPECT_GE(chart_.visibleWindow().yTo, 67.0);
  // By the wheel as well, and by hand where Shift is held.
  chart_.resetZoom();
  chart_.setFocus();
  const QPoint at = layout().at({90.0, 66.0}).toPoint();
  const auto wheel = [&](Qt::KeyboardModifiers held) {
    QWheelEvent event(at, chart_.mapToGlobal(at), {}, {0, 600}, {}, held | Qt::ControlModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&chart_, &event);
  };
  wheel({});
  EXPECT_LT(chart_.visibleWindow().height(), 60.0);
  chart_.resetZoom();
  const double whole = chart_.visibleWindow().height();
  wheel(Qt::ShiftModifier);
  EXPECT_NEAR(chart_.visibleWindow().height(), whole / std::pow(1.2, 5.0), 1e-9);
}

// As the tables have it, whatever piece is seen.
TEST_F(ChartInHand, ReadsWithTheTablesDigits) {
  showing(firstPictureOf(Question::HowLong));
  const QRegularExpression oneDecimal(QStringLiteral("  \\d+\\.\\d °C"));
  for (int zoom = 0; zoom < 4; ++zoom) {
    chart_.setCrosshair(chart_.visibleWindow().xFrom + 0.4 * chart_.visibleWindow().width());
    EXPECT_TRUE(oneDecimal.match(chart_.readOut()[1]).hasMatch())
        << chart_.readOut()[1].toStdString();
    QTest::keyClick(&chart_, Qt::Key_Plus);
  }
}

TEST_F(ChartInHand, OffersAllOfItInAMenu) {
  showing(firstPictureOf(Question::HowLong));
  QSignalSpy toggled(&chart_, &PlanChart::rigToggled);
  QContextMenuEvent asked(QContextMenuEvent::Mouse, QPoint(300, 200),
                          chart_.mapToGlobal(QPoint(300, 200)));
  QApplication::sendEvent(&chart_, &asked);
  auto* menu = chart_.findChild<QMenu*>();
  ASSERT_NE(menu, nullptr);
  EXPECT_TRUE(menu->isVisible());
  QStringList texts;
  for (const QAction* action : menu->actions()) texts += action->text();
  for (const char* wanted : {"Zoom &in", "Zoom &out", "&Whole picture", "&Stage", "&Copy picture"})
    EXPECT_TRUE(texts.join(QLatin1Char('|')).contains(QLatin1String(wanted))) << wanted;
  menu->setActiveAction(menu->actions()[0]);
  QTest::keyClick(menu, Qt::Key_Return);
  EXPECT_TRUE(chart_.isZoomed());
  QMenu rigs;
  chart_.fillMenu(rigs);
  for (QAction* action : rigs.actions())
    if (action->text().startsWith(QLatin1String("(b)"))) {
      EXPECT_TRUE(action->isChecked());
      action->trigger();
    }
  ASSERT_EQ(toggled.count(), 1);
  EXPECT_EQ(toggled[0][0].toInt(), 1);
}

TEST_F(ChartInHand, TellsOfAPieceOfABarByMouseAndKeys) {
  const gui::telling::Picture picture =
      test_support::askDemo(Question::WhereHeat, {.asBars = true}).pictures[0];
  showing(picture);
  const gui::ChartLayout::Bar bar = layout().bars[1];
  move({layout().at({0.5 * picture.stacks[1].parts[0], 0.0}).x(), 0.5 * (bar.from + bar.to)});
  ASSERT_EQ(chart_.readOut().size(), 2);
  EXPECT_TRUE(chart_.readOut()[0].startsWith(QLatin1String("(b)")));
  EXPECT_EQ(chart_.readOut()[1].toStdString(), picture.stacks[1].notes[0]);
  EXPECT_EQ(chart_.lifted(), 1);
  QTest::keyClick(&chart_, Qt::Key_Right);
  EXPECT_EQ(chart_.readOut()[1].toStdString(), picture.stacks[1].notes[1]);
  QTest::keyClick(&chart_, Qt::Key_Down);
  EXPECT_EQ(chart_.readOut()[1].toStdString(), picture.stacks[2].notes[1]);
  EXPECT_FALSE(chart_.accessibleDescription().isEmpty());
  QTest::keyClick(&chart_, Qt::Key_Escape);
  EXPECT_TRUE(chart_.readOut().isEmpty());
}

// A rig that is taken out stays in the legend of the screen, where a click brings it back; exports
// do not have it.
TEST(PicturesOfAPage, TakesRigsOutOfItsPicturesAndBringsThemBack) {
  gui::QuestionPage page;
  page.resize(1000, 800);
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  page.setQuestion(Question::HowLong);
  static_cast<QWidget&>(page).show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&page));
  const auto click = [&](int rig) {
    auto* chart = page.findChild<PlanChart*>();
    const gui::ChartLayout layout =
        gui::layOut(chart->picture(), chart->size(),
                    gui::lookOf(chart->palette(), chart->font(), chart->locale()));
    for (const gui::ChartLayout::Label& label : layout.legend)
      if (label.index == rig && label.kind == gui::LegendSample::Line)
        QTest::mouseClick(chart, Qt::LeftButton, {}, label.box.center().toPoint());
    QApplication::processEvents();
  };
  click(1);
  ASSERT_EQ(page.view().undrawn.size(), 1U);
  const gui::telling::Picture seen = page.findChild<PlanChart*>()->picture();
  EXPECT_EQ(seen.lines.size(), 3U);
  ASSERT_EQ(seen.leftOut.size(), 1U);
  EXPECT_EQ(seen.leftOut[0].rig, 1);
  EXPECT_TRUE(page.seenAnswer().pictures[0].leftOut.empty());
  EXPECT_EQ(page.seenAnswer().pictures[0].lines.size(), 3U);
  click(1);
  EXPECT_TRUE(page.view().undrawn.empty());
  for (const int rig : {0, 1, 2, 3}) click(rig);
  EXPECT_TRUE(page.view().undrawn.empty());
}

// What is pointed at in one picture stands out in the one beside it.
TEST(PicturesOfAPage, LiftsARigInAllItsPictures) {
  gui::QuestionPage page;
  page.resize(1000, 800);
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  page.setQuestion(Question::HowLong);
  const auto charts = page.findChildren<PlanChart*>();
  ASSERT_EQ(charts.size(), 2);
  Q_EMIT charts[0]->rigPointed(2);
  EXPECT_EQ(charts[1]->lifted(), 2);
  QMenu menu;
  page.fillPictureMenu(menu);
  EXPECT_EQ(menu.actions().size(), 2);
}

}  // namespace
