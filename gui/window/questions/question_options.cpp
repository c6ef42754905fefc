// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_options.hpp"

#include <QBoxLayout>
#include <QCoreApplication>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

#include "gui/telling/helps.hpp"
#include "gui/telling/words.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/forms/quantity_field.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {

using telling::Question;
using telling::QuestionView;

namespace {

QStringList kindsOf(Question question) {
  switch (question) {
    case Question::WhereHeat:
      return {QCoreApplication::translate("QuestionPage", "power over time, one rig"),
              QCoreApplication::translate("QuestionPage", "energy of the day, all rigs")};
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
  if (question == Question::WhereHeat) return !view.asBars;
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

  QuestionView chosen() const;
  void nameRigs(const QStringList& names);
};

QuestionOptions::QuestionOptions(QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>()) {
  Parts& p = *parts_;
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
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
  p.batches->setRange(1, 1000);
  for (PlanComboBox* box : {p.kind, p.savings, p.rig, p.wish}) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(box, &QComboBox::activated, this, [this] { Q_EMIT viewChosen(parts_->chosen()); });
  }
  connect(p.batches, &QSpinBox::valueChanged, this, &QuestionOptions::yearChosen);
  row->addStretch(1);
}
QuestionOptions::~QuestionOptions() = default;

QuestionView QuestionOptions::Parts::chosen() const {
  const bool first = kind->currentIndex() == 0;
  QuestionView changed = view;
  changed.rig = std::max(0, rig->currentIndex());
  if (question == Question::WhereHeat) changed.asBars = !first;
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

void QuestionOptions::relabel(Question question) {
  Parts& p = *parts_;
  p.rigLabel->setText(QCoreApplication::translate("QuestionPage", "Ri&g"));
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
  // Bars show every rig, but the sentence is still about one; where there is one, nothing is
  // chosen.
  const bool alone = solution && solution->answers.rigs.size() == 1;
  const bool helps = question == Question::HelpsMost;
  const bool oneRig = (question == Question::WhereHeat || helps) && !alone;
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
