// SPDX-License-Identifier: GPL-3.0-or-later
// How the report is laid out, read back from the PDF: what stands in front, what stands once, and
// that no heading is left alone.
#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <string>
#include <vector>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/sheet.hpp"
#include "gui/window/exports/pdf.hpp"
#include "gui/window/exports/report.hpp"
#include "gui/window/exports/report_inputs.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"
#include "tests/gui/window/solved_demo.hpp"
#include "tests/gui/window/squeezed.hpp"
#include "tests/support/patience.hpp"
#include "version.hpp"

namespace {

using gui::ShownAnswer;
using gui::telling::Question;
using test_support::solvedDemo;
using test_support::squeezed;

QString pressed(const rigs::Told& told) {
  return squeezed(QString::fromStdString(rigs::inEnglish(told)));
}

QString outputOf(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(test_support::kPatience));
  EXPECT_EQ(process.exitCode(), 0) << program.toStdString();
  return QString::fromUtf8(process.readAllStandardOutput());
}

// A bundled plan with other values of some of its keys.
gui::SolutionPtr solvedStart(const std::string& name,
                             const std::vector<std::pair<std::string, std::string>>& changes = {}) {
  std::string text = rigs::planStartText(name).value();
  for (const auto& [place, json] : changes) text = rigs::withValue(text, place, json);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(text, ".", problems);
  if (!plan) throw std::logic_error(rigs::inEnglish(problems.front().message));
  return test_support::withFewDays(gui::withWhatHelps(gui::solveAtOnce(*plan), 1));
}
// A night unplugged, sugar into the boil, and a chiller.
const gui::SolutionPtr& aNight() {
  static const gui::SolutionPtr solution = solvedStart(
      "night-unplugged",
      {{"/batch/additions",
        R"([{"what": "sugar", "mass": "0.5 kg", "extract": "100 %", "before_end": "10 min"}])"},
       {"/rigs/0/chiller", R"({"kind": "coil", "wort": "stirred"})"},
       {"/rigs/1/chiller", R"({"kind": "counterflow"})"}});
  return solution;
}
const gui::SolutionPtr& oneKettle() {
  static const gui::SolutionPtr solution = solvedStart("one-kettle");
  return solution;
}

class ReportOnPaper : public testing::Test {
 protected:
  QString written(const gui::SolutionPtr& solution, std::size_t rig = 0) {
    const QString path = folder_.filePath(QStringLiteral("day.pdf"));
    gui::writeReport(path.toStdString(), {.solution = solution,
                                          .units = rigs::UnitSystem::SI,
                                          .planName = QStringLiteral("my-plan.json"),
                                          .document = {},
                                          .rig = rig});
    return path;
  }
  // Without what stands at their foot.
  QStringList pages(const gui::SolutionPtr& solution, std::size_t rig = 0) {
    const QString text = outputOf(QStringLiteral("pdftotext"),
                                  {QStringLiteral("-enc"), QStringLiteral("UTF-8"),
                                   QStringLiteral("-raw"), written(solution, rig), kToOut});
    QStringList all = text.split(u'\f', Qt::SkipEmptyParts);
    for (QString& page : all)
      page = squeezed(page.left(page.indexOf(QStringLiteral("\nHeat Ledger 0"))));
    return all;
  }
  const QString kToOut = QStringLiteral("-");
  QTemporaryDir folder_;
};

ShownAnswer shownOf(Question question, const gui::SolutionPtr& solution,
                    const gui::telling::QuestionView& view = {}) {
  const rigs::Reader reader = gui::readerOf(rigs::UnitSystem::SI);
  return gui::shown(gui::telling::answerTo(question, *solution, reader, view),
                    gui::rigNamesOf(*solution), reader);
}
gui::telling::Sheet sheetIn(const gui::SolutionPtr& solution, std::size_t rig) {
  return gui::telling::sheetOf({*solution, solution->plan, gui::readerOf(rigs::UnitSystem::SI), {}},
                               rig,
                               {.plan = rigs::Told::just(rigs::Verbatim{"my-plan.json"}),
                                .version = std::string(gui::kVersion)});
}
// Of all pages the sheet's has this alone.
qsizetype pageOfSheet(const QStringList& pages) {
  const QString danger = squeezed(QStringLiteral("Mains current and boiling wort can kill."));
  for (qsizetype i = 0; i < pages.size(); ++i)
    if (pages[i].contains(danger)) return i;
  return -1;
}
QStringList allCautions(const gui::SolutionPtr& solution) {
  QStringList all;
  for (const Question question : gui::telling::allQuestions()) {
    if (question == Question::HowChills && !rigs::statesChilling(solution->plan)) continue;
    const ShownAnswer answer = shownOf(question, solution);
    all += answer.cautions + answer.furtherCautions;
  }
  all.removeDuplicates();
  return all;
}

