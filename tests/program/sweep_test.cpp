// SPDX-License-Identifier: GPL-3.0-or-later
// Sweeps of the built program: their rows, what is refused before they begin, and how they end.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <sstream>
#include <vector>

#include "tests/program/run_program.hpp"

namespace {

using nlohmann::json;
using test_support::Ran;
using test_support::runProgram;
using test_support::squeezed;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> all;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) all.push_back(line);
  return all;
}

TEST(Sweep, WritesARowForEachCombinationAndRig) {
  const Ran ran = runProgram({"sweep", "--vary", "batch/boil=45 min, 60 min", "--vary",
                              "place/room=5 C..15 C by 5 C", "--figures", "cost, day/boil/vigour"});
  ASSERT_EQ(ran.exitCode, 0) << ran.complaint;
  EXPECT_EQ(ran.complaint, "");
  const auto lines = linesOf(ran.output);
  ASSERT_GT(lines.size(), 26u);
  EXPECT_EQ(lines[0],
            "combination,batch/boil_s,place/room_C,rig,outcome,cost,day/boil/vigour,problem");
  EXPECT_THAT(lines[1], StartsWith("1,2700,5,a,"));
  EXPECT_THAT(lines[4], StartsWith("1,2700,5,d,done,"));
  EXPECT_THAT(lines[5], StartsWith("2,2700,10,a,"));
  EXPECT_THAT(lines[24], StartsWith("6,3600,15,d,done,"));
  EXPECT_EQ(lines[25], "complete,6 of 6 combinations,,,,,,");
  EXPECT_THAT(lines[26], StartsWith("caution,Mains current kills."));
  EXPECT_THAT(lines.back(), HasSubstr("licensed electrician"));
}

TEST(Sweep, WritesLinesOfJsonWithTheSameNumbers) {
  const std::vector<std::string> asked{"--vary", "rigs/b/element/power=1 kW..3 kW in 3", "--rig",
                                       "b"};
  std::vector<std::string> words{"sweep", "--json"};
  words.insert(words.end(), asked.begin(), asked.end());
  const auto lines = linesOf(runProgram(words).output);
  ASSERT_EQ(lines.size(), 5u);
  EXPECT_EQ(json::parse(lines[0])["combinations"], 3);
  EXPECT_EQ(json::parse(lines[4])["end"], "complete");
  words[1] = "--csv";
  const auto rows = linesOf(runProgram(words).output);
  for (std::size_t i = 1; i <= 3; ++i) {
    const json row = json::parse(lines[i]);
    EXPECT_EQ(row["varied"]["rigs/b/element/power_W"], 1000.0 * static_cast<double>(i));
    for (const auto& figure : row["figures"].items())
      EXPECT_THAT(rows[i], HasSubstr(figure.value().dump())) << figure.key();
  }
  // And the same as of a plan in which somebody writes it.
  const json answer = json::parse(runProgram({"answer", "--json"}).output);
  const json own = json::parse(
      linesOf(runProgram({"sweep", "--json", "--vary", "rigs/b/element/power=1650 W", "--rig", "b"})
                  .output)[1]);
  for (const auto& figure : own["figures"].items()) {
    EXPECT_EQ(figure.value(), answer["rigs"][1].at(json::json_pointer('/' + figure.key())))
        << figure.key();
  }
}

TEST(Sweep, IsRefusedBeforeItBeginsWithAllThatIsWrong) {
  const Ran ran = runProgram(
      {"sweep", "--vary", "batch/bol=1 h", "--vary", "place/room=5..9 in 3", "--figures", "cots"});
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  const std::string said = squeezed(ran.complaint);
  EXPECT_THAT(said, HasSubstr("thecommand:4problems"));
  EXPECT_THAT(said, HasSubstr("perhaps\"boil\"wasmeant"));
  EXPECT_THAT(said, HasSubstr("\"5\"hasnounit"));
  EXPECT_THAT(said, HasSubstr("perhaps\"cost\"wasmeant"));
  const Ran asJson = runProgram({"sweep", "--vary", "batch/bol=1 h", "--json"});
  EXPECT_EQ(asJson.exitCode, 2);
  EXPECT_EQ(json::parse(asJson.output)["problems"][0]["where"], "--vary batch/bol");
}

TEST(Sweep, IsNotBegunOverMoreThanAnybodyWaitsForWithoutAWord) {
  const std::vector<std::string> million{"--vary", "rigs/b/element/power=1 kW..2 kW in 1000000",
                                         "--vary", "batch/boil=1 min..2 h in 1000000"};
  std::vector<std::string> words{"sweep"};
  words.insert(words.end(), million.begin(), million.end());
  const Ran ran = runProgram(words);
  EXPECT_EQ(ran.exitCode, 2);
  EXPECT_EQ(ran.output, "");
  EXPECT_THAT(ran.complaint, HasSubstr("these are 1000000000000 combinations"));
  EXPECT_THAT(squeezed(ran.complaint), HasSubstr("--at-most1000000000000"));
  const Ran few = runProgram({"sweep", "--vary", "batch/boil=1 h, 2 h", "--at-most", "1"});
  EXPECT_EQ(few.exitCode, 2);
  EXPECT_THAT(few.complaint, HasSubstr("these are 2 combinations"));
  // With the word it begins; here nobody reads on.
  words.insert(words.end(), {"--at-most", "1000000000000"});
  EXPECT_EQ(runProgram(words, {.readerLeaves = true}).exitCode, 0);
}

