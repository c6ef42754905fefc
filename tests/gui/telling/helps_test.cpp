// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/helps.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/translations.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/telling/told_checks.hpp"
#include "tests/support/overnight.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using rigs::Wish;
using test_support::cell;
using test_support::holds;
using test_support::inShort;
using test_support::saidOf;
using test_support::solvedDemo;

// Of a plan, with what helps each of its rigs.
rigs::Solution helped(const rigs::Plan& plan, std::size_t together,
                      const rigs::Watched& watched = {}) {
  rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  for (std::size_t i = 0; i < plan.rigs.size(); ++i)
    solution.answers.rigs[i].helps =
        std::make_shared<const rigs::HelpsAnswer>(rigs::helps(plan, i, together, watched));
  return solution;
}

const rigs::Solution& loneKettle() {
  static const rigs::Solution solution = [] {
    return helped(test_support::startedPlan("one-kettle"), 2);
  }();
  return solution;
}

Answer ask(const rigs::Solution& solution, const QuestionView& view) {
  return answerTo(Question::HelpsMost, solution, {}, view);
}

TEST(HelpsMost, SaysTheOneChangeFirst) {
  const Answer answer = ask(solvedDemo(), {.rig = 1});
  EXPECT_EQ(
      inShort(answer),
      "162 % of the heat that rolling takes with the lid over the boil, 50 % of the mouth open: "
      "no other single change helps (b) New element, kitchen more to roll in the boil.");
  EXPECT_TRUE(holds(saidOf(answer, 1), "By the rules its circuit does not fit as it is"));
  EXPECT_TRUE(saidOf(answer, 0).empty());
}

TEST(HelpsMost, TellsTheFewAndWhatNeedsNoElectrician) {
  const Answer answer = ask(loneKettle(), {.wish = Wish::Sooner});
  EXPECT_TRUE(holds(inShort(answer),
                    "min sooner with a second element like the first, on a second "
                    "such circuit: no other single change helps My kettle more "
                    "to be ready sooner."))
      << inShort(answer);
  const std::string said = saidOf(answer, 0);
  EXPECT_TRUE(holds(said,
                    "The few that bring most of it together: water of 55 °C from the tap + "
                    "a second element"))
      << said;
  EXPECT_TRUE(holds(said, "Without touching element or circuit: water of 55 °C from the tap ("));
  EXPECT_TRUE(holds(said, "The fewest changes that meet all goals of the plan: "));
}

TEST(HelpsMost, SaysWhereAWishHasNoSense) {
  EXPECT_EQ(inShort(ask(loneKettle(), {.wish = Wish::Warmer})),
            "This plan leaves no mash unplugged, so that no morning can be warmer.");
  EXPECT_EQ(inShort(ask(loneKettle(), {.wish = Wish::Circuit})),
            "The circuit of My kettle is not in the way: fits.");
  const Answer rolls = ask(solvedDemo(), {.rig = 2, .wish = Wish::Rolls});
  EXPECT_TRUE(holds(inShort(rolls), "(c) New element, jacket and lid rolls as it is, with "));
  EXPECT_TRUE(rolls.pictures.empty()) << "no lever is as long as nothing";
}

// A kettle that never rolls has no day that another could be sooner than.
TEST(HelpsMost, AsksForTheRollFirstWhereThereIsNone) {
  const Answer answer = ask(solvedDemo(), {.rig = 0, .wish = Wish::Sooner});
  EXPECT_TRUE(holds(inShort(answer), "more to roll in the boil"));
  EXPECT_TRUE(holds(saidOf(answer, 0), "first it has to roll"));
}

TEST(HelpsMost, ChoosesTheWishThatARigLacksMost) {
  const auto pressing = [](const rigs::Solution& of, std::size_t i) {
    return mostPressing(*of.answers.rigs[i].helps);
  };
  EXPECT_EQ(pressing(solvedDemo(), 0), Wish::Rolls);
  EXPECT_EQ(pressing(solvedDemo(), 1), Wish::Rolls) << "on the edge";
  EXPECT_EQ(pressing(solvedDemo(), 2), Wish::Circuit);
  EXPECT_EQ(pressing(solvedDemo(), 3), Wish::Sooner);
  EXPECT_EQ(pressing(helped(test_support::overnightPlan(), 1), 0), Wish::Warmer);
}

