// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_cursor.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "rigs/documents/json_parse.hpp"
#include "tests/support/within.hpp"

namespace rigs {
// How failing tests show a problem.
void PrintTo(const Problem& p, std::ostream* out) {
  *out << (p.severity == Severity::Error ? "error at " : "warning at ") << p.where << ": "
       << inEnglish(p.message);
}
}  // namespace rigs

namespace {

using namespace physics;
using namespace rigs;
using testing::ElementsAre;
using testing::IsEmpty;

testing::Matcher<const Problem&> isTold(Severity severity, const std::string& where,
                                        const std::string& message) {
  return testing::Truly([=](const Problem& p) {
    return p.severity == severity && p.where == where && inEnglish(p.message) == message;
  });
}
testing::Matcher<const Problem&> error(const std::string& where, const std::string& message) {
  return isTold(Severity::Error, where, message);
}
testing::Matcher<const Problem&> warning(const std::string& where, const std::string& message) {
  return isTold(Severity::Warning, where, message);
}

// What such a document shows: a place's own example, else one of the key at its end.
class SomeExamples : public Examples {
 public:
  std::optional<Example> at(std::string_view place) const override {
    static const std::map<std::string_view, Example> kExamples{
        {"altitude", {"120 m"}},
        {"room", {"20 °C"}},
        {"water", {"28 L"}},
        {"temperature", {"20 °C"}},
        {"time", {"60 min"}},
        {"height", {"400 mm"}},
        {"volume", {"30 m3"}},
        {"name", {"Old kettle"}},
        {"place", {R"({"altitude": "120 m", "room": "20 C", "water": "12 C"})"}},
        {"lid", {R"({"material": "stainless steel", "open": {"boil": "35 %"}})", true}},
        {"rests", {R"([{"temperature": "66 C", "time": "60 min"}])"}},
        {"rigs",
         {R"([{"name": "A", "from": "40 L steel kettle"}, {"name": "B", "from": "60 L steel kettle"}])"}}};
    const auto found = kExamples.find(place.substr(place.rfind('/') + 1));
    return found == kExamples.end() ? std::nullopt : std::optional(found->second);
  }
};

// A document that is valid JSON, its root, and what reading it left behind.
struct Document {
  explicit Document(std::string_view text) : json(nlohmann::ordered_json::parse(text)) {}
  JsonCursor root() { return JsonCursor(json, problems, {}, &examples); }

  SomeExamples examples;

  nlohmann::ordered_json json;
  Problems problems;
};

const Range<Power> kElementPower{watts(1.0), watts(50e3)};

TEST(JsonCursor, ReadsQuantitiesWithTheirUnits) {
  Document d(R"({"power": "5,5 kW", "mash": "152 °F", "loss": "4.5 %", "share": 0.25})");
  const auto at = d.root();

  EXPECT_EQ(at.quantity<Power>("power", kElementPower), watts(5500.0));
  const auto mash = at.quantity<Temperature>("mash", {celsius(0.0), celsius(100.0)});
  ASSERT_TRUE(mash);
  EXPECT_WITHIN(*mash, celsius(66.66666666666667), kelvins(1e-9));
  EXPECT_EQ(at.quantity<double>("loss", {0.0, 1.0}), 0.045);
  EXPECT_EQ(at.quantity<double>("share", {0.0, 1.0}), 0.25);
  EXPECT_THAT(d.problems, IsEmpty());
}

TEST(JsonCursor, ReportsEveryProblemWithItsPlace) {
  Document d(R"({"elements": [{"power": "90 kW"}, {"power": 3000}, {"power": "27 L"}, {},
                              {"power": true}, {"power": null}, {"power": ["3000 W"]}]})");
  const auto elements = d.root().objects("elements", {1, 10});
  ASSERT_TRUE(elements);
  for (const auto& element : *elements)
    EXPECT_EQ(element.quantity<Power>("power", kElementPower), std::nullopt);

  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/elements/0/power",
                R"("90 kW" is out of range; accepted is 1 W to 50 kW, e.g. "3000 W")"),
          error("/elements/1/power",
                R"("3000" has no unit; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"),
          error("/elements/2/power", R"("27 L" is a volume; a power is needed, e.g. "3000 W")"),
          error("/elements/3/power", R"("power" is missing; a power is needed, e.g. "3000 W")"),
          error("/elements/4/power",
                R"(true is no answer; a power as text is needed, e.g. "3000 W")"),
          error("/elements/5/power",
                R"(null says nothing; a power as text is needed, e.g. "3000 W")"),
          error("/elements/6/power",
                R"(a list stands here; a power as text is needed, e.g. "3000 W")")));
}

