// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/text_flow.hpp"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <cmath>

namespace gui {

QStringList linesOf(const QString& text, const QFont& font, qreal width) {
  QStringList lines;
  const QStringList paragraphs = text.split(u'\n');
  for (const QString& paragraph : paragraphs) {
    QTextLayout layout(paragraph, font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
      line.setLineWidth(width);
      lines.push_back(paragraph.mid(line.textStart(), line.textLength()).trimmed());
    }
    layout.endLayout();
  }
  return lines;
}

QStringList linesOfFigures(const QString& text, const QFont& font, qreal width) {
  QString held = text;
  for (qsizetype i = 1; i + 1 < held.size(); ++i)
    if (held[i] == u' ' && held[i - 1].isDigit()) held[i] = QChar(QChar::Nbsp);
  QStringList lines = linesOf(held, font, width);
  for (QString& line : lines) line.replace(QChar(QChar::Nbsp), u' ');
  return lines;
}

qreal lineHeight(const QFont& font, qreal leading) {
  return std::ceil(QFontMetricsF(font).height() * leading);
}

qreal heightOf(const QStringList& lines, const QFont& font, qreal leading) {
  return static_cast<qreal>(lines.size()) * lineHeight(font, leading);
}

qreal drawLines(QPainter& painter, QPointF corner, const QStringList& lines, const QFont& font,
                Side side, qreal leading) {
  const QFontMetricsF metrics(font);
  painter.setFont(font);
  qreal y = corner.y() + metrics.ascent();
  for (const QString& line : lines) {
    const qreal x = side == Side::Right ? corner.x() - metrics.horizontalAdvance(line) : corner.x();
    painter.drawText(QPointF(x, y), line);
    y += lineHeight(font, leading);
  }
  return heightOf(lines, font, leading);
}

QFont sized(const QFont& font, qreal pixels, bool strong) {
  QFont copy = font;
  copy.setPixelSize(qMax(1, qRound(pixels)));
  copy.setBold(strong);
  // Widths must not depend on the device's pixel grid.
  copy.setHintingPreference(QFont::PreferNoHinting);
  return copy;
}

}  // namespace gui