TEST_F(ReportOnPaper, BeginsWithTitleDateVersionPlanAndTheFiguresThatDecide) {
  const QString first = pages(solvedDemo()).front();
  EXPECT_TRUE(first.startsWith(squeezed(QString::fromStdString(solvedDemo()->plan.title))));
  const QString date = QLocale().toString(gui::dayOfDocuments(), QLocale::LongFormat);
  EXPECT_TRUE(first.contains(squeezed(
      date +
      QStringLiteral(" · Heat Ledger %1 · Plan: my-plan.json").arg(QLatin1String(gui::kVersion)))))
      << first.left(200).toStdString();
  const ShownAnswer overview = shownOf(Question::Overview, solvedDemo());
  EXPECT_TRUE(first.contains(squeezed(overview.headline())));
  ASSERT_GT(overview.tables.front().rows.size(), 8);
  // Row by row, as the overview tells it, with what its differences are told against.
  for (const auto& row : overview.tables.front().rows)
    EXPECT_TRUE(first.contains(squeezed(row.cells.join(QString())))) << row.cells[0].toStdString();
  for (const gui::ShownNote& note : overview.notes)
    EXPECT_TRUE(first.contains(squeezed(note.text))) << note.text.toStdString();
}

TEST_F(ReportOnPaper, TellsTheOthersAgainstTheRigThatIsChosen) {
  const QStringList all = pages(solvedDemo(), 2);
  const ShownAnswer overview = shownOf(Question::Overview, solvedDemo(), {.rig = 2});
  for (const auto& row : overview.tables.front().rows)
    EXPECT_TRUE(all.front().contains(squeezed(row.cells.join(QString()))));
  EXPECT_TRUE(all.at(1).contains(pressed(sheetIn(solvedDemo(), 2).rig)));
  EXPECT_FALSE(all.at(1).contains(pressed(sheetIn(solvedDemo(), 0).rig)));
}

TEST_F(ReportOnPaper, HasTheSheetToBrewByInFrontOfAllAnswers) {
  for (const auto& solution : {solvedDemo(), oneKettle(), aNight()}) {
    const QStringList all = pages(solution);
    const qsizetype at = pageOfSheet(all);
    ASSERT_GT(at, 0);
    ASSERT_LE(at, 2);
    const gui::telling::Sheet sheet = sheetIn(solution, 0);
    for (const gui::telling::SheetLine& line : sheet.lines) {
      EXPECT_TRUE(all[at].contains(pressed(line.clock()) + pressed(line.action)))
          << rigs::inEnglish(line.action);
      for (const rigs::Told& one : line.expected) EXPECT_TRUE(all[at].contains(pressed(one)));
    }
    for (const rigs::Told& one : sheet.cautions)
      EXPECT_TRUE(all[at].contains(pressed(one))) << rigs::inEnglish(one);
    // Alone on its page, and nothing but the first page's matter before it.
    const QString howLong = squeezed(shownOf(Question::HowLong, solution).headline());
    for (qsizetype i = 0; i <= at; ++i) EXPECT_FALSE(all[i].contains(howLong));
    EXPECT_TRUE(all[at + 1].startsWith(QStringLiteral("Whatwasputin")));
  }
}

// None is dropped or shortened, and none told twice; the sheet, which may be taken away, has its
// own.
TEST_F(ReportOnPaper, TellsEveryCautionOnceThoseOfThisPlanInFront) {
  QStringList usual;
  for (const rigs::Caution& one : rigs::cautions(rigs::Plan{}, true))
    usual += QString::fromStdString(rigs::inEnglish(one.text));
  for (const auto& solution : {solvedDemo(), oneKettle(), aNight()}) {
    const QStringList all = pages(solution);
    const qsizetype sheet = pageOfSheet(all);
    const QString front = all.mid(0, sheet).join(QString());
    const QString behind = all.mid(sheet + 1).join(QString());
    const QStringList cautions = allCautions(solution);
    ASSERT_GT(cautions.size(), 15);
    int inFront = 0;
    for (const QString& one : cautions) {
      SCOPED_TRACE(one.toStdString());
      EXPECT_EQ((front + behind).count(squeezed(one)), 1);
      if (usual.contains(one)) continue;
      EXPECT_TRUE(front.contains(squeezed(one)));
      ++inFront;
    }
    EXPECT_GT(inFront, 8);
    EXPECT_TRUE(front.endsWith(pressed(rigs::electricianText())));
    EXPECT_GT(all.back().count(squeezed(usual.at(1))), 0) << "on the last page, as the foot says";
  }
  const QStringList all = pages(aNight());
  for (const char* own : {"in this plan it is that for", "Sugar, or anything cold"})
    EXPECT_TRUE(all.front().contains(squeezed(QString::fromUtf8(own)))) << own;
}

