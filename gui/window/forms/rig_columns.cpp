// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/rig_columns.hpp"

#include <QApplication>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QScrollBar>
#include <QSettings>
#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <utility>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/rig_sample.hpp"
#include "gui/window/forms/rig_fields.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/plans/rig_variants.hpp"

namespace gui {
namespace {

constexpr int kLabelColumn = 0;
constexpr int kFieldEdge = 6;  // frame and margin of a line of text

// The rest is rarely touched: opened by a click or by a problem in it.
bool startsOpen(const std::string& place) {
  static constexpr std::array<std::string_view, 6> kOften{"/element/", "/supply", "/circuit",
                                                          "/vessel",   "/lid",    "/jacket"};
  return std::any_of(kOften.begin(), kOften.end(),
                     [&](std::string_view part) { return place.starts_with(part); });
}

// Where a plan says what a circuit has to carry, and what it can. The elements of one circuit add
// up.
std::vector<std::string_view> fieldsOf(const RigOverload& overload) {
  if (overload.circuit > 0)
    return {"/elements/1/power", "/second_supply/from", "/second_supply/current"};
  if (overload.ofTwo) return {"/element/power", "/supply/from", "/supply/current"};
  return {"/element/power", "/elements/1/power", "/supply/from", "/supply/current"};
}

QString settingOf(const std::string& place) {
  return QStringLiteral("rig section %1").arg(QString::fromStdString(place).replace('/', '.'));
}

}  // namespace

RigColumns::RigColumns(PlanDocument& document, QWidget* parent)
    : QScrollArea(parent), document_(document) {
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  connect(horizontalScrollBar(), &QScrollBar::valueChanged, this, &RigColumns::keepHeadsInSight);
  connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &RigColumns::keepHeadsInSight);
  connect(qApp, &QApplication::focusChanged, this,
          [this](QWidget*, QWidget* now) { keepFocusInSight(now); });
  const QString stored = QSettings().value(QLatin1String(kRowsSetting)).toString();
  for (const ShownRows rows : {ShownRows::Essentials, ShownRows::Differences})
    if (stored == QLatin1String(settingOfRows(rows))) shownRows_ = rows;
}

void RigColumns::addHead(QGridLayout& grid, std::size_t rig, const FormState& state) {
  const int column = static_cast<int>(rig) + 1;
  auto* head = new QWidget;
  head->setObjectName(QStringLiteral("rig head %1").arg(rig));
  head->setAutoFillBackground(true);
  head->installEventFilter(this);
  heads_.push_back(head);
  auto* rows = new QVBoxLayout(head);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(2);
  auto* top = new QHBoxLayout;
  const QString letter = letterOf(rig);
  if (count_ > 1) top->addWidget(new QLabel(letter));
  top->addWidget(new RigSample(static_cast<int>(letters_[rig])), 1);
  auto* menu = new QToolButton;
  menu->setText(QStringLiteral("⋯"));
  menu->setObjectName(QStringLiteral("rig menu %1").arg(rig));
  menu->setToolTip(tr("Duplicate, move or remove this rig"));
  menu->setAccessibleName(count_ > 1 ? tr("What to do with rig %1").arg(letter)
                                     : tr("What to do with this rig"));
  menu->setPopupMode(QToolButton::InstantPopup);
  menu->setAutoRaise(true);
  menu->setMenu(menuFor(rig));
  menu->menu()->setParent(menu, menu->menu()->windowFlags());
  top->addWidget(menu);
  rows->addLayout(top);
  auto* name = new FieldCell(document_,
                             {.place = "/name",
                              .label = tr("Name"),
                              .meaning = tr("What this rig is called in every answer; different "
                                            "for every rig.")},
                             rig, head);
  names_.push_back(name);
  cells_.push_back(name);
  rows->addWidget(name);
  auto* whole = new QLabel;
  whole->setObjectName(QStringLiteral("whole name %1").arg(rig));
  whole->setWordWrap(true);
  whole->setTextFormat(Qt::PlainText);
  wholeNames_.push_back(whole);
  rows->addWidget(whole);
  marks_.push_back(new OverloadMark(QStringLiteral("overload %1").arg(rig)));
  rows->addWidget(marks_.back());
  if (rig < state.originNames.size() && !state.originNames[rig].empty()) {
    auto* from = new QLabel(
        tr("from %1").arg(catalogueName(QString::fromStdString(state.originNames[rig]))));
    from->setWordWrap(true);
    from->setForegroundRole(QPalette::PlaceholderText);
    rows->addWidget(from);
  }
  rows->addStretch(1);
  grid.addWidget(head, 0, column);
}

