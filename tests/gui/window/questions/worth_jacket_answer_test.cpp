// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? Both days as curves, what lies between them, and the same numbers beside.
#include <gtest/gtest.h>

#include <QTest>
#include <array>
#include <cmath>
#include <stdexcept>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/curves.hpp"
#include "gui/window/questions/question.hpp"
#include "rigs/answers/figures.hpp"
#include "tests/gui/window/solved_demo.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using gui::QtAnswer;
using gui::QtPicture;
using gui::QtPictureLine;
using gui::Question;
using test_support::WindowTest;

const gui::Solution& demo() { return *test_support::solvedDemo(); }

QtAnswer ask(const gui::QuestionView& view, const gui::Solution& solution = demo()) {
  return gui::qtAnswerTo(Question::WorthJacket, solution, rigs::UnitSystem::SI, view);
}

const QtPictureLine& lineOf(const QtPicture& picture, int rig, bool jacketed) {
  for (const QtPictureLine& line : picture.lines)
    if (line.rig == rig && line.faint != jacketed) return line;
  throw std::logic_error("no such line");
}

QString cell(const gui::PictureTable& table, const QString& heading, const QString& label,
             int rig) {
  bool found = false;
  for (const auto& row : table.rows) {
    if (row[0].startsWith(heading)) found = true;
    if (found && row[0] == label) return row[rig + 1];
  }
  return QStringLiteral("no such row");
}

// The demo's rigs (b) and (c) are the same kettle, once planned bare and once with its jacket.
TEST(WorthJacket, LeavesOutDaysThatStop) {
  for (const bool thickness : {true, false}) {
    const QtAnswer answer = ask({.overThickness = thickness, .savings = true});
    ASSERT_EQ(answer.pictures.size(), 2);
    for (const gui::QtPicture& picture : answer.pictures) {
      for (const gui::QtPictureLine& line : picture.lines) {
        for (const QPointF& p : line.points) {
          // A film of insulation hardly insulates, and radiates more than bright metal.
          if (thickness && p.x() < 1.0) continue;
          EXPECT_GE(p.y(), -1e-9) << line.name.toStdString();
        }
      }
    }
    if (thickness) {
      EXPECT_TRUE(answer.pictures[0].lines[0].points.isEmpty());
      EXPECT_FALSE(answer.pictures[0].lines[1].points.isEmpty());
    }
  }
}

TEST(WorthJacket, ShowsTheDayWithTheJacketAndWithout) {
  for (const bool thickness : {true, false}) {
    const QtAnswer answer = ask({.overThickness = thickness});
    ASSERT_EQ(answer.pictures.size(), 2);
    for (const QtPicture& picture : answer.pictures) {
      const auto legend = gui::legendOf(picture);
      EXPECT_EQ(legend.back().text, "the same without its jacket");
      for (int rig : {1, 2, 3}) {
        SCOPED_TRACE(rig);
        const QtPictureLine& with = lineOf(picture, rig, true);
        const QtPictureLine& without = lineOf(picture, rig, false);
        EXPECT_GE(with.points.size(), 10);
        EXPECT_GE(without.points.size(), 10);
        for (const QPointF& p : with.points) {
          const auto bare = gui::valueAt(without.points, p.x());
          // A film of insulation hardly insulates, and radiates more than bright metal.
          if (!bare || (thickness && p.x() < 3.0)) continue;
          EXPECT_LT(p.y(), *bare) << p.x();
        }
      }
    }
    // The old element never boils, so that there is nothing to compare for it as it is.
    if (thickness) {
      EXPECT_TRUE(lineOf(answer.pictures[0], 0, true).points.isEmpty());
    }
  }
}

