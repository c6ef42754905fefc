// SPDX-License-Identifier: GPL-3.0-or-later
// Opening, saving, losing and finding plans.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QProcess>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <QUrl>

#include "gui/window/files/recovery.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/crash_child.hpp"
#include "tests/gui/window/window_fixture.hpp"

namespace {

using test_support::readFile;
using test_support::WindowTest;
using test_support::writeFile;

class TheFile : public WindowTest {
 protected:
  std::string demo_{rigs::demoPlanText()};
};

TEST_F(TheFile, KeepsWhatNobodyChanged) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  ASSERT_TRUE(window().openPlan(path));
  ASSERT_TRUE(window().savePlan());
  EXPECT_EQ(readFile(path), demo_);
}

TEST_F(TheFile, HoldsTheNewValueAfterSaving) {
  const QString path = fileIn("mine.json");
  ASSERT_TRUE(window().savePlanAs(path));
  EXPECT_FALSE(document().isModified());
  type("/batch/boil", "80 min");
  EXPECT_TRUE(document().isModified());
  EXPECT_TRUE(window().isWindowModified());
  press(Qt::Key_S, Qt::ControlModifier);
  EXPECT_FALSE(document().isModified());
  EXPECT_EQ(rigs::textAt(readFile(path), "/batch/boil"), "80 min");
  undo();
  EXPECT_TRUE(document().isModified());
}

TEST_F(TheFile, IsAskedAboutBeforeWorkIsLost) {
  type("/batch/boil", "80 min");
  answerBoxWith(QMessageBox::Cancel);
  EXPECT_FALSE(window().close());
  EXPECT_EQ(boxes_, 1);
  EXPECT_TRUE(window().isVisible());
  EXPECT_EQ(textAt("/batch/boil"), "80 min");
  answerBoxWith(QMessageBox::Discard);
  EXPECT_TRUE(window().close());
  EXPECT_EQ(boxes_, 2);
}

TEST_F(TheFile, IsNotAskedAboutWithoutChanges) { EXPECT_TRUE(window().close()); }

TEST_F(TheFile, ThatIsNoPlanIsRefusedAndTheOldPlanStays) {
  const QString path = fileIn("notes.json");
  writeFile(path, "not { json");
  const std::string before = document().text();
  answerBoxWith(QMessageBox::Ok);
  EXPECT_FALSE(window().openPlan(path));
  EXPECT_EQ(boxes_, 1);
  EXPECT_EQ(document().text(), before);
  EXPECT_EQ(document().path(), QString());
}

TEST_F(TheFile, WithProblemsIsOpenedToBeMended) {
  const QString path = fileIn("broken.json");
  writeFile(path, rigs::withText(demo_, "/batch/wort", "23"));
  ASSERT_TRUE(window().openPlan(path));
  EXPECT_TRUE(problemAt("/batch/wort").contains("has no unit"));
  type("/batch/wort", "23 L");
  EXPECT_EQ(problemAt("/batch/wort"), QString());
}

TEST_F(TheFile, ThatCannotBeWrittenIsComplainedAbout) {
  answerBoxWith(QMessageBox::Ok);
  EXPECT_FALSE(window().savePlanAs(fileIn("nowhere/plan.json")));
  EXPECT_EQ(boxes_, 1);
  EXPECT_EQ(document().path(), QString());
}

TEST_F(TheFile, ChangedUnderneathIsAskedAboutAndLoadedAsAStep) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  ASSERT_TRUE(window().openPlan(path));
  type("/batch/boil", "80 min");
  writeFile(path, rigs::withText(demo_, "/batch/wort", "25 L"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return window().banner().isVisible(); }, 10000));
  EXPECT_EQ(textAt("/batch/boil"), "80 min");  // nothing happens silently
  clickBanner("Load the file");
  EXPECT_EQ(textAt("/batch/wort"), "25 L");
  EXPECT_EQ(textAt("/batch/boil"), "70 min");
  EXPECT_FALSE(document().isModified());
  undo();
  EXPECT_EQ(textAt("/batch/boil"), "80 min");
}

TEST_F(TheFile, ReplacedUnderneathIsNoticedEveryTime) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  ASSERT_TRUE(window().openPlan(path));
  for (const char* wort : {"25 L", "26 L"}) {
    SCOPED_TRACE(wort);
    rigs::savePlan(path.toStdString(), rigs::withText(demo_, "/batch/wort", wort));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window().banner().isVisible(); }, 10000));
    clickBanner("Load the file");
    EXPECT_EQ(textAt("/batch/wort"), wort);
  }
}

TEST_F(TheFile, ChangedUnderneathIsNotOverwrittenUnasked) {
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  ASSERT_TRUE(window().openPlan(path));
  type("/batch/boil", "80 min");
  const std::string theirs = rigs::withText(demo_, "/batch/wort", "25 L");
  writeFile(path, theirs);
  answerBoxWith(QMessageBox::Cancel);
  EXPECT_FALSE(window().savePlan());
  EXPECT_EQ(readFile(path), theirs);
  answerBoxWith(QMessageBox::Save);
  EXPECT_TRUE(window().savePlan());
  EXPECT_EQ(rigs::textAt(readFile(path), "/batch/boil"), "80 min");
}

