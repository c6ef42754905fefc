// SPDX-License-Identifier: GPL-3.0-or-later
// An overloaded circuit where its rig shows: at the fields, the column, the questions, the answer.
#include <QFont>
#include <QImage>
#include <QLabel>
#include <QTest>

#include "gui/window/questions/answer_table.hpp"
#include "gui/window/words/language.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::WindowTest;

const QString kMark = QStringLiteral("▲\u00a0overload");
const QString kSentence = QStringLiteral(
    "▲ Overload: (b) New element, kitchen draws 20.8 A from its circuit of 15 A. Do not run it "
    "like that.");

class TheOverload : public WindowTest {
 protected:
  // 2500 W at 120 V: 20.8 A of 15 A, 139 %. Every verdict of it is made.
  void overload() {
    type("/rigs/1/element/power", QStringLiteral("2500 W"));
    ASSERT_TRUE(settles());
  }
  void mend() {
    type("/rigs/1/element/power", QStringLiteral("1650 W"));
    ASSERT_TRUE(settles());
  }
  // The mark of that name, null where none is shown.
  const QLabel* mark(const QString& name) {
    const auto* label = window().findChild<QLabel*>(name);
    return label && !label->isHidden() ? label : nullptr;
  }
  QString describedAt(const std::string& pointer) {
    const auto* editor = window().findChild<QWidget*>(QString::fromStdString(pointer));
    return editor ? editor->accessibleDescription() : QString();
  }
};

TEST_F(TheOverload, IsAtTheFieldsOfItsElementAndCircuit) {
  ASSERT_TRUE(settles());
  for (const char* place : {"/rigs/1/element/power!", "/rigs/1/supply/from!"})
    EXPECT_EQ(mark(place), nullptr) << place;
  overload();
  for (const char* place : {"/rigs/1/element/power", "/rigs/1/supply/from"}) {
    SCOPED_TRACE(place);
    const QLabel* shown = mark(QLatin1String(place) + QLatin1Char('!'));
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(shown->isVisible());
    EXPECT_EQ(shown->text(), kMark);
    EXPECT_TRUE(shown->font().bold());
    EXPECT_GE(shown->width(), shown->sizeHint().width());  // whole
    EXPECT_TRUE(describedAt(place).startsWith(kSentence)) << describedAt(place).toStdString();
    const auto* editor = window().findChild<QWidget*>(QLatin1String(place));
    EXPECT_TRUE(editor->font().bold());
    EXPECT_TRUE(editor->toolTip().contains(kSentence));
  }
  // Not at what has nothing to do with it, nor at its neighbours.
  for (const char* place : {"/rigs/0/element/power!", "/rigs/1/vessel/height!",
                            "/rigs/1/elements/1/power!", "/rigs/2/supply/from!"})
    EXPECT_EQ(mark(place), nullptr) << place;
  mend();
  for (const char* place : {"/rigs/1/element/power", "/rigs/1/supply/from"}) {
    EXPECT_EQ(mark(QLatin1String(place) + QLatin1Char('!')), nullptr) << place;
    EXPECT_FALSE(describedAt(place).contains(QStringLiteral("Overload"))) << place;
    EXPECT_FALSE(window().findChild<QWidget*>(QLatin1String(place))->font().bold()) << place;
  }
}

// Of two elements on one circuit both are too much together; on two circuits each has its own.
TEST_F(TheOverload, IsAtThoseElementsThatTheCircuitFeeds) {
  type("/rigs/1/elements/1/power", QStringLiteral("1000 W"));
  ASSERT_TRUE(settles());
  for (const char* place :
       {"/rigs/1/element/power!", "/rigs/1/elements/1/power!", "/rigs/1/supply/from!"})
    EXPECT_NE(mark(QLatin1String(place)), nullptr) << place;
  choose("/rigs/1/wired", QStringLiteral("two circuits"));
  choose("/rigs/1/second_supply/from", QStringLiteral("North America 120 V 15 A"));
  ASSERT_TRUE(settles());
  EXPECT_EQ(mark(QStringLiteral("overload 1")), nullptr);
  type("/rigs/1/elements/1/power", QStringLiteral("2500 W"));
  ASSERT_TRUE(settles());
  EXPECT_NE(mark(QStringLiteral("overload 1")), nullptr);
  for (const char* place : {"/rigs/1/elements/1/power!", "/rigs/1/second_supply/from!"})
    EXPECT_NE(mark(QLatin1String(place)), nullptr) << place;
  for (const char* place : {"/rigs/1/element/power!", "/rigs/1/supply/from!"})
    EXPECT_EQ(mark(QLatin1String(place)), nullptr) << place;
}

