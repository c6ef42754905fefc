// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the table of rigs: which are seen, heads and labels that stay while it scrolls, one
// value for all rigs.
#include <QApplication>
#include <QContextMenuEvent>
#include <QMenu>
#include <QScrollBar>
#include <QSettings>
#include <QStyleOptionComboBox>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <string_view>

#include "gui/window/forms/kettle_volume.hpp"
#include "gui/window/forms/rig_columns.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/rig_family.hpp"
#include "rigs/plans/rig_variants.hpp"

namespace gui {
namespace {

constexpr int kPageEdge = 6;

FieldCell* cellAround(QWidget* inside) {
  for (QWidget* one = inside; one; one = one->parentWidget())
    if (auto* cell = qobject_cast<FieldCell*>(one)) return cell;
  return nullptr;
}

}  // namespace

const char* RigColumns::settingOfRows(ShownRows rows) {
  return rows == ShownRows::Essentials    ? "essentials"
         : rows == ShownRows::Differences ? "differences"
                                          : "all";
}

// What most people know of their kettle and ask about.
bool RigColumns::isEssential(const std::string& place) {
  static constexpr std::array<std::string_view, 12> kPlaces{
      "/element/power",  "/element/rated_voltage",  "/supply/from",
      "/supply/voltage", "/supply/current",         "/vessel/inner_diameter",
      "/vessel/volume",  "/vessel/height",          "/lid/material",
      "/lid/open/boil",  "/jacket/side/0/material", "/jacket/side/0/thickness"};
  return std::find(kPlaces.begin(), kPlaces.end(), place) != kPlaces.end();
}

// The page goes after this, and loses the focus on its way.
RigColumns::~RigColumns() { disconnect(qApp, nullptr, this, nullptr); }

// That a circuit's volts and amperes are seen.
int RigColumns::narrowestColumn() const {
  constexpr int kNarrowest = 86, kAroundText = 4;
  const int text = fontMetrics().horizontalAdvance(QStringLiteral("208 V 30 A")) + kAroundText;
  QStyleOptionComboBox option;
  const QSize whole = style()->sizeFromContents(QStyle::CT_ComboBox, &option,
                                                QSize(text, fontMetrics().height()), this);
  return std::max(kNarrowest, whole.width());
}

void RigColumns::addCorner(QGridLayout& grid) {
  corner_ = new QWidget;
  corner_->setObjectName(QStringLiteral("rig corner"));
  corner_->setAutoFillBackground(true);
  corner_->installEventFilter(this);
  auto* rows = new QVBoxLayout(corner_);
  rows->setContentsMargins(0, 0, 4, 4);
  rows->addStretch(1);
  rowChoice_ = new PlanComboBox;
  rowChoice_->setObjectName(QStringLiteral("rig rows"));
  rowChoice_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  for (int i = 0; i < 3; ++i) rowChoice_->addItem(QString(), i);
  rows->addWidget(rowChoice_);
  rows->setAlignment(rowChoice_, Qt::AlignLeft);
  nameRowChoices();
  connect(rowChoice_, &QComboBox::activated, this,
          [this](int index) { setShownRows(static_cast<ShownRows>(index)); });
  grid.addWidget(corner_, 0, 0);
}

void RigColumns::nameRowChoices() {
  rowChoice_->setItemText(0, tr("All rows"));
  rowChoice_->setItemText(1, tr("Essentials"));
  rowChoice_->setItemText(2, tr("Differences"));
  rowChoice_->setCurrentIndex(static_cast<int>(shownRows_));
  rowChoice_->setAccessibleName(tr("Rows that are shown"));
  rowChoice_->setToolTip(
      tr("All rows, the few that most people ask about, or those in which the rigs differ. Rows "
         "with a problem are always shown."));
}

void RigColumns::setShownRows(ShownRows rows) {
  shownRows_ = rows;
  rowChoice_->setCurrentIndex(static_cast<int>(rows));
  QSettings().setValue(QLatin1String(kRowsSetting), QLatin1String(settingOfRows(rows)));
  for (Section& section : sections_)
    for (Row& row : section.rows) row.pinned = false;
  showRows();
}

void RigColumns::showRows() {
  for (Section& section : sections_) setOpen(section, section.head->isChecked());
  if (widget() && widget()->layout()) widget()->layout()->activate();
  keepHeadsInSight();
}

// One rig differs from none: all its rows are seen.
bool RigColumns::isSeen(const Row& row) const {
  if (shownRows_ == ShownRows::All || row.pinned) return true;
  if (shownRows_ == ShownRows::Differences && (count_ < 2 || row.differs)) return true;
  if (shownRows_ == ShownRows::Essentials && row.essential) return true;
  const QWidget* focused = QApplication::focusWidget();
  return std::any_of(row.cells.begin(), row.cells.end(), [&](const QWidget* cell) {
    return static_cast<const FieldCell*>(cell)->hasProblem() ||
           (focused && cell->isAncestorOf(focused));
  });
}

void RigColumns::compareRigs() {
  for (Section& section : sections_) {
    for (Row& row : section.rows) {
      if (row.cells.empty()) continue;  // a document without rigs
      const auto* first = static_cast<const FieldCell*>(row.cells.front());
      row.differs = std::any_of(row.cells.begin() + 1, row.cells.end(), [&](const QWidget* cell) {
        return !first->saysAsMuchAs(*static_cast<const FieldCell*>(cell));
      });
    }
  }
  showRows();
}

// Down a rig, then down the next: who fills in a rig has its numbers at hand, not the others'.
void RigColumns::chainTabs() {
  QWidget* before = rowChoice_;
  const auto chain = [&before](QWidget* next) {
    QWidget::setTabOrder(before, next);
    before = next;
  };
  for (std::size_t rig = 0; rig < count_; ++rig) {
    for (auto* button : heads_[rig]->findChildren<QToolButton*>()) chain(button);
    chain(names_[rig]->editor());
    for (const Section& section : sections_) {
      if (rig == 0) chain(section.head);
      for (const Row& row : section.rows) chain(static_cast<FieldCell*>(row.cells[rig])->editor());
    }
  }
}

// The heads tell the columns apart and the labels the rows; they stay while the rest moves.
void RigColumns::keepHeadsInSight() {
  const auto put = [](QWidget* one, int x, int y) {
    if (one->pos() != QPoint(x, y)) one->move(x, y);
    one->raise();
  };
  const int left = horizontalScrollBar()->value() + kPageEdge;
  for (const Section& section : sections_)
    for (const Row& row : section.rows) put(row.label, left, row.label->y());
  const int top = verticalScrollBar()->value();
  for (QWidget* head : heads_) put(head, head->x(), top);
  if (corner_) put(corner_, left, top);
}

// What scrolls into view by itself may still be under the heads.
void RigColumns::keepFocusInSight(QWidget* focused) {
  if (!focused || !widget() || !widget()->isAncestorOf(focused) || heads_.empty()) return;
  for (const QWidget* head : heads_)
    if (head->isAncestorOf(focused)) return;
  if (corner_->isAncestorOf(focused)) return;
  ensureWidgetVisible(focused);
  const QPoint at = focused->mapTo(widget(), QPoint(0, 0));
  const int covered = corner_->y() + corner_->height();
  if (at.y() < covered)
    verticalScrollBar()->setValue(verticalScrollBar()->value() - (covered - at.y()) - kPageEdge);
  const int behind = corner_->x() + corner_->width();
  const bool isCell = cellAround(focused) != nullptr;
  if (isCell && at.x() < behind)
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - (behind - at.x()) - kPageEdge);
}