TEST(Sweep, GoesOnBehindACombinationThatIsNoPlan) {
  const Ran ran = runProgram(
      {"sweep", "--vary", "batch/wort=23 L, 90 L, 20 L", "--figures", "cost", "--rig", "d"});
  EXPECT_EQ(ran.exitCode, 0);
  const auto lines = linesOf(ran.output);
  EXPECT_THAT(lines[1], StartsWith("1,23,d,done,"));
  EXPECT_THAT(lines[2], StartsWith("2,90,,no plan,,"));
  EXPECT_THAT(lines[2], HasSubstr("/rigs/3/vessel: "));
  EXPECT_THAT(lines[3], StartsWith("3,20,d,done,"));
  EXPECT_THAT(squeezed(ran.complaint), HasSubstr("1of3combinationsarenoplan"));
  const Ran german = runProgram({"sweep", "--vary", "batch/wort=90 L", "--language", "de"});
  EXPECT_THAT(squeezed(german.complaint), HasSubstr("passennichthinein"));
  // Where none is, what was asked for is wrong.
  EXPECT_EQ(runProgram({"sweep", "--vary", "batch/water=20 L, 30 L"}).exitCode, 2);
}

TEST(Sweep, IsTheSameOnOneCoreAndOnAll) {
  const std::vector<std::string> words{"sweep", "--vary", "rigs/b/element/power=1 kW..3 kW in 70",
                                       "--rig", "b"};
  const Ran all = runProgram(words);
  std::vector<std::string> pinned{"-c", "0", test_support::testedProgram()};
  pinned.insert(pinned.end(), words.begin(), words.end());
  const Ran one = runProgram(pinned, {.program = "/usr/bin/taskset"});
  ASSERT_EQ(one.exitCode, 0) << one.complaint;
  EXPECT_EQ(one.output, all.output);
}

TEST(Sweep, TellsOfAWriteThatFails) {
  const Ran ran = runProgram({"sweep", "--vary", "batch/boil=1 h"}, {.outputTo = "/dev/full"});
  EXPECT_EQ(ran.exitCode, 1);
  EXPECT_THAT(ran.complaint, HasSubstr("could not be written"));
}

// The program under way, with its output read as it comes.
struct Started {
  pid_t child = -1;
  int output = -1;

  explicit Started(std::vector<std::string> words) {
    words.insert(words.begin(), test_support::testedProgram());
    std::vector<char*> argv;
    for (std::string& word : words) argv.push_back(word.data());
    argv.push_back(nullptr);
    int ends[2] = {-1, -1};
    if (::pipe(ends) != 0) return;
    child = ::fork();
    if (child == 0) {
      // Whoever runs the tests in the background ignores it, and so would the program.
      std::signal(SIGINT, SIG_DFL);
      // Freed memory is used again, under a sanitizer too.
      const char* given = std::getenv("ASAN_OPTIONS");
      const std::string options = std::string(given ? given : "") + ":quarantine_size_mb=1";
      ::setenv("ASAN_OPTIONS", options.c_str(), 1);
      ::dup2(ends[1], STDOUT_FILENO);
      const int nowhere = ::open("/dev/null", O_WRONLY);
      ::dup2(nowhere, STDERR_FILENO);
      ::close(ends[0]);
      ::close(ends[1]);
      ::execv(argv[0], argv.data());
      ::_exit(127);
    }
    ::close(ends[1]);
    output = ends[0];
  }
  ~Started() { ::close(output); }
  Started(const Started&) = delete;
  Started& operator=(const Started&) = delete;

  // Until so many lines are there, or all of it.
  void read(std::size_t lines = ~std::size_t{0}) {
    char buffer[4096];
    while (static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) < lines) {
      const ssize_t got = ::read(output, buffer, sizeof buffer);
      if (got <= 0) return;
      text.append(buffer, static_cast<std::size_t>(got));
    }
  }
  int exitCode() {
    int status = 0;
    rusage used{};
    ::wait4(child, &status, 0, &used);
    kilobytes = used.ru_maxrss;
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  }

  std::string text;
  long kilobytes = 0;
};

// What was found stays, in whole rows, and says that it is a part.
TEST(Sweep, EndsBehindAWholeRowWhenSomebodyStopsIt) {
  for (const int signal : {SIGINT, SIGTERM}) {
    Started sweep({"sweep", "--vary", "rigs/b/element/power=1 kW..3 kW in 1000000", "--rig", "b",
                   "--json", "--figures", "cost"});
    sweep.read(20);
    ASSERT_EQ(::kill(sweep.child, signal), 0);
    sweep.read();
    EXPECT_EQ(sweep.exitCode(), 128 + signal);
    const auto lines = linesOf(sweep.text);
    ASSERT_GT(lines.size(), 20u);
    for (std::size_t i = 1; i + 1 < lines.size(); ++i)
      EXPECT_EQ(json::parse(lines[i])["combination"], i);
    const json end = json::parse(lines.back());
    EXPECT_EQ(end["end"], "stopped");
    EXPECT_EQ(end["done"], lines.size() - 2);
    EXPECT_EQ(end["of"], 1000000);
  }
}

// Who looks at a thousand combinations needs no more memory than who looks at a hundred.
// These are no plans, and quick.
TEST(Sweep, HoldsNoMoreTheLongerItTakes) {
  const auto kilobytes = [](const char* count) {
    Started sweep({"sweep", "--vary", std::string("batch/water=10 L..30 L in ") + count});
    sweep.read();
    EXPECT_EQ(sweep.exitCode(), 2);
    EXPECT_GT(sweep.text.size(), 10000u);
    return sweep.kilobytes;
  };
  const long few = kilobytes("100");
  EXPECT_LT(kilobytes("1000"), few + few / 4);
}

}  // namespace
