// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures drawn, and the one on the screen under mouse and keys.
#include "gui/window/charts/plan_chart.hpp"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <QXmlStreamReader>
#include <algorithm>
#include <set>

#include "gui/window/questions/question_page.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::PlanChart;
using gui::telling::Question;

gui::telling::Picture pictureOf(Question question) {
  return test_support::askDemo(question).pictures[0];
}

TEST(PictureImage, IsNotBlankAtAnySharpness) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    for (const double sharpness : {1.0, 2.0}) {
      const QImage image =
          gui::pictureImage(pictureOf(question), {600, 360}, gui::paperLook(), sharpness);
      EXPECT_EQ(image.width(), static_cast<int>(600 * sharpness));
      std::set<QRgb> shades;
      for (int y = 0; y < image.height(); y += 2) {
        for (int x = 0; x < image.width(); x += 2) shades.insert(image.pixel(x, y));
      }
      EXPECT_GT(shades.size(), 8U);
      // Something reaches far into the last quarter: the picture was not cropped.
      bool right = false;
      for (int y = 0; y < image.height(); ++y) {
        for (int x = image.width() * 3 / 4; x < image.width(); ++x) {
          right = right || qGray(image.pixel(x, y)) < 120;
        }
      }
      EXPECT_TRUE(right);
    }
  }
}

// A bar as long as the last digit leaves open, on the picture's own scale; an event has none.
TEST(PictureImage, DrawsReadingsWithTheirRounding) {
  gui::telling::Picture picture;
  picture.lettered = false;
  picture.lines = {{.rig = 0, .name = "one", .points = {{0.0, 60.0}, {60.0, 60.0}}}};
  picture.yFrom = 50.0;
  picture.yTo = 70.0;
  picture.marks = {{.rig = 0, .at = {15.0, 65.0}, .label = {}, .rounding = 2.0},
                   {.rig = 0, .at = {45.0, 65.0}, .label = {}}};
  const QSize size(640, 480);
  const gui::ChartLook look = gui::paperLook();
  const gui::ChartLayout layout = gui::layOut(picture, size, look);
  const QImage image = gui::pictureImage(picture, size, look, 1.0);
  const auto darkAt = [&](double x, double y) {
    const QPoint at = layout.at({x, y}).toPoint();
    int darkest = 255;
    for (int off = -1; off <= 1; ++off)
      darkest = std::min(darkest, qGray(image.pixel(at + QPoint(off, 0))));
    return darkest < 120;
  };
  for (const double off : {-1.9, -1.0, 1.0, 1.9}) EXPECT_TRUE(darkAt(15.0, 65.0 + off)) << off;
  for (const double off : {-2.5, 2.5}) EXPECT_FALSE(darkAt(15.0, 65.0 + off)) << off;
  EXPECT_FALSE(darkAt(45.0, 66.0));
  EXPECT_FALSE(darkAt(15.0, 65.0)) << "a reading's point is open";
  EXPECT_TRUE(darkAt(45.0, 65.0)) << "an event's is filled";
}

// A stacked area covers the plot at its thickest, and nothing where nothing is lost.
TEST(PictureImage, FillsAreasWhereTheyAre) {
  gui::telling::Picture picture;
  picture.kind = gui::telling::Picture::Kind::Areas;
  picture.partNames = {"one", "two"};
  picture.areas = {{{0, 0}, {10, 0}, {10, 50}, {20, 50}}, {{0, 0}, {10, 0}, {10, 50}, {20, 50}}};
  const gui::ChartLook look = gui::paperLook();
  const QImage image = gui::pictureImage(picture, {600, 400}, look);
  const gui::ChartLayout layout = gui::layOut(picture, {600, 400}, look);
  const auto shade = [&](double x, double y) { return image.pixel(layout.at({x, y}).toPoint()); };
  EXPECT_EQ(shade(18.0, 22.0), gui::shadeOfPart(0, 2, look).rgb());
  EXPECT_EQ(shade(18.0, 78.0), gui::shadeOfPart(1, 2, look).rgb());
  EXPECT_EQ(shade(5.0, 22.0), QColor(Qt::white).rgb());
}