void RigColumns::rebuild(const ListLengths& lengths, std::size_t count, const FormState& state) {
  const QWidget* focused = QApplication::focusWidget();
  const QString hadFocus = focused && isAncestorOf(focused) ? focused->objectName() : QString();
  const QPoint position(horizontalScrollBar()->value(), verticalScrollBar()->value());
  cells_.clear();
  names_.clear();
  wholeNames_.clear();
  marks_.clear();
  sections_.clear();
  heads_.clear();
  count_ = count;
  letters_ = rigs::slotsIn(document_.texts(), count);

  auto* page = new QWidget;
  auto* grid = new QGridLayout(page);
  grid->setContentsMargins(6, 4, 6, 6);
  grid->setHorizontalSpacing(4);
  grid->setVerticalSpacing(2);
  for (std::size_t rig = 0; rig < count; ++rig) {
    addHead(*grid, rig, state);
    grid->setColumnMinimumWidth(static_cast<int>(rig) + 1, narrowestColumn());
    grid->setColumnStretch(static_cast<int>(rig) + 1, 1);
  }
  addCorner(*grid);
  int row = 1;
  for (const FieldSection& section : rigSections(lengths.ofRigs)) {
    Section made;
    made.title = section.title;
    made.head = new QToolButton;
    made.head->setText(section.title);
    made.head->setCheckable(true);
    made.head->setAutoRaise(true);
    made.head->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    QFont bold = made.head->font();
    bold.setBold(true);
    made.head->setFont(bold);
    grid->addWidget(made.head, row++, kLabelColumn, 1, static_cast<int>(count) + 1, Qt::AlignLeft);
    for (const PlanField& field : section.fields) {
      Row one;
      auto* label = new QLabel(field.label);
      label->setToolTip(field.meaning);
      label->setWhatsThis(field.help);
      label->setAutoFillBackground(true);
      label->installEventFilter(this);
      one.label = label;
      label->setContentsMargins(0, 4, 4, 0);  // on a line with the text of the fields
      grid->addWidget(label, row, kLabelColumn, Qt::AlignTop);
      one.problems = new QWidget;
      auto* problems = new QVBoxLayout(one.problems);
      problems->setContentsMargins(0, 0, 0, 0);
      problems->setSpacing(0);
      grid->addWidget(one.problems, row + 1, kLabelColumn, 1, static_cast<int>(count) + 1);
      for (std::size_t rig = 0; rig < count; ++rig) {
        auto* cell = new FieldCell(document_, field, rig);
        cell->tellProblemsIn(problems, count > 1 ? letterOf(rig) : QString());
        connect(cell, &FieldCell::menuOpens, this, [this, cell](QMenu* menu) {
          if (const Row* its = rowOf(cell); its && count_ > 1) addRowEntries(*menu, *its);
        });
        cells_.push_back(cell);
        one.cells.push_back(cell);
        grid->addWidget(cell, row, static_cast<int>(rig) + 1);
      }
      one.essential = isEssential(field.place);
      made.rows.push_back(std::move(one));
      row += 2;
    }
    const std::string key = section.fields.front().place;
    made.head->setChecked(QSettings().value(settingOf(key), startsOpen(key)).toBool());
    sections_.push_back(std::move(made));
    connect(sections_.back().head, &QToolButton::toggled, this,
            [this, index = sections_.size() - 1, key](bool open) {
              QSettings().setValue(settingOf(key), open);
              setOpen(sections_[index], open);
            });
  }
  grid->setRowStretch(row, 1);
  refresh(state);
  // setWidget() would delete the old page at once, and with it the field that is just being left.
  if (QWidget* old = takeWidget()) {
    old->hide();
    old->deleteLater();
  }
  setWidget(page);
  page->layout()->activate();
  showWholeNames();
  chainTabs();
  keepHeadsInSight();
  horizontalScrollBar()->setValue(position.x());
  verticalScrollBar()->setValue(position.y());
  if (hadFocus.isEmpty()) return;
  if (auto* again = page->findChild<QWidget*>(hadFocus)) again->setFocus();
}

void RigColumns::refresh(const FormState& state) {
  for (FieldCell* cell : cells_) cell->refresh(state);
  for (std::size_t rig = 0; rig < names_.size(); ++rig) {
    const std::string own = rigNameAt(document_.texts(), rig, state.inherited[rig]);
    const QString name = QString::fromStdString(own);
    const QString owner = rigOf(names_.size(), static_cast<int>(letters_[rig]), name);
    names_[rig]->nameFor(owner);
    wholeNames_[rig]->setText(name);
    for (const Section& section : sections_) {
      for (const Row& row : section.rows) static_cast<FieldCell*>(row.cells[rig])->nameFor(owner);
    }
    markOverloads(rig, own, state);
  }
  showWholeNames();
  compareRigs();
}

