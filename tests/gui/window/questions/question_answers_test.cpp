// SPDX-License-Identifier: GPL-3.0-or-later
// Answers tell the solution's own numbers, in the reader's units.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "gui/window/charts/curves.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/questions/question.hpp"
#include "rigs/answers/figures.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::QtAnswer;
using gui::Question;
using rigs::UnitSystem;

const gui::Solution& demo() { return *test_support::solvedDemo(); }

QtAnswer ask(Question question, UnitSystem units = UnitSystem::SI, gui::QuestionView view = {}) {
  return gui::qtAnswerTo(question, demo(), units, view);
}

// The cell of a rig in the first row of that name after a heading (or after the top).
QString cell(const gui::PictureTable& table, const QString& label, int rig,
             const QString& after = {}) {
  bool found = after.isEmpty();
  for (const auto& row : table.rows) {
    if (!found) {
      found = row[0].startsWith(after);
    } else if (row[0].startsWith(label)) {
      return row[rig + 1];
    }
  }
  return QStringLiteral("no such row");
}

TEST(Answers, AreCompleteForEveryQuestion) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const QtAnswer answer = ask(question);
    EXPECT_FALSE(answer.title.isEmpty());
    EXPECT_FALSE(answer.sentence.isEmpty());
    EXPECT_TRUE(answer.sentence[0].isDigit()) << answer.sentence.toStdString();
    EXPECT_FALSE(answer.sentence.contains(QLatin1Char('%') + QStringLiteral("1")));
    EXPECT_GE(answer.pictures.size(), 1);
    EXPECT_LE(answer.pictures.size(), 2);
    EXPECT_GE(answer.cautions.size(), 6);
    if (question != Question::WhereHeat) {  // of one rig, a column a path
      EXPECT_EQ(answer.table.head.size(), 5);
    }
    for (const auto& row : answer.table.rows) EXPECT_EQ(row.size(), answer.table.head.size());
  }
}

TEST(Answers, HaveFiniteAscendingPoints) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    for (const gui::QtPicture& picture : ask(question).pictures) {
      for (const gui::QtPictureLine& line : picture.lines) {
        for (qsizetype i = 0; i < line.points.size(); ++i) {
          ASSERT_TRUE(std::isfinite(line.points[i].x()) && std::isfinite(line.points[i].y()));
          if (i == 0) continue;
          ASSERT_GE(line.points[i].x(), line.points[i - 1].x());
        }
      }
      for (const auto& area : picture.areas) EXPECT_EQ(area.size(), picture.areas[0].size());
      for (const auto& stack : picture.stacks) {
        EXPECT_EQ(stack.parts.size(), picture.partNames.size());
      }
    }
  }
}

TEST(HowLong, TellsTheDaysOwnTimes) {
  const QtAnswer answer = ask(Question::HowLong);
  for (int rig = 0; rig < 4; ++rig) {
    const physics::BrewDay& day = demo().answers.rigs[static_cast<std::size_t>(rig)].day;
    const auto strike = rigs::timeOf(day, physics::StageKind::Strike);
    ASSERT_TRUE(strike);
    EXPECT_EQ(cell(answer.table, QStringLiteral("Strike"), rig),
              gui::hoursAndMinutesText(physics::inMinutes(*strike)));
    const auto& line = answer.pictures[0].lines[rig];
    EXPECT_NEAR(line.points.back().x(), physics::inMinutes(day.stages.back().end), 1e-6);
  }
  // The demo's first rig does not boil: no whole day, and the sentence says why.
  EXPECT_EQ(cell(answer.table, QStringLiteral("whole day"), 0), QStringLiteral("–"));
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("does not boil")));
}

// At the end of every stage that was finished.
TEST(HowLong, NamesEveryEventOfTheDay) {
  const gui::QtPicture picture = ask(Question::HowLong).pictures[0];
  QStringList events;
  QVector<double> moments;
  for (const gui::QtPictureMark& mark : picture.marks) {
    if (mark.rig != 1) continue;
    events += mark.event;
    moments += mark.at.x();
  }
  EXPECT_EQ(events, (QStringList{"strike reached", "mashed in", "rest reached", "rest done",
                                 "rest reached", "mash done", "boil begins", "boil ends"}));
  const auto& stages = demo().answers.rigs[1].day.stages;
  ASSERT_EQ(stages.size(), 8U);
  for (std::size_t s = 0; s < stages.size(); ++s)
    EXPECT_NEAR(moments[static_cast<qsizetype>(s)], physics::inMinutes(stages[s].end), 1e-9);
}

