// SPDX-License-Identifier: GPL-3.0-or-later
// The same rigs under other letters: every answer is the same but for them, and its pictures take
// the looks of the letters.
#include <gtest/gtest.h>

#include <string>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "gui/telling/summary.hpp"
#include "tests/gui/telling/solved.hpp"
#include "tests/support/swept_plan.hpp"

namespace gui::telling {
namespace {

constexpr std::string_view kStated = "dabc";

rigs::Solution lettered(rigs::Solution solution) {
  for (std::size_t i = 0; i < kStated.size(); ++i)
    solution.plan.rigs[i].statedSlot = rigs::slotOfLetter(kStated.substr(i, 1));
  return solution;
}

// "(a)" is "(d)", "(b)" is "(a)" and so on.
std::string underOtherLetters(std::string text) {
  for (std::size_t i = 0; i + 2 < text.size(); ++i) {
    if (text[i] != '(' || text[i + 2] != ')' || text[i + 1] < 'a' || text[i + 1] > 'd') continue;
    text[i + 1] = kStated[static_cast<std::size_t>(text[i + 1] - 'a')];
  }
  return text;
}

// All of an answer that names rigs.
std::string toldBy(const Answer& answer, const rigs::Plan& plan) {
  std::vector<std::string> names;
  for (const rigs::RigPlan& rig : plan.rigs) names.push_back(rig.name);
  std::string all = test_support::joined(answer.sentences) + '\n' +
                    test_support::spokenBlocks(answer) + csvOf(answer, names, {});
  for (const Picture& picture : answer.pictures) {
    for (const PictureMark& mark : picture.marks) all += mark.label + '\n';
    for (const PictureLimit& limit : picture.limits) all += limit.label + '\n';
  }
  return all;
}

TEST(RigLetters, AreThoseOfTheRigsInEveryAnswerAndPicture) {
  const rigs::Solution& plain = test_support::sweptDemo();
  const rigs::Solution other = lettered(plain);
  std::size_t pictures = 0;
  for (const Question question : allQuestions()) {
    for (const QuestionView& view :
         {QuestionView{},
          QuestionView{.overThickness = false, .asWritten = false, .asBars = true}}) {
      const Answer was = answerTo(question, plain, {}, view);
      const Answer is = answerTo(question, other, {}, view);
      EXPECT_EQ(toldBy(is, other.plan), underOtherLetters(toldBy(was, plain.plan)));
      for (const Picture& picture : is.pictures) {
        ++pictures;
        EXPECT_EQ(slotOfRig(picture, 0), 3) << picture.title;
        EXPECT_EQ(slotOfRig(picture, 3), 2) << picture.title;
      }
    }
  }
  EXPECT_GT(pictures, 9U);
  const Answer day = summary({other, other.plan, {}, {}});
  EXPECT_NE(toldBy(day, other.plan).find("(d) Old element, kitchen"), std::string::npos);
}

TEST(RigLetters, GoByPlaceWhereNoneIsStated) {
  const Answer answer = answerTo(Question::HowLong, test_support::sweptDemo(), {});
  EXPECT_EQ(answer.slots, (std::vector<std::size_t>{0, 1, 2, 3}));
  EXPECT_EQ(answer.letterOf(1), "(b)");
}

}  // namespace
}  // namespace gui::telling
