// SPDX-License-Identifier: GPL-3.0-or-later
// A tool of the build, write_completions BASH ZSH FISH: writes the three scripts to install.
#include <array>
#include <fstream>
#include <iostream>

#include "gui/terminal/completions.hpp"

int main(int count, char** words) {
  constexpr std::array kShells{gui::Shell::Bash, gui::Shell::Zsh, gui::Shell::Fish};
  if (count != 1 + static_cast<int>(kShells.size())) {
    std::cerr << "write_completions BASH ZSH FISH\n";
    return 2;
  }
  for (std::size_t i = 0; i < kShells.size(); ++i) {
    std::ofstream file(words[i + 1], std::ios::binary);
    file << gui::completionsFor(kShells[i]) << std::flush;
    if (!file) {
      std::cerr << words[i + 1] << ": was not written\n";
      return 1;
    }
  }
  return 0;
}
