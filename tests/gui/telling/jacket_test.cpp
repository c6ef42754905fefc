// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? Both days as curves, what lies between them, and the same numbers beside.
#include "gui/telling/jacket.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

#include "gui/telling/curve.hpp"
#include "gui/telling/shortest.hpp"
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
using test_support::number;
using test_support::OwnCase;
using test_support::sweptDemo;

Answer askedJacket(const QuestionView& view = {}, const rigs::Solution& solution = sweptDemo()) {
  return worthJacket({solution, solution.plan, test_support::siReader(), view});
}

JacketEffect compared(const rigs::Plan& plan) {
  const rigs::RigPlan& rig = plan.rigs.front();
  return compareJacket(rig.bare, rig.jacketed, plan.batch, plan.place, rigs::timeAlone(plan));
}

// 150 W stall before strike; the same under a thick jacket passes it. More energy over a longer way
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
  OwnCase own(plan);
  own.rig().jacket = compared(plan);
  ASSERT_EQ(own.rig().jacket->bare.outcome, Outcome::DoesNotReachStrike);
  ASSERT_EQ(own.rig().jacket->verdict, JacketVerdict::GetsFurther);
  const std::string text =
      inEnglish(rigs::sentences({jacketSavingText(own.get(), 0), jacketVerdictText(own.get(), 0)}));
  EXPECT_TRUE(holds(text, "It gets further: bare, it stops at ")) << text;
  EXPECT_TRUE(holds(text, " on the way to strike; with the jacket it reaches strike in ")) << text;
  for (const char* never : {"from the wall", "Not worth it", "EUR"})
    EXPECT_FALSE(holds(text, never)) << text;
}

// No flat yes or no where what is uncertain about losses could turn it around.
TEST(JacketVerdictText, LeavesOpenWhatIsOnTheEdge) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  OwnCase own(plan);
  JacketEffect& effect = own.rig().jacket.emplace(compared(plan));
  effect.savedToStrike.reset();
  const Time toBoil = rigs::timeToBoil(effect.bare).value();
  const auto all = [&](double share, JacketVerdict verdict) {
    effect.savedToBoil = share * toBoil;
    effect.verdict = verdict;
    return inEnglish(jacketVerdictText(own.get(), 0)) + '\n' +
           inEnglish(jacketInBrief(own.get(), 0)) + '\n' +
           inEnglish(worthJacket(own.get()).sentences.at(0)) + '\n' +
           inEnglish(shortestOf(Question::WorthJacket, own.get(), 0));
  };
  for (const double share : {0.045, 0.053}) {
    for (const JacketVerdict verdict :
         {JacketVerdict::Worthwhile, JacketVerdict::TimeNotWorthIt, JacketVerdict::NotWorthIt}) {
      const std::string text = all(share, verdict);
      EXPECT_TRUE(holds(text, "On the edge of worth it: ")) << text;
      EXPECT_TRUE(holds(text, "known to about a fifth")) << text;
      EXPECT_TRUE(holds(text, "on the edge, ")) << text;
      for (const char* flat :
           {"Worth it", "Not worth it", "hardly", "yes", "more than 5 % of a heat"})
        EXPECT_FALSE(holds(text, flat)) << flat << '\n' << text;
      EXPECT_EQ(holds(text, " for the heat it holds"), verdict == JacketVerdict::TimeNotWorthIt);
      EXPECT_EQ(holds(text, "unplugged"), verdict == JacketVerdict::TimeNotWorthIt);
    }
  }
  EXPECT_FALSE(holds(all(0.07, JacketVerdict::Worthwhile), "edge"));
  EXPECT_FALSE(holds(all(0.03, JacketVerdict::NotWorthIt), "edge"));
}

