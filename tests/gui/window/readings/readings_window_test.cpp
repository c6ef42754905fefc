// SPDX-License-Identifier: GPL-3.0-or-later
// Readings typed, opened and kept, as a person would.
#include "gui/window/readings/readings_window.hpp"

#include <QComboBox>
#include <QTest>
#include <array>
#include <string>

#include "gui/telling/curve.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::WindowTest;

// Of a kettle that cools faster than planned; invented.
const char* const kNight =
    "20:48 unplugged\n20:49 66.6\n21:00 66.2\n21:10 65.8\n21:19 65.5\n06:30 49.4\n";

class TheReadings : public WindowTest {
 protected:
  void begin() {
    test_support::writeFile(fileIn(QStringLiteral("night.json")),
                            *rigs::planStartText("night-unplugged"));
    ASSERT_TRUE(window().openPlan(fileIn(QStringLiteral("night.json"))));
    ASSERT_TRUE(settles());
    readings_ = &window().showReadings();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(readings_));
  }
  bool works() {
    return QTest::qWaitFor(
        [this] {
          QCoreApplication::processEvents();
          return readings_->isSettled();
        },
        test_support::kPatience);
  }
  template <class Widget>
  Widget& part(const char* name) {
    return *readings_->findChild<Widget*>(QString::fromLatin1(name));
  }
  QString sentence() { return part<QLabel>("sentence").text(); }
  QString problems() {
    auto& label = part<QLabel>("problems");
    return label.isHidden() ? QString() : label.text();
  }
  void typeLines(const char* lines) {
    auto& into = part<QPlainTextEdit>("lines");
    for (const char* key = lines; *key != '\0'; ++key) {
      if (*key == '\n')
        QTest::keyClick(&into, Qt::Key_Return);
      else
        QTest::keyClick(&into, *key);
    }
  }
  void chooseSecondRig() {
    auto* rigs = readings_->findChild<QComboBox*>();
    rigs->setFocus();
    QTest::keyClick(rigs, Qt::Key_Down);
    ASSERT_EQ(rigs->currentIndex(), 1);
  }

  gui::ReadingsWindow* readings_ = nullptr;
};

TEST_F(TheReadings, SayWhatANightTellsAndAreKeptAsAStepThatUndoTakesBack) {
  begin();
  EXPECT_EQ(sentence(), QStringLiteral("Nothing was read yet."));
  chooseSecondRig();
  typeLines(kNight);
  ASSERT_TRUE(works());
  ASSERT_TRUE(QTest::qWaitFor([this] { return readings_->chart().isVisible(); }, 5000));
  EXPECT_TRUE(sentence().contains(QStringLiteral("With your readings: in the morning about 49.2")))
      << sentence().toStdString();
  const auto& picture = readings_->chart().picture();
  EXPECT_EQ(picture.lines.size(), 5u);
  EXPECT_EQ(picture.marks.size(), 5u) << "of temperatures; the event is none";
  ASSERT_EQ(picture.washes.size(), 1u);
  // The last reading lies in what is known now, and below what was expected.
  const auto at = [&](std::size_t line) {
    return *gui::telling::valueAt(picture.lines[line].points, picture.marks.back().at.x);
  };
  EXPECT_LT(at(picture.washes[0].low), picture.marks.back().at.y);
  EXPECT_GT(at(picture.washes[0].high), picture.marks.back().at.y);

  // Of this rig's night, and of no other's.
  const QString strip = readings_->findChild<gui::CautionsFoot*>()->findChild<QLabel*>()->text();
  EXPECT_TRUE(strip.contains(QStringLiteral("below 57 °C"))) << strip.toStdString();
  EXPECT_FALSE(strip.contains(QStringLiteral("(a)"))) << strip.toStdString();

  auto& keep = part<QPushButton>("keep");
  ASSERT_TRUE(keep.isEnabled());
  QTest::mouseClick(&keep, Qt::LeftButton);
  EXPECT_TRUE(QString::fromStdString(document().text()).contains(QStringLiteral("measured")));
  undo();  // where the hand is: on that button
  EXPECT_FALSE(QString::fromStdString(document().text()).contains(QStringLiteral("measured")));
}

TEST_F(TheReadings, NameTheLinesThatAreWrongAndLoseNone) {
  begin();
  typeLines("20:48 unplugged\n20:49 66.6\n21:00 warmish\n");
  ASSERT_TRUE(works());
  ASSERT_TRUE(QTest::qWaitFor([this] { return !problems().isEmpty(); }, 5000));
  EXPECT_TRUE(problems().startsWith(QStringLiteral("Line 3: "))) << problems().toStdString();
  EXPECT_FALSE(part<QPushButton>("keep").isEnabled());
  // A window later, what was typed is there.
  reopen(fileIn(QStringLiteral("night.json")));
  ASSERT_TRUE(settles());
  readings_ = &window().showReadings();
  EXPECT_TRUE(part<QPlainTextEdit>("lines").toPlainText().contains(QStringLiteral("warmish")));
}

TEST_F(TheReadings, GoAlongWithAPlanThatIsSavedUnderAnotherName) {
  begin();
  typeLines("20:49 66.6\n");
  ASSERT_TRUE(window().savePlanAs(fileIn(QStringLiteral("copy.json"))));
  EXPECT_EQ(part<QPlainTextEdit>("lines").toPlainText(), QStringLiteral("20:49 66.6\n"));
  test_support::writeFile(fileIn(QStringLiteral("other.json")), *rigs::planStartText("one-kettle"));
  ASSERT_TRUE(window().openPlan(fileIn(QStringLiteral("other.json"))));
  EXPECT_EQ(part<QPlainTextEdit>("lines").toPlainText(), QString()) << "these are of another plan";
}

