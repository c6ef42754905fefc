// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by on paper, read back by other programs, and saved from the window.
#include "gui/window/exports/sheet_paper.hpp"

#include <gtest/gtest.h>

#include <QFile>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "gui/telling/translations.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/documents/written_files.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/window/squeezed.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::squeezed;
using test_support::WindowTest;

const QString kPdf = QStringLiteral("sheet.pdf");

QString readBy(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(test_support::kPatience));
  EXPECT_EQ(process.exitCode(), 0) << program.toStdString();
  return QString::fromUtf8(process.readAllStandardOutput());
}
QString paperText(const QString& path) {
  return readBy(QStringLiteral("pdftotext"), {QStringLiteral("-enc"), QStringLiteral("UTF-8"),
                                              QStringLiteral("-raw"), path, QStringLiteral("-")});
}
int pagesOf(const QString& path) {
  static const QRegularExpression kPages(QStringLiteral("Pages:\\s+(\\d+)"));
  return kPages.match(readBy(QStringLiteral("pdfinfo"), {path})).captured(1).toInt();
}

class SheetPaper : public testing::Test {
 protected:
  QString written(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader) {
    rigs::Solution solution{
        .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
    rigs::addBands(solution, rig, 16);
    sheet_ = gui::telling::sheetOf(
        {solution, solution.plan, reader, {}}, rig,
        {.plan = rigs::Told::just(rigs::Verbatim{"plan.json"}), .version = "1"});
    const QString path = folder_.filePath(kPdf);
    gui::writeSheet(path.toStdString(), sheet_, reader);
    return path;
  }
  static rigs::Plan bundled(const std::string& name) {
    rigs::Problems problems;
    return rigs::readPlan(rigs::planStartText(name).value(), ".", problems).value();
  }

  QTemporaryDir folder_;
  gui::telling::Sheet sheet_;
};

TEST_F(SheetPaper, IsOnePageOfEveryBundledPlanInEveryLanguageAndUnit) {
  for (const std::string& name : rigs::planStartNames()) {
    const rigs::Plan plan = bundled(name);
    for (const char* language : {"en", "de"}) {
      for (const rigs::UnitSystem units : {rigs::UnitSystem::SI, rigs::UnitSystem::UsCustomary}) {
        const rigs::Reader reader{units, &gui::telling::languageOf(language)};
        EXPECT_EQ(pagesOf(written(plan, 0, reader)), 1) << name << ' ' << language;
      }
    }
  }
}

// So that a report never takes its place unasked.
TEST_F(SheetPaper, IsKnownAgainAsASheet) {
  const QString path = written(bundled("one-kettle"), 0, {});
  EXPECT_EQ(rigs::contentOf(path.toStdString()), rigs::FileContent::OwnSheetPdf);
}

TEST_F(SheetPaper, SaysEveryWordOfTheSheet) {
  const rigs::Reader reader{};
  const QString text = squeezed(paperText(written(bundled("night-unplugged"), 1, reader)));
  const auto expect = [&](const rigs::Told& told) {
    const QString part = squeezed(QString::fromStdString(rigs::tell(told, reader)));
    EXPECT_TRUE(text.contains(part)) << part.toStdString() << " in " << text.toStdString();
  };
  for (const rigs::Told* one : {&sheet_.title, &sheet_.rig, &sheet_.ofBands, &sheet_.danger})
    expect(*one);
  for (const gui::telling::SheetLine& line : sheet_.lines) {
    for (const rigs::Told& one : {line.clock(), line.band, line.newDay, line.action, line.more})
      expect(one);
    for (const rigs::Told& one : line.expected) expect(one);
    for (const rigs::Told& one : line.toWrite) expect(one);
  }
  for (const gui::telling::SheetSum& one : sheet_.sums) {
    expect(one.figure);
    expect(one.label);
  }
  for (const rigs::Told& one : sheet_.cautions) expect(one);
}

// Smaller, and on one page; and one that no page holds goes on instead of losing its end.
TEST_F(SheetPaper, HoldsADayOfManyRests) {
  rigs::Plan plan = bundled("one-kettle");
  const auto rests = [&](int count) {
    physics::HeldMash mash;
    for (int i = 0; i < count; ++i)
      mash.rests.push_back({physics::celsius(50.0 + 20.0 * i / count), physics::minutes(5.0)});
    plan.batch.mash = mash;
  };
  rests(6);
  EXPECT_EQ(pagesOf(written(plan, 0, {})), 1);
  rests(30);
  const QString path = written(plan, 0, {});
  EXPECT_GT(pagesOf(path), 1);
  EXPECT_TRUE(squeezed(paperText(path)).contains(squeezed(QStringLiteral("licensed electrician"))));
}

TEST_F(SheetPaper, IsOnTheReadersPaper) {
  const rigs::Plan plan = bundled("one-kettle");
  EXPECT_TRUE(
      readBy(QStringLiteral("pdfinfo"), {written(plan, 0, {})}).contains(QStringLiteral("(A4)")));
  EXPECT_TRUE(readBy(QStringLiteral("pdfinfo"),
                     {written(plan, 0, {.units = rigs::UnitSystem::UsCustomary})})
                  .contains(QStringLiteral("(letter)")));
}

class TheSheet : public WindowTest {
 protected:
  // As the menu shows them once it is opened.
  QStringList offered() {
    for (QMenu* menu : window().findChildren<QMenu*>()) {
      if (!menu->title().contains(QStringLiteral("brew by"))) continue;
      Q_EMIT menu->aboutToShow();
      QStringList names;
      for (const QAction* action : menu->actions()) names.push_back(action->text());
      return names;
    }
    return {};
  }
};

TEST_F(TheSheet, IsOfferedForEachRigByItsLetter) {
  ASSERT_TRUE(settles());
  const QStringList names = offered();
  ASSERT_EQ(names.size(), 4);
  EXPECT_EQ(names[1].toStdString(), "(b) New element, kitchen ...");
}

TEST_F(TheSheet, IsSavedAsPaperOrAsAPageWithTheSameWords) {
  ASSERT_TRUE(window().savePlanAs(fileIn(QStringLiteral("mine.json"))));
  ASSERT_TRUE(settles());
  window().saveSheet(fileIn(kPdf), 3);
  window().saveSheet(fileIn(QStringLiteral("sheet.html")), 3);
  EXPECT_EQ(pagesOf(fileIn(kPdf)), 1);
  const QString paper = squeezed(paperText(fileIn(kPdf)));
  const std::string page = test_support::readFile(fileIn(QStringLiteral("sheet.html")));
  for (const char* part : {"Old element, laundry", "from mine.json.", "It rolls", "Element off"}) {
    EXPECT_TRUE(paper.contains(squeezed(QString::fromUtf8(part)))) << part;
    EXPECT_NE(page.find(part), std::string::npos) << part;
  }
  type("/batch/boil", QStringLiteral("80 min"));
  ASSERT_TRUE(settles());
  window().saveSheet(fileIn(QStringLiteral("sheet.html")), 3);
  EXPECT_NE(test_support::readFile(fileIn(QStringLiteral("sheet.html")))
                .find("from mine.json, with changes that are not saved."),
            std::string::npos);
}

TEST_F(TheSheet, IsNeverWrittenOverTheOpenPlanAndSaysWhatFails) {
  const QString plan = fileIn(QStringLiteral("mine.json"));
  ASSERT_TRUE(window().savePlanAs(plan));
  ASSERT_TRUE(settles());
  const std::string before = test_support::readFile(plan);
  answerBoxWith(QMessageBox::Ok);
  window().saveSheet(plan, 0);
  EXPECT_EQ(test_support::readFile(plan), before);
  answerBoxWith(QMessageBox::Ok);
  window().saveSheet(fileIn(QStringLiteral("none/sheet.pdf")), 0);
  EXPECT_EQ(boxes_, 2);
}

}  // namespace
