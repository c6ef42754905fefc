// SPDX-License-Identifier: GPL-3.0-or-later
// Text broken into lines, so that exports know its height before they draw it and a page can end
// between two lines.
#pragma once

#include <QFont>
#include <QPointF>
#include <QString>
#include <QStringList>

class QPainter;

namespace gui {

// Words that are wider than a line are broken anywhere. Never empty.
QStringList linesOf(const QString& text, const QFont& font, qreal width);
// The same, with no number at a line's end whose unit would begin the next.
QStringList linesOfFigures(const QString& text, const QFont& font, qreal width);
// From one line to the next, in heights of the font.
inline constexpr qreal kUsualLeading = 1.12;
qreal lineHeight(const QFont& font, qreal leading = kUsualLeading);
qreal heightOf(const QStringList& lines, const QFont& font, qreal leading = kUsualLeading);

enum class Side { Left, Right };
// `corner` is top left of the block, or top right for Side::Right. Returns the height drawn.
qreal drawLines(QPainter& painter, QPointF corner, const QStringList& lines, const QFont& font,
                Side side = Side::Left, qreal leading = kUsualLeading);

// A copy in pixels: points mean another size on every device.
QFont sized(const QFont& font, qreal pixels, bool strong = false);

}  // namespace gui
