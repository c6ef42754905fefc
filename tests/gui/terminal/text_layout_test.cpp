// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/text_layout.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

using namespace gui;

TEST(DisplayWidth, CountsColumnsAndNotBytes) {
  EXPECT_EQ(displayWidth(""), 0u);
  EXPECT_EQ(displayWidth("66 °C"), 5u);
  EXPECT_EQ(displayWidth("Kölsch"), 6u);
  EXPECT_EQ(displayWidth("Ko\u0308lsch"), 6u);  // o with a combining diaeresis
  EXPECT_EQ(displayWidth("麦芽"), 4u);
  EXPECT_EQ(displayWidth("🍺"), 2u);
}

TEST(DisplayWidth, TakesBrokenBytesAsOneColumnEach) { EXPECT_EQ(displayWidth("a\xff\xc3"), 3u); }

TEST(Padded, PutsSpacesBehindOrInFront) {
  EXPECT_EQ(padded("°C", 4), "°C  ");
  EXPECT_EQ(paddedInFront("°C", 4), "  °C");
  EXPECT_EQ(padded("longer", 3), "longer");
}

TEST(Wrapped, KeepsNumberAndUnitTogether) {
  const auto lines = wrapped("gets 2480 W and loses 96 W", 9);
  for (const std::string& line : lines) {
    EXPECT_FALSE(line.ends_with("2480") || line.ends_with("96")) << line;
  }
}

TEST(Wrapped, BreaksAWordThatIsWiderThanALine) {
  EXPECT_EQ(wrapped("麦芽麦", 4), (std::vector<std::string>{"麦芽", "麦"}));
  EXPECT_EQ(wrapped("", 10), std::vector<std::string>{""});
}

RC_GTEST_PROP(Wrapped, LosesNoCharacterAndKeepsTheWidth, ()) {
  const auto words = *rc::gen::container<std::vector<std::string>>(
      rc::gen::container<std::string>(rc::gen::inRange('a', 'z')));
  const auto width = *rc::gen::inRange<std::size_t>(1, 90);
  std::string text;
  for (const std::string& word : words) text += word + ' ';
  std::string all;
  for (const std::string& line : wrapped(text, width)) {
    RC_ASSERT(displayWidth(line) <= width);
    all += line;
  }
  const auto withoutSpaces = [](std::string s) {
    s.erase(std::remove(s.begin(), s.end(), ' '), s.end());
    return s;
  };
  RC_ASSERT(withoutSpaces(all) == withoutSpaces(text));
}

TEST(PlainText, LetsNoControlCharacterThrough) {
  EXPECT_EQ(plainText("Bob's \033[31mkettle\n"), "Bob's ?[31mkettle?");
  EXPECT_EQ(plainText("\u009b0m\u202e"), "?0m?");
  EXPECT_EQ(plainText("Größe\xff"), "Größe?");
}
