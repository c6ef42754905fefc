// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet as a page: nothing that a plan says becomes markup, and nothing is fetched or run.
#include "gui/telling/sheet_html.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <string>
#include <vector>

#include "gui/telling/plain_text.hpp"
#include "gui/telling/sheet_fit.hpp"
#include "gui/telling/translations.hpp"
#include "rigs/documents/written_files.hpp"
#include "tests/gui/telling/sheets.hpp"
#include "tests/support/readers.hpp"

namespace gui::telling {
namespace {

using test_support::daysAlone;
using test_support::startedPlan;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

std::string pageOf(const rigs::Solution& solution, std::size_t rig = 0,
                   const rigs::Reader& reader = {}) {
  return sheetHtml(test_support::sheetOf(solution, rig, reader), reader);
}
const rigs::Solution& nightAlone() {
  static const rigs::Solution solution = daysAlone(startedPlan("night-unplugged"));
  return solution;
}

std::size_t countOf(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
    ++count;
  return count;
}

// Elements closed in the order in which they were opened, as XML wants it.
void expectNested(const std::string& html) {
  static const std::regex kTag("<(/?)([a-z0-9]+)((?:\"[^\"]*\"|[^<>\"])*?)(/?)>");
  std::vector<std::string> open;
  for (std::sregex_iterator at(html.begin(), html.end(), kTag), end; at != end; ++at) {
    const std::smatch& tag = *at;
    if (tag[4].length() > 0) continue;
    if (tag[1].length() == 0) {
      open.push_back(tag[2]);
      continue;
    }
    ASSERT_FALSE(open.empty()) << tag.str();
    EXPECT_EQ(open.back(), tag[2].str());
    open.pop_back();
  }
  EXPECT_TRUE(open.empty());
}

TEST(SheetHtml, HasALineAndABoxToTickForEverythingToDo) {
  const std::string html = pageOf(nightAlone());
  EXPECT_THAT(html, StartsWith("<!DOCTYPE html>"));
  EXPECT_THAT(html, HasSubstr(" lang=\"en\""));
  EXPECT_THAT(html, HasSubstr("<h1 dir=\"auto\">A dark lager mashed overnight</h1>"));
  EXPECT_EQ(countOf(html, "type=\"checkbox\""), 8U);
  EXPECT_EQ(countOf(html, "scope=\"row\""), 8U);
  EXPECT_THAT(html, HasSubstr("aria-label=\"20:49&#160;done: Lid on, unplug\""));
  EXPECT_THAT(html, HasSubstr("<b>Lid on, unplug</b>; leave it alone for 10&#160;h"));
  EXPECT_THAT(html, HasSubstr(">Next day</th>"));
  EXPECT_THAT(html, HasSubstr("temperature<input type=\"text\" autocomplete=\"off\" "
                              "aria-label=\"20:49&#160;temperature\"/>"));
  EXPECT_THAT(html, HasSubstr("licensed electrician"));
  expectNested(html);
}

TEST(SheetHtml, NeedsNothingFromAnywhereAndRunsNothing) {
  const std::string html = pageOf(nightAlone());
  for (const char* part :
       {"<script", "<link", "<img", "<iframe", " src=", " href=", "url(", "@import", "onload"})
    EXPECT_THAT(html, Not(HasSubstr(part)));
  EXPECT_THAT(html, HasSubstr("default-src 'none'"));
  EXPECT_EQ(rigs::contentOfBytes(html), rigs::FileContent::OwnSheet);
}

TEST(SheetHtml, MakesNoMarkupOfWhatAPlanCallsItself) {
  rigs::Solution solution = nightAlone();
  const std::string hostile =
      "</title><script>alert('1')</script>&amp;\" onload=\"x\x1b[2J\x01\u202e\u2066\u200f\u061c"
      "\uffff\u0085\xff%1 %2]]>-->";
  solution.plan.title = hostile;
  solution.plan.rigs[0].name = solution.answers.rigs[0].name = hostile;
  const Sheet sheet =
      gui::telling::sheetOf({solution, solution.plan, test_support::kSi, {}}, 0,
                            {.plan = rigs::Told::just(rigs::Verbatim{hostile}), .version = "1"});
  const std::string html = sheetHtml(sheet, test_support::kSi);
  EXPECT_THAT(html, Not(HasSubstr("<script")));
  EXPECT_THAT(html, Not(HasSubstr("\" onload")));
  EXPECT_THAT(html, Not(HasSubstr("alert('")));
  EXPECT_THAT(html, HasSubstr("&lt;/title&gt;&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;"
                              "&amp;amp;&quot; onload=&quot;x?[2J???????"));
  expectNested(html);
  for (std::string_view rest = html; !rest.empty();) {
    const Character character = firstCharacter(rest);
    ASSERT_TRUE(character.valid);
    EXPECT_TRUE(character.point >= 0x20 || character.point == '\n') << character.point;
    EXPECT_FALSE(0x2000 <= character.point && character.point <= 0x206f &&
                 character.point != 0x2013 && character.point != 0x2014 &&
                 character.point != 0x2019)
        << std::hex << character.point;
    rest.remove_prefix(character.length);
  }
}

TEST(SheetHtml, IsOfTheReadersLanguageAndPaper) {
  const rigs::Reader german{.units = rigs::UnitSystem::SI, .language = &languageOf("de")};
  EXPECT_THAT(pageOf(nightAlone(), 0, german), HasSubstr(" lang=\"de\""));
  EXPECT_THAT(pageOf(nightAlone(), 0, german), HasSubstr("Am nächsten Tag"));
  EXPECT_THAT(pageOf(nightAlone(), 0, german), HasSubstr("size: A4;"));
  EXPECT_THAT(pageOf(nightAlone(), 0, test_support::kUs), HasSubstr("size: letter;"));
}

TEST(SheetHtml, OfADayThatStopsSaysSoInTheList) {
  const std::string html = pageOf(
      daysAlone(test_support::changedStart("one-kettle", "/rigs/0/element/power", "\"60 W\"")));
  EXPECT_THAT(html, HasSubstr("<tr class=\"stop\">"));
  EXPECT_EQ(countOf(html, "type=\"checkbox\""), 1U);
  EXPECT_THAT(html, HasSubstr("<h2>Before anything else</h2>"));
  expectNested(html);
}

// Nobody sets the sheet of many lines larger, and all sizes are ones that can be read.
TEST(SheetHtml, IsSetSmallerTheMoreThereIs) {
  rigs::Plan plan = startedPlan("one-kettle");
  double last = kLargestPrint;
  for (int rests = 1; rests <= 16; rests += 3) {
    physics::HeldMash mash;
    for (int i = 0; i < rests; ++i)
      mash.rests.push_back({physics::celsius(50.0 + 1.5 * i), physics::minutes(5.0)});
    plan.batch.mash = mash;
    const double size = printSize(test_support::sheetOf(daysAlone(plan)), test_support::kSi);
    EXPECT_LE(size, last);
    EXPECT_GE(size, kSmallestPrint);
    last = size;
  }
  EXPECT_LT(last, kLargestPrint);
}

}  // namespace
}  // namespace gui::telling
