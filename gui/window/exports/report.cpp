// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report.hpp"

#include <QCoreApplication>
#include <QFileInfo>
#include <QPagedPaintDevice>
#include <QSet>
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/case.hpp"
#include "gui/telling/rig_words.hpp"
#include "gui/telling/sheet.hpp"
#include "gui/window/exports/pdf.hpp"
#include "gui/window/exports/report_inputs.hpp"
#include "gui/window/exports/report_pages.hpp"
#include "gui/window/questions/shown_answer.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/answers/chilling.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/written_files.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/circuit_words.hpp"
#include "version.hpp"

namespace gui {
namespace {

using telling::Question;
using telling::QuestionView;

struct ReportWords {
  Q_DECLARE_TR_FUNCTIONS(gui::Report)
};

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
      // Over its thickness both days are seen and, between them, what it saves: that is drawn, and
      // all the rest told.
      for (const bool savings : {false, true}) {
        for (const bool overThickness : {true, false}) {
          all.push_back(answer({.overThickness = overThickness, .savings = savings}));
          if (savings || !overThickness) all.back().pictures.clear();
        }
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

// Every question's views, told once.
struct Asked {
  Question question;
  QVector<ShownAnswer> views;
};

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

// Stage by stage the heat fills a spreadsheet, not a page: paper has what the days come to, when
// the heat of each rig flows, and the stages of the last one.
void leaveOutStages(QVector<ShownAnswer>& answers, const ReportInput& input) {
  for (ShownAnswer& answer : answers) {
    const bool bars = &answer == &answers.front();
    const bool last = &answer == &answers.back();
    answer.tables = bars ? answer.tables.first(1) : answer.tables.last(last ? 1 : 0);
  }
  if (answers.size() < 2 || answers.back().tables.isEmpty()) return;
  const rigs::Reader reader = readerOf(input.units);
  const telling::Case of{*input.solution, input.solution->plan, reader, {}};
  if (of.isAlone()) return;
  answers.back().tables.front().head.front() =
      QString::fromStdString(of.text(of.named(of.count() - 1)));
}

// What is said once is not said again further down, under whatever question it would stand.
class Answers {
 public:
  Answers(ReportPages& pages, const ReportInput& input) : pages_(pages), input_(input) {}

  void add(Asked asked) {
    if (asked.question == Question::WhereHeat) leaveOutStages(asked.views, input_);
    QString said;
    for (ShownAnswer& answer : asked.views) {
      answer.tables.removeIf([&](const ShownTable& one) { return tabled_.contains(one); });
      tabled_ += answer.tables;
      // What a question warns of it says once, whatever its views, and so what it answers.
      QStringList sentences = said.isEmpty() ? answer.sentences : answer.calmSentences();
      sentences.removeIf([&](const QString& one) { return said.contains(one); });
      pages_.begin(said.isEmpty() ? answer.title : QString(), sentences.join(u' '), answer);
      said += u'\n' + answer.headline();
      addFigures(answer);
    }
  }
  void addInShort(Question question) {
    const ShownAnswer answer = answerOf(question, input_, {.everyRig = true});
    pages_.heading(answer.title);
    pages_.strongParagraph(answer.calmSentences().join(QLatin1Char(' ')));
  }
  // Notes are of what stands above them.
  void addNotes(const ShownAnswer& answer) {
    QVector<ShownNote> all;
    QString below;
    for (const ShownNote& note : runIn(answer.notes)) {
      if (note.isHeading) below = note.text;
      if (!note.isHeading && isSaid(below, note.text)) continue;
      // A heading of what was all said before has nothing below it.
      if (note.isHeading && !all.isEmpty() && all.back().isHeading) all.pop_back();
      all.push_back(note);
    }
    if (!all.isEmpty() && all.back().isHeading) all.pop_back();
    pages_.notes(all);
  }

 private:
  void addFigures(const ShownAnswer& answer) {
    for (const telling::Picture& picture : answer.pictures) {
      pages_.picture(picture);
      isSaid({}, QString::fromStdString(picture.yTitle));
    }
    for (const ShownTable& table : answer.tables) pages_.table(table);
    addNotes(answer);
  }
  // What comes of a rule stands behind it, rig by rig, not below.
  static QVector<ShownNote> runIn(const QVector<ShownNote>& notes) {
    QVector<ShownNote> all;
    for (const ShownNote& note : notes) {
      if (note.ofTheOneBefore && !all.isEmpty())
        all.back().text += u' ' + note.text;
      else
        all.push_back(note);
    }
    return all;
  }
  // And is from now on.
  bool isSaid(const QString& below, const QString& text) {
    const QString whole = below + u'\n' + text;
    const bool before = noted_.contains(whole);
    noted_.insert(whole);
    return before;
  }

  ReportPages& pages_;
  const ReportInput& input_;
  QVector<ShownTable> tabled_;
  QSet<QString> noted_;
};

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
  QVector<ShownNote> all;
  for (std::size_t i = 0; i < of.count(); ++i) {
    QString text = QString::fromStdString(of.text(of.named(i))) + QStringLiteral(": ");
    for (const telling::SentencePiece& piece : telling::rigInPieces(solution.plan, i, reader))
      text += QString::fromStdString(piece.text);
    all.push_back({text});
  }
  pages.notes(all);
}

// Of every view of every question.
struct Cautions {
  QStringList ofThisPlan;  // the deferral to local codes and an electrician last
  QStringList usual;       // of any plan
};
Cautions cautionsOf(const std::vector<Asked>& all, const ReportInput& input) {
  const QString deferral = told(rigs::electricianText(), input.units);
  QStringList ofAnyPlan;
  for (const rigs::Caution& one : rigs::cautions(rigs::Plan{}, true))
    ofAnyPlan += told(one.text, input.units);
  QStringList always, further;
  for (const Asked& one : all) {
    for (const ShownAnswer& answer : one.views) {
      always += answer.cautions;
      further += answer.furtherCautions;
    }
  }
  QStringList each = always + further;
  each.removeDuplicates();
  each.removeAll(deferral);
  Cautions sorted;
  for (const QString& one : std::as_const(each))
    (ofAnyPlan.contains(one) ? sorted.usual : sorted.ofThisPlan).push_back(one);
  sorted.ofThisPlan.push_back(deferral);
  return sorted;
}

// Rigs have their names where they are introduced; the only one of a plan is known by the title.
Beside besideOf(const ReportInput& input) {
  return input.solution->plan.rigs.size() > 1 ? Beside::Never : Beside::WhereWorth;
}

// What decides, on the first page, behind what must not be run like that.
void addFront(ReportPages& pages, Answers& answers, const ReportInput& input,
              const QStringList& cautions) {
  pages.title(titleOfPlan(input));
  QStringList about{paperLook().locale.toString(dayOfDocuments(), QLocale::LongFormat),
                    QStringLiteral("Heat Ledger %1").arg(QLatin1String(kVersion))};
  if (!input.planName.isEmpty()) about += ReportWords::tr("Plan: %1").arg(input.planName);
  pages.quietParagraph(about.join(QStringLiteral(" · ")));
  const QStringList overloads = answerOf(telling::allQuestions().front(), input).warnings;
  if (!overloads.isEmpty()) pages.framed(ReportWords::tr("Before anything else"), overloads, true);
  const ShownAnswer overview =
      answerOf(Question::Overview, input, {.rig = static_cast<int>(input.rig)});
  pages.heading(overview.title);
  pages.strongParagraph(overview.calmSentences().join(QLatin1Char(' ')));
  if (!overview.tables.isEmpty()) pages.table(overview.tables.front(), besideOf(input));
  answers.addNotes(overview);
  pages.framed(ReportWords::tr("Take care"), cautions);
}

void addSheet(ReportPages& pages, const ReportInput& input) {
  const rigs::Solution& solution = *input.solution;
  if (input.rig >= solution.answers.rigs.size()) return;
  const rigs::Reader reader = readerOf(input.units);
  // Its folders are nobody's business on a sheet that hangs on a wall.
  const QString name =
      input.planName.isEmpty() ? titleOfPlan(input) : QFileInfo(input.planName).fileName();
  pages.sheet(telling::sheetOf({solution, solution.plan, reader, {}}, input.rig,
                               {.plan = rigs::Told::just(rigs::Verbatim{name.toStdString()}),
                                .but = input.changed,
                                .version = std::string(kVersion)}),
              reader);
}

void addInputs(ReportPages& pages, const ReportInput& input) {
  pages.heading(ReportWords::tr("What was put in"));
  sayRigs(pages, input);
  pages.table(dayInputs(input.solution->plan, input.units));
  pages.table(marked(rigInputs(input.solution->plan, input.units), input), besideOf(input));
}

}  // namespace

bool paintReport(QPagedPaintDevice& device, const ReportInput& input) {
  ReportPages pages(
      device, paperLook(),
      ReportWords::tr("Heat Ledger %1. Planning figures, not an installation guide: heed "
                      "the cautions on the first and the last page.")
          .arg(QLatin1String(kVersion)));
  std::vector<Asked> all;
  for (const Question question : questionsOf(input))
    all.push_back({question, answersTo(question, input)});
  Answers answers(pages, input);
  const Cautions cautions = cautionsOf(all, input);
  addFront(pages, answers, input, cautions.ofThisPlan);
  addSheet(pages, input);
  addInputs(pages, input);
  for (Asked& one : all) {
    if (isToldAtLength(one.question, input))
      answers.add(std::move(one));
    else if (one.question != Question::Overview)
      answers.addInShort(one.question);
  }
  pages.heading(ReportWords::tr("What is taken for granted"));
  pages.list(assumptions());
  pages.framed(ReportWords::tr("Take care with every brew"), cautions.usual);
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
