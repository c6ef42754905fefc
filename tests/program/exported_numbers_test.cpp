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
#include <tuple>
#include <utility>
#include <vector>

#include "tests/program/run_program.hpp"

using nlohmann::json;
using test_support::contents;
using test_support::fixed;
using test_support::Folder;
using test_support::Ran;
using test_support::runProgram;
using testing::HasSubstr;

namespace {

std::string hoursAndMinutes(double seconds) {
  const long minutes = std::lround(seconds / 60.0);
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%ld:%02ld", minutes / 60, minutes % 60);
  return buffer;
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
  std::string picture(const std::string& question, const std::string& ending,
                      const std::vector<std::string>& options = {}) {
    const std::string file = folder_.file(question + "." + ending);
    std::vector<std::string> words{"picture", question, "--to", file, "--units", "SI"};
    words.insert(words.end(), options.begin(), options.end());
    const Ran ran = runProgram(words);
    EXPECT_EQ(ran.exitCode, 0) << ran.complaint;
    return contents(file);
  }
  Folder folder_;
  json terminal_;
};

// The same question of the same reader has one spreadsheet, whoever writes it.
TEST_F(ExportedNumbers, InCsvAreTheTerminalsByteForByte) {
  for (const auto& [question, command] :
       {std::pair{"what-cost", "cost"}, std::pair{"boils-enough", "boil"},
        std::pair{"which-element", "size"}, std::pair{"circuit", "circuit"},
        std::pair{"room", "room"}, std::pair{"how-far-cools", "night"}}) {
    SCOPED_TRACE(question);
    const Ran terminal = runProgram({command, "--csv", "--units", "SI"});
    ASSERT_EQ(terminal.exitCode, 0) << terminal.complaint;
    EXPECT_EQ(picture(question, "csv"), terminal.output);
  }
}

// Where one command answers two questions, its spreadsheet is that of the first, without the
// cautions, and that of the second; each caution stands once at the end.
TEST_F(ExportedNumbers, InCsvOfTwoQuestionsAreTheTerminalsByteForByte) {
  const auto split = [](const std::string& csv) {
    std::pair<std::string, std::vector<std::string>> parts;
    std::istringstream lines(csv);
    for (std::string line; std::getline(lines, line);) {
      if (!line.starts_with("caution,")) {
        EXPECT_TRUE(parts.second.empty()) << "cautions end it: " << line;
        parts.first += line + '\n';
        continue;
      }
      // As many empty fields as the last table has columns.
      line.erase(line.find_last_not_of(',') + 1);
      parts.second.push_back(line);
    }
    return parts;
  };
  // Who asks for a jacket's worth asks for what is only supposed.
  const std::tuple<const char*, const char*, const char*, std::vector<std::string>> commands[] = {
      {"day", "how-long", "where-heat", {}},
      {"insulate", "worth-jacket", "how-far-cools", {"--suppose-jacket"}}};
  for (const auto& [command, first, second, options] : commands) {
    SCOPED_TRACE(command);
    const Ran terminal = runProgram({command, "--csv", "--units", "SI"});
    ASSERT_EQ(terminal.exitCode, 0) << terminal.complaint;
    const auto whole = split(terminal.output);
    const auto one = split(picture(first, "csv"));
    auto other = split(picture(second, "csv", options));
    // Heads that are the same are not repeated.
    const std::string heads = one.first.substr(0, one.first.find('\n') + 1);
    ASSERT_TRUE(other.first.starts_with(heads));
    EXPECT_EQ(whole.first, one.first + other.first.substr(heads.size()));
    EXPECT_EQ(whole.second, one.second);
    EXPECT_EQ(whole.second, other.second);
    EXPECT_GE(whole.second.size(), 6U);
  }
}

// Minutes are headed as minutes: "h:min" is how a clock is drawn, not what its numbers are.
TEST_F(ExportedNumbers, NameTheUnitOfTheirTimes) {
  for (const char* question : {"how-long", "how-far-cools"}) {
    const json seen = json::parse(picture(question, "json"))["seen"]["pictures"][0];
    const std::string x = seen["x"];
    EXPECT_TRUE(x.ends_with(", min")) << x;
    EXPECT_GT(seen["lines"][0]["points"].back()[0].get<double>(), 60.0);
    EXPECT_THAT(test_support::squeezed(picture(question, "svg")), HasSubstr("h:min"));
  }
}

TEST_F(ExportedNumbers, InSvgAreTheTerminals) {
  const std::string svg = picture("how-long", "svg");
  const std::string text = test_support::squeezed(svg);
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
  const std::string text = test_support::squeezed(textOfPdf(file));
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
