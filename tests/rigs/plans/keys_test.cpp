// SPDX-License-Identifier: GPL-3.0-or-later
// The table of keys against the readers: what it says to be accepted, refused and supposed is what
// readPlan() does.
#include "rigs/plans/keys.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <optional>
#include <regex>
#include <set>
#include <string>

#include "rigs/answers/answers.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/rigs/plans/full_plans.hpp"
#include "tests/rigs/plans/key_values.hpp"
#include "tests/rigs/plans/plain_ranges.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace rigs {
namespace {

using test_support::isAmount;
using test_support::isJson;
using test_support::isNumber;
using test_support::Json;
using test_support::plain;
using test_support::written;
namespace fs = std::filesystem;
using Pointer = Json::json_pointer;

// Where "my-region.json" lies: a copy of bundled rules. Of this program alone, for several may run
// at a time.
class OwnFolder {
 public:
  OwnFolder() {
    fs::create_directories(path_);
    fs::copy_file(fs::path(HEATLEDGER_SOURCE_DIR) / "rigs/data/rules/europe.json",
                  path_ / "my-region.json");
  }
  ~OwnFolder() { fs::remove_all(path_); }
  OwnFolder(const OwnFolder&) = delete;
  OwnFolder& operator=(const OwnFolder&) = delete;
  const fs::path& path() const { return path_; }

 private:
  fs::path path_ = fs::path(testing::TempDir()) / ("heatledger-keys-" + std::to_string(::getpid()));
};

const fs::path& folder() {
  static const OwnFolder own;
  return own.path();
}

const std::vector<Json>& plans() {
  static const std::vector<Json> all = test_support::fullPlans();
  return all;
}

test_support::Reading readOf(const Json& document) {
  test_support::Reading reading;
  reading.plan = readPlan(document.dump(), folder(), reading.problems);
  return reading;
}

// A rules file is read anew with each plan, and an air like the usual one is stated nonetheless.
bool alike(const std::optional<Plan>& one, std::optional<Plan> other) {
  if (!one || !other) return false;
  other->ownRules = one->ownRules;
  other->room.isStated = one->room.isStated;
  return *one == *other;
}

// The first place in a document that a key's place with its "*" stands for.
std::optional<std::string> firstPlace(const Json& document, const std::string& pattern) {
  const std::size_t star = pattern.find('*');
  if (star == std::string::npos)
    return document.contains(Pointer(pattern)) ? std::optional(pattern) : std::nullopt;
  const Pointer list(pattern.substr(0, star - 1));
  if (!document.contains(list)) return std::nullopt;
  for (std::size_t i = 0; i < document[list].size(); ++i)
    if (const auto found = firstPlace(
            document, pattern.substr(0, star) + std::to_string(i) + pattern.substr(star + 1)))
      return found;
  return std::nullopt;
}

struct Stated {
  Json document;
  std::string place;

