// SPDX-License-Identifier: GPL-3.0-or-later
// What element do I need? What is told about each rig, a curve for each supply, and the same
// numbers beside it.
#include "gui/telling/element.hpp"

#include <gtest/gtest.h>

#include "gui/telling/curve.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/swept_plan.hpp"

namespace gui::telling {
namespace {

using namespace physics;
using rigs::inEnglish;
using test_support::cell;
using test_support::holds;
using test_support::OwnCase;
using test_support::sweptDemo;

Answer askedElement(bool asWritten, const rigs::Solution& solution = sweptDemo()) {
  return whichElement(
      {solution, solution.plan, test_support::siReader(), {.asWritten = asWritten}});
}

rigs::Plan planWith(const rigs::RigPlan& rig) {
  rigs::Plan plan;
  plan.rigs = {rig};
  return plan;
}

// 240 V element on 208 V: (208/240)^2 = 75.1 % of its rating.
TEST(ElementText, SaysWhatALowerVoltageLeaves) {
  rigs::RigPlan rig = test_support::kettle("Import", 3500.0, 240.0, 208.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  EXPECT_EQ(inEnglish(elementText(OwnCase(planWith(rig)).get(), 0)),
            "2629 W reach the vessel, 75.1 % of the element's 3500 W at 240 V: its supply has "
            "208 V.");
}

TEST(ElementText, CountsBothElementsOfTwoCircuits) {
  rigs::RigPlan rig = test_support::kettle("Both", 3000.0, 230.0, 230.0);
  rig.rig.supply.cableLoop = ohms(0.0);
  rig.rig.second =
      Feed{.element = {watts(2000.0), volts(240.0), metres(0.05)},
           .supply = {.nominal = volts(240.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)}};
  EXPECT_EQ(inEnglish(elementText(OwnCase(planWith(rig)).get(), 0)),
            "5000 W reach the vessel from two elements: 3000 W at 230 V on 230 V, and 2000 W at "
            "240 V on a second circuit of 240 V.");
}

TEST(CircuitText, WarnsOfTooMuchCurrent) {
  const OwnCase fits(planWith(test_support::kettle("Fits", 3000.0, 230.0, 230.0)));
  EXPECT_EQ(inEnglish(circuitText(fits.get(), 0)), "");
  const OwnCase large(planWith(test_support::kettle("Large", 5500.0, 230.0, 230.0)));
  EXPECT_TRUE(holds(inEnglish(circuitText(large.get(), 0)), "too much for its circuit of 16 A"));
}

// Each circuit speaks for itself; too much for one of them comes first.
TEST(BesideCircuit, NamesTheSecondCircuitThatIsTooSmall) {
  rigs::RigPlan rig = test_support::kettle("Urn", 3000.0, 230.0, 230.0);
  rig.rig.second =
      Feed{.element = {watts(4600.0), volts(230.0), metres(0.05)},
           .supply = {.nominal = volts(230.0), .rating = amperes(16.0), .cableLoop = ohms(0.0)}};
  rig.circuits.resize(2);
  rig.circuits[1].continuousShare = 0.8;
  OwnCase own(planWith(rig));
  const rigs::Told text(TOLD("Test", "Text."));
  EXPECT_EQ(inEnglish(besideCircuit(own.get(), 0, text)),
            "By its name plate it draws 20 A: too much for its second circuit of 16 A; how soon "
            "its breaker or fuse acts is not known here. Text.");
  own.plan().rig.second->element.rating = watts(3000.0);
  EXPECT_EQ(inEnglish(besideCircuit(own.get(), 0, text)),
            "Text. By its name plate it draws 13 A: within its second 16 A circuit, but more than "
            "the 12.8 A that rules grant to long use.");
}

PowerAnswer takes(double watt) {
  return {.power = watts(watt), .onThisSupply = true, .stoppedBy = Limit::None};
}

// 3 kW at 230 V on the fuse of a British plug: 13.04 A, neither yes nor no.
TEST(CircuitText, SaysWhatIsOnTheEdge) {
  rigs::RigPlan rig = test_support::kettle("Urn", 3000.0, 230.0, 230.0);
  rig.rig.supply.rating = amperes(13.0);
  rig.circuits.resize(1);
  rig.circuits[0].details.circuitRegion = "United Kingdom and Ireland";
  rig.circuits[0].details.fuse = "BS 1362";
  const OwnCase own(planWith(rig));
  EXPECT_EQ(inEnglish(circuitText(own.get(), 0)),
            "By its name plate it draws 13.04 A: on the edge of its circuit of 13 A; a fuse of "
            "that size carries 20.8 A for at least 30 min, so it does not protect plug and outlet "
            "from this: they get warm. Have the current measured, or leave room with less power.");
  // What goes before or behind stays in its order.
  EXPECT_TRUE(inEnglish(besideCircuit(own.get(), 0, rigs::Told(TOLD("Test", "Text."))))
                  .starts_with("Text. By its name plate"));
}

// What the very day that is told does decides, each wish for itself.
TEST(EnoughText, NamesEveryWishThatFailsAndWhatItTakes) {
  OwnCase own(test_support::planInCode(), rigs::Depth::Day);
  rigs::RigAnswer& rig = own.rig();
  rig.sizing.emplace();
  const auto lasts = [&](StageKind kind, double minute) {
    for (Stage& stage : rig.day.stages)
      if (stage.kind == kind) stage.end = stage.begin + minutes(minute);
  };
  lasts(StageKind::Strike, 45.0);
  lasts(StageKind::HeatingToBoil, 30.0);
  rig.day.boil->shareOfPreBoilPerHour = 0.0799;
  rig.sizing->toBoilAtAll = takes(1000.0);
  rig.sizing->toStrikeWithin = takes(1800.0);
  rig.sizing->toBoilWithin = takes(1500.0);
  rig.sizing->forBoilOff = takes(2500.0);
  const auto text = [&] { return inEnglish(enoughText(own.get(), 0)); };
  EXPECT_EQ(text().substr(0, text().find(" Together")),
            "Too little to boil off 8 %/h (that takes 2500 W); enough to strike within 45 min and "
            "to come from mash to boil within 45 min.");
  EXPECT_TRUE(holds(text(), "Together that takes 2500 W, from an element rated ")) << text();

  rig.sizing->toStrikeWithin = takes(2600.0);
  lasts(StageKind::Strike, 45.1);
  EXPECT_TRUE(holds(text(),
                    "Too little to strike within 45 min (that takes 2600 W) and to boil off 8 %/h "
                    "(that takes 2500 W); enough to come from mash to boil within 45 min."))
      << text();
  EXPECT_TRUE(holds(text(), "Together that takes 2600 W")) << text();

  rig.sizing->toStrikeWithin = {
      .power = {}, .onThisSupply = false, .stoppedBy = Limit::TimeAllowed};
  EXPECT_TRUE(text().starts_with(
      "No element up to 60 kW is enough to strike within 45 min (the limit: time). Too little "))
      << text();
  EXPECT_FALSE(holds(text(), "Together")) << text();

  rig.sizing->toStrikeWithin = rig.sizing->forBoilOff = takes(1900.0);
  lasts(StageKind::Strike, 44.9);
  rig.day.boil->shareOfPreBoilPerHour = 0.0801;
  EXPECT_EQ(text(),
            "Enough to strike within 45 min, to come from mash to boil within 45 min and to boil "
            "off 8 %/h. Together that takes 1900 W.");

  // One that steams strikes as soon as any, and evaporates; but that is no boil.
  rig.day.outcome = Outcome::Steams;
  for (Stage& stage : rig.day.stages)
    if (stage.kind == StageKind::HeatingToBoil) stage.last = rig.day.boilingPoint - kelvins(0.5);
  EXPECT_TRUE(text().starts_with(
      "Too little to roll in the boil (that takes 1000 W), to come from mash to boil within 45 min "
      "(that takes 1500 W) and to boil off 8 %/h (that takes 1900 W); enough to strike within "
      "45 min."))
      << text();
}

// Without grain there is no strike, and no mash to come from.
TEST(EnoughText, KnowsABatchWithoutGrain) {
  OwnCase own(test_support::planInCode(), rigs::Depth::Day);
  own.solution.plan.batch.grain.mass = kilograms(0.0);
  own.rig().sizing.emplace();
  own.rig().day.boil->shareOfPreBoilPerHour = 0.09;
  own.solution.plan.goals.boilWithin = hours(2.0);
  own.rig().sizing->toBoilAtAll = own.rig().sizing->toBoilWithin = own.rig().sizing->forBoilOff =
      takes(1900.0);
  EXPECT_EQ(
      inEnglish(enoughText(own.get(), 0)),
      "Enough to be at the boil within 2 h and to boil off 8 %/h. Together that takes 1900 W.");
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
  OwnCase own(plan, rigs::Depth::Everything);
  const rigs::Told enough = enoughText(own.get(), 0);
  EXPECT_TRUE(
      inEnglish(enough).starts_with("On a circuit that carries it, it would be enough to strike "))
      << inEnglish(enough);
  const std::string text = inEnglish(besideCircuit(own.get(), 0, enough));
  EXPECT_TRUE(text.starts_with("By its name plate it draws 23.91 A: too much for its circuit of"))
      << text;
  // Nor does the answer in short.
  const std::string inShort = test_support::inShort(whichElement(own.get()));
  EXPECT_TRUE(holds(inShort, "what it has is stronger, but too much for its circuit.")) << inShort;
  own.plan().rig.second = Feed{rig.rig.element, rig.rig.supply};
  EXPECT_TRUE(holds(test_support::inShort(whichElement(own.get())),
                    "but too much for one of its circuits at least."));
}

// 120 V, 15 A and a rule of 80 %: 12 A, 1440 W, for long use; 1716 W draw 14.3 A.
TEST(CarriesText, TellsShortUseFromLong) {
  rigs::RigPlan rig = test_support::kettle("Kitchen", 1650.0, 120.0, 120.0);
  rig.rig.supply = {volts(120.0), amperes(15.0), ohms(0.0)};
  rig.continuousShare = 0.8;
  const OwnCase own(planWith(rig));
  const auto text = [&](double watt) {
    return inEnglish(carriesText(own.get(), 0, {.power = watts(watt)}));
  };
  EXPECT_EQ(text(1716.0),
            "Its circuit carries that for short use only: it draws 14.3 A, and rules grant 12 A to "
            "long use.");
  EXPECT_EQ(text(1400.0), "Its circuit carries that, in long use too.");
  EXPECT_EQ(text(2000.0), "Its circuit does not carry that.");
  // The figures decide, not what a search noted.
  EXPECT_EQ(rigs::carries({}, rig, {.power = watts(1439.0)}), rigs::Carries::Yes);
  EXPECT_EQ(rigs::carries({}, rig, {.power = watts(1441.0)}), rigs::Carries::ForShortUseOnly);
  EXPECT_EQ(rigs::carries({}, rig, {.power = watts(1801.0)}), rigs::Carries::No);
}

TEST(LargestText, SaysNothingBeforeItIsSearchedFor) {
  OwnCase own(test_support::planInCode());
  own.rig().sizing.emplace();
  EXPECT_TRUE(largestText(own.get(), 0).empty());
  own.rig().sizing->largest.stoppedBy = Limit::SmallestBatch;
  EXPECT_EQ(inEnglish(largestText(own.get(), 0)),
            "Not even the smallest batch that covers the element fits the vessel.");
  own.rig().sizing->largest = {.wort = litres(24.0), .stoppedBy = Limit::Vessel};
  EXPECT_EQ(inEnglish(largestText(own.get(), 0)),
            "24 L is the largest batch: more would leave less than 10 % of the vessel free.");
}

TEST(WhatWouldBoilTexts, FollowTheReadersUnits) {
  const rigs::Reader us{.units = rigs::UnitSystem::UsCustomary};
  const auto texts = whatWouldBoilTexts({sweptDemo(), sweptDemo().plan, us, {}}, 0);
  ASSERT_EQ(texts.size(), 3U);
  const auto& what = *sweptDemo().answers.rigs[0].whatWouldBoil;
  EXPECT_TRUE(rigs::tell(texts[2], us)
                  .starts_with(rigs::format(*what.levelWithJacket, us.units) + " with a jacket"))
      << rigs::tell(texts[2], us);
  EXPECT_TRUE(whatWouldBoilTexts({sweptDemo(), sweptDemo().plan, us, {}}, 1).empty());
}

// --- The whole answer.

TEST(WhichElement, BeginsWithTheRigThatLacksMost) {
  const Answer answer = askedElement(true);
  ASSERT_EQ(answer.sentences.size(), 2U);
  const std::string first = inEnglish(answer.sentences[0]);
  const auto element = rigs::elementFor(sweptDemo().plan.rigs[0].rig,
                                        rigs::neededPower(*sweptDemo().answers.rigs[0].sizing));
  ASSERT_TRUE(element);
  EXPECT_TRUE(first.starts_with(inEnglish(rigs::Told::just(rigs::inWholeWatts(element->rating))) +
                                " at 120 V is what (a) "))
      << first;
  EXPECT_TRUE(first.ends_with("what it has is too weak. Its circuit does not carry that."))
      << first;
  EXPECT_TRUE(holds(inEnglish(answer.sentences[1]), "is what (d) "));
}

TEST(WhichElement, TellsOfEveryRigWhatItWouldTake) {
  const Answer answer = askedElement(true);
  for (std::size_t rig = 0; rig < 4; ++rig) {
    SCOPED_TRACE(rig);
    const std::string said = test_support::saidOf(answer, rig);
    EXPECT_TRUE(holds(said, " reach the vessel"));
    EXPECT_TRUE(holds(said, "Together that takes "));
  }
  EXPECT_TRUE(holds(test_support::saidOf(answer, 0), "is the least that makes it roll"));
}

TEST(WhichElement, HasTheFiguresOfTheResult) {
  test_support::expectFiguresOfTheResult(askedElement(true), sweptDemo(), 23);
}

// The days come before the sweeps and the sizing.
TEST(WhichElement, StandsWithoutSizingAndSweeps) {
  rigs::Solution days = sweptDemo();
  days.sweeps.clear();
  for (rigs::RigAnswer& rig : days.answers.rigs) {
    rig.sizing.reset();
    rig.whatWouldBoil.reset();
  }
  const Answer answer = askedElement(true, days);
  EXPECT_EQ(test_support::inShort(answer), "Being worked out …");
  EXPECT_EQ(cell(answer, "Now", "reaches the vessel", 1),
            cell(askedElement(true), "Now", "reaches the vessel", 1));
  EXPECT_EQ(cell(answer, "Element needed", "to boil at all", 1), "–");
  EXPECT_FALSE(holds(test_support::saidOf(answer, 1), "Not even"));
}

// --- The picture.

const PictureLine* beyondOf(const Picture& picture, int rig) {
  for (const PictureLine& line : picture.lines)
    if (line.faint && line.rig == rig) return &line;
  return nullptr;
}

TEST(WhichElement, DrawsFiniteAscendingPoints) {
  test_support::expectFiniteAscendingPoints(askedElement(true));
  test_support::expectFiniteAscendingPoints(askedElement(false));
}

TEST(WhichElement, MarksEveryRigThatBoilsOnItsOwnCurve) {
  for (const bool asWritten : {true, false}) {
    const Picture picture = askedElement(asWritten).pictures.at(0);
    ASSERT_EQ(picture.marks.size(), 4U);
    int boil = 0;
    for (const PictureMark& mark : picture.marks) {
      const auto rig = static_cast<std::size_t>(mark.rig);
      const bool boils = sweptDemo().answers.rigs[rig].day.outcome == Outcome::Done;
      EXPECT_EQ(test_support::contains(picture.lines[rig].points, mark.at), boils) << rig;
      boil += boils ? 1 : 0;
    }
    EXPECT_EQ(boil, 3);
  }
}

// The demo's first rig does not boil: that is said where its element is, at the top of all times.
TEST(WhichElement, SaysWhichRigDoesNotBoil) {
  const Picture picture = askedElement(true).pictures.at(0);
  const PictureMark& first = picture.marks.back();
  ASSERT_EQ(first.rig, 0);
  EXPECT_EQ(first.label, "(a) no boil");
  EXPECT_EQ(first.at, (PicturePoint{3000.0, *picture.yTo}));
}

// The brewer's own element is at one place, 3000 W, whichever supply it is on: (a) and (d).
TEST(WhichElement, PutsOneElementAtOnePlaceOnEverySupply) {
  const Picture written = askedElement(true).pictures.at(0);
  const Picture atSupply = askedElement(false).pictures.at(0);
  const auto placeOf = [](const Picture& picture, int rig) {
    for (const PictureMark& mark : picture.marks)
      if (mark.rig == rig) return mark.at.x;
    return -1.0;
  };
  EXPECT_NEAR(placeOf(written, 0), 3000.0, 1e-9);
  EXPECT_NEAR(placeOf(written, 3), 3000.0, 1e-9);
  EXPECT_NEAR(placeOf(atSupply, 0), 3000.0 * (120.0 * 120.0) / (230.0 * 230.0), 1e-9);
  EXPECT_NEAR(placeOf(atSupply, 3), 3000.0 * (208.0 * 208.0) / (230.0 * 230.0), 1e-9);
  // On 120 V such an element would have to be larger by the square of the voltages for the same.
  const auto at120 = valueAt(atSupply.lines[0].points, 1700.0);
  const auto at230 = valueAt(written.lines[0].points, 1700.0 * (230.0 * 230.0) / 14400.0);
  ASSERT_TRUE(at120 && at230);
  EXPECT_NEAR(*at120, *at230, 1e-6);
  EXPECT_NE(written.xTitle, atSupply.xTitle);
}

TEST(WhichElement, NamesTheSupplyOfEveryCurve) {
  const Picture picture = askedElement(true).pictures.at(0);
  for (std::size_t rig = 0; rig < 4; ++rig) {
    const std::string& name = picture.lines[rig].name;
    EXPECT_TRUE(name.starts_with(sweptDemo().plan.rigs[rig].name));
    EXPECT_TRUE(name.ends_with(rig == 3   ? "230 V on 208 V"
                               : rig == 0 ? "230 V on 120 V"
                                          : "120 V on 120 V"))
        << name;
    EXPECT_EQ(picture.lines[rig].rig, static_cast<int>(rig));
  }
  EXPECT_EQ(picture.lines.back().name, "more than its circuit carries");
}

// Too weak to strike in time: then that time, and the wanted one, is drawn too.
TEST(WhichElement, DrawsTheStrikeTimeThatItSaysIsMissed) {
  ASSERT_TRUE(holds(test_support::saidOf(askedElement(true), 1),
                    "Too little to strike within 45 min (that"));
  const Answer answer = askedElement(true);
  ASSERT_EQ(answer.pictures.size(), 2U);
  const Picture& strike = answer.pictures[1];
  EXPECT_EQ(strike.title, "Time to strike against element power");
  EXPECT_EQ(strike.draggable, std::optional(inMinutes(sweptDemo().plan.goals.boilWithin)));
  EXPECT_EQ(strike.draggableLabel, "wanted: 45 min");
  EXPECT_EQ(strike.limits.size(), answer.pictures[0].limits.size());
  for (std::size_t rig = 0; rig < 4; ++rig) {
    SCOPED_TRACE(rig);
    const PictureLine& line = strike.lines[rig];
    EXPECT_GE(line.points.size(), 10U);
    for (const PictureMark& mark : strike.marks) {
      if (mark.rig != static_cast<int>(rig)) continue;
      const auto time = rigs::timeOf(sweptDemo().answers.rigs[rig].day, StageKind::Strike);
      EXPECT_NEAR(mark.at.y, inMinutes(*time), 1e-9);
      EXPECT_TRUE(test_support::contains(line.points, mark.at));
    }
    // It meets the wanted time with the power that the page says it takes.
    const auto& wanted = sweptDemo().answers.rigs[rig].sizing->toStrikeWithin;
    const auto element = rigs::elementFor(sweptDemo().plan.rigs[rig].rig, wanted);
    ASSERT_TRUE(element);
    const double at =
        inWatts(rigs::ratingAt(*element, sweptDemo().plan.rigs[rig].rig.element.ratedAt));
    auto minutes = valueAt(line.points, at);
    if (!minutes && beyondOf(strike, static_cast<int>(rig)))
      minutes = valueAt(beyondOf(strike, static_cast<int>(rig))->points, at);
    ASSERT_TRUE(minutes);
    EXPECT_NEAR(*minutes, 45.0, 0.3);
  }
  // Where every rig strikes in time, one picture is enough.
  rigs::Solution enough = sweptDemo();
  for (rigs::RigAnswer& rig : enough.answers.rigs) rig.sizing->toStrikeWithin.power = watts(100.0);
  EXPECT_EQ(askedElement(true, enough).pictures.size(), 1U);
}

double mostAt(std::size_t rig) {
  return inWatts(mostOnCircuit({sweptDemo(), sweptDemo().plan, test_support::siReader(), {}}, rig));
}

// What a circuit carries is a mark; beyond it the same curve goes on, thin.
TEST(WhichElement, ShowsWhereEachCircuitEnds) {
  const Answer answer = askedElement(false);
  const Picture& picture = answer.pictures.at(0);
  ASSERT_EQ(picture.limits.size(), 2U);  // three rigs share one
  EXPECT_EQ(picture.limits[0].label, "(a) (b) (c) 120 V, 15 A");
  EXPECT_EQ(picture.limits[1].label, "(d) 208 V, 30 A");
  EXPECT_NEAR(picture.limits[0].x, 120.0 * 15.0, 1e-6);
  EXPECT_NEAR(picture.limits[1].x, 208.0 * 30.0, 1e-6);
  for (std::size_t rig = 0; rig < 4; ++rig) {
    SCOPED_TRACE(rig);
    const double most = mostAt(rig);
    const PictureLine& line = picture.lines[rig];
    const PictureLine* beyond = beyondOf(picture, static_cast<int>(rig));
    ASSERT_NE(beyond, nullptr);
    EXPECT_EQ(line.points.back(), beyond->points.front());
    EXPECT_NEAR(line.points.back().x, most, 1e-6);
    EXPECT_GT(beyond->points.back().x, most);
    EXPECT_GT(*picture.xTo, most);
    // The end of the thick line is a simulated day, and the table has its number.
    EXPECT_NEAR(
        test_support::number(answer, "Most its", "from mash to boil with that", rig).value(),
        line.points.back().y, 1e-9);
    EXPECT_NEAR(
        test_support::number(answer, "Most its", "element rated at the supply", rig).value(), most,
        1e-9);
  }
  const Answer written = askedElement(true);
  ASSERT_EQ(written.pictures.at(0).limits.size(), 3U);
  for (const std::size_t rig : {0U, 3U}) {
    EXPECT_NEAR(
        test_support::number(written, "Most its", "the same, rated as its own is", rig).value(),
        written.pictures[0].lines[rig].points.back().x, 1e-6);
  }
}

// An element that its circuit does not carry is marked on the thin part; nothing is lost of it.
TEST(WhichElement, MarksAnOverloadBeyondItsCircuit) {
  rigs::Plan plan = sweptDemo().plan;
  plan.rigs = {plan.rigs[1]};
  plan.rigs[0].rig.element.rating = watts(2400.0);
  plan.rigs[0].jacketIsCompared = false;
  const rigs::Solution solution = test_support::swept(plan);
  const Picture picture = askedElement(true, solution).pictures.at(0);
  const PictureLine* beyond = beyondOf(picture, 0);
  ASSERT_NE(beyond, nullptr);
  ASSERT_EQ(picture.marks.size(), 1U);
  EXPECT_TRUE(test_support::contains(beyond->points, picture.marks[0].at));
  EXPECT_NEAR(picture.lines[0].points.back().x, 1800.0, 1e-6);
}

TEST(WhichElement, CanBeDragged) {
  const Picture picture = askedElement(true).pictures.at(0);
  ASSERT_TRUE(picture.draggable);
  EXPECT_DOUBLE_EQ(*picture.draggable, inMinutes(sweptDemo().plan.goals.boilWithin));
  EXPECT_EQ(picture.draggableLabel, "wanted: 45 min");
}

}  // namespace
}  // namespace gui::telling
