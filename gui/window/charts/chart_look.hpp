// SPDX-License-Identifier: GPL-3.0-or-later
// Hues, shades, dashes and letters: how rigs and parts are told apart, on any ground.
#pragma once

#include <QColor>
#include <QFont>
#include <QLocale>
#include <QPalette>
#include <QString>
#include <QVector>
#include <optional>

#include "gui/telling/picture.hpp"

namespace gui {

// Everything about a picture's look that is not in the picture.
struct ChartLook {
  QColor paper, ink, quietInk, grid, bandFill, accent;
  QFont font;
  QLocale locale;  // for the decimal sign of ticks and read-outs
  bool dark = false;
  bool legend = true;         // else it stands beside another picture of the same things
  bool dense = false;         // titles share a line where they fit: on paper, beside their tables
  double faded = 0.0;         // of a rig's shade, towards the paper
  std::optional<int> lifted;  // the rig that stands out: the others are faded
};
ChartLook lookOf(const QPalette& palette, const QFont& font, const QLocale& locale = QLocale());
// With which a rig is drawn beside the one that stands out.
ChartLook lookOfRig(int rig, const ChartLook& look);
// Black on white at 9 pt in a named font, whatever the screen looks like.
ChartLook paperLook(const QLocale& locale = QLocale());

// So many rigs look unlike each other; the next begins again.
inline constexpr std::size_t kRigLooks = 12;
// Hue of a rig's line, by its slot (0 for the one with the letter a): read as text, too. Who sees
// no hues has dash, point and letter.
QColor shadeOfRig(int slot, const ChartLook& look);
// Shade of a stacked part, told apart by lightness.
QColor shadeOfPart(int part, int parts, const ChartLook& look);
// Black or white, whichever is read better on it.
QColor inkOn(const QColor& shade);
// Drawn and missing lengths in multiples of the line's width; {} is solid.
QVector<qreal> dashesOfRig(int slot);
// "(a)", "(b)" ...; slot >= 0
QString letterOfRig(int slot);
// "(b) New element, kitchen"; of the only one of `rigs`, its name.
QString rigOf(std::size_t rigs, int slot, const QString& name);
// "(c)"; `rig` as in the picture.
QString letterInPicture(const telling::Picture& picture, int rig);
// "(c) New element, kitchen", with the picture's mark of it where it has one; without a name "(c)".
QString rigInPicture(const telling::Picture& picture, int rig, const QString& name = {});
// As WCAG 2.1 defines it, 1 to 21.
double contrastRatio(const QColor& a, const QColor& b);

inline constexpr double kFaded = 0.72;  // of what stands back, towards the paper
inline constexpr double kLineWidth = 2.0;
inline constexpr double kFaintWidth = 1.2;

}  // namespace gui
