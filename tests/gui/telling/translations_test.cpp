// SPDX-License-Identifier: GPL-3.0-or-later
// German without Qt: the table is whole, is that of these sources and of the bundled data, and the
// reader's environment chooses it.
#include "gui/telling/translations.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <sstream>
#include <tuple>

#include "gui/telling/translation_table.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

struct Text {
  std::string context, english;
  std::string from;  // for people

  bool operator<(const Text& other) const {
    return std::tie(context, english) < std::tie(other.context, other.english);
  }
};

// --- What the sources mark.

// String literals beside each other, as the compiler joins them; nothing where none stands.
std::optional<std::string> literals(const std::string& source, std::size_t& at) {
  std::optional<std::string> joined;
  while (true) {
    const std::size_t next = source.find_first_not_of(" \n", at);
    if (next == std::string::npos || source[next] != '"') return joined;
    if (!joined) joined.emplace();
    for (at = next + 1; source[at] != '"'; ++at) {
      if (source[at] == '\\') ++at;  // only \" and \\ stand in our texts
      *joined += source[at];
    }
    ++at;
  }
}

bool take(char wanted, const std::string& source, std::size_t& at) {
  const std::size_t next = source.find_first_not_of(" \n", at);
  if (next == std::string::npos || source[next] != wanted) return false;
  at = next + 1;
  return true;
}

void addMarked(const std::string& source, const std::string& from, std::set<Text>& all) {
  for (const std::string mark : {"TOLD(", "QT_TRANSLATE_NOOP(", "translate("}) {
    for (std::size_t i = source.find(mark); i != std::string::npos; i = source.find(mark, i + 1)) {
      std::size_t at = i + mark.size();
      const auto context = literals(source, at);
      if (!context || !take(',', source, at))
        continue;  // the definition, or a call with a variable
      if (const auto english = literals(source, at)) all.insert({*context, *english, from});
    }
  }
}

std::set<Text> markedInSources() {
  std::set<Text> all;
  for (const std::string folder : {"physics", "rigs", "gui"}) {
    const fs::path root = fs::path(HEATLEDGER_SOURCE_DIR) / folder;
    for (const auto& file : fs::recursive_directory_iterator(root)) {
      const auto ending = file.path().extension();
      if (ending != ".cpp" && ending != ".hpp") continue;
      std::stringstream text;
      text << std::ifstream(file.path()).rdbuf();
      addMarked(text.str(), file.path().string(), all);
    }
  }
  return all;
}

// --- What people see of the bundled data.

// The pointer of a text with every index as *: "/materials/*/name".
void addOf(const json& value, const std::string& place, const std::string& document,
           const std::vector<std::pair<std::string, std::string>>& seen, std::set<Text>& all) {
  if (value.is_object()) {
    for (const auto& [key, inner] : value.items())
      addOf(inner, place + '/' + key, document, seen, all);
  } else if (value.is_array()) {
    for (const json& inner : value) addOf(inner, place + "/*", document, seen, all);
  } else if (value.is_string()) {
    for (const auto& [where, context] : seen)
      if (where == place) all.insert({context, value.get<std::string>(), document + place});
  }
}

std::set<Text> textsOfData() {
  static const std::map<std::string, std::vector<std::pair<std::string, std::string>>> kSeen{
      {"catalogue/materials.json",
       {{"/materials/*/name", "Catalogue"}, {"/materials/*/finishes/*/finish", "Catalogue"}}},
      {"catalogue/supplies.json", {{"/supplies/*/name", "Catalogue"}}},
      {"catalogue/rigs/", {{"/name", "Catalogue"}, {"/about", "Catalogue"}}},
      {"tariffs/",
       {{"/name", "Catalogue"}, {"/about", "Catalogue"}, {"/times/weekday/*/note", "Catalogue"}}},
      {"schemas/plan.schema.json",  // words that a plan may say
       {{"/$defs/tariff/properties/day/enum/*", "Catalogue"},
        {"/$defs/stands_on/properties/kind/enum/*", "Catalogue"},
        {"/$defs/supply/properties/feeds/enum/*", "Catalogue"},
        {"/$defs/cable/properties/use/enum/*", "Catalogue"},
        {"/$defs/rig/properties/wired/enum/*", "Catalogue"},
        {"/$defs/jacket/properties/outside/anyOf/*/enum/*", "Catalogue"}}},
      {"rules/",
       {{"/region", "Phrases"},
        {"/conductors/*/note", "Phrases"},
        {"/ground_fault/name", "Phrases"},
        {"/ground_fault/text", "Phrases"},
        {"/household_sockets/text", "Phrases"},
        {"/long_use/*/name", "Phrases"},
        {"/long_use/*/text", "Phrases"},
        {"/long_use/*/note", "Phrases"},
        {"/next_size/text", "Phrases"},
        {"/outlets/*/note", "Phrases"},
        {"/shared/*/name", "Phrases"},
        {"/subdivide/text", "Phrases"},
        {"/voltage_drop/*/part", "Phrases"}}}};
  std::set<Text> all;
  for (const std::string face : {"side", "lid", "base"})
    all.insert({"Catalogue", face, "a jacket's faces"});
  for (const rigs::EmbeddedDocument& document : rigs::embeddedDocuments()) {
    const std::string name(document.name);
    for (const auto& [beginning, seen] : kSeen)
      if (name.starts_with(beginning)) addOf(json::parse(document.text), "", name, seen, all);
  }
  return all;
}

