// SPDX-License-Identifier: GPL-3.0-or-later
// The window: the questions with their answers in short on the left, the plan's forms beside them
// where they are shown, a question's answer on the right.
#pragma once

#include <QAction>
#include <QComboBox>
#include <QHash>
#include <QLabel>
#include <QMainWindow>
#include <QPointer>
#include <QSplitter>
#include <QTimer>
#include <future>
#include <memory>
#include <optional>

#include "gui/window/banner.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/files/plan_document.hpp"
#include "gui/window/files/recovery.hpp"
#include "gui/window/forms/plan_forms.hpp"
#include "gui/window/questions/question_column.hpp"
#include "gui/window/questions/question_page.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/readings/readings_window.hpp"

namespace gui {

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  // On the bundled example, or on `plan`; if that cannot be opened, says so once it is shown.
  explicit MainWindow(const QString& plan = {},
                      const QString& recoveryFolder = Recovery::usualFolder());
  ~MainWindow() override;

  PlanDocument& document() { return document_; }
  PlanForms& forms() { return *forms_; }
  QuestionPage& page() { return *page_; }
  Banner& banner() { return *banner_; }
  Solver& solver() { return solver_; }

  // False, after telling why, if nothing was opened.
  bool openPlan(const QString& path);
  bool savePlan();
  bool savePlanAs(const QString& path);
  // What is seen, in the format of the file's ending. Numbers as JSON are written a moment later.
  void exportSeen(const QString& path);
  // Every question's tables and picture, in a new folder within this one.
  void exportAll(const QString& parent);
  void saveReport(const QString& path);
  // One rig's day on a page, as PDF or, where the name ends so, as HTML.
  void saveSheet(const QString& path, std::size_t rig);
  // What was read on a day, and what it says: a window beside this one.
  ReadingsWindow& showReadings();
  // Every key of a menu, and those of fields and tables.
  void showKeys();
  rigs::SolutionPtr reportedSolution() const;
  void setQuestion(telling::Question question);
  void setUnits(rigs::UnitSystem units);
  // The plan's forms, from now on whatever the window's width.
  void setFormsShown(bool shown);
  // Asks about plans that an earlier window lost; false where there are none.
  bool offerLeftovers();
  // Shows the ways in which a plan may begin, over this one, which stays until one is chosen.
  void offerStart();
  // Whether nothing is left to compute.
  bool isSettled() const;

  // Setting: pictures are exported black on white, whatever the window looks like.
  static constexpr const char* kOnPaper = "exports on paper";
  // ms from the first change that has no safety copy to the copy, whatever is changed meanwhile.
  static constexpr int kAutosaveDelay = 1000;

  // From this width, in ems of the font and at least in as many pixels, the forms are shown where
  // nobody has chosen; without them, from the other one on, the questions have their answers.
  static constexpr int kWideEms = 107, kWide = 1400;
  static constexpr int kNarrowEms = 77, kNarrow = 1000;

  // ms that the status line says what a step did.
  static constexpr int kToldFor = 8000;

 Q_SIGNALS:
  void answerShown();  // a solution has reached the page

 protected:
  bool event(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  // main_window.cpp
  void buildCentre();
  void onDocumentChanged();
  void onSolved(const rigs::SolutionPtr& solution);
  void onGoalDragged(double minutes);
  void onYearChanged(int batches);
  void showUnits();
  void hintAtPictures();
  void showWanted();
  void showState();
  void listQuestions();
  void fitToWidth();
  void foldQuestions();
  void retranslate();
  void restoreLayout();
  void storeLayout();
  // window_files.cpp
  QString openAtStart(const QString& path);  // why not, or ""
  bool mayLosePlan();
  bool chooseAndOpen();
  bool chooseAndSave();
  void remember(const QString& path);
  void fillRecent(QMenu& menu);
  void noteUnsaved();
  void keepCopy();
  void keepCopyAtEveryEnd();
  void askAboutFile(bool gone);
  void restore(const Leftover& leftover);
  void complain(const QString& what, const QString& why);
  void exportNumbersOrPicture(const QString& ending, const QString& filter);
  void confirmSaved(const QString& path);
  bool isOpenPlan(const QString& path);  // and says so
  void exportReport();
  void chooseAndExportAll();
  ChartLook exportLook() const;
  void print();
  // main_window_sheet.cpp
  void fillSheets(QMenu& menu);
  void exportSheet(std::size_t rig);
  // window_menus.cpp
  void buildMenus();
  void buildFileMenu();
  void buildEditMenu();
  void step(bool back);  // else again
  void buildRigMenu();
  void buildViewMenu();
  void buildHelpMenu();
  void buildAppearanceMenu(QMenu& view);
  void buildUnitsMenu(QMenu& view);
  void about();
  // main_window_help.cpp
  void helpOnFocus();
  void goToArea(int by);
  QWidget* entryOf(QWidget* area) const;

  PlanDocument document_;
  Recovery recovery_;
  Solver solver_;
  rigs::Told unsolved_;  // why the plan as it is has no answer
  Banner* banner_ = nullptr;
  QuestionColumn* questions_ = nullptr;
  QAction* showsForms_ = nullptr;
  std::optional<bool> formsChosen_;
  bool splitByHand_ = false;  // between forms and answer, now or before
  QComboBox* units_ = nullptr;
  struct UnitAction {
    rigs::UnitGroup group;
    std::size_t choice;
    QAction* action;
  };
  std::vector<UnitAction> unitActions_;
  QHash<QWidget*, QPointer<QWidget>> lastIn_;  // of each area, where the hand was
  QLabel* stale_ = nullptr;
  QSplitter* splitter_ = nullptr;
  PlanForms* forms_ = nullptr;
  QuestionPage* page_ = nullptr;
  QLabel* status_ = nullptr;
  ReadingsWindow* readings_ = nullptr;  // once it was asked for
  QTimer autosave_;
  bool closed_ = false;  // in order: nothing is left to keep
  rigs::UnitSystem shownUnits_ = rigs::UnitSystem::SI;
  int askedEdition_ = 0;
  bool busy_ = false;
  std::future<void> exporting_;
  qint64 lastDrag_ = 0;
  int drag_ = 0;
  bool hinted_ = false;
};

}  // namespace gui