TEST(JacketVerdictText, NamesTheMetalsEmissivityLikeAPerson) {
  rigs::Plan plan = test_support::planInCode();
  plan.rigs.resize(1);
  OwnCase own(plan);
  own.plan().finish = "emissivity 0.16";
  own.plan().bare.vessel.side.emissivity = 0.16;
  JacketEffect& effect = own.rig().jacket.emplace(compared(plan));
  effect.verdict = JacketVerdict::NotWorthIt;
  effect.savedToStrike.reset();
  effect.savedToBoil = 0.02 * rigs::timeToBoil(effect.bare).value();  // far from the rule
  effect.reasons = {
      .strongElementHidesLosses = true, .skinRadiatesMore = true, .surfaceDominates = true};
  const auto text = [&] { return inEnglish(jacketVerdictText(own.get(), 0)); };
  EXPECT_TRUE(
      holds(text(), "its outside (foam) radiates more than metal of emissivity 0.16; of the "))
      << text();
  EXPECT_TRUE(holds(text(), " lost at the boil most leaves by the open surface.")) << text();
  EXPECT_TRUE(
      text().starts_with("Not worth it, no more than 5 % of the time: the bare side loses only "))
      << text();
  own.plan().finish = "brushed";
  EXPECT_TRUE(holds(text(), "than brushed metal; ")) << text();
  effect.reasons = {};
  EXPECT_EQ(text(), "Not worth it: no more than 5 % of the time.");
  effect.verdict = JacketVerdict::TimeNotWorthIt;
  EXPECT_TRUE(text().starts_with("Not worth it for the time: no more than 5 % of it. But "))
      << text();
  EXPECT_TRUE(text().ends_with(" after 2 h unplugged.")) << text();
}

// A jacket of metal on bright metal may lose more and take longer: nothing of it is a saving.
TEST(JacketSavingText, TellsALossAsALoss) {
  OwnCase own(test_support::planInCode());
  JacketEffect& effect = own.rig().jacket.emplace(compared(test_support::planInCode()));
  ASSERT_TRUE(effect.savedToBoil && effect.savedToStrike && effect.savedFromWall);
  const auto text = [&] { return inEnglish(jacketSavingText(own.get(), 0)); };
  EXPECT_TRUE(holds(text(), " saved from mash to boil; ")) << text();
  effect.savedToBoil = seconds(-80.0);
  effect.savedToStrike = seconds(-5.0);
  effect.savedFromWall = joules(-36e3);
  std::swap(effect.atBoil.bare, effect.atBoil.jacketed);
  EXPECT_TRUE(text().starts_with("If it had 10 mm foam: 1 min longer than ")) << text();
  for (const char* part : {" from mash to boil; less than 1 min longer than ", " to strike; ",
                           " W more lost at 100 °C; ", " more from the wall."})
    EXPECT_TRUE(holds(text(), part)) << text();
  EXPECT_FALSE(holds(text(), "saved")) << text();
}

// Jackets are told in the reader's units, or in the author's own words where these are of the
// reader's system: 13 mm are 0.512 in, R 1.8 is 0.317 m2 K/W.
TEST(JacketWords, FollowTheirReaderAndTheirAuthor) {
  OwnCase own(test_support::planInCode());
  own.plan().jacket = {
      {{"side",
        {{.material = "cork", .thickness = millimetres(13.0), .written = "13 mm"},
         {.material = "",
          .insulance = squareMetreKelvinsPerWatt(0.317),
          .written = "1.8 ft2*h*degF/Btu"}}},
       {"lid",
        {{.material = "", .insulance = squareMetreKelvinsPerWatt(0.317), .written = "R 1.8"}}}}};
  EXPECT_EQ(inEnglish(jacketWords(own.get(), 0)),
            "side 13 mm cork + R 0.317 m²·K/W; lid R 0.317 m²·K/W");
  const rigs::Reader us{.units = rigs::UnitSystem::UsCustomary};
  EXPECT_EQ(rigs::tell(jacketWords({own.solution, own.solution.plan, us, {}}, 0), us),
            "side 0.512 in cork + R 1.8 ft2*h*degF/Btu; lid R 1.8");
}

// --- The whole answer.

TEST(WorthJacket, BeginsWithTheJacketThatSavesMost) {
  const Answer answer = askedJacket();
  ASSERT_EQ(answer.sentences.size(), 2U);
  EXPECT_TRUE(holds(inEnglish(answer.sentences[0]), " a batch is what a supposed jacket (13 mm ") ||
              holds(inEnglish(answer.sentences[0]), " a batch is what its own jacket (13 mm "))
      << inEnglish(answer.sentences[0]);
  EXPECT_TRUE(holds(inEnglish(answer.sentences[1]), " is as far as (a) "));
  EXPECT_TRUE(holds(test_support::saidOf(answer, 1),
                    "As it is, bare, and as if it had a jacket: side 13 mm "));
  EXPECT_TRUE(
      holds(test_support::saidOf(answer, 2), "As it is, with its jacket (side 13 mm closed-cell "));
}