TEST(JsonCursor, PrintsARangeInTheUnitsOfTheDocument) {
  Document d(R"({"mash": "500 °F", "height": "0 in", "time": "9 h 30 min"})");
  const auto at = d.root();
  EXPECT_FALSE(at.quantity<Temperature>("mash", {celsius(0.0), celsius(100.0)}));
  EXPECT_FALSE(at.quantity<Length>("height", {millimetres(25.4), metres(HUGE_VAL)}));
  EXPECT_FALSE(at.quantity<Time>("time", {minutes(0.0), hours(3.0)}));
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/mash",
                R"("500 °F" is out of range; accepted is 32 °F to 212 °F, e.g. "66.7 °C")"),
          error("/height", R"("0 in" is out of range; accepted is 1 in or more, e.g. "400 mm")"),
          error("/time",
                R"("9 h 30 min" is out of range; accepted is 0 s to 3 h, e.g. "60 min")")));
}

// 212 °F misses 100 °C by the last bit; both ends of a range belong to it.
TEST(JsonCursor, AcceptsTheEndsOfARangeInAnyUnit) {
  Document d(R"({"low": "32 °F", "high": "212 °F"})");
  const Range<Temperature> liquid{celsius(0.0), celsius(100.0)};
  EXPECT_EQ(d.root().quantity("low", liquid), celsius(0.0));
  EXPECT_EQ(d.root().quantity("high", liquid), celsius(100.0));
  EXPECT_THAT(d.problems, IsEmpty());
}

TEST(JsonCursor, TellsAbsenceFromNonsense) {
  Document d(R"({"bad": "much"})");
  const auto at = d.root();
  EXPECT_EQ(at.optionalQuantity("absent", watts(7.0), kElementPower), watts(7.0));
  EXPECT_EQ(at.quantityIfGiven("absent", kElementPower), std::nullopt);
  EXPECT_EQ(at.optionalText("absent", "none", 9), "none");
  EXPECT_EQ(at.optionalNumber("absent", 2.5, {0.0, 9.0}), 2.5);
  EXPECT_EQ(at.optionalInteger("absent", 2, {0, 9}), 2);
  EXPECT_EQ(at.optionalBoolean("absent", true), true);
  EXPECT_EQ(at.optionalOneOf<int>("absent", 3, {{"one", 1}}), 3);
  EXPECT_FALSE(at.objectIfGiven("absent"));
  EXPECT_THAT(at.arrayIfGiven("absent", {1, 9}), IsEmpty());
  EXPECT_THAT(at.objectsIfGiven("absent", {1, 9}), IsEmpty());
  EXPECT_THAT(d.problems, IsEmpty());

  EXPECT_EQ(at.optionalQuantity("bad", watts(7.0), kElementPower), std::nullopt);
  EXPECT_EQ(at.quantityIfGiven("bad", kElementPower), std::nullopt);
  EXPECT_EQ(d.problems.size(), 2u);
  EXPECT_TRUE(hasErrors(d.problems));
}

TEST(JsonCursor, AsksForTheTypeFirst) {
  Document d(R"({"whole": 3.7, "truth": 1, "count": true, "text": 5, "number": "5", "round": 4.0,
                 "list": {}, "object": [], "huge": 1e300})");
  const auto at = d.root();
  EXPECT_FALSE(at.integer("whole", {0, 9}));
  EXPECT_FALSE(at.optionalBoolean("truth", true));
  EXPECT_FALSE(at.integer("count", {0, 9}));
  EXPECT_FALSE(at.text("text", 9));
  EXPECT_FALSE(at.number("number", {0.0, 9.0}));
  EXPECT_FALSE(at.array("list", {0, 9}));
  EXPECT_FALSE(at.object("object"));
  EXPECT_FALSE(at.integer("huge", {0, 9}));
  EXPECT_EQ(at.integer("round", {0, 9}), 4);
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/whole", "3.7 is not a whole number; 0 to 9 is accepted, e.g. 3"),
          error("/truth", "1 is a number; true or false without quotation marks is needed"),
          error("/count", "true is no answer; a number without quotation marks is needed, e.g. 1"),
          error("/text", R"(5 is a number; text in quotation marks is needed, e.g. "Old kettle")"),
          error("/number", R"("5" is text; a number without quotation marks is needed, e.g. 1)"),
          error("/list", "an object stands here; a list is needed"),
          error("/object", "a list stands here; an object is needed"),
          error("/huge", "1e+300 is out of range; accepted is 0 to 9, e.g. 1")));
}

