// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/report_inputs.hpp"

#include <QCoreApplication>
#include <variant>

#include "gui/telling/additions.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/rinse.hpp"
#include "gui/telling/tariff.hpp"
#include "gui/telling/words.hpp"
#include "gui/window/charts/chart_look.hpp"
#include "gui/window/words/reader.hpp"
#include "physics/brewday.hpp"
#include "physics/wort.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {
namespace {

using rigs::UnitSystem;

struct InputWords {
  Q_DECLARE_TR_FUNCTIONS(gui::ReportInputs)
};

template <class Q>
QString shown(const Q& quantity, UnitSystem units) {
  return told(rigs::Argument(rigs::amount(quantity)), readerOf(units));
}
QString shownNumber(double number) {
  return told(rigs::Argument(rigs::Number{number}), readerOf(UnitSystem::SI));
}

class Rows {
 public:
  explicit Rows(ShownTable& table) : table_(table) {}
  void add(const QString& what, const QString& value) { table_.rows.push_back({{what, value}}); }

 private:
  ShownTable& table_;
};

void addMash(Rows& rows, const physics::Batch& batch, UnitSystem units) {
  if (const auto* left = std::get_if<physics::UnpluggedMash>(&batch.mash)) {
    rows.add(InputWords::tr("Mash, left unplugged"),
             InputWords::tr("from %1 for %2")
                 .arg(shown(left->start, units), shown(left->duration, units)));
    return;
  }
  QStringList rests;
  for (const physics::MashRest& rest : std::get<physics::HeldMash>(batch.mash).rests) {
    rests.push_back(InputWords::tr("%1 for %2")
                        .arg(shown(rest.temperature, units), shown(rest.duration, units)));
  }
  rows.add(InputWords::tr("Mash rests"), rests.join(QStringLiteral("; ")));
}

QString heatedText(const physics::Rinse& rinse, UnitSystem units) {
  if (!rinse.electric) return InputWords::tr("not by electricity");
  const QString where = rinse.electric->onSameCircuit ? InputWords::tr("on the same circuit")
                                                      : InputWords::tr("on another circuit");
  const auto& power = rinse.electric->power;
  return InputWords::tr("%1, %2, efficiency %3")
      .arg(where, power ? shown(*power, units) : InputWords::tr("power not known"),
           shown(rinse.electric->efficiency, units));
}

void addLift(Rows& rows, const physics::Batch& batch, UnitSystem units) {
  if (batch.rinse) {
    rows.add(InputWords::tr("Rinsing water"),
             told(telling::rinseInWords(*batch.rinse), readerOf(units)));
    rows.add(InputWords::tr("Rinsing water heated"), heatedText(*batch.rinse, units));
    rows.add(InputWords::tr("Rinse reaches of the held wort"), shown(batch.rinse->reached, units));
  }
  if (batch.drain)
    rows.add(InputWords::tr("Grain drains"),
             (batch.drain->elementOn ? InputWords::tr("%1, element on")
                                     : InputWords::tr("%1, element off"))
                 .arg(shown(batch.drain->duration, units)));
}

void addBatch(Rows& rows, const physics::Batch& batch, UnitSystem units) {
  if (const auto* wort = std::get_if<physics::WantedWort>(&batch.size)) {
    rows.add(InputWords::tr("Finished wort, cold"), shown(wort->atTwentyDegrees, units));
  } else {
    rows.add(InputWords::tr("Water poured, cold"),
             shown(std::get<physics::PouredWater>(batch.size).atTwentyDegrees, units));
  }
  if (batch.mashes()) {
    rows.add(InputWords::tr("Grain"),
             InputWords::tr("%1 at %2")
                 .arg(shown(batch.grain.mass, units), shown(batch.grain.temperature, units)));
    rows.add(InputWords::tr("Extract from the grain"), shown(batch.extractYield, units));
    rows.add(InputWords::tr("Wort kept by the grain"), shown(batch.absorption, units));
    rows.add(InputWords::tr("Mashing in"), shown(batch.mashingIn, units));
    addMash(rows, batch, units);
  }
  addLift(rows, batch, units);
  rows.add(InputWords::tr("Boil"), shown(batch.boil, units));
  QStringList additions;
  for (const physics::Addition& addition : batch.additions)
    additions.push_back(InputWords::tr("%1, at %2")
                            .arg(told(telling::plannedAdditionInWords(addition), readerOf(units)),
                                 shown(addition.temperature, units)));
  if (!additions.isEmpty())
    rows.add(InputWords::tr("Goes in during the boil"), additions.join(QStringLiteral("; ")));
}

void addChilling(Rows& rows, const rigs::Plan& plan, UnitSystem units) {
  if (!plan.chilling.isStated) return;
  rows.add(InputWords::tr("Hot stand"), shown(plan.chilling.hotStand, units));
  rows.add(InputWords::tr("Pitching"), shown(plan.chilling.pitching, units));
}

void addPlace(Rows& rows, const rigs::Plan& plan, UnitSystem units) {
  const physics::Place& place = plan.place;
  rows.add(InputWords::tr("Room"),
           InputWords::tr("%1, humidity %2")
               .arg(shown(place.room, units), shown(place.relativeHumidity, units)));
  rows.add(InputWords::tr("Water as drawn"), shown(place.water, units));
  if (plan.altitude) rows.add(InputWords::tr("Altitude"), shown(*plan.altitude, units));
  rows.add(InputWords::tr("Air pressure"), shown(place.pressure, units));
  rows.add(InputWords::tr("Water boils here at"),
           shown(physics::boilingPoint(0.0, place.pressure), units));
  rows.add(InputWords::tr("Draught"), shown(place.draught, units));
  const rigs::RoomPlan& air = plan.room;
  const auto flow = [&](physics::VolumeFlow of) {
    return told(rigs::Argument(rigs::amountLike(
                    of, units.isMetric(rigs::QuantityKind::Volume) ? "1 m3/h" : "1 ft3/min")),
                readerOf(units));
  };
  const QString volume =
      told(rigs::Argument(rigs::amountLike(
               air.volume, units.isMetric(rigs::QuantityKind::Volume) ? "1 m3" : "1 ft3")),
           readerOf(units));
  rows.add(InputWords::tr("Air of the room"),
           (air.isStated ? InputWords::tr("%1, %2 exchanged with outdoors")
                         : InputWords::tr("%1, %2 exchanged with outdoors; assumed"))
               .arg(volume, flow(air.airflow)));
  rows.add(InputWords::tr("Outdoors"),
           InputWords::tr("%1, humidity %2")
               .arg(shown(air.outdoors, units), shown(air.outdoorHumidity, units)));
  if (air.captured > 0.0)
    rows.add(InputWords::tr("A hood takes of the vapour"), shown(air.captured, units));
  rows.add(InputWords::tr("Electrical rules"), plan.region.empty()
                                                   ? InputWords::tr("those of each rig's circuit")
                                                   : regionName(plan.region));
}

QString lidText(const rigs::RigPlan& rig) {
  if (!rig.hasLid) return InputWords::tr("no lid");
  const physics::LidUse& open = rig.rig.vessel.open;
  return InputWords::tr("open: strike %1, mash %2, heating %3, boil %4")
      .arg(shown(open.strike, UnitSystem::SI), shown(open.mash, UnitSystem::SI),
           shown(open.heating, UnitSystem::SI), shown(open.boil, UnitSystem::SI));
}

// A plan states a surface in a word of its own, or by its emissivity.
QString finishText(const rigs::RigPlan& rig) {
  if (!rig.finish.starts_with("emissivity"))
    return catalogueName(QString::fromStdString(rig.finish));
  return told(rigs::Told(TOLD("Catalogue", "emissivity %1"),
                         rigs::Number{rig.bare.vessel.side.emissivity}));
}

QString circuitText(const rigs::RigPlan& rig) {
  const QString circuit = InputWords::tr("%1, %2").arg(
      shown(rig.rig.supply.nominal, UnitSystem::SI), shown(rig.rig.supply.rating, UnitSystem::SI));
  if (rig.circuit.empty()) return circuit;
  return InputWords::tr("%1 (%2)").arg(circuit, catalogueName(QString::fromStdString(rig.circuit)));
}

}  // namespace

