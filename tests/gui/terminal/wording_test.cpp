// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/wording.hpp"

#include <gtest/gtest.h>

#include "tests/gui/terminal/plan_in_code.hpp"

using namespace gui;
using namespace physics;

TEST(RoughTime, KeepsSecondsOnlyWhereTheyMatter) {
  EXPECT_EQ(roughTime(seconds(70.0)), "1 min 10 s");
  EXPECT_EQ(roughTime(minutes(41.7)), "42 min");
  EXPECT_EQ(roughTime(minutes(65.2)), "1 h 05 min");
  EXPECT_EQ(roughTime(minutes(-41.7)), "-42 min");
}

TEST(ClockTime, CountsTheDaysAfterMidnight) {
  EXPECT_EQ(clockTime(hours(9.0) + minutes(41.4)), "09:41");
  EXPECT_EQ(clockTime(hours(24.25)), "+1 d 00:15");
  EXPECT_EQ(clockTime(minutes(59.9)), "01:00");
}

TEST(Money, PutsSymbolsInFrontAndCodesBehind) {
  EXPECT_EQ(money(1.944, {.perKilowattHour = 0.3, .currency = "EUR", .dated = ""}), "1.94 EUR");
  EXPECT_EQ(money(1.944, {.perKilowattHour = 0.3, .currency = "$", .dated = ""}), "$1.94");
  EXPECT_EQ(money(0.0456, {.perKilowattHour = 0.3, .currency = "EUR", .dated = ""}), "0.046 EUR");
}

// The scale's edges belong to the stronger word: 5, 8, 10 and 15 %/h.
TEST(Vigour, ChangesItsWordAtThePublishedFigures) {
  struct Case {
    double share;
    std::string_view word;
  };
  for (const Case& c : {Case{0.049, "simmer"}, Case{0.05, "gentle"}, Case{0.0799, "gentle"},
                        Case{0.08, "steady"}, Case{0.10, "strong"}, Case{0.15, "fierce"}}) {
    SCOPED_TRACE(c.share);
    BoilFigures boil{};
    boil.shareOfPreBoilPerHour = c.share;
    EXPECT_EQ(rigs::vigourWord(rigs::vigourOf(boil)), c.word);
  }
}