TEST(PictureSvg, IsWellFormedAndHasItsTextAndNoNan) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const gui::telling::Picture picture = pictureOf(question);
    const QByteArray svg = gui::pictureSvg(picture, {800, 420}, gui::paperLook());
    EXPECT_FALSE(svg.contains("nan"));
    QXmlStreamReader reader(svg);
    QString text;
    while (!reader.atEnd()) {
      reader.readNext();
      if (reader.isCharacters()) text += reader.text();
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_TRUE(text.contains(QString::fromStdString(picture.title)));
    EXPECT_TRUE(text.contains(test_support::solvedDemo()->answers.rigs[0].name.c_str()));
    EXPECT_EQ(svg, gui::pictureSvg(picture, {800, 420}, gui::paperLook()));
  }
}

class Chart : public testing::Test {
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
  PlanChart chart_;
};

TEST_F(Chart, ReadsOutAllRigsAtOnce) {
  showing(pictureOf(Question::HowLong));
  // Under a display the pointer itself may rest anywhere and speaks up when it likes: events of
  // our own, not moves of it.
  const auto move = [this](QPoint to) {
    QMouseEvent event(QEvent::MouseMove, to, chart_.mapToGlobal(to), Qt::NoButton, Qt::NoButton,
                      {});
    QApplication::sendEvent(&chart_, &event);
  };
  move(layout().plot.center().toPoint());
  ASSERT_EQ(chart_.readOut().size(), 5);
  for (const char* letter : {"(a)", "(b)", "(c)", "(d)"}) {
    EXPECT_TRUE(chart_.readOut().join(QLatin1Char('\n')).contains(QLatin1String(letter)));
  }
  EXPECT_TRUE(chart_.readOut()[1].contains(QStringLiteral("°C")));
  move(QPoint(1, 1));
  EXPECT_TRUE(chart_.readOut().isEmpty());
}

TEST_F(Chart, NamesTheStageOfEveryRigWhereAPersonPoints) {
  showing(pictureOf(Question::HowLong));
  const physics::Stage& rest =
      *test_support::solvedDemo()->answers.rigs[1].day.find(physics::StageKind::Rest);
  chart_.setCrosshair(0.5 * (physics::inMinutes(rest.begin) + physics::inMinutes(rest.end)));
  EXPECT_TRUE(chart_.readOut()[2].contains("(b)"));
  EXPECT_TRUE(chart_.readOut()[2].endsWith("Rest 1")) << chart_.readOut()[2].toStdString();
}

// Pointing at a dot says what happens there; the pointer need not hit it exactly.
TEST_F(Chart, NamesTheEventUnderThePointer) {
  const gui::telling::Picture picture = pictureOf(Question::HowLong);
  showing(picture);
  int pointed = 0;
  for (const gui::telling::PictureMark& mark : picture.marks) {
    if (mark.rig != 1) continue;
    ASSERT_FALSE(mark.event.empty());
    const QPoint at = layout().at(gui::pointOf(mark.at)).toPoint() + QPoint(0, 3);
    QMouseEvent event(QEvent::MouseMove, at, chart_.mapToGlobal(at), Qt::NoButton, Qt::NoButton,
                      {});
    QApplication::sendEvent(&chart_, &event);
    const QStringList lines = chart_.readOut().filter(QStringLiteral("(b)"));
    ASSERT_EQ(lines.size(), 1);
    const QString& line = lines[0];
    EXPECT_TRUE(line.endsWith(QString::fromStdString(mark.event)))
        << line.toStdString() << mark.event;
    ++pointed;
  }
  EXPECT_EQ(pointed, 8);
}

