// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sheet_fit.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace gui::telling {
namespace {

using rigs::Told;

// All in letters' heights ("rem") of the style, but for the paper.
constexpr double kLine = 1.28;       // from line to line
constexpr double kLetter = 0.56;     // a mean letter's width; DejaVu Sans, a wide one, has 0.55
constexpr double kBoldLetter = 0.6;  // the same in bold
constexpr double kColumns = 36.0;    // what the list has beside what to do
constexpr double kBoxRow = 2.6, kRowPadding = 0.6;
constexpr double kQuietly = 0.86, kCautiously = 0.82;
constexpr double kStep = 0.25;  // points

struct Paper {
  double width, height;  // points, within the margins
};
Paper paperOf(SheetPaperSize size) {
  constexpr double kPointsPerMillimetre = 72.0 / 25.4;
  const double across = 26.0 * kPointsPerMillimetre;
  const double along = 22.0 * kPointsPerMillimetre;
  return size == SheetPaperSize::Letter ? Paper{612.0 - across, 792.0 - along}
                                        : Paper{595.0 - across, 842.0 - along};
}

class SheetHeight {
 public:
  SheetHeight(const Sheet& sheet, const rigs::Reader& reader, double width)
      : sheet_(sheet), reader_(reader), width_(width) {}

  // For a page so many letters' heights wide.
  double all() const {
    double sum = 2.2 + paragraph(sheet_.rig, 1.0) +
                 paragraph(rigs::sentences(sheet_.circuits), 1.0) +
                 paragraph(rigs::sentences({sheet_.batch, sheet_.place}), kQuietly) +
                 paragraph(sheet_.origin, kQuietly) + paragraph(sheet_.ofBands, kQuietly);
    if (!sheet_.warnings.empty()) sum += 3.5;
    for (const Told& one : sheet_.warnings) sum += lines(one, width_ - 1.6, 1.0) * kLine;
    sum += 2.2;  // heads of the list
    for (const SheetLine& one : sheet_.lines) sum += row(one);
    if (!sheet_.sums.empty()) sum += 4.6;
    return sum + cautions();
  }

 private:
  double letters(const Told& told) const {
    const std::string text = rigs::tell(told, reader_);
    return static_cast<double>(std::count_if(text.begin(), text.end(), [](char c) {
      return (static_cast<unsigned char>(c) & 0xc0u) != 0x80u;
    }));
  }
  // Words do not fill their lines.
  double lines(const Told& told, double width, double size) const {
    return std::ceil(letters(told) * kLetter * size / (width - 2.0 * size));
  }
  double paragraph(const Told& told, double size) const {
    return told.empty() ? 0.0 : lines(told, width_, size) * kLine * size + 0.3;
  }
  double row(const SheetLine& line) const {
    const double room = std::max(10.0, width_ - kColumns);
    const double words = letters(line.action) * kBoldLetter + letters(line.more) * kLetter;
    const double what = std::ceil(words / (room - 2.0)) * kLine;
    const double expected = static_cast<double>(line.expected.size()) * kLine;
    const double boxes = line.toWrite.empty() ? 0.0 : kBoxRow;
    const double time = line.band.empty() ? 1.5 : 2.5;
    return std::max({what, expected, boxes, time}) + kRowPadding +
           (line.newDay.empty() ? 0.0 : 1.9);
  }
  double cautions() const {
    const double column = (width_ - 3.2) / 2.0 - 1.1;
    double sum = 0.0;
    for (const Told& one : sheet_.cautions)
      sum += lines(one, column, kCautiously) * kLine * kCautiously;
    // Each stands whole in one of the columns.
    return 0.5 * sum + 2.0 * kLine * kCautiously + 3.2;
  }

  const Sheet& sheet_;
  const rigs::Reader& reader_;
  double width_;
};

}  // namespace

SheetPaperSize paperFor(const rigs::Reader& reader) {
  return reader.units.base() == rigs::UnitSystem::UsCustomary ? SheetPaperSize::Letter
                                                              : SheetPaperSize::A4;
}

double printSize(const Sheet& sheet, const rigs::Reader& reader) {
  const Paper paper = paperOf(paperFor(reader));
  double size = kLargestPrint;
  while (size > kSmallestPrint &&
         SheetHeight(sheet, reader, paper.width / size).all() * size > paper.height)
    size -= kStep;
  return size;
}

}  // namespace gui::telling
