// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/screen.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

namespace gui {

std::optional<std::size_t> columnsFrom(std::string_view text) {
  const char* end = text.data() + text.size();
  std::size_t width = 0;
  const auto read = std::from_chars(text.data(), end, width);
  if (read.ec != std::errc() || read.ptr != end || width < kNarrowest || width > kWidest)
    return std::nullopt;
  return width;
}

TextStyle screenStyle() {
  TextStyle style;
  if (const char* columns = std::getenv("COLUMNS")) {
    if (const auto width = columnsFrom(columns)) style.width = *width;
  }
  if (::isatty(STDOUT_FILENO) == 0) return style;
  winsize size{};
  if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) {
    style.width = std::max<std::size_t>(size.ws_col, kNarrowest);
  }
  const char* noColor = std::getenv("NO_COLOR");
  const char* term = std::getenv("TERM");
  style.bold = (!noColor || *noColor == '\0') && term && std::string_view(term) != "dumb";
  return style;
}

}  // namespace gui