// Under a rig's letter stands the rig; what is supposed has rows, sentences and a name of its own.
TEST(WorthJacket, ShowsNothingUnderARigsNameThatItIsNot) {
  const Answer answer = askedJacket();
  const std::string supposed = "if it had 13 mm closed-cell rubber foam on side and lid";
  EXPECT_EQ(
      inEnglish(supposedText(Case{sweptDemo(), sweptDemo().plan, test_support::siReader(), {}}, 1)),
      supposed);
  EXPECT_EQ(
      inEnglish(supposedText(Case{sweptDemo(), sweptDemo().plan, test_support::siReader(), {}}, 2)),
      "if it were bare");
  EXPECT_TRUE(holds(test_support::saidOf(answer, 1),
                    "If it had 13 mm closed-cell rubber foam on side and lid: "));
  EXPECT_TRUE(holds(test_support::saidOf(answer, 2),
                    "Its jacket (13 mm closed-cell rubber foam on side and lid): "));
  const char* energy = "From the wall, whole day";
  for (const std::size_t rig : {1U, 2U, 3U}) {
    SCOPED_TRACE(rig);
    const BrewDay& day = sweptDemo().answers.rigs[rig].day;
    EXPECT_NEAR(number(answer, energy, "as it is", rig).value(),
                inKilowattHours(day.total.fromWall()), 1e-9);
    EXPECT_NEAR(number(answer, "From mash to boil", "as it is", rig).value(),
                inMinutes(*rigs::timeOf(day, StageKind::HeatingToBoil)), 1e-6);
    const bool has = sweptDemo().plan.rigs[rig].hasJacket;
    EXPECT_EQ(number(answer, energy, supposed, rig).has_value(), !has);
    EXPECT_EQ(number(answer, energy, "if it were bare", rig).has_value(), has);
  }
  for (const bool thickness : {true, false}) {
    for (const bool savings : {true, false}) {
      for (const Picture& picture :
           askedJacket({.overThickness = thickness, .savings = savings}).pictures)
        for (const PictureLine& line : picture.lines)
          EXPECT_EQ(line.name == sweptDemo().answers.rigs[static_cast<std::size_t>(line.rig)].name,
                    !line.faint)
              << line.name;
    }
  }
}

TEST(WorthJacket, HasTheFiguresOfTheResult) {
  test_support::expectFiguresOfTheResult(askedJacket(), sweptDemo(), 18);
}

TEST(WorthJacket, SaysHowToGiveAPlanAJacket) {
  rigs::Solution bare = sweptDemo();
  for (rigs::RigAnswer& rig : bare.answers.rigs) rig.jacket.reset();
  for (rigs::RigSweeps& sweeps : bare.sweeps) {
    sweeps.thickness.clear();
    sweeps.jacketPower.clear();
  }
  const Answer answer = askedJacket({}, bare);
  EXPECT_EQ(test_support::inShort(answer), "No rig of this plan has a jacket to compare.");
  bool told = false;
  for (const Block& block : answer.blocks)
    if (const auto* sentence = std::get_if<Sentence>(&block))
      told = told || holds(inEnglish(sentence->text), "\"jacket_to_compare\": {\"side\"");
  EXPECT_TRUE(told);
  for (const Table* table : answer.tables())
    EXPECT_TRUE(shownRows(*table, test_support::siReader()).empty());
  // Where another rig has one, the rig without is named.
  rigs::Solution one = sweptDemo();
  one.answers.rigs[1].jacket.reset();
  EXPECT_EQ(test_support::saidOf(askedJacket({}, one), 1),
            "No jacket to compare: the plan gives it none.");
}

// --- The pictures.

const PictureLine& lineOf(const Picture& picture, std::size_t rig, bool asItIs) {
  for (const PictureLine& line : picture.lines)
    if (line.rig == static_cast<int>(rig) && line.faint != asItIs) return line;
  throw std::logic_error("no such line");
}
// What a jacket saves is the rig's only where it is its own.
const PictureLine& savingOf(const Picture& picture, std::size_t rig) {
  for (const PictureLine& line : picture.lines)
    if (line.rig == static_cast<int>(rig)) return line;
  throw std::logic_error("no such line");
}

