// SPDX-License-Identifier: GPL-3.0-or-later
// Who may know whom, and the other rules a reviewer would otherwise have to remember.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path kSource = HEATLEDGER_SOURCE_DIR;

struct File {
  fs::path path;  // from the top of the project
  std::vector<std::string> lines;
};

std::vector<File> filesBelow(const std::string& folder) {
  std::vector<File> files;
  for (const auto& entry : fs::recursive_directory_iterator(kSource / folder)) {
    const std::string kind = entry.path().extension().string();
    if (!entry.is_regular_file() || (kind != ".cpp" && kind != ".hpp")) continue;
    std::ifstream in(entry.path());
    File file{fs::relative(entry.path(), kSource), {}};
    for (std::string line; std::getline(in, line);) file.lines.push_back(line);
    files.push_back(std::move(file));
  }
  return files;
}

std::vector<std::string> includesOf(const File& file) {
  static const std::regex kInclude(R"re(^\s*#\s*include\s*[<"]([^>"]+)[>"])re");
  std::vector<std::string> includes;
  for (const std::string& line : file.lines) {
    std::smatch match;
    if (std::regex_search(line, match, kInclude)) includes.push_back(match[1]);
  }
  return includes;
}

bool startsWith(const std::string& text, const std::string& beginning) {
  return text.rfind(beginning, 0) == 0;
}

TEST(Layering, PhysicsKnowsBoostAndTheStandardLibraryOnly) {
  const auto files = filesBelow("physics");
  ASSERT_GT(files.size(), 20u);
  for (const File& file : files) {
    for (const std::string& include : includesOf(file)) {
      const bool standard = include.find('/') == std::string::npos &&
                            include.find('.') == std::string::npos;
      EXPECT_TRUE(standard || startsWith(include, "boost/") || startsWith(include, "physics/"))
          << file.path << " includes " << include;
      EXPECT_FALSE(include == "iostream" || include == "fstream" || include == "chrono" ||
                   include == "filesystem")
          << file.path << " includes " << include << ": no files and no clock in physics";
    }
  }
}

TEST(Layering, RigsKnowNoScreen) {
  const auto files = filesBelow("rigs");
  ASSERT_GT(files.size(), 5u);
  for (const File& file : files) {
    for (const std::string& include : includesOf(file)) {
      EXPECT_FALSE(startsWith(include, "gui/") || startsWith(include, "Q") ||
                   startsWith(include, "CLI/") || startsWith(include, "fmt/"))
          << file.path << " includes " << include;
    }
  }
}

TEST(Layering, RawJsonStaysBehindTheJsonFiles) {
  for (const std::string folder : {"physics", "rigs", "gui"}) {
    for (const File& file : filesBelow(folder)) {
      const std::string name = file.path.filename().string();
      const bool mayRead = startsWith(file.path.string(), "rigs/") &&
                           (startsWith(name, "json_") || startsWith(name, "result_json"));
      for (const std::string& include : includesOf(file)) {
        EXPECT_TRUE(mayRead || include != "nlohmann/json.hpp")
            << file.path << " includes " << include;
      }
    }
  }
}

TEST(Layering, BoostUnitsIsSpelledInOneFile) {
  for (const std::string folder : {"physics", "rigs", "gui"}) {
    for (const File& file : filesBelow(folder)) {
      for (const std::string& include : includesOf(file)) {
        EXPECT_TRUE(file.path == "physics/units.hpp" || !startsWith(include, "boost/units/"))
            << file.path << " includes " << include;
      }
    }
  }
}

TEST(Layering, NobodyButUnitsAsksAQuantityForItsBareValue) {
  static const std::regex kValue(R"(\b\w+\.value\(\))");
  for (const File& file : filesBelow("physics")) {
    if (file.path == "physics/units.hpp") continue;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      EXPECT_FALSE(std::regex_search(file.lines[i], kValue))
          << file.path << ":" << i + 1 << ": " << file.lines[i];
    }
  }
}

TEST(HouseRules, EveryFileNamesItsLicence) {
  for (const std::string folder : {"physics", "rigs", "gui", "tests"}) {
    for (const File& file : filesBelow(folder)) {
      ASSERT_FALSE(file.lines.empty()) << file.path;
      EXPECT_EQ(file.lines.front(), "// SPDX-License-Identifier: GPL-3.0-or-later") << file.path;
    }
  }
}

TEST(HouseRules, SourcesStayReadableInLength) {
  for (const std::string folder : {"physics", "rigs", "gui", "tests"}) {
    for (const File& file : filesBelow(folder)) {
      EXPECT_LE(file.lines.size(), 520u) << file.path;
    }
  }
}

// A failing Qt macro only returns, and GoogleTest counts the test as passed.
TEST(HouseRules, TestsUseNoMacroThatFailsSilently) {
  const std::regex silent(std::string("\\bQ") + "(VERIFY|COMPARE|TRY_|FAIL|SKIP)");
  for (const File& file : filesBelow("tests")) {
    for (const std::string& line : file.lines) {
      EXPECT_FALSE(std::regex_search(line, silent)) << file.path << ": " << line;
    }
  }
}

}  // namespace