void RigColumns::showOverloads(std::vector<RigOverload> overloads, const FormState& state) {
  if (overloads == overloads_) return;
  overloads_ = std::move(overloads);
  for (std::size_t rig = 0; rig < marks_.size(); ++rig)
    markOverloads(rig, rigNameAt(document_.texts(), rig, state.inherited[rig]), state);
}

void RigColumns::markOverloads(std::size_t rig, const std::string& name, const FormState& state) {
  QStringList all;
  std::map<std::string_view, QString> atField;
  for (const RigOverload& one : overloads_) {
    if (one.rig != name) continue;
    all += one.sentence;
    for (const std::string_view place : fieldsOf(one)) atField[place] = one.sentence;
  }
  marks_[rig]->setToolTip(all.join(QLatin1Char('\n')));
  marks_[rig]->setAccessibleDescription(marks_[rig]->toolTip());
  marks_[rig]->setVisible(!all.isEmpty());
  const std::string ofRig = "/rigs/" + std::to_string(rig);
  for (const Section& section : sections_) {
    for (const Row& row : section.rows) {
      auto* cell = static_cast<FieldCell*>(row.cells[rig]);
      const std::string place = cell->pointer().substr(ofRig.size());
      const auto found = atField.find(place);
      const bool stated =
          document_.texts().contains(ofRig + placeOfElement(document_.texts(), rig, place)) ||
          state.inherited[rig].contains(place);
      cell->displayOverload(found != atField.end() && stated ? found->second : QString());
    }
  }
}

void RigColumns::setOpen(Section& section, bool open) {
  section.head->setChecked(open);
  section.head->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
  for (const Row& row : section.rows) {
    const bool seen = isSeen(row) && (open || shownRows_ != ShownRows::All);
    row.label->setVisible(seen);
    row.problems->setVisible(seen);
    for (QWidget* cell : row.cells) cell->setVisible(seen);
  }
  section.head->setVisible(std::any_of(section.rows.begin(), section.rows.end(),
                                       [&](const Row& row) { return isSeen(row); }));
}

void RigColumns::showSectionOf(const FieldCell* cell) {
  for (Section& section : sections_) {
    for (Row& row : section.rows) {
      for (const QWidget* one : row.cells) {
        if (one != cell) continue;
        row.pinned = true;
        if (!section.head->isChecked()) section.head->setChecked(true);
        setOpen(section, true);
      }
    }
  }
}

// A name too long for its field stands below it once more, whole.
void RigColumns::showWholeNames() {
  for (std::size_t rig = 0; rig < names_.size(); ++rig) {
    const auto* field = static_cast<const QLineEdit*>(names_[rig]->editor());
    const int room = field->width() - 2 * kFieldEdge;
    const QString name = wholeNames_[rig]->text();
    wholeNames_[rig]->setVisible(fontMetrics().horizontalAdvance(name) > room);
  }
}

QMenu* RigColumns::menuFor(std::size_t rig) {
  auto* menu = new QMenu;
  const bool mayAdd = count_ < kMostRigs;
  const auto variant = [&](const QString& text, Variant kind) {
    QAction* action = menu->addAction(text, this, [this, rig, kind] { duplicate(rig, kind); });
    action->setEnabled(mayAdd);
  };
  variant(tr("Same, with ..."), Variant::Following);
  variant(tr("Duplicate"), Variant::Same);
  variant(tr("Duplicate with a jacket"), Variant::WithJacket);
  variant(tr("Duplicate without a jacket"), Variant::WithoutJacket);
  variant(tr("Duplicate with a lid"), Variant::WithLid);
  menu->addSeparator();
  menu->addAction(tr("Move to the left"), this, [this, rig] { move(rig, -1); })
      ->setEnabled(rig > 0);
  menu->addAction(tr("Move to the right"), this, [this, rig] { move(rig, 1); })
      ->setEnabled(rig + 1 < count_);
  menu->addSeparator();
  const bool mayRemove = count_ > kFewestRigs;
  menu->addAction(mayRemove ? tr("Remove") : tr("Remove (a plan needs at least one rig)"), this,
                  [this, rig] { remove(rig); })
      ->setEnabled(mayRemove);
  return menu;
}

void RigColumns::fillCatalogueMenu(QMenu& menu) {
  for (const rigs::GenericRig& rig : rigs::catalogue().rigs) {
    const QString name = QString::fromStdString(rig.name);
    QAction* action =
        menu.addAction(catalogueName(name), this, [this, name] { addFromCatalogue(name); });
    action->setToolTip(catalogueName(QString::fromStdString(std::string(rig.about))));
  }
  menu.setToolTipsVisible(true);
}