QString outletText(const rigs::RigPlan& rig) {
  if (rig.circuits.empty()) return QStringLiteral("–");
  const rigs::CircuitDetails& details = rigs::detailsOf(rig, 0);
  QStringList told;
  if (!details.outlet.empty()) told += QString::fromStdString(details.outlet);
  if (details.feeds == rigs::Feeds::OneOutlet) told += InputWords::tr("one outlet alone");
  if (details.feeds == rigs::Feeds::SeveralOutlets) told += InputWords::tr("several outlets");
  return told.isEmpty() ? InputWords::tr("not stated") : told.join(QStringLiteral(", "));
}

QString besideText(const rigs::RigPlan& rig, UnitSystem units) {
  const rigs::CircuitDetails& details = rigs::detailsOf(rig, 0);
  QStringList told;
  if (details.pump) told += InputWords::tr("pump of %1").arg(shown(*details.pump, units));
  if (details.otherLoad) told += InputWords::tr("others' %1").arg(shown(*details.otherLoad, units));
  if (details.heatsRinse)
    told += details.rinseHeater
                ? InputWords::tr("rinsing water's %1").arg(shown(*details.rinseHeater, units))
                : InputWords::tr("rinsing water's heater, power not known");
  return told.isEmpty() ? InputWords::tr("nothing") : told.join(QStringLiteral(", "));
}