TEST(HelpsMost, ShowsWhatIsNotAllowedAsNotAllowed) {
  const Answer answer = ask(solvedDemo(), {.rig = 1});
  const Table& table = *answer.tables().at(0);
  const std::size_t circuit = table.columns.size() - 1;
  EXPECT_EQ(inEnglish(table.columns[circuit]), "circuit");
  EXPECT_EQ(cell(table, "a second element like the first, on a second such circuit", circuit),
            "not allowed (1)");
  EXPECT_EQ(cell(table, "an element of 2000 W at 120 V", circuit), "not allowed (2)");
  EXPECT_EQ(cell(table, "the lid over the boil, 50 % of the mouth open", circuit), "does not fit");
  ASSERT_EQ(table.legend.size(), 2u);
  EXPECT_EQ(inEnglish(table.legend[0]), "the rules do not grant it to this circuit");
  EXPECT_EQ(inEnglish(table.legend[1]), "it would draw 16.7 A from a circuit of 15 A");
  EXPECT_FALSE(holds(inShort(answer) + saidOf(answer, 1), "2000 W"));
  for (const PictureStack& bar : answer.pictures.at(0).stacks)
    EXPECT_FALSE(holds(bar.name, "second element")) << bar.name;
}

// A narrow terminal parts a table into groups of columns: each has the heading.
TEST(HelpsMost, ShowsNothingThatIsNotAllowedAmongWhatIs) {
  for (const bool all : {false, true}) {
    const Answer answer = ask(solvedDemo(), {.rig = 1, .allFigures = all});
    std::string heading;
    std::size_t refused = 0;
    for (const Row& row : answer.tables().at(0)->rows) {
      if (row.isHeading()) {
        heading = inEnglish(row.label);
        continue;
      }
      const bool isRefused = holds(cell(*answer.tables().at(0), inEnglish(row.label),
                                        answer.tables().at(0)->columns.size() - 1),
                                   "not allowed");
      EXPECT_EQ(isRefused, heading == "Not allowed") << inEnglish(row.label);
      refused += isRefused ? 1 : 0;
    }
    EXPECT_GE(refused, 3u);
  }
}

TEST(HelpsMost, DrawsABarALeverTheLongestFirstWithItsPrice) {
  rigs::Plan plan = loneKettle().plan;
  plan.tariff.jacketPrice = 45.0;
  const Answer answer = ask(helped(plan, 1), {.wish = Wish::Cheaper});
  ASSERT_EQ(answer.pictures.size(), 1u);
  const Picture& picture = answer.pictures.front();
  EXPECT_EQ(picture.kind, Picture::Kind::StackedBars);
  EXPECT_EQ(picture.xUnit, "EUR");
  ASSERT_GE(picture.stacks.size(), 4u);
  double before = 1e9;
  int sides = 0;
  for (const PictureStack& bar : picture.stacks) {
    ASSERT_EQ(bar.parts.size(), 1u);
    EXPECT_GT(bar.parts[0], 0.0);
    EXPECT_LE(bar.parts[0], before);
    before = bar.parts[0];
    sides += holds(bar.name, "around the side") ? 1 : 0;
    if (holds(bar.name, "around the side")) {
      EXPECT_TRUE(holds(bar.name, "· 45.00 EUR")) << bar.name;
    }
    if (holds(bar.name, "polished")) {
      EXPECT_FALSE(holds(bar.name, "·")) << "nobody states its price: " << bar.name;
    }
    EXPECT_LT(bar.rig, 0) << "a change is no rig";
    if (holds(bar.name, "a batch of")) {
      EXPECT_TRUE(holds(bar.name, "· nothing to buy")) << bar.name;
    }
  }
  EXPECT_EQ(sides, 1) << "both thicknesses are one lever";
}

