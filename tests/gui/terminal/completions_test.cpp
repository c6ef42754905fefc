// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/completions.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "gui/terminal/options.hpp"

using namespace gui;
using testing::HasSubstr;
using testing::IsSupersetOf;

namespace {

constexpr Shell kShells[] = {Shell::Bash, Shell::Zsh, Shell::Fish};
const char* programOf(Shell shell) {
  return shell == Shell::Bash ? "bash" : shell == Shell::Zsh ? "zsh" : "fish";
}

// A script in a folder of its own, removed afterwards.
class Script {
 public:
  explicit Script(const std::string& text) {
    std::string name = (std::filesystem::temp_directory_path() / "completions-XXXXXX").string();
    folder_ = mkdtemp(name.data());
    std::ofstream(path()) << text;
  }
  ~Script() { std::filesystem::remove_all(folder_); }
  Script(const Script&) = delete;
  Script& operator=(const Script&) = delete;
  std::string path() const { return folder_ + "/script"; }
  const std::string& folder() const { return folder_; }

 private:
  std::string folder_;
};

// What a shell prints, word by word; whether it ended well.
std::pair<std::vector<std::string>, bool> run(const std::string& command) {
  std::FILE* pipe = popen(command.c_str(), "r");
  std::string all;
  for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe)) all += static_cast<char>(c);
  const bool well = pclose(pipe) == 0;
  std::istringstream lines(all);
  std::vector<std::string> words;
  for (std::string word; lines >> word;) words.push_back(word);
  return {words, well};
}

// What bash offers for the last of these words, in a folder with a plan and a picture.
std::vector<std::string> offered(const std::vector<std::string>& typed) {
  std::string words;
  for (const std::string& word : typed) words += " '" + word + "'";
  const Script script(completionsFor(Shell::Bash) + "COMP_WORDS=(" + words +
                      ")\nCOMP_CWORD=" + std::to_string(typed.size() - 1) +
                      "\n_heatledger\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n");
  std::ofstream(script.folder() + "/ale.json") << "{}";
  std::ofstream(script.folder() + "/ale.png") << "";
  return run("cd " + script.folder() + " && bash script").first;
}

}  // namespace

TEST(Completions, NameEveryCommandOptionAndSubject) {
  for (const Shell shell : kShells) {
    const std::string text = completionsFor(shell);
    for (const Verb& verb : verbs()) {
      EXPECT_THAT(text, HasSubstr(std::string(verb.name)));
      for (const OptionAbout& one : optionsOf(verb))
        EXPECT_THAT(text,
                    HasSubstr(shell == Shell::Fish ? "-l " + one.option.substr(2) : one.option));
      for (const std::string& subject : subjectsOf(verb.command))
        EXPECT_THAT(text, HasSubstr(subject));
    }
  }
}

// zsh offers an option once, unless it is told that it may stand again.
TEST(Completions, OfferAgainWhatMayBeTypedSeveralTimes) {
  const std::string zsh = completionsFor(Shell::Zsh);
  EXPECT_THAT(zsh, HasSubstr("'*--vary["));
  EXPECT_THAT(zsh, HasSubstr("'--figures["));
}

// Each by its own shell, where there is one.
TEST(Completions, AreScriptsThatTheirShellsUnderstand) {
  for (const Shell shell : kShells) {
    const std::string program = programOf(shell);
    if (!run("command -v " + program).second) continue;
    const Script script(completionsFor(shell));
    EXPECT_TRUE(run(program + " -n " + script.path() + " 2>&1").second) << program;
  }
}

TEST(Completions, OfferInBashWhatMayFollow) {
  EXPECT_EQ(offered({"heatledger", "ans"}), std::vector<std::string>{"answer"});
  EXPECT_EQ(offered({"heatledger", "answer", "--br"}), std::vector<std::string>{"--brief"});
  EXPECT_TRUE(offered({"heatledger", "cost", "--br"}).empty());
  EXPECT_EQ(offered({"heatledger", "answer", "--units", ""}),
            (std::vector<std::string>{"SI", "US"}));
  EXPECT_EQ(offered({"heatledger", "answer", ""}), std::vector<std::string>{"ale.json"});
  EXPECT_EQ(offered({"heatledger", "al"}), std::vector<std::string>{"ale.json"});
  EXPECT_EQ(offered({"heatledger", "picture", "how-l"}), std::vector<std::string>{"how-long"});
  EXPECT_THAT(offered({"heatledger", "picture", "how-long", "--to", "al"}),
              IsSupersetOf({"ale.json", "ale.png"}));
  EXPECT_EQ(offered({"heatledger", "new", "mine.json", "--like", "one"}),
            std::vector<std::string>{"one-kettle"});
  // A quantity of one's own: nothing to offer, and no file in its place.
  EXPECT_TRUE(offered({"heatledger", "answer", "--room", ""}).empty());
  EXPECT_EQ(offered({"heatledger", "help", "ins"}), std::vector<std::string>{"insulate"});
}
