// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/commands.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

#include "rigs/answers/helps.hpp"

using namespace gui;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

CommandLine read(const std::vector<const char*>& words, const std::string& language = "en") {
  return readCommandLine(words, language);
}

Request requestOf(const std::vector<const char*>& words) {
  const CommandLine line = read(words);
  if (const auto* wrong = std::get_if<NotUnderstood>(&line.asked))
    throw std::logic_error(rigs::inEnglish(wrong->sentences.at(0)));
  return std::get<Request>(line.asked);
}

std::vector<std::string> wrongOf(const std::vector<const char*>& words) {
  const CommandLine line = read(words);
  std::vector<std::string> all;
  if (const auto* wrong = std::get_if<NotUnderstood>(&line.asked))
    for (const rigs::Told& sentence : wrong->sentences) all.push_back(rigs::inEnglish(sentence));
  return all;
}

std::optional<Command> helpAbout(const std::vector<const char*>& words) {
  return std::get<HelpAsked>(read(words).asked).about;
}

TEST(CommandLine, KnowsTheWishAndHowManyChangesAreTriedAtOnce) {
  EXPECT_EQ(requestOf({"helps"}).command, Command::Helps);
  EXPECT_EQ(requestOf({"sure"}).command, Command::Sure);
  EXPECT_FALSE(requestOf({"helps"}).wish.has_value());
  EXPECT_EQ(requestOf({"helps"}).together, 0U) << "the usual number";
  EXPECT_EQ(requestOf({"helps", "my-plan.json", "--wish", "sooner"}).wish, rigs::Wish::Sooner);
  EXPECT_EQ(requestOf({"helps", "--together", "2"}).together, 2U);
  EXPECT_EQ(requestOf({"helps", "--together=all"}).together, rigs::kAllTogether);
  EXPECT_EQ(requestOf({"picture", "helps-most", "--to", "x.svg", "--wish", "cheaper"}).wish,
            rigs::Wish::Cheaper);
  EXPECT_THAT(wrongOf({"helps", "--wish", "faster"}),
              ElementsAre("--wish: \"faster\" was given; rolls, sooner, warmer, cheaper or circuit "
                          "is accepted."));
  EXPECT_THAT(wrongOf({"day", "--wish", "sooner"}),
              ElementsAre(HasSubstr("--wish: only \"helps\"")));
  EXPECT_THAT(wrongOf({"boil", "--together", "2"}),
              ElementsAre("--together: only \"helps\" knows it."));
  for (const char* wrong : {"0", "13", "-1", "2.5", "every", "2 "})
    EXPECT_THAT(wrongOf({"helps", "--together", wrong}),
                ElementsAre(HasSubstr("a whole number from 1 to 12 or all is accepted.")))
        << wrong;
}

}  // namespace

TEST(CommandLine, UnderstandsACommandWithItsOptions) {
  const Request request = requestOf({"circuit", "my-plan.json", "--units", "US", "--every-rule",
                                     "--room", "60 °F", "--width=100", "--csv"});
  EXPECT_EQ(request.command, Command::Circuit);
  EXPECT_EQ(request.file, "my-plan.json");
  EXPECT_EQ(request.units, "US");
  EXPECT_EQ(request.width, "100");
  EXPECT_EQ(request.form, Form::Csv);
  EXPECT_TRUE(request.everyRule);
  ASSERT_EQ(request.overrides.size(), 1u);
  EXPECT_EQ(request.overrides[0].option, "--room");
  EXPECT_EQ(request.overrides[0].text, "60 °F");
}

TEST(CommandLine, ExplainsThePagesOfOneQuestionAlone) {
  EXPECT_TRUE(requestOf({"boil", "--explain"}).explained);
  EXPECT_FALSE(requestOf({"boil"}).explained);
  for (const char* other : {"answer", "safety"})
    EXPECT_THAT(wrongOf({other, "--explain"}),
                ElementsAre("--explain: only the pages of one question know it."))
        << other;
  EXPECT_THAT(wrongOf({"boil", "--explain", "--csv"}), ElementsAre(HasSubstr("has no words for")));
}

