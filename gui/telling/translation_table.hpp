// SPDX-License-Identifier: GPL-3.0-or-later
// The German of gui/translations/heatledger_de.ts as part of the program: constants, so that
// nothing is read or copied when it starts. Made by gui/translations/embed_translations.cpp.
#pragma once

#include <span>
#include <string_view>

namespace gui::telling {

struct Translation {
  std::string_view context, english, translated;
};
// By context, then by the English text, bytewise; each pair once.
std::span<const Translation> germanTranslations();

}  // namespace gui::telling
