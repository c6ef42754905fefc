// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program with arguments, without a shell between.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace test_support {

struct Ran {
  int exitCode = -1;  // 128 + signal if one ended it
  std::string output, complaint;
};

struct Stage {
  std::string standardInput = {};
  // A file or device in place of the captured standard output, such as "/dev/full".
  std::string outputTo = {};
  std::string columns = {};        // the environment's COLUMNS; unset if empty
  bool readerLeaves = false;       // standard output is a pipe that nobody reads
  std::string locale = "C.UTF-8";  // the environment's LC_ALL
  // Bytes after which the system ends the program while it writes a file; 0 for no such limit.
  unsigned long endsAfter = 0;
  bool endsOnNetwork = false;  // the system ends it when it opens a socket of the internet
  bool hasDisplay = true;      // as this test has; else none is to be found
  std::vector<std::pair<std::string, std::string>> environment =
      {};                    // on top of that: {"DISPLAY", ":77"}
  std::string program = {};  // another than testedProgram()
};
// The built program; another build of it where HEATLEDGER_TESTED_PROGRAM names one, such as that
// under sanitizers.
std::string testedProgram();
Ran runProgram(const std::vector<std::string>& arguments, const Stage& stage = {});

// The commands that answer a plan with a page, the summary first.
inline constexpr const char* kPages[] = {"answer", "day",     "size", "insulate", "night", "boil",
                                         "cost",   "circuit", "room", "chill",    "wort"};

// A folder of its own for one test, removed afterwards.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string file(const std::string& name) const { return path_ + '/' + name; }
  std::string write(const std::string& name, const std::string& text) const;

 private:
  std::string path_;
};
std::string contents(const std::string& path);
// With so many decimals.
std::string fixed(double number, int decimals);

// Without white space: lines end where the terminal does.
std::string squeezed(std::string text);

}  // namespace test_support
