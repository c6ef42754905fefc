// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_options.hpp"

#include <QBoxLayout>
#include <QCheckBox>
#include <QCoreApplication>
#include <QFontInfo>
#include <QGridLayout>
#include <QIcon>
#include <QLabel>
#include <QPainter>
#include <QPixmap>
#include <QSignalBlocker>
#include <algorithm>

#include "gui/telling/helps.hpp"
#include "gui/telling/words.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/rig_swatch.hpp"
#include "gui/window/forms/quantity_field.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {

using telling::Question;
using telling::QuestionView;

namespace {

constexpr QSize kSwatch(30, 12);
constexpr int kRoomForWords = 45;  // ems
constexpr int kBoxesInARow = 4;    // more would press the forms beside the page

QStringList kindsOf(Question question) {
  switch (question) {
    case Question::WhereHeat:
      return {QCoreApplication::translate("QuestionPage", "energy of the day, all rigs"),
              QCoreApplication::translate("QuestionPage", "power over time, one rig")};
    case Question::WhichElement:
      return {QCoreApplication::translate("QuestionPage", "power written on the element"),
              QCoreApplication::translate("QuestionPage", "power at the supply's voltage")};
    default:
      return {QCoreApplication::translate("QuestionPage", "thickness of the insulation"),
              QCoreApplication::translate("QuestionPage", "power of the element")};
  }
}

QStringList whatIsShown(Question question) {
  if (question == Question::HowFarCools)
    return {QCoreApplication::translate("QuestionPage", "each kettle as it is"),
            QCoreApplication::translate("QuestionPage", "and with a jacket supposed, or bare")};
  return {QCoreApplication::translate("QuestionPage", "with a jacket and without"),
          QCoreApplication::translate("QuestionPage", "what a jacket saves")};
}

bool supposesOne(const rigs::SolutionPtr& solution) {
  if (!solution) return false;
  const auto& all = solution->answers.rigs;
  return std::any_of(all.begin(), all.end(), [](const rigs::RigAnswer& rig) {
    return rig.night && rig.night->supposed.has_value();
  });
}

bool hasKinds(Question question) {
  return question == Question::WhereHeat || question == Question::WorthJacket ||
         question == Question::WhichElement;
}

bool isFirstKind(Question question, const QuestionView& view) {
  if (question == Question::WhereHeat) return view.asBars;
  return question == Question::WhichElement ? view.asWritten : view.overThickness;
}

QStringList wishes() {
  QStringList all{QCoreApplication::translate("QuestionPage", "what it lacks most")};
  for (const rigs::Wish wish : rigs::kWishes) all += told(telling::wishWords(wish));
  return all;
}

QStringList namesOf(const rigs::SolutionPtr& solution) {
  QStringList names;
  if (!solution) return names;
  const auto& all = solution->answers.rigs;
  const auto letters = rigs::slotsOf(solution->plan.rigs);
  for (std::size_t i = 0; i < all.size(); ++i)
    names += rigOf(all.size(), static_cast<int>(letters[i]), QString::fromStdString(all[i].name));
  return names;
}

}  // namespace

struct QuestionOptions::Parts {
  Question question = Question::HowLong;
  QuestionView view;
  QLabel *savingsLabel, *rigLabel, *kindLabel, *batchesLabel, *wishLabel;
  PlanComboBox *savings, *rig, *kind, *wish;
  PlanSpinBox* batches;
  QLabel* drawnLabel;
  QGridLayout* drawnGrid;
  std::vector<QCheckBox*> drawn;  // of each rig

  QuestionView chosen() const;
  void nameRigs(const QStringList& names);
  void offerDrawn(QuestionOptions& page, const rigs::SolutionPtr& solution, bool offered);
};

