// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a file that something is about to be written over. Told by the marks that this
// program's own files carry in their first bytes, never by a name.
#pragma once

#include <filesystem>
#include <string_view>

#include "rigs/words/told.hpp"

namespace rigs {

enum class FileContent {
  Nothing,  // no such file, or an empty one
  // By this program.
  OwnSvg,
  OwnPng,
  OwnTable,    // .csv
  OwnNumbers,  // of a picture, .json
  OwnReport,   // .pdf
  OwnSheet,    // .html
  OwnSheetPdf,
  OwnResult,  // --json
  // What a person wrote, or another program.
  Plan,
  OtherJson,
  Svg,
  Png,
  Pdf,
  Html,
  Unknown,
  NoFile,  // a folder, a device
};

inline constexpr std::string_view kOwnSvgMark = "<!-- Heat Ledger -->";
inline constexpr std::string_view kOwnSheetMark = "<!-- Heat Ledger: a sheet to brew by -->";
// Of the chunk "Software".
inline constexpr std::string_view kOwnPngMark = "Heat Ledger";
// The creator of a report begins so.
inline constexpr std::string_view kOwnReportMark = "Heat Ledger ";
// And that of a sheet so; it is looked for first.
inline constexpr std::string_view kOwnSheetPdfMark = "Heat Ledger sheet ";

// Throws FileError where it cannot be looked at.
FileContent contentOf(const std::filesystem::path& path);
FileContent contentOfBytes(std::string_view first);
// "a plan", "a picture that this program drew"; for Nothing, nothing.
Told contentTold(FileContent content);

// Of this program's own files of that name's ending: ".svg" gives OwnSvg. Unknown for others.
FileContent contentByEnding(const std::filesystem::path& path);

}  // namespace rigs
