// SPDX-License-Identifier: GPL-3.0-or-later
// What the documents show is what the program says, and what they name exists.
//
// A fenced block marked `console` holds commands after "$ " and their output, 80 columns wide. A
// line "…" stands for any number of lines. A fenced block marked `json` is saved under the name
// that the text above it gives: "Save this as `my-kettle.json`". Commands of one document run in
// one folder, in order. So is one marked `csv`.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <array>
#include <cctype>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "tests/program/run_program.hpp"

namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

const fs::path kSource = HEATLEDGER_SOURCE_DIR;
const std::string kElision = "…";

std::vector<fs::path> documents() {
  std::vector<fs::path> all;
  for (const char* name : {"README.md", "DEVELOPERS.md"}) {
    if (fs::exists(kSource / name)) all.push_back(kSource / name);
  }
  for (const auto& entry : fs::directory_iterator(kSource / "docs")) {
    if (entry.path().extension() == ".md") all.push_back(entry.path());
  }
  return all;
}

Lines linesOf(std::istream& in) {
  Lines lines;
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

struct Step {
  std::string file;     // to save, or empty
  std::string command;  // to run, or empty
  Lines text;           // of the file, or what the command is shown to say
};

std::vector<Step> stepsOf(const Lines& document) {
  static const std::regex kSaved("[Ss]ave (?:this|it|the file) as `([^`/]+\\.(?:json|csv))`");
  std::vector<Step> steps;
  std::string name;
  std::string fence;
  for (const std::string& line : document) {
    if (line.starts_with("```")) {
      const bool opens = fence.empty();
      fence = opens ? line : std::string();
      const bool saved = line == "```json" || line == "```csv";
      if (opens && saved && !name.empty())
        steps.push_back({std::exchange(name, {}), {}, {}});
      else if (opens && saved)
        fence = "```example";
      continue;
    }
    if (fence == "```json" || fence == "```csv") {
      steps.back().text.push_back(line);
    } else if (fence == "```console") {
      if (line.starts_with("$ "))
        steps.push_back({{}, line.substr(2), {}});
      else if (!steps.empty())
        steps.back().text.push_back(line);
    } else if (std::smatch saved; std::regex_search(line, saved, kSaved)) {
      name = saved[1];
    }
  }
  return steps;
}

Lines outputOf(const std::string& command, const std::string& folder) {
  const fs::path programs = fs::path(test_support::testedProgram()).parent_path();
  const std::string whole = "cd '" + folder + "' && COLUMNS=80 LC_ALL=C.UTF-8 PATH='" +
                            programs.string() + "':\"$PATH\" " + command + " 2>&1";
  std::string output;
  FILE* pipe = popen(whole.c_str(), "r");
  if (!pipe) return {"could not be run"};
  std::array<char, 4096> buffer{};
  for (std::size_t n; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
    output.append(buffer.data(), n);
  const int status = pclose(pipe);
  if (!WIFEXITED(status)) output += "it crashed\n";
  std::istringstream in(output);
  return linesOf(in);
}

// Whether `shown` from `i` says `said` from `j`.
bool matches(const Lines& shown, std::size_t i, const Lines& said, std::size_t j) {
  for (; i < shown.size(); ++i, ++j) {
    if (shown[i] == kElision) {
      for (std::size_t next = j; next <= said.size(); ++next)
        if (matches(shown, i + 1, said, next)) return true;
      return false;
    }
    if (j >= said.size() || shown[i] != said[j]) return false;
  }
  return j == said.size();
}

std::string joined(const Lines& lines) {
  std::string all;
  for (const std::string& line : lines) all += line + '\n';
  return all;
}

class Document : public testing::TestWithParam<fs::path> {
 protected:
  Lines read() const {
    std::ifstream in(GetParam());
    return linesOf(in);
  }
};

TEST_P(Document, ShowsWhatTheProgramSays) {
  const test_support::Folder folder;
  for (const Step& step : stepsOf(read())) {
    if (!step.file.empty()) {
      folder.write(step.file, joined(step.text));
      continue;
    }
    ASSERT_TRUE(step.command.starts_with("heatledger")) << step.command;
    const Lines said = outputOf(step.command, folder.file(""));
    EXPECT_TRUE(matches(step.text, 0, said, 0)) << "$ " << step.command << "\nis shown to say\n"
                                                << joined(step.text) << "and says\n"
                                                << joined(said);
  }
}

// Paths in backquotes that begin with a folder of the source, and links to neighbours.
TEST_P(Document, NamesOnlyFilesThatExist) {
  static const std::regex kPath(
      "`((?:physics|rigs|gui|tests|docs)/[A-Za-z0-9_./-]+|[A-Za-z]+\\.(?:txt|json|md))`");
  static const std::regex kLink("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
  const std::string text = joined(read());
  const std::sregex_iterator end;
  for (std::sregex_iterator path(text.begin(), text.end(), kPath); path != end; ++path) {
    const std::string name = (*path)[1];
    const bool ours = name.find('/') != std::string::npos ||
                      (std::isupper(static_cast<unsigned char>(name.front())) != 0);
    if (!ours) continue;
    EXPECT_TRUE(fs::exists(kSource / name)) << name;
  }
  for (std::sregex_iterator link(text.begin(), text.end(), kLink); link != end; ++link) {
    const std::string name = (*link)[1];
    EXPECT_TRUE(fs::exists(GetParam().parent_path() / name)) << name;
  }
}

std::string nameOf(const testing::TestParamInfo<fs::path>& document) {
  std::string name;
  for (const char c : document.param.stem().string()) {
    if (std::isalnum(static_cast<unsigned char>(c)) != 0) name += c;
  }
  return name;
}

INSTANTIATE_TEST_SUITE_P(All, Document, testing::ValuesIn(documents()), nameOf);

// "`Suite.Name`" of every promise is a test of ours.
TEST(PromisesPage, NamesTestsThatExist) {
  std::string sources;
  for (const auto& entry : fs::recursive_directory_iterator(kSource / "tests"))
    if (entry.path().extension() == ".cpp")
      sources += test_support::contents(entry.path().string());
  static const std::regex kName("`([A-Z][A-Za-z]+)\\.([A-Z][A-Za-z0-9]+)`");
  const std::string page = test_support::contents((kSource / "docs/promises.md").string());
  std::size_t named = 0;
  for (std::sregex_iterator at(page.begin(), page.end(), kName), end; at != end; ++at, ++named) {
    const std::string suite = (*at)[1], name = (*at)[2];
    bool found = false;
    for (const char* macro : {"TEST(", "TEST_F(", "TEST_P("})
      found = found || sources.find(macro + suite + ", " + name + ")") != std::string::npos;
    EXPECT_TRUE(found) << suite << '.' << name;
  }
  EXPECT_GT(named, 30U);
}

}  // namespace