TEST_F(TheFile, SavedByUsIsNoNews) {
  ASSERT_TRUE(window().savePlanAs(fileIn("mine.json")));
  type("/batch/boil", "80 min");
  ASSERT_TRUE(window().savePlan());
  QTest::qWait(500);
  EXPECT_FALSE(window().banner().isVisible());
}

TEST_F(TheFile, MayBeDroppedOnTheWindow) {
  const QString path = fileIn("dropped.json");
  writeFile(path, rigs::withText(demo_, "/title", "Dropped"));
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(path)});
  QDragEnterEvent enter({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&window(), &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent drop(QPointF(20, 20), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&window(), &drop);
  EXPECT_EQ(textAt("/title"), "Dropped");
  EXPECT_EQ(document().path(), path);
}

TEST_F(TheFile, IsFoundAgainUnderRecent) {
  const QString path = fileIn("mine.json");
  ASSERT_TRUE(window().savePlanAs(path));
  EXPECT_EQ(QSettings().value("recent").toStringList(), QStringList{path});
}

TEST_F(TheFile, NamedAtTheStartIsShownAtOnce) {
  const QString path = fileIn("mine.json");
  writeFile(path, rigs::withText(demo_, "/title", "From the command line"));
  reopen(path);
  EXPECT_EQ(textAt("/title"), "From the command line");
  answerBoxWith(QMessageBox::Ok);
  reopen(fileIn("missing.json"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return boxes_ == 1; }, 5000));
  EXPECT_EQ(document().text(), demo_);
}

// The process is killed for real, by a signal that no program can catch.
class AfterACrash : public TheFile, public testing::WithParamInterface<bool> {};

TEST_P(AfterACrash, WhatWasTypedComesBack) {
  const bool saved = GetParam();
  const QString path = saved ? fileIn("mine.json") : QStringLiteral("-");
  if (saved) writeFile(path, demo_);
  QProcess child;
  child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  child.start(QApplication::applicationFilePath(),
              {test_support::kTypeAndWait, recoveryFolder(), path});
  ASSERT_TRUE(child.waitForStarted());
  ASSERT_TRUE(child.waitForReadyRead(30000));
  ASSERT_EQ(child.readAllStandardOutput(), "kept\n");

  // While it lives, its copy is nobody else's.
  window().offerLeftovers();
  EXPECT_FALSE(window().banner().isVisible());
  child.kill();
  ASSERT_TRUE(child.waitForFinished());
  ASSERT_EQ(child.exitStatus(), QProcess::CrashExit);
  if (saved) {
    EXPECT_EQ(readFile(path), demo_);
  }

  reopen();
  window().offerLeftovers();
  ASSERT_TRUE(window().banner().isVisible());
  clickBanner("Restore it");
  EXPECT_EQ(textAt("/rigs/0/element/power"), "7 kW");
  EXPECT_EQ(document().path(), saved ? path : QString());
  EXPECT_TRUE(document().isModified());

  // Not offered twice, and gone once it is saved.
  ASSERT_TRUE(window().savePlanAs(fileIn("safe.json")));
  EXPECT_EQ(QDir(recoveryFolder()).entryList({"*.unsaved"}).size(), 0);
}

INSTANTIATE_TEST_SUITE_P(Plans, AfterACrash, testing::Bool(), [](const auto& saved) {
  return saved.param ? "ThatHadAFile" : "ThatWereNeverSaved";
});

// Two questions at once are asked one after the other; none pushes the other off the screen.
TEST_F(TheFile, ChangedUnderneathWaitsForTheQuestionBeforeIt) {
  const QString lost = recoveryFolder() + QStringLiteral("/lost.unsaved");
  writeFile(lost, "\n" + rigs::withText(demo_, "/title", "Lost"));
  const QString path = fileIn("mine.json");
  writeFile(path, demo_);
  ASSERT_TRUE(window().openPlan(path));
  window().offerLeftovers();
  ASSERT_TRUE(window().banner().isVisible());
  const QString first = window().banner().text();
  EXPECT_TRUE(first.contains("never saved")) << first.toStdString();
  QSignalSpy changed(&document(), &gui::PlanDocument::changedOnDisk);
  writeFile(path, rigs::withText(demo_, "/batch/wort", "25 L"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return changed.count() > 0; }, 10000));
  EXPECT_EQ(window().banner().text(), first);
  clickBanner("Later");
  ASSERT_TRUE(window().banner().isVisible());
  EXPECT_TRUE(window().banner().text().contains("mine.json"));
  clickBanner("Load the file");
  EXPECT_EQ(textAt("/batch/wort"), "25 L");
  EXPECT_FALSE(window().banner().isVisible());
}

TEST_F(TheFile, LeavesNoSafetyCopyAfterAnOrderlyEnd) {
  type("/batch/boil", "80 min");
  ASSERT_TRUE(QTest::qWaitFor(
      [&] { return QDir(recoveryFolder()).entryList({"*.unsaved"}).size() == 1; }, 10000));
  answerBoxWith(QMessageBox::Discard);
  EXPECT_TRUE(window().close());
  EXPECT_EQ(QDir(recoveryFolder()).entryList({"*.unsaved"}).size(), 0);
}

}  // namespace
