// SPDX-License-Identifier: GPL-3.0-or-later
// The plan that a window edits: its text, every step back, its file. Knows no widget.
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <filesystem>
#include <memory>
#include <string>

#include "rigs/documents/problems.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_texts.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

class PlanDocument : public QObject {
  Q_OBJECT

 public:
  // Everything a step back restores. The units are the reader's and not in the file.
  struct State {
    std::string text;
    rigs::UnitSystem units = rigs::UnitSystem::SI;

    bool operator==(const State&) const = default;
  };

  explicit PlanDocument(QObject* parent = nullptr);  // the bundled example, untitled

  const std::string& text() const { return state_.text; }
  rigs::UnitSystem units() const { return state_.units; }
  int edition() const { return edition_; }  // grows with every change of the text
  const rigs::Texts& texts() const { return texts_; }
  // Of the text as it is.
  const rigs::Problems& problems() const { return problems_; }
  std::shared_ptr<const rigs::Plan> plan() const { return plan_; }  // null with errors

  QString path() const { return path_; }  // "" if never saved
  QString displayName() const;
  std::filesystem::path folder() const;  // where relative references are looked up
  bool isModified() const { return !isSaved(state_.text); }
  bool isSaved(const std::string& text) const { return text == savedText_; }
  QUndoStack& undoStack() { return stack_; }
  // Steps back that are kept; older ones are forgotten.
  static constexpr int kMostSteps = 1000;
  std::size_t bytesForSteps() const;  // that they hold in memory

  // One step. Steps with the same key, one after another, become one: typing in a field.
  void change(const QString& label, std::string text, const QString& mergeKey = {});
  void setUnits(rigs::UnitSystem units);
  void startWithUnits(rigs::UnitSystem units);  // no step: what the person had last time

  // These forget the steps back. Files that are not JSON are refused, plans with problems are
  // not. Throw rigs::FileError, one sentence for a person.
  void startAnew(std::string text);
  void open(const QString& path);
  void restore(std::string text, const QString& path);  // after a crash: counts as not saved

  void save();  // contract: has a path
  void saveAs(const QString& path);
  // Whether the file holds what it held when it was read or saved last.
  bool isFileAsKnown() const;
  void reload();    // a step like any other
  void keepMine();  // the file's new contents are known and not wanted

 Q_SIGNALS:
  void changed();      // text or units
  void beingTyped();   // in a field, which will change the text a moment later
  void fileChanged();  // path or modified
  void changedOnDisk(bool gone);

 private:
  friend class PlanStep;
  void adopt(const State& state);
  void begin(std::string text, const QString& path, std::string savedText);
  void read();
  void watch();
  void lookAtFile();

  State state_;
  std::string savedText_;
  std::string refusedText_;  // on disk, and known to differ
  QString path_;
  int edition_ = 0;
  rigs::Texts texts_;
  rigs::Problems problems_;
  std::shared_ptr<const rigs::Plan> plan_;
  QUndoStack stack_;
  QFileSystemWatcher watcher_;
};

}  // namespace gui