TEST(HelpsMost, HasNoFigureWhereNoPriceIsStated) {
  const Answer bare = ask(loneKettle(), {.allFigures = true});
  for (const rigs::Told& head : bare.tables().at(0)->columns)
    EXPECT_FALSE(holds(inEnglish(head), "paid back")) << inEnglish(head);
  rigs::Plan plan = loneKettle().plan;
  plan.tariff.jacketPrice = 45.0;
  const Answer priced = ask(helped(plan, 1), {.allFigures = true, .wish = Wish::Cheaper});
  const Table& table = *priced.tables().at(0);
  std::size_t price = 0;
  while (inEnglish(table.columns[price]) != "price, EUR") ++price;
  EXPECT_EQ(cell(table, "25 mm of closed-cell rubber foam around the side", price), "45.00");
  EXPECT_EQ(cell(table, "the bare metal polished bright", price), "–");
  EXPECT_EQ(cell(table, "the bare metal polished bright", price + 1), "–");
}

// The figures of the table are those of the result's JSON, change by change.
TEST(HelpsMost, HasTheFiguresOfTheResult) {
  const rigs::Solution& solution = loneKettle();
  const auto json = nlohmann::json::parse(rigs::resultJson(solution.plan, solution.answers));
  const auto& helps = json["rigs"][0]["helps"];
  EXPECT_FALSE(helps["is_part"]);
  EXPECT_EQ(helps["ways"], helps["ways_tried"]);
  const Answer answer = ask(solution, {.allFigures = true});
  const Table& table = *answer.tables().at(0);
  int compared = 0;
  for (const auto& change : helps["changes"]) {
    const Row* row = test_support::rowOf(table, change["text"].get<std::string>(), "One change");
    ASSERT_NE(row, nullptr) << change["text"];
    const auto number = [&](std::size_t column) { return cellNumber(row->cells[column], {}); };
    EXPECT_NEAR(*number(0), 100.0 * change["share_of_least_to_boil"].get<double>(), 1e-9);
    if (!change.contains("day_s")) continue;
    EXPECT_NEAR(*number(1), change["day_s"].get<double>() / 60.0, 1e-9);
    EXPECT_NEAR(*number(2), 100.0 * change["boil_off_share_per_h"].get<double>(), 1e-9);
    EXPECT_NEAR(*number(3), change["from_wall_kWh"].get<double>(), 1e-9);
    EXPECT_NEAR(*number(4), change["saved_per_year"].get<double>(), 1e-9);
    ++compared;
  }
  EXPECT_GE(compared, 15);
  EXPECT_FALSE(nlohmann::json::parse(rigs::resultJson(
      solution.plan, rigs::answer(solution.plan, rigs::Depth::Day)))["rigs"][0]
                   .contains("helps"))
      << "where nobody asked";
}

TEST(HelpsMost, MarksAPartAsPart) {
  const rigs::Solution part =
      helped(loneKettle().plan, 2, {.stop = [] { return true; }, .progress = {}});
  const std::string said = saidOf(ask(part, {}), 0);
  EXPECT_TRUE(holds(said, "This is a part: 0 of ")) << said;
  EXPECT_FALSE(holds(saidOf(ask(loneKettle(), {}), 0), "This is a part"));
}

TEST(HelpsMost, TellsEachRigInShortWhereAllAreAsked) {
  const Answer answer = ask(solvedDemo(), {.everyRig = true});
  EXPECT_EQ(answer.sentences.size(), 4u);
  EXPECT_TRUE(answer.tables().empty());
  const Answer sheet = ask(solvedDemo(), {.allFigures = true, .everyRig = true});
  EXPECT_EQ(sheet.tables().size(), 4u);
  EXPECT_EQ(ask(solvedDemo(), {.everyRig = true, .only = 1}).tables().size(), 1u);
}

TEST(HelpsMost, SaysThatItIsBeingWorkedOut) {
  rigs::Solution solution = loneKettle();
  solution.answers.rigs[0].helps.reset();
  EXPECT_EQ(inShort(ask(solution, {})), "Being worked out …");
}

TEST(HelpsMost, IsToldInGerman) {
  const rigs::Reader german{.language = &languageOf("de")};
  const Answer answer = answerTo(Question::HelpsMost, solvedDemo(), german, {.rig = 1});
  EXPECT_EQ(
      rigs::tell(answer.sentences[0], german),
      "162 % der Wärme, die Wallen braucht (der Deckel beim Kochen aufgelegt, 50 % der Öffnung "
      "frei): Keine andere einzelne Änderung hilft (b) New element, kitchen mehr, wallend zu "
      "kochen.");
}

}  // namespace
}  // namespace gui::telling