// The demo's rigs (b) and (c) are the same kettle, once planned bare and once with its jacket.
TEST(WorthJacket, LeavesOutDaysThatStop) {
  for (const bool thickness : {true, false}) {
    const Answer answer = askedJacket({.overThickness = thickness, .savings = true});
    test_support::expectFiniteAscendingPoints(answer);
    ASSERT_EQ(answer.pictures.size(), 2U);
    for (const Picture& picture : answer.pictures) {
      for (const PictureLine& line : picture.lines) {
        for (const PicturePoint& p : line.points) {
          // A film of insulation hardly insulates, and radiates more than bright metal.
          if (thickness && p.x < 1.0) continue;
          EXPECT_GE(p.y, -1e-9) << line.name;
        }
      }
    }
    if (thickness) {
      EXPECT_TRUE(answer.pictures[0].lines[0].points.empty());
      EXPECT_FALSE(answer.pictures[0].lines[1].points.empty());
    }
  }
}

// The least heat that rolls has what the boil is turned down to in it: not a second time.
TEST(WorthJacket, ComparesWhereverTheTurnedDownBoilRolls) {
  rigs::Plan plan = sweptDemo().plan;
  plan.rigs = {plan.rigs[1]};
  for (Rig* rig : {&plan.rigs[0].rig, &plan.rigs[0].bare, &plan.rigs[0].jacketed})
    rig->boilPower = 0.6;
  const rigs::Solution solution = test_support::swept(plan);
  std::vector<double> rolling;
  for (const rigs::JacketPowerPoint& p : solution.sweeps[0].jacketPower)
    if (p.bare.done && p.savedToBoil) rolling.push_back(inWatts(p.element));
  ASSERT_GE(rolling.size(), 5U);
  ASSERT_LE(rolling.size(), 16U) << "some stall";
  const Answer answer = askedJacket({.overThickness = false, .savings = true}, solution);
  std::vector<double> drawn;
  for (const PicturePoint& p : savingOf(answer.pictures[0], 0).points) drawn.push_back(p.x);
  EXPECT_EQ(drawn, rolling);
}

TEST(WorthJacket, ShowsTheDayWithTheJacketAndWithout) {
  for (const bool thickness : {true, false}) {
    const Answer answer = askedJacket({.overThickness = thickness});
    test_support::expectFiniteAscendingPoints(answer);
    ASSERT_EQ(answer.pictures.size(), 2U);
    for (const Picture& picture : answer.pictures) {
      for (const std::size_t rig : {1U, 2U, 3U}) {
        SCOPED_TRACE(rig);
        const bool has = sweptDemo().plan.rigs[rig].hasJacket;
        // Over thickness the thin line is the jacket's, whoever has one.
        const PictureLine& with = lineOf(picture, rig, has && !thickness);
        const PictureLine& without = lineOf(picture, rig, !has || thickness);
        EXPECT_GE(with.points.size(), 10U);
        EXPECT_GE(without.points.size(), 10U);
        for (const PicturePoint& p : with.points) {
          const auto bare = valueAt(without.points, p.x);
          // A film of insulation hardly insulates, and radiates more than bright metal; and a thin
          // jacket is worth less than the one a rig has.
          if (!bare || (thickness && p.x < (has ? 14.0 : 3.0))) continue;
          EXPECT_LT(p.y, *bare) << p.x;
        }
      }
    }
    // The old element never boils, so that there is nothing to compare for it as it is.
    if (thickness) {
      EXPECT_TRUE(lineOf(answer.pictures[0], 0, true).points.empty());
    }
  }
}

// At the rig's own place both curves go through its own two days, which the mark and table tell.
TEST(WorthJacket, MarksTheRigsOwnTwoDaysOnTheirCurves) {
  for (const bool thickness : {true, false}) {
    const Answer answer = askedJacket({.overThickness = thickness});
    for (const std::size_t rig : {1U, 2U, 3U}) {
      SCOPED_TRACE(rig);
      const auto& effect = *sweptDemo().answers.rigs[rig].jacket;
      const bool has = sweptDemo().plan.rigs[rig].hasJacket;
      const std::array days{has ? &effect.jacketed : &effect.bare,
                            has ? &effect.bare : &effect.jacketed};
      std::vector<PictureMark> marks;
      for (const PictureMark& mark : answer.pictures[0].marks)
        if (mark.rig == static_cast<int>(rig)) marks.push_back(mark);
      ASSERT_EQ(marks.size(), 2U);
      for (const std::size_t i : {0U, 1U}) {
        const auto time = rigs::timeOf(*days.at(i), StageKind::HeatingToBoil);
        ASSERT_TRUE(time);
        EXPECT_NEAR(marks[i].at.y, inMinutes(*time), 1e-9);
        EXPECT_TRUE(
            test_support::contains(lineOf(answer.pictures[0], rig, i == 0).points, marks[i].at));
      }
      EXPECT_EQ(marks[0].label,
                letter(rig) + ' ' + std::to_string(std::lround(marks[0].at.y)) + " min");
      EXPECT_EQ(marks[1].label, "");
      EXPECT_EQ(marks[1].event,
                letter(rig) + (has ? " if it were bare"
                                   : " if it had 13 mm closed-cell rubber foam on side and lid"));
      const double own = number(answer, "Cost of a batch", "as it is", rig).value();
      const double other = number(answer, "Cost of a batch",
                                  has ? "if it were bare"
                                      : "if it had 13 mm closed-cell rubber foam on side and lid",
                                  rig)
                               .value();
      const double saved = number(answer, "Cost of a batch", "a jacket saves", rig).value();
      EXPECT_NEAR(has ? other - own : own - other, saved, 1e-9);
      EXPECT_GT(saved, 0.0);
    }
    EXPECT_EQ(cell(answer, "Cost of a batch", "as it is", 0), "–");  // it does not boil
  }
}

