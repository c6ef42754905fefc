// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/report_inputs.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <variant>

#include "gui/window/answer_text.hpp"
#include "gui/window/plan_chart.hpp"
#include "physics/brewday.hpp"
#include "rigs/figures.hpp"

namespace gui {
namespace {

using rigs::UnitSystem;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(gui::ReportInputs)
};

QString shown(const std::string& text) { return localized(text, QLocale()); }

template <class Q>
QString shown(const Q& quantity, UnitSystem units) {
  return shown(rigs::format(quantity, units));
}

class Rows {
 public:
  explicit Rows(PictureTable& table) : table_(table) {}
  void add(const QString& what, const QString& value) { table_.rows.push_back({what, value}); }

 private:
  PictureTable& table_;
};

void addMash(Rows& rows, const physics::Batch& batch, UnitSystem units) {
  if (const auto* left = std::get_if<physics::UnpluggedMash>(&batch.mash)) {
    rows.add(
        Words::tr("Mash, left unplugged"),
        Words::tr("from %1 for %2").arg(shown(left->start, units), shown(left->duration, units)));
    return;
  }
  QStringList rests;
  for (const physics::MashRest& rest : std::get<physics::HeldMash>(batch.mash).rests) {
    rests.push_back(
        Words::tr("%1 for %2").arg(shown(rest.temperature, units), shown(rest.duration, units)));
  }
  rows.add(Words::tr("Mash rests"), rests.join(QStringLiteral("; ")));
}

void addBatch(Rows& rows, const physics::Batch& batch, UnitSystem units) {
  if (const auto* wort = std::get_if<physics::WantedWort>(&batch.size)) {
    rows.add(Words::tr("Finished wort, cold"), shown(wort->atTwentyDegrees, units));
  } else {
    rows.add(Words::tr("Water poured, cold"),
             shown(std::get<physics::PouredWater>(batch.size).atTwentyDegrees, units));
  }
  if (batch.grain.mass > physics::kilograms(0.0)) {
    rows.add(Words::tr("Grain"),
             Words::tr("%1 at %2")
                 .arg(shown(batch.grain.mass, units), shown(batch.grain.temperature, units)));
    rows.add(Words::tr("Extract from the grain"), shown(batch.extractYield, units));
    rows.add(Words::tr("Wort kept by the grain"), shown(batch.absorption, units));
    rows.add(Words::tr("Mashing in"), shown(batch.mashingIn, units));
    addMash(rows, batch, units);
  }
  rows.add(Words::tr("Boil"), shown(batch.boil, units));
}

void addPlace(Rows& rows, const rigs::Plan& plan, UnitSystem units) {
  const physics::Place& place = plan.place;
  rows.add(Words::tr("Room"),
           Words::tr("%1, humidity %2")
               .arg(shown(place.room, units), shown(place.relativeHumidity, units)));
  rows.add(Words::tr("Water as drawn"), shown(place.water, units));
  if (plan.altitude) rows.add(Words::tr("Altitude"), shown(*plan.altitude, units));
  rows.add(Words::tr("Air pressure"), shown(place.pressure, units));
  rows.add(Words::tr("Water boils here at"),
           shown(physics::boilingPoint(0.0, place.pressure), units));
  rows.add(Words::tr("Draught"), shown(place.draught, units));
}

QString tariffText(const rigs::Tariff& tariff) {
  if (tariff.currency.empty()) return Words::tr("no price stated");
  const QString price =
      Words::tr("%1 %2 per kWh")
          .arg(shown(rigs::formatNumber(tariff.perKilowattHour,
                                        {.significantDigits = 4, .decimals = {}})),
               QString::fromStdString(tariff.currency));
  if (tariff.dated.empty()) return price;
  return Words::tr("%1, as of %2").arg(price, QString::fromStdString(tariff.dated));
}

QString lidText(const rigs::RigPlan& rig) {
  if (!rig.hasLid) return Words::tr("no lid");
  const physics::LidUse& open = rig.rig.vessel.open;
  return Words::tr("open: strike %1, mash %2, heating %3, boil %4")
      .arg(shown(open.strike, UnitSystem::SI), shown(open.mash, UnitSystem::SI),
           shown(open.heating, UnitSystem::SI), shown(open.boil, UnitSystem::SI));
}

QString circuitText(const rigs::RigPlan& rig) {
  const QString circuit = Words::tr("%1, %2").arg(shown(rig.rig.supply.nominal, UnitSystem::SI),
                                                  shown(rig.rig.supply.rating, UnitSystem::SI));
  if (rig.circuit.empty()) return circuit;
  return Words::tr("%1 (%2)").arg(circuit, QString::fromStdString(rig.circuit));
}

}  // namespace