// At the rig's own place both curves go through its own two days, which the mark and table tell.
TEST(WorthJacket, MarksTheRigsOwnTwoDaysOnTheirCurves) {
  for (const bool thickness : {true, false}) {
    const QtAnswer answer = ask({.overThickness = thickness});
    for (int rig : {1, 2, 3}) {
      SCOPED_TRACE(rig);
      const auto& effect = *demo().answers.rigs[static_cast<std::size_t>(rig)].jacket;
      const std::array days{&effect.bare, &effect.jacketed};
      QVector<gui::QtPictureMark> marks;
      for (const gui::QtPictureMark& mark : answer.pictures[0].marks)
        if (mark.rig == rig) marks.push_back(mark);
      ASSERT_EQ(marks.size(), 2);
      for (int i : {0, 1}) {
        const auto time =
            rigs::timeOf(*days[static_cast<std::size_t>(i)], physics::StageKind::HeatingToBoil);
        ASSERT_TRUE(time);
        EXPECT_NEAR(marks[i].at.y(), physics::inMinutes(*time), 1e-9);
        EXPECT_TRUE(lineOf(answer.pictures[0], rig, i == 1).points.contains(marks[i].at));
      }
      EXPECT_EQ(marks[1].label, QStringLiteral("(%1) %2 → %3 min")
                                    .arg(QLatin1Char("abcd"[rig]))
                                    .arg(std::round(marks[0].at.y()))
                                    .arg(std::round(marks[1].at.y())));
      const QString cost = QStringLiteral("Cost of a batch");
      const double bare =
          cell(answer.table, cost, QStringLiteral("without jacket"), rig).toDouble();
      const double jacketed =
          cell(answer.table, cost, QStringLiteral("with jacket"), rig).toDouble();
      const double saved = cell(answer.table, cost, QStringLiteral("saved"), rig).toDouble();
      EXPECT_NEAR(bare - jacketed, saved, 0.0105);  // rounded to cents
      EXPECT_GT(saved, 0.0);
    }
  }
}

// What the two curves leave between them is what the other view shows.
TEST(WorthJacket, SavesWhatLiesBetweenTheCurves) {
  for (const bool thickness : {true, false}) {
    const QtAnswer both = ask({.overThickness = thickness});
    const QtAnswer saved = ask({.overThickness = thickness, .savings = true});
    for (int which : {0, 1}) {
      for (int rig : {1, 2, 3}) {
        const QtPictureLine& with = lineOf(both.pictures[which], rig, true);
        const QtPictureLine& without = lineOf(both.pictures[which], rig, false);
        int compared = 0;
        for (const QPointF& p : lineOf(saved.pictures[which], rig, true).points) {
          if (!with.points.contains({p.x(), *gui::valueAt(with.points, p.x())})) continue;
          EXPECT_NEAR(*gui::valueAt(without.points, p.x()) - *gui::valueAt(with.points, p.x()),
                      p.y(), 1e-6);
          ++compared;
        }
        EXPECT_GE(compared, 10);
      }
    }
  }
}

TEST(WorthJacket, TellsEnergyWithoutAPrice) {
  gui::Solution free = demo();
  free.plan.tariff = {};
  const QtAnswer answer = ask({.overThickness = false}, free);
  EXPECT_EQ(answer.pictures[1].yUnit, "kWh");
  EXPECT_FALSE(lineOf(answer.pictures[1], 1, true).points.isEmpty());
  EXPECT_FALSE(lineOf(answer.pictures[1], 1, false).points.isEmpty());
}

class TheJacketPage : public WindowTest {};

TEST_F(TheJacketPage, ChangesBetweenBothDaysAndWhatIsSaved) {
  window().setQuestion(Question::WorthJacket);
  ASSERT_TRUE(settles());
  auto& page = window().page();
  EXPECT_TRUE(page.currentAnswer().pictures[0].title.contains("with a jacket and without"));
  QComboBox* shown = nullptr;
  for (auto* box : page.findChildren<QComboBox*>())
    if (box->isVisible() && box->itemText(1) == "what a jacket saves") shown = box;
  ASSERT_NE(shown, nullptr);
  shown->setFocus();
  QTest::keyClick(shown, Qt::Key_Down);
  EXPECT_EQ(page.currentAnswer().pictures[0].title, "Time a jacket saves");
  QTest::keyClick(shown, Qt::Key_Up);
  EXPECT_TRUE(page.currentAnswer().pictures[0].title.contains("with a jacket and without"));
}

}  // namespace
