// SPDX-License-Identifier: GPL-3.0-or-later
// The PDF report read back by other programs.
#include "gui/window/exports/report.hpp"

#include <gtest/gtest.h>

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QPrinter>
#include <QProcess>
#include <QProcessEnvironment>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "gui/telling/answer_to.hpp"
#include "gui/window/exports/report_inputs.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/documents/files.hpp"
#include "tests/gui/window/report_child.hpp"
#include "tests/gui/window/solved_demo.hpp"
#include "tests/gui/window/squeezed.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::solvedDemo;
using test_support::squeezed;

gui::ReportInput demoInput(rigs::UnitSystem units = rigs::UnitSystem::SI) {
  const std::string_view text = rigs::demoPlanText();
  return {.solution = solvedDemo(),
          .units = units,
          .planName = QStringLiteral("altbier.json"),
          .document = {text.data(), static_cast<qsizetype>(text.size())}};
}

struct Said {
  int exitCode = -1;
  QString text;
};

Said run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  if (!process.waitForFinished(test_support::kPatience)) return {};
  return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput())};
}

class Report : public testing::Test {
 protected:
  QString written(const gui::ReportInput& input) {
    const QString path = folder_.filePath(QStringLiteral("day.pdf"));
    gui::writeReport(path.toStdString(), input);
    return path;
  }
  QString textOf(const gui::ReportInput& input, const QStringList& pages = {}) {
    const Said said =
        run(QStringLiteral("pdftotext"),
            pages + QStringList{QStringLiteral("-enc"), QStringLiteral("UTF-8"),
                                QStringLiteral("-raw"), written(input), QStringLiteral("-")});
    EXPECT_EQ(said.exitCode, 0);
    return said.text;
  }

  QTemporaryDir folder_;
};

// By two processes, since what is hashed comes in another order in each; more than a
// second, which is what a date tells, lies between any two.
TEST_F(Report, IsTheSameToTheByteWhereItsDateIsAsked) {
  const auto reportOf = [this](const char* name, const char* epoch) {
    const QString path = folder_.filePath(QString::fromUtf8(name));
    QProcess child;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("SOURCE_DATE_EPOCH"), QString::fromUtf8(epoch));
    child.setProcessEnvironment(environment);
    child.start(QCoreApplication::applicationFilePath(), {test_support::kWriteReport, path});
    EXPECT_TRUE(child.waitForFinished(test_support::kPatience));
    EXPECT_EQ(child.exitCode(), 0);
    QTest::qWait(1100);
    return test_support::readFile(path);
  };
  const std::string first = reportOf("first.pdf", "1700000000");
  EXPECT_TRUE(first == reportOf("second.pdf", "1700000000"));
  EXPECT_NE(first.find("/CreationDate (D:20231114221320"), std::string::npos);
  const std::string now = reportOf("now.pdf", "");
  EXPECT_EQ(now.find("/CreationDate (D:20231114221320"), std::string::npos);
  // The day is printed, too, and as long as its name: one of the same day is as long.
  const QDateTime noon(QDate::currentDate(), QTime(12, 0), Qt::UTC);
  const QByteArray today = QByteArray::number(noon.toSecsSinceEpoch());
  EXPECT_EQ(now.size(), reportOf("today.pdf", today.constData()).size());
}

TEST_F(Report, SaysEveryAnswerInputAssumptionAndCaution) {
  const QString text = squeezed(textOf(demoInput()));

  const auto expect = [&](const QString& part) {
    EXPECT_TRUE(text.contains(squeezed(part))) << part.toStdString();
  };
  expect(QString::fromStdString(solvedDemo()->plan.title));
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    if (question == gui::telling::Question::HowChills) continue;  // of which the demo says nothing
    const gui::ShownAnswer answer = test_support::shownDemo(question);
    expect(answer.title);
    expect(answer.headline());
    for (const QString& caution : answer.cautions) expect(caution);
  }
  for (const QString& assumption : gui::assumptions()) expect(assumption);
  for (const auto& row : gui::dayInputs(solvedDemo()->plan, rigs::UnitSystem::SI).rows) {
    expect(row.cells[0]);
    expect(row.cells[1]);
  }
}

