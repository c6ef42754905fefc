// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/paper_type.hpp"

#include "gui/window/exports/text_flow.hpp"

namespace gui {
namespace {

// Without ligatures, so that whoever searches the PDF for "fits" finds it: Qt joins no letters
// whose spacing is set, be it to the usual one.
QFont searchable(QFont font) {
  font.setLetterSpacing(QFont::PercentageSpacing, 100.0);
  return font;
}

// As a condensed cut of it would be: the font is wider than most, and a page of figures is read
// across.
constexpr int kNarrow = 90;  // per cent

QFont inTenths(const QFont& font, qreal points, bool strong = false) {
  QFont made = searchable(sized(font, points * kPoint, strong));
  made.setStretch(kNarrow);
  return made;
}

}  // namespace

PaperType::PaperType(const ChartLook& of)
    : look(of),
      body(inTenths(of.font, 8.5)),
      strong(inTenths(of.font, 8.5, true)),
      heading(inTenths(of.font, 13.0, true)),
      title(inTenths(of.font, 20.0, true)),
      small(inTenths(of.font, kSmallestType)),
      smallStrong(inTenths(of.font, kSmallestType, true)) {
  look.font = searchable(sized(of.font, 8.0));
  look.font.setStretch(kNarrow);
  look.dense = true;
}

}  // namespace gui