TEST(JsonCursor, SaysWhatIsMissing) {
  Document d("{}");
  const auto at = d.root();
  EXPECT_FALSE(at.object("place"));
  EXPECT_FALSE(at.array("rigs", {2, 9}));
  EXPECT_FALSE(at.text("name", 9));
  EXPECT_FALSE(at.number("factor", {0.5, 2.0}));
  EXPECT_FALSE(at.integer("count", {1, 2}));
  EXPECT_FALSE(at.oneOf("shape", {"flat", "round"}));
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error(
              "/place",
              R"("place" is missing; an object is needed, e.g. {"altitude": "120 m", "room": "20 C", "water": "12 C"})"),
          error(
              "/rigs",
              R"("rigs" is missing; a list is needed, e.g. [{"name": "A", "from": "40 L steel kettle"}, {"name": "B", "from": "60 L steel kettle"}])"),
          error("/name",
                R"("name" is missing; text in quotation marks is needed, e.g. "Old kettle")"),
          error("/factor", R"("factor" is missing; a number from 0.5 to 2 is needed, e.g. 1)"),
          error("/count", R"("count" is missing; a whole number from 1 to 2 is needed, e.g. 1)"),
          error("/shape", R"("shape" is missing; one of "flat", "round" is needed)")));
}

TEST(JsonCursor, LimitsLists) {
  Document d(R"({"rigs": [{}], "mixed": [{}, 5]})");
  EXPECT_FALSE(d.root().objects("rigs", {2, 9}));
  const auto mixed = d.root().objects("mixed", {2, 9});
  ASSERT_TRUE(mixed);
  EXPECT_EQ(mixed->size(), 1u);
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error(
              "/rigs",
              R"(this list has 1 entry; 2 to 9 are accepted, e.g. [{"name": "A", "from": "40 L steel kettle"}, {"name": "B", "from": "60 L steel kettle"}])"),
          error("/mixed/1", "5 is a number; an object is needed")));
}

TEST(JsonCursor, LimitsText) {
  Document d(R"({"long": "0123456789", "bell": "a\u0007b", "good": "Ölfass"})");
  EXPECT_FALSE(d.root().text("long", 9));
  EXPECT_FALSE(d.root().text("bell", 9));
  EXPECT_EQ(d.root().text("good", 9), "Ölfass");
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/long",
                R"("0123456789" is too long with 10 characters; 9 are accepted, e.g. "012345678")"),
          error(
              "/bell",
              R"("a?b" holds a control character; plain text in one line is accepted, e.g. "a b")")));
}

// Nine characters, of which one takes two bytes.
TEST(JsonCursor, CountsCharactersAndNotBytes) {
  Document d(R"({"good": "Ölfässer9"})");
  EXPECT_EQ(d.root().text("good", 9), "Ölfässer9");
  EXPECT_FALSE(d.root().text("good", 8));
  EXPECT_THAT(d.problems,
              ElementsAre(error("/good", R"("Ölfässer9" is too long with 9 characters; 8 are )"
                                         R"(accepted, e.g. "Ölfässer")")));
}

// Null is not absence, and what may be left out by a word says so.
TEST(JsonCursor, ShowsWhatStandsInPlaceOfNull) {
  Document d(R"({"place": null, "lid": null, "rests": null})");
  EXPECT_FALSE(d.root().object("place"));
  EXPECT_FALSE(d.root().object("lid"));
  EXPECT_FALSE(d.root().array("rests", {1, 12}));
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/place", R"(null says nothing; an object is needed, e.g. {"altitude": "120 m", )"
                          R"("room": "20 C", "water": "12 C"})"),
          error("/lid", R"(null says nothing; an object is needed, e.g. {"material": "stainless )"
                        R"(steel", "open": {"boil": "35 %"}}, or "none")"),
          error("/rests", R"(null says nothing; a list is needed, e.g. [{"temperature": "66 C", )"
                          R"("time": "60 min"}])")));
}

