// SPDX-License-Identifier: GPL-3.0-or-later
// Where does the heat go?
#include <algorithm>
#include <array>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "rigs/answers/figures.hpp"

namespace gui {
namespace {

using physics::Energy;
using physics::Ledger;
using physics::Path;
using physics::Power;

struct Part {
  QString name;
  std::function<Power(const physics::CurvePoint&)> power;  // empty: not a loss over time
  std::function<Energy(const Ledger&)> energy;
};

// From the heat that stays to the heat that leaves, the largest loss first.
QVector<Part> allParts() {
  using Point = physics::CurvePoint;
  return {{translate("Answer", "kept in wort and vessel"),
           {},
           [](const Ledger& l) { return l.stored(); }},
          {translate("Answer", "lifted out with the grain"),
           {},
           [](const Ledger& l) { return l.lifted; }},
          {translate("Answer", "steam"), [](const Point& p) { return p.lost[Path::Evaporation]; },
           [](const Ledger& l) { return l.lost[Path::Evaporation] + l.steam; }},
          {translate("Answer", "open surface"),
           [](const Point& p) {
             return p.lost[Path::SurfaceConvection] + p.lost[Path::SurfaceRadiation];
           },
           [](const Ledger& l) {
             return l.lost[Path::SurfaceConvection] + l.lost[Path::SurfaceRadiation];
           }},
          {translate("Answer", "side"), [](const Point& p) { return p.lost[Path::Side]; },
           [](const Ledger& l) { return l.lost[Path::Side]; }},
          {translate("Answer", "dry wall above the wort"),
           [](const Point& p) { return p.lost[Path::DryWall]; },
           [](const Ledger& l) { return l.lost[Path::DryWall]; }},
          {translate("Answer", "base"), [](const Point& p) { return p.lost[Path::Base]; },
           [](const Ledger& l) { return l.lost[Path::Base]; }},
          {translate("Answer", "lid"), [](const Point& p) { return p.lost[Path::Lid]; },
           [](const Ledger& l) { return l.lost[Path::Lid]; }},
          {translate("Answer", "hose"), [](const Point& p) { return p.lost[Path::Hose]; },
           [](const Ledger& l) { return l.lost[Path::Hose]; }},
          {translate("Answer", "cable"), {}, [](const Ledger& l) { return l.cable; }}};
}

// All that came in: from the wall and from wetting the grain.
Energy cameIn(const Ledger& ledger) { return ledger.fromWall() + ledger.slaking; }

QtPicture powerOverTime(const Telling& tell, int rig) {
  const physics::BrewDay& day = tell.rig(rig).day;
  QtPicture picture;
  picture.kind = QtPicture::Kind::Areas;
  picture.title = translate("Answer", "Heat leaving %1, by path").arg(tell.named(rig));
  picture.xTitle = translate("Answer", "Time since the start, h:min");
  picture.yUnit = tell.write.unit<Power>();
  picture.yTitle =
      translate("Answer", "Power, %1; what is left below the element's line warms the wort")
          .arg(picture.yUnit);
  picture.xIsClock = true;
  for (const Part& part : allParts()) {
    if (!part.power) continue;
    QVector<QPointF> area;
    bool any = false;
    for (const physics::Stage& stage : day.stages) {
      for (const physics::CurvePoint& point : stage.curve) {
        const double power = std::max(0.0, tell.write.axis(part.power(point)));
        any = any || power > 0.05;
        area.push_back({physics::inMinutes(point.time), power});
      }
    }
    if (!any) continue;
    picture.partNames.push_back(part.name);
    picture.areas.push_back(area);
  }
  QtPictureLine element{.rig = -1, .name = translate("Answer", "from the element"), .points = {}};
  for (const physics::Stage& stage : day.stages) {
    for (const physics::CurvePoint& point : stage.curve) {
      element.points.push_back({physics::inMinutes(point.time), tell.write.axis(point.element)});
    }
  }
  picture.lines.push_back(element);
  picture.yFrom = 0.0;
  return picture;
}

// The picture's numbers where they change most: at the start and at the end of every stage.
PictureTable powerTable(const Telling& tell, const physics::BrewDay& day,
                        const QtPicture& picture) {
  PictureTable table;
  table.head = {translate("Answer", "Power, %1").arg(picture.yUnit)};
  for (const QtPictureLine& line : picture.lines) table.head.push_back(line.name);
  table.head += picture.partNames;
  const QStringList names = stageLabels(day);
  qsizetype point = 0;
  for (std::size_t s = 0; s < day.stages.size(); ++s) {
    const qsizetype first = point;
    point += static_cast<qsizetype>(day.stages[s].curve.size());
    if (point == first) continue;
    const auto add = [&](const QString& label, qsizetype at) {
      const auto cell = [&](const Points& from) { return tell.write.plain(from.value(at).y(), 0); };
      const double x = picture.lines[0].points.value(at).x();
      QVector<QString> row{
          label.arg(names.value(static_cast<qsizetype>(s)), hoursAndMinutesText(x))};
      for (const QtPictureLine& line : picture.lines) row.push_back(cell(line.points));
      for (const Points& area : picture.areas) row.push_back(cell(area));
      table.rows.push_back(row);
    };
    add(translate("Answer", "%1 begins, %2"), first);
    add(translate("Answer", "%1 ends, %2"), point - 1);
  }
  return table;
}

QVector<Part> partsInUse(const Telling& tell) {
  QVector<Part> used;
  for (const Part& part : allParts()) {
    for (int i = 0; i < tell.count(); ++i) {
      if (part.energy(tell.rig(i).day.total) <= physics::kilowattHours(0.0005)) continue;
      used.push_back(part);
      break;
    }
  }
  return used;
}

QtPicture energyBars(const Telling& tell) {
  QtPicture picture;
  picture.kind = QtPicture::Kind::StackedBars;
  picture.title = translate("Answer", "Where the day's heat went");
  picture.xUnit = tell.write.unit<Energy>();
  picture.xTitle = translate("Answer", "Energy, %1").arg(picture.xUnit);
  const QVector<Part> parts = partsInUse(tell);
  for (const Part& part : parts) picture.partNames.push_back(part.name);
  for (int i = 0; i < tell.count(); ++i) {
    QtPictureStack stack{.rig = i, .name = tell.name(i), .parts = {}};
    for (const Part& part : parts) {
      stack.parts.push_back(std::max(0.0, tell.write.axis(part.energy(tell.rig(i).day.total))));
    }
    picture.stacks.push_back(stack);
  }
  return picture;
}

}  // namespace

QtAnswer whereHeat(const Telling& tell) {
  const int rig = std::clamp(tell.view.rig, 0, tell.count() - 1);
  const Ledger& total = tell.rig(rig).day.total;
  QtAnswer answer;
  const Energy in = cameIn(total);
  const auto share = [&](Energy part) {
    if (in <= physics::joules(0.0)) return tell.write.text(0.0);
    return tell.write.text(static_cast<double>(part / in), {.significantDigits = 2, .decimals = 0});
  };
  const Energy steam = total.lost[Path::Evaporation] + total.steam;
  const Energy kept = total.stored() + total.lifted;
  answer.sentence =
      translate("Answer",
                "%1 came into %2: %3 of it left as steam, %4 warmed wort, grain and vessel, and %5 "
                "was lost through walls, lid, surface and cable.")
          .arg(tell.write.text(in), tell.named(rig), share(steam), share(kept),
               share(in - steam - kept));
  answer.pictures = {tell.view.asBars ? energyBars(tell) : powerOverTime(tell, rig)};

  if (!tell.view.asBars) {
    answer.table = powerTable(tell, tell.rig(rig).day, answer.pictures[0]);
    return answer;
  }
  TableOf table(tell);
  const QString unit = tell.write.unit<Energy>();
  table.heading(translate("Answer", "Came in, %1").arg(unit));
  const auto row = [&](const QString& label, const std::function<Energy(const Ledger&)>& of) {
    table.row(label, [&](int i) -> std::optional<QString> {
      return tell.write.number(of(tell.rig(i).day.total), 3);
    });
  };
  row(translate("Answer", "from the wall"), [](const Ledger& l) { return l.fromWall(); });
  row(translate("Answer", "from wetting the grain"), [](const Ledger& l) { return l.slaking; });
  table.heading(translate("Answer", "Went to, %1").arg(unit));
  for (const Part& part : partsInUse(tell)) row(part.name, part.energy);
  answer.table = table.take();
  return answer;
}

}  // namespace gui