// What the two curves leave between them is what the other view shows.
TEST(WorthJacket, SavesWhatLiesBetweenTheCurves) {
  for (const bool thickness : {true, false}) {
    const Answer both = askedJacket({.overThickness = thickness});
    const Answer saved = askedJacket({.overThickness = thickness, .savings = true});
    for (const std::size_t which : {0U, 1U}) {
      for (const std::size_t rig : {1U, 2U, 3U}) {
        const bool has = sweptDemo().plan.rigs[rig].hasJacket;
        if (thickness && has) continue;  // the line of a bare one is not drawn
        // Marks are of the full answer; over thickness the bare day's stands where none is.
        const auto& marks = both.pictures[which].marks;
        const auto isMarked = [&](double x) {
          return thickness && std::any_of(marks.begin(), marks.end(), [&](const PictureMark& mark) {
                   return mark.rig == static_cast<int>(rig) && mark.at.x == x;
                 });
        };
        const PictureLine& with = lineOf(both.pictures[which], rig, has);
        const PictureLine& without = lineOf(both.pictures[which], rig, !has);
        int compared = 0;
        for (const PicturePoint& p : savingOf(saved.pictures[which], rig).points) {
          const auto jacketed = valueAt(with.points, p.x);
          const auto bare = valueAt(without.points, p.x);
          if (!jacketed || !bare || isMarked(p.x)) continue;
          if (!test_support::contains(with.points, {p.x, *jacketed})) continue;
          EXPECT_NEAR(*bare - *jacketed, p.y, 1e-6);
          ++compared;
        }
        EXPECT_GE(compared, 10);
      }
    }
  }
}

// No figure of the headline is negative: what a thin jacket loses it costs.
TEST(WorthJacket, TellsALossAsALossInShort) {
  rigs::Solution solution = sweptDemo();
  solution.plan.tariff = {};
  for (rigs::RigAnswer& rig : solution.answers.rigs) {
    if (rig.day.outcome != Outcome::Done) rig.jacket.reset();
    if (!rig.jacket) continue;
    rig.jacket->verdict = JacketVerdict::NotWorthIt;
    rig.jacket->savedToBoil = seconds(-100.0);
    rig.jacket->savedFromWall = kilowattHours(-0.1);
  }
  const std::string text = test_support::inShort(askedJacket({}, solution));
  EXPECT_TRUE(
      holds(text,
            "2 min more from mash to boil and 0.1 kWh more a batch is what a supposed jacket "
            "(13 mm closed-cell rubber foam on side and lid) costs with (b) New element, "
            "kitchen: not worth it."))
      << text;
  EXPECT_FALSE(holds(text, "saves")) << text;
}

TEST(WorthJacket, TellsEnergyWithoutAPrice) {
  rigs::Solution free = sweptDemo();
  free.plan.tariff = {};
  const Answer answer = askedJacket({.overThickness = false}, free);
  EXPECT_EQ(answer.pictures.at(1).yUnit, "kWh");
  EXPECT_FALSE(lineOf(answer.pictures[1], 1, true).points.empty());
  EXPECT_FALSE(lineOf(answer.pictures[1], 1, false).points.empty());
  EXPECT_TRUE(holds(test_support::inShort(answer), " kWh a batch is what "));
  EXPECT_EQ(test_support::rowOf(answer, "Cost of a batch", "a jacket saves"), nullptr);
}

}  // namespace
}  // namespace gui::telling
