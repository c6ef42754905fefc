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
  look.grid = mixed(paper, ink, look.dark ? 0.16 : 0.15);
  look.bandFill = mixed(paper, ink, look.dark ? 0.13 : 0.07);
  look.accent = look.dark ? QColor(0xff, 0x9a, 0x6b) : QColor(0x8a, 0x2b, 0x0e);
  look.font = inPixels(font);
  look.locale = locale;
  return look;
}

}  // namespace

ChartLook lookOf(const QPalette& palette, const QFont& font, const QLocale& locale) {
  return lookFrom(palette.color(QPalette::Window), palette.color(QPalette::WindowText), font,
                  locale);
}

ChartLook paperLook(const QLocale& locale) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(12);
  return lookFrom(Qt::white, Qt::black, font, locale);
}

ChartLook lookOfRig(int rig, const ChartLook& look) {
  ChartLook own = look;
  own.faded = look.lifted && *look.lifted != rig ? kFaded : 0.0;
  return own;
}

QColor shadeOfRig(int slot, const ChartLook& look) {
  // Own choice: each 4.5:1 and more to its paper, neighbours far apart in hue and in lightness.
  constexpr std::array<QRgb, kRigLooks> kOnLight{0x1b1a18, 0x005f9e, 0xb3430a, 0x00705a,
                                                 0x7b4a91, 0x806000, 0xa8326b, 0x4c5f73,
                                                 0x6b4a2b, 0x006c7a, 0x55661b, 0x4b4fa6};
  constexpr std::array<QRgb, kRigLooks> kOnDark{0xf1efea, 0x6db7f2, 0xf28c54, 0x3fbf9c,
                                                0xc79bdc, 0xe0b93a, 0xf08ab8, 0xa9bbcc,
                                                0xcfa988, 0x53c4d2, 0xb3c46a, 0xa6aaf5};
  const auto at = static_cast<std::size_t>(slot) % kRigLooks;
  const QColor own(look.dark ? kOnDark.at(at) : kOnLight.at(at));
  return look.faded > 0.0 ? mixed(own, look.paper, look.faded) : own;
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
  static const QVector<QVector<qreal>> kDashes{{},
                                               {4.5, 2.0},
                                               {1.0, 2.0},
                                               {4.5, 2.0, 1.0, 2.0},
                                               {7.0, 2.0},
                                               {2.5, 2.0},
                                               {4.5, 2.0, 1.0, 2.0, 1.0, 2.0},
                                               {0.75, 3.0},
                                               {7.0, 2.0, 2.5, 2.0},
                                               {3.0, 3.0},
                                               {1.5, 2.0, 4.5, 2.0},
                                               {6.0, 2.0, 0.75, 2.0}};
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