  Json with(const Json& value) const {
    Json changed = document;
    changed[Pointer(place)] = value;
    return changed;
  }
  Json without() const {
    Json changed = document;
    changed[Pointer(place).parent_pointer()].erase(Pointer(place).back());
    return changed;
  }
};

std::string parentOf(const std::string& place) { return place.substr(0, place.rfind('/')); }

// A full plan that states the key; for remarks, one that states the object they stand in.
std::optional<Stated> statedIn(const Key& key) {
  for (const Json& document : plans()) {
    if (key.name() != "note") {
      if (const auto place = firstPlace(document, key.place)) return Stated{document, *place};
    } else if (const auto object = firstPlace(document, parentOf(key.place))) {
      Stated stated{document, *object + "/note"};
      stated.document[Pointer(stated.place)] = "a remark";
      return stated;
    }
  }
  return std::nullopt;
}

double si(const Key& key, std::string_view text) {
  const auto read = detail::read(key.quantity, text);
  EXPECT_TRUE(read.si) << key.place << ": " << text;
  return read.si.value_or(0.0);
}

Problems at(const std::string& place, const Problems& problems) {
  Problems there;
  std::copy_if(problems.begin(), problems.end(), std::back_inserter(there),
               [&](const Problem& p) { return p.where == place; });
  return there;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

bool showsExample(const std::string& says, const Key& key) {
  const std::string mark = isJson(key) ? "" : "\"";
  return contains(says, "e.g. " + mark + std::string(key.example) + mark);
}

// Every key but those of which the program looks at nothing.
std::vector<Key> lookedAt() {
  std::vector<Key> keys = planKeys();
  std::erase_if(keys, [](const Key& key) { return key.kind == ValueKind::Anything; });
  return keys;
}

std::string refusal(const Stated& stated, const Json& value) {
  const auto reading = readOf(stated.with(value));
  EXPECT_FALSE(reading.plan) << stated.place << " = " << value;
  const Problems there = at(stated.place, reading.problems);
  EXPECT_TRUE(hasErrors(there)) << stated.place << " = " << value << '\n'
                                << test_support::told(reading.problems);
  return test_support::told(there);
}

}  // namespace

TEST(PlanKeys, AreFoundByTheirPlaces) {
  ASSERT_NE(keyAt("/rigs/11/element/power"), nullptr);
  EXPECT_EQ(keyAt("/rigs/11/element/power")->place, "/rigs/*/element/power");
  EXPECT_EQ(keyAt("/rigs/*/element/power")->name(), "power");
  EXPECT_EQ(keyAt("/rigs/x/element/power"), nullptr);
  EXPECT_EQ(keyAt("/rigs/0/element/powr"), nullptr);
  EXPECT_EQ(keyAt("/rigs/0/element/power/x"), nullptr);
  EXPECT_EQ(keyAt("/rigs"), &planKeys().at(9));
  EXPECT_EQ(keyAt(""), nullptr);
  EXPECT_EQ(keysOf("/rigs/3/element"),
            (std::vector<std::string_view>{"power", "rated_voltage", "top_height", "diameter",
                                           "heated_length", "note"}));
  EXPECT_EQ(keysOf("").front(), "format");
}

TEST(PlanKeys, TellTheirRangeAsAPersonWould) {
  EXPECT_EQ(acceptedText(*keyAt("/batch/wort")), "0.5 to 2000 L");
  EXPECT_EQ(acceptedText(*keyAt("/batch/grain/mass")), "1 g to 500 kg");
  EXPECT_EQ(acceptedText(*keyAt("/place/air/air_changes")), "0 to 60");
  EXPECT_EQ(acceptedText(*keyAt("/place/air/window_u")), "0.3 to 7 W/(m2 K)");
  EXPECT_EQ(acceptedText(*keyAt("/place/region")), "");
}

TEST(PlanKeys, StandInTheTableOnceEach) {
  std::set<std::string> places;
  for (const Key& key : planKeys()) EXPECT_TRUE(places.insert(key.place).second) << key.place;
}

// "20 to 100 °C" in a sentence is "20 to 100 C" in the table.
TEST(PlanKeys, TellNoOtherRangeThanTheirOwn) {
  static const std::regex kRange(R"(-?[0-9][0-9.]*( [A-Za-z%]+)? to -?[0-9])");
  int told = 0;
  for (const Key& key : planKeys()) {
    const std::string meaning = plain(key.meaning.english);
    if (!std::regex_search(meaning, kRange)) continue;
    ++told;
    std::string range = key.kind == ValueKind::List
                            ? std::string(key.least) + " to " + std::string(key.most)
                            : acceptedText(key);
    EXPECT_TRUE(contains(meaning, range)) << key.place << ": " << range << " in " << meaning;
  }
  EXPECT_GT(told, 80);
}

TEST(FullPlans, AreAcceptedAsTheyAreAndStateEveryKey) {
  for (const Json& document : plans()) {
    const auto reading = readOf(document);
    EXPECT_TRUE(reading.plan);
    EXPECT_EQ(test_support::told(reading.problems), "");
  }
  for (const Key& key : planKeys()) EXPECT_TRUE(statedIn(key)) << key.place;
}

TEST(EveryKey, AcceptsItsExampleAndItsDefault) {
  for (const Key& key : planKeys()) {
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated && !key.example.empty()) << key.place;
    for (const std::string_view text : {key.example, key.standard}) {
      if (text.empty()) continue;
      const auto reading = readOf(stated->with(written(key, text)));
      const Problems there = at(stated->place, reading.problems);
      EXPECT_TRUE(there.empty()) << test_support::told(there);
    }
    for (const std::string_view word : key.words)
      EXPECT_TRUE(at(stated->place, readOf(stated->with(std::string(word))).problems).empty());
    if (!key.orNone) continue;
    EXPECT_TRUE(at(stated->place, readOf(stated->with("none")).problems).empty()) << key.place;
  }
}

