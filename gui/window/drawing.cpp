// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/drawing.hpp"

#include <QApplication>
#include <QFontDatabase>
#include <clocale>
#include <cstdio>
#include <optional>

#include "gui/telling/answer_to.hpp"
#include "gui/window/exports/exports.hpp"
#include "gui/window/exports/report.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/window_program.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/documents/files.hpp"

namespace gui {
namespace {

// Qt's remarks about the machine are for programmers.
void onlyWhatIsFatal(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtCriticalMsg || type == QtFatalMsg)
    std::fprintf(stderr, "%s\n", text.toStdString().c_str());
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

QString planNameOf(const telling::Drawing& drawing, const rigs::Reader& reader) {
  if (!drawing.planName.empty()) return QString::fromStdString(drawing.planName);
  return QString::fromStdString(
      rigs::tell(rigs::Told(TOLD("gui::Report", "the bundled example")), reader));
}

}  // namespace

void drawFile(const telling::Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader) {
  const Canvas canvas;
  if (QFontDatabase::families().isEmpty())
    throw rigs::FileError(rigs::Told(
        TOLD("Terminal", "no font is installed to draw with; fonts-dejavu-core has one")));
  speak(QString::fromStdString(std::string(reader.language->code())));
  rigs::SolutionPtr solution = solveAtOnce(plan);
  if (drawing.question) {
    const telling::Question question = *drawing.question;
    if (question == telling::Question::HelpsMost)
      solution =
          withWhatHelps(solution, rigs::kUsualTogether, static_cast<std::size_t>(drawing.view.rig));
    if (question == telling::Question::HowSure) solution = withHowSure(solution);
    exportAnswer(drawing.to,
                 {question, drawing.view,
                  telling::answerTo(question, *solution, reader, drawing.view), solution, reader},
                 paperLook());
  } else {
    solution = withHowSure(withWhatHelps(solution, kTogetherInReports));
    writeReport(drawing.to, {.solution = solution,
                             .units = reader.units,
                             .planName = planNameOf(drawing, reader),
                             .document = QByteArray::fromStdString(drawing.document),
                             .changed = drawing.changed});
  }
}

}  // namespace gui

namespace gui::telling {

void draw(const Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader) {
  drawFile(drawing, plan, reader);
}

std::optional<int> openWindow(int argc, char** argv, const std::string& plan) {
  if (!hasPlatform()) return std::nullopt;
  return runWindow(argc, argv, plan);
}

}  // namespace gui::telling
