// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/tariff.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace gui::telling {
namespace {

using rigs::inEnglish;
using ::testing::HasSubstr;

rigs::Tariff cheapNights() {
  rigs::Tariff tariff;
  tariff.currency = "CAD";
  tariff.weekday = {{physics::hours(0.0), physics::hours(7.0), 0.08},
                    {physics::hours(7.0), physics::hours(24.0), 0.16}};
  tariff.weekend = {{physics::hours(0.0), physics::hours(24.0), 0.07}};
  return tariff;
}

TEST(TariffText, TellsEveryHourOfTheBrewsOwnKindOfDay) {
  rigs::Tariff tariff = cheapNights();
  EXPECT_EQ(inEnglish(tariffText(tariff)),
            "on a weekday: 0.08 CAD per kWh from 00:00 to 07:00; 0.16 CAD per kWh from 07:00 to "
            "24:00");
  tariff.day = rigs::DayOfWeek::Weekend;
  EXPECT_EQ(inEnglish(tariffText(tariff)), "at a weekend: 0.07 CAD per kWh from 00:00 to 24:00");
}

TEST(TariffText, TellsBothKindsOfDayAsSentences) {
  EXPECT_EQ(inEnglish(wholeTariffText(cheapNights())),
            "On a weekday 0.08 CAD per kWh from 00:00 to 07:00; 0.16 CAD per kWh from 07:00 to "
            "24:00. At a weekend 0.07 CAD per kWh from 00:00 to 24:00.");
}

TEST(TariffText, TellsEveryTier) {
  rigs::Tariff tariff;
  tariff.currency = "EUR";
  tariff.tiers = {{physics::kilowattHours(600.0), 0.1}, {std::nullopt, 0.2}};
  tariff.usedThisMonth = physics::kilowattHours(40.0);
  EXPECT_EQ(inEnglish(tariffText(tariff)),
            "0.1 EUR per kWh up to 600 kWh a month; 0.2 EUR per kWh above; 40 kWh used this month "
            "before");
  EXPECT_EQ(inEnglish(wholeTariffText(tariff)),
            "0.1 EUR per kWh up to 600 kWh a month; 0.2 EUR per kWh above.");
}

TEST(TariffText, KeepsThePriceAsItWasStated) {
  rigs::Tariff tariff;
  tariff.currency = "$";
  tariff.perKilowattHour = 0.12345;
  tariff.dated = "2026-01";
  EXPECT_EQ(inEnglish(tariffText(tariff)), "$0.12345 per kWh, as of 2026-01");
  EXPECT_EQ(inEnglish(wholeTariffText(tariff)), "$0.12345 per kWh.");
}

TEST(TariffText, TellsOfRebatesAndTaxes) {
  rigs::Tariff tariff;
  tariff.currency = "EUR";
  tariff.perKilowattHour = 0.3;
  tariff.rebate = 0.131;
  EXPECT_EQ(inEnglish(tariffText(tariff)), "0.3 EUR per kWh; 13.1 % of the sum not paid");
  tariff.rebate = -0.05;
  EXPECT_EQ(inEnglish(tariffText(tariff)), "0.3 EUR per kWh; 5 % on top of the sum");
}

TEST(TariffText, SaysThatThereIsNoPrice) {
  EXPECT_EQ(inEnglish(tariffText({})), "no price stated");
  EXPECT_EQ(inEnglish(wholeTariffText({})), "No price is stated.");
}

TEST(TariffSource, IsAsMuchAsThePlanSays) {
  rigs::Tariff tariff;
  EXPECT_TRUE(tariffSource(tariff).empty());
  tariff.source = "a bill";
  EXPECT_EQ(inEnglish(tariffSource(tariff)), "Source of the prices: a bill.");
  tariff.status = "published";
  EXPECT_EQ(inEnglish(tariffSource(tariff)), "Source of the prices: a bill (published).");
  tariff.name = "Night rate";
  EXPECT_EQ(inEnglish(tariffSource(tariff)),
            "The prices are those of Night rate: a bill (published).");
  tariff.status = "read off the meter";
  EXPECT_THAT(inEnglish(tariffSource(tariff)), HasSubstr("(read off the meter)"));
  tariff.source.clear();
  EXPECT_EQ(inEnglish(tariffSource(tariff)), "The prices are those of Night rate.");
}

}  // namespace
}  // namespace gui::telling
