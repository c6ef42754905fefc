// SPDX-License-Identifier: GPL-3.0-or-later
// Exports of the built program opened again: the same figures as in the terminal's JSON.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::contents;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;

namespace {

std::string fixed(double number, int decimals) {
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%.*f", decimals, number);
  return buffer;
}

std::string hoursAndMinutes(double seconds) {
  const long minutes = std::lround(seconds / 60.0);
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%ld:%02ld", minutes / 60, minutes % 60);
  return buffer;
}

std::string squeezed(std::string text) {
  std::erase_if(text, [](unsigned char c) { return std::isspace(c) != 0; });
  return text;
}

std::string textOfPdf(const std::string& path) {
  std::array<char, 4096> piece{};
  std::string text;
  FILE* pipe = ::popen(("pdftotext -enc UTF-8 -raw '" + path + "' -").c_str(), "r");
  if (!pipe) return {};
  while (const std::size_t got = std::fread(piece.data(), 1, piece.size(), pipe))
    text.append(piece.data(), got);
  EXPECT_EQ(::pclose(pipe), 0);
  return text;
}

class ExportedNumbers : public testing::Test {
 protected:
  void SetUp() override {
    ::unsetenv("DISPLAY");
    ::unsetenv("WAYLAND_DISPLAY");
    ::unsetenv("QT_QPA_PLATFORM");
    ::setenv("LC_ALL", "C.UTF-8", 1);
    terminal_ = json::parse(runProgram({"answer", "--json"}).output);
    ASSERT_EQ(terminal_["rigs"].size(), 4U);
  }
  std::string picture(const std::string& question, const std::string& ending) {
    const std::string file = folder_.file(question + "." + ending);
    const Ran ran = runProgram({"picture", question, "--to", file, "--units", "SI"});
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    return contents(file);
  }
  // A row of a CSV without quoted commas: label first.
  static std::vector<std::string> row(const std::string& csv, const std::string& label) {
    std::istringstream lines(csv);
    for (std::string line; std::getline(lines, line);) {
      if (line.rfind(label + ",", 0) != 0) continue;
      std::vector<std::string> cells;
      std::istringstream parts(line.substr(label.size() + 1));
      for (std::string cell; std::getline(parts, cell, ',');) cells.push_back(cell);
      return cells;
    }
    return {};
  }
  Folder folder_;
  json terminal_;
};

TEST_F(ExportedNumbers, InCsvAreTheTerminals) {
  const std::string cost = picture("what-cost", "csv");
  const std::string boil = picture("boils-enough", "csv");
  const auto batch = row(boil, "\"in the end, L\"");
  ASSERT_EQ(batch.size(), 4U) << boil;
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(batch[i], fixed(terminal_["rigs"][i]["day"]["result_cold_L"], 1));
  }
  // The cost's row "a batch" comes after the energy's of the same name.
  const std::string costs = cost.substr(cost.find("Cost, "));
  const auto each = row(costs, "a batch");
  ASSERT_EQ(each.size(), 4U) << costs;
  for (std::size_t i = 0; i < 4; ++i) EXPECT_EQ(each[i], fixed(terminal_["rigs"][i]["cost"], 2));
}

TEST_F(ExportedNumbers, InSvgAreTheTerminals) {
  const std::string svg = picture("how-long", "svg");
  const std::string text = squeezed(svg);
  // When each rig that boils begins to: a mark on its curve.
  int boiling = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    const json& day = terminal_["rigs"][i]["day"];
    if (day["outcome"] != "done") continue;
    ++boiling;
    for (const json& stage : day["stages"]) {
      if (stage["stage"] != "boil") continue;
      const std::string letter = std::string("(") + static_cast<char>('a' + i) + ")";
      EXPECT_THAT(text, HasSubstr(letter + "boil" + hoursAndMinutes(stage["begin_s"])));
    }
  }
  EXPECT_GE(boiling, 3);
}

TEST_F(ExportedNumbers, InPdfAreTheTerminals) {
  const std::string file = folder_.file("report.pdf");
  ASSERT_EQ(runProgram({"report", "--to", file, "--units", "SI"}).exitCode, 0);
  const std::string text = squeezed(textOfPdf(file));
  ASSERT_FALSE(text.empty());
  std::string litres = "intheend,L";
  std::string heat = "reachesthevessel,W";
  for (const json& rig : terminal_["rigs"]) {
    litres += fixed(rig["day"]["result_cold_L"], 1);
    heat += fixed(rig["day"]["electrical"]["delivered_W"], 0);
  }
  EXPECT_THAT(text, HasSubstr(litres));
  EXPECT_THAT(text, HasSubstr(heat));
  for (const json& rig : terminal_["rigs"]) {
    if (rig["day"]["outcome"] != "done") continue;
    EXPECT_THAT(text, HasSubstr(hoursAndMinutes(rig["day"]["duration_s"])));
  }
}

}  // namespace
