// SPDX-License-Identifier: GPL-3.0-or-later
// Where it is brewed, and what a person aims at.
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

std::vector<Row> climate() {
  return {{.name = "altitude",
           .value = quantity(Length, "-430 m", "5200 m"),
           .need = Need::OneOf,
           .example = "120 m",
           .label = TOLD("PlanFields", "Altitude"),
           .meaning = TOLD("PlanFields",
                           "Above the sea in the standard atmosphere, -430 to 5200 m. It decides "
                           "when water boils. Stands instead of a pressure.")},
          {.name = "pressure",
           .value = quantity(Pressure, "50 kPa", "110 kPa"),
           .need = Need::OneOf,
           .example = "101.3 kPa",
           .label = TOLD("PlanFields", "or air pressure"),
           .meaning = TOLD("PlanFields",
                           "As it is at the place, not reduced to the sea; 50 to 110 kPa. Stands "
                           "instead of an altitude.")},
          {.name = "room",
           .value = quantity(Temperature, "-10 C", "50 C"),
           .need = Need::Required,
           .example = "20 °C",
           .label = TOLD("PlanFields", "Room"),
           .meaning = TOLD("PlanFields",
                           "Temperature of the air, -10 to 50 °C; the kettle starts as warm.")},
          {.name = "humidity",
           .value = share("1 %", "100 %"),
           .standard = "50 %",
           .example = "50 %",
           .label = TOLD("PlanFields", "Humidity"),
           .meaning = TOLD("PlanFields", "Relative humidity of the room, 1 to 100 %.")},
          {.name = "water",
           .value = quantity(Temperature, "0.5 C", "95 C"),
           .need = Need::Required,
           .example = "12 °C",
           .label = TOLD("PlanFields", "Water"),
           .meaning = TOLD("PlanFields", "Temperature of the water as drawn, 0.5 to 95 °C.")},
          {.name = "draught",
           .value = quantity(Velocity, "0 m/s", "5 m/s"),
           .standard = "0 m/s",
           .example = "0.1 m/s",
           .label = TOLD("PlanFields", "Draught"),
           .meaning = TOLD("PlanFields", "Speed of the air over an open kettle, 0 to 5 m/s.")},
          {.name = "cooling_water",
           .value = quantity(Temperature, "0.5 C", "60 C"),
           .example = "14 °C",
           .label = TOLD("PlanFields", "Cooling water"),
           .meaning = TOLD("PlanFields",
                           "Temperature of the water that chills the wort, 0.5 to 60 °C. Left "
                           "empty: as the water drawn for brewing."),
           .otherwise = TOLD("PlanFields", "as the water")}};
}

std::vector<Row> rules() {
  return {
      {.name = "region",
       .value = text(),
       .example = "Europe",
       .label = TOLD("PlanFields", "Region"),
       .meaning = TOLD("PlanFields",
                       "Whose rules judge the circuits. Left empty: all that may apply to each "
                       "rig's circuit. Local codes decide."),
       .otherwise = TOLD("PlanFields", "of the circuits")},
      {.name = "rules",
       .value = text("400"),
       .example = "my-region.json",
       .meaning = TOLD("PlanFields",
                       "A file beside the plan with rules of your own, in place of bundled ones.")},
      {.name = "edition",
       .value = text(),
       .example = "2009",
       .label = TOLD("PlanFields", "Edition"),
       .meaning = TOLD("PlanFields",
                       "Of the region's rules: the one that is bundled. A plan that names another "
                       "is refused instead of judged by this one."),
       .otherwise = TOLD("PlanFields", "the bundled one")},
      {.name = "air",
       .value = object(),
       .example = R"({"volume": "30 m3"})",
       .meaning = TOLD("PlanFields", "The room's size and airflow, for its humidity.")}};
}

Part place() {
  Part part{.places = {"/place"}, .rows = climate()};
  for (Row& row : rules()) part.rows.push_back(std::move(row));
  return part;
}

