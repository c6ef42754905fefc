// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/readings/column_choices.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "gui/window/forms/quantity_field.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

using rigs::readings::Column;
using rigs::readings::ColumnOf;
using rigs::readings::Corrections;
using rigs::readings::Count;
using rigs::readings::Layout;

namespace {

constexpr std::array kAllWhich{"time", "counted", "temperature", "unit"};  // of objects' names

// Typed lines have a time and what was read; a logger's have heads or more.
bool isOfALogger(const Layout& layout) {
  return layout.columns.size() > 1 && (layout.hasHeads || layout.columns.size() > 2);
}

std::optional<std::size_t> columnOf(const Layout& layout, ColumnOf what) {
  const auto at = std::find_if(layout.columns.begin(), layout.columns.end(),
                               [&](const Column& one) { return one.of == what; });
  if (at == layout.columns.end()) return std::nullopt;
  return static_cast<std::size_t>(at - layout.columns.begin());
}

std::optional<std::string> chosenIn(const QComboBox& box) {
  const std::string data = box.currentData().toString().toStdString();
  return data.empty() ? std::nullopt : std::optional(data);
}

}  // namespace

ColumnChoices::ColumnChoices(QWidget* parent) : QWidget(parent) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(1, 1);
  for (std::size_t i = 0; i < kCount; ++i) {
    labels_[i] = new QLabel;
    boxes_[i] = new PlanComboBox;
    boxes_[i]->setObjectName(QStringLiteral("columns/") + QString::fromLatin1(kAllWhich[i]));
    labels_[i]->setBuddy(boxes_[i]);
    grid->addWidget(labels_[i], static_cast<int>(i), 0);
    grid->addWidget(boxes_[i], static_cast<int>(i), 1);
    connect(boxes_[i], &QComboBox::activated, this, &ColumnChoices::chosen);
  }
  retranslate();
  setVisible(false);
}

void ColumnChoices::retranslate() {
  labels_[Time]->setText(tr("The time is in"));
  labels_[Counted]->setText(tr("counted"));
  labels_[Temperature]->setText(tr("The wort's temperature is in"));
  labels_[Unit]->setText(tr("with bare numbers in"));
  for (std::size_t i = 0; i < kCount; ++i) {
    boxes_[i]->setAccessibleName(labels_[i]->text());
    list(static_cast<Which>(i));
  }
}

void ColumnChoices::take(const Layout& layout) {
  layout_ = layout;
  for (const Which which : {Time, Counted, Temperature, Unit}) {
    // What somebody chose is no finding.
    if (boxes_[which]->currentIndex() <= 0) found_[which] = foundText(which);
    list(which);
  }
  const bool corrected = corrections() != Corrections{};
  setVisible(corrected || isOfALogger(layout));
}

void ColumnChoices::forget() {
  for (QComboBox* box : boxes_) box->setCurrentIndex(0);
  found_ = {};
  setVisible(false);
}

Corrections ColumnChoices::corrections() const {
  Corrections all{.time = chosenIn(*boxes_[Time]), .temperature = chosenIn(*boxes_[Temperature])};
  if (const auto unit = chosenIn(*boxes_[Unit]))
    all.temperatureUnit = rigs::readings::unitFrom(*unit);
  if (const auto count = chosenIn(*boxes_[Counted]))
    all.count = *count == "s"     ? Count::Seconds
                : *count == "min" ? Count::Minutes
                : *count == "h"   ? Count::Hours
                                  : Count::Clock;
  return all;
}

// Empty where nothing was found.
QString ColumnChoices::foundText(Which which) const {
  const auto column =
      columnOf(layout_, which == Time || which == Counted ? ColumnOf::Time : ColumnOf::Temperature);
  if (!column) return {};
  const Column& at = layout_.columns[*column];
  switch (which) {
    case Time:
    case Temperature:
      return told(rigs::readings::columnTold(at, *column + 1));
    case Counted:
      return told(rigs::readings::countTold(layout_.count));
    case Unit:
      if (!at.unit) return {};
      return QString::fromStdString(std::string(rigs::readings::degreesOf(*at.unit)));
  }
  return {};
}

void ColumnChoices::list(Which which) {
  QComboBox& box = *boxes_[which];
  const QString before = box.currentData().toString();
  box.clear();
  box.addItem(found_[which].isEmpty() ? tr("found nowhere") : tr("as found: %1").arg(found_[which]),
              QString());
  if (which == Counted) {
    for (const auto& [count, key] : {std::pair{Count::Clock, "clock"},
                                     {Count::Seconds, "s"},
                                     {Count::Minutes, "min"},
                                     {Count::Hours, "h"}})
      box.addItem(told(rigs::readings::countTold(count)), QString::fromLatin1(key));
  } else if (which == Unit) {
    for (const char* unit : {"°C", "°F", "K"})
      box.addItem(QString::fromUtf8(unit), QString::fromUtf8(unit));
  } else {
    for (std::size_t i = 0; i < layout_.columns.size(); ++i)
      box.addItem(told(rigs::readings::columnTold(layout_.columns[i], i + 1)),
                  QString::number(i + 1));
  }
  box.setCurrentIndex(std::max(0, box.findData(before)));
}

}  // namespace gui
