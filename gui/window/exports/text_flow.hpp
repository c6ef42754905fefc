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
qreal lineHeight(const QFont& font);
qreal heightOf(const QStringList& lines, const QFont& font);

enum class Side { Left, Right };
// `corner` is top left of the block, or top right for Side::Right. Returns the height drawn.
qreal drawLines(QPainter& painter, QPointF corner, const QStringList& lines, const QFont& font,
                Side side = Side::Left);

// A copy in pixels: points mean another size on every device.
QFont sized(const QFont& font, qreal pixels, bool strong = false);

}  // namespace gui