TEST_F(Report, TellsHowLongItChillsWhereThePlanStatesIt) {
  const QString title = squeezed(QStringLiteral("How long does it take to chill?"));
  EXPECT_FALSE(squeezed(textOf(demoInput())).contains(title));
  rigs::Plan alone = solvedDemo()->plan;
  alone.rigs = {alone.rigs[1]};
  alone.rigs.front().chiller.isStated = true;
  gui::ReportInput input = demoInput();
  input.solution = gui::solveAtOnce(alone);
  const QString text = squeezed(textOf(input));
  EXPECT_TRUE(text.contains(title));
  EXPECT_TRUE(text.contains(squeezed(QStringLiteral("Never close a hot vessel"))));
  // With it, at length, what all of that does to the wort.
  const gui::ShownAnswer wort =
      gui::shown(gui::telling::answerTo(gui::telling::Question::WortChanges, *input.solution,
                                        gui::readerOf(input.units), {.everyRig = true}),
                 gui::rigNamesOf(*input.solution), gui::readerOf(input.units));
  EXPECT_GT(wort.tables.first().rows.size(), 10);
  for (const auto& row : wort.tables.first().rows)
    for (const QString& cell : row.cells)
      EXPECT_TRUE(text.contains(squeezed(cell))) << cell.toStdString();
}

TEST_F(Report, TellsWhatHelpsEachRigAndOfOneAloneItsTable) {
  QString text = squeezed(textOf(demoInput()));
  const gui::telling::Question question = gui::telling::Question::HelpsMost;
  for (const QString& one : test_support::shownDemo(question, {.everyRig = true}).sentences)
    EXPECT_TRUE(text.contains(squeezed(one))) << one.toStdString();
  EXPECT_FALSE(text.contains(squeezed(QStringLiteral("nothing changed"))));

  rigs::Plan alone = solvedDemo()->plan;
  alone.rigs = {alone.rigs[1]};
  gui::ReportInput input = demoInput();
  input.solution = gui::solveAtOnce(alone);
  EXPECT_FALSE(squeezed(textOf(input)).contains(squeezed(QStringLiteral("What helps most?"))))
      << "nobody has searched";
  input.solution = gui::withWhatHelps(input.solution, 1);
  text = squeezed(textOf(input));
  EXPECT_TRUE(text.contains(squeezed(QStringLiteral("What helps most?"))));
  EXPECT_TRUE(text.contains(squeezed(QStringLiteral("nothing changed"))));
  EXPECT_TRUE(text.contains(squeezed(QStringLiteral("it would draw 16.7 A from a circuit"))));
}

TEST_F(Report, HasEveryNumberOfEveryTable) {
  const QString text = squeezed(textOf(demoInput()));
  for (const gui::telling::Question question : gui::telling::allQuestions()) {
    // Of several rigs paper has what helps each in short, and its picture.
    if (question == gui::telling::Question::HelpsMost) continue;
    // Of chilling the demo says nothing: what it does to the wort is told in short.
    if (question == gui::telling::Question::HowChills) continue;
    if (question == gui::telling::Question::WortChanges) continue;
    gui::ShownAnswer answer = test_support::shownDemo(question, {.everyRig = true});
    ASSERT_FALSE(answer.tables.isEmpty());
    // Between what each day comes to and how heat flows stand the ledgers stage by stage, which a
    // spreadsheet has and paper leaves out.
    if (question == gui::telling::Question::WhereHeat)
      answer.tables = {answer.tables.first(), answer.tables.last()};
    for (const gui::ShownTable& table : answer.tables) {
      for (const auto& row : table.rows) {
        for (const QString& cell : row.cells) {
          EXPECT_TRUE(text.contains(squeezed(cell))) << cell.toStdString();
        }
      }
    }
  }
}

