// SPDX-License-Identifier: GPL-3.0-or-later
// Words and numbers of the window's answers, in the reader's language, units and decimal sign.
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>

#include "gui/window/questions/qt_picture.hpp"
#include "gui/window/questions/question.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {

inline QString translate(const char* context, const char* text) {
  return QCoreApplication::translate(context, text);
}

// The same number with the locale's decimal sign.
QString localized(std::string_view text, const QLocale& locale);

// How quantities are written for one reader.
class Writer {
 public:
  explicit Writer(rigs::UnitSystem units, const QLocale& locale = QLocale())
      : units_(units), locale_(locale) {}

  rigs::UnitSystem units() const { return units_; }
  template <class Q>
  QString text(const Q& q, const rigs::FormatOptions& options = {}) const {
    return localized(rigs::format(q, units_, options), locale_);
  }
  // The number alone in the column's unit, for tables and axes.
  template <class Q>
  QString number(const Q& q, int decimals) const {
    return localized(rigs::formatValue(q, units_, {.significantDigits = 3, .decimals = decimals}),
                     locale_);
  }
  template <class Q>
  double axis(const Q& q) const {
    return rigs::numberIn(q, units_);
  }
  template <class Q>
  QString unit() const {
    const std::string_view label = rigs::unitLabel<Q>(units_);
    return QString::fromUtf8(label.data(), static_cast<qsizetype>(label.size()));
  }
  QString plain(double number, int decimals) const;
  // "42 min", "1 h 05 min"; seconds below ten minutes.
  QString time(physics::Time time) const;
  // "09:41", by the clock on the wall.
  QString clock(physics::Time sinceMidnight) const;
  // "1537 W", in whole watts below 10 kW.
  QString watts(physics::Power power) const;
  // "1.94 EUR", "$1.94".
  QString money(double amount, const rigs::Tariff& tariff) const;
  // Thicknesses are in millimetres or inches, whatever lengths are.
  double thickness(physics::Length length) const;
  QString thicknessUnit() const;

 private:
  rigs::UnitSystem units_;
  QLocale locale_;
};

// What every answer starts from.
struct Telling {
  const Solution& solution;
  const rigs::Plan& plan;
  Writer write;
  QuestionView view;

  int count() const { return static_cast<int>(solution.answers.rigs.size()); }
  const rigs::RigAnswer& rig(int i) const {
    return solution.answers.rigs[static_cast<std::size_t>(i)];
  }
  const rigs::RigPlan& planned(int i) const { return plan.rigs[static_cast<std::size_t>(i)]; }
  const RigSweeps* sweeps(int i) const {
    const auto at = static_cast<std::size_t>(i);
    return at < solution.sweeps.size() ? &solution.sweeps[at] : nullptr;
  }
  // "(b) New element, kitchen", as sentences name a rig; and without its letter.
  QString named(int i) const;
  QString name(int i) const;
};

// A day that could not be finished, told with its numbers; empty for one that was.
QString unfinishedText(const Telling& tell, int rig);
// Of every rig that has such a day.
QStringList unfinishedTexts(const Telling& tell);
// "no boil" and the like, for tables; "boils" for a day that was done.
QString outcomeLabel(physics::Outcome outcome);
QString vigourLabel(rigs::Vigour vigour);
// "Strike", "Rest 1", ... of a day.
QStringList stageLabels(const physics::BrewDay& day);

// A rig's own point belongs to its curve, which otherwise has only round numbers. A line without
// points stays without.
void addPoint(QtPictureLine& line, QPointF own);

// Rigs ordered by a figure; those without one are left out.
struct Extremes {
  int least = -1, most = -1;
  int counted = 0;
};
Extremes extremesOf(const Telling& tell, const std::function<std::optional<double>(int)>& figure);

// A table with a column a rig.
class TableOf {
 public:
  explicit TableOf(const Telling& tell);
  void heading(const QString& label);
  // A cell without a figure says "–".
  void row(const QString& label, const std::function<std::optional<QString>(int)>& cell);
  PictureTable take() { return std::move(table_); }

 private:
  int count_;
  PictureTable table_;
};

// A brew a month where the plan does not say.
double brewsPerYear(const rigs::Plan& plan);

// One for each question; question_answers.cpp adds title and cautions.
QtAnswer howLong(const Telling& tell);
QtAnswer whereHeat(const Telling& tell);
QtAnswer boilsEnough(const Telling& tell);
QtAnswer worthJacket(const Telling& tell);
QtAnswer whichElement(const Telling& tell);
QtAnswer circuitCarries(const Telling& tell);
QtAnswer roomChanges(const Telling& tell);
QtAnswer whatCost(const Telling& tell);
QtAnswer howFarCools(const Telling& tell);

}  // namespace gui