TEST_F(ReportOnPaper, IsShortInEnglishAndInGerman) {
  const auto pagesIn = [&](const char* language) {
    gui::speak(QString::fromUtf8(language));
    const auto count = pages(solvedDemo()).size();
    gui::speak(QStringLiteral("en"));
    return count;
  };
  EXPECT_LT(pagesIn("en"), 16);
  EXPECT_LE(pagesIn("de"), 17);
  EXPECT_LT(pages(oneKettle()).size(), 12);
}

// --- Where lines stand.

struct PaperLine {
  double left = 0.0, right = 0.0, top = 0.0;
  QString text;
};
using PaperPage = std::vector<PaperLine>;

std::vector<PaperPage> linesByPage(const QString& path) {
  static const QRegularExpression kPiece(QStringLiteral(
      "<page |<line xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\"|>([^<]+)</word>"));
  const QString text = outputOf(QStringLiteral("pdftotext"),
                                {QStringLiteral("-bbox-layout"), path, QStringLiteral("-")});
  std::vector<PaperPage> pages;
  for (auto at = kPiece.globalMatch(text); at.hasNext();) {
    const QRegularExpressionMatch piece = at.next();
    if (piece.captured(0).startsWith(QLatin1String("<page")))
      pages.emplace_back();
    else if (!piece.captured(1).isEmpty())
      pages.back().push_back({piece.captured(1).toDouble(), piece.captured(3).toDouble(),
                              piece.captured(2).toDouble(), QString()});
    else
      pages.back().back().text +=
          squeezed(piece.captured(4)
                       .replace(QLatin1String("&amp;"), QLatin1String("&"))
                       .replace(QLatin1String("&quot;"), QLatin1String("\"")));
  }
  return pages;
}

// But those that stand in pictures, too: rigs' names, and what a bar has for its part.
QStringList headingsOf(const gui::SolutionPtr& solution) {
  QStringList all{QStringLiteral("What was put in"), QStringLiteral("What is taken for granted")};
  QStringList drawn;
  for (const Question question : gui::telling::allQuestions()) {
    const ShownAnswer answer = shownOf(question, solution, {.everyRule = true, .everyRig = true});
    all += answer.title;
    for (const gui::ShownNote& note : answer.notes)
      if (note.isHeading) all += note.text;
    for (const gui::ShownTable& table : answer.tables)
      for (const auto& row : table.rows)
        if (row.isHeading) all += row.cells[0];
    for (const gui::telling::Picture& picture : answer.pictures)
      for (const std::string& part : picture.partNames) drawn += QString::fromStdString(part);
  }
  all.removeIf([&](const QString& one) { return one.startsWith(u'(') || drawn.contains(one); });
  for (QString& one : all) one = squeezed(one);
  return all;
}

TEST_F(ReportOnPaper, LeavesNoHeadingAloneAtAColumnsFoot) {
  int found = 0;
  for (const auto& solution : {solvedDemo(), oneKettle(), aNight()}) {
    const QStringList headings = headingsOf(solution);
    const std::vector<PaperPage> pages = linesByPage(written(solution));
    for (std::size_t page = 0; page < pages.size(); ++page) {
      for (const PaperLine& line : pages[page]) {
        if (!headings.contains(line.text)) continue;
        ++found;
        const bool holds =
            std::any_of(pages[page].begin(), pages[page].end(), [&](const PaperLine& below) {
              return below.top > line.top + 4.0 && below.top < line.top + 40.0 &&
                     below.left < line.right && below.right > line.left &&
                     !below.text.startsWith(QLatin1String("HeatLedger0"));
            });
        EXPECT_TRUE(holds) << line.text.toStdString() << " on page " << page + 1;
      }
    }
  }
  EXPECT_GT(found, 100);
}

}  // namespace
