// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/tariff_text.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "gui/window/questions/answer_text.hpp"

namespace gui {
namespace {

QString price(double perKilowattHour, const rigs::Tariff& tariff, const QLocale& locale) {
  const std::string number =
      rigs::formatNumber(perKilowattHour, {.significantDigits = 4, .decimals = {}});
  return translate("Tariff", "%1 %2 per kWh")
      .arg(localized(number, locale), QString::fromStdString(tariff.currency));
}

QString byTheHour(const rigs::Tariff& tariff, const QLocale& locale) {
  const Writer write(rigs::UnitSystem::SI, locale);
  QStringList windows;
  for (const rigs::PriceWindow& window : tariff.today()) {
    const bool midnight = window.to >= physics::hours(24.0);
    windows += translate("Tariff", "%1 from %2 to %3")
                   .arg(price(window.perKilowattHour, tariff, locale), write.clock(window.from),
                        midnight ? QStringLiteral("24:00") : write.clock(window.to));
  }
  return (tariff.day == rigs::DayOfWeek::Weekend ? translate("Tariff", "at a weekend: %1")
                                                 : translate("Tariff", "on a weekday: %1"))
      .arg(windows.join(QStringLiteral("; ")));
}

QString byUse(const rigs::Tariff& tariff, const QLocale& locale) {
  const Writer write(rigs::UnitSystem::SI, locale);
  QStringList tiers;
  for (const rigs::PriceTier& tier : tariff.tiers) {
    const QString each = price(tier.perKilowattHour, tariff, locale);
    tiers += tier.upTo
                 ? translate("Tariff", "%1 up to %2 a month").arg(each, write.text(*tier.upTo))
                 : translate("Tariff", "%1 above").arg(each);
  }
  return translate("Tariff", "%1; %2 used this month before")
      .arg(tiers.join(QStringLiteral("; ")), write.text(tariff.usedThisMonth));
}

}  // namespace

QString tariffText(const rigs::Tariff& tariff, const QLocale& locale) {
  if (!tariff.isStated()) return translate("Tariff", "no price stated");
  QString text = tariff.dependsOnTheHour() ? byTheHour(tariff, locale)
                 : tariff.dependsOnUse()   ? byUse(tariff, locale)
                                           : price(tariff.perKilowattHour, tariff, locale);
  if (tariff.rebate != 0.0) {
    text = translate("Tariff", "%1; %2 of the sum not paid")
               .arg(text, Writer(rigs::UnitSystem::SI, locale).text(tariff.rebate));
  }
  if (tariff.dated.empty()) return text;
  return translate("Tariff", "%1, as of %2").arg(text, QString::fromStdString(tariff.dated));
}

}  // namespace gui