// A key has examples of its own, whatever its kind's example is.
TEST(JsonCursor, FitsTheExampleToTheKeyAndItsRange) {
  Document d(R"({"altitude": "900", "room": "1e999 C", "water": "warm", "volume": "5 L",
                 "deep": [{"room": "-300 C"}], "odd": "9 kg"})");
  const auto at = d.root();
  const Range<Length> heights{metres(-430.0), metres(5200.0)};
  const Range<Temperature> rooms{celsius(-10.0), celsius(50.0)};
  EXPECT_FALSE(at.quantity<Length>("altitude", heights));
  EXPECT_FALSE(at.quantity<Temperature>("room", rooms));
  EXPECT_FALSE(at.quantity<Volume>("water", {litres(1.0), litres(2000.0)}));
  EXPECT_FALSE(at.quantity<Volume>("volume", {litres(2e3), litres(1e6)}));
  EXPECT_FALSE(at.objects("deep", {1, 1})->front().quantity<Temperature>("room", rooms));
  EXPECT_FALSE(at.quantity<Mass>("odd", {kilograms(100.0), kilograms(200.0)}));
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error("/altitude",
                R"("900" has no unit; write it with one of mm, cm, m, in, ft, e.g. "900 m")"),
          error("/room", R"("1e999 C" is too large or too small a number; -10 °C to 50 °C is )"
                         R"(accepted, e.g. "20 °C")"),
          error(
              "/water",
              R"("warm" does not start with a number; write it with one of L, mL, US gal, US qt, )"
              R"(imp gal, e.g. "28 L")"),
          error("/volume", R"("5 L" is out of range; accepted is 2000 L to 1000000 L, e.g. )"
                           R"("30 m3")"),
          error("/deep/0/room", R"("-300 C" lies below absolute zero; -10 C to 50 C is accepted, )"
                                R"(e.g. "20 °C")"),
          error("/odd", R"("9 kg" is out of range; accepted is 100 kg to 200 kg, e.g. "150 kg")")));
}

enum class Shape { Flat, Round };

TEST(JsonCursor, KnowsWordsAndGuessesAtSlips) {
  Document d(R"({"good": "round", "slip": "ruond", "far": "hexagonal", "type": 5})");
  const auto shape = [at = d.root()](const char* key) {
    return at.oneOf<Shape>(key, {{"flat", Shape::Flat}, {"round", Shape::Round}});
  };
  EXPECT_EQ(shape("good"), Shape::Round);
  EXPECT_FALSE(shape("slip"));
  EXPECT_FALSE(shape("far"));
  EXPECT_FALSE(shape("type"));
  EXPECT_EQ(d.root().oneOf("good", {"flat", "round"}), "round");
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          error(
              "/slip",
              R"("ruond" is not known here; write one of "flat", "round"; perhaps "round" was meant)"),
          error("/far", R"("hexagonal" is not known here; write one of "flat", "round")"),
          error("/type", R"(5 is a number; one of "flat", "round" is needed)")));
}

TEST(JsonCursor, WarnsAboutUnknownKeys) {
  Document d(R"({"power": "3 kW", "rated_votlage": "230 V", "Colour": "green", "a/b~c": 1})");
  d.root().warnAboutKeysExcept({"power", "rated_voltage"});
  EXPECT_THAT(
      d.problems,
      ElementsAre(
          warning(
              "/rated_votlage",
              R"("rated_votlage" is not known here and has no effect; perhaps "rated_voltage" was meant)"),
          warning("/Colour", R"("Colour" is not known here and has no effect)"),
          warning("/a~1b~0c", R"("a/b~c" is not known here and has no effect)")));
  EXPECT_FALSE(hasErrors(d.problems));
}

TEST(JsonCursor, KeepsTheOrderOfKeys) {
  Document d(R"({"b": 1, "a": 2})");
  EXPECT_THAT(d.root().keys(), ElementsAre("b", "a"));
  EXPECT_TRUE(d.root().has("a"));
  EXPECT_FALSE(d.root().isText("a"));
}

// What parseJson() says about text that it refuses.
Problems refusal(std::string_view bytes) {
  Problems problems;
  EXPECT_FALSE(parseJson(bytes, problems));
  EXPECT_TRUE(hasErrors(problems));
  return problems;
}

TEST(ParseJson, AcceptsAByteOrderMark) {
  Problems problems;
  const auto json = parseJson("\xef\xbb\xbf{\"name\": \"Öl\"}\n", problems);
  ASSERT_TRUE(json != nullptr);
  EXPECT_EQ(JsonCursor(*json, problems).text("name", 9), "Öl");
  EXPECT_THAT(problems, IsEmpty());
}

