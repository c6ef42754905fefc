// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/appearance.hpp"

#include <QApplication>
#include <QSettings>
#include <QStyle>
#include <QStyleFactory>

#include "gui/window/charts/chart_look.hpp"

namespace gui {
namespace {

struct Shades {
  QColor paper, ink, field, stripe, button, quiet, line, highlight, onHighlight, link;
};

QPalette paletteOf(const Shades& s, bool dark) {
  // Light, dark and middle are what a style shades its edges with.
  QPalette palette(s.ink, s.button, dark ? s.button.lighter(165) : s.button.lighter(110),
                   dark ? s.paper.darker(165) : s.button.darker(160),
                   dark ? s.button.lighter(130) : s.button.darker(125), s.ink, s.field);
  palette.setColor(QPalette::Window, s.paper);
  palette.setColor(QPalette::Mid, s.line);
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

// Who asked the desktop for black on white, or white on black, needs all of it.
bool isOfHighContrast(const QPalette& palette) {
  constexpr double kNearlyAll = 20.5;  // of 21
  return contrastRatio(palette.color(QPalette::WindowText), palette.color(QPalette::Window)) >=
             kNearlyAll &&
         contrastRatio(palette.color(QPalette::ButtonText), palette.color(QPalette::Button)) >=
             kNearlyAll;
}

void wear(Appearance appearance) {
  // The style the desktop gave us, for the way back. Only Fusion is sure to heed a palette.
  static const QString kOwn = QApplication::style()->objectName();
  const QString wanted = appearance == Appearance::AsSystem ? kOwn : QStringLiteral("fusion");
  if (QApplication::style()->objectName().compare(wanted, Qt::CaseInsensitive) != 0)
    QApplication::setStyle(QStyleFactory::create(wanted));
  switch (appearance) {
    case Appearance::AsSystem:
      QApplication::setPalette(QPalette());  // the desktop's, to see what it is like
      QApplication::setPalette(likeDesktop(QApplication::palette()));
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
  return paletteOf({.paper = QColor(0xfb, 0xfa, 0xf7),
                    .ink = QColor(0x1b, 0x1a, 0x18),
                    .field = QColor(0xff, 0xff, 0xff),
                    .stripe = QColor(0xf2, 0xef, 0xe8),
                    .button = QColor(0xf2, 0xef, 0xe8),
                    .quiet = QColor(0x66, 0x62, 0x5b),
                    .line = QColor(0xd9, 0xd5, 0xcb),
                    .highlight = QColor(0x8a, 0x2b, 0x0e),
                    .onHighlight = QColor(0xff, 0xff, 0xff),
                    .link = QColor(0x8a, 0x2b, 0x0e)},
                   false);
}

QPalette darkPalette() {
  return paletteOf({.paper = QColor(0x17, 0x17, 0x15),
                    .ink = QColor(0xf1, 0xef, 0xea),
                    .field = QColor(0x1e, 0x1d, 0x1b),
                    .stripe = QColor(0x22, 0x21, 0x1e),
                    .button = QColor(0x2a, 0x29, 0x26),
                    .quiet = QColor(0xa7, 0xa3, 0x9b),
                    .line = QColor(0x3a, 0x38, 0x34),
                    .highlight = QColor(0xff, 0x9a, 0x6b),
                    .onHighlight = QColor(0x17, 0x17, 0x15),
                    .link = QColor(0xff, 0x9a, 0x6b)},
                   true);
}

QPalette likeDesktop(const QPalette& desktop) {
  if (isOfHighContrast(desktop)) return desktop;
  const bool dark =
      desktop.color(QPalette::Window).lightness() < desktop.color(QPalette::WindowText).lightness();
  return dark ? darkPalette() : lightPalette();
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

void wearChosenAppearance() { wear(chosenAppearance()); }

}  // namespace gui
