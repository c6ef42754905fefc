// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/written_files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

#include "rigs/documents/file_errors.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

// In here all marks stand.
constexpr std::size_t kLookedAt = std::size_t{64} * 1024;

bool has(std::string_view bytes, std::string_view mark, std::size_t within = kLookedAt) {
  return bytes.substr(0, within).find(mark) != std::string_view::npos;
}

// PDF writes texts in two bytes a letter.
std::string wide(std::string_view ascii) {
  std::string all;
  for (const char c : ascii) {
    all += '\0';
    all += c;
  }
  return all;
}

FileContent ofJson(std::string_view bytes) {
  if (bytes.starts_with("{\n\"seen\": {") && has(bytes, "\"question\":"))
    return FileContent::OwnNumbers;
  if (has(bytes, "\"heat-ledger-plan\"")) return FileContent::Plan;
  if (has(bytes, "\"heat-ledger-result\"", 256)) return FileContent::OwnResult;
  return FileContent::OtherJson;
}

std::string firstBytes(const Descriptor& file, const fs::path& path) {
  std::string bytes(kLookedAt, '\0');
  std::size_t have = 0;
  while (have < bytes.size()) {
    const ssize_t count = ::read(file.get(), bytes.data() + have, bytes.size() - have);
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) failFromErrno(path, FileTask::Read);
    if (count == 0) break;
    have += static_cast<std::size_t>(count);
  }
  bytes.resize(have);
  return bytes;
}

}  // namespace

FileContent contentOfBytes(std::string_view bytes) {
  constexpr std::string_view kPng = "\x89PNG\r\n\x1a\n";
  constexpr std::string_view kSoftware("Software\0", 9);
  if (bytes.empty()) return FileContent::Nothing;
  if (bytes.starts_with(kPng))
    return has(bytes, std::string(kSoftware) + std::string(kOwnPngMark), 4096) ? FileContent::OwnPng
                                                                               : FileContent::Png;
  if (bytes.starts_with("%PDF-") && has(bytes, wide(kOwnSheetPdfMark)))
    return FileContent::OwnSheetPdf;
  if (bytes.starts_with("%PDF-"))
    return has(bytes, wide(kOwnReportMark)) ? FileContent::OwnReport : FileContent::Pdf;
  if (bytes.starts_with("table,group,figure,unit,")) return FileContent::OwnTable;
  if (bytes.starts_with("\xef\xbb\xbf")) bytes.remove_prefix(3);
  const std::size_t first = bytes.find_first_not_of(" \t\r\n");
  const std::string_view text = bytes.substr(std::min(first, bytes.size()));
  if (text.starts_with('{')) return ofJson(text);
  if (text.starts_with('<') && has(text, "<svg", 4096))
    return has(text, kOwnSvgMark, 512) ? FileContent::OwnSvg : FileContent::Svg;
  if (text.starts_with('<') && (has(text, "<html", 4096) || has(text, "<HTML", 4096)))
    return has(text, kOwnSheetMark, 512) ? FileContent::OwnSheet : FileContent::Html;
  return FileContent::Unknown;
}

FileContent contentOf(const fs::path& path) {
  std::error_code unknown;
  const fs::file_status looks = fs::status(path, unknown);
  if (!fs::exists(looks)) return FileContent::Nothing;
  if (!fs::is_regular_file(looks)) return FileContent::NoFile;
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
  if (file.get() < 0) failFromErrno(path, FileTask::Read);
  return contentOfBytes(firstBytes(file, path));
}

Told contentTold(FileContent content) {
  switch (content) {
    case FileContent::Nothing:
      return {};
    case FileContent::OwnSvg:
      return Told(TOLD("Problem", "a picture that this program drew (SVG)"));
    case FileContent::OwnPng:
      return Told(TOLD("Problem", "a picture that this program drew (PNG)"));
    case FileContent::OwnTable:
      return Told(TOLD("Problem", "a table that this program wrote (CSV)"));
    case FileContent::OwnNumbers:
      return Told(TOLD("Problem", "the numbers of a picture that this program wrote (JSON)"));
    case FileContent::OwnReport:
      return Told(TOLD("Problem", "a report that this program wrote (PDF)"));
    case FileContent::OwnSheet:
      return Told(TOLD("Problem", "a sheet to brew by that this program wrote (HTML)"));
    case FileContent::OwnSheetPdf:
      return Told(TOLD("Problem", "a sheet to brew by that this program wrote (PDF)"));
    case FileContent::OwnResult:
      return Told(TOLD("Problem", "a result that this program wrote (JSON)"));
    case FileContent::Plan:
      return Told(TOLD("Problem", "a plan"));
    case FileContent::OtherJson:
      return Told(TOLD("Problem", "a JSON document that this program did not write"));
    case FileContent::Svg:
      return Told(TOLD("Problem", "a picture that this program did not draw (SVG)"));
    case FileContent::Png:
      return Told(TOLD("Problem", "a picture that this program did not draw (PNG)"));
    case FileContent::Pdf:
      return Told(TOLD("Problem", "a PDF document that this program did not write"));
    case FileContent::Html:
      return Told(TOLD("Problem", "a page that this program did not write (HTML)"));
    case FileContent::NoFile:
      return Told(TOLD("Problem", "no file that could be replaced"));
    case FileContent::Unknown:
      break;
  }
  return Told(TOLD("Problem", "a file that this program did not write"));
}

FileContent contentByEnding(const fs::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  constexpr std::array<std::pair<std::string_view, FileContent>, 6> kEndings{
      {{".svg", FileContent::OwnSvg},
       {".png", FileContent::OwnPng},
       {".csv", FileContent::OwnTable},
       {".json", FileContent::OwnNumbers},
       {".pdf", FileContent::OwnReport},
       {".html", FileContent::OwnSheet}}};
  for (const auto& [known, content] : kEndings)
    if (known == ending) return content;
  return FileContent::Unknown;
}

}  // namespace rigs
