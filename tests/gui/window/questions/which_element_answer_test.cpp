// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? A curve for each supply, what each circuit carries, and the same numbers
// beside it.
#include <gtest/gtest.h>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/curves.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/questions/question.hpp"
#include "gui/window/questions/solver.hpp"
#include "rigs/answers/figures.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::QtAnswer;
using gui::QtPicture;
using gui::QtPictureLine;
using gui::Question;

const gui::Solution& demo() { return *test_support::solvedDemo(); }

QtAnswer ask(bool asWritten, const gui::Solution& solution = demo()) {
  return gui::qtAnswerTo(Question::WhichElement, solution, rigs::UnitSystem::SI,
                         {.asWritten = asWritten});
}

const PictureLine* beyondOf(const QtPicture& picture, int rig) {
  for (const QtPictureLine& line : picture.lines)
    if (line.faint && line.rig == rig) return &line;
  return nullptr;
}

QString cell(const gui::PictureTable& table, const QString& label, int rig) {
  for (const auto& row : table.rows)
    if (row[0] == label) return row[rig + 1];
  return QStringLiteral("no such row");
}

double mostAt(std::size_t rig) {
  const physics::Rig& one = demo().plan.rigs[rig].rig;
  return physics::inWatts(physics::largestElementOn(one.supply, one.element.topHeight).rating);
}

TEST(WhichElement, MarksEveryRigThatBoilsOnItsOwnCurve) {
  for (const bool asWritten : {true, false}) {
    const QtPicture picture = ask(asWritten).pictures[0];
    ASSERT_EQ(picture.marks.size(), 4);
    int boil = 0;
    for (const gui::QtPictureMark& mark : picture.marks) {
      const auto rig = static_cast<std::size_t>(mark.rig);
      const bool boils = demo().answers.rigs[rig].day.outcome == physics::Outcome::Done;
      EXPECT_EQ(picture.lines[mark.rig].points.contains(mark.at), boils) << mark.rig;
      boil += boils ? 1 : 0;
    }
    EXPECT_EQ(boil, 3);
  }
}

// The demo's first rig does not boil: that is said where its element is, at the top of all times.
TEST(WhichElement, SaysWhichRigDoesNotBoil) {
  const QtPicture picture = ask(true).pictures[0];
  const auto first = std::find_if(picture.marks.begin(), picture.marks.end(),
                                  [](const gui::QtPictureMark& mark) { return mark.rig == 0; });
  ASSERT_NE(first, picture.marks.end());
  EXPECT_EQ(first->label, "(a) no boil");
  EXPECT_EQ(first->at, QPointF(3000.0, *picture.yTo));
}

// The brewer's own element is at one place, 3000 W, whichever supply it is on: (a) and (d).
TEST(WhichElement, PutsOneElementAtOnePlaceOnEverySupply) {
  const QtPicture written = ask(true).pictures[0];
  const QtPicture atSupply = ask(false).pictures[0];
  const auto placeOf = [](const QtPicture& picture, int rig) {
    for (const gui::QtPictureMark& mark : picture.marks)
      if (mark.rig == rig) return mark.at.x();
    return -1.0;
  };
  EXPECT_NEAR(placeOf(written, 0), 3000.0, 1e-9);
  EXPECT_NEAR(placeOf(written, 3), 3000.0, 1e-9);
  EXPECT_NEAR(placeOf(atSupply, 0), 3000.0 * (120.0 * 120.0) / (230.0 * 230.0), 1e-9);
  EXPECT_NEAR(placeOf(atSupply, 3), 3000.0 * (208.0 * 208.0) / (230.0 * 230.0), 1e-9);
  // On 120 V such an element would have to be larger by the square of the voltages for the same.
  const auto at120 = gui::valueAt(atSupply.lines[0].points, 1700.0);
  const auto at230 = gui::valueAt(written.lines[0].points, 1700.0 * (230.0 * 230.0) / 14400.0);
  ASSERT_TRUE(at120 && at230);
  EXPECT_NEAR(*at120, *at230, 1e-6);
  EXPECT_NE(written.xTitle, atSupply.xTitle);
}

