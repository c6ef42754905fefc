// SPDX-License-Identifier: GPL-3.0-or-later
// The first minute of somebody new, recorded: every key and every click, and how many there are.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QTest>

#include "gui/window/questions/question_column.hpp"
#include "gui/window/start/start_sheet.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/hands.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using gui::StartSheet;
using gui::telling::Question;
using test_support::WindowTest;

enum class Does { Type, TabTo, Choose, Click };
struct Recorded {
  Does what;
  const char* where;
  const char* keys = "";
};

// A bare kettle of 45 L with 2.2 kW at 230 V on 16 A: how long to the boil, would a jacket help,
// can the circuit carry it?
constexpr Recorded kFirstMinute[] = {
    {Does::Type, "start/volume", "45"},
    {Does::TabTo, "start/power"},
    {Does::Type, "start/power", "2.2"},
    {Does::TabTo, "start/voltage"},
    {Does::Type, "start/voltage", "230"},
    {Does::Choose, "start/region", "Europe"},
    {Does::Choose, "start/circuit", "230 V, 16 A wall socket"},
    {Does::Click, "start/lid"},  // it has none
};
constexpr int kMostValues = 6;
constexpr int kMostClicks = 8;

class TheFirstMinuteRecorded : public WindowTest {
 protected:
  StartSheet* sheet() { return window().findChild<StartSheet*>(); }
  template <class Widget>
  Widget* part(const char* name) {
    auto* found = sheet()->findChild<Widget*>(QString::fromLatin1(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  void begin() {
    window().setFormsShown(false);  // as a new one opens at this size
    window().resize(1280, 720);
    window().offerStart();
    ASSERT_NE(sheet(), nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(sheet()));
    hands_.turnTo(*sheet());
  }
  void play(const Recorded& step) {
    SCOPED_TRACE(step.where);
    const auto isThere = [&] {
      const QWidget* now = QApplication::focusWidget();
      return now && now->objectName() == QLatin1String(step.where);
    };
    switch (step.what) {
      case Does::Type:
        ASSERT_TRUE(isThere());
        return hands_.type(QString::fromLatin1(step.keys));
      case Does::TabTo:
        for (int guard = 0; guard < 20 && !isThere(); ++guard) hands_.tab();
        ASSERT_TRUE(isThere());
        return;
      case Does::Choose:
        return choose(step.where, QString::fromLatin1(step.keys));
      case Does::Click:
        return hands_.click(*part<QWidget>(step.where));
    }
  }
  // Two clicks: the box, and what is chosen in its list.
  void choose(const char* name, const QString& text) {
    auto* box = part<QComboBox>(name);
    const int index = box->findText(text);
    ASSERT_GE(index, 0) << text.toStdString();
    hands_.click(*box);
    ASSERT_TRUE(QTest::qWaitFor([box] { return box->view()->isVisible(); }, 2000));
    QTest::qWait(QApplication::doubleClickInterval() + 50);  // a quicker one is no choice
    const QModelIndex item = box->model()->index(index, 0);
    box->view()->scrollTo(item);
    hands_.click(*box->view()->viewport(), box->view()->visualRect(item).center());
    ASSERT_TRUE(QTest::qWaitFor([box] { return !box->view()->isVisible(); }, 2000));
    EXPECT_EQ(box->currentText(), text);
  }
  QString said(const char* name) {
    auto* label = part<QLabel>(name);
    EXPECT_TRUE(label->isVisible()) << name;
    EXPECT_FALSE(label->visibleRegion().isEmpty()) << name;
    return label->text();
  }
  // Beside a question in the list, where it is seen.
  QString listed(Question question) {
    const auto& column = *window().findChild<gui::QuestionColumn*>("questions");
    EXPECT_FALSE(column.isFolded());
    const auto all = gui::telling::allQuestions();
    const auto row = std::find(all.begin(), all.end(), question) - all.begin();
    return column.entry(static_cast<int>(row)).answer;
  }

  test_support::Hands hands_;
};

TEST_F(TheFirstMinuteRecorded, AnswersTheFirstThreeQuestions) {
  begin();
  for (const Recorded& step : kFirstMinute) play(step);
  ASSERT_TRUE(
      QTest::qWaitFor([this] { return sheet()->kettle().isSettled(); }, test_support::kPatience));
  QTest::qWait(1);  // the layout follows
  EXPECT_LE(hands_.values(), kMostValues);
  EXPECT_LE(hands_.clicks(), kMostClicks);

  // Without a lid 2.2 kW are on the edge, which is said.
  const QString headline = said("start/headline");
  EXPECT_TRUE(headline.startsWith(QLatin1String("Nobody can say whether it rolls: perhaps after ")))
      << headline.toStdString();
  EXPECT_TRUE(said("start/circuit says").contains(QLatin1String("16 A circuit")));
  EXPECT_TRUE(said("start/jacket says").contains(QLatin1String("It would save")));
  EXPECT_TRUE(said("start/cautions").contains(QLatin1String("Mains current kills")));

  hands_.click(*part<QWidget>("start/take"));
  EXPECT_LE(hands_.clicks(), kMostClicks);
  EXPECT_TRUE(QTest::qWaitFor([this] { return sheet() == nullptr; }, 2000));
  ASSERT_TRUE(settles());
  ASSERT_NE(document().plan(), nullptr);
  const rigs::Plan& plan = *document().plan();
  ASSERT_EQ(plan.rigs.size(), 1U);
  EXPECT_EQ(*plan.altitude, physics::metres(0.0));
  EXPECT_EQ(plan.rigs[0].rig.element.rating, physics::watts(2200.0));
  EXPECT_EQ(plan.rigs[0].circuit, "Europe 230 V 16 A");
  EXPECT_FALSE(plan.rigs[0].hasLid);
  EXPECT_TRUE(document().isModified());  // nobody has saved it
  EXPECT_TRUE(document().path().isEmpty());
  // What was told is what the engine says.
  const auto& answer = window().page().newestSolution()->answers.rigs[0];
  EXPECT_TRUE(answer.edge.has_value());
  const auto* boil = answer.day.find(physics::StageKind::Boil);
  ASSERT_NE(boil, nullptr);
  const std::string after = rigs::inEnglish(rigs::Told::just(rigs::roughly(boil->begin)));
  EXPECT_TRUE(headline.contains(QString::fromStdString(after))) << after;
  EXPECT_EQ(document().text().find("Altbier"), std::string::npos);
  // The three answers stay in sight, whatever page is open.
  EXPECT_TRUE(listed(Question::HowLong).contains(QLatin1String("may not roll")));
  EXPECT_TRUE(listed(Question::WorthJacket).startsWith(QLatin1String("yes, ")));
  EXPECT_TRUE(listed(Question::Circuit).contains(QLatin1String("fits")));
  document().startAnew(rigs::newPlanText());
}

}  // namespace
