// SPDX-License-Identifier: GPL-3.0-or-later
// Rinsing and draining, typed in the form: what they need comes with them, and they take themselves
// back.
#include <gtest/gtest.h>

#include "tests/gui/window/window_fixture.hpp"

namespace {

class LiftedGrain : public test_support::WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    window().setQuestion(gui::telling::Question::HowLong);
  }
};

TEST_F(LiftedGrain, IsRinsedWithWhatIsTyped) {
  const std::string before = document().text();
  type("/batch/rinse/volume", QStringLiteral("3 L"));
  EXPECT_EQ(textAt("/batch/rinse/volume"), "3 L");
  EXPECT_EQ(textAt("/batch/rinse/temperature"), "75 C") << "a rinse says nothing without it";
  EXPECT_EQ(textAt("/batch/rinse/heated"), "another circuit");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  choose("/batch/rinse/heated", QStringLiteral("same circuit"));
  type("/batch/rinse/power", QStringLiteral("1 kW"));
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  EXPECT_TRUE(settles());
  type("/batch/rinse/temperature", QStringLiteral("150 C"));
  EXPECT_FALSE(problemAt("/batch/rinse/temperature").isEmpty());
  type("/batch/rinse/temperature", QStringLiteral("78 C"));
  type("/batch/rinse/volume", QString());
  EXPECT_FALSE(textAt("/batch/rinse/heated")) << "emptied, nothing is rinsed";
  window().centralWidget()->setFocus();
  while (document().undoStack().canUndo()) undo();
  EXPECT_EQ(document().text(), before);
}

TEST_F(LiftedGrain, DrainsWithTheElementAsChosen) {
  choose("/batch/drain/element", QStringLiteral("on"));
  EXPECT_EQ(textAt("/batch/drain/time"), "15 min");
  EXPECT_FALSE(rigs::hasErrors(document().problems()));
  type("/batch/drain/time", QString());
  EXPECT_FALSE(textAt("/batch/drain/element"));
}

}  // namespace