QuestionOptions::QuestionOptions(QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>()) {
  Parts& p = *parts_;
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  auto* row = new QHBoxLayout;
  rows->addLayout(row);
  const auto add = [&](QLabel*& label, QWidget* field) {
    label = new QLabel(this);
    label->setBuddy(field);
    row->addWidget(label);
    row->addWidget(field);
  };
  add(p.kindLabel, p.kind = new PlanComboBox(this));
  add(p.savingsLabel, p.savings = new PlanComboBox(this));
  add(p.wishLabel, p.wish = new PlanComboBox(this));
  add(p.rigLabel, p.rig = new PlanComboBox(this));
  add(p.batchesLabel, p.batches = new PlanSpinBox(this));
  p.drawnLabel = new QLabel(this);
  p.drawnGrid = new QGridLayout;
  p.drawnGrid->addWidget(p.drawnLabel, 0, 0);
  p.drawnGrid->setColumnStretch(kBoxesInARow + 1, 1);
  rows->addLayout(p.drawnGrid);
  p.batches->setRange(1, 1000);
  for (PlanComboBox* box : {p.kind, p.savings, p.rig, p.wish}) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(box, &QComboBox::activated, this, [this] { Q_EMIT viewChosen(parts_->chosen()); });
  }
  connect(p.batches, &QSpinBox::valueChanged, this, &QuestionOptions::yearChosen);
  row->addStretch(1);
}
QuestionOptions::~QuestionOptions() = default;

// Beside four boxes there is no room for many words in a narrow window.
void QuestionOptions::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  parts_->drawnLabel->setWordWrap(width() < kRoomForWords * QFontInfo(font()).pixelSize());
}

QuestionView QuestionOptions::Parts::chosen() const {
  const bool first = kind->currentIndex() == 0;
  QuestionView changed = view;
  changed.rig = std::max(0, rig->currentIndex());
  if (question == Question::Overview) {
    changed.undrawn.clear();
    for (const QCheckBox* one : drawn)
      if (!one->isChecked()) changed.undrawn.push_back(one->toolTip().toStdString());
  }
  if (question == Question::WhereHeat) changed.asBars = first;
  if (question == Question::WorthJacket) {
    changed.overThickness = first;
    changed.savings = savings->currentIndex() == 1;
  }
  if (question == Question::WhichElement) changed.asWritten = first;
  if (question == Question::HowFarCools) changed.supposed = savings->currentIndex() == 1;
  if (question == Question::HelpsMost) {
    const int chosen = wish->currentIndex() - 1;  // the first leaves it to the rig
    changed.wish.reset();
    if (chosen >= 0) changed.wish = rigs::kWishes[static_cast<std::size_t>(chosen)];
  }
  return changed;
}

void QuestionOptions::Parts::nameRigs(const QStringList& names) {
  QStringList before;
  for (int i = 0; i < rig->count(); ++i) before += rig->itemText(i);
  if (before == names) return;
  rig->clear();
  rig->addItems(names);
}

// A box a rig, with its swatch: those that are drawn in every picture.
void QuestionOptions::Parts::offerDrawn(QuestionOptions& page, const rigs::SolutionPtr& solution,
                                        bool offered) {
  const std::size_t count = offered && solution ? solution->plan.rigs.size() : 0;
  while (drawn.size() > count) {
    delete drawn.back();
    drawn.pop_back();
  }
  while (drawn.size() < count) {
    drawn.push_back(new QCheckBox(&page));
    connect(drawn.back(), &QCheckBox::toggled, &page,
            [this, &page] { Q_EMIT page.viewChosen(chosen()); });
    const int at = static_cast<int>(drawn.size()) - 1;
    drawnGrid->addWidget(drawn.back(), at / kBoxesInARow, 1 + at % kBoxesInARow);
  }
  drawnLabel->setVisible(count > 0);
  if (count == 0) return;
  const std::vector<std::size_t> letters = rigs::slotsOf(solution->plan.rigs);
  const ChartLook look = lookOf(page.palette(), page.font());
  for (std::size_t i = 0; i < count; ++i) {
    const QSignalBlocker quiet(drawn[i]);
    const QString name = QString::fromStdString(solution->plan.rigs[i].name);
    const int slot = static_cast<int>(letters[i]);
    QPixmap swatch(kSwatch);
    swatch.fill(Qt::transparent);
    QPainter painter(&swatch);
    drawRigSwatch(painter, slot, QRectF(swatch.rect()), look);
    painter.end();
    drawn[i]->setIcon(QIcon(swatch));
    drawn[i]->setIconSize(kSwatch);
    drawn[i]->setText(letterOfRig(slot));
    drawn[i]->setToolTip(name);
    drawn[i]->setAccessibleName(
        QCoreApplication::translate("QuestionPage", "Drawn: %1").arg(rigOf(count, slot, name)));
    drawn[i]->setChecked(std::find(view.undrawn.begin(), view.undrawn.end(), name.toStdString()) ==
                         view.undrawn.end());
  }
}

