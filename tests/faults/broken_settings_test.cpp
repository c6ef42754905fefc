// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever stands where the window keeps its settings and its unsaved copies, it starts, ends when
// it is asked to, and throws no copy away by itself.
#include <gtest/gtest.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <memory>
#include <random>
#include <string>
#include <vector>

#include "rigs/plans/plan_writer.hpp"
#include "tests/program/run_program.hpp"

namespace {

namespace fs = std::filesystem;
using test_support::contents;
using test_support::Folder;

std::string randomBytes(std::size_t count) {
  std::mt19937 random(19691231);
  std::string bytes(count, '\0');
  for (char& one : bytes) one = static_cast<char>(random() & 0xff);
  return bytes;
}

std::string longList() {
  std::string list = "[General]\nrecent=";
  for (int i = 0; i < 200000; ++i) list += "/plan" + std::to_string(i) + ".json, ";
  return list + '\n';
}

// A window with a home of its own, begun in the background.
class Window {
 public:
  explicit Window(const std::string& name) : name_(name) {
    fs::create_directories(home_.file("settings/heatledger"));
    fs::create_directories(home_.file("data/heatledger/heatledger/unsaved"));
  }
  std::string settings() const { return home_.file("settings/heatledger/heatledger.conf"); }
  std::string copy() const { return home_.file("data/heatledger/heatledger/unsaved/left.unsaved"); }

  void start() {
    process_ = ::fork();
    if (process_ != 0) return;
    ::setenv("HOME", home_.file("").c_str(), 1);
    ::setenv("XDG_CONFIG_HOME", home_.file("settings").c_str(), 1);
    ::setenv("XDG_DATA_HOME", home_.file("data").c_str(), 1);
    ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
    ::execl(HEATLEDGER_PROGRAM, HEATLEDGER_PROGRAM, nullptr);
    ::_exit(127);
  }
  // Once it listens to signals, it stands.
  void endsInOrder() {
    SCOPED_TRACE(name_);
    int status = 0;
    bool listens = false;
    for (int tenths = 0; tenths < 600 && !listens; ++tenths) {
      ASSERT_EQ(::waitpid(process_, &status, WNOHANG), 0) << "it ended by itself: " << status;
      listens = catchesTerm();
      ::usleep(listens ? 200'000 : 100'000);  // what it offers is offered by then
    }
    ASSERT_EQ(::waitpid(process_, &status, WNOHANG), 0) << "it ended by itself: " << status;
    ::kill(process_, SIGTERM);
    ASSERT_EQ(::waitpid(process_, &status, 0), process_);
    EXPECT_TRUE(listens && WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
  }

 private:
  bool catchesTerm() const {
    std::ifstream status("/proc/" + std::to_string(process_) + "/status");
    for (std::string line; std::getline(status, line);)
      if (line.starts_with("SigCgt:"))
        return (std::stoull(line.substr(8), nullptr, 16) >> (SIGTERM - 1) & 1U) != 0;
    return false;
  }

  std::string name_;
  const Folder home_;
  pid_t process_ = 0;
};

void put(const std::string& file, const std::string& text) {
  std::ofstream(file, std::ios::binary) << text;
}

TEST(BrokenSettings, DoNotKeepTheWindowFromStarting) {
  const std::pair<const char*, std::string> cases[] = {
      {"random bytes", randomBytes(20000)},
      {"truncated", "[General]\ngeometry=@ByteArray(\\x1\\xd9\\xd0\\xcb\\0\\x3"},
      {"of other types",
       "[General]\ngeometry=5\nsplitter=@Invalid()\ntab=99999999\nquestion=@Size(1 2)\n"
       "units=@ByteArray(\\0\\0)\nlanguage=../../"
       "etc\nappearance=x\nrecent=@Variant(\\0\\0\\0\\x1)\n"},
      {"huge", longList()},
      {"out of range",
       "[General]\ntab=-7\ngeometry=@ByteArray(" + std::string(100000, '\xff') +
           ")\nsplitter=@ByteArray(\\0\\0\\0\\xff\\0\\0\\0\\x1\\x7f\\xff\\xff\\xff)\n"}};
  std::vector<std::unique_ptr<Window>> windows;
  for (const auto& [name, text] : cases) {
    windows.push_back(std::make_unique<Window>(name));
    put(windows.back()->settings(), text);
  }
  windows.push_back(std::make_unique<Window>("a folder"));
  fs::create_directory(windows.back()->settings());
  for (const auto& window : windows) window->start();
  for (const auto& window : windows) window->endsInOrder();
}

TEST(BrokenCopies, DoNotKeepTheWindowFromStartingAndStay) {
  const std::pair<const char*, std::string> cases[] = {
      {"empty", ""},
      {"one line", "/home/brewer/plan.json"},
      {"random bytes", randomBytes(20000)},
      {"truncated", "/plan.json\n" + rigs::newPlanText().substr(0, 700)},
      {"no plan", "/plan.json\n[1, 2, 3]"},
      {"of other types", "/plan.json\n{\"rigs\": [5, \"x\", null], \"batch\": 7}"},
      {"not UTF-8", "%ff%00%zz\n{\"title\": \"\xff\"}"},
      {"huge", "/plan.json\n" + std::string(5 << 20, '[')}};
  std::vector<std::unique_ptr<Window>> windows;
  for (const auto& [name, text] : cases) {
    windows.push_back(std::make_unique<Window>(name));
    put(windows.back()->copy(), text);
  }
  for (const auto& window : windows) window->start();
  for (std::size_t i = 0; i < windows.size(); ++i) {
    windows[i]->endsInOrder();
    EXPECT_TRUE(fs::exists(windows[i]->copy()) && contents(windows[i]->copy()) == cases[i].second)
        << cases[i].first;
  }
}

}  // namespace
