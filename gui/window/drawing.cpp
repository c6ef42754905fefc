// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/drawing.hpp"

#include <fmt/format.h>

#include <QApplication>
#include <QCoreApplication>
#include <QFontDatabase>
#include <charconv>
#include <clocale>
#include <filesystem>
#include <optional>

#include "gui/terminal/text_layout.hpp"
#include "gui/window/exports/exports.hpp"
#include "gui/window/exports/report.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

using telling::Question;
using telling::QuestionView;

// Qt's remarks about the machine are for programmers.
void onlyWhatIsFatal(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtCriticalMsg || type == QtFatalMsg) fmt::print(stderr, "{}\n", text.toStdString());
}

// Charts need an application object; drawn in memory, it needs no display.
class Canvas {
 public:
  Canvas() {
    if (qApp) return;
    qInstallMessageHandler(onlyWhatIsFatal);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    application_.emplace(count_, arguments_);
    std::setlocale(LC_NUMERIC, "C");  // Qt adopted the person's
  }

 private:
  int count_ = 1;
  char name_[11] = "heatledger";
  char* arguments_[2] = {name_, nullptr};
  std::optional<QApplication> application_;
};

std::string wrongOption(const std::string& option, const std::string& given,
                        const std::string& accepted) {
  return fmt::format("heatledger: {}: {} was given; {}.\n", option,
                     given.empty() ? "nothing" : rigs::quotedText(given), accepted);
}

// What is wrong is appended to `wrong`.
std::optional<Question> questionFrom(const std::string& word, std::string& wrong) {
  std::string known;
  for (const Question question : telling::allQuestions()) {
    const std::string identifier(telling::identifierOf(question));
    if (identifier == word) return question;
    known += (known.empty() ? "" : ", ") + identifier;
  }
  wrong += wrongOption("picture", word, "one of " + known + " is accepted");
  return std::nullopt;
}

QuestionView viewFrom(const Request& request, Question question, std::size_t rigs,
                      std::string& wrong) {
  QuestionView view;
  view.asBars = question == Question::WhereHeat && request.rig.empty();
  if (!request.rig.empty()) {
    const char* end = request.rig.data() + request.rig.size();
    std::size_t rig = 0;
    const auto read = std::from_chars(request.rig.data(), end, rig);
    if (read.ec != std::errc() || read.ptr != end || rig < 1 || rig > rigs) {
      wrong += wrongOption("--rig", request.rig,
                           fmt::format("a whole number from 1 to {} is accepted", rigs));
    } else {
      view.rig = static_cast<int>(rig) - 1;
    }
  }
  view.overThickness = request.over != "power";
  if (!request.over.empty() && request.over != "power" && request.over != "thickness") {
    wrong += wrongOption("--over", request.over, "thickness or power is accepted");
  }
  return view;
}

}  // namespace

Finished draw(const Request& request, const rigs::Plan& plan, const PlanText& text,
              rigs::UnitSystem units) {
  std::string wrong;
  if (!languages().contains(QString::fromStdString(request.language))) {
    wrong += wrongOption("--language", request.language, "en or de is accepted");
  }
  const std::filesystem::path path = request.to;
  const bool isReport = request.command == Command::Report;
  if (isReport && path.extension() != ".pdf") {
    wrong += wrongOption("--to", request.to, "a name that ends in .pdf is accepted");
  }
  Question question = Question::HowLong;
  QuestionView view;
  if (!isReport) {
    question = questionFrom(request.subject, wrong).value_or(question);
    view = viewFrom(request, question, plan.rigs.size(), wrong);
    if (!isExportEnding(path)) {
      wrong += wrongOption("--to", request.to,
                           "a name that ends in .svg, .png, .csv or .json is accepted");
    }
  }
  if (!wrong.empty()) return {{}, wrong, 2};

  const Canvas canvas;
  if (QFontDatabase::families().isEmpty()) {
    return {{}, "heatledger: no font is installed to draw with; fonts-dejavu-core has one.\n", 1};
  }
  speak(QString::fromStdString(request.language));
  const SolutionPtr solution = solveAtOnce(plan);
  if (isReport) {
    writeReport(path, {.solution = solution,
                       .units = units,
                       .planName = request.file.empty() ? QCoreApplication::translate(
                                                              "gui::Report", "the bundled example")
                                                        : QString::fromStdString(text.name),
                       .document = QByteArray::fromStdString(text.document)});
  } else {
    const rigs::Reader reader = readerOf(units);
    exportAnswer(path,
                 {question, telling::answerTo(question, *solution, reader, view), solution, reader},
                 paperLook());
  }
  return {fmt::format("Wrote {}.\n", plainText(request.to)), {}, 0};
}

}  // namespace gui