void QuestionOptions::relabel(Question question) {
  Parts& p = *parts_;
  p.rigLabel->setText(question == Question::Overview
                          ? QCoreApplication::translate("QuestionPage", "Compared &with")
                          : QCoreApplication::translate("QuestionPage", "Ri&g"));
  p.drawnLabel->setText(QCoreApplication::translate("QuestionPage", "Drawn in every picture:"));
  p.batchesLabel->setText(QCoreApplication::translate("QuestionPage", "Batches a &year"));
  p.savingsLabel->setText(QCoreApplication::translate("QuestionPage", "&Show"));
  p.kindLabel->setText(question == Question::WhereHeat
                           ? QCoreApplication::translate("QuestionPage", "&Show")
                           : QCoreApplication::translate("QuestionPage", "&Against"));
  p.wishLabel->setText(QCoreApplication::translate("QuestionPage", "&Wish"));
  for (QLabel* label : {p.rigLabel, p.batchesLabel, p.savingsLabel, p.kindLabel, p.wishLabel})
    label->buddy()->setAccessibleName(label->text().remove(QLatin1Char('&')));
  const QSignalBlocker quietKind(p.kind);
  const QSignalBlocker quietSavings(p.savings);
  const QSignalBlocker quietWish(p.wish);
  p.wish->clear();
  p.wish->addItems(wishes());
  p.kind->clear();
  p.kind->addItems(kindsOf(question));
  p.savings->clear();
  p.savings->addItems(whatIsShown(question));
}

void QuestionOptions::show(Question question, const QuestionView& view,
                           const rigs::SolutionPtr& solution) {
  Parts& p = *parts_;
  p.question = question;
  p.view = view;
  const bool kinds = hasKinds(question);
  // Bars show every rig and so do their sentences; where there is one, nothing is chosen.
  const bool alone = solution && solution->answers.rigs.size() == 1;
  const bool helps = question == Question::HelpsMost;
  const bool oneRig =
      (question == Question::Overview || (question == Question::WhereHeat && !view.asBars) ||
       question == Question::HowSure || helps) &&
      !alone;
  const bool jacket = question == Question::WorthJacket ||
                      (question == Question::HowFarCools && supposesOne(solution));
  const bool cost = question == Question::WhatCost && solution && solution->plan.tariff.isStated();
  for (QWidget* widget : {static_cast<QWidget*>(p.kindLabel), static_cast<QWidget*>(p.kind)})
    widget->setVisible(kinds);
  for (QWidget* widget : {static_cast<QWidget*>(p.savingsLabel), static_cast<QWidget*>(p.savings)})
    widget->setVisible(jacket);
  for (QWidget* widget : {static_cast<QWidget*>(p.rigLabel), static_cast<QWidget*>(p.rig)})
    widget->setVisible(oneRig);
  for (QWidget* widget : {static_cast<QWidget*>(p.batchesLabel), static_cast<QWidget*>(p.batches)})
    widget->setVisible(cost);
  for (QWidget* widget : {static_cast<QWidget*>(p.wishLabel), static_cast<QWidget*>(p.wish)})
    widget->setVisible(helps);
  setVisible(kinds || oneRig || cost || jacket || helps);
  p.offerDrawn(*this, solution, question == Question::Overview && !alone);
  const QSignalBlocker quietRig(p.rig);
  const QSignalBlocker quietKind(p.kind);
  const QSignalBlocker quietSavings(p.savings);
  const QSignalBlocker quietBatches(p.batches);
  const QSignalBlocker quietWish(p.wish);
  p.wish->setCurrentIndex(view.wish ? static_cast<int>(*view.wish) + 1 : 0);
  p.nameRigs(namesOf(solution));
  p.rig->setCurrentIndex(std::clamp(view.rig, 0, std::max(0, p.rig->count() - 1)));
  p.kind->setCurrentIndex(isFirstKind(question, view) ? 0 : 1);
  const bool second = question == Question::HowFarCools ? view.supposed : view.savings;
  p.savings->setCurrentIndex(second ? 1 : 0);
  if (!solution) return;
  // The same again would replace what is just being typed there.
  const int year = qRound(telling::brewsPerYear(solution->plan));
  if (p.batches->value() != year) p.batches->setValue(year);
}

}  // namespace gui
