// SPDX-License-Identifier: GPL-3.0-or-later
// The report's verdicts on circuits, read back from the PDF, are the terminal's: every rule with
// its arithmetic, clause and edition, for every rig.
#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/exports/report.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/results/circuit_words.hpp"
#include "tests/gui/window/solved_demo.hpp"
#include "tests/gui/window/squeezed.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::squeezed;

QString textOf(const rigs::SolutionPtr& solution, const QTemporaryDir& folder) {
  const QString path = folder.filePath(QStringLiteral("day.pdf"));
  gui::writeReport(path.toStdString(), {.solution = solution,
                                        .units = rigs::UnitSystem::SI,
                                        .planName = QStringLiteral("plan.json"),
                                        .document = {}});
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-enc"), QStringLiteral("UTF-8"),
                                              QStringLiteral("-raw"), path, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(test_support::kPatience));
  EXPECT_EQ(process.exitCode(), 0);
  QString text = QString::fromUtf8(process.readAllStandardOutput());
  // A page's foot stands within what goes on over its end.
  static const QRegularExpression kFoot(
      QStringLiteral("\\nHeat Ledger [0-9.]+\\. Planning[^\\f]*"));
  return text.remove(kFoot);
}

QString squeezed(const rigs::Told& told) {
  return squeezed(QString::fromStdString(rigs::inEnglish(told)));
}

// The part about one set of rules: from its heading, below which its first rule stands, to the next
// set's.
QString partAbout(const QString& report, const QString& rules, const QStringList& allRules) {
  const qsizetype from = report.indexOf(rules + u'·');
  if (from < 0) return {};
  qsizetype to = report.size();
  for (const QString& other : allRules) {
    const qsizetype at = report.indexOf(other + u'·');
    if (at > from) to = qMin(to, at);
  }
  return report.mid(from, to - from);
}

// Whether the rule stands there, and below it what comes of it for this rig, alone or with others.
bool isSaid(const QString& part, const rigs::Finding& finding, const QString& who) {
  const QString cite = squeezed(rigs::citeText(finding.cite));
  const QString rule = squeezed(finding.name) + (cite.isEmpty() ? QString() : u'[' + cite + u']');
  const QString told = squeezed(rigs::outcomeText(finding));
  for (const QString& below : part.split(u'·')) {
    if (!below.startsWith(rule)) continue;
    const qsizetype at = below.indexOf(told);
    if (at < 0) continue;
    // The rigs named before it, back to the sentence before.
    static const QRegularExpression kNames(
        QStringLiteral("((?:\\([a-z]\\)(?:circuit\\d)?,?)+):?$"));
    const QString names = kNames.match(below.left(at)).captured(1);
    if (names.split(u',').contains(who)) return true;
  }
  return false;
}

// What is said of each rig before the rules: from its letter and load to the next rig's.
QString saidOf(const QString& report, const rigs::SolutionPtr& solution, int rig) {
  const auto opening = [&](std::size_t i) {
    const rigs::CircuitAnswer& circuit = solution->answers.rigs[i].circuit;
    const QString letter = gui::letterOfRig(static_cast<int>(i));
    if (circuit.circuits.size() > 1) return letter + QStringLiteral("Twocircuits:first:");
    return letter +
           squeezed(QString::fromStdString(
               rigs::tell(rigs::Argument(rigs::closely(circuit.circuits.front().branch)), {}))) +
           QStringLiteral("at");
  };
  const auto at = static_cast<std::size_t>(rig);
  const qsizetype from = report.lastIndexOf(opening(at));
  if (from < 0) return {};
  const bool last = at + 1 == solution->answers.rigs.size();
  const qsizetype to = last ? report.indexOf(u'\u00b7', from) : report.lastIndexOf(opening(at + 1));
  return report.mid(from, to < from ? -1 : to - from);
}