TEST(CommandLine, TakesEveryKeyThatIsVaried) {
  const Request request = requestOf({"sweep", "p.json", "--vary", "batch/boil=1 h, 2 h",
                                     "--vary=place/room=5 C..9 C in 5", "--figures", "cost",
                                     "--at-most", "12", "--rig", "b", "--json"});
  EXPECT_EQ(request.command, Command::Sweep);
  EXPECT_EQ(request.file, "p.json");
  EXPECT_THAT(request.vary, ElementsAre("batch/boil=1 h, 2 h", "place/room=5 C..9 C in 5"));
  EXPECT_EQ(request.figures, "cost");
  EXPECT_EQ(request.atMost, "12");
  EXPECT_EQ(request.rig, "b");
  EXPECT_EQ(request.form, Form::Json);
}

TEST(CommandLine, RefusesASweepOverNothingAndWhatItHasNoUseFor) {
  EXPECT_THAT(wrongOf({"sweep"}), ElementsAre(HasSubstr("needs a key to vary")));
  EXPECT_THAT(wrongOf({"sweep", "--vary"}), Contains(HasSubstr("--vary needs a value after it")));
  EXPECT_THAT(wrongOf({"sweep", "--vary", "x=1", "--room", "5 C"}),
              ElementsAre(HasSubstr("--vary \"place/room=16 C\"")));
  EXPECT_THAT(wrongOf({"sweep", "--vary", "x=1", "--units", "US"}),
              ElementsAre(HasSubstr("every name has its unit")));
  EXPECT_THAT(wrongOf({"answer", "--vary", "x=1", "--figures", "cost", "--at-most", "1"}),
              ElementsAre("--vary: only \"sweep\" knows it.", "--figures: only \"sweep\" knows it.",
                          "--at-most: only \"sweep\" knows it."));
  EXPECT_THAT(wrongOf({"sweep", "--vary", "x=1", "--figures", "cost", "--figures", "cost"}),
              ElementsAre("--figures was given twice."));
}

TEST(CommandLine, IsAboutTheBundledExampleInSIWithoutMore) {
  const Request request = requestOf({"answer"});
  EXPECT_EQ(request.file, "");
  EXPECT_EQ(request.units, "SI");
  EXPECT_EQ(request.form, Form::Text);
}

TEST(CommandLine, TakesTheQuestionBeforeThePlan) {
  const Request request =
      requestOf({"picture", "worth-jacket", "p.json", "--over", "power", "--to", "J.SVG"});
  EXPECT_EQ(request.question, telling::Question::WorthJacket);
  EXPECT_EQ(request.file, "p.json");
  EXPECT_EQ(request.to, "J.SVG");
  EXPECT_FALSE(request.overThickness);
  EXPECT_EQ(requestOf({"list", "rigs"}).subject, "rigs");
  EXPECT_EQ(requestOf({"schema"}).subject, "");
}

TEST(CommandLine, SupposesAJacketOnlyWhereItIsTyped) {
  EXPECT_EQ(requestOf({"night"}).command, Command::Night);
  EXPECT_FALSE(requestOf({"night"}).supposed);
  EXPECT_TRUE(requestOf({"night", "my-plan.json", "--suppose-jacket"}).supposed);
  EXPECT_TRUE(
      requestOf({"picture", "how-far-cools", "--suppose-jacket", "--to", "night.svg"}).supposed);
  EXPECT_THAT(wrongOf({"day", "--suppose-jacket"}),
              ElementsAre("--suppose-jacket: only \"night\" and \"picture\" know it."));
}