PictureTable dayInputs(const rigs::Plan& plan, UnitSystem units) {
  PictureTable table{.head = {Words::tr("Batch and place"), {}}, .rows = {}};
  Rows rows(table);
  addBatch(rows, plan.batch, units);
  addPlace(rows, plan, units);
  rows.add(Words::tr("Price of electricity"), tariffText(plan.tariff));
  rows.add(Words::tr("Wanted: heating from mash to boil within"),
           shown(plan.goals.boilWithin, units));
  rows.add(Words::tr("Wanted: boil-off per hour"), shown(plan.goals.boilOffPerHour, units));
  rows.add(Words::tr("Wanted: headspace"), shown(plan.goals.headspace, units));
  rows.add(Words::tr("Left unplugged, for the cooling question"),
           shown(plan.goals.unplugged, units));
  return table;
}

PictureTable rigInputs(const rigs::Plan& plan, UnitSystem units) {
  PictureTable table{.head = {Words::tr("Rigs")}, .rows = {}};
  for (const rigs::RigPlan& rig : plan.rigs) {
    table.head.push_back(QStringLiteral("%1 %2").arg(
        letterOfRig(static_cast<int>(table.head.size()) - 1), QString::fromStdString(rig.name)));
  }
  const auto row = [&](const QString& what, const auto& of) {
    QVector<QString> cells{what};
    for (const rigs::RigPlan& rig : plan.rigs) cells.push_back(of(rig));
    table.rows.push_back(cells);
  };
  using Rig = rigs::RigPlan;
  row(Words::tr("Vessel, holds"),
      [&](const Rig& rig) { return shown(physics::capacity(rig.rig.vessel), units); });
  row(Words::tr("Inner diameter"),
      [&](const Rig& rig) { return shown(rig.rig.vessel.innerDiameter, units); });
  row(Words::tr("Height"), [&](const Rig& rig) { return shown(rig.rig.vessel.height, units); });
  row(Words::tr("Wall"), [&](const Rig& rig) {
    return Words::tr("%1, %2").arg(shown(rig.rig.vessel.wallThickness, units),
                                   QString::fromStdString(rig.finish));
  });
  row(Words::tr("Mass"), [&](const Rig& rig) { return shown(rig.rig.vessel.mass, units); });
  row(Words::tr("Stands on"), [&](const Rig& rig) {
    return rig.rig.vessel.support.onLegs ? Words::tr("legs") : Words::tr("a solid base");
  });
  row(Words::tr("Lid"), lidText);
  row(Words::tr("Jacket"), [&](const Rig& rig) {
    return rig.hasJacket ? QString::fromStdString(rig.jacket.in(units)) : Words::tr("none");
  });
  row(Words::tr("Jacket it is compared with"), [&](const Rig& rig) {
    return rig.jacketIsCompared && !rig.hasJacket ? QString::fromStdString(rig.jacket.in(units))
                                                  : QStringLiteral("–");
  });
  row(Words::tr("Element"), [&](const Rig& rig) {
    return Words::tr("%1 at %2")
        .arg(shown(rig.rig.element.rating, units), shown(rig.rig.element.ratedAt, units));
  });
  row(Words::tr("Its highest point above the base"),
      [&](const Rig& rig) { return shown(rig.rig.element.topHeight, units); });
  row(Words::tr("Circuit"), circuitText);
  row(Words::tr("Cable, there and back"),
      [&](const Rig& rig) { return shown(rig.rig.supply.cableLoop, units); });
  row(Words::tr("Element's share used in the boil"),
      [&](const Rig& rig) { return shown(rig.rig.boilPower, units); });
  row(Words::tr("Factor on evaporation"),
      [&](const Rig& rig) { return shown(rigs::formatNumber(rig.rig.evaporationFactor)); });
  return table;
}

QStringList assumptions() {
  return {
      Words::tr("The wort has one temperature throughout, and the metal it touches has the same."),
      Words::tr("Outer surfaces are in balance with the heat that passes; what insulation stores "
                "is left out."),
      Words::tr("Evaporation from hot open wort is the largest loss and the least certain, about "
                "±20 %."),
      Words::tr("Losses through the side are good to about ±15 % and biased low; a guessed "
                "emissivity of bare steel adds more."),
      Words::tr("Insulation has its published design values, ±10 to 30 %; damp or pressed, it is "
                "far worse."),
      Words::tr("The supply has its nominal voltage. Real ones swing by up to ±10 %, the power by "
                "±20 %. The element's resistance is constant."),
      Words::tr("In the boil the temperature follows from air pressure and wort strength, and "
                "water leaves by the balance of heat."),
      Words::tr("The room stays as stated: it neither warms up nor steams up."),
      Words::tr("Not modelled: rinse water, hops and trub, lifting the lid to stir, chilling."),
      Words::tr("What a rig does compared with another one is better known than either alone: most "
                "errors are common to both.")};
}

}  // namespace gui
