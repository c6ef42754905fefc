// SPDX-License-Identifier: GPL-3.0-or-later
// The report's verdicts on circuits, read back from the PDF, are the terminal's: every rule with
// its arithmetic, clause and edition, for every rig.
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "gui/window/charts/chart_layout.hpp"
#include "gui/window/exports/report.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

// Without white space: lines end where the paper does.
QString squeezed(QString text) {
  static const QRegularExpression kSpace(QStringLiteral("\\s"));
  return text.remove(kSpace);
}

QString textOf(const gui::SolutionPtr& solution, const QTemporaryDir& folder) {
  const QString path = folder.filePath(QStringLiteral("day.pdf"));
  gui::writeReport(path.toStdString(), {.solution = solution,
                                        .units = rigs::UnitSystem::SI,
                                        .planName = QStringLiteral("plan.json"),
                                        .document = {}});
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-enc"), QStringLiteral("UTF-8"),
                                              QStringLiteral("-raw"), path, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(60000));
  EXPECT_EQ(process.exitCode(), 0);
  QString text = QString::fromUtf8(process.readAllStandardOutput());
  // A page's foot stands within what goes on over its end.
  static const QRegularExpression kFoot(
      QStringLiteral("\\nHeat Ledger [0-9.]+\\. Planning[^\\f]*"));
  return text.remove(kFoot);
}

QJsonArray terminalRigs(const rigs::Plan& plan) {
  const std::string text = rigs::resultJson(plan, rigs::answer(plan, rigs::Depth::Circuit));
  return QJsonDocument::fromJson(QByteArray::fromStdString(text)).object()["rigs"].toArray();
}

// The part about one set of rules: from its line to the next set's.
QString partAbout(const QString& report, const QString& rules, const QStringList& allRules) {
  const qsizetype from = report.lastIndexOf(squeezed(rules) + QLatin1Char(':'));
  if (from < 0) return {};
  qsizetype to = report.size();
  for (const QString& other : allRules) {
    const qsizetype at = report.lastIndexOf(squeezed(other) + QLatin1Char(':'));
    if (at > from) to = qMin(to, at);
  }
  return report.mid(from, to - from);
}

QString rulesOf(const QJsonObject& verdict) {
  return QStringLiteral("%1, %2 %3")
      .arg(verdict["region"].toString(), verdict["code"].toString(), verdict["edition"].toString());
}

void expectSame(const gui::SolutionPtr& solution) {
  const QTemporaryDir folder;
  const QString report = squeezed(textOf(solution, folder));
  const QJsonArray rigs = terminalRigs(solution->plan);
  QStringList allRules;
  for (const QJsonValue rig : rigs) {
    for (const QJsonValue circuit : rig["circuit"]["circuits"].toArray()) {
      for (const QJsonValue verdict : circuit["verdicts"].toArray())
        allRules += rulesOf(verdict.toObject());
    }
  }
  allRules.removeDuplicates();
  int compared = 0;
  for (int i = 0; i < rigs.size(); ++i) {
    const QJsonArray circuits = rigs[i]["circuit"]["circuits"].toArray();
    for (int k = 0; k < circuits.size(); ++k) {
      const QString who = circuits.size() > 1
                              ? QStringLiteral("%1circuit%2").arg(gui::letterOfRig(i)).arg(k + 1)
                              : gui::letterOfRig(i);
      for (const QJsonValue one : circuits[k]["verdicts"].toArray()) {
        const QJsonObject verdict = one.toObject();
        const QString part = partAbout(report, rulesOf(verdict), allRules);
        SCOPED_TRACE((who + QStringLiteral(" by ") + rulesOf(verdict)).toStdString());
        // The whole verdict: "doesnotfitwith(b),(c);fitswith(a),(d)."
        const QString all = part.left(part.indexOf(u'·'));
        QString said;
        for (const QString& each : all.section(u':', 1).split(u';')) {
          const QStringList sides = each.split(QStringLiteral("with"));
          if (sides.value(1).remove(u'.').split(u',').contains(who)) said = sides[0];
        }
        EXPECT_EQ(said.remove(u'…').toStdString(),
                  squeezed(verdict["verdict"].toString()).toStdString())
            << all.toStdString();
        for (const QJsonValue finding : verdict["findings"].toArray()) {
          const QString rule = squeezed(finding["rule"].toString());
          // The terminal's own line: "rule: arithmetic: verdict. [clause; source; status]".
          const QString text = finding["text"].toString();
          const QString told =
              squeezed(text.left(text.indexOf(QLatin1String(" [")))).mid(rule.size() + 1);
          const QString clause = squeezed(finding["cite"]["clause"].toString());
          bool found = false;
          for (const QString& below : part.split(u'·')) {
            if (!below.startsWith(rule + (clause.isEmpty() ? QString() : u'[' + clause))) continue;
            const qsizetype at = below.indexOf(told);
            if (at < 0) continue;
            // The rigs named before it, back to the sentence before.
            const QString before = below.left(at);
            static const QRegularExpression kNames(
                QStringLiteral("((?:\\([a-z]\\)(?:circuit\\d)?,?)+):$"));
            const QString names = kNames.match(before).captured(1);
            found = found || names.split(u',').contains(who);
          }
          EXPECT_TRUE(found) << text.toStdString() << "\n" << part.toStdString();
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
  for (const QChar ligature : QStringLiteral("\uFB00\uFB01\uFB02\uFB03")) {
    EXPECT_FALSE(text.contains(ligature));
  }
}

TEST(ReportOnCircuits, IsNoLongerThanABrewerReads) {
  const QTemporaryDir folder;
  textOf(test_support::solvedDemo(), folder);
  QProcess process;
  process.start(QStringLiteral("pdfinfo"), {folder.filePath(QStringLiteral("day.pdf"))});
  ASSERT_TRUE(process.waitForFinished(60000));
  const auto pages = QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)"))
                         .match(QString::fromUtf8(process.readAllStandardOutput()));
  // Four of them hold the jacket's pictures, with and without it and what it saves.
  EXPECT_LE(pages.captured(1).toInt(), 24);
  EXPECT_GT(pages.captured(1).toInt(), 5);
}

}  // namespace
