// SPDX-License-Identifier: GPL-3.0-or-later
// What has been typed and not saved: when a copy of it is kept, and what is said of the copy.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QProcess>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <csignal>
#include <vector>

#include "gui/window/words/language.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/crash_child.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::readFile;
using test_support::WindowTest;
using test_support::writeFile;

constexpr qint64 kBehind = 2000;  // ms, as is promised
constexpr qint64 kSlack = 500;    // ms that a busy machine may be late

class Unsaved : public WindowTest {
 protected:
  // What the safety copy says there; nothing without a copy.
  std::optional<std::string> keptAt(const std::string& place) const {
    const QStringList copies = QDir(recoveryFolder()).entryList({QStringLiteral("*.unsaved")});
    if (copies.isEmpty()) return std::nullopt;
    const std::string all = readFile(recoveryFolder() + QLatin1Char('/') + copies.front());
    return rigs::textAt(all.substr(all.find('\n') + 1), place);
  }
  // As a person begins to, who has not come to the end: no Enter, no pause.
  void beginTyping(const std::string& place, const QString& text) {
    QLineEdit* field = line(place);
    ASSERT_NE(field, nullptr) << place;
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, text);
  }
  void loseTo(const QString& path, const std::string& text) const {
    writeFile(recoveryFolder() + QStringLiteral("/lost.unsaved"), path.toStdString() + "\n" + text);
  }
  QString offered() {
    window().offerLeftovers();
    EXPECT_TRUE(window().banner().isVisible());
    return window().banner().text();
  }

  std::string demo_{rigs::demoPlanText()};
};

// Slower than a field takes up what was typed, and faster, so that it never does.
class UnsavedTyping : public Unsaved, public testing::WithParamInterface<int> {};

TEST_P(UnsavedTyping, IsKeptWhileItGoesOn) {
  const int rhythm = GetParam();
  QLineEdit* field = line("/title");
  ASSERT_NE(field, nullptr);
  field->setFocus();
  field->selectAll();
  QElapsedTimer clock;
  clock.start();
  std::vector<qint64> typedAt;
  int looked = 0;
  while (clock.elapsed() < 6000) {
    QTest::keyClick(field, Qt::Key_A);
    typedAt.push_back(clock.elapsed());
    QTest::qWait(rhythm);
    const qint64 due = clock.elapsed() - kBehind - kSlack;
    const auto atLeast = std::count_if(typedAt.begin(), typedAt.end(),
                                       [due](qint64 moment) { return moment <= due; });
    if (atLeast == 0) continue;
    ++looked;
    const auto kept = keptAt("/title");
    ASSERT_TRUE(kept.has_value()) << clock.elapsed() << " ms";
    ASSERT_EQ(kept->find_first_not_of('a'), std::string::npos) << *kept;
    ASSERT_GE(static_cast<std::ptrdiff_t>(kept->size()), atLeast) << clock.elapsed() << " ms";
  }
  EXPECT_GT(looked, 3);
}

INSTANTIATE_TEST_SUITE_P(Rhythms, UnsavedTyping, testing::Values(400, 100), [](const auto& rhythm) {
  return "AKeyEach" + std::to_string(rhythm.param) + "Milliseconds";
});

TEST_F(Unsaved, IsKeptAtOnceWhenTheReaderTurnsToSomethingElse) {
  beginTyping("/batch/boil", "85 min");
  ASSERT_EQ(keptAt("/batch/boil"), std::nullopt);
  Q_EMIT qApp->applicationStateChanged(Qt::ApplicationInactive);
  EXPECT_EQ(keptAt("/batch/boil"), "85 min");
}

// The copy must not take the field out of the hands of who types in it.
TEST_F(Unsaved, IsKeptWithoutTakingUpWhatIsBeingTyped) {
  beginTyping("/batch/wort", "6 gal");
  Q_EMIT qApp->applicationStateChanged(Qt::ApplicationInactive);
  EXPECT_EQ(keptAt("/batch/wort"), "6 gal");
  EXPECT_EQ(line("/batch/wort")->text(), "6 gal");  // taken up, it would read in litres
  QTest::keyClicks(line("/batch/wort"), QStringLiteral("lons"));
  QTest::keyClick(line("/batch/wort"), Qt::Key_Return);
  EXPECT_EQ(textAt("/batch/wort"), "6 gallons");
}