TEST_F(TheReadings, CountTwiceWhereTheyWereKeptAndThatIsTold) {
  begin();
  chooseSecondRig();
  typeLines(kNight);
  ASSERT_TRUE(works());
  ASSERT_TRUE(QTest::qWaitFor([this] { return part<QPushButton>("keep").isEnabled(); }, 5000));
  EXPECT_EQ(problems(), QString());
  QTest::mouseClick(&part<QPushButton>("keep"), Qt::LeftButton);
  ASSERT_TRUE(
      QTest::qWaitFor([this] { return problems().contains(QStringLiteral("twice")); }, 20000))
      << problems().toStdString();
}

// A logger's columns show as they were found, and are corrected where the first thermometer hangs
// in the shed. Lines typed by hand have no columns to choose.
TEST_F(TheReadings, LetALoggersColumnsBeCorrected) {
  begin();
  chooseSecondRig();
  auto& wort = part<QComboBox>("columns/temperature");
  typeLines("20:48 unplugged\n20:49 66.6\n");
  ASSERT_TRUE(works());
  EXPECT_FALSE(wort.isVisible());

  std::string log = "Time;Probe 1;Probe 2\n";
  for (const auto& [clock, shed, inside] : {std::array{"20:49", "11.2", "66.6"},
                                            {"21:00", "11.1", "66.2"},
                                            {"21:10", "11.0", "65.8"},
                                            {"21:19", "11.0", "65.5"},
                                            {"06:30", "4.8", "49.4"}})
    log += std::string(clock) + ';' + shed + ';' + inside + '\n';
  test_support::writeFile(fileIn(QStringLiteral("log.csv")), log);
  readings_->openReadings(fileIn(QStringLiteral("log.csv")));
  ASSERT_TRUE(works());
  ASSERT_TRUE(wort.isVisible());
  EXPECT_TRUE(wort.currentText().startsWith(QStringLiteral("as found: column 2")))
      << wort.currentText().toStdString();
  EXPECT_EQ(part<QComboBox>("columns/time").currentText(),
            QStringLiteral("as found: column 1, \"Time\""));
  const auto firstRead = [this] { return readings_->chart().picture().marks.at(0).at.y; };
  EXPECT_NEAR(firstRead(), 11.2, 1e-9);

  wort.setFocus();
  for (int i = 0; i < 3; ++i) QTest::keyClick(&wort, Qt::Key_Down);
  ASSERT_TRUE(works());
  EXPECT_EQ(wort.currentText(), QStringLiteral("column 3, \"Probe 2\""));
  EXPECT_NEAR(firstRead(), 66.6, 1e-9);

  auto& unit = part<QComboBox>("columns/unit");
  EXPECT_EQ(unit.currentText(), QStringLiteral("as found: °C"));
  unit.setFocus();
  for (int i = 0; i < 2; ++i) QTest::keyClick(&unit, Qt::Key_Down);
  ASSERT_TRUE(works());
  EXPECT_EQ(unit.currentText(), QStringLiteral("°F"));
  EXPECT_NEAR(firstRead(), (66.6 - 32.0) / 1.8, 1e-9);

  // Other lines are found anew.
  readings_->openReadings(fileIn(QStringLiteral("log.csv")));
  ASSERT_TRUE(works());
  EXPECT_TRUE(wort.currentText().startsWith(QStringLiteral("as found: column 2")));
  EXPECT_NEAR(firstRead(), 11.2, 1e-9);
}

// What was chosen is not kept beyond the lines that have it.
TEST_F(TheReadings, ForgetAColumnThatIsThereNoMore) {
  begin();
  chooseSecondRig();
  test_support::writeFile(fileIn(QStringLiteral("log.csv")),
                          "Time;Probe 1;Probe 2\n20:49;11.2;66.6\n21:00;11.1;66.2\n");
  readings_->openReadings(fileIn(QStringLiteral("log.csv")));
  ASSERT_TRUE(works());
  auto& wort = part<QComboBox>("columns/temperature");
  wort.setFocus();
  for (int i = 0; i < 3; ++i) QTest::keyClick(&wort, Qt::Key_Down);
  ASSERT_TRUE(works());
  auto& lines = part<QPlainTextEdit>("lines");
  lines.setFocus();
  QTest::keySequence(&lines, QKeySequence::SelectAll);
  typeLines("20:49 66.6\n21:00 66.2\n");
  ASSERT_TRUE(works());
  EXPECT_EQ(problems(), QString());
  EXPECT_EQ(wort.currentIndex(), 0);
  EXPECT_FALSE(wort.isVisible());
}

TEST_F(TheReadings, AreOpenedAndSavedAsFiles) {
  begin();
  const QString file = fileIn(QStringLiteral("night.csv"));
  test_support::writeFile(file, kNight);
  readings_->openReadings(file);
  ASSERT_TRUE(works());
  EXPECT_TRUE(sentence().contains(QStringLiteral("With your readings")))
      << sentence().toStdString();
  const QString copy = fileIn(QStringLiteral("copy.csv"));
  readings_->saveReadings(copy);
  EXPECT_EQ(test_support::readFile(copy), kNight);
  answerBoxWith(QMessageBox::Ok);
  readings_->openReadings(fileIn(QStringLiteral("nowhere.csv")));
  EXPECT_EQ(boxes_, 1);
  EXPECT_EQ(part<QPlainTextEdit>("lines").toPlainText().toStdString(), kNight)
      << "what was there stays";
}

}  // namespace
