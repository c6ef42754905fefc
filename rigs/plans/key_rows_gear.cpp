// SPDX-License-Identifier: GPL-3.0-or-later
// What a rig may have besides: a hose, a chiller, and what its owner measured of it.
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

Part measured() {
  return {
      .places = {"/rigs/*/measured"},
      .rows = {{.name = "losses_within",
                .value = share("1 %", "100 %"),
                .example = "8 %",
                .label = TOLD("PlanFields", "Losses within"),
                .meaning = TOLD("PlanFields",
                                "8 times in 10 the loss factor is right to this share, 1 to "
                                "100 %."),
                .otherwise = TOLD("PlanFields", "as unsure as unmeasured")},
               {.name = "surface_within",
                .value = share("1 %", "100 %"),
                .example = "15 %",
                .label = TOLD("PlanFields", "Evaporation within"),
                .meaning = TOLD("PlanFields",
                                "8 times in 10 the evaporation factor is right to this share, 1 "
                                "to 100 %."),
                .otherwise = TOLD("PlanFields", "as unsure as unmeasured")},
               {.name = "jacket",
                .value = text("1000"),
                .example = "side 10 mm cork",
                .meaning = TOLD("PlanFields",
                                "What it wore when it was read, \"\" for nothing: with another "
                                "jacket the loss factor counts for less.")},
               {.name = "on",
                .value = text("40"),
                .example = "2026-03-02",
                .meaning = TOLD("PlanFields", "The day of the readings, for readers.")},
               {.name = "readings",
                .value = text("2000"),
                .example = "night.csv, 5 lines (1f0c33ab)",
                .meaning = TOLD("PlanFields",
                                "Which readings are in it, with the mark by which they are known "
                                "again.")}}};
}

Part hose() {
  return {.places = {"/rigs/*/recirculation"},
          .rows = {{.name = "hose_length",
                    .value = quantity(Length, "0 m", "20 m"),
                    .need = Need::Required,
                    .example = "1.5 m",
                    .label = TOLD("PlanFields", "Length"),
                    .meaning = TOLD("PlanFields",
                                    "Of the hose used while the mash is held, 0 to 20 m. Left "
                                    "empty: no hose."),
                    .otherwise = TOLD("PlanFields", "no hose")},
                   {.name = "outer_diameter",
                    .value = quantity(Length, "4 mm", "100 mm"),
                    .need = Need::Required,
                    .example = "16 mm",
                    .label = TOLD("PlanFields", "Outer diameter"),
                    .meaning = TOLD("PlanFields", "4 to 100 mm.")},
                   {.name = "wall",
                    .value = quantity(Length, "0.3 mm", "20 mm"),
                    .need = Need::Required,
                    .example = "3 mm",
                    .label = TOLD("PlanFields", "Wall"),
                    .meaning = TOLD("PlanFields", "0.3 to 20 mm.")},
                   {.name = "material",
                    .value = text(),
                    .standard = "silicone",
                    .example = "silicone",
                    .label = TOLD("PlanFields", "Material"),
                    .meaning = TOLD("PlanFields", "What the hose is made of.")},
                   {.name = "insulation",
                    .value = list("1", "10"),
                    .example = R"([{"material": "cork", "thickness": "10 mm"}])",
                    .meaning = TOLD("PlanFields", "Layers around the hose.")},
                   {.name = "returns",
                    .value = word({"above the wort", "below the wort"}),
                    .standard = "above the wort",
                    .example = "below the wort",
                    .label = TOLD("PlanFields", "Returns"),
                    .meaning = TOLD("PlanFields",
                                    "Where it ends: above the wort it stirs the surface, which "
                                    "then evaporates more.")},
                   {.name = "flow",
                    .value = quantity(VolumeFlow, "0.2 L/min", "100 L/min"),
                    .example = "4 L/min",
                    .label = TOLD("PlanFields", "Flow"),
                    .meaning = TOLD("PlanFields",
                                    "Through the mash, 0.2 to 100 L/min: a ramp takes longer by "
                                    "what that needs to exchange the wort."),
                    .otherwise = TOLD("PlanFields", "the mash follows at once")},
                   {.name = "pump_heat",
                    .value = quantity(Power, "0 W", "500 W"),
                    .standard = "0 W",
                    .example = "25 W",
                    .label = TOLD("PlanFields", "Heat of the pump"),
                    .meaning = TOLD("PlanFields",
                                    "What of the pump's power ends in the wort while it runs, 0 "
                                    "to 500 W.")}}};
}

Part chiller() {
  return {
      .places = {"/rigs/*/chiller"},
      .rows = {{.name = "kind",
                .value = word({"coil", "counterflow", "air"}),
                .standard = "coil",
                .example = "coil",
                .label = TOLD("PlanFields", "Kind"),
                .meaning = TOLD("PlanFields",
                                "A coil in the kettle, a tube in a hose that the wort runs "
                                "through once, or air alone.")},
               {.name = "material",
                .value = word({"copper", "stainless steel"}),
                .standard = "copper",
                .example = "stainless steel",
                .label = TOLD("PlanFields", "Material"),
                .meaning = TOLD("PlanFields", "Of the tube.")},
               {.name = "tube",
                .value = quantity(Length, "4 mm", "40 mm"),
                .standard = "9.5 mm",
                .example = "12.7 mm",
                .label = TOLD("PlanFields", "Tube"),
                .meaning = TOLD("PlanFields", "Its outer diameter, 4 to 40 mm.")},
               {.name = "length",
                .value = quantity(Length, "0.5 m", "60 m"),
                .standard = "7.5 m",
                .example = "15 m",
                .label = TOLD("PlanFields", "Length"),
                .meaning = TOLD("PlanFields",
                                "Of the tube in the wort, 0.5 to 60 m, and no more than the "
                                "kettle has room for.")},
               {.name = "wort",
                .value = word({"still", "stirred"}),
                .standard = "still",
                .example = "stirred",
                .label = TOLD("PlanFields", "Wort"),
                .meaning = TOLD("PlanFields",
                                "Whether it is stirred round a coil all the time, or left "
                                "still.")},
               {.name = "water_flow",
                .value = quantity(VolumeFlow, "0.2 L/min", "60 L/min"),
                .standard = "8 L/min",
                .example = "6 L/min",
                .label = TOLD("PlanFields", "Water flow"),
                .meaning = TOLD("PlanFields", "Through the chiller, 0.2 to 60 L/min.")},
               {.name = "wort_flow",
                .value = quantity(VolumeFlow, "0.2 L/min", "30 L/min"),
                .standard = "3 L/min",
                .example = "2.5 L/min",
                .label = TOLD("PlanFields", "Wort flow"),
                .meaning = TOLD("PlanFields", "Through a counterflow chiller, 0.2 to 30 L/min.")}}};
}

}  // namespace

std::vector<Part> gearParts() { return {hose(), chiller(), measured()}; }

}  // namespace rigs::key_rows
