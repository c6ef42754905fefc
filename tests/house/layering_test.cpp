// SPDX-License-Identifier: GPL-3.0-or-later
// Who may know whom, and the other rules a reviewer would otherwise have to remember.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
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

// "rigs/words/told" of rigs/words/told.cpp.
std::string stem(const File& file) { return (file.path.parent_path() / file.path.stem()).string(); }

std::vector<File> sources() {
  std::vector<File> all;
  for (const std::string folder : {"physics", "rigs", "gui"})
    for (File& file : filesBelow(folder)) all.push_back(std::move(file));
  return all;
}

TEST(Layering, PhysicsKnowsBoostAndTheStandardLibraryOnly) {
  const auto files = filesBelow("physics");
  ASSERT_GT(files.size(), 20u);
  for (const File& file : files) {
    for (const std::string& include : includesOf(file)) {
      const bool standard =
          include.find('/') == std::string::npos && include.find('.') == std::string::npos;
      EXPECT_TRUE(standard || startsWith(include, "boost/") || startsWith(include, "physics/"))
          << file.path << " includes " << include;
      EXPECT_FALSE(include == "iostream" || include == "fstream" || include == "chrono" ||
                   include == "filesystem")
          << file.path << " includes " << include << ": no files and no clock in physics";
    }
  }
}

TEST(Layering, FittingKnowsNumbersAlone) {
  const auto files = filesBelow("rigs/fitting");
  ASSERT_GT(files.size(), 6u);
  for (const File& file : files)
    for (const std::string& include : includesOf(file))
      EXPECT_FALSE(startsWith(include, "physics/") || startsWith(include, "nlohmann/"))
          << file.path << " includes " << include;
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

// --- Rooms: which folder may know which, and no circle of modules.

// From the ground up: a room knows itself and those before it.
const std::vector<std::string> kRooms{"fitting",  "quantities", "words",   "documents", "readings",
                                      "circuits", "plans",      "answers", "results"};

std::string roomOf(const std::string& path, const std::string& top) {
  if (!startsWith(path, top + "/")) return {};
  const std::string rest = path.substr(top.size() + 1);
  const std::size_t slash = rest.find('/');
  return slash == std::string::npos ? std::string() : rest.substr(0, slash);
}

TEST(Rooms, OfRigsKnowOnlyThoseBelow) {
  const auto floorOf = [](const std::string& room) {
    return std::find(kRooms.begin(), kRooms.end(), room) - kRooms.begin();
  };
  const auto files = filesBelow("rigs");
  ASSERT_GT(files.size(), 70u);
  for (const File& file : files) {
    const std::string room = roomOf(file.path.string(), "rigs");
    ASSERT_LT(floorOf(room), static_cast<std::ptrdiff_t>(kRooms.size())) << file.path;
    for (const std::string& include : includesOf(file)) {
      const std::string other = roomOf(include, "rigs");
      EXPECT_TRUE(other.empty() || floorOf(other) <= floorOf(room))
          << file.path << " includes " << include;
    }
  }
}

TEST(Rooms, OfGuiKnowTellingAndNotEachOther) {
  std::size_t told = 0;
  for (const File& file : filesBelow("gui")) {
    const std::string room = roomOf(file.path.string(), "gui");
    if (room == "translations") continue;  // a tool of the build
    ASSERT_TRUE(room == "telling" || room == "terminal" || room == "window") << file.path;
    told += room == "telling" ? 1 : 0;
    for (const std::string& include : includesOf(file)) {
      const std::string other = roomOf(include, "gui");
      EXPECT_TRUE(other.empty() || other == room || other == "telling")
          << file.path << " includes " << include;
      if (room == "window") continue;
      const bool qt = startsWith(include, "Q") && include.find('.') == std::string::npos;
      EXPECT_FALSE(qt) << file.path << " includes " << include;
      const bool layout = startsWith(include, "fmt/") || startsWith(include, "CLI/");
      EXPECT_FALSE(room == "telling" && layout) << file.path << " includes " << include;
    }
  }
  EXPECT_GT(told, 10u);
}

// A module is a header with the source of its name, and the sources named after it as its parts:
// chart_layout.hpp, chart_layout.cpp, chart_layout_labels.cpp.
std::map<std::string, std::string> modulesOf(const std::vector<File>& files) {
  std::set<std::string> headers;
  for (const File& file : files)
    if (file.path.extension() == ".hpp") headers.insert(stem(file));
  std::map<std::string, std::string> modules;
  for (const File& file : files) {
    std::string module = stem(file);
    while (!headers.contains(module) && module.find('_', module.rfind('/')) != std::string::npos)
      module = module.substr(0, module.rfind('_'));
    modules[file.path.string()] = headers.contains(module) ? module : std::string();
  }
  return modules;
}

TEST(Modules, HaveAHeaderOfTheirOwnName) {
  // Programs have none: nobody calls them.
  const std::set<std::string> programs{"gui/terminal/main.cpp", "gui/window/desktop_main.cpp",
                                       "gui/translations/embed_translations.cpp"};
  const auto files = sources();
  for (const auto& [path, module] : modulesOf(files))
    EXPECT_TRUE(!module.empty() || programs.contains(path)) << path;
}

TEST(Modules, FormNoCircle) {
  const auto files = sources();
  const auto modules = modulesOf(files);
  std::map<std::string, std::set<std::string>> uses;
  for (const File& file : files) {
    const std::string& from = modules.at(file.path.string());
    for (const std::string& include : includesOf(file)) {
      const auto to = modules.find(include);
      if (!from.empty() && to != modules.end() && to->second != from) uses[from].insert(to->second);
    }
  }
  ASSERT_GT(uses.size(), 100u);
  const auto reaches = [&](const std::string& from, const std::string& to) {
    std::set<std::string> seen{from};
    std::vector<std::string> open{from};
    while (!open.empty()) {
      const std::string at = open.back();
      open.pop_back();
      if (at == to) return true;
      const auto others = uses.find(at);
      if (others == uses.end()) continue;
      for (const std::string& next : others->second)
        if (seen.insert(next).second) open.push_back(next);
    }
    return false;
  };
  for (const auto& [module, others] : uses)
    for (const std::string& other : others)
      EXPECT_FALSE(reaches(other, module)) << module << " -> " << other << " is on a circle";
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
