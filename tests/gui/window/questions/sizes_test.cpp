// SPDX-License-Identifier: GPL-3.0-or-later
// Every question on every screen that people have, small and large letters, in both languages:
// nothing is cut, nothing covers anything else, and a picture has its share of the window.
#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <algorithm>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/questions/question_column.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

// Logical pixels: 1280 x 720 with a frame around it, 1920 x 1080, and these at scales 1.5 and 2.
struct Screen {
  QSize size;
  int points;
};
constexpr Screen kScreens[] = {{{1270, 680}, 9},   {{1920, 1080}, 9}, {{1270, 680}, 18},
                               {{1920, 1080}, 18}, {{853, 480}, 9},   {{960, 540}, 9},
                               {{640, 360}, 9}};

class TheSizes : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    usual_ = QApplication::font();
  }
  void TearDown() override {
    QApplication::setFont(usual_);
    gui::speak(QStringLiteral("en"));
    WindowTest::TearDown();
  }
  void wear(const Screen& screen) {
    QFont font = usual_;
    font.setPointSize(screen.points);
    QApplication::setFont(font);
    // What the letters before needed at least is forgotten a moment later.
    for (int moment = 0; moment < 3; ++moment) {
      QCoreApplication::processEvents();
      window().resize(screen.size);
    }
  }
  const gui::QuestionColumn& column() {
    return *window().findChild<gui::QuestionColumn*>("questions");
  }
  void expectQuestionsInSight();
  void expectWordsFit();
  void expectTablesFit();
  void expectNothingCovered();

 private:
  QFont usual_;
};

void TheSizes::expectQuestionsInSight() {
  for (int row = 0; row < column().count(); ++row) {
    const QRect within(QPoint(), QSize(column().viewport()->width(), column().heightOf(row)));
    const auto pieces = column().piecesOf(row);
    for (qsizetype i = 0; i < pieces.size(); ++i) {
      SCOPED_TRACE(pieces[i].text.toStdString());
      EXPECT_TRUE(within.contains(pieces[i].room));
      const QRect words = QFontMetrics(pieces[i].font)
                              .boundingRect(pieces[i].room, Qt::TextWordWrap, pieces[i].text);
      EXPECT_LE(words.width(), pieces[i].room.width());
      EXPECT_LE(words.height(), pieces[i].room.height());
      for (qsizetype j = 0; j < i; ++j) EXPECT_FALSE(pieces[i].room.intersects(pieces[j].room));
    }
    const QRect there = column().visualItemRect(column().item(row));
    EXPECT_EQ(there.height(), column().heightOf(row));
    EXPECT_TRUE(column().viewport()->rect().contains(there)) << "question " << row;
  }
}

// Labels, switches and choices of the page.
void TheSizes::expectWordsFit() {
  for (const QWidget* widget : window().page().findChildren<QWidget*>()) {
    if (!widget->isVisible()) continue;
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
      if (label->text().isEmpty()) continue;
      SCOPED_TRACE(label->text().toStdString());
      if (label->wordWrap()) {
        EXPECT_GE(label->height(), label->heightForWidth(label->width()));
      } else {
        EXPECT_GE(label->width(), label->sizeHint().width());
      }
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
      EXPECT_GE(button->width(), button->minimumSizeHint().width()) << button->text().toStdString();
      const QRect there(button->mapTo(&window().page(), QPoint()), button->size());
      EXPECT_TRUE(window().page().rect().left() <= there.left() &&
                  there.right() <= window().page().rect().right())
          << button->text().toStdString();
    } else if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
      const QRect there(box->mapTo(&window().page(), QPoint()), box->size());
      EXPECT_LE(there.right(), window().page().rect().right()) << box->currentText().toStdString();
    }
  }
}

void TheSizes::expectTablesFit() {
  for (gui::AnswerTable* table : window().page().findChildren<gui::AnswerTable*>()) {
    const auto& head = static_cast<const gui::RuledHeader&>(*table->horizontalHeader());
    for (int at = 0; at < table->columnCount(); ++at)
      EXPECT_LE(head.heightOf(at), head.height())
          << head.model()->headerData(at, Qt::Horizontal).toString().toStdString();
    for (int row = 0; row < table->rowCount(); ++row) {
      for (int at = 0; at < table->columnCount(); ++at) {
        const QTableWidgetItem* item = table->item(row, at);
        if (!item || item->text().isEmpty() || table->columnSpan(row, at) > 1) continue;
        constexpr int kMargins = 6;
        const QRect room(0, 0, table->columnWidth(at) - kMargins, table->rowHeight(row));
        const QRect words =
            QFontMetrics(item->font()).boundingRect(room, Qt::TextWordWrap, item->text());
        EXPECT_LE(words.width(), room.width() + 1) << item->text().toStdString();
        EXPECT_LE(words.height(), room.height()) << item->text().toStdString();
      }
    }
  }
}

