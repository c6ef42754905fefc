// SPDX-License-Identifier: GPL-3.0-or-later
// docs/plan-document.md against the table of keys: a table for each object, a row for each key.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <optional>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "rigs/plans/keys.hpp"
#include "tests/rigs/plans/plain_ranges.hpp"

namespace rigs {
namespace {

using test_support::plain;

// How the line before an object's table begins.
const std::map<std::string, std::vector<std::string>> kTables{
    {"## Top level", {""}},
    {"## `ready`", {"/ready"}},
    {"## `batch`", {"/batch"}},
    {"`grain`:", {"/batch/grain"}},
    {"An addition:", {"/batch/additions/*"}},
    {"`rinse`:", {"/batch/rinse"}},
    {"`drain`:", {"/batch/drain"}},
    {"`mash`:", {"/batch/mash"}},
    {"A rest:", {"/batch/mash/rests/*"}},
    {"`unplugged`:", {"/batch/mash/unplugged"}},
    {"## `place`", {"/place"}},
    {"`air`;", {"/place/air"}},
    {"## `goals`", {"/goals"}},
    {"## `tariff`", {"/tariff"}},
    {"`times`:", {"/tariff/times"}},
    {"A window:", {"/tariff/times/weekday/*", "/tariff/times/weekend/*"}},
    {"A tier:", {"/tariff/tiers/*"}},
    {"A rig:", {"/rigs/*"}},
    {"`vessel`:", {"/rigs/*/vessel"}},
    {"`stands_on`;", {"/rigs/*/stands_on"}},
    {"`element`, and each", {"/rigs/*/element", "/rigs/*/elements/*"}},
    {"`supply` and `second_supply`", {"/rigs/*/supply", "/rigs/*/second_supply"}},
    {"`cable` and `second_cable`", {"/rigs/*/cable", "/rigs/*/second_cable"}},
    {"`pump`:", {"/rigs/*/pump"}},
    {"`measured`:", {"/rigs/*/measured"}},
    {"`lid`:", {"/rigs/*/lid"}},
    {"`open`:", {"/rigs/*/lid/open"}},
    {"`jacket` and `jacket_to_compare`", {"/rigs/*/jacket", "/jacket_to_compare"}},
    {"A layer;",
     {"/jacket_to_compare/side/*", "/jacket_to_compare/base/*", "/jacket_to_compare/lid/*",
      "/rigs/*/jacket/side/*", "/rigs/*/jacket/base/*", "/rigs/*/jacket/lid/*",
      "/rigs/*/recirculation/insulation/*"}},
    {"`recirculation`:", {"/rigs/*/recirculation"}},
    {"`chiller`;", {"/rigs/*/chiller"}}};

struct Row {
  std::string key, range, standard;
};

std::string trimmed(std::string text) {
  text.erase(0, std::min(text.find_first_not_of(' '), text.size()));
  text.erase(text.find_last_not_of(' ') + 1);
  return text;
}

Row rowOf(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream in(line.substr(1));
  for (std::string cell; std::getline(in, cell, '|');) cells.push_back(trimmed(cell));
  EXPECT_EQ(cells.size(), 4u) << line;
  cells.resize(4);
  return {cells[0], plain(cells[2]), plain(cells[3])};
}

// The rows of the first table below the line that begins so.
std::vector<Row> tableBelow(const std::string& beginning) {
  std::ifstream in(std::string(HEATLEDGER_SOURCE_DIR) + "/docs/plan-document.md");
  std::string line;
  while (std::getline(in, line) && !line.starts_with(beginning)) continue;
  while (std::getline(in, line) && !line.starts_with("| Key |")) continue;
  std::getline(in, line);
  std::vector<Row> rows;
  while (std::getline(in, line) && line.starts_with('|')) rows.push_back(rowOf(line));
  return rows;
}

bool hasDigit(const std::string& text) {
  return std::any_of(text.begin(), text.end(), [](char c) { return '0' <= c && c <= '9'; });
}

// What the page must say of a range; nothing for what has none or one told in words.
std::optional<std::string> rangeOnPage(const Key& key) {
  if (key.kind == ValueKind::List) return std::string(key.least) + " to " + std::string(key.most);
  if (key.kind == ValueKind::Text) return std::nullopt;
  return plain(acceptedText(key));
}

void compare(const Key& key, const Row& row) {
  SCOPED_TRACE(key.place);
  EXPECT_EQ(row.range, rangeOnPage(key).value_or(row.range));
  if (!key.standard.empty()) {
    EXPECT_NE(row.standard.find(plain(std::string(key.standard))), std::string::npos)
        << key.standard << " in " << row.standard;
    return;
  }
  EXPECT_TRUE(key.need != Need::Required || row.standard.starts_with("required"));
  EXPECT_FALSE(hasDigit(row.standard))
      << "a default that the table does not have: " << row.standard;
}

}  // namespace

TEST(PlanDocumentPage, HasARowForEveryKeyWithItsRangeAndDefault) {
  std::set<std::string> told;
  for (const auto& [beginning, objects] : kTables) {
    const std::vector<Row> rows = tableBelow(beginning);
    for (const std::string& object : objects) {
      told.insert(object);
      std::set<std::string> onPage;
      for (const Row& row : rows) {
        onPage.insert(row.key);
        const Key* key = keyAt(object + '/' + row.key.substr(1, row.key.size() - 2));
        ASSERT_TRUE(key) << object << ' ' << row.key;
        compare(*key, row);
      }
      std::set<std::string> inTable;
      for (const std::string_view name : keysOf(object))
        if (name != "note") inTable.insert('`' + std::string(name) + '`');
      EXPECT_EQ(onPage, inTable) << object;
    }
  }
  for (const Key& key : planKeys()) {
    const std::string object = key.place.substr(0, key.place.rfind('/'));
    EXPECT_TRUE(told.count(object) > 0 || object == "/format") << key.place;
  }
}

TEST(PlanDocumentPage, NamesEveryWord) {
  std::ifstream in(std::string(HEATLEDGER_SOURCE_DIR) + "/docs/plan-document.md");
  std::ostringstream page;
  page << in.rdbuf();
  for (const Key& key : planKeys())
    for (const std::string_view word : key.words)
      EXPECT_NE(page.str().find(word), std::string::npos) << key.place << ": " << word;
}

}  // namespace rigs
