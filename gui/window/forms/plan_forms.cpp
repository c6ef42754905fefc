// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_forms.hpp"

#include <QCoreApplication>
#include <QFormLayout>
#include <QMenu>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "gui/telling/case.hpp"
#include "gui/telling/overload.hpp"
#include "gui/window/forms/field_words.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/quantities/digits.hpp"

namespace gui {
namespace {

QScrollArea* scrolling() {
  auto* area = new QScrollArea;
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  return area;
}

// Not deleted at once: this may be on behalf of a field on the old page.
void replacePage(QWidget* area, QWidget* page) {
  auto* scroll = static_cast<QScrollArea*>(area);
  if (QWidget* old = scroll->takeWidget()) {
    old->hide();
    old->deleteLater();
  }
  scroll->setWidget(page);
}

FieldCell* cellOf(const QWidget* editor) {
  return editor ? qobject_cast<FieldCell*>(editor->parentWidget()) : nullptr;
}

bool isWithin(const std::string& where, const std::string& pointer) {
  return where.starts_with(pointer) &&
         (where.size() == pointer.size() || where[pointer.size()] == '/');
}

// "/batch/mash/rests/*/time": the place in any entry of its list.
std::string withoutIndices(const std::string& where) {
  std::string made;
  bool isIndex = false;
  for (std::size_t i = 0; i < where.size(); ++i) {
    const bool isDigit = rigs::isDigit(where[i]);
    if (isDigit && (isIndex || (i > 0 && where[i - 1] == '/'))) {
      if (!isIndex) made += '*';
      isIndex = true;
      continue;
    }
    isIndex = false;
    made += where[i];
  }
  return made;
}

// A layer's thickness field is also its R.
bool isAbout(const FieldCell& cell, const std::string& where) {
  const std::string& pointer = cell.pointer();
  // Of two elements the first is told beside the fields of the one.
  if (const std::size_t at = where.find("/elements/0/"); at != std::string::npos) {
    std::string one = where;
    if (one.replace(at, 12, "/element/") == pointer) return true;
  }
  return isWithin(where, pointer) ||
         (pointer.ends_with("/thickness") && where.ends_with("/R") &&
          where.substr(0, where.size() - 2) == pointer.substr(0, pointer.size() - 10));
}

}  // namespace

PlanForms::PlanForms(PlanDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  others_ = new QLabel;
  others_->setObjectName(QStringLiteral("other problems"));
  others_->setWordWrap(true);
  others_->setTextFormat(Qt::PlainText);
  others_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  others_->setMargin(6);
  others_->hide();
  rows->addWidget(others_);
  tabs_ = new QTabWidget;
  tabs_->setDocumentMode(true);
  rigs_ = new RigColumns(document_);
  auto* batch = scrolling();
  batch_ = batch;
  auto* place = scrolling();
  place_ = place;
  tabs_->addTab(rigs_, QString());
  tabs_->addTab(batch, QString());
  tabs_->addTab(place, QString());
  auto* add = new QToolButton;
  add->setObjectName(QStringLiteral("add rig"));
  // This mode keeps the arrow beside the text instead of on it.
  add->setPopupMode(QToolButton::MenuButtonPopup);
  connect(add, &QToolButton::clicked, add, &QToolButton::showMenu);
  add->setAutoRaise(true);
  auto* menu = new QMenu(add);
  rigs_->fillCatalogueMenu(*menu);
  add->setMenu(menu);
  tabs_->setCornerWidget(add);
  rows->addWidget(tabs_);
  connect(&document_, &PlanDocument::changed, this, &PlanForms::refresh);
  retranslate();
}

void PlanForms::retranslate() {
  tabs_->setTabText(0, tr("&Rigs"));
  tabs_->setTabText(1, tr("&Batch"));
  tabs_->setTabText(2, tr("&Place and goals"));
  for (int i = 0; i < tabs_->count(); ++i)
    tabs_->widget(i)->setAccessibleName(tabs_->tabText(i).remove(QLatin1Char('&')));
  auto* add = qobject_cast<QToolButton*>(tabs_->cornerWidget());
  add->setText(tr("Add a rig"));
  add->setToolTip(tr("Add a rig from the catalogue"));
  build();
}

void PlanForms::commit() {
  // A commit may rebuild the cells: ask only the one that is being typed in.
  if (auto* line = qobject_cast<PlanLineEdit*>(focusWidget())) line->commit();
}

std::string PlanForms::textAsTyped() const {
  const FieldCell* cell = cellOf(focusWidget());
  return cell ? cell->textAsTyped() : document_.text();
}

void PlanForms::build() {
  state_ = formStateOf(document_);
  lengths_ = listLengths(document_.texts(), state_.inherited);
  rigCount_ = state_.origins.size();
  rigs_->rebuild(lengths_, rigCount_, state_);
  batchCells_.clear();
  placeCells_.clear();
  replacePage(batch_, column(batchSections(lengths_), batchCells_));
  replacePage(place_, column(placeSections(lengths_), placeCells_));
  distributeProblems();
}

QWidget* PlanForms::column(const std::vector<FieldSection>& sections,
                           std::vector<FieldCell*>& cells) {
  auto* page = new QWidget;
  auto* form = new QFormLayout(page);
  form->setContentsMargins(8, 4, 8, 8);
  form->setVerticalSpacing(3);
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  for (const FieldSection& section : sections) {
    auto* title = new QLabel(section.title);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    title->setContentsMargins(0, 8, 0, 0);
    form->addRow(title);
    for (const PlanField& field : section.fields) {
      auto* cell = new FieldCell(document_, field, std::nullopt);
      cell->nameFor({});
      cell->refresh(state_);
      auto* label = new QLabel(field.label);
      label->setToolTip(field.meaning);
      label->setWhatsThis(field.help);
      label->setBuddy(cell->editor());
      form->addRow(label, cell);
      cells.push_back(cell);
    }
  }
  return page;
}

void PlanForms::refresh() {
  const FormState state = formStateOf(document_);
  const ListLengths lengths = listLengths(document_.texts(), state.inherited);
  problemsOfTheDay_.clear();
  if (lengths != lengths_ || state.originNames != state_.originNames ||
      state.origins.size() != rigCount_ ||
      rigs::slotsIn(document_.texts(), rigCount_) != rigs_->letters()) {
    const QWidget* focused = focusWidget();
    const QString hadFocus = focused && focused->hasFocus() ? focused->objectName() : QString();
    const FieldCell* left = cellOf(focused);
    const auto visit = left && !hadFocus.isEmpty() ? left->visit() : std::nullopt;
    build();
    if (hadFocus.isEmpty()) return;
    auto* again = findChild<QWidget*>(hadFocus);
    if (!again) return;
    again->setFocus();
    if (FieldCell* cell = cellOf(again); cell && visit) cell->resume(*visit);
    return;
  }
  state_ = state;
  rigs_->refresh(state_);
  for (FieldCell* cell : batchCells_) cell->refresh(state_);
  for (FieldCell* cell : placeCells_) cell->refresh(state_);
  distributeProblems();
}

void PlanForms::setProblemsOfTheDay(const rigs::Problems& problems) {
  problemsOfTheDay_ = problems;
  distributeProblems();
}

void PlanForms::showOverloads(const rigs::SolutionPtr& solution) {
  std::vector<RigOverload> all;
  if (solution) {
    const rigs::Reader reader = readerOf(document_.units());
    const telling::Case of{*solution, solution->plan, reader, {}};
    for (const telling::Overload& one : telling::overloads(of))
      all.push_back({of.name(one.rig), one.circuit, of.rig(one.rig).circuit.circuits.size() > 1,
                     told(one.text, reader)});
  }
  rigs_->showOverloads(std::move(all), state_);
}

std::vector<FieldCell*> PlanForms::allCells() const {
  std::vector<FieldCell*> all = rigs_->cells();
  all.insert(all.end(), batchCells_.begin(), batchCells_.end());
  all.insert(all.end(), placeCells_.begin(), placeCells_.end());
  return all;
}

void PlanForms::showChanged(const rigs::Texts& before) {
  const rigs::Texts& now = document_.texts();
  const std::vector<FieldCell*> all = allCells();
  const auto isOther = [&](const std::string& place) {
    const auto was = before.find(place);
    const auto is = now.find(place);
    return (was == before.end()) != (is == now.end()) ||
           (was != before.end() && was->second != is->second);
  };
  rigs::Texts places = now;
  places.insert(before.begin(), before.end());
  for (const auto& [place, text] : places) {
    if (!isOther(place)) continue;
    const auto found = std::find_if(all.begin(), all.end(), [&, &where = place](FieldCell* cell) {
      return isAbout(*cell, where);
    });
    if (found == all.end()) continue;
    bringIntoView(*found);
    return;
  }
}

void PlanForms::bringIntoView(FieldCell* cell) {
  for (int i = 0; i < tabs_->count(); ++i) {
    auto* page = static_cast<QScrollArea*>(tabs_->widget(i));
    if (!page->isAncestorOf(cell)) continue;
    tabs_->setCurrentIndex(i);
    rigs_->showSectionOf(cell);
    // Where it will be once the section that was opened has its place.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    page->ensureWidgetVisible(cell);
  }
  cell->pointOut();
}

void PlanForms::showField(const QStringList& places) {
  const std::vector<FieldCell*> all = allCells();
  for (const QString& place : places) {
    const auto found = std::find_if(all.begin(), all.end(), [&](FieldCell* cell) {
      return isAbout(*cell, place.toStdString());
    });
    if (found == all.end()) continue;
    bringIntoView(*found);
    (*found)->editor()->setFocus(Qt::OtherFocusReason);
    return;
  }
}

void PlanForms::distributeProblems() {
  const std::vector<FieldCell*> all = allCells();
  struct Beside {
    QString text;
    bool isRemark = true;
  };
  // What is remarked alike on several entries of a list, such as equal rests: told at the first.
  struct Alike {
    FieldCell* first;
    QStringList others;
  };
  std::map<std::pair<std::string, QString>, Alike> alikes;
  std::map<FieldCell*, Beside> besides;
  const rigs::Reader reader = readerOf(document_.units());
  QStringList others;
  errors_ = 0;
  rigs::Problems problems = document_.problems();
  problems.insert(problems.end(), problemsOfTheDay_.begin(), problemsOfTheDay_.end());
  for (const rigs::Problem& problem : problems) {
    const bool isRemark = problem.severity == rigs::Severity::Warning;
    if (!isRemark) ++errors_;
    FieldCell* place = nullptr;
    for (FieldCell* cell : all) {
      if (isAbout(*cell, problem.where)) place = cell;
    }
    // About a part as a whole: beside the part's first field.
    const bool isPart = problem.where.starts_with("/rigs/")
                            ? std::count(problem.where.begin(), problem.where.end(), '/') > 2
                            : !problem.where.empty() && problem.where != "/rigs";
    for (FieldCell* cell : all) {
      if (!place && isPart && isWithin(cell->pointer(), problem.where)) place = cell;
    }
    const QString message = told(problem.message, reader);
    if (!place) {
      const QString where =
          problem.where.empty() ? tr("The plan") : QString::fromStdString(problem.where);
      others << tr("%1: %2.").arg(where, message);
      continue;
    }
    if (isRemark && !problem.where.starts_with("/rigs/")) {
      const auto [alike, isFirst] =
          alikes.try_emplace({withoutIndices(problem.where), message}, Alike{place, {}});
      if (!isFirst) {
        if (alike->second.first != place) alike->second.others += labelAt(problem.where);
        continue;
      }
    }
    Beside& one = besides[place];
    one.text += (one.text.isEmpty() ? QString() : QStringLiteral(". ")) + message;
    one.isRemark = one.isRemark && isRemark;
    rigs_->showSectionOf(place);
  }
  for (const auto& [what, alike] : alikes) {
    if (alike.others.isEmpty()) continue;
    besides[alike.first].text +=
        QStringLiteral(". ") + tr("The same at: %1").arg(alike.others.join(QStringLiteral(", ")));
  }
  for (FieldCell* cell : all) {
    const auto found = besides.find(cell);
    cell->display(found == besides.end() ? QString() : found->second.text,
                  found != besides.end() && found->second.isRemark);
  }
  others_->setText(others.join(QLatin1Char('\n')));
  others_->setVisible(!others.isEmpty());
}

}  // namespace gui
