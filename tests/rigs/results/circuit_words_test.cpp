// SPDX-License-Identifier: GPL-3.0-or-later
// What a rule's finding and a circuit's verdict say, word for word. The arithmetic in them was done
// by hand.
#include "rigs/results/circuit_words.hpp"

#include <gtest/gtest.h>

namespace {

using namespace physics;
using namespace rigs;

Told says(std::string text) { return Told::just(Verbatim{std::move(text)}); }

Finding of(RuleKind kind, const char* name, Fit fit = Fit::Fits) {
  Finding finding{};
  finding.kind = kind;
  finding.name = says(name);
  finding.fit = fit;
  return finding;
}

// 1650 W at 120 V on a circuit of 15 A.
Finding longUse() {
  Finding finding = of(RuleKind::LongUse, "continuous load", Fit::DoesNotFit);
  finding.load = amperes(13.75);
  finding.rating = amperes(15.0);
  finding.limit = amperes(12.0);
  finding.share = 0.8;
  finding.full = hours(2.0);
  finding.enabled = hours(5.0);
  finding.needed = hours(3.0);
  return finding;
}

Finding conductor(double tabled, double share, double limit) {
  Finding finding = of(RuleKind::Conductor, "the cable");
  finding.load = amperes(13.75);
  finding.rating = amperes(tabled);
  finding.share = share;
  finding.limit = amperes(limit);
  return finding;
}

TEST(Arithmetic, ComparesALoadWithARatingOrAShareOfIt) {
  Finding rating = of(RuleKind::Rating, "the circuit's rating");
  rating.load = amperes(13.75);
  rating.rating = rating.limit = amperes(15.0);
  rating.share = 1.0;
  EXPECT_EQ(inEnglish(arithmetic(rating)), "13.75 A against 15 A");
  rating.kind = RuleKind::SharedCircuit;
  rating.share = 0.8;
  rating.limit = amperes(12.0);
  EXPECT_EQ(inEnglish(arithmetic(rating)), "13.75 A against 80 % of 15 A = 12 A");
  rating.limit.reset();
  EXPECT_EQ(inEnglish(arithmetic(rating)), "");
}

TEST(Arithmetic, SaysHowLongCurrentFlowsAndWhatTheRuleCounts) {
  EXPECT_EQ(inEnglish(arithmetic(longUse())),
            "13.75 A against 80 % of 15 A = 12 A; current flows for 2 h without a break, the "
            "element is enabled for 5 h on end, the rule counts from 3 h");
  Finding window = longUse();
  window.within = hours(2.0);
  window.full = minutes(90.0);
  window.enabled = hours(2.0);
  window.needed = hours(1.0);
  EXPECT_EQ(inEnglish(arithmetic(window)),
            "13.75 A against 80 % of 15 A = 12 A; current flows for 1 h 30 min in the fullest 2 h, "
            "the element is enabled for 2 h of it, the rule counts from 1 h");
}

// (240/208)^2 = 1.331.
TEST(Arithmetic, TellsOverVoltageByItsPower) {
  Finding finding = of(RuleKind::OverVoltage, "over-voltage", Fit::DoesNotFit);
  finding.voltage = volts(208.0);
  finding.foundShare = 240.0 / 208.0 * 240.0 / 208.0;
  EXPECT_EQ(inEnglish(arithmetic(finding)),
            "an element rated at 208 V would give 1.33 times its power and surface load; use one "
            "rated for this supply");
}

TEST(Arithmetic, TellsOutletsAndTheirUse) {
  Finding outlet = of(RuleKind::OutletOnCircuit, "outlet 5-15 on the circuit");
  outlet.rating = amperes(20.0);
  outlet.limit = amperes(15.0);
  EXPECT_EQ(inEnglish(arithmetic(outlet)), "15 A outlet on a circuit of 20 A");
  Finding contacts = of(RuleKind::OutletContacts, "earth of 10-30", Fit::DoesNotFit);
  contacts.condition = says("it has no earth contact");
  EXPECT_EQ(inEnglish(arithmetic(contacts)), "it has no earth contact");
  EXPECT_EQ(inEnglish(findingText(contacts)),
            "earth of 10-30: it has no earth contact: does not fit.");
  contacts.fit = Fit::OnlyIf;
  contacts.condition = says("it has one");
  EXPECT_EQ(inEnglish(findingText(contacts)), "earth of 10-30: fits only if it has one.");
  Finding household = of(RuleKind::HouseholdSocket, "long use of a household socket");
  household.load = amperes(13.04);
  household.full = hours(2.5);
  household.limit = amperes(10.0);
  household.needed = hours(1.0);
  EXPECT_EQ(inEnglish(arithmetic(household)),
            "13.04 A for 2 h 30 min, above 10 A for longer than 1 h");
}

// 1.5 x 18.75 A is 28.1 A: 30 A.
TEST(Arithmetic, TellsTheLargestBreakerOfAnApplianceAndOfACable) {
  Finding appliance = of(RuleKind::LargestProtection, "largest breaker for one appliance");
  appliance.rating = amperes(50.0);
  appliance.load = amperes(18.75);
  appliance.limit = amperes(30.0);
  EXPECT_EQ(inEnglish(arithmetic(appliance)),
            "a breaker of 50 A for an appliance of 18.75 A without a marked one; the most is 30 A");
  Finding cable = of(RuleKind::BreakerForConductor, "breaker for the cable");
  cable.load = amperes(30.0);
  cable.limit = amperes(20.0);
  EXPECT_EQ(inEnglish(arithmetic(cable)), "a breaker of 30 A, the most is 20 A");
}

TEST(Arithmetic, TellsWhatTakesOffFromAConductor) {
  EXPECT_EQ(inEnglish(arithmetic(conductor(25.0, 1.0, 25.0))), "13.75 A against 25 A");
  EXPECT_EQ(inEnglish(arithmetic(conductor(25.0, 1.0, 20.0))),
            "13.75 A against 20 A of its terminations");
  EXPECT_EQ(inEnglish(arithmetic(conductor(25.0, 0.8, 20.0))),
            "13.75 A against 0.8 of 25 A = 20 A");
  EXPECT_EQ(inEnglish(arithmetic(conductor(30.0, 0.8, 20.0))),
            "13.75 A against 0.8 of 30 A = 24 A, no more than 20 A of its terminations");
  EXPECT_EQ(inEnglish(arithmetic(of(RuleKind::Conductor, "the cable", Fit::CannotSay))), "");
  Finding margin = of(RuleKind::ConductorLongUse, "margin of the cable");
  margin.share = 0.8;
  margin.rating = amperes(15.0);
  margin.load = amperes(12.0);
  margin.limit = amperes(13.75);
  EXPECT_EQ(inEnglish(arithmetic(margin)), "80 % of 15 A = 12 A against 13.75 A, without it 15 A");
}

TEST(Arithmetic, TellsAVoltageDropAndTheConductorThatKeepsIt) {
  Finding drop = of(RuleKind::VoltageDrop, "voltage drop, branch circuit");
  drop.foundShare = 0.0576;
  drop.share = 0.03;
  EXPECT_EQ(inEnglish(arithmetic(drop)), "5.76 % against 3 %");
  drop.binding = false;
  drop.least = squareMetres(2.88e-6);
  EXPECT_EQ(inEnglish(arithmetic(drop)),
            "5.76 % against 3 %, a recommendation; at least 2.88 mm2 of copper would keep it");
  drop.longest = metres(30.48);
  EXPECT_EQ(inEnglish(arithmetic(drop)),
            "5.76 % against 3 %, a recommendation; at least 2.88 mm2 of copper would keep it; up "
            "to 30.5 m (100 ft) of this cable keep it");
}

// 0.75 mA/kW of 5.6 kW.
TEST(Arithmetic, TellsLeakageInMilliamperes) {
  Finding device = of(RuleKind::GroundFault, "Class A GFCI", Fit::OnlyIf);
  device.limit = amperes(0.004);
  EXPECT_EQ(inEnglish(arithmetic(device)), "the device may trip from 4 mA");
  device.load = amperes(0.0042);
  EXPECT_EQ(inEnglish(arithmetic(device)),
            "an element of this power may leak 4.2 mA, the device may trip from 4 mA");
  device.condition = says("Needed near sinks.");
  EXPECT_EQ(inEnglish(findingText(device)),
            "Class A GFCI: " + inEnglish(arithmetic(device)) + ". Needed near sinks.");
}

TEST(CiteText, NamesAClauseOnceAndWhoReadIt) {
  EXPECT_EQ(inEnglish(citeText({})), "");
  EXPECT_EQ(
      inEnglish(citeText({.clause = "8-104", .source = "CSA", .status = Status::Seen, .note = ""})),
      "8-104; CSA; read");
  EXPECT_EQ(inEnglish(citeText({.clause = "IEC 60335-1",
                                .source = "IEC 60335-1, quoted",
                                .status = Status::Memory,
                                .note = ""})),
            "IEC 60335-1, quoted; from memory, check");
  EXPECT_EQ(inEnglish(citeText(
                {.clause = "Table 2", .source = "own", .status = Status::Computed, .note = ""})),
            "Table 2; own; computed");
}

// A verdict by rules of our own; nothing but its region, code and edition is looked at.
class Verdict : public testing::Test {
 protected:
  Verdict() {
    rules_.region = "Atlantis";
    rules_.code = "AEC";
    rules_.edition = "2020";
    rules_.breakers.cite = {
        .clause = "7", .source = "the code", .status = Status::Seen, .note = ""};
    verdict_.rules = &rules_;
    verdict_.load = amperes(13.75);
  }
  Finding& add(Finding finding) {
    verdict_.findings.push_back(std::move(finding));
    return verdict_.findings.back();
  }