// 240 V element on 208 V: (208/240)^2 = 75.1 % of its rating at its terminals, a little less
// behind a cable of 0.1 ohm.
TEST(ElementText, SaysWhatALowerVoltageLeaves) {
  rigs::RigPlan rig = test_support::kettle("Import", 3500.0, 240.0, 208.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  const auto load = electricalLoad(rig.rig.element, rig.rig.supply);
  EXPECT_EQ(elementText(rig, load, UnitSystem::SI),
            "2629 W reach the vessel, 75.1 % of the element's 3500 W at 240 V: its supply has "
            "208 V.");
}

TEST(ElementText, CountsBothElementsOfTwoCircuits) {
  rigs::RigPlan rig = test_support::kettle("Both", 3000.0, 230.0, 230.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  rig.rig.second =
      Feed{.element = {watts(2000.0), volts(240.0), metres(0.05)},
           .supply = {.nominal = volts(240.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)}};
  EXPECT_EQ(elementText(rig, electricalLoad(rig.rig), UnitSystem::SI),
            "5000 W reach the vessel from two elements: 3000 W at 230 V on 230 V, and 2000 W at "
            "240 V on a second circuit of 240 V.");
}

TEST(CircuitText, WarnsOfTooMuchCurrent) {
  const rigs::RigPlan fits = test_support::kettle("Fits", 3000.0, 230.0, 230.0);
  EXPECT_EQ(circuitText(rigs::Plan{}, fits), "");
  const rigs::RigPlan large = test_support::kettle("Large", 5500.0, 230.0, 230.0);
  EXPECT_NE(circuitText(rigs::Plan{}, large).find("too much for its circuit of 16 A"),
            std::string::npos);
}

TEST(StageNames, NumbersWhatComesTwice) {
  BrewDay day;
  for (const StageKind kind :
       {StageKind::Strike, StageKind::Rest, StageKind::Ramp, StageKind::Rest}) {
    Stage stage{};
    stage.kind = kind;
    day.stages.push_back(stage);
  }
  EXPECT_EQ(stageNames(day), (std::vector<std::string>{"Strike", "Rest 1", "Ramp", "Rest 2"}));
}

namespace {

rigs::RigAnswer answered(const rigs::Plan& plan, std::size_t rig = 0) {
  return rigs::answer(plan, rigs::Depth::Everything).rigs[rig];
}
bool holds(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

// 100 W stall before strike; the same under a thick jacket passes it. More energy over a longer way
// must not read as a saving, nor as a loss.
TEST(JacketVerdictText, TellsHowMuchFurtherAJacketGets) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  rigs::RigPlan& rig = plan.rigs.front();
  for (Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) {
    one->element.rating = watts(150.0);
    one->vessel.open = {0.0, 0.0, 0.0, 0.0};
  }
  rig.jacketed.vessel.lid = rig.jacketed.vessel.side;
  const JacketEffect effect =
      compareJacket(rig.bare, rig.jacketed, plan.batch, plan.place, plan.goals.unplugged);
  ASSERT_EQ(effect.bare.outcome, Outcome::DoesNotReachStrike);
  ASSERT_EQ(effect.verdict, JacketVerdict::GetsFurther);
  const std::string text = jacketSavingText(rig, effect, UnitSystem::SI) + ' ' +
                           jacketVerdictText(rig, effect, UnitSystem::SI);
  EXPECT_TRUE(holds(text, "It gets further: bare, it stops at ")) << text;
  EXPECT_TRUE(holds(text, "on the way to strike; with the jacket it reaches strike in ")) << text;
  for (const char* never : {"from the wall", "Not worth it", "EUR"})
    EXPECT_FALSE(holds(text, never)) << text;
}

TEST(JacketVerdictText, NamesTheMetalsEmissivityLikeAPerson) {
  rigs::Plan plan = test_support::planInCode();
  rigs::RigPlan& rig = plan.rigs.front();
  rig.finish = "emissivity 0.16";
  JacketEffect effect =
      compareJacket(rig.bare, rig.jacketed, plan.batch, plan.place, plan.goals.unplugged);
  effect.verdict = JacketVerdict::NotWorthIt;
  effect.reasons = {
      .strongElementHidesLosses = true, .skinRadiatesMore = true, .surfaceDominates = true};
  const std::string text = jacketVerdictText(rig, effect, UnitSystem::SI);
  EXPECT_TRUE(holds(text,
                    "its outside (foam) radiates more than metal of emissivity 0.16; and of "
                    "the "))
      << text;
  EXPECT_TRUE(holds(text, " lost at the boil most leaves by the open surface.")) << text;
}

// Jackets are told in the reader's units, or in the author's own words where these are of the
// reader's system: 13 mm are 0.512 in, R 1.8 is 0.317 m2 K/W.
TEST(JacketText, FollowsItsReaderAndItsAuthor) {
  const rigs::JacketText jacket{
      {{"side",
        {{.material = "cork", .thickness = millimetres(13.0), .written = "13 mm"},
         {.material = "",
          .insulance = squareMetreKelvinsPerWatt(0.317),
          .written = "1.8 ft2*h*degF/Btu"}}},
       {"lid",
        {{.material = "", .insulance = squareMetreKelvinsPerWatt(0.317), .written = "R 1.8"}}}}};
  EXPECT_EQ(jacket.in(UnitSystem::SI), "side 13 mm cork + R 0.317 m²·K/W; lid R 0.317 m²·K/W");
  EXPECT_EQ(jacket.in(UnitSystem::UsCustomary),
            "side 0.512 in cork + R 1.8 ft2*h*degF/Btu; lid R 1.8");
}

// What the wishes take decides, each for itself.
TEST(EnoughText, NamesEveryWishThatFailsAndWhatItTakes) {
  const rigs::Plan plan = test_support::planInCode();
  rigs::RigAnswer rig = answered(plan);
  const auto takes = [](double watt) {
    return PowerAnswer{.power = watts(watt), .onThisSupply = true, .stoppedBy = Limit::None};
  };
  rig.day.electrical.delivered = watts(2000.0);
  rig.sizing->toBoilAtAll = takes(1000.0);
  rig.sizing->toStrikeWithin = takes(1800.0);
  rig.sizing->toBoilWithin = takes(1500.0);
  rig.sizing->forBoilOff = takes(2500.0);
  const auto text = [&] { return enoughText(plan, plan.rigs[0], rig, UnitSystem::SI); };
  EXPECT_EQ(text().substr(0, text().find(" All")),
            "Too little to boil off 8 %/h, which takes 2500 W; enough to strike within 45 min and "
            "from mash to boil within 45 min.");
  EXPECT_TRUE(holds(text(), "All of it takes 2500 W, from an element rated ")) << text();

  rig.sizing->toStrikeWithin = takes(2600.0);
  EXPECT_TRUE(holds(text(),
                    "Too little to strike within 45 min, which takes 2600 W, and to boil off "
                    "8 %/h, which takes 2500 W; enough from mash to boil within 45 min."))
      << text();
  EXPECT_TRUE(holds(text(), "All of it takes 2600 W")) << text();

  rig.sizing->toStrikeWithin = {
      .power = {}, .onThisSupply = false, .stoppedBy = Limit::TimeAllowed};
  EXPECT_TRUE(holds(text(),
                    "No element up to 60.0 kW is enough to strike within 45 min (the limit: "
                    "time).") ||
              holds(text(),
                    "No element up to 60 kW is enough to strike within 45 min (the limit: "
                    "time)."))
      << text();

  rig.sizing->toStrikeWithin = rig.sizing->forBoilOff = takes(1900.0);
  EXPECT_TRUE(
      text().starts_with("Enough to strike within 45 min; from mash to boil within 45 min; "
                         "and to boil off 8 %/h. All of it takes 1900 W."))
      << text();
}

// 5500 W at 230 V draw 23.9 A (I = P/U) from a circuit of 16 A.
TEST(EnoughText, NeverBeginsWithEnoughOnAnOverloadedCircuit) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  rigs::RigPlan& rig = plan.rigs.front();
  for (Rig* one : {&rig.rig, &rig.bare, &rig.jacketed}) {
    one->element.rating = watts(5500.0);
    one->supply.cableLoop = ohms(0.0);
  }
  const rigs::RigAnswer answer = answered(plan);
  const std::string enough = enoughText(plan, rig, answer, UnitSystem::SI);
  EXPECT_TRUE(enough.starts_with("On a circuit that carries it, it would be enough ")) << enough;
  const std::string text = besideCircuit(plan, rig, enough);
  EXPECT_TRUE(text.starts_with("Codes count 23.9 A, the cable aside: too much for its circuit of"))
      << text;
}

// Each circuit speaks for itself; too much for one of them comes first.
TEST(BesideCircuit, NamesTheSecondCircuitThatIsTooSmall) {
  rigs::Plan plan = test_support::planInCode();
  rigs::RigPlan& rig = plan.rigs.front();
  rig.rig.element = {watts(3000.0), volts(230.0), metres(0.05)};
  rig.rig.second =
      Feed{.element = {watts(4600.0), volts(230.0), metres(0.05)},
           .supply = {.nominal = volts(230.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)}};
  rig.circuits.resize(2);
  rig.circuits[1].continuousShare = 0.8;
  EXPECT_EQ(besideCircuit(plan, rig, "Text."),
            "Codes count 20 A, the cable aside: too much for its second circuit of 16 A; it will "
            "trip, or worse. Text.");
  rig.rig.second->element.rating = watts(3000.0);
  EXPECT_EQ(
      besideCircuit(plan, rig, "Text."),
      "Text. Codes count 13 A, the cable aside: within its second 16 A circuit, but more than "
      "the 12.8 A that rules grant to long use.");
}

// 120 V, 15 A and a rule of 80 %: 12 A, 1440 W, for long use; 1716 W draw 14.3 A.
TEST(CarriesText, TellsShortUseFromLong) {
  rigs::RigPlan rig = test_support::kettle("Kitchen", 1650.0, 120.0, 120.0);
  rig.rig.supply = {volts(120.0), amperes(15.0), ohms(0.0)};
  rig.continuousShare = 0.8;
  const auto wanted = [](double watt) {
    return PowerAnswer{
        .power = watts(watt), .onThisSupply = watt <= 1800.0, .stoppedBy = Limit::None};
  };
  EXPECT_EQ(rigs::carries({}, rig, wanted(1439.0)), rigs::Carries::Yes);
  EXPECT_EQ(rigs::carries({}, rig, wanted(1441.0)), rigs::Carries::ForShortUseOnly);
  EXPECT_EQ(rigs::carries({}, rig, wanted(1801.0)), rigs::Carries::No);
  // The figures decide, not what a search noted.
  EXPECT_EQ(rigs::carries({}, rig, {.power = watts(1700.0)}), rigs::Carries::ForShortUseOnly);
  EXPECT_EQ(carriesText({}, rig, wanted(1716.0)),
            "Its circuit carries that for short use only: it draws 14.3 A, and rules grant 12 A to "
            "long use.");
  EXPECT_EQ(carriesText({}, rig, wanted(1400.0)), "Its circuit carries that, in long use too.");
  EXPECT_EQ(carriesText({}, rig, wanted(2000.0)), "Its circuit does not carry that.");
}
