// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/drawing.hpp"

#include <algorithm>
#include <array>

namespace gui::telling {

std::span<const rigs::Verbatim> pictureEndings() {
  static const std::array<rigs::Verbatim, 4> kAll{{{".svg"}, {".png"}, {".csv"}, {".json"}}};
  return kAll;
}

std::span<const rigs::Verbatim> reportEndings() {
  static const std::array<rigs::Verbatim, 1> kAll{{{".pdf"}}};
  return kAll;
}

std::span<const rigs::Verbatim> sheetEndings() {
  static const std::array<rigs::Verbatim, 1> kAll{{{".html"}}};
  return kAll;
}

bool endsInOneOf(const std::filesystem::path& path, std::span<const rigs::Verbatim> endings) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return 'A' <= c && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return std::any_of(endings.begin(), endings.end(),
                     [&](const rigs::Verbatim& one) { return one.text == ending; });
}

}  // namespace gui::telling