// Pictures, tables and notes stand below or beside one another, each as tall as it is to be.
void TheSizes::expectNothingCovered() {
  const QWidget* inside = window().page().findChild<QScrollArea*>()->widget();
  // A layout follows its contents in a few steps.
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return inside->height() >= inside->layout()->totalHeightForWidth(inside->width()); },
      2000));
  // The page scrolls downwards only.
  EXPECT_LE(inside->width(), inside->parentWidget()->width()) << "a part of it is too wide";
  QVector<QRect> taken;
  for (const QWidget* widget : inside->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
    if (!widget->isVisible()) continue;
    EXPECT_GE(widget->height(), widget->minimumHeight()) << widget->metaObject()->className();
    EXPECT_TRUE(inside->rect().contains(widget->geometry())) << widget->metaObject()->className();
    for (const QRect& other : taken)
      EXPECT_FALSE(other.intersects(widget->geometry())) << widget->metaObject()->className();
    taken += widget->geometry();
  }
}

TEST_F(TheSizes, HaveRoomForEveryQuestionInBothLanguages) {
  window().setFormsShown(false);
  for (const Screen& screen : kScreens) {
    for (const char* language : {"en", "de"}) {
      gui::speak(QString::fromLatin1(language));
      wear(screen);
      for (const gui::telling::Question question : gui::telling::allQuestions()) {
        SCOPED_TRACE(testing::Message()
                     << language << ' ' << screen.size.width() << " x " << screen.size.height()
                     << ", " << screen.points << " pt, " << gui::telling::identifierOf(question));
        window().setQuestion(question);
        ASSERT_TRUE(settles());
        QCoreApplication::processEvents();
        EXPECT_EQ(window().size(), screen.size);
        if (const auto* chart = window().page().findChild<gui::PlanChart*>()) {
          EXPECT_GE(chart->height(), window().height() * 45 / 100);
          const int room = window().page().findChild<QScrollArea*>()->viewport()->height();
          // Of the smallest screen the page's head and foot take more.
          EXPECT_GE(room, window().height() * (screen.size.height() < 400 ? 25 : 45) / 100);
          EXPECT_LE(chart->height(), std::max(room, 300));
        }
        expectWordsFit();
        expectTablesFit();
        expectNothingCovered();
      }
      expectQuestionsInSight();
      // In usual letters the list is the overview: every question with its answer.
      if (screen.size.height() >= 680 && screen.points == 9) {
        EXPECT_FALSE(column().isFolded()) << language << ' ' << screen.size.height();
      }
    }
  }
}

// What stands beside the forms has the least room of all.
TEST_F(TheSizes, HaveRoomBesideTheForms) {
  window().setFormsShown(true);
  gui::speak(QStringLiteral("de"));
  wear(kScreens[4]);
  using gui::telling::Question;
  for (const auto question : {Question::Overview, Question::HowLong, Question::WortChanges}) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    window().setQuestion(question);
    ASSERT_TRUE(settles());
    QCoreApplication::processEvents();
    expectTablesFit();
    expectNothingCovered();
  }
}

// Whoever reads down a long table still sees whose column it is.
TEST_F(TheSizes, KeepTheHeadsOfATableInSightWhileItScrolls) {
  window().setFormsShown(false);
  wear(kScreens[0]);
  window().setQuestion(gui::telling::Question::WhereHeat);
  ASSERT_TRUE(settles());
  auto* scroll = window().page().findChild<QScrollArea*>();
  auto* table = window().page().findChild<gui::AnswerTable*>();
  const int top = table->mapTo(scroll->widget(), QPoint()).y();
  const auto headAt = [&] {
    return table->horizontalHeader()->mapTo(scroll->viewport(), QPoint()).y();
  };
  const int rows = table->height() / 3;
  for (int i = 0; i < 400 && scroll->verticalScrollBar()->value() < top + rows; ++i) {
    QWheelEvent down(QPointF(20, 20), scroll->viewport()->mapToGlobal(QPointF(20, 20)), {},
                     {0, -120}, {}, {}, Qt::NoScrollPhase, false);
    QApplication::sendEvent(scroll->viewport(), &down);
    if (scroll->verticalScrollBar()->value() == scroll->verticalScrollBar()->maximum()) break;
  }
  ASSERT_GT(scroll->verticalScrollBar()->value(), top);
  EXPECT_NEAR(headAt(), 0, 1);
  EXPECT_EQ(table->childAt(20, -table->mapTo(scroll->viewport(), QPoint()).y() + 4),
            table->horizontalHeader()->viewport());
  scroll->verticalScrollBar()->setValue(0);
  EXPECT_EQ(table->horizontalHeader()->mapTo(table, QPoint()).y(), 0);
}

// A name and its only figure stand together, however wide the window is.
TEST_F(TheSizes, LeaveNoGapBetweenANameAndItsFigure) {
  window().setFormsShown(false);
  wear({{1920, 1080}, 9});
  document().change(QStringLiteral("test"), rigs::planStartText("one-kettle").value());
  window().setQuestion(gui::telling::Question::HowLong);
  ASSERT_TRUE(settles());
  const auto* table = window().page().findChild<gui::AnswerTable*>();
  ASSERT_EQ(table->columnCount(), 2);
  EXPECT_LE(table->columnWidth(1), 26 * QFontInfo(table->font()).pixelSize());
}

}  // namespace