TEST_F(Unsaved, IsNotKeptOnceItWasThrownAway) {
  type("/batch/boil", "85 min");
  answerBoxWith(QMessageBox::Discard);
  ASSERT_TRUE(window().close());
  Q_EMIT qApp->applicationStateChanged(Qt::ApplicationInactive);
  EXPECT_EQ(keptAt("/batch/boil"), std::nullopt);
}

TEST_F(Unsaved, IsOfferedWithItsTimeAndWhatDiffers) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  const std::string wort = rigs::withText(demo_, "/batch/wort", "27 L");
  loseTo(path, wort);
  const QString one = offered();
  const QString change = QStringLiteral("Wort wanted %1 → 27 L")
                             .arg(QString::fromStdString(*rigs::textAt(demo_, "/batch/wort")));
  EXPECT_TRUE(one.contains("1 value differs from the file: " + change + '.')) << one.toStdString();
  EXPECT_TRUE(one.contains(QRegularExpression("Its copy is from \\d\\d:\\d\\d today\\.")))
      << one.toStdString();
}

TEST_F(Unsaved, OfAnotherDayIsOfferedWithItsDateInTheReadersWords) {
  gui::speak(QStringLiteral("de"));
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  std::string text = rigs::withText(demo_, "/batch/wort", "27 L");
  text = rigs::withText(text, "/rigs/0/element/power", "7 kW");
  text = rigs::withText(text, "/batch/boil", "85 min");
  text = rigs::withText(text, "/place/altitude", "300 m");
  text = rigs::withText(text, "/title", "Other");
  loseTo(path, text);
  QFile lost(recoveryFolder() + QStringLiteral("/lost.unsaved"));
  ASSERT_TRUE(lost.open(QIODevice::ReadWrite));
  ASSERT_TRUE(lost.setFileTime(QDateTime(QDate(2024, 3, 9), QTime(14, 32)),
                               QFileDevice::FileModificationTime));
  lost.close();
  const QString said = offered();
  gui::speak(QStringLiteral("en"));
  EXPECT_TRUE(said.contains("Die Kopie ist von Samstag, 9. März 2024, 14:32 Uhr."))
      << said.toStdString();
  EXPECT_TRUE(said.contains("5 Werte sind anders als in der Datei: ")) << said.toStdString();
  EXPECT_TRUE(said.contains("→ 27 L")) << said.toStdString();
  EXPECT_TRUE(said.contains("; ….")) << said.toStdString();
}

// The program as it is started, ended from outside in the very moment of the last key.
class UnsavedAtTheEnd : public Unsaved, public testing::WithParamInterface<int> {};

TEST_P(UnsavedAtTheEnd, IsKeptAndOfferedAtTheNextStart) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  QProcess child;
  child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  child.start(QApplication::applicationFilePath(),
              {test_support::kTypeInProgram, folder_.path(), path});
  ASSERT_TRUE(child.waitForStarted());
  ASSERT_TRUE(child.waitForReadyRead(30000));
  ASSERT_EQ(child.readAllStandardOutput(), "typed\n");
  ASSERT_EQ(::kill(static_cast<pid_t>(child.processId()), GetParam()), 0);
  ASSERT_TRUE(child.waitForFinished(30000));
  ASSERT_EQ(child.exitStatus(), QProcess::NormalExit);
  EXPECT_EQ(child.exitCode(), 0);
  EXPECT_EQ(readFile(path), demo_);

  window_ = std::make_unique<gui::MainWindow>(
      QString(), folder_.filePath(QStringLiteral("heatledger/heatledger/unsaved")));
  window_->show();
  const QString said = offered();
  EXPECT_TRUE(said.contains("mine.json")) << said.toStdString();
  EXPECT_TRUE(said.contains("→ 7 kW")) << said.toStdString();
  clickBanner("Restore it");
  EXPECT_EQ(textAt("/rigs/0/element/power"), "7 kW");
}

INSTANTIATE_TEST_SUITE_P(Signals, UnsavedAtTheEnd, testing::Values(SIGTERM, SIGHUP),
                         [](const auto& signal) {
                           return signal.param == SIGTERM ? "ByTheSystem" : "ByItsTerminal";
                         });

}  // namespace