// As written where a rig has several, which count as one in all that follows.
QString elementText(const rigs::RigPlan& rig, UnitSystem units) {
  const auto one = [&](const physics::Element& element) {
    return InputWords::tr("%1 at %2")
        .arg(shown(element.rating, units), shown(element.ratedAt, units));
  };
  QStringList all;
  for (const rigs::CircuitPlan& circuit : rig.circuits) {
    for (const physics::Element& element : circuit.elements) all += one(element);
  }
  if (all.size() < 2) return one(rig.rig.element);
  const QString listed = all.join(QStringLiteral("; "));
  if (rig.circuits.size() > 1) return InputWords::tr("on two circuits: %1").arg(listed);
  return (rig.circuits.front().wiring == physics::Wiring::Series
              ? InputWords::tr("in series: %1")
              : InputWords::tr("in parallel: %1"))
      .arg(listed);
}

ShownTable dayInputs(const rigs::Plan& plan, UnitSystem units) {
  ShownTable table{.head = {InputWords::tr("Batch and place"), {}}, .marks = {}, .rows = {}};
  Rows rows(table);
  addBatch(rows, plan.batch, units);
  addChilling(rows, plan, units);
  addPlace(rows, plan, units);
  rows.add(InputWords::tr("Price of electricity"), told(telling::tariffText(plan.tariff)));
  rows.add(InputWords::tr("Batches a year"), shownNumber(telling::brewsPerYear(plan)));
  rows.add(InputWords::tr("Wanted: heating from mash to boil within"),
           shown(plan.goals.boilWithin, units));
  rows.add(InputWords::tr("Wanted: boil-off per hour"), shown(plan.goals.boilOffPerHour, units));
  rows.add(InputWords::tr("Wanted: headspace"), shown(plan.goals.headspace, units));
  if (!rigs::hasOwnNight(plan))
    rows.add(InputWords::tr("Left unplugged, for the cooling question"),
             shown(plan.goals.unplugged, units));
  return table;
}