std::vector<Row> airflow() {
  return {{.name = "volume",
           .value = quantity(Volume, "2 m3", "1000 m3"),
           .need = Need::Required,
           .standard = "40 m3",
           .example = "30 m3",
           .label = TOLD("PlanFields", "Volume"),
           .meaning = TOLD("PlanFields",
                           "Of the room, 2 to 1000 m³. Left empty: an ordinary kitchen is assumed, "
                           "and said so.")},
          {.name = "air_changes",
           .value = number("0", "60"),
           .standard = "0.5",
           .example = "0.5",
           .label = TOLD("PlanFields", "Air changes an hour"),
           .meaning = TOLD("PlanFields",
                           "Plain number, 0 to 60: how often its air is exchanged with outdoors. "
                           "Stands instead of an airflow.")},
          {.name = "airflow",
           .value = quantity(VolumeFlow, "0 m3/h", "20000 m3/h"),
           .example = "170 m3/h",
           .label = TOLD("PlanFields", "or airflow"),
           .meaning = TOLD("PlanFields",
                           "Exchanged with outdoors, such as 200 m3/h or 120 ft3/min. Stands "
                           "instead of air changes.")}};
}

std::vector<Row> moisture() {
  return {
      {.name = "outdoors",
       .value = quantity(Temperature, "-20 C", "45 C"),
       .standard = "5 C",
       .example = "10 °C",
       .label = TOLD("PlanFields", "Outdoor air"),
       .meaning = TOLD("PlanFields", "Temperature outdoors, -20 to 45 °C.")},
      {.name = "outdoor_humidity",
       .value = share("1 %", "100 %"),
       .standard = "80 %",
       .example = "80 %",
       .label = TOLD("PlanFields", "Its humidity"),
       .meaning = TOLD("PlanFields", "Relative humidity outdoors, 1 to 100 %.")},
      {.name = "hood_captures",
       .value = share("0 %", "100 %"),
       .standard = "0 %",
       .example = "80 %",
       .label = TOLD("PlanFields", "Hood takes"),
       .meaning = TOLD("PlanFields",
                       "Share of the vapour that a hood leads outdoors before it mixes with the "
                       "room, 0 to 100 %.")},
      {.name = "hold_humidity",
       .value = share("20 %", "100 %"),
       .standard = "60 %",
       .example = "70 %",
       .label = TOLD("PlanFields", "Humidity to hold"),
       .meaning = TOLD("PlanFields", "What the airflow is to hold, 20 to 100 %.")},
      {.name = "window_u",
       .value = quantity(HeatTransferCoefficient, "0.3 W/(m2 K)", "7 W/(m2 K)"),
       .example = "2.8 W/(m2 K)",
       .label = TOLD("PlanFields", "Window"),
       .meaning = TOLD("PlanFields",
                       "Its U value, 0.3 to 7 W/(m2 K): tells when it gets wet inside. Left empty: "
                       "not told."),
       .otherwise = TOLD("PlanFields", "not told")}};
}

Part air() {
  Part part{.places = {"/place/air"}, .rows = airflow()};
  for (Row& row : moisture()) part.rows.push_back(std::move(row));
  return part;
}

Part goals() {
  return {
      .places = {"/goals"},
      .rows = {{.name = "boil_within",
                .value = quantity(Time, "1 min", "12 h"),
                .standard = "60 min",
                .example = "45 min",
                .label = TOLD("PlanFields", "Boil within"),
                .meaning = TOLD("PlanFields",
                                "Time wanted to strike, and from mash to boil; 1 min to 12 h.")},
               {.name = "boil_off",
                .value = quantity(FractionRate, "0.1 %/h", "50 %/h"),
                .standard = "8 %/h",
                .example = "8 %/h",
                .label = TOLD("PlanFields", "Boil-off"),
                .meaning = TOLD("PlanFields",
                                "Share of the volume before the boil that is to boil off, 0.1 "
                                "to 50 %/h.")},
               {.name = "headspace",
                .value = share("0 %", "80 %"),
                .standard = "10 %",
                .example = "10 %",
                .label = TOLD("PlanFields", "Headspace"),
                .meaning = TOLD("PlanFields", "Share of the vessel to be kept free, 0 to 80 %.")},
               {.name = "unplugged",
                .value = quantity(Time, "1 min", "48 h"),
                .standard = "8 h",
                .example = "8 h",
                .label = TOLD("PlanFields", "Left alone for"),
                .meaning = TOLD("PlanFields",
                                "How long the kettle is left alone for the question how far it "
                                "cools, 1 min to 48 h.")}}};
}

}  // namespace

std::vector<Part> placeParts() { return {place(), air(), goals()}; }

}  // namespace rigs::key_rows
