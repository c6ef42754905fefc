// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_look.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "gui/telling/letters.hpp"

namespace gui {
namespace {

QColor mixed(const QColor& a, const QColor& b, double share) {
  const auto part = [share](float x, float y) {
    return static_cast<float>(x + share * (static_cast<double>(y) - x));
  };
  return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                          part(a.blueF(), b.blueF()));
}

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

// Sizes in pixels: points would mean something else on every device.
QFont inPixels(const QFont& font) {
  QFont result = font;
  if (font.pixelSize() <= 0) {
    result.setPixelSize(
        std::max(1, static_cast<int>(std::lround(font.pointSizeF() * 96.0 / 72.0))));
  }
  return result;
}

ChartLook lookFrom(const QColor& paper, const QColor& ink, const QFont& font,
                   const QLocale& locale) {
  ChartLook look;
  look.paper = paper;
  look.ink = ink;
  look.dark = luminance(paper) < luminance(ink);
  look.quietInk = mixed(ink, paper, 0.34);
  look.grid = mixed(paper, ink, look.dark ? 0.14 : 0.10);
  look.bandFill = mixed(paper, ink, look.dark ? 0.13 : 0.07);
  look.accent = look.dark ? QColor(0xf0, 0xa3, 0x7a) : QColor(0xa6, 0x3a, 0x12);
  look.font = inPixels(font);
  look.locale = locale;
  return look;
}

}  // namespace

ChartLook lookOf(const QPalette& palette, const QFont& font, const QLocale& locale) {
  return lookFrom(palette.color(QPalette::Base), palette.color(QPalette::Text), font, locale);
}

ChartLook paperLook(const QLocale& locale) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(12);
  return lookFrom(Qt::white, Qt::black, font, locale);
}

QColor shadeOfRig(int slot, const ChartLook& look) {
  // Shares of paper in the ink; the palest keeps 3:1 to the paper (WCAG 2.1, 1.4.11).
  constexpr std::array kPaper{0.0, 0.40, 0.20, 0.48, 0.10, 0.30};
  return mixed(look.ink, look.paper, kPaper.at(static_cast<std::size_t>(slot) % kPaper.size()));
}

QColor shadeOfPart(int part, int parts, const ChartLook& look) {
  // From ink to paper and back in big steps: neighbours differ most.
  const int half = std::max(1, (parts + 1) / 2);
  const double share = static_cast<double>(part / 2) / half;
  return mixed(look.ink, look.paper, part % 2 == 0 ? 0.22 + 0.34 * share : 0.86 - 0.24 * share);
}

QColor inkOn(const QColor& shade) {
  return contrastRatio(shade, Qt::black) > contrastRatio(shade, Qt::white) ? Qt::black : Qt::white;
}

QVector<qreal> dashesOfRig(int slot) {
  static const QVector<QVector<qreal>> kDashes{
      {}, {6.0, 3.0}, {1.5, 2.5}, {8.0, 2.5, 1.5, 2.5}, {3.0, 6.0}, {4.0, 2.0, 1.5, 2.0, 1.5, 2.0}};
  return kDashes[slot % kDashes.size()];
}

QString letterOfRig(int slot) {
  return QString::fromStdString(telling::letter(static_cast<std::size_t>(slot)));
}

QString rigOf(std::size_t rigs, int slot, const QString& name) {
  return rigs > 1 ? QStringLiteral("%1 %2").arg(letterOfRig(slot), name) : name;
}

QString letterInPicture(const telling::Picture& picture, int rig) {
  return letterOfRig(telling::slotOfRig(picture, rig));
}

QString rigInPicture(const telling::Picture& picture, int rig, const QString& name) {
  const QString letter = picture.lettered ? letterInPicture(picture, rig) : QString();
  const QString plain = QStringLiteral("%1 %2").arg(letter, name).trimmed();
  const QString mark = QString::fromStdString(telling::markOfRig(picture, rig));
  return mark.isEmpty() ? plain : QStringLiteral("%1 [%2]").arg(plain, mark);
}

double contrastRatio(const QColor& a, const QColor& b) {
  const double one = luminance(a) + 0.05;
  const double other = luminance(b) + 0.05;
  return std::max(one, other) / std::min(one, other);
}

}  // namespace gui