ShownTable rigInputs(const rigs::Plan& plan, UnitSystem units) {
  const QString head = plan.rigs.size() == 1 ? InputWords::tr("Rig") : InputWords::tr("Rigs");
  ShownTable table{.head = {head}, .marks = {}, .rows = {}};
  const auto letters = rigs::slotsOf(plan.rigs);
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    table.head.push_back(rigOf(plan.rigs.size(), static_cast<int>(letters[i]),
                               QString::fromStdString(plan.rigs[i].name)));
  }
  const auto row = [&](const QString& what, const auto& of) {
    QStringList cells{what};
    for (const rigs::RigPlan& rig : plan.rigs) cells.push_back(of(rig));
    table.rows.push_back({cells});
  };
  using Rig = rigs::RigPlan;
  row(InputWords::tr("Vessel, holds"),
      [&](const Rig& rig) { return shown(physics::capacity(rig.rig.vessel), units); });
  row(InputWords::tr("Inner diameter"),
      [&](const Rig& rig) { return shown(rig.rig.vessel.innerDiameter, units); });
  row(InputWords::tr("Height"),
      [&](const Rig& rig) { return shown(rig.rig.vessel.height, units); });
  row(InputWords::tr("Wall"), [&](const Rig& rig) {
    return InputWords::tr("%1, %2").arg(shown(rig.rig.vessel.wallThickness, units),
                                        finishText(rig));
  });
  row(InputWords::tr("Mass"), [&](const Rig& rig) { return shown(rig.rig.vessel.mass, units); });
  row(InputWords::tr("Stands on"), [&](const Rig& rig) {
    return rig.rig.vessel.support.onLegs ? InputWords::tr("legs") : InputWords::tr("a solid base");
  });
  row(InputWords::tr("Lid"), lidText);
  row(InputWords::tr("Jacket"), [&](const Rig& rig) {
    return rig.hasJacket ? told(telling::jacketWords(rig.jacket, readerOf(units)), units)
                         : InputWords::tr("none");
  });
  row(InputWords::tr("Jacket it is compared with"), [&](const Rig& rig) {
    return rig.jacketIsCompared && !rig.hasJacket
               ? told(telling::jacketWords(rig.jacket, readerOf(units)), units)
               : QStringLiteral("–");
  });
  row(InputWords::tr("Element"), [&](const Rig& rig) { return elementText(rig, units); });
  row(InputWords::tr("Its highest point above the base"),
      [&](const Rig& rig) { return shown(rig.rig.element.topHeight, units); });
  row(InputWords::tr("Circuit"), circuitText);
  row(InputWords::tr("Second circuit"), [&](const Rig& rig) {
    if (!rig.rig.second) return QStringLiteral("–");
    return InputWords::tr("%1, %2").arg(shown(rig.rig.second->supply.nominal, units),
                                        shown(rig.rig.second->supply.rating, units));
  });
  row(InputWords::tr("Outlet"), outletText);
  row(InputWords::tr("Beside the element on the circuit"),
      [&](const Rig& rig) { return besideText(rig, units); });
  row(InputWords::tr("Cable, there and back"),
      [&](const Rig& rig) { return shown(rig.rig.supply.cableLoop, units); });
  row(InputWords::tr("Element's share used in the boil"),
      [&](const Rig& rig) { return shown(rig.rig.boilPower, units); });
  row(InputWords::tr("Factor on evaporation"),
      [&](const Rig& rig) { return shownNumber(rig.rig.evaporationFactor); });
  return table;
}

QStringList assumptions() {
  return {
      InputWords::tr(
          "The wort has one temperature throughout, and the metal it touches has the same."),
      InputWords::tr(
          "Outer surfaces are in balance with the heat that passes; what insulation stores "
          "is left out."),
      InputWords::tr(
          "Evaporation from hot open wort is the largest loss and the least certain, about "
          "±20 %."),
      InputWords::tr("Losses through the side are good to about ±15 % and biased low; a guessed "
                     "emissivity of bare steel adds more."),
      InputWords::tr(
          "Insulation has its published design values, ±10 to 30 %; damp or pressed, it is "
          "far worse."),
      InputWords::tr(
          "The supply has its nominal voltage. Real ones swing by up to ±10 %, the power by "
          "±20 %. The element's resistance is constant."),
      InputWords::tr("In the boil the temperature follows from air pressure and wort strength, and "
                     "water leaves by the balance of heat."),
      InputWords::tr(
          "The kettle's room stays as stated: it neither warms up nor steams up. What the "
          "vapour does to its air is a question of its own."),
      InputWords::tr(
          "Not modelled: rinse water, hops and trub, lifting the lid to stir, chilling."),
      InputWords::tr(
          "What a rig does compared with another one is better known than either alone: most "
          "errors are common to both.")};
}

}  // namespace gui