// 2500 W at 120 V are 20.8 A of 15 A, 139 %: the first thing that page 1 says, before any figure.
TEST_F(Report, BeginsWithAnOverloadOnItsFirstPage) {
  rigs::Plan plan = solvedDemo()->plan;
  for (physics::Rig* rig : {&plan.rigs[1].rig, &plan.rigs[1].bare, &plan.rigs[1].jacketed})
    rig->element.rating = physics::watts(2500.0);
  gui::ReportInput input = demoInput();
  input.solution = test_support::withFewDays(gui::withWhatHelps(gui::solveAtOnce(plan), 1));
  const QString warning = squeezed(QStringLiteral(
      "▲ Overload: (b) New element, kitchen draws 20.8 A from its circuit of 15 A. Do not run it "
      "like that."));
  const QStringList first{QStringLiteral("-l"), QStringLiteral("1")};

  const QString page = squeezed(textOf(input, first));

  const qsizetype at = page.indexOf(warning);
  ASSERT_GE(at, 0) << page.toStdString();
  EXPECT_EQ(page.count(warning), 1);
  EXPECT_TRUE(page.contains(QStringLiteral("Beforeanythingelse") + warning));
  EXPECT_LT(at, page.indexOf(QStringLiteral("Takecare")));

  const QString text = squeezed(textOf(input));
  // Sentences name it with its mark; what is answered in short leaves the rest to page 1.
  const qsizetype to = text.indexOf(QStringLiteral("Whatwasputin"));
  const qsizetype from = text.indexOf(squeezed(QStringLiteral("What do time and heat do to the")));
  ASSERT_LT(at, to);
  ASSERT_LT(to, from);
  const QString inShort = text.mid(from, text.indexOf(QStringLiteral("Howsureisthis?")) - from);
  EXPECT_FALSE(inShort.isEmpty());
  EXPECT_EQ(inShort.count(warning), 0);
  EXPECT_GT(text.count(QStringLiteral("(b)Newelement,kitchen[▲overload]")), 1);
  EXPECT_FALSE(text.contains(QStringLiteral("(c)Newelement,jacketandlid[")));
  // Each question begins with it, once more; the overview stands right below it, and of chilling,
  // and so at length of the wort, this plan says nothing.
  EXPECT_EQ(text.count(warning), static_cast<qsizetype>(gui::telling::allQuestions().size()) - 2);
  // The heads of what was put in and of every question's table.
  EXPECT_GT(text.mid(to).count(QStringLiteral("▲overload(")) +
                text.mid(to).count(QStringLiteral("kitchen▲overload")),
            8);

  EXPECT_FALSE(textOf(demoInput()).contains(QChar(0x25B2)));

  gui::speak(QStringLiteral("de"));
  const QString german = squeezed(textOf(input, first));
  gui::speak(QStringLiteral("en"));
  EXPECT_TRUE(german.contains(QStringLiteral("Zuallererst▲Überlast:(b)")));
}

TEST_F(Report, CarriesThePlanUnchanged) {
  const QString path = written(demoInput());
  const QString out = folder_.filePath(QStringLiteral("back.json"));

  const Said said = run(QStringLiteral("pdfdetach"), {QStringLiteral("-save"), QStringLiteral("1"),
                                                      QStringLiteral("-o"), out, path});

  EXPECT_EQ(said.exitCode, 0);
  EXPECT_EQ(rigs::readText(out.toStdString()), rigs::demoPlanText());
}