TEST(EveryQuantity, IsAcceptedFromTheLowestToTheHighestAndNotBeyond) {
  for (const Key& key : planKeys()) {
    if (!isAmount(key)) continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const double least = si(key, key.least);
    const double most = si(key, key.most);
    for (const std::string_view end : {key.least, key.most}) {
      const auto reading = readOf(stated->with(std::string(end)));
      for (const Problem& problem : at(stated->place, reading.problems))
        EXPECT_FALSE(contains(test_support::told({problem}), "range"))
            << end << '\n'
            << test_support::told({problem});
    }
    const double step = 1e-6 * (most - least);
    for (const double beyond : {least - step, most + step}) {
      const std::string text = detail::printExactly(key.quantity, beyond);
      const std::string says = refusal(*stated, text);
      const FormatOptions digits{.significantDigits = 4, .decimals = {}};
      const std::string range = detail::printLike(key.quantity, least, text, digits) + " to " +
                                detail::printLike(key.quantity, most, text, digits);
      // Where nobody says such numbers, in the units that people say.
      const std::string usual = detail::print(key.quantity, least, UnitSystem::SI, digits) +
                                " to " + detail::print(key.quantity, most, UnitSystem::SI, digits);
      EXPECT_TRUE(contains(says, "accepted is " + range) || contains(says, "accepted is " + usual))
          << range << " or " << usual << " in " << says;
      EXPECT_TRUE(showsExample(says, key)) << key.example << " in " << says;
    }
  }
}

TEST(EveryNumber, IsAcceptedFromTheLowestToTheHighestAndNotBeyond) {
  for (const Key& key : planKeys()) {
    if (!isNumber(key) || key.least.empty()) continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const double step = key.kind == ValueKind::Integer ? 1.0 : 0.001;
    for (const std::string_view end : {key.least, key.most})
      EXPECT_TRUE(at(stated->place, readOf(stated->with(written(key, end))).problems).empty())
          << key.place << " = " << end;
    for (const double beyond :
         {std::stod(std::string(key.least)) - step, std::stod(std::string(key.most)) + step})
      EXPECT_TRUE(contains(refusal(*stated, beyond), "accepted is " + acceptedText(key) +
                                                         ", e.g. " + std::string(key.example)))
          << key.place;
  }
}

TEST(EveryText, IsAcceptedUpToItsLength) {
  for (const Key& key : planKeys()) {
    if (key.kind != ValueKind::Text) continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated && !key.most.empty()) << key.place;
    const std::size_t longest = std::stoul(std::string(key.most));
    EXPECT_TRUE(contains(refusal(*stated, std::string(longest + 1, 'x')),
                         std::to_string(longest) + " are accepted"))
        << key.place;
    const auto reading = readOf(stated->with(std::string(longest, 'x')));
    EXPECT_FALSE(contains(test_support::told(at(stated->place, reading.problems)), "are accepted"))
        << key.place;
  }
}

TEST(EveryList, IsAcceptedFromItsFewestEntriesToItsMost) {
  for (const Key& key : planKeys()) {
    if (key.kind != ValueKind::List) continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    Json list = Json::parse(key.example);
    Json few = Json::array();
    while (few.size() + 1 < std::stoul(std::string(key.least))) few.push_back(list.at(few.size()));
    refusal(*stated, few);
    while (list.size() <= std::stoul(std::string(key.most))) list.push_back(list.at(0));
    EXPECT_TRUE(contains(refusal(*stated, list), std::string(key.most) + " are accepted"))
        << key.place;
  }
}

TEST(EveryWord, IsOneOfTheTable) {
  for (const Key& key : planKeys()) {
    if (key.words.empty()) continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const std::string says = refusal(*stated, "unheard of");
    std::string all = key.words.size() > 1 ? "one of " : "";
    for (const std::string_view word : key.words)
      all += (word == key.words.front() ? "\"" : ", \"") + std::string(word) + '"';
    EXPECT_TRUE(contains(says, all)) << all << " in " << says;
  }
}

