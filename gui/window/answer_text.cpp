// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/answer_text.hpp"

#include <QRegularExpression>
#include <algorithm>
#include <cctype>
#include <cmath>

#include "gui/window/chart_layout.hpp"
#include "rigs/figures.hpp"

namespace gui {
namespace {

constexpr double kMillimetresPerInch = 25.4;

QString stageName(physics::StageKind kind) {
  using physics::StageKind;
  switch (kind) {
    case StageKind::Strike:
      return translate("Answer", "Strike");
    case StageKind::MashingIn:
      return translate("Answer", "Mash in");
    case StageKind::Ramp:
      return translate("Answer", "Ramp");
    case StageKind::Rest:
      return translate("Answer", "Rest");
    case StageKind::UnpluggedRest:
      return translate("Answer", "Unplugged");
    case StageKind::HeatingToBoil:
      return translate("Answer", "To boil");
    case StageKind::Boil:
      return translate("Answer", "Boil");
  }
  return {};
}

}  // namespace

QString localized(std::string_view text, const QLocale& locale) {
  QString result = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  for (qsizetype i = 1; i + 1 < result.size(); ++i) {
    if (result[i] == u'.' && result[i - 1].isDigit() && result[i + 1].isDigit()) {
      result.replace(i, 1, locale.decimalPoint());
    }
  }
  return result;
}

QString Writer::plain(double number, int decimals) const {
  return localized(rigs::formatNumber(number, {.significantDigits = 3, .decimals = decimals}),
                   locale_);
}

QString Writer::time(physics::Time time) const {
  const double minutes = physics::inMinutes(time);
  if (std::abs(minutes) < 10.0) {
    return text(physics::seconds(std::round(physics::inSeconds(time))));
  }
  return text(physics::minutes(std::round(minutes)));
}

QString Writer::clock(physics::Time sinceMidnight) const {
  const auto minutes = static_cast<int>(std::lround(physics::inMinutes(sinceMidnight)));
  const int left = minutes % (24 * 60);
  const QString clock = QStringLiteral("%1:%2")
                            .arg(left / 60, 2, 10, QLatin1Char('0'))
                            .arg(left % 60, 2, 10, QLatin1Char('0'));
  const int days = minutes / (24 * 60);
  return days > 0 ? QStringLiteral("+%1 d %2").arg(days).arg(clock) : clock;
}

QString Writer::watts(physics::Power power) const {
  const double number = physics::inWatts(power);
  if (!(std::abs(number) < 9999.5)) return text(power);
  return QStringLiteral("%1 W").arg(plain(number, 0));
}

QString Writer::money(double amount, const rigs::Tariff& tariff) const {
  const bool small = amount != 0.0 && std::abs(amount) < 0.0995;
  const QString number = localized(
      small ? rigs::formatNumber(std::abs(amount), {.significantDigits = 2, .decimals = {}})
            : rigs::formatNumber(std::abs(amount), {.significantDigits = 3, .decimals = 2}),
      locale_);
  const QString sign = amount < 0.0 && number.contains(QRegularExpression(QStringLiteral("[1-9]")))
                           ? QStringLiteral("-")
                           : QString();
  const QString currency = QString::fromStdString(tariff.currency);
  // A symbol stands in front, a code such as EUR behind.
  const bool code = !tariff.currency.empty() &&
                    std::isalpha(static_cast<unsigned char>(tariff.currency.back())) != 0;
  return code ? sign + number + QLatin1Char(' ') + currency : sign + currency + number;
}

double Writer::thickness(physics::Length length) const {
  const double millimetres = physics::inMillimetres(length);
  return units_ == rigs::UnitSystem::SI ? millimetres : millimetres / kMillimetresPerInch;
}

QString Writer::thicknessUnit() const {
  return units_ == rigs::UnitSystem::SI ? QStringLiteral("mm") : QStringLiteral("in");
}

QString Telling::name(int i) const { return QString::fromStdString(rig(i).name); }

QString Telling::named(int i) const { return QStringLiteral("%1 %2").arg(letterOfRig(i), name(i)); }

QString unfinishedText(const Telling& tell, int rig) {
  const physics::BrewDay& day = tell.rig(rig).day;
  const Writer& write = tell.write;
  const QString who = tell.named(rig);
  const auto levelsOff = [&](const QString& text) {
    return text.arg(write.text(day.levelsOff->at), who, write.text(day.levelsOff->wanted),
                    write.watts(day.levelsOff->atWanted), write.watts(day.electrical.delivered));
  };
  switch (day.outcome) {
    case physics::Outcome::Done:
      return {};
    case physics::Outcome::Steams:
    case physics::Outcome::StaysFarBelow:
      if (!day.levelsOff) break;
      // As on the curve: up with the lid as it is for heating, then down again in the boil.
      if (day.startsBoiling()) {
        return levelsOff(translate("Answer",
                                   "%3 is what %2 comes to with the lid as it is for heating, but "
                                   "it does not boil: there it would lose %4 in the boil and gets "
                                   "%5, and falls back to %1."));
      }
      return levelsOff(translate("Answer",
                                 "%1 is where %2 levels off: it does not boil, since at %3 it "
                                 "would lose %4 and gets %5."));
    case physics::Outcome::DoesNotReachStrike:
      if (!day.levelsOff) break;
      return levelsOff(translate("Answer",
                                 "%1 is where %2 levels off, short of the strike temperature: at "
                                 "%3 it would lose %4 and gets %5."));
    case physics::Outcome::DoesNotReachRest:
      if (!day.levelsOff) break;
      return levelsOff(translate("Answer",
                                 "%1 is where %2 levels off, short of the next rest: at %3 it "
                                 "would lose %4 and gets %5."));
    case physics::Outcome::UncoversElement:
      return translate("Answer", "%1 is left in %2 when its element is uncovered: the day stops.")
          .arg(write.text(day.lowest), who);
    case physics::Outcome::StrikeTooHot:
      return translate("Answer",
                       "%1 would be needed to strike with %2: the water would have to boil. Use "
                       "more water, less grain, or warmer grain.")
          .arg(write.text(day.strike), who);
  }
  return translate("Answer", "%1 does not finish its day.").arg(who);
}

QStringList unfinishedTexts(const Telling& tell) {
  QStringList all;
  for (int i = 0; i < tell.count(); ++i) {
    const QString text = unfinishedText(tell, i);
    if (!text.isEmpty()) all += text;
  }
  return all;
}

QString outcomeLabel(physics::Outcome outcome) {
  switch (outcome) {
    case physics::Outcome::Done:
      return translate("Answer", "boils");
    case physics::Outcome::DoesNotReachStrike:
      return translate("Answer", "no strike");
    case physics::Outcome::DoesNotReachRest:
      return translate("Answer", "no rest");
    case physics::Outcome::Steams:
    case physics::Outcome::StaysFarBelow:
      return translate("Answer", "no boil");
    case physics::Outcome::UncoversElement:
      return translate("Answer", "runs dry");
    case physics::Outcome::StrikeTooHot:
      return translate("Answer", "too hot");
  }
  return {};
}

QString vigourLabel(rigs::Vigour vigour) {
  switch (vigour) {
    case rigs::Vigour::Simmer:
      return translate("Answer", "simmer");
    case rigs::Vigour::Gentle:
      return translate("Answer", "gentle");
    case rigs::Vigour::Steady:
      return translate("Answer", "steady");
    case rigs::Vigour::Strong:
      return translate("Answer", "strong");
    case rigs::Vigour::Fierce:
      return translate("Answer", "fierce");
  }
  return {};
}

QStringList stageLabels(const physics::BrewDay& day) {
  QStringList names;
  for (std::size_t i = 0; i < day.stages.size(); ++i) {
    const physics::StageKind kind = day.stages[i].kind;
    const auto same = [&](const physics::Stage& s) { return s.kind == kind; };
    const auto begin = day.stages.begin();
    const auto all = std::count_if(begin, day.stages.end(), same);
    const auto before = std::count_if(begin, begin + static_cast<std::ptrdiff_t>(i), same);
    names +=
        all > 1 ? QStringLiteral("%1 %2").arg(stageName(kind)).arg(before + 1) : stageName(kind);
  }
  return names;
}

void addPoint(PictureLine& line, QPointF own) {
  if (line.points.isEmpty()) return;
  const auto after = std::lower_bound(line.points.begin(), line.points.end(), own.x(),
                                      [](const QPointF& p, double x) { return p.x() < x; });
  line.points.insert(after, own);
}

Extremes extremesOf(const Telling& tell, const std::function<std::optional<double>(int)>& figure) {
  Extremes extremes;
  double least = 0.0;
  double most = 0.0;
  for (int i = 0; i < tell.count(); ++i) {
    const auto value = figure(i);
    if (!value) continue;
    if (extremes.counted == 0 || *value < least) {
      least = *value;
      extremes.least = i;
    }
    if (extremes.counted == 0 || *value > most) {
      most = *value;
      extremes.most = i;
    }
    ++extremes.counted;
  }
  return extremes;
}

TableOf::TableOf(const Telling& tell) : count_(tell.count()) {
  table_.head.push_back({});
  for (int i = 0; i < count_; ++i) table_.head.push_back(tell.named(i));
}

void TableOf::heading(const QString& label) {
  QVector<QString> row(count_ + 1);
  row[0] = label;
  table_.rows.push_back(row);
}

void TableOf::row(const QString& label, const std::function<std::optional<QString>(int)>& cell) {
  QVector<QString> row{label};
  for (int i = 0; i < count_; ++i) row.push_back(cell(i).value_or(QStringLiteral("–")));
  table_.rows.push_back(row);
}

}  // namespace gui