TEST(ParseJson, SaysWhereTheTextIsBroken) {
  const std::string unclosed =
      "the document ends too early; a bracket or a quotation mark is not closed";
  const std::vector<std::pair<std::string, std::string>> rows{
      {"{\"a\": 1,\n \"b\": 2,\n}", "line 3, column 1: there is a comma too many before \"}\""},
      {"{\"a\": [1, ]}", "line 1, column 11: there is a comma too many before \"]\""},
      {"{\"a\": 1\n \"b\": 2}", "line 2, column 2: a comma or a colon is missing before \"\"b\"\""},
      {"{\"a\": 1", "line 1, column 8: " + unclosed},
      {"{\"a\": \"x", "line 1, column 9: " + unclosed},
      {"{\"a\": \"x\ny\"}", "line 1, column 9: a text is not closed at the end of its line"},
      {"{ // power\n}", "line 1, column 3: comments are not accepted; remove this one"},
      {"{'a': 1}", "line 1, column 2: texts stand in double quotation marks"},
      {"{\"ö\": NaN}",
       "line 1, column 7: \"NaN\" does not belong here; texts need quotation marks, and words "
       "without "
       "them are true, false and null only"},
      {"nul\"", "line 1, column 4: a comma or a colon is missing before \"\"\""},
      {"[1 2]",
       "line 1, column 4: \"2\" does not belong here; texts need quotation marks, and "
       "words without them are true, false and null only"},
      {"[1 : 2]", "line 1, column 4: \":\" does not belong here"},
      {"{\"a\": 1e999}", "line 1, column 11: this number is too large"},
  };
  for (const auto& [text, message] : rows) {
    SCOPED_TRACE(text);
    EXPECT_THAT(refusal(text), ElementsAre(error("", message)));
  }
}

TEST(ParseJson, RefusesOtherEncodings) {
  EXPECT_THAT(refusal(std::string_view("\xff\xfe{\0}\0", 6)),
              ElementsAre(error("",
                                "the document is not in UTF-8, but probably in UTF-16; save it "
                                "as UTF-8")));
  EXPECT_THAT(refusal(std::string_view("\0{\0}", 4)),
              ElementsAre(error("",
                                "the document is not in UTF-8, but probably in UTF-16; save it "
                                "as UTF-8")));
  EXPECT_THAT(refusal("{\n\"name\": \"\xd6l\"}"),
              ElementsAre(error("",
                                "line 2, column 10: this is not UTF-8; save the document as "
                                "UTF-8")));
  EXPECT_THAT(refusal("{\"a\": \"\xed\xa0\x80\"}"),
              ElementsAre(error("",
                                "line 1, column 8: this is not UTF-8; save the document as "
                                "UTF-8")));
}

TEST(ParseJson, RefusesRepeatedKeys) {
  EXPECT_THAT(
      refusal(R"({"rigs": [{}, {"power": 1, "volume": {"a": 1}, "power": 2}], "rigs": 3})"),
      ElementsAre(error("/rigs/1/power", R"("power" stands here more than once; keep one of them)"),
                  error("/rigs", R"("rigs" stands here more than once; keep one of them)")));
}

TEST(ParseJson, RefusesWhatIsTooMuch) {
  const std::string deep = std::string(100000, '[') + std::string(100000, ']');
  EXPECT_THAT(refusal(deep),
              ElementsAre(error("", "line 1, column 65: more than 64 levels of brackets")));
  EXPECT_THAT(refusal(std::string(4 * 1024 * 1024 + 1, ' ')),
              ElementsAre(error("", "the document is larger than 4 MB")));
  std::string wide = "{\"a\": {\"0\": 0";
  for (int i = 1; i <= 1000; ++i) wide += ", \"" + std::to_string(i) + "\": 0";
  EXPECT_THAT(refusal(wide + "}}"),
              ElementsAre(error("/a", "this object has more than 1000 keys")));
  EXPECT_THAT(refusal(""), ElementsAre(error("", "the document is empty")));
  EXPECT_THAT(refusal(" \n"), ElementsAre(error("", "the document is empty")));

  Problems problems;
  const std::string bracketsInText = "{\"a\": \"\\\"" + std::string(100, '[') + "\"}";
  EXPECT_TRUE(parseJson(bracketsInText, problems));
  EXPECT_TRUE(parseJson(std::string(64, '[') + std::string(64, ']'), problems));
  EXPECT_THAT(problems, IsEmpty());
}

RC_GTEST_PROP(ParseJson, SurvivesAnyBytes, (const std::string& bytes)) {
  Problems problems;
  const auto json = parseJson(bytes, problems);
  RC_ASSERT((json != nullptr) == problems.empty());
}

RC_GTEST_PROP(ParseJson, SurvivesAnyDamageToADocument, ()) {
  std::string text = R"({"a": [1, -2.5e3, true, null, "x\u00e9\n"], "b": {"c": {}, "d": []}})";
  const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
  text[at] = *rc::gen::arbitrary<char>();
  Problems problems;
  const auto json = parseJson(text, problems);
  RC_ASSERT((json != nullptr) == problems.empty());
}

}  // namespace
