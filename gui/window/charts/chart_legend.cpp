// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_legend.hpp"

#include "gui/window/charts/chart_look.hpp"

namespace gui {

using telling::Picture;
using telling::PictureBand;
using telling::PictureLine;
using Sample = LegendSample;

QVector<LegendEntry> legendOf(const Picture& picture) {
  QVector<LegendEntry> entries;
  QVector<int> seen;
  for (const PictureLine& line : picture.lines) {
    if (line.faint || line.rig < 0 || seen.contains(line.rig)) continue;
    seen.push_back(line.rig);
    entries.push_back(
        {QStringLiteral("%1 %2").arg(letterOfRig(line.rig), QString::fromStdString(line.name)),
         line.rig, Sample::Line});
  }
  for (const PictureLine& line : picture.lines) {
    if (line.rig >= 0) continue;
    entries.push_back({QString::fromStdString(line.name), 0, Sample::PlainLine});
  }
  for (const PictureLine& line : picture.lines) {
    if (!line.faint) continue;
    entries.push_back({QString::fromStdString(line.name), line.rig, Sample::FaintLine});
    break;
  }
  // A single part is what the axis says.
  const std::size_t parts = picture.partNames.size();
  for (std::size_t i = 0; i < parts && parts > 1; ++i) {
    const QString name = QString::fromStdString(picture.partNames[i]);
    entries.push_back(
        {QStringLiteral("%1 %2").arg(i + 1).arg(name), static_cast<int>(i), Sample::Part});
  }
  for (const PictureBand& band : picture.bands) {
    if (!band.shaded) continue;  // its label stands in the picture
    const QString label = QString::fromStdString(band.label);
    const QString text = band.source.empty() ? label
                                             : QStringLiteral("%1 (%2)").arg(
                                                   label, QString::fromStdString(band.source));
    entries.push_back({text, 0, Sample::Band});
  }
  return entries;
}

}  // namespace gui
