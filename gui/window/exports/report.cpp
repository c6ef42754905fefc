// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report.hpp"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <algorithm>
#include <optional>
#include <utility>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/case.hpp"
#include "gui/telling/rig_words.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/exports/pdf.hpp"
#include "gui/window/exports/report_inputs.hpp"
#include "gui/window/exports/report_pages.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/written_files.hpp"
#include "rigs/results/circuit_words.hpp"
#include "version.hpp"

namespace gui {
namespace {

using telling::Question;
using telling::QuestionView;

struct ReportWords {
  Q_DECLARE_TR_FUNCTIONS(gui::Report)
};

constexpr qreal kPictureHeight = 168.0;  // points
// Below this much paper a question begins on a new page: title, sentence and first picture.
constexpr qreal kQuestionBegins = 240.0;
constexpr qreal kInputsBegin = 120.0;  // title, the rigs in sentences and a table's first rows
constexpr qreal kViewBegins = 250.0;   // another view of the same question, without a title

QString titleOfPlan(const ReportInput& input) {
  const QString title = QString::fromStdString(input.solution->plan.title);
  return title.isEmpty() ? ReportWords::tr("A brew day") : title;
}

ShownAnswer answerOf(Question question, const ReportInput& input, const QuestionView& view = {}) {
  const rigs::Reader reader = readerOf(input.units);
  return shown(telling::answerTo(question, *input.solution, reader, view),
               rigNamesOf(*input.solution), reader);
}

// Every view of a question whose pictures differ.
QVector<ShownAnswer> answersTo(Question question, const ReportInput& input) {
  const rigs::Solution& solution = *input.solution;
  const auto answer = [&](const QuestionView& view) { return answerOf(question, input, view); };
  const auto rigs = static_cast<int>(solution.plan.rigs.size());
  QVector<ShownAnswer> all;
  switch (question) {
    case Question::WhereHeat:
      all.push_back(answer({.asBars = true}));
      for (int rig = 0; rig < rigs; ++rig) all.push_back(answer({.rig = rig}));
      break;
    case Question::WorthJacket:
      for (const bool savings : {false, true}) {
        all.push_back(answer({.overThickness = true, .savings = savings}));
        all.push_back(answer({.overThickness = false, .savings = savings}));
      }
      break;
    case Question::HelpsMost:
      // Of several rigs a spreadsheet has the tables: paper has each in short, and its picture.
      all.push_back(answer({.everyRig = true}));
      for (int rig = 0; rigs > 1 && rig < rigs; ++rig)
        for (telling::Picture& picture : answer({.rig = rig}).pictures)
          all.back().pictures.push_back(std::move(picture));
      break;
    case Question::HowSure:
      // The bands of all stand in the table; one of them is drawn.
      all.push_back(answer({.everyRig = true}));
      break;
    default:
      all.push_back(answer({.everyRule = true}));
  }
  return all;
}

// All, but what helps most and how sure it is where nobody has searched for it, and how long it
// chills where the plan says nothing of that.
std::vector<Question> questionsOf(const ReportInput& input) {
  const auto& answered = input.solution->answers.rigs;
  const bool searched = std::all_of(answered.begin(), answered.end(),
                                    [](const auto& rig) { return rig.helps != nullptr; });
  const bool sure = std::all_of(answered.begin(), answered.end(),
                                [](const auto& rig) { return rig.sure != nullptr; });
  const bool chills = rigs::statesChilling(input.solution->plan);
  std::vector<Question> all;
  for (const Question question : telling::allQuestions())
    if ((searched || question != Question::HelpsMost) && (sure || question != Question::HowSure) &&
        (chills || question != Question::HowChills))
      all.push_back(question);
  return all;
}

// The overview is the first page's; its picture is one of how long it takes. What a day does to its
// wort is half of it chilling, and told in short where the plan says nothing of that.
bool isToldAtLength(Question question, const ReportInput& input) {
  if (question == Question::Overview) return false;
  return question != Question::WortChanges || rigs::statesChilling(input.solution->plan);
}

// Stage by stage the heat fills a spreadsheet, not a page: paper has what the day comes to, and
// when the heat of each rig flows.
void leaveOutStages(QVector<ShownAnswer>& answers) {
  for (ShownAnswer& answer : answers) {
    const bool bars = &answer == &answers.front();
    answer.tables = bars ? answer.tables.first(1) : answer.tables.last(1);
  }
}

void addAnswer(ReportPages& pages, Question question, const ReportInput& input) {
  QVector<ShownAnswer> answers = answersTo(question, input);
  if (question == Question::WhereHeat) leaveOutStages(answers);
  pages.keepTogether(kQuestionBegins);
  pages.heading(answers.front().title);
  QStringList said;
  QVector<QVector<ShownNote>> noted;
  QVector<ShownTable> tabled;
  for (const ShownAnswer& answer : answers) {
    if (!said.isEmpty()) pages.keepTogether(kViewBegins);
    // What a question warns of it says once, whatever its views.
    const QString inShort =
        said.isEmpty() ? answer.headline() : answer.calmSentences().join(QLatin1Char(' '));
    if (!said.contains(answer.headline())) pages.strongParagraph(inShort);
    said.push_back(answer.headline());
    for (const telling::Picture& picture : answer.pictures) pages.picture(picture, kPictureHeight);
    for (const ShownTable& table : answer.tables) {
      if (!tabled.contains(table)) pages.table(table);
      tabled.push_back(table);
    }
    if (!noted.contains(answer.notes)) pages.notes(answer.notes);
    noted.push_back(answer.notes);
  }
}

// What was put in, with what the answers say of each rig.
ShownTable marked(ShownTable table, const ReportInput& input) {
  const rigs::Reader reader = readerOf(input.units);
  const telling::Answer answer =
      telling::answerTo(telling::allQuestions().front(), *input.solution, reader, {});
  table.marks = marksOf(answer, reader);
  return table;
}

// Each rig in a sentence, behind its letter.
void sayRigs(ReportPages& pages, const ReportInput& input) {
  const rigs::Solution& solution = *input.solution;
  const rigs::Reader reader = readerOf(input.units);
  const telling::Case of{solution, solution.plan, reader, {}};
  for (std::size_t i = 0; i < of.count(); ++i) {
    QString text = QString::fromStdString(of.text(of.named(i))) + QStringLiteral(": ");
    for (const telling::SentencePiece& piece : telling::rigInPieces(solution.plan, i, reader))
      text += QString::fromStdString(piece.text);
    pages.paragraph(text);
  }
}

// Of every view of every question: the general ones, then this plan's own, and the deferral to
// local codes and an electrician last.
QStringList cautionsOf(const ReportInput& input) {
  const QString deferral = told(rigs::electricianText(), input.units);
  QStringList general, own;
  for (const Question question : questionsOf(input)) {
    for (const ShownAnswer& answer : answersTo(question, input)) {
      general += answer.cautions;
      own += answer.furtherCautions;
    }
  }
  QStringList all = general + own;
  all.removeDuplicates();
  all.removeAll(deferral);
  return all << deferral;
}

}  // namespace

bool paintReport(QPagedPaintDevice& device, const ReportInput& input) {
  const rigs::Plan& plan = input.solution->plan;
  ReportPages pages(
      device, paperLook(),
      ReportWords::tr("Heat Ledger %1. Planning figures, not an installation guide: heed "
                      "the cautions on the first pages.")
          .arg(QLatin1String(kVersion)));
  pages.title(titleOfPlan(input));
  if (!input.planName.isEmpty()) pages.paragraph(ReportWords::tr("Plan: %1").arg(input.planName));
  // No figure before what must not be run like that.
  const QStringList overloads = answerOf(telling::allQuestions().front(), input).warnings;
  if (!overloads.isEmpty()) pages.framed(ReportWords::tr("Before anything else"), overloads, true);
  // What decides, on the first page.
  const ShownAnswer overview = answerOf(Question::Overview, input);
  pages.heading(overview.title);
  pages.strongParagraph(overview.calmSentences().join(QLatin1Char(' ')));
  if (!overview.tables.isEmpty()) pages.table(overview.tables.front());
  pages.framed(ReportWords::tr("Take care"), cautionsOf(input));
  pages.heading(ReportWords::tr("The answers in short"));
  for (const Question question : questionsOf(input)) {
    if (question == Question::Overview) continue;
    const ShownAnswer answer = answerOf(question, input, {.everyRig = true});
    pages.strongParagraph(answer.title);
    pages.paragraph(answer.calmSentences().join(QLatin1Char(' ')));
  }
  pages.keepTogether(kInputsBegin);
  pages.heading(ReportWords::tr("What was put in"));
  sayRigs(pages, input);
  pages.table(dayInputs(plan, input.units));
  pages.table(marked(rigInputs(plan, input.units), input));
  for (const Question question : questionsOf(input))
    if (isToldAtLength(question, input)) addAnswer(pages, question, input);
  pages.heading(ReportWords::tr("What is taken for granted"));
  pages.list(assumptions());
  // The rest stands on the first pages, as every page's foot says.
  pages.framed(ReportWords::tr("Take care"), {told(rigs::electricianText(), input.units)});
  return pages.isFine();
}

QByteArray reportPdf(const ReportInput& input) {
  return pdfOf({.title = titleOfPlan(input),
                .mark = rigs::kOwnReportMark,
                .units = input.units,
                .plan = input.document},
               [&](QPagedPaintDevice& device) { return paintReport(device, input); });
}

void writeReport(const std::filesystem::path& path, const ReportInput& input) {
  const QByteArray bytes = reportPdf(input);
  rigs::saveText(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace gui
