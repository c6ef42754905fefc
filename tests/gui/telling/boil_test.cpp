// SPDX-License-Identifier: GPL-3.0-or-later
// Does it boil hard enough?
#include "gui/telling/boil.hpp"

#include <gtest/gtest.h>

#include "gui/telling/curve.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "tests/gui/telling/asked.hpp"
#include "tests/gui/terminal/plan_in_code.hpp"
#include "tests/support/swept_plan.hpp"

namespace gui::telling {
namespace {

using rigs::inEnglish;
using test_support::holds;
using test_support::sweptDemo;

Answer askedBoil(const rigs::Solution& solution = sweptDemo()) {
  return boilsEnough({solution, solution.plan, test_support::siReader(), {}});
}

// The scale's edges belong to the stronger word: 5, 8, 10 and 15 %/h.
TEST(BoilText, ChangesItsWordAtThePublishedFigures) {
  test_support::OwnCase own(test_support::planInCode());
  struct Edge {
    double share;
    std::string_view word;
  };
  for (const Edge& edge :
       {Edge{0.049, "a simmer."}, Edge{0.05, "a gentle boil."}, Edge{0.0799, "a gentle boil."},
        Edge{0.08, "a steady boil."}, Edge{0.10, "a strong boil."}, Edge{0.15, "a fierce boil."}}) {
    SCOPED_TRACE(edge.share);
    own.rig().day.boil = physics::BoilFigures{};
    own.rig().day.boil->shareOfPreBoilPerHour = edge.share;
    const std::string text = inEnglish(boilText(own.get(), 0));
    EXPECT_TRUE(text.ends_with(edge.word)) << text;
    // The same in the answer in short.
    const std::string inShort = test_support::inShort(boilsEnough(own.get()));
    EXPECT_TRUE(holds(inShort, std::string(edge.word.substr(0, edge.word.size() - 1)) + ": "))
        << inShort;
  }
}

TEST(BoilText, KnowsADayWithoutABoil) {
  const test_support::OwnCase own(test_support::planInCode());
  EXPECT_EQ(inEnglish(boilText(own.get(), 0)), "No boil is planned.");
  EXPECT_EQ(test_support::inShort(boilsEnough(own.get())), "No boil is planned.");
}

TEST(BoilsEnough, BeginsWithTheHardestBoil) {
  const Answer answer = askedBoil();
  ASSERT_EQ(answer.sentences.size(), 3U);  // hardest, softest, and the one that does not boil
  EXPECT_TRUE(holds(inEnglish(answer.sentences[0]), " boils off with (d) "));
  EXPECT_TRUE(holds(inEnglish(answer.sentences[1]), " boils off with (b) "));
  EXPECT_TRUE(holds(inEnglish(answer.sentences[2]), " is what (a) "));
}

// Told in short; the rest is what would change it.
TEST(BoilsEnough, TellsOnceWhyARigDoesNotBoil) {
  const std::string said = test_support::saidOf(askedBoil(), 0);
  EXPECT_FALSE(holds(said, "cannot hold")) << said;
  EXPECT_TRUE(said.starts_with("1.26 L/h evaporate, 5.14 %/h, without rolling.")) << said;
  EXPECT_TRUE(holds(said, "is the least that makes it roll")) << said;
  EXPECT_TRUE(holds(test_support::saidOf(askedBoil(), 1), " in the end, from a gravity of 1.0"));
}

TEST(BoilsEnough, HasTheFiguresOfTheResult) {
  test_support::expectFiguresOfTheResult(askedBoil(), sweptDemo(), 10);
}

TEST(BoilsEnough, NotesThePublishedRanges) {
  const Answer answer = askedBoil();
  ASSERT_EQ(answer.notes.size(), 3U);
  EXPECT_TRUE(holds(inEnglish(answer.notes[0]), "a simmer is less than 5 %/h"));
  EXPECT_TRUE(holds(inEnglish(answer.notes[1]), "5 %/h to 8 %/h is best practice"));
  EXPECT_TRUE(holds(inEnglish(answer.notes[1]), "Joint Research Centre"));
  EXPECT_TRUE(holds(inEnglish(answer.notes[2]), "about 20 %"));
}

TEST(BoilsEnough, MarksTheOperatingPointOnItsCurve) {
  const Answer answer = askedBoil();
  test_support::expectFiniteAscendingPoints(answer);
  const Picture& picture = answer.pictures.at(0);
  // A band for every word, without gaps; what is shaded says where it is from.
  ASSERT_EQ(picture.bands.size(), 5U);
  std::vector<std::string> sources;
  double reached = 0.0;
  for (int i : {0, 1, 2, 3, 4}) {
    const PictureBand& band = picture.bands[static_cast<std::size_t>(i)];
    EXPECT_EQ(band.from, reached);
    reached = band.to;
    EXPECT_EQ(band.shaded, !band.source.empty());
    if (band.shaded) sources.push_back(band.source);
    EXPECT_TRUE(
        band.label.starts_with(inEnglish(gui::telling::vigourWord(static_cast<rigs::Vigour>(i)))));
  }
  ASSERT_EQ(sources.size(), 2U);
  EXPECT_TRUE(holds(sources[0], "Joint Research Centre"));
  EXPECT_EQ(sources[1], "common practice, no source");
  ASSERT_EQ(picture.marks.size(), 4U);
  for (const PictureMark& mark : picture.marks) {
    const auto rig = static_cast<std::size_t>(mark.rig);
    const auto& boil = sweptDemo().answers.rigs[rig].day.boil;
    if (rig == 0) {
      EXPECT_EQ(mark.label, "(a) 5.14 %/h, no boil");
    }
    ASSERT_TRUE(boil);
    EXPECT_NEAR(mark.at.y, 100.0 * boil->shareOfPreBoilPerHour, 1e-9);
    const auto y = valueAt(picture.lines[rig].points, mark.at.x);
    ASSERT_TRUE(y);
    EXPECT_NEAR(*y, mark.at.y, 1e-9);
  }
}

TEST(BoilsEnough, StandsWithoutSweeps) {
  rigs::Solution days = sweptDemo();
  days.sweeps.clear();
  const Answer answer = askedBoil(days);
  EXPECT_EQ(answer.pictures.at(0).marks.size(), 4U);
  EXPECT_TRUE(answer.pictures[0].lines[1].points.empty());
}

}  // namespace
}  // namespace gui::telling
