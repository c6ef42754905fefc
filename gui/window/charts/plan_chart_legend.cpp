// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtMath>

#include "gui/window/charts/chart_layout.hpp"

namespace gui {

using Sample = ChartLayout::Sample;

QVector<LegendEntry> legendOf(const Picture& picture) {
  QVector<LegendEntry> entries;
  QVector<int> seen;
  for (const PictureLine& line : picture.lines) {
    if (line.faint || line.rig < 0 || seen.contains(line.rig)) continue;
    seen.push_back(line.rig);
    entries.push_back(
        {QStringLiteral("%1 %2").arg(letterOfRig(line.rig), line.name), line.rig, Sample::Line});
  }
  for (const PictureLine& line : picture.lines) {
    if (line.rig >= 0) continue;
    entries.push_back({line.name, 0, Sample::PlainLine});
  }
  for (const PictureLine& line : picture.lines) {
    if (!line.faint) continue;
    entries.push_back({line.name, line.rig, Sample::FaintLine});
    break;
  }
  // A single part is what the axis says.
  for (qsizetype i = 0; i < picture.partNames.size() && picture.partNames.size() > 1; ++i) {
    entries.push_back({QStringLiteral("%1 %2").arg(i + 1).arg(picture.partNames[i]),
                       static_cast<int>(i), Sample::Part});
  }
  for (const PictureBand& band : picture.bands) {
    if (!band.shaded) continue;  // its label stands in the picture
    const QString text =
        band.source.isEmpty() ? band.label : QStringLiteral("%1 (%2)").arg(band.label, band.source);
    entries.push_back({text, 0, Sample::Band});
  }
  return entries;
}

int aroundPlot(const Picture& picture, int width, const ChartLook& look) {
  constexpr double kAmple = 800.0;
  return qCeil(kAmple - layOut(picture, QSizeF(width, kAmple), look).plot.height());
}

QStringList aroundTexts(const QVector<Picture>& pictures) {
  QStringList texts;
  for (const Picture& picture : pictures) {
    for (const LegendEntry& entry : legendOf(picture)) texts += entry.text;
    texts += QString::number(picture.limits.size());
  }
  return texts;
}

}  // namespace gui
