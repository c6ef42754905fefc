// SPDX-License-Identifier: GPL-3.0-or-later
// Does it match what I measured? Lines of readings on the left, as they are typed, pasted or
// opened; what they say of a rig of the plan on the right, anew with every change of either.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>
#include <QWidget>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/files/plan_document.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/questions/cautions_foot.hpp"
#include "gui/window/readings/column_choices.hpp"
#include "gui/window/readings/readings_work.hpp"

namespace gui {

class ReadingsWindow : public QWidget {
  Q_OBJECT

 public:
  // What is typed is kept in `folder`, by the plan it is of, until that is opened again. A window
  // of its own above `parent`.
  ReadingsWindow(PlanDocument& document, const QString& folder, QWidget* parent);
  ~ReadingsWindow() override;

  void openReadings(const QString& path);  // says why where that is not possible
  void saveReadings(const QString& path);
  bool isSettled() const;  // nothing waits to be worked out
  PlanChart& chart() { return *chart_; }
  void retranslate();

  // ms after the last key until what is typed is worked out and kept.
  static constexpr int kHandRests = 300;
  // Longer logs are for the terminal's learn, which needs no editor.
  static constexpr std::size_t kLargest = std::size_t{4} * 1024 * 1024;

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  QWidget* linesSide();
  QWidget* answerSide();
  void listRigs();
  void planChanged();
  QString draft() const;  // the file that what is typed is kept in
  void takeDraft();
  void keepDraft();
  rigs::readings::Corrections corrections() const;
  void ask();
  bool isOfToday() const;  // what is shown is of the plan and the lines as they are
  void take(const ReadingsFoundPtr& found);
  void showAnswer();
  void showProblems();
  void clearAnswer(const QString& why);
  void keepWithKettle();
  void complain(const QString& what, const QString& why);
  void chooseAndOpen();
  void chooseAndSave();

  PlanDocument& document_;
  QString folder_;
  QString planPath_;      // whose readings these are
  std::string planText_;  // as it was last
  ReadingsWork work_;
  QTimer rests_;
  ReadingsFoundPtr found_;
  bool fills_ = false;  // a draft or a file, not a hand

  QLabel* ofRig_ = nullptr;
  QComboBox* rigs_ = nullptr;
  QLabel* how_ = nullptr;
  QPlainTextEdit* lines_ = nullptr;
  ColumnChoices* columns_ = nullptr;
  QCheckBox* checked_ = nullptr;
  QCheckBox* stirred_ = nullptr;
  QCheckBox* leaveOut_ = nullptr;
  QPushButton* open_ = nullptr;
  QPushButton* save_ = nullptr;
  QPushButton* keep_ = nullptr;
  QLabel* problems_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QLabel* sentence_ = nullptr;
  PlanChart* chart_ = nullptr;
  QLabel* notes_ = nullptr;
  QVBoxLayout* tables_ = nullptr;
  QVector<AnswerTable*> shownTables_;
  CautionsFoot* foot_ = nullptr;
};

}  // namespace gui