  CircuitRules rules_;
  CircuitVerdict verdict_{};
};

TEST_F(Verdict, ThatFitsNamesTheLoad) {
  verdict_.overall = Fit::Fits;
  EXPECT_EQ(inEnglish(rulesText(rules_)), "Atlantis, AEC 2020");
  EXPECT_EQ(inEnglish(verdictText(verdict_)), "Atlantis, AEC 2020: fits, 13.75 A.");
}

TEST_F(Verdict, ThatDoesNotFitNamesEveryBrokenRule) {
  verdict_.overall = Fit::DoesNotFit;
  Finding& first = add(of(RuleKind::Rating, "the circuit's rating", Fit::DoesNotFit));
  first.load = amperes(13.75);
  first.limit = amperes(10.0);
  add(of(RuleKind::OutletContacts, "earth of 10-30", Fit::DoesNotFit)).condition = says("no earth");
  add(of(RuleKind::SharedCircuit, "a kept rule"));
  add(of(RuleKind::VoltageDrop, "advice", Fit::DoesNotFit)).binding = false;
  EXPECT_EQ(inEnglish(verdictText(verdict_)),
            "Atlantis, AEC 2020: does not fit: the circuit's rating (13.75 A against 10 A); earth "
            "of 10-30 (no earth).");
  EXPECT_EQ(inEnglish(verdictInBrief(verdict_)),
            "Atlantis, AEC 2020: does not fit: the circuit's rating; earth of 10-30.");
  EXPECT_TRUE(conditionsOf(verdict_).empty());
  EXPECT_EQ(inEnglish(outcomeText(verdict_)), "does not fit");
}

TEST_F(Verdict, ThatFitsOnlyIfNamesEachConditionOnce) {
  verdict_.overall = Fit::OnlyIf;
  Finding shared = of(RuleKind::SharedCircuit, "one load among several", Fit::OnlyIf);
  shared.load = amperes(13.75);
  shared.rating = amperes(15.0);
  shared.share = 0.8;
  shared.limit = amperes(12.0);
  shared.condition = says("the circuit feeds one outlet alone");
  shared.cite = {.clause = "9", .source = "the code", .status = Status::Memory, .note = ""};
  add(shared);
  shared.kind = RuleKind::OutletLoad;
  add(shared);
  add(of(RuleKind::LargestProtection, "breaker", Fit::OnlyIf)).condition =
      says("its maker says so");
  EXPECT_EQ(inEnglish(verdictText(verdict_)),
            "Atlantis, AEC 2020: fits only if the circuit feeds one outlet alone; and if its maker "
            "says so.");
  EXPECT_EQ(inEnglish(findingText(shared)),
            "one load among several: 13.75 A against 80 % of 15 A = 12 A: fits only if the circuit "
            "feeds one outlet alone. [9; the code; from memory, check]");
  // In brief, too.
  EXPECT_EQ(verdictInBrief(verdict_), verdictText(verdict_));
  EXPECT_EQ(inEnglish(outcomeText(verdict_)),
            "fits only if the circuit feeds one outlet alone; and if its maker says so");
  EXPECT_EQ(conditionsOf(verdict_).size(), 2u);
  // On the edge or not known besides: it hangs on them all the same.
  verdict_.overall = Fit::CannotSay;
  EXPECT_EQ(
      inEnglish(outcomeText(verdict_)),
      "cannot say; fits only if the circuit feeds one outlet alone; and if its maker says so");
  shared.binding = false;
  EXPECT_EQ(
      inEnglish(outcomeText(shared)),
      "13.75 A against 80 % of 15 A = 12 A: advice: fits only if the circuit feeds one outlet "
      "alone.");
}

TEST_F(Verdict, ThatCannotSayNamesWhatItLacks) {
  verdict_.overall = Fit::CannotSay;
  Finding& voltage = add(of(RuleKind::Voltage, "supply voltage", Fit::CannotSay));
  voltage.voltage = volts(127.0);
  voltage.condition = says("127 V is no supply voltage of Atlantis");
  EXPECT_EQ(inEnglish(verdictText(verdict_)),
            "Atlantis, AEC 2020: cannot say: 127 V is no supply voltage of Atlantis.");
  EXPECT_EQ(inEnglish(findingText(voltage)),
            "supply voltage: cannot say: 127 V is no supply voltage of Atlantis.");
}

// A condition is the same where its parts are, not where its words are: another reader has others.
TEST_F(Verdict, TellsConditionsApartByTheirPartsAndJoinsThem) {
  verdict_.overall = Fit::OnlyIf;
  const auto marked = [](double celsius) {
    return Told(TOLD("Phrases", "every termination is marked for %1 (%2)"),
                amount(physics::celsius(celsius)), Verbatim{"110.14(C)"});
  };
  add(of(RuleKind::Conductor, "a wire", Fit::OnlyIf)).condition = marked(75.0);
  add(of(RuleKind::BreakerForConductor, "its breaker", Fit::OnlyIf)).condition = marked(75.0);
  add(of(RuleKind::BreakerForConductor, "another", Fit::OnlyIf)).condition = marked(90.0);
  EXPECT_EQ(inEnglish(verdictText(verdict_)),
            "Atlantis, AEC 2020: fits only if every termination is marked for 75 °C (110.14(C)); "
            "and if every termination is marked for 90 °C (110.14(C)).");
  EXPECT_EQ(inEnglish(verdictText(verdict_), UnitSystem::UsCustomary),
            "Atlantis, AEC 2020: fits only if every termination is marked for 167 °F (110.14(C)); "
            "and if every termination is marked for 194 °F (110.14(C)).");
}

TEST_F(Verdict, InBriefNamesAnOutletAndItsUseThoughOneNameHoldsTheOther) {
  verdict_.overall = Fit::DoesNotFit;
  Finding onCircuit = of(RuleKind::OutletOnCircuit, "outlet 5-15 on the circuit", Fit::DoesNotFit);
  onCircuit.limit = amperes(15.0);
  onCircuit.rating = amperes(20.0);
  add(onCircuit);
  add(of(RuleKind::OutletRating, "outlet 5-15", Fit::DoesNotFit));
  EXPECT_EQ(inEnglish(verdictInBrief(verdict_)),
            "Atlantis, AEC 2020: does not fit: outlet 5-15 on the circuit; outlet 5-15.");
}

TEST_F(Verdict, TellsTheNextSizesAsInformationOnly) {
  EXPECT_EQ(inEnglish(informationText(verdict_)), "");
  verdict_.nextBreaker = verdict_.nextBreakerContinuous = amperes(15.0);
  EXPECT_EQ(inEnglish(informationText(verdict_)),
            "For information, not to be installed by this: the standard size for 13.75 A is 15 A. "
            "[7; the code; read]");
  verdict_.conductorForNext = "14 AWG";
  verdict_.nextBreakerContinuous = amperes(20.0);
  verdict_.conductorForContinuous = "12 AWG";
  EXPECT_EQ(inEnglish(informationText(verdict_)),
            "For information, not to be installed by this: the standard size for 13.75 A is 15 A "
            "with 14 AWG of copper; counted as continuous, 20 A with 12 AWG of copper. [7; the "
            "code; read]");
}

TEST(ElectricianText, LeavesTheVerdictToLocalCodeAndElectrician) {
  const std::string text = inEnglish(electricianText());
  EXPECT_NE(text.find("local codes decide"), std::string::npos);
  EXPECT_NE(text.find("licensed electrician"), std::string::npos);
}

}  // namespace