// "%1 of %2": the places, which must be the same in both languages.
std::set<std::string> placesOf(std::string_view text) {
  std::set<std::string> places;
  for (std::size_t i = 0; i + 1 < text.size(); ++i)
    if (text[i] == '%' && '1' <= text[i + 1] && text[i + 1] <= '9')
      places.insert(std::string(text.substr(i, 2)));
  return places;
}

TEST(GermanTable, IsSortedAndSaysNothingTwice) {
  const auto all = germanTranslations();
  ASSERT_GT(all.size(), 1000u);
  for (std::size_t i = 1; i < all.size(); ++i)
    EXPECT_LT(std::tie(all[i - 1].context, all[i - 1].english),
              std::tie(all[i].context, all[i].english));
}

TEST(GermanTable, HasEveryTextThatTheSourcesMark) {
  const std::set<Text> all = markedInSources();
  ASSERT_GT(all.size(), 500u);
  for (const Text& text : all)
    EXPECT_TRUE(languageOf("de").translation(text.context, text.english))
        << text.from << ": " << text.context << ": " << text.english;
}

TEST(GermanTable, HasEveryTextOfOurDataThatPeopleSee) {
  const std::set<Text> all = textsOfData();
  ASSERT_GT(all.size(), 100u);
  for (const Text& text : all)
    EXPECT_TRUE(languageOf("de").translation(text.context, text.english))
        << text.from << ": " << text.context << ": " << text.english;
}

TEST(GermanTable, KeepsEveryPlace) {
  for (const Translation& one : germanTranslations())
    EXPECT_EQ(placesOf(one.english), placesOf(one.translated)) << one.english << '\n'
                                                               << one.translated;
}

TEST(GermanTable, LeavesNothingUnfinished) {
  std::ifstream file(std::string(HEATLEDGER_SOURCE_DIR) + "/gui/translations/heatledger_de.ts");
  ASSERT_TRUE(file);
  for (std::string line; std::getline(file, line);) {
    EXPECT_EQ(line.find("<translation type="), std::string::npos) << line;
    EXPECT_EQ(line.find("<translation></translation>"), std::string::npos) << line;
  }
}

TEST(Translations, TellGermanWithACommaInNumbers) {
  const rigs::Reader reader{.units = rigs::UnitSystem::SI, .language = &languageOf("de")};
  EXPECT_EQ(rigs::tell(rigs::Told(TOLD("Answer", "Strike")), reader), "Einmaischwasser");
  EXPECT_EQ(rigs::tell(rigs::Argument(rigs::amount(physics::litres(27.5))), reader), "27,5 L");
}

TEST(Translations, AreEnglishForALanguageThereIsNot) {
  EXPECT_EQ(languageOf("tlh").code(), "en");
  EXPECT_EQ(languageOf("").code(), "en");
  EXPECT_FALSE(languageOf("de").translation("Answer", "no such sentence"));
  EXPECT_FALSE(languageOf("de").translation("No context", "Strike"));
}

TEST(Translations, AreThoseOfEveryCode) {
  EXPECT_EQ(languageCodes().front(), "en");
  for (const std::string& code : languageCodes()) EXPECT_EQ(languageOf(code).code(), code);
}

// --- LC_ALL before LC_MESSAGES before LANG.

std::string chosenBy(const std::map<std::string, const char*>& environment) {
  return languageFromEnvironment([&](const char* name) {
    const auto at = environment.find(name);
    return at == environment.end() ? nullptr : at->second;
  });
}

TEST(LanguageOfTheEnvironment, IsGermanWhateverCountryAndEncoding) {
  EXPECT_EQ(chosenBy({{"LANG", "de_AT.UTF-8"}}), "de");
  EXPECT_EQ(chosenBy({{"LANG", "de"}}), "de");
  EXPECT_EQ(chosenBy({{"LANG", "de.UTF-8"}}), "de");
  EXPECT_EQ(chosenBy({{"LANG", "de@euro"}}), "de");
}

TEST(LanguageOfTheEnvironment, IsEnglishWhereThatSaysNothing) {
  EXPECT_EQ(chosenBy({}), "en");
  EXPECT_EQ(chosenBy({{"LANG", "C.UTF-8"}}), "en");
  EXPECT_EQ(chosenBy({{"LANG", "POSIX"}}), "en");
  EXPECT_EQ(chosenBy({{"LANG", "fr_CA.UTF-8"}}), "en");
  EXPECT_EQ(chosenBy({{"LANG", "den_CA"}}), "en");  // Slavey is not German
}

TEST(LanguageOfTheEnvironment, IsThatOfTheFirstVariableThatSaysAnything) {
  EXPECT_EQ(chosenBy({{"LANG", "de_DE"}, {"LC_MESSAGES", "en_GB"}}), "en");
  EXPECT_EQ(chosenBy({{"LANG", "en_GB"}, {"LC_MESSAGES", "de_CH"}}), "de");
  EXPECT_EQ(chosenBy({{"LC_MESSAGES", "de_CH"}, {"LC_ALL", "C"}}), "en");
  EXPECT_EQ(chosenBy({{"LC_MESSAGES", "de_CH"}, {"LC_ALL", ""}}), "de");
}

}  // namespace
}  // namespace gui::telling
