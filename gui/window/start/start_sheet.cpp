// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/start/start_sheet.hpp"

#include <QHBoxLayout>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include "gui/window/start/page_parts.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace gui {
namespace {

// Small enough for the smallest screen that the window itself is for.
const QSize kUsualSize{1080, 610};

QString textOf(const std::string& name) {
  const auto start = rigs::planStartTold(name);
  return start ? told(start->title) + QLatin1Char('\n') + told(start->about) : QString();
}

QScrollArea* scrolled(QWidget* page) {
  auto* area = new QScrollArea;
  area->setWidget(page);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);  // what is in it scrolls into sight by itself
  return area;
}

QListWidget* list(const QString& name, const QString& called) {
  auto* list = new QListWidget;
  list->setObjectName(name);
  list->setAccessibleName(called);
  list->setWordWrap(true);
  list->setTextElideMode(Qt::ElideNone);
  list->setResizeMode(QListView::Adjust);
  list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list->setSpacing(list->fontMetrics().height() / 4);
  return list;
}

}  // namespace

StartSheet::StartSheet(rigs::UnitSystem units, const QStringList& recent, QWidget* parent)
    : QDialog(parent), units_(units) {
  setWindowTitle(tr("A new plan"));
  auto* rows = new QVBoxLayout(this);
  ways_ = new QTabBar;
  ways_->setObjectName(QStringLiteral("start/ways"));
  ways_->setAccessibleName(tr("How to begin"));
  ways_->setDocumentMode(true);
  ways_->setExpanding(false);
  ways_->setDrawBase(false);
  ways_->setElideMode(Qt::ElideNone);
  for (const QString& way : {tr("&See an example"), tr("&My kettle"), tr("&Open")})
    ways_->addTab(way);
  rows->addWidget(ways_);
  rows->addWidget(hairline());
  pages_ = new QStackedWidget;
  kettle_ = new KettlePage(units);
  pages_->addWidget(examplesPage());
  pages_->addWidget(scrolled(kettle_));
  pages_->addWidget(openPage(recent));
  rows->addWidget(pages_, 1);

  auto* buttons = new QHBoxLayout;
  buttons->addStretch(1);
  auto* close = new QPushButton(tr("&Not now"));
  close->setObjectName(QStringLiteral("start/close"));
  close->setAutoDefault(false);
  take_ = new QPushButton;
  take_->setObjectName(QStringLiteral("start/take"));
  take_->setDefault(true);
  buttons->addWidget(close);
  buttons->addWidget(take_);
  rows->addLayout(buttons);

  connect(ways_, &QTabBar::currentChanged, this, &StartSheet::showWay);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  connect(take_, &QPushButton::clicked, this, &StartSheet::takeWay);
  connect(kettle_, &KettlePage::fineChanged, this, &StartSheet::showWay);
  setWay(Way::Kettle);
  kettle_->findChild<QLineEdit*>(QStringLiteral("start/volume"))->setFocus();
  // What is in a scroll area asks for little room: large letters take what there is.
  const QSize wanted = kUsualSize.expandedTo(
      QSize(kettle_->minimumSizeHint().width() + 30 * fontMetrics().averageCharWidth(), 0) +
      QSize(0, 26 * fontMetrics().height()));
  const QSize room = parent ? parent->size() : screen()->availableSize();
  resize(wanted.boundedTo(room));
}

StartSheet::Way StartSheet::way() const { return static_cast<Way>(ways_->currentIndex()); }

void StartSheet::setWay(Way way) {
  ways_->setCurrentIndex(static_cast<int>(way));
  showWay();
}

QLabel* StartSheet::heading(const QString& text) { return note(text, 1.0); }

QWidget* StartSheet::examplesPage() {
  auto* page = new QWidget;
  auto* rows = new QVBoxLayout(page);
  rows->addWidget(heading(tr("Each is a brew day of its own; a copy of it opens.")));
  examples_ = list(QStringLiteral("start/examples"), tr("Examples"));
  for (const std::string& name : rigs::planStartsToOffer()) {
    auto* item = new QListWidgetItem(textOf(name), examples_);
    item->setData(Qt::UserRole, QString::fromStdString(name));
  }
  examples_->setCurrentRow(0);
  rows->addWidget(examples_, 1);
  connect(examples_, &QListWidget::itemDoubleClicked, this, &StartSheet::takeWay);
  return page;
}

QWidget* StartSheet::openPage(const QStringList& recent) {
  auto* page = new QWidget;
  auto* rows = new QVBoxLayout(page);
  recent_ = list(QStringLiteral("start/recent"), tr("Plans opened before"));
  for (const QString& path : recent) {
    auto* item = new QListWidgetItem(path, recent_);
    item->setData(Qt::UserRole, path);
  }
  auto* other = new QListWidgetItem(tr("Another file …"), recent_);
  other->setData(Qt::UserRole, QString());
  recent_->setCurrentRow(0);
  rows->addWidget(heading(recent.isEmpty() ? tr("No plan was opened before.")
                                           : tr("Plans opened before, the latest first:")));
  rows->addWidget(recent_, 1);
  connect(recent_, &QListWidget::itemDoubleClicked, this, &StartSheet::takeWay);
  return page;
}

void StartSheet::showWay() {
  pages_->setCurrentIndex(ways_->currentIndex());
  switch (way()) {
    case Way::Example:
      take_->setText(tr("Open a &copy"));
      break;
    case Way::Kettle:
      take_->setText(tr("&Use this kettle"));
      break;
    case Way::Open:
      take_->setText(tr("Open &it"));
      break;
  }
  take_->setEnabled(way() != Way::Kettle || kettle_->isFine());
}

void StartSheet::takeWay() {
  switch (way()) {
    case Way::Example: {
      const std::string name =
          examples_->currentItem()->data(Qt::UserRole).toString().toStdString();
      const std::string text = rigs::planStartText(name).value_or(rigs::newPlanText());
      Q_EMIT exampleChosen(units_.base() == rigs::UnitSystem::SI ? text : rigs::inUsUnits(text));
      return;
    }
    case Way::Kettle:
      kettle_->commit();
      if (kettle_->isFine()) Q_EMIT kettleChosen(kettle_->document());
      return;
    case Way::Open:
      Q_EMIT openWanted(recent_->currentItem()->data(Qt::UserRole).toString());
      return;
  }
}

}  // namespace gui
