// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/letters.hpp"

namespace gui::telling {

std::string letter(std::size_t slot) {
  std::string letters;
  for (std::size_t n = slot + 1; n > 0; n = (n - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('a' + (n - 1) % 26));
  }
  return '(' + letters + ')';
}

}  // namespace gui::telling