TEST(CommandLine, TellsEverythingThatIsWrongAtOnce) {
  const auto wrong = wrongOf({"answer", "a.json", "b.json", "--colour", "--json", "--csv",
                              "--every-rule", "--to", "x.svg", "--language", "tlh", "--units"});
  EXPECT_THAT(
      wrong, ElementsAre(
                 "--language: \"tlh\" was given; en or de is accepted.",
                 "--units needs a value after it. \"heatledger answer --help\" shows its options.",
                 "\"b.json\" is nothing that \"answer\" knows. \"heatledger answer --help\" shows "
                 "its options.",
                 "\"--colour\" is nothing that \"answer\" knows. \"heatledger answer --help\" "
                 "shows its options.",
                 "--json and --csv exclude each other.", "--every-rule: only \"circuit\" knows it.",
                 "--to: only \"picture\", \"report\" and \"sheet\" know it."));
}

TEST(CommandLine, SaysWhatACommandCannotDo) {
  EXPECT_THAT(wrongOf({"check"}),
              ElementsAre("\"check\" needs the name of a file, for example \"heatledger check "
                          "my-plan.json\"."));
  EXPECT_THAT(wrongOf({"schema", "--csv"}), ElementsAre("--csv: \"schema\" has no table."));
  EXPECT_THAT(wrongOf({"list", "rigs", "--room", "20 °C"}),
              ElementsAre("--room: \"list\" is not about a plan."));
  EXPECT_THAT(wrongOf({"day", "--room", "1 C", "--room", "2 C"}),
              ElementsAre("--room was given twice."));
}

TEST(CommandLine, SaysWhatAPictureNeeds) {
  EXPECT_THAT(
      wrongOf({"picture", "how-long"}),
      ElementsAre("\"picture\" needs the name of a file to write, for example \"--to day.svg\"."));
  EXPECT_THAT(
      wrongOf({"picture", "how-warm", "--to", "x.svg"}),
      ElementsAre(HasSubstr("picture: \"how-warm\" was given; overview, how-long, where-heat,")));
  EXPECT_THAT(wrongOf({"picture", "--to", "x.svg"}),
              ElementsAre(HasSubstr("picture: nothing was given; overview, how-long,")));
  EXPECT_THAT(wrongOf({"picture", "how-long", "--to", "x.bmp", "--over", "night", "--json"}),
              ElementsAre("--json: \"picture\" writes what the ending of --to FILE names.",
                          "--to: \"x.bmp\" was given; a name that ends in .svg, .png, .csv or "
                          ".json is accepted.",
                          "--over: \"night\" was given; thickness or power is accepted."));
  EXPECT_THAT(wrongOf({"report", "--to", "day.svg"}),
              ElementsAre("--to: \"day.svg\" was given; a name that ends in .pdf is accepted."));
}

TEST(CommandLine, KnowsWhatIsNoCommand) {
  EXPECT_THAT(wrongOf({"brew"}),
              ElementsAre("\"brew\" is no command. \"heatledger --help\" shows the commands."));
  EXPECT_THAT(wrongOf({"help", "brew"}), Contains(HasSubstr("\"brew\" is no command.")));
  EXPECT_THAT(wrongOf({"--colour"}), Contains(HasSubstr("\"--colour\" is no command.")));
  EXPECT_THAT(wrongOf({"--json"}), Contains(HasSubstr("no command was given.")));
  EXPECT_THAT(wrongOf({"my plan.json", "--csv"}),
              ElementsAre("\"my plan.json\" is no command; for a plan, type: heatledger answer my "
                          "plan.json"));
}

TEST(CommandLine, FindsTheHelpThatIsMeant) {
  EXPECT_EQ(helpAbout({}), std::nullopt);
  EXPECT_EQ(helpAbout({"help"}), std::nullopt);
  EXPECT_EQ(helpAbout({"--help"}), std::nullopt);
  EXPECT_EQ(helpAbout({"-h", "day"}), Command::Day);
  EXPECT_EQ(helpAbout({"help", "day"}), Command::Day);
  EXPECT_EQ(helpAbout({"day", "--csv", "--json", "--help"}), Command::Day);
  EXPECT_TRUE(std::holds_alternative<VersionAsked>(read({"--version"}).asked));
}