void expectSame(const rigs::SolutionPtr& solution) {
  const QTemporaryDir folder;
  const QString report = squeezed(textOf(solution, folder));
  QStringList allRules;
  for (const rigs::RigAnswer& rig : solution->answers.rigs)
    for (const rigs::CircuitLoad& circuit : rig.circuit.circuits)
      for (const rigs::CircuitVerdict& verdict : circuit.verdicts)
        allRules += squeezed(rigs::rulesText(*verdict.rules));
  allRules.removeDuplicates();
  int compared = 0;
  for (int i = 0; i < static_cast<int>(solution->answers.rigs.size()); ++i) {
    const auto& circuits = solution->answers.rigs[static_cast<std::size_t>(i)].circuit.circuits;
    for (std::size_t k = 0; k < circuits.size(); ++k) {
      const QString who = circuits.size() > 1
                              ? QStringLiteral("%1circuit%2").arg(gui::letterOfRig(i)).arg(k + 1)
                              : gui::letterOfRig(i);
      for (const rigs::CircuitVerdict& verdict : circuits[k].verdicts) {
        const QString rules = squeezed(rigs::rulesText(*verdict.rules));
        SCOPED_TRACE((who + QStringLiteral(" by ") + rules).toStdString());
        EXPECT_TRUE(saidOf(report, solution, i).contains(squeezed(rigs::verdictText(verdict))))
            << rigs::inEnglish(rigs::verdictText(verdict)) << "\n"
            << saidOf(report, solution, i).toStdString();
        const QString part = partAbout(report, rules, allRules);
        for (const rigs::Finding& finding : verdict.findings) {
          EXPECT_TRUE(isSaid(part, finding, who))
              << rigs::inEnglish(rigs::findingText(finding)) << "\n"
              << part.toStdString();
          ++compared;
        }
      }
    }
  }
  EXPECT_GT(compared, 20);
}

TEST(ReportOnCircuits, SaysTheTerminalsVerdictsOnTheDemo) {
  expectSame(test_support::solvedDemo());
}

TEST(ReportOnCircuits, SaysThemOfTwoCircuitsWithPumpAndCords) {
  std::string document(rigs::demoPlanText());
  for (const auto& [pointer, value] : std::vector<std::pair<std::string, std::string>>{
           {"/place/region", R"("United States")"},
           {"/rigs/1/supply/outlet", R"("5-15")"},
           {"/rigs/1/cable/use", R"("building wire")"},
           {"/rigs/1/pump", R"({"power": "30 W"})"},
           {"/rigs/3/elements",
            R"([{"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
                {"power": "7 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])"},
           {"/rigs/3/wired", R"("two circuits")"}})
    document = rigs::withValue(document, pointer, value);
  rigs::Problems problems;
  const auto plan = rigs::readPlan(document, ".", problems);
  ASSERT_TRUE(plan) << inEnglish(problems.front().message);
  expectSame(gui::solveAtOnce(*plan));
}

TEST(ReportOnCircuits, CanBeSearchedForItsWords) {
  const QTemporaryDir folder;
  const QString text = textOf(test_support::solvedDemo(), folder);
  EXPECT_TRUE(text.contains(QStringLiteral("fits only if")));
  EXPECT_FALSE(text.contains(QStringLiteral("only if …")));
  // What a table's cells refer to by number stands below it.
  const QString whole = squeezed(text);
  for (const rigs::RigAnswer& rig : test_support::solvedDemo()->answers.rigs)
    for (const rigs::CircuitLoad& circuit : rig.circuit.circuits)
      for (const rigs::CircuitVerdict& verdict : circuit.verdicts)
        for (const rigs::Told& one : rigs::conditionsOf(verdict))
          EXPECT_TRUE(whole.contains(QRegularExpression(QStringLiteral("\\(\\d\\)") +
                                                        QRegularExpression::escape(squeezed(one)))))
              << rigs::inEnglish(one);
  for (const QChar ligature : QStringLiteral("\uFB00\uFB01\uFB02\uFB03")) {
    EXPECT_FALSE(text.contains(ligature));
  }
}

TEST(ReportOnCircuits, IsNoLongerThanABrewerReads) {
  const QTemporaryDir folder;
  textOf(test_support::solvedDemo(), folder);
  QProcess process;
  process.start(QStringLiteral("pdfinfo"), {folder.filePath(QStringLiteral("day.pdf"))});
  ASSERT_TRUE(process.waitForFinished(test_support::kPatience));
  const auto pages = QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)"))
                         .match(QString::fromUtf8(process.readAllStandardOutput()));
  EXPECT_LT(pages.captured(1).toInt(), 16);
  EXPECT_GT(pages.captured(1).toInt(), 5);
}

}  // namespace
