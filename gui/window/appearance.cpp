// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/appearance.hpp"

#include <QApplication>
#include <QSettings>
#include <QStyle>
#include <QStyleFactory>

namespace gui {
namespace {

struct Shades {
  QColor paper, ink, field, stripe, button, quiet, highlight, onHighlight, link;
};

QPalette paletteOf(const Shades& s, bool dark) {
  // Light, dark and middle are what a style shades its edges with.
  QPalette palette(s.ink, s.button, dark ? s.button.lighter(165) : s.button.lighter(110),
                   dark ? s.paper.darker(165) : s.button.darker(160),
                   dark ? s.button.lighter(130) : s.button.darker(125), s.ink, s.field);
  palette.setColor(QPalette::Window, s.paper);
  palette.setColor(QPalette::AlternateBase, s.stripe);
  palette.setColor(QPalette::ToolTipBase, s.stripe);
  palette.setColor(QPalette::ToolTipText, s.ink);
  palette.setColor(QPalette::PlaceholderText, s.quiet);
  palette.setColor(QPalette::Highlight, s.highlight);
  palette.setColor(QPalette::HighlightedText, s.onHighlight);
  palette.setColor(QPalette::Link, s.link);
  for (const QPalette::ColorRole role :
       {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText})
    palette.setColor(QPalette::Disabled, role, s.quiet);
  return palette;
}

void wear(Appearance appearance) {
  // The style the desktop gave us, for the way back. Only Fusion is sure to heed a palette.
  static const QString kOwn = QApplication::style()->objectName();
  const QString wanted = appearance == Appearance::AsSystem ? kOwn : QStringLiteral("fusion");
  if (QApplication::style()->objectName().compare(wanted, Qt::CaseInsensitive) != 0)
    QApplication::setStyle(QStyleFactory::create(wanted));
  switch (appearance) {
    case Appearance::AsSystem:
      QApplication::setPalette(QPalette());
      return;
    case Appearance::Light:
      QApplication::setPalette(lightPalette());
      return;
    case Appearance::Dark:
      QApplication::setPalette(darkPalette());
      return;
  }
}

QString nameOf(Appearance appearance) {
  switch (appearance) {
    case Appearance::AsSystem:
      return QStringLiteral("system");
    case Appearance::Light:
      return QStringLiteral("light");
    case Appearance::Dark:
      return QStringLiteral("dark");
  }
  return {};
}

}  // namespace

QPalette lightPalette() {
  return paletteOf({.paper = QColor(243, 242, 239),
                    .ink = QColor(28, 28, 30),
                    .field = QColor(255, 255, 255),
                    .stripe = QColor(248, 247, 245),
                    .button = QColor(232, 231, 228),
                    .quiet = QColor(105, 105, 108),
                    .highlight = QColor(52, 84, 124),
                    .onHighlight = QColor(255, 255, 255),
                    .link = QColor(38, 84, 140)},
                   false);
}

QPalette darkPalette() {
  return paletteOf({.paper = QColor(30, 31, 34),
                    .ink = QColor(222, 222, 218),
                    .field = QColor(24, 25, 27),
                    .stripe = QColor(36, 37, 40),
                    .button = QColor(54, 55, 59),
                    .quiet = QColor(158, 158, 156),
                    .highlight = QColor(82, 102, 128),
                    .onHighlight = QColor(255, 255, 255),
                    .link = QColor(150, 180, 215)},
                   true);
}

Appearance chosenAppearance() {
  const QString stored = QSettings().value(QStringLiteral("appearance")).toString();
  for (const Appearance one : {Appearance::Light, Appearance::Dark})
    if (stored == nameOf(one)) return one;
  return Appearance::AsSystem;
}

void choose(Appearance appearance) {
  QSettings().setValue(QStringLiteral("appearance"), nameOf(appearance));
  wear(appearance);
}

void wearChosenAppearance() {
  if (chosenAppearance() != Appearance::AsSystem) wear(chosenAppearance());
}

}  // namespace gui