TEST(WhichElement, NamesTheSupplyOfEveryCurve) {
  const QtPicture picture = ask(true).pictures[0];
  const auto legend = gui::legendOf(picture);
  for (int rig = 0; rig < 4; ++rig) {
    const rigs::RigPlan& planned = demo().plan.rigs[static_cast<std::size_t>(rig)];
    const QString& name = picture.lines[rig].name;
    EXPECT_TRUE(name.startsWith(QString::fromStdString(planned.name)));
    EXPECT_TRUE(name.endsWith(rig == 3   ? "230 V on 208 V"
                              : rig == 0 ? "230 V on 120 V"
                                         : "120 V on 120 V"))
        << name.toStdString();
    EXPECT_TRUE(legend[rig].text.contains(name));
    EXPECT_EQ(picture.lines[rig].rig, rig);
  }
  EXPECT_EQ(legend.back().text, "more than its circuit carries");
}

// What a circuit carries is a mark; beyond it the same curve goes on, thin.
TEST(WhichElement, ShowsWhereEachCircuitEnds) {
  const QtAnswer answer = ask(false);
  const QtPicture& picture = answer.pictures[0];
  ASSERT_EQ(picture.limits.size(), 2);  // three rigs share one
  EXPECT_EQ(picture.limits[0].label, "(a) (b) (c) 120 V, 15 A");
  EXPECT_EQ(picture.limits[1].label, "(d) 208 V, 30 A");
  EXPECT_NEAR(picture.limits[0].x, 120.0 * 15.0, 1e-6);
  EXPECT_NEAR(picture.limits[1].x, 208.0 * 30.0, 1e-6);
  for (int rig = 0; rig < 4; ++rig) {
    SCOPED_TRACE(rig);
    const double most = mostAt(static_cast<std::size_t>(rig));
    const QtPictureLine& line = picture.lines[rig];
    const PictureLine* beyond = beyondOf(picture, rig);
    ASSERT_NE(beyond, nullptr);
    EXPECT_EQ(line.points.back(), beyond->points.front());
    EXPECT_NEAR(line.points.back().x(), most, 1e-6);
    EXPECT_GT(beyond->points.back().x(), most);
    EXPECT_LE(fullWindow(picture).xFrom, line.points.front().x());
    EXPECT_GT(fullWindow(picture).xTo, most);
    // The end of the thick line is a simulated day, and the table has its number.
    EXPECT_EQ(cell(answer.table, QStringLiteral("from mash to boil with that, min"), rig),
              QString::number(line.points.back().y(), 'f', 0));
    EXPECT_EQ(cell(answer.table, QStringLiteral("element rated at the supply, W"), rig),
              QString::number(most, 'f', 0));
  }
  const QtAnswer written = ask(true);
  ASSERT_EQ(written.pictures[0].limits.size(), 3);
  for (int rig : {0, 3}) {
    const double x = written.pictures[0].lines[rig].points.back().x();
    EXPECT_NEAR(
        cell(written.table, QStringLiteral("the same, rated as its own is, W"), rig).toDouble(), x,
        0.5 + 1e-9);
  }
}

// An element that its circuit does not carry is marked on the thin part; nothing is lost of it.
TEST(WhichElement, MarksAnOverloadBeyondItsCircuit) {
  rigs::Plan plan = demo().plan;
  plan.rigs = {plan.rigs[1]};
  plan.rigs[0].rig.element.rating = physics::watts(2400.0);
  const gui::SolutionPtr solution = gui::solveAtOnce(plan);
  const QtPicture picture = ask(true, *solution).pictures[0];
  const PictureLine* beyond = beyondOf(picture, 0);
  ASSERT_NE(beyond, nullptr);
  ASSERT_EQ(picture.marks.size(), 1);
  EXPECT_TRUE(beyond->points.contains(picture.marks[0].at));
  EXPECT_NEAR(picture.lines[0].points.back().x(), 1800.0, 1e-6);
}

TEST(WhichElement, CanBeDragged) {
  const QtPicture picture = ask(true).pictures[0];
  ASSERT_TRUE(picture.draggable);
  EXPECT_DOUBLE_EQ(*picture.draggable, physics::inMinutes(demo().plan.goals.boilWithin));
}

}  // namespace