void RigColumns::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  showWholeNames();
  keepHeadsInSight();
}

bool RigColumns::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Move) keepHeadsInSight();  // the layout put it back
  return QScrollArea::eventFilter(watched, event);
}

FieldCell* RigColumns::focusedCell() const {
  QWidget* focused = QApplication::focusWidget();
  return focused && widget()->isAncestorOf(focused) ? cellAround(focused) : nullptr;
}

const RigColumns::Row* RigColumns::rowOf(const QWidget* inside) const {
  for (const Section& section : sections_) {
    for (const Row& row : section.rows) {
      if (row.label == inside) return &row;
      for (const QWidget* cell : row.cells)
        if (cell == inside || cell->isAncestorOf(inside)) return &row;
    }
  }
  return nullptr;
}

void RigColumns::sameForAll(const FieldCell& cell) {
  const Row* row = rowOf(&cell);
  if (!row || count_ < 2) return;
  const std::string value = cell.stated().toStdString();
  const PlanField field = cell.field();
  std::string document = document_.text();
  rigs::Problems notTold;  // what one rig has, others can have
  const auto give = [&](bool followers) {
    for (std::size_t rig = 0; rig < count_; ++rig) {
      if (row->cells[rig] == &cell || rigs::followsAnother(document, rig) != followers) continue;
      const auto origins = rigs::originsOf(document, rig, document_.folder());
      const FieldOwner owner{rig, &origins, document_.folder()};
      document = field.kind == FieldKind::KettleVolume
                     ? withKettleVolume(document, owner, value, notTold).value_or(document)
                     : withField(document, {owner, field, value});
    }
  };
  // Who is followed goes first, and last of all those that follow a follower: what they then say
  // like the other is no longer stated.
  try {
    give(false);
    give(true);
    give(true);
  } catch (const rigs::EditError&) {
    return;  // a problem beside the field tells of it
  }
  document_.change(tr("%1 the same for all rigs").arg(field.label), std::move(document));
}

void RigColumns::addRowEntries(QMenu& menu, const Row& row) {
  for (std::size_t rig = 0; rig < row.cells.size(); ++rig) {
    auto* cell = static_cast<FieldCell*>(row.cells[rig]);
    const QString value = cell->valueInWords();
    menu.addAction(value.isEmpty() ? tr("All as %1").arg(letterOf(rig))
                                   : tr("All as %1: %2").arg(letterOf(rig), value),
                   this, [this, cell = QPointer<FieldCell>(cell)] {
                     if (cell) sameForAll(*cell);
                   });
  }
}

void RigColumns::contextMenuEvent(QContextMenuEvent* event) {
  QWidget* under = widget()->childAt(widget()->mapFromGlobal(event->globalPos()));
  const Row* row = under ? rowOf(under) : nullptr;
  if (!row || count_ < 2) return QScrollArea::contextMenuEvent(event);
  QMenu menu(this);
  addRowEntries(menu, *row);
  menu.exec(event->globalPos());
}

}  // namespace gui