TEST_F(Report, IsDrawnInVectorsWithItsFontsInside) {
  const QString path = written(demoInput());

  const Said images = run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path});
  const Said fonts = run(QStringLiteral("pdffonts"), {path});

  EXPECT_EQ(images.exitCode, 0);
  EXPECT_EQ(images.text.trimmed().split(u'\n').size(), 2) << images.text.toStdString();  // heads
  const QStringList lines = fonts.text.trimmed().split(u'\n').mid(2);
  EXPECT_GE(lines.size(), 1);
  for (const QString& line : lines) {
    // name, type, encoding, emb, sub, uni, object ID
    EXPECT_TRUE(line.contains(QRegularExpression(QStringLiteral("\\byes\\s+(yes|no)\\s+(yes|no)"))))
        << line.toStdString();
  }
  EXPECT_LT(QFileInfo(path).size(), 3 * 1024 * 1024);
}

TEST_F(Report, IsOnLetterPaperWithUsUnits) {
  const QString metric = run(QStringLiteral("pdfinfo"), {written(demoInput())}).text;
  const QString us =
      run(QStringLiteral("pdfinfo"), {written(demoInput(rigs::UnitSystem::UsCustomary))}).text;

  EXPECT_TRUE(metric.contains(QStringLiteral("(A4)"))) << metric.toStdString();
  EXPECT_TRUE(us.contains(QStringLiteral("(letter)"))) << us.toStdString();
}

TEST_F(Report, SpeaksGermanWithADecimalComma) {
  gui::speak(QStringLiteral("de"));
  const QString text = squeezed(textOf(demoInput()));
  const gui::ShownAnswer answer = test_support::shownDemo(gui::telling::Question::WhatCost);
  gui::speak(QStringLiteral("en"));

  EXPECT_TRUE(text.contains(QStringLiteral("Vorsicht")));
  EXPECT_TRUE(text.contains(squeezed(answer.headline())));
  EXPECT_FALSE(text.contains(QStringLiteral("Planningfigures")));
}

TEST_F(Report, SplitsWideTablesInsteadOfCuttingThem) {
  rigs::Plan plan = solvedDemo()->plan;
  auto many = std::make_shared<gui::Solution>(*solvedDemo());
  for (int i = 0; i < 7; ++i) {
    many->plan.rigs.push_back(plan.rigs[0]);
    many->answers.rigs.push_back(solvedDemo()->answers.rigs[0]);
    many->sweeps.push_back(solvedDemo()->sweeps[0]);
    many->plan.rigs.back().name = many->answers.rigs.back().name =
        "Spare kettle number " + std::to_string(i);
  }
  gui::ReportInput input = demoInput();
  input.solution = many;

  const QString text = squeezed(textOf(input));

  for (int i = 0; i < 7; ++i) {
    EXPECT_TRUE(text.contains(squeezed(QStringLiteral("Spare kettle number %1").arg(i))));
  }
}

TEST_F(Report, FailsWithASentenceWhereItMayNotWrite) {
  EXPECT_THROW(gui::writeReport("/proc/nowhere/day.pdf", demoInput()), rigs::FileError);
}

// On the way that File > Print takes, onto paper that is a file.
TEST_F(Report, PrintsToAPdfPrinter) {
  QPrinter printer;
  printer.setOutputFormat(QPrinter::PdfFormat);
  const QString path = folder_.filePath(QStringLiteral("printed.pdf"));
  printer.setOutputFileName(path);
  ASSERT_TRUE(gui::paintReport(printer, demoInput()));
  const Said said =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), path, QStringLiteral("-")});
  EXPECT_EQ(said.exitCode, 0);
  EXPECT_TRUE(squeezed(said.text).contains(squeezed(QStringLiteral("How long does it take?"))));
  EXPECT_TRUE(squeezed(said.text).contains(
      squeezed(QString::fromStdString(solvedDemo()->answers.rigs[3].name))));
  const Said info = run(QStringLiteral("pdfinfo"), {path});
  EXPECT_TRUE(QRegularExpression(QStringLiteral("Pages:\\s+([2-9]|[1-9][0-9])\\b"))
                  .match(info.text)
                  .hasMatch())
      << info.text.toStdString();
}

}  // namespace