std::size_t RigColumns::currentRig() const {
  const QWidget* focused = QApplication::focusWidget();
  if (!focused || !isAncestorOf(focused)) return 0;
  const QString name = focused->objectName();
  if (!name.startsWith(QLatin1String("/rigs/"))) return 0;
  return static_cast<std::size_t>(name.section(QLatin1Char('/'), 2, 2).toUInt());
}

// "/element/power" of the field with the focus; "/name" where it is on none.
QString RigColumns::focusedField() const {
  const QWidget* focused = QApplication::focusWidget();
  const QString name = focused && isAncestorOf(focused) ? focused->objectName() : QString();
  if (!name.startsWith(QLatin1String("/rigs/"))) return QStringLiteral("/name");
  return QLatin1Char('/') + name.section(QLatin1Char('/'), 3);
}

// The hand stays on the rig that it moved or made.
void RigColumns::focusSameFieldOf(std::size_t rig, const QString& field) {
  auto* there = widget()->findChild<QWidget*>(QStringLiteral("/rigs/%1%2").arg(rig).arg(field));
  if (!there || !there->isVisibleTo(widget()))
    there = widget()->findChild<QWidget*>(QStringLiteral("/rigs/%1/name").arg(rig));
  if (!there) return;
  there->setFocus();
  ensureWidgetVisible(there);
}

QString RigColumns::calledInSteps(std::size_t rig) const {
  const auto inherited =
      rigs::inheritedTexts(rigs::originsOf(document_.text(), rig, document_.folder()));
  return rigOf(count_, static_cast<int>(letters_[rig]),
               QString::fromStdString(rigNameAt(document_.texts(), rig, inherited)));
}

QString RigColumns::letterOf(std::size_t rig) const {
  return letterOfRig(static_cast<int>(letters_[rig]));
}

void RigColumns::changeRigs(const QString& step, std::string document,
                            const std::vector<std::size_t>& letters) {
  document_.change(step, rigs::withSlots(std::move(document), letters));
}

void RigColumns::addFromCatalogue(const QString& name) {
  if (count_ >= kMostRigs) return;
  document_.change(tr("adding %1").arg(catalogueName(name)),
                   withCatalogueRig(document_.text(), document_.texts(), name.toStdString()));
}

void RigColumns::duplicate(std::size_t rig, Variant variant) {
  if (count_ >= kMostRigs || rig >= count_) return;
  const auto origins = rigs::originsOf(document_.text(), rig, document_.folder());
  const QString old =
      QString::fromStdString(rigNameAt(document_.texts(), rig, rigs::inheritedTexts(origins)));
  const QString name = variant == Variant::WithJacket      ? tr("%1, with a jacket").arg(old)
                       : variant == Variant::WithoutJacket ? tr("%1, without a jacket").arg(old)
                       : variant == Variant::WithLid       ? tr("%1, with a lid").arg(old)
                       : variant == Variant::Following     ? tr("%1, otherwise").arg(old)
                                                           : tr("%1, copy").arg(old);
  const QString field = focusedField();
  auto letters = letters_;
  letters.insert(letters.begin() + static_cast<std::ptrdiff_t>(rig) + 1, rigs::nextSlot(letters_));
  changeRigs(
      tr("duplicating %1").arg(calledInSteps(rig)),
      withVariant(document_.text(), document_.texts(), {rig, origins, name.toStdString(), variant}),
      letters);
  focusSameFieldOf(rig + 1, field);
}

void RigColumns::move(std::size_t rig, int by) {
  const auto to = static_cast<std::ptrdiff_t>(rig) + by;
  if (to < 0 || to >= static_cast<std::ptrdiff_t>(count_)) return;
  const QString field = focusedField();
  auto letters = letters_;
  letters.erase(letters.begin() + static_cast<std::ptrdiff_t>(rig));
  letters.insert(letters.begin() + to, letters_[rig]);
  changeRigs(tr("moving %1").arg(calledInSteps(rig)),
             rigs::withRigMoved(document_.text(), rig, static_cast<std::size_t>(to)), letters);
  focusSameFieldOf(static_cast<std::size_t>(to), field);
}

void RigColumns::remove(std::size_t rig) {
  if (count_ <= kFewestRigs) return;
  auto letters = letters_;
  letters.erase(letters.begin() + static_cast<std::ptrdiff_t>(rig));
  changeRigs(tr("removing %1").arg(calledInSteps(rig)),
             rigs::removeRig(document_.text(), rig, document_.folder()), letters);
}

}  // namespace gui