TEST_F(TheOverload, IsAtTheHeadOfItsColumnWhereverThatMoves) {
  overload();
  const QLabel* shown = mark(QStringLiteral("overload 1"));
  ASSERT_NE(shown, nullptr);
  EXPECT_EQ(shown->text(), kMark);
  EXPECT_TRUE(shown->font().bold());
  EXPECT_EQ(shown->accessibleDescription(), kSentence);
  EXPECT_EQ(mark(QStringLiteral("overload 0")), nullptr);
  window().forms().rigColumns().move(1, -1);
  // At once, before anything is computed anew.
  EXPECT_NE(mark(QStringLiteral("overload 0")), nullptr);
  EXPECT_EQ(mark(QStringLiteral("overload 1")), nullptr);
  ASSERT_TRUE(settles());
  EXPECT_NE(mark(QStringLiteral("overload 0")), nullptr);
  EXPECT_EQ(mark(QStringLiteral("overload 1")), nullptr);
}

TEST_F(TheOverload, IsAtEveryQuestionFoldedOrNot) {
  using Kind = gui::QuestionColumn::Piece::Kind;
  for (const char* language : {"en", "de"}) {
    for (const bool folded : {true, false}) {
      SCOPED_TRACE(language);
      gui::speak(QString::fromLatin1(language));
      window().resize(1280, 720);
      window().setFormsShown(folded);
      mend();
      auto* column = window().findChild<gui::QuestionColumn*>("questions");
      EXPECT_EQ(column->isFolded(), folded);
      EXPECT_EQ(column->mark(), QString());
      const QImage before = column->grab().toImage();
      overload();
      EXPECT_EQ(column->mark(),
                language == std::string("de") ? QStringLiteral("▲\u00a0Überlast") : kMark);
      EXPECT_NE(column->grab().toImage(), before);
      for (int i = 0; i < column->count(); ++i) {
        int marks = 0;
        for (const auto& piece : column->piecesOf(i)) {
          if (piece.kind != Kind::Mark) continue;
          ++marks;
          EXPECT_TRUE(piece.font.bold());
          EXPECT_LE(QFontMetrics(piece.font).horizontalAdvance(piece.text), piece.room.width());
          EXPECT_LE(piece.room.right(), column->viewport()->width());
        }
        EXPECT_EQ(marks, 1) << i;
        const QString heard = column->item(i)->data(Qt::AccessibleTextRole).toString();
        EXPECT_TRUE(heard.contains(QStringLiteral("▲"))) << i;
        EXPECT_TRUE(column->item(i)->toolTip().contains(QStringLiteral("20"))) << i;
      }
      mend();
      EXPECT_EQ(column->mark(), QString());
      EXPECT_FALSE(
          column->item(0)->data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("▲")));
    }
  }
  gui::speak(QStringLiteral("en"));
}

TEST_F(TheOverload, IsInTheAnswerBeforeItAndInItsTable) {
  overload();
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    SCOPED_TRACE(gui::telling::identifierOf(question));
    window().setQuestion(question);
    // What helps is told of one rig, in columns of figures.
    const bool ofFigures = question == gui::telling::Question::HelpsMost;
    if (ofFigures) window().page().setView({.rig = 1});
    ASSERT_TRUE(settles());
    // Never folded away, however low the window.
    const QLabel* warning = mark(QStringLiteral("warning"));
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->text(), kSentence);
    EXPECT_TRUE(warning->font().bold());
    const auto tables = window().page().findChildren<gui::AnswerTable*>();
    int ofRigs = 0;
    for (const gui::AnswerTable* table : tables) {
      for (int column = 1; column < table->columnCount(); ++column) {
        const QTableWidgetItem* head = table->horizontalHeaderItem(column);
        const bool isOverloaded = head->text().startsWith(QStringLiteral("(b) "));
        EXPECT_EQ(head->text().contains(kMark), isOverloaded) << head->text().toStdString();
        EXPECT_EQ(head->font().bold(), isOverloaded);
        ofRigs += isOverloaded ? 1 : 0;
      }
    }
    EXPECT_EQ(ofRigs, ofFigures ? 0 : 1);
    // Names stay names, for exports that are read by programs.
    const gui::ShownAnswer answer = window().page().currentAnswer();
    EXPECT_FALSE(answer.tables[0].head.join(QLatin1Char('|')).contains(QChar(0x25B2)));
    if (!ofFigures) {
      EXPECT_EQ(answer.tables[0].marks.value(2), kMark);
    }
    const QStringList notes = gui::asLines(answer.notes);
    int told = 0;
    for (const QString& note : notes) {
      if (!note.startsWith(QStringLiteral("(b) "))) continue;
      ++told;
      EXPECT_TRUE(note.contains(QLatin1Char('[') + kMark + QLatin1Char(']'))) << note.toStdString();
    }
    EXPECT_GT(told, 0);
  }
  mend();
  EXPECT_EQ(mark(QStringLiteral("warning")), nullptr);
}

}  // namespace
