// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/desktop.hpp"

#include <unistd.h>

#include <filesystem>
#include <system_error>

namespace gui {
void becomeDesktop(char** argv) {
  std::error_code failed;
  const std::filesystem::path self = std::filesystem::read_symlink("/proc/self/exe", failed);
  if (failed) return;
  // Beside this program where it was built; where it is installed, as the packaging says.
  for (const char* other : {"heatledger-desktop", HEATLEDGER_DESKTOP_FROM_PROGRAM}) {
    ::execv((self.parent_path() / other).c_str(), argv);
  }
}

}  // namespace gui