TEST(WhereHeat, BarsAddUpToWhatCameIn) {
  const QtAnswer answer = ask(Question::WhereHeat, UnitSystem::SI, {.asBars = true});
  for (const gui::QtPictureStack& stack : answer.pictures[0].stacks) {
    const physics::Ledger& total =
        demo().answers.rigs[static_cast<std::size_t>(stack.rig)].day.total;
    double sum = 0.0;
    for (const double part : stack.parts) sum += part;
    // Parts below half a watt-hour are left out.
    EXPECT_NEAR(sum, physics::inKilowattHours(total.fromWall() + total.slaking), 0.002);
  }
}

TEST(WhereHeat, PowersAreThoseOfTheCurve) {
  const QtAnswer answer = ask(Question::WhereHeat, UnitSystem::SI, {.rig = 1});
  const gui::QtPicture& picture = answer.pictures[0];
  std::vector<physics::CurvePoint> curve;
  for (const auto& stage : demo().answers.rigs[1].day.stages) {
    curve.insert(curve.end(), stage.curve.begin(), stage.curve.end());
  }
  ASSERT_EQ(picture.areas[0].size(), static_cast<qsizetype>(curve.size()));
  for (std::size_t i = 0; i < curve.size(); i += 7) {
    // Before it is as warm as the room a kettle gains heat: the picture shows losses only.
    const auto& lost = curve[i].lost.values;
    if (std::any_of(lost.begin(), lost.end(),
                    [](physics::Power p) { return p < physics::watts(0.0); })) {
      continue;
    }
    double sum = 0.0;
    for (const auto& area : picture.areas) sum += area[static_cast<qsizetype>(i)].y();
    EXPECT_NEAR(sum, physics::inWatts(curve[i].lost.total()), 1.0);
  }
}

TEST(WhereHeat, HasTheNumbersOfItsPictureBeside) {
  const QtAnswer answer = ask(Question::WhereHeat, UnitSystem::SI, {.rig = 1});
  const gui::QtPicture& picture = answer.pictures[0];
  const physics::BrewDay& day = demo().answers.rigs[1].day;
  ASSERT_EQ(answer.table.head.size(), 2 + picture.partNames.size());
  ASSERT_EQ(answer.table.rows.size(), 2 * static_cast<qsizetype>(day.stages.size()));
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    const auto& row = answer.table.rows[2 * static_cast<qsizetype>(s) + 1];
    const physics::CurvePoint& end = day.stages[s].curve.back();
    EXPECT_EQ(row[1].toDouble(), std::round(physics::inWatts(end.element)));
    double sum = 0.0;
    for (qsizetype part = 2; part < row.size(); ++part) sum += row[part].toDouble();
    EXPECT_NEAR(sum, physics::inWatts(end.lost.total()), 0.5 * double(row.size()));
  }
}

// The lid of the demo's first rig comes off for the boil: up to the boiling point, and down again.
TEST(HowLong, TellsTheHeightThatTheCurveReaches) {
  const QtAnswer answer = ask(Question::HowLong);
  const physics::BrewDay& day = demo().answers.rigs[0].day;
  ASSERT_NE(day.find(physics::StageKind::Boil), nullptr);
  double highest = 0.0;
  for (const QPointF& p : answer.pictures[0].lines[0].points) highest = std::max(highest, p.y());
  const QString top = QString::number(highest, 'f', 1);
  const qsizetype said = answer.sentence.indexOf(top);
  EXPECT_GE(said, 0) << top.toStdString() << answer.sentence.toStdString();
  EXPECT_GT(answer.sentence.indexOf(QString::number(physics::inCelsius(day.levelsOff->at), 'f', 1)),
            said);
  EXPECT_TRUE(answer.sentence.contains("falls back"));
}

TEST(BoilsEnough, MarksTheOperatingPointOnItsCurve) {
  const QtAnswer answer = ask(Question::BoilsEnough);
  const gui::QtPicture& picture = answer.pictures[0];
  // A band for every word, without gaps; what is shaded says where it is from.
  ASSERT_EQ(picture.bands.size(), 5);
  QStringList sources;
  double reached = 0.0;
  for (int i : {0, 1, 2, 3, 4}) {
    const gui::QtPictureBand& band = picture.bands[i];
    EXPECT_EQ(band.from, reached);
    reached = band.to;
    EXPECT_EQ(band.shaded, !band.source.isEmpty());
    if (band.shaded) sources += band.source;
    EXPECT_TRUE(band.label.startsWith(gui::vigourLabel(static_cast<rigs::Vigour>(i))));
  }
  ASSERT_EQ(sources.size(), 2);
  EXPECT_TRUE(sources[0].contains("Joint Research Centre"));
  EXPECT_EQ(sources[1], "common practice, no source");
  ASSERT_EQ(picture.marks.size(), 4);
  for (const gui::QtPictureMark& mark : picture.marks) {
    const auto& boil = demo().answers.rigs[static_cast<std::size_t>(mark.rig)].day.boil;
    if (mark.rig == 0) {
      EXPECT_EQ(mark.at.y(), 0.0);
      continue;
    }
    ASSERT_TRUE(boil);
    EXPECT_NEAR(mark.at.y(), 100.0 * boil->shareOfPreBoilPerHour, 1e-9);
    const auto y = gui::valueAt(picture.lines[mark.rig].points, mark.at.x());
    ASSERT_TRUE(y);
    EXPECT_NEAR(*y, mark.at.y(), 1e-9);
  }
}