TEST_F(Chart, GoesFromEventToEventByKeyboard) {
  const gui::telling::Picture picture = pictureOf(Question::HowLong);
  showing(picture);
  std::vector<double> moments;
  for (const gui::telling::PictureMark& mark : picture.marks) moments.push_back(mark.at.x);
  std::sort(moments.begin(), moments.end());
  QTest::keyClick(&chart_, Qt::Key_Right, Qt::ControlModifier);
  EXPECT_EQ(chart_.readOut()[0], gui::hoursAndMinutesText(moments[0]));
  EXPECT_TRUE(chart_.readOut().join(QString()).contains("strike reached"));
  QTest::keyClick(&chart_, Qt::Key_Right, Qt::ControlModifier);
  EXPECT_EQ(chart_.readOut()[0], gui::hoursAndMinutesText(moments[1]));
  QTest::keyClick(&chart_, Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(chart_.readOut()[0], gui::hoursAndMinutesText(moments[0]));
}

TEST_F(Chart, ReadsOutByKeyboard) {
  showing(pictureOf(Question::HowLong));
  QTest::keyClick(&chart_, Qt::Key_Home);
  ASSERT_FALSE(chart_.readOut().isEmpty());
  EXPECT_EQ(chart_.readOut()[0], QStringLiteral("0:00"));
  QTest::keyClick(&chart_, Qt::Key_Right);
  EXPECT_NE(chart_.readOut()[0], QStringLiteral("0:00"));
  EXPECT_TRUE(chart_.accessibleDescription().contains(QStringLiteral("(b)")));
  QTest::keyClick(&chart_, Qt::Key_Escape);
  EXPECT_TRUE(chart_.readOut().isEmpty());
}

TEST_F(Chart, ZoomsAndPansByKeyboard) {
  showing(pictureOf(Question::HowLong));
  const QImage whole = chart_.grab().toImage();
  QTest::keyClick(&chart_, Qt::Key_Plus);
  const QImage zoomed = chart_.grab().toImage();
  EXPECT_NE(zoomed, whole);
  QTest::keyClick(&chart_, Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_NE(chart_.grab().toImage(), zoomed);
  QTest::keyClick(&chart_, Qt::Key_0);
  EXPECT_EQ(chart_.grab().toImage(), whole);
}

// On a US keyboard + is Shift and =, on a German one it is a key of its own.
TEST_F(Chart, ZoomsByPlusHoweverItIsTyped) {
  showing(pictureOf(Question::HowLong));
  const gui::ChartWindow whole = chart_.visibleWindow();
  const std::pair<Qt::Key, Qt::KeyboardModifiers> keys[] = {{Qt::Key_Plus, {}},
                                                            {Qt::Key_Plus, Qt::ShiftModifier},
                                                            {Qt::Key_Plus, Qt::KeypadModifier},
                                                            {Qt::Key_Equal, {}}};
  for (const auto& [key, modifiers] : keys) {
    QTest::keyClick(&chart_, Qt::Key_0);
    QTest::keyClick(&chart_, key, modifiers);
    EXPECT_NEAR(chart_.visibleWindow().width(), whole.width() / 1.5, 1e-9);
    EXPECT_LE(chart_.visibleWindow().height(), whole.height());
  }
}

TEST_F(Chart, DragsTheWantedTime) {
  showing(pictureOf(Question::WhichElement));
  QSignalSpy dragged(&chart_, &PlanChart::dragged);
  const gui::ChartLayout before = layout();
  const QPoint grip =
      before.at({before.window.xFrom + 0.5 * before.window.width(), *chart_.picture().draggable})
          .toPoint();
  QTest::mousePress(&chart_, Qt::LeftButton, {}, grip);
  QTest::mouseMove(&chart_, grip + QPoint(0, -40));
  QTest::mouseRelease(&chart_, Qt::LeftButton, {}, grip + QPoint(0, -40));
  ASSERT_GE(dragged.count(), 1);
  EXPECT_NEAR(dragged.back()[0].toDouble(), 45.0 + 40.0 / before.scale().y(),
              1.5 / before.scale().y());
  dragged.clear();
  QTest::keyClick(&chart_, Qt::Key_Down);
  ASSERT_EQ(dragged.count(), 1);
}

TEST_F(Chart, KeepsTheLineInTheHandWhileOlderAnswersArrive) {
  const gui::telling::Picture picture = pictureOf(Question::WhichElement);
  showing(picture);
  const QPoint grip = layout().at({2000.0, *picture.draggable}).toPoint();
  QTest::mousePress(&chart_, Qt::LeftButton, {}, grip);
  QTest::mouseMove(&chart_, grip + QPoint(0, -40));
  const double held = *chart_.picture().draggable;
  EXPECT_GT(held, *picture.draggable);
  chart_.show(picture);
  EXPECT_EQ(*chart_.picture().draggable, held);
  QTest::mouseRelease(&chart_, Qt::LeftButton, {}, grip + QPoint(0, -40));
  chart_.show(picture);
  EXPECT_EQ(*chart_.picture().draggable, *picture.draggable);
}

TEST_F(Chart, KeepsItsZoomThroughAnEditAndDropsItForAnotherPicture) {
  showing(pictureOf(Question::HowLong));
  const QImage whole = chart_.grab().toImage();
  QTest::keyClick(&chart_, Qt::Key_Plus);
  const QImage zoomed = chart_.grab().toImage();
  chart_.show(pictureOf(Question::HowLong));
  EXPECT_EQ(chart_.grab().toImage(), zoomed);
  chart_.show(pictureOf(Question::BoilsEnough));
  chart_.show(pictureOf(Question::HowLong));
  EXPECT_EQ(chart_.grab().toImage(), whole);
}

TEST_F(Chart, FollowsThePalette) {
  showing(pictureOf(Question::HowLong));
  QPalette dark;
  dark.setColor(QPalette::Window, Qt::black);
  dark.setColor(QPalette::WindowText, Qt::white);
  chart_.setPalette(dark);
  EXPECT_LT(qGray(chart_.grab().toImage().pixel(5, 60)), 40);
}

// An edit that keeps the picture's shape looks as if drawn afresh.
TEST(ThePlot, LooksTheSameAfterAnEditAsDrawnAfresh) {
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    const gui::telling::Picture picture = pictureOf(question);
    gui::telling::Picture other = picture;
    for (gui::telling::PictureLine& line : other.lines) {
      for (gui::telling::PicturePoint& p : line.points) p.y *= 0.9;
    }
    for (auto& area : other.areas) {
      for (gui::telling::PicturePoint& p : area) p.y *= 0.7;
    }
    for (gui::telling::PictureStack& stack : other.stacks) {
      for (double& part : stack.parts) part *= 0.8;
    }
    const gui::ChartLook look = gui::paperLook();
    const QSize size(700, 400);
    gui::Plot plot;
    plot.show(other, gui::layOut(other, size, look), look);
    plot.show(picture, gui::layOut(picture, size, look), look);
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(look.paper);
    QPainter painter(&image);
    plot.draw(painter);
    painter.end();
    EXPECT_EQ(image, gui::pictureImage(picture, size, look));
  }
}

// Every table, one below the other, with a heading over the whole width.
void expectTables(const gui::QuestionPage& page, const gui::ShownAnswer& answer) {
  const auto tables = page.findChildren<QTableWidget*>();
  ASSERT_FALSE(tables.isEmpty());
  ASSERT_EQ(tables.size(), answer.tables.size());
  for (qsizetype t = 0; t < tables.size(); ++t) {
    const QTableWidget& table = *tables[t];
    const gui::ShownTable& told = answer.tables[t];
    EXPECT_FALSE(table.accessibleName().isEmpty());
    ASSERT_EQ(table.rowCount(), told.rows.size());
    ASSERT_EQ(table.columnCount(), told.head.size());
    for (int row = 0; row < table.rowCount(); ++row) {
      EXPECT_EQ(table.columnSpan(row, 0), told.rows[row].isHeading ? table.columnCount() : 1);
      for (int column = 0; column < table.columnCount(); ++column) {
        EXPECT_EQ(table.item(row, column)->text(), told.rows[row].cells.value(column));
      }
    }
  }
}

TEST(QuestionPage, ShowsSentenceTableAndCautions) {
  gui::QuestionPage page;
  page.resize(700, 640);
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  int folded = 0;
  for (const Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    page.setQuestion(question);
    EXPECT_EQ(page.question(), question);
    const gui::ShownAnswer answer = page.currentAnswer();
    // What is seen of the answer: its first sentence in large letters, always.
    const auto answered = [&] {
      QString all;
      for (const QLabel* label : page.findChildren<QLabel*>()) {
        if (label->accessibleName() != QLatin1String("Answer") || !label->isVisibleTo(&page))
          continue;
        if (all.isEmpty()) {
          EXPECT_GE(label->font().pointSizeF(), page.font().pointSizeF());
          EXPECT_EQ(label->font().weight(), QFont::DemiBold);
        }
        all += label->text() + QLatin1Char(' ');
      }
      return all.trimmed();
    };
    auto* more = page.findChild<QToolButton*>("whole answer");
    more->setChecked(false);
    if (more->isVisibleTo(&page)) {
      EXPECT_EQ(answered(), answer.calmSentences().value(0));
      more->setChecked(true);
      ++folded;
    }
    EXPECT_EQ(answered(), answer.calmSentences().join(QLatin1Char(' ')));
    QStringList said;
    for (const QLabel* label : page.findChildren<QLabel*>()) said += label->text();
    EXPECT_TRUE(said.join(QLatin1Char('\n')).contains(answer.cautions[0]));
    EXPECT_EQ(page.findChildren<PlanChart*>().size(),
              static_cast<qsizetype>(answer.pictures.size()));
    expectTables(page, answer);
    for (const PlanChart* chart : page.findChildren<PlanChart*>()) {
      EXPECT_EQ(chart->accessibleName().toStdString(), chart->picture().title);
      EXPECT_FALSE(chart->accessibleDescription().isEmpty());
    }
  }
  EXPECT_GT(folded, 0);
}

TEST(QuestionPage, SwitchesUnitsAtOnce) {
  gui::QuestionPage page;
  page.setQuestion(Question::HowLong);
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  page.show(test_support::solvedDemo(), rigs::UnitSystem::UsCustomary);
  EXPECT_EQ(page.units(), rigs::UnitSystem::UsCustomary);
  EXPECT_TRUE(page.currentAnswer().headline().contains(QStringLiteral("°F")));
  EXPECT_NE(page.findChild<PlanChart*>()->picture().yTitle.find("°F"), std::string::npos);
}

TEST(QuestionPage, PassesTheDraggedGoalOn) {
  gui::QuestionPage page;
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  page.setQuestion(Question::WhichElement);
  QSignalSpy dragged(&page, &gui::QuestionPage::goalDragged);
  auto* chart = page.findChild<PlanChart*>();
  ASSERT_NE(chart, nullptr);
  QTest::keyClick(chart, Qt::Key_Up);
  ASSERT_EQ(dragged.count(), 1);
  EXPECT_GT(dragged[0][0].toDouble(), 45.0);
}

TEST(QuestionPage, ChangesItsViewByItsOwnSwitches) {
  gui::QuestionPage page;
  page.show(test_support::solvedDemo(), rigs::UnitSystem::SI);
  page.setQuestion(Question::WhereHeat);
  QSignalSpy changed(&page, &gui::QuestionPage::viewChanged);
  auto boxes = page.findChildren<QComboBox*>();
  boxes.removeIf([&](QComboBox* box) { return !box->isVisibleTo(&page); });
  // The account of all rigs first; whose power it is, is asked where there is one to choose.
  EXPECT_EQ(page.currentAnswer().pictures[0].kind, gui::telling::Picture::Kind::StackedBars);
  ASSERT_EQ(boxes.size(), 1);
  QTest::keyClick(boxes[0], Qt::Key_Down);
  EXPECT_FALSE(page.view().asBars);
  EXPECT_EQ(page.currentAnswer().pictures[0].kind, gui::telling::Picture::Kind::Areas);
  boxes = page.findChildren<QComboBox*>();
  boxes.removeIf([&](QComboBox* box) { return !box->isVisibleTo(&page); });
  ASSERT_EQ(boxes.size(), 2);
  QTest::keyClick(boxes[1], Qt::Key_Down);
  EXPECT_EQ(page.view().rig, 1);
  EXPECT_EQ(changed.count(), 2);
  page.setQuestion(Question::WhatCost);
  QSignalSpy year(&page, &gui::QuestionPage::yearChanged);
  page.findChild<QSpinBox*>()->setValue(30);
  ASSERT_EQ(year.count(), 1);
  EXPECT_EQ(year[0][0].toInt(), 30);
}

}  // namespace
