// SPDX-License-Identifier: GPL-3.0-or-later
// The wanted time pulled by hand in the whole window, and what edits leave on the screen meanwhile.
#include <QLabel>
#include <QTest>

#include "gui/window/charts/plan_chart.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::PlanChart;
using test_support::WindowTest;

class TheDrag : public WindowTest {
 protected:
  PlanChart& chart() { return *window().page().findChild<PlanChart*>(); }
  void move(QPoint to, Qt::MouseButtons buttons = Qt::LeftButton) {
    QMouseEvent event(QEvent::MouseMove, to, chart().mapToGlobal(to), Qt::NoButton, buttons, {});
    QApplication::sendEvent(&chart(), &event);
  }
  int curves() {
    int found = 0;
    for (const gui::telling::PictureLine& line : chart().picture().lines)
      if (!line.faint && line.points.size() >= 2) ++found;
    return found;
  }
};

TEST_F(TheDrag, LeavesTheChartWhereItIsAndItsCurvesOnIt) {
  window().setFormsShown(false);
  window().setQuestion(gui::telling::Question::WhichElement);
  ASSERT_TRUE(settles());
  const QString said = window().page().currentAnswer().headline();
  chart().grab();
  const QRect place(chart().mapTo(&window(), QPoint()), chart().size());
  const gui::ChartWindow axes = chart().visibleWindow();
  const gui::ChartLayout layout =
      gui::layOut(chart().picture(), chart().size(),
                  gui::lookOf(chart().palette(), chart().font(), chart().locale()));
  QPoint hand = layout.at({0.5 * (axes.xFrom + axes.xTo), *chart().picture().draggable}).toPoint();
  QTest::mousePress(&chart(), Qt::LeftButton, {}, hand);
  double before = *chart().picture().draggable;
  EXPECT_EQ(before, 45.0);
  for (int i = 0; i < 10; ++i) {
    hand += QPoint(0, -8);
    move(hand);
    // Time enough for the days of this step, not always for more.
    QTest::qWait(i % 2 == 0 ? 20 : 150);
    SCOPED_TRACE(i);
    EXPECT_GT(*chart().picture().draggable, before);
    before = *chart().picture().draggable;
    EXPECT_EQ(curves(), 4);
    EXPECT_FALSE(window().page().currentAnswer().headline().contains("worked out"));
    EXPECT_EQ(QRect(chart().mapTo(&window(), QPoint()), chart().size()), place);
    EXPECT_EQ(chart().visibleWindow().xFrom, axes.xFrom);
    EXPECT_EQ(chart().visibleWindow().xTo, axes.xTo);
    EXPECT_EQ(chart().visibleWindow().yTo, axes.yTo);
  }
  QTest::mouseRelease(&chart(), Qt::LeftButton, {}, hand);
  const double wanted = 45.0 + 80.0 / layout.scale().y();
  EXPECT_NEAR(*chart().picture().draggable, wanted, 0.25 + 1.5 / layout.scale().y());
  const auto written = textAt("/goals/boil_within");
  ASSERT_TRUE(written.has_value());
  EXPECT_NEAR(std::stod(*written), wanted, 0.25 + 1.5 / layout.scale().y());
  ASSERT_TRUE(settles());
  EXPECT_EQ(*chart().picture().draggable, std::stod(*written));
  EXPECT_NE(window().page().currentAnswer().headline(), said);
  EXPECT_EQ(curves(), 4);
  undo();
  EXPECT_EQ(textAt("/goals/boil_within"), "45 min");  // one step
}

// Any edit: the last whole answer stays until the next.
TEST_F(TheDrag, NeverShowsAQuestionWithoutItsCurves) {
  ASSERT_TRUE(settles());
  int power = 1650;
  for (const gui::telling::Question question :
       {gui::telling::Question::BoilsEnough, gui::telling::Question::WorthJacket,
        gui::telling::Question::WhichElement, gui::telling::Question::HowFarCools}) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    window().setQuestion(question);
    const int before = curves();
    EXPECT_GT(before, 0);
    int shown = 0;
    QObject context;
    QObject::connect(&window(), &gui::MainWindow::answerShown, &context, [&] {
      ++shown;
      EXPECT_EQ(curves(), before);
    });
    type("/rigs/1/element/power", QStringLiteral("%1 W").arg(power += 10));
    ASSERT_TRUE(settles());
    EXPECT_EQ(curves(), before);
    EXPECT_GT(shown, 1);
  }
}

}  // namespace
