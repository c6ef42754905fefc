// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/files/plan_document.hpp"

#include <QDir>
#include <QFileInfo>
#include <QUndoCommand>

#include "gui/window/files/text_change.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace gui {

// Differences instead of whole plans, so that a long evening of edits stays small.
class PlanStep : public QUndoCommand {
 public:
  PlanStep(PlanDocument& document, const QString& label, const PlanDocument::State& after,
           const QString& mergeKey)
      : QUndoCommand(label),
        document_(document),
        change_(document.state_.text, after.text),
        unitsBefore_(document.state_.units),
        unitsAfter_(after.units),
        mergeKey_(mergeKey) {}

  void undo() override { document_.adopt({change_.undone(document_.state_.text), unitsBefore_}); }
  void redo() override { document_.adopt({change_.done(document_.state_.text), unitsAfter_}); }
  int id() const override { return mergeKey_.isEmpty() ? -1 : 1; }
  // The other one is done already.
  bool mergeWith(const QUndoCommand* other) override {
    const auto* step = dynamic_cast<const PlanStep*>(other);
    if (!step || step->mergeKey_ != mergeKey_) return false;
    const std::string& now = document_.state_.text;
    change_ = TextChange(change_.undone(step->change_.undone(now)), now);
    unitsAfter_ = step->unitsAfter_;
    setObsolete(change_.isNothing() && unitsBefore_ == unitsAfter_);
    return true;
  }
  std::size_t bytes() const {
    return sizeof *this + change_.bytes() +
           2 * static_cast<std::size_t>(text().capacity() + mergeKey_.capacity());
  }

 private:
  PlanDocument& document_;
  TextChange change_;
  rigs::UnitSystem unitsBefore_, unitsAfter_;
  QString mergeKey_;
};

namespace {

std::filesystem::path systemPath(const QString& path) {
  return std::filesystem::path(path.toStdString());
}

// Throws FileError for what no form can show.
void requireJson(const QString& path, const std::string& text) {
  try {
    static_cast<void>(rigs::textsOf(text));
    static_cast<void>(rigs::rigCount(text));
  } catch (const rigs::EditError&) {
    rigs::Problems problems;
    static_cast<void>(rigs::readPlan(text, systemPath(path).parent_path(), problems));
    const rigs::Told why = problems.empty()
                               ? rigs::Told(TOLD("Problem", "it holds no list of rigs"))
                               : problems.front().message;
    throw rigs::FileError(rigs::Told(TOLD("gui::PlanDocument", "%1 is not a plan: %2"),
                                     rigs::Verbatim{QFileInfo(path).fileName().toStdString()},
                                     why));
  }
}

}  // namespace

PlanDocument::PlanDocument(QObject* parent) : QObject(parent) {
  stack_.setUndoLimit(kMostSteps);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, this, &PlanDocument::lookAtFile);
  // A file that is replaced, as careful programs do, is no longer watched; its folder is.
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, &PlanDocument::lookAtFile);
  startAnew(rigs::newPlanText());
}

QString PlanDocument::displayName() const {
  return path_.isEmpty() ? tr("Untitled plan") : QFileInfo(path_).fileName();
}

std::filesystem::path PlanDocument::folder() const {
  return systemPath(path_.isEmpty() ? QDir::currentPath() : QFileInfo(path_).absolutePath());
}

void PlanDocument::change(const QString& label, std::string text, const QString& mergeKey) {
  if (text == state_.text) return;
  stack_.push(new PlanStep(*this, label, {std::move(text), state_.units}, mergeKey));
}

std::size_t PlanDocument::bytesForSteps() const {
  std::size_t all = 0;
  for (int i = 0; i < stack_.count(); ++i)
    all += static_cast<const PlanStep*>(stack_.command(i))->bytes();
  return all;
}

void PlanDocument::setUnits(rigs::UnitSystem units) {
  if (units == state_.units) return;
  stack_.push(new PlanStep(*this, tr("change of units"), {state_.text, units}, {}));
}

void PlanDocument::startWithUnits(rigs::UnitSystem units) {
  state_.units = units;
  Q_EMIT changed();
}

