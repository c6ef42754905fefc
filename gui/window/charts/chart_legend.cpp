// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/charts/chart_legend.hpp"

#include <QStringList>
#include <algorithm>
#include <string>
#include <vector>

#include "gui/window/charts/chart_look.hpp"

namespace gui {

using telling::Picture;
using telling::PictureBand;
using telling::PictureLine;
using Sample = LegendSample;

namespace {

// Every name once, with the letters of all rigs whose thin line has it.
void addFaint(const Picture& picture, qsizetype rigs, QVector<LegendEntry>& entries) {
  struct Named {
    std::string name;
    QStringList letters;
    int first;
  };
  std::vector<Named> all;
  for (const PictureLine& line : picture.lines) {
    if (!line.faint || line.rig < 0 || line.points.empty()) continue;
    auto same = std::find_if(all.begin(), all.end(),
                             [&](const Named& one) { return one.name == line.name; });
    if (same == all.end()) same = all.insert(all.end(), {line.name, {}, line.rig});
    const QString letter = letterInPicture(picture, line.rig);
    if (!same->letters.contains(letter)) same->letters.push_back(letter);
  }
  for (const Named& one : all) {
    // One name that every rig's thin line has needs no letters.
    const bool ofAll = !picture.lettered || (all.size() == 1 && one.letters.size() == rigs);
    const QString name = QString::fromStdString(one.name);
    entries.push_back({ofAll ? name : one.letters.join(QLatin1Char(' ')) + QLatin1Char(' ') + name,
                       one.first, Sample::FaintLine});
  }
}

}  // namespace

QVector<LegendEntry> legendOf(const Picture& picture) {
  QVector<LegendEntry> entries;
  QVector<int> seen;
  for (const PictureLine& line : picture.lines) {
    if (line.faint || line.rig < 0 || seen.contains(line.rig)) continue;
    seen.push_back(line.rig);
    entries.push_back({rigInPicture(picture, line.rig, QString::fromStdString(line.name)), line.rig,
                       Sample::Line});
  }
  for (const telling::PictureLeftOut& out : picture.leftOut)
    entries.push_back({rigInPicture(picture, out.rig, QString::fromStdString(out.name)), out.rig,
                       Sample::Line, true});
  std::stable_sort(entries.begin(), entries.end(),
                   [](const LegendEntry& a, const LegendEntry& b) { return a.index < b.index; });
  for (const PictureLine& line : picture.lines) {
    if (line.rig >= 0 || line.limit) continue;  // a limit is named at its end
    entries.push_back(
        {QString::fromStdString(line.name), 0, line.faint ? Sample::Outline : Sample::PlainLine});
  }
  addFaint(picture, seen.size(), entries);
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