TEST(CommandLine, SpeaksTheLanguageThatIsTypedElseThePersons) {
  EXPECT_EQ(read({"day"}, "de").language, "de");
  EXPECT_EQ(read({"day", "--language", "en"}, "de").language, "en");
  EXPECT_EQ(read({"help", "day", "--language", "de"}).language, "de");
  EXPECT_EQ(read({"day", "--language", "tlh"}, "de").language, "de");
}

TEST(Verbs, AreFoundByNameAndByCommand) {
  for (const Verb& verb : verbs()) {
    EXPECT_EQ(verbCalled(verb.name), &verb);
    EXPECT_EQ(&verbOf(verb.command), &verb);
  }
  EXPECT_EQ(verbCalled("brew"), nullptr);
}

TEST(CommandLine, KnowsWhatANewPlanMayStartFrom) {
  EXPECT_EQ(requestOf({"new", "mine.json", "--like", "one-kettle"}).like, "one-kettle");
  EXPECT_EQ(requestOf({"new", "mine.json"}).like, "");
  const auto unknown = wrongOf({"new", "mine.json", "--like", "two-kettles"});
  ASSERT_EQ(unknown.size(), 1u);
  for (const char* name : {"120-or-240-volts", "hardly-boils", "large-batch", "mountain-batch",
                           "night-unplugged", "one-kettle", "two-circuits", "two-voltages"})
    EXPECT_THAT(unknown[0], HasSubstr(name));
  EXPECT_THAT(wrongOf({"answer", "--like", "one-kettle"}),
              ElementsAre(HasSubstr("only \"new\" knows it")));
}

TEST(CommandLine, KnowsAKettleOfOnesOwn) {
  EXPECT_FALSE(requestOf({"new", "mine.json"}).kettle);
  const auto kettle = requestOf({"new", "mine.json", "--kettle", "45 L", "--power", "2.2 kW",
                                 "--region", "united states", "--circuit", "20 A", "--no-lid"})
                          .kettle;
  ASSERT_TRUE(kettle);
  EXPECT_EQ(kettle->typed.at(rigs::KettleFigure::Volume), "45 L");
  EXPECT_EQ(kettle->typed.at(rigs::KettleFigure::Power), "2.2 kW");
  EXPECT_EQ(kettle->region, "United States");
  EXPECT_EQ(kettle->circuit, "North America 120 V 20 A");
  EXPECT_FALSE(kettle->lid);
  EXPECT_FALSE(kettle->jacket);
  // What other commands suppose is here the kettle's.
  EXPECT_EQ(
      requestOf({"new", "mine.json", "--room", "16 C"}).kettle->typed.at(rigs::KettleFigure::Room),
      "16 C");
  EXPECT_THAT(wrongOf({"new", "mine.json", "--kettle", "45 L", "--like", "one-kettle"}),
              ElementsAre(HasSubstr("either like another or")));
  EXPECT_THAT(wrongOf({"answer", "--kettle", "45 L"}),
              ElementsAre(HasSubstr("only \"new\" knows it")));
  EXPECT_THAT(wrongOf({"new", "mine.json", "--circuit", "17 A"}),
              ElementsAre(HasSubstr("Europe 230 V 16 A")));
  EXPECT_THAT(wrongOf({"new", "mine.json", "--region", "Atlantis"}),
              ElementsAre(HasSubstr("Japan")));
}

TEST(CommandLine, ShortensTheAnswerAloneAndNothingForPrograms) {
  EXPECT_TRUE(requestOf({"answer", "--brief"}).brief);
  EXPECT_FALSE(requestOf({"answer"}).brief);
  EXPECT_THAT(wrongOf({"cost", "--brief"}), ElementsAre(HasSubstr("only \"answer\" knows it")));
  EXPECT_THAT(wrongOf({"answer", "--brief", "--json"}), ElementsAre(HasSubstr("never shortened")));
}
