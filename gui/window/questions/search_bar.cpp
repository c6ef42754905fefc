// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/search_bar.hpp"

#include <QBoxLayout>
#include <QEvent>
#include <QProgressBar>
#include <QPushButton>

namespace gui {
namespace {

constexpr qint64 kShownAfter = 1000;  // ms
constexpr int kSteps = 1000;

}  // namespace

SearchBar::SearchBar(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  bar_ = new QProgressBar(this);
  bar_->setRange(0, kSteps);
  enough_ = new QPushButton(this);
  row->addWidget(bar_);
  row->addWidget(enough_);
  connect(enough_, &QPushButton::clicked, this, &SearchBar::enough);
  relabel();
  hide();
}

void SearchBar::setProgress(qulonglong done, qulonglong of) {
  if (done == 0 || !since_.isValid()) since_.start();
  of_ = of;
  bar_->setValue(
      of > 0 ? static_cast<int>(static_cast<double>(done) / static_cast<double>(of) * kSteps) : 0);
  relabel();
  setVisible(done < of && since_.elapsed() >= kShownAfter);
}

void SearchBar::finish() {
  since_.invalidate();
  hide();
}

void SearchBar::relabel() {
  bar_->setFormat(tr("%1 ways: %p %").arg(of_));
  bar_->setAccessibleName(tr("Search for what helps most"));
  enough_->setText(tr("Show what &was found"));
  enough_->setToolTip(tr("Ends the search; what was found by now stays, marked as a part"));
}

void SearchBar::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) relabel();
  QWidget::changeEvent(event);
}

}  // namespace gui