TEST(WhatCost, TellsEnergyWithoutAPrice) {
  gui::Solution free = demo();
  free.plan.tariff = {};
  for (rigs::RigAnswer& rig : free.answers.rigs) rig.cost.reset();
  const QtAnswer answer = gui::qtAnswerTo(Question::WhatCost, free, UnitSystem::SI);
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("kWh")));
  EXPECT_TRUE(answer.sentence.contains(QStringLiteral("no price")));
  EXPECT_EQ(answer.pictures[0].xUnit, QStringLiteral("kWh"));
}

TEST(HowFarCools, WarnsOfWarmWort) {
  const QtAnswer answer = ask(Question::HowFarCools);
  EXPECT_EQ(answer.cautions.size(), ask(Question::HowLong).cautions.size() + 1);
  EXPECT_TRUE(answer.cautions.back().contains(QStringLiteral("57 °C")));
  const auto& effect = *demo().answers.rigs[2].jacket;
  EXPECT_EQ(cell(answer.table, QStringLiteral("with jacket"), 2),
            QString::number(physics::inCelsius(effect.jacketedAfter), 'f', 1));
}

TEST(Answers, FollowTheUnitsEverywhere) {
  const QtAnswer answer = ask(Question::HowLong, UnitSystem::UsCustomary);
  EXPECT_TRUE(answer.pictures[0].yTitle.contains(QStringLiteral("°F")));
  EXPECT_FALSE(answer.sentence.contains(QStringLiteral("°C")));
  EXPECT_GT(answer.pictures[0].lines[3].points.back().y(), 200.0);
}

TEST(Answers, FollowTheLocalesDecimalSign) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German));
  const QtAnswer answer = ask(Question::BoilsEnough);
  QLocale::setDefault(before);
  EXPECT_TRUE(cell(answer.table, QStringLiteral("boil-off, "), 1).contains(QLatin1Char(',')));
  EXPECT_FALSE(cell(answer.table, QStringLiteral("boil-off, "), 1).contains(QLatin1Char('.')));
}

// The days come before the sweeps and the sizing.
TEST(Answers, StandWithoutSweeps) {
  gui::Solution days = demo();
  days.sweeps.clear();
  for (rigs::RigAnswer& rig : days.answers.rigs) rig.sizing.reset();
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const QtAnswer answer = gui::qtAnswerTo(question, days, UnitSystem::SI);
    EXPECT_FALSE(answer.sentence.isEmpty());
    EXPECT_FALSE(answer.table.rows.isEmpty());
  }
}

TEST(Answers, SurviveAPlanWithoutRigsOrJackets) {
  gui::Solution none;
  EXPECT_TRUE(gui::qtAnswerTo(Question::HowLong, none, UnitSystem::SI).pictures.isEmpty());
  gui::Solution bare = demo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.jacket.reset();
  for (gui::RigSweeps& sweeps : bare.sweeps) {
    sweeps.thickness.clear();
    sweeps.jacketPower.clear();
    sweeps.cooling.clear();
  }
  EXPECT_TRUE(gui::qtAnswerTo(Question::WorthJacket, bare, UnitSystem::SI)
                  .sentence.contains(QStringLiteral("No rig")));
  EXPECT_TRUE(gui::qtAnswerTo(Question::HowFarCools, bare, UnitSystem::SI)
                  .sentence.contains(QStringLiteral("No rig")));
}

TEST(Localized, TouchesDecimalPointsOnly) {
  const QLocale german(QLocale::German);
  EXPECT_EQ(gui::localized("12.5 %/h.", german), QStringLiteral("12,5 %/h."));
  EXPECT_EQ(gui::localized("1 h 05 min.", german), QStringLiteral("1 h 05 min."));
}

}  // namespace