void PlanDocument::adopt(const State& state) {
  const bool sameText = state.text == state_.text;
  state_ = state;
  if (!sameText) {
    ++edition_;
    read();
  }
  Q_EMIT changed();
  if (!sameText) Q_EMIT fileChanged();
}

void PlanDocument::read() {
  texts_ = rigs::textsOf(state_.text);
  problems_.clear();
  auto plan = rigs::readPlan(state_.text, folder(), problems_);
  plan_ = plan ? std::make_shared<const rigs::Plan>(std::move(*plan)) : nullptr;
}

void PlanDocument::begin(std::string text, const QString& path, std::string savedText) {
  state_.text = std::move(text);
  savedText_ = std::move(savedText);
  refusedText_.clear();
  path_ = path;
  ++edition_;
  stack_.clear();
  read();
  watch();
  Q_EMIT changed();
  Q_EMIT fileChanged();
}

void PlanDocument::startAnew(std::string text) {
  std::string copy = text;
  begin(std::move(copy), {}, std::move(text));
}

void PlanDocument::open(const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  std::string text = rigs::readFile(systemPath(absolute));
  requireJson(absolute, text);
  rigs::removeStaleDrafts(systemPath(absolute).parent_path());
  std::string copy = text;
  begin(std::move(copy), absolute, std::move(text));
}

void PlanDocument::restore(std::string text, const QString& path) {
  requireJson(path, text);
  std::string onDisk;
  try {
    if (!path.isEmpty()) onDisk = rigs::readFile(systemPath(path));
  } catch (const rigs::FileError&) {
    // Gone since: the restored plan is the only copy, and saving writes the file again.
  }
  begin(std::move(text), path, std::move(onDisk));
}

void PlanDocument::save() { saveAs(path_); }

void PlanDocument::saveAs(const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  rigs::savePlan(systemPath(absolute), state_.text);
  const bool moved = absolute != path_;
  path_ = absolute;
  savedText_ = state_.text;
  refusedText_.clear();
  watch();
  if (moved) {  // relative references may now lead elsewhere
    ++edition_;
    read();
    Q_EMIT changed();
  }
  Q_EMIT fileChanged();
}

namespace {

// savePlan() ends a text with a line break that the text need not have.
bool sameDocument(std::string_view a, std::string_view b) {
  const auto trimmed = [](std::string_view text) {
    while (text.ends_with('\n')) text.remove_suffix(1);
    return text;
  };
  return trimmed(a) == trimmed(b);
}

}  // namespace

bool PlanDocument::isFileAsKnown() const {
  if (path_.isEmpty()) return true;
  try {
    const std::string onDisk = rigs::readFile(systemPath(path_));
    return sameDocument(onDisk, savedText_) || sameDocument(onDisk, refusedText_);
  } catch (const rigs::FileError&) {
    return !QFileInfo::exists(path_);  // nothing there that could be lost
  }
}

void PlanDocument::reload() {
  std::string text = rigs::readFile(systemPath(path_));
  requireJson(path_, text);
  savedText_ = text;
  refusedText_.clear();
  change(tr("reading the file again"), std::move(text));
  Q_EMIT fileChanged();
}

void PlanDocument::keepMine() {
  try {
    refusedText_ = rigs::readFile(systemPath(path_));
  } catch (const rigs::FileError&) {
    refusedText_.clear();
  }
}

void PlanDocument::watch() {
  if (!watcher_.files().isEmpty()) watcher_.removePaths(watcher_.files());
  if (!watcher_.directories().isEmpty()) watcher_.removePaths(watcher_.directories());
  if (path_.isEmpty()) return;
  watcher_.addPath(QFileInfo(path_).absolutePath());
  if (QFileInfo::exists(path_)) watcher_.addPath(path_);
}

void PlanDocument::lookAtFile() {
  if (path_.isEmpty()) return;
  const bool gone = !QFileInfo::exists(path_);
  if (!gone && !watcher_.files().contains(path_)) watcher_.addPath(path_);
  if (gone || !isFileAsKnown()) Q_EMIT changedOnDisk(gone);
}

}  // namespace gui