TEST(EveryKey, RefusesTheWrongType) {
  for (const Key& key : lookedAt()) {
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const std::string says = refusal(*stated, true);
    if (key.kind == ValueKind::Word) continue;  // the words themselves stand there
    EXPECT_TRUE(showsExample(says, key)) << key.example << " in " << says;
  }
}

TEST(EveryKey, MayBeLeftOutWhereTheTableSaysSo) {
  for (const Key& key : lookedAt()) {
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const auto reading = readOf(stated->without());
    const bool may = key.need == Need::Optional;
    EXPECT_EQ(reading.plan.has_value(), may) << key.place << '\n'
                                             << test_support::told(reading.problems);
  }
}

// What the reader leaves open, and the answers fill in; see below.
const std::set<std::string> kFilledInLater{"/tariff/brew_from", "/tariff/brew_until",
                                           "/tariff/brews_per_year", "/rigs/*/supply/other_load",
                                           "/rigs/*/second_supply/other_load"};

TEST(EveryDefault, IsWhatHoldsWhereTheKeyIsLeftOut) {
  for (const Key& key : lookedAt()) {
    if (key.standard.empty() || key.need != Need::Optional || kFilledInLater.count(key.place) > 0)
      continue;
    const auto stated = statedIn(key);
    ASSERT_TRUE(stated) << key.place;
    const auto without = readOf(stated->without());
    const auto with = readOf(stated->with(written(key, key.standard)));
    EXPECT_TRUE(alike(without.plan, with.plan)) << key.place << '\n'
                                                << test_support::told(with.problems);
  }
}

TEST(EveryDefault, OfANeededKeyIsWhatHoldsWhereTheWholeObjectIsLeftOut) {
  std::set<std::string> objects;
  for (const Key& key : planKeys())
    if (key.need == Need::Required && !key.standard.empty()) objects.insert(parentOf(key.place));
  EXPECT_EQ(objects, (std::set<std::string>{"/place/air", "/rigs/*/stands_on"}));
  for (const std::string& object : objects) {
    const auto stated = statedIn(*keyAt(object));
    ASSERT_TRUE(stated) << object;
    Json standard = Json::object();
    for (const std::string_view name : keysOf(object)) {
      const Key& key = *keyAt(object + '/' + std::string(name));
      if (!key.standard.empty()) standard[std::string(name)] = written(key, key.standard);
    }
    EXPECT_TRUE(alike(readOf(stated->without()).plan, readOf(stated->with(standard)).plan))
        << object;
  }
}

TEST(EveryDefault, ThatTheAnswersFillInIsTheTables) {
  const auto answered = [](const Json& document) {
    const auto reading = readOf(document);
    EXPECT_TRUE(reading.plan) << test_support::told(reading.problems);
    if (!reading.plan) return Json();
    Json result = Json::parse(resultJson(*reading.plan, answer(*reading.plan, Depth::Circuit)));
    for (const char* key : {"brew_from_s", "brew_until_s"}) result["tariff"].erase(key);
    return result;
  };
  Json out = plans().at(1);  // with prices by the hour
  out["rigs"].erase(4);
  out["rigs"].erase(3);
  out["rigs"].erase(2);
  Json in = out;
  for (const std::string& place : kFilledInLater) {
    const auto there = firstPlace(out, place);
    ASSERT_TRUE(there) << place;
    out[Pointer(parentOf(*there))].erase(std::string(keyAt(place)->name()));
    in[Pointer(*there)] = written(*keyAt(place), keyAt(place)->standard);
  }
  EXPECT_EQ(Json::diff(answered(out), answered(in)).dump(1), "[]");
}

TEST(EveryObject, RemarksOnAKeyThatIsNotInTheTable) {
  std::set<std::string> objects;
  for (const Key& key : planKeys()) objects.insert(parentOf(key.place));
  for (const std::string& object : objects) {
    bool found = false;
    for (const Json& document : plans()) {
      const auto place = object.empty() ? std::optional(object) : firstPlace(document, object);
      if (!place) continue;
      found = true;
      Json changed = document;
      changed[Pointer(*place)]["unheard_of"] = 1;
      const auto reading = readOf(changed);
      EXPECT_EQ(reading.problems.size(), 1u) << test_support::told(reading.problems);
      EXPECT_EQ(at(*place + "/unheard_of", reading.problems).size(), 1u) << *place;
      break;
    }
    EXPECT_TRUE(found) << object;
  }
}

}  // namespace rigs
