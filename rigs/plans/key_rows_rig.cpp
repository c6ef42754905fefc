// SPDX-License-Identifier: GPL-3.0-or-later
// A rig: its parts, the kettle, the lid, what it stands on and its jacket.
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/key_rows.hpp"

namespace rigs::key_rows {
namespace {

using enum QuantityKind;

constexpr std::string_view kLayers = R"([{"material": "cork", "thickness": "10 mm"}])";
constexpr std::string_view kSupply = R"({"voltage": "230 V", "current": "16 A"})";
constexpr std::string_view kCable = R"({"length": "5 m", "conductor": "2.5 mm2"})";
constexpr std::string_view kElement =
    R"({"power": "3000 W", "rated_voltage": "230 V", "top_height": "60 mm"})";

std::vector<Row> identity() {
  return {{.name = "name",
           .value = text(),
           .need = Need::Required,
           .example = "Old kettle",
           .meaning = TOLD("PlanFields", "One of its own for every rig.")},
          {.name = "from",
           .value = text("400"),
           .need = Need::OneOf,
           .example = "40 L steel kettle",
           .meaning = TOLD("PlanFields",
                           "A rig of the catalogue, or a file beside the plan that ends in .json: "
                           "what is not stated here is as there.")},
          {.name = "same_as",
           .value = text("1"),
           .need = Need::OneOf,
           .example = "b",
           .meaning = TOLD("PlanFields",
                           "The letter of another rig of this plan: what is not stated here is as "
                           "there and follows it, and null takes a key out.")},
          {.name = "letter",
           .value = text("1"),
           .example = "c",
           .meaning = TOLD("PlanFields",
                           "From a to z, one of its own for every rig: by it the rig is called "
                           "and looks in pictures. Without it the first that no other rig has.")},
          {.name = "about",
           .example = R"("a kettle on legs")",
           .meaning = TOLD("PlanFields", "One line, for readers.")},
          {.name = "source",
           .example = R"("the maker's drawing")",
           .meaning = TOLD("PlanFields", "Where the numbers are from, for readers.")},
          {.name = "format",
           .example = R"({"name": "heat-ledger-rig", "version": 1})",
           .meaning = TOLD("PlanFields", "Of a rig in a file of its own.")}};
}

std::vector<Row> parts() {
  return {
      {.name = "vessel",
       .value = object(),
       .need = Need::Required,
       .example = R"({"inner_diameter": "355 mm", "height": "400 mm"})",
       .meaning = TOLD("PlanFields", "The kettle.")},
      {.name = "stands_on",
       .value = object(),
       .example = R"({"kind": "legs"})",
       .meaning = TOLD("PlanFields", "What is under the kettle.")},
      {.name = "element",
       .value = object(),
       .need = Need::OneOf,
       .example = kElement,
       .meaning = TOLD("PlanFields", "The heater.")},
      {.name = "elements",
       .value = list("2", "6"),
       .need = Need::OneOf,
       .example = R"([{"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}, )"
                  R"({"power": "2 kW", "rated_voltage": "230 V", "top_height": "60 mm"}])",
       .meaning = TOLD("PlanFields", "Two to six heaters in place of one.")},
      {.name = "wired",
       .value = word({"parallel", "series", "two circuits"}),
       .need = Need::Paired,
       .example = "parallel",
       .label = TOLD("PlanFields", "Wired"),
       .meaning = TOLD("PlanFields",
                       "How two elements are fed: in parallel or in series on one circuit, or each "
                       "on a circuit of its own.")},
      {.name = "supply",
       .value = object(),
       .need = Need::Required,
       .example = kSupply,
       .meaning = TOLD("PlanFields", "The circuit.")},
      {.name = "cable",
       .value = objectOrNone(),
       .standard = "none",
       .example = kCable,
       .meaning = TOLD("PlanFields", "From the panel to the element.")},
      {.name = "second_supply",
       .value = object(),
       .example = kSupply,
       .meaning = TOLD("PlanFields", "The circuit of the second element, where there are two.")},
      {.name = "second_cable",
       .value = objectOrNone(),
       .example = kCable,
       .meaning = TOLD("PlanFields", "The cable of the second circuit.")},
      {.name = "pump",
       .value = objectOrNone(),
       .standard = "none",
       .example = R"({"power": "30 W"})",
       .meaning = TOLD("PlanFields", "A pump on the first circuit.")}};
}

std::vector<Row> extras() {
  return {
      {.name = "lid",
       .value = objectOrNone(),
       .standard = "none",
       .example = R"({"material": "stainless steel", "finish": "bright", )"
                  R"("open": {"boil": "35 %"}})",
       .meaning = TOLD("PlanFields", "The lid. Left out: open all day.")},
      {.name = "jacket",
       .value = objectOrNone(),
       .standard = "none",
       .example = R"({"side": [{"material": "cork", "thickness": "10 mm"}]})",
       .meaning = TOLD("PlanFields", "Insulation that the kettle wears.")},
      {.name = "recirculation",
       .value = objectOrNone(),
       .standard = "none",
       .example = R"({"hose_length": "1.5 m", "outer_diameter": "16 mm", "wall": "3 mm"})",
       .meaning = TOLD("PlanFields", "A hose outside, used while the mash is held.")},
      {.name = "chiller",
       .value = object(),
       .example = R"({"kind": "coil", "length": "7.5 m", "wort": "stirred"})",
       .meaning = TOLD("PlanFields",
                       "What chills the wort after the boil. Left out: a common coil is supposed "
                       "where somebody asks.")},
      {.name = "dead_band",
       .value = quantity(TemperatureDifference, "0 K", "10 K"),
       .standard = "0 K",
       .example = "1 K",
       .label = TOLD("PlanFields", "Dead band"),
       .meaning = TOLD("PlanFields",
                       "How far a held rest falls below its temperature before the controller "
                       "heats again, 0 to 10 K; it is half of that too cold on average.")},
      {.name = "boil_power",
       .value = share("5 %", "100 %"),
       .standard = "100 %",
       .example = "70 %",
       .label = TOLD("PlanFields", "Power in the boil"),
       .meaning = TOLD("PlanFields", "Share of the element's power used in the boil, 5 to 100 %.")},
      {.name = "evaporation_factor",
       .value = number("0.1", "5"),
       .standard = "1",
       .example = "1",
       .label = TOLD("PlanFields", "Evaporation factor"),
       .meaning = TOLD("PlanFields",
                       "Plain number on the law of the open surface, from a measured boil-off; "
                       "0.1 to 5.")},
      {.name = "loss_factor",
       .value = number("0.2", "5"),
       .standard = "1",
       .example = "1.1",
       .label = TOLD("PlanFields", "Loss factor"),
       .meaning = TOLD("PlanFields",
                       "Plain number on what walls, lid, base and hose lose, from a measured "
                       "cooling; 0.2 to 5.")},
      {.name = "measured",
       .value = object(),
       .example = R"({"losses_within": "8 %", "on": "2026-03-02"})",
       .meaning = TOLD("PlanFields",
                       "How sure both factors are, and where they are from: own readings.")}};
}

Part rig() {
  Part part{.places = {"/rigs/*"}, .rows = identity()};
  for (Row& row : parts()) part.rows.push_back(std::move(row));
  for (Row& row : extras()) part.rows.push_back(std::move(row));
  return part;
}

std::vector<Row> look(Marked material, Marked finish, Marked emissivity) {
  return {{.name = "material",
           .value = text(),
           .need = Need::Required,
           .example = "stainless steel",
           .label = TOLD("PlanFields", "Material"),
           .meaning = material},
          {.name = "finish",
           .value = text(),
           .need = Need::OneOf,
           .example = "brushed",
           .label = TOLD("PlanFields", "Finish"),
           .meaning = finish},
          {.name = "emissivity",
           .value = share("0.01", "1"),
           .need = Need::OneOf,
           .example = "0.3",
           .label = TOLD("PlanFields", "or emissivity"),
           .meaning = emissivity}};
}

Part vessel() {
  Part part{.places = {"/rigs/*/vessel"},
            .rows = look(TOLD("PlanFields", "What the kettle is made of."),
                         TOLD("PlanFields",
                              "How the metal looks, and so how it radiates. Stands instead of an "
                              "emissivity."),
                         TOLD("PlanFields",
                              "Share of a black body's radiation, 0.01 to 1. Stands instead of a "
                              "finish."))};
  const std::vector<Row> sizes{
      {.name = "inner_diameter",
       .value = quantity(Length, "80 mm", "2000 mm"),
       .need = Need::Required,
       .example = "355 mm",
       .label = TOLD("PlanFields", "Inner diameter"),
       .meaning = TOLD("PlanFields", "80 to 2000 mm.")},
      {.name = "height",
       .value = quantity(Length, "50 mm", "2500 mm"),
       .need = Need::Required,
       .example = "400 mm",
       .label = TOLD("PlanFields", "Inner height"),
       .meaning = TOLD("PlanFields", "From the base to the rim, inside; 50 to 2500 mm.")},
      {.name = "wall",
       .value = quantity(Length, "0.2 mm", "20 mm"),
       .need = Need::Required,
       .example = "1 mm",
       .label = TOLD("PlanFields", "Wall"),
       .meaning = TOLD("PlanFields", "Thickness of the metal, 0.2 to 20 mm.")},
      {.name = "mass",
       .value = quantity(Mass, "0.1 kg", "1000 kg"),
       .example = "5 kg",
       .label = TOLD("PlanFields", "Mass"),
       .meaning = TOLD("PlanFields",
                       "Of the shell without lid, 0.1 to 1000 kg; from size and material if not "
                       "stated. State it again when you change the size."),
       .otherwise = TOLD("PlanFields", "from the size")}};
  part.rows.insert(part.rows.end(), sizes.begin(), sizes.end());
  return part;
}

Part lid() {
  Part part{.places = {"/rigs/*/lid"},
            .rows = look(TOLD("PlanFields", "What the lid is made of, or none: open all day."),
                         TOLD("PlanFields",
                              "How it looks, and so how it radiates. Stands instead of an "
                              "emissivity."),
                         TOLD("PlanFields", "0.01 to 1. Stands instead of a finish."))};
  part.rows.front().otherwise = TOLD("PlanFields", "no lid");
  part.rows.push_back({.name = "thickness",
                       .value = quantity(Length, "0.2 mm", "100 mm"),
                       .example = "10 mm",
                       .label = TOLD("PlanFields", "Thickness"),
                       .meaning = TOLD("PlanFields",
                                       "0.2 to 100 mm; as thin as the wall if not stated. It "
                                       "matters for wood and plastic."),
                       .otherwise = TOLD("PlanFields", "as the wall")});
  part.rows.push_back(
      {.name = "open",
       .value = object(),
       .example = R"({"strike": "0 %", "boil": "35 %"})",
       .meaning = TOLD("PlanFields", "Share of the mouth that is open, stage by stage.")});
  part.rows.push_back({.name = "gap",
                       .value = share("0 %", "20 %"),
                       .standard = "2 %",
                       .example = "2 %",
                       .meaning = TOLD("PlanFields",
                                       "What the shut lid lets out all round, 0 to 20 % of the "
                                       "mouth; 0 % for a lid that fits.")});
  return part;
}

Part open() {
  constexpr Marked kMeaning = TOLD("PlanFields",
                                   "Share of the mouth that is open in this stage, 0 to 100 %. "
                                   "Never shut the lid on a boil.");
  const auto stage = [&](std::string_view name, std::string_view standard, std::string_view example,
                         Marked label) {
    return Row{.name = name,
               .value = share("0 %", "100 %"),
               .standard = standard,
               .example = example,
               .label = label,
               .meaning = kMeaning};
  };
  return {.places = {"/rigs/*/lid/open"},
          .rows = {stage("strike", "0 %", "0 %", TOLD("PlanFields", "Open at strike")),
                   stage("mash", "0 %", "0 %", TOLD("PlanFields", "Open at mash")),
                   stage("heating", "0 %", "0 %", TOLD("PlanFields", "Open at heating")),
                   stage("boil", "100 %", "35 %", TOLD("PlanFields", "Open at the boil"))}};
}

Part stand() {
  return {.places = {"/rigs/*/stands_on"},
          .rows = {{.name = "kind",
                    .value = word({"table", "thick floor", "legs"}),
                    .need = Need::Required,
                    .standard = "table",
                    .example = "table",
                    .label = TOLD("PlanFields", "Kind"),
                    .meaning = TOLD("PlanFields", "What is under the kettle.")},
                   {.name = "material",
                    .value = text(),
                    .need = Need::Paired,
                    .standard = "plywood",
                    .example = "pine",
                    .label = TOLD("PlanFields", "Material"),
                    .meaning = TOLD("PlanFields", "Of the table or the floor.")},
                   {.name = "thickness",
                    .value = quantity(Length, "1 mm", "200 mm"),
                    .need = Need::Paired,
                    .standard = "25 mm",
                    .example = "25 mm",
                    .label = TOLD("PlanFields", "Thickness"),
                    .meaning = TOLD("PlanFields", "Of a table, 1 to 200 mm.")}}};
}

Part jacket() {
  const auto layers = [](std::string_view face, Marked meaning) {
    return Row{.name = face, .value = list("1", "10"), .example = kLayers, .meaning = meaning};
  };
  Part part{
      .places = {"/jacket_to_compare", "/rigs/*/jacket"},
      .rows = {
          layers("side", TOLD("PlanFields", "Layers around the side, from the metal outwards.")),
          layers("base", TOLD("PlanFields", "Layers below the base, from the metal outwards.")),
          layers("lid", TOLD("PlanFields", "Layers on the lid, from the metal outwards."))}};
  Row outside{.name = "outside",
              .value = {.kind = ValueKind::WordOrShare, .least = "0.01", .most = "1"},
              .example = "0.9",
              .label = TOLD("PlanFields", "Outside"),
              .meaning = TOLD("PlanFields",
                              "How the outside radiates; as the outermost layer if not stated."),
              .otherwise = TOLD("PlanFields", "as the layer")};
  for (const Finish& finish : catalogue().outsides) outside.value.words.push_back(finish.word);
  part.rows.push_back(std::move(outside));
  return part;
}

Part layer() {
  constexpr Marked kAmount = TOLD("PlanFields", "Thickness or R");
  constexpr Marked kMeaning =
      TOLD("PlanFields",
           "Thickness of the layer, 0.1 to 300 mm; or its thermal resistance as stated by the "
           "maker, such as R 1.8 (US) or 0.3 m2*K/W, 0.001 to 20 m²·K/W.");
  return {
      .places = {"/jacket_to_compare/side/*", "/jacket_to_compare/base/*",
                 "/jacket_to_compare/lid/*", "/rigs/*/jacket/side/*", "/rigs/*/jacket/base/*",
                 "/rigs/*/jacket/lid/*", "/rigs/*/recirculation/insulation/*"},
      .rows = {{.name = "material",
                .value = text(),
                .need = Need::OneOf,
                .example = "cork",
                .label = TOLD("PlanFields", "Side layer %1"),
                .meaning =
                    TOLD("PlanFields", "Material of this layer, counted from the metal outwards.")},
               {.name = "thickness",
                .value = quantity(Length, "0.1 mm", "300 mm"),
                .need = Need::OneOf,
                .example = "10 mm",
                .label = kAmount,
                .meaning = kMeaning},
               {.name = "R",
                .value = quantity(ThermalInsulance, "0.001 m2*K/W", "20 m2*K/W"),
                .need = Need::OneOf,
                .example = "R 1.8",
                .label = kAmount,
                .meaning = kMeaning}},
      .own = {
          {.place = "/jacket_to_compare/base/*/material",
           .label = TOLD("PlanFields", "Base layer %1")},
          {.place = "/jacket_to_compare/lid/*/material",
           .label = TOLD("PlanFields", "Lid layer %1")},
          {.place = "/rigs/*/jacket/base/*/material", .label = TOLD("PlanFields", "Base layer %1")},
          {.place = "/rigs/*/jacket/lid/*/material", .label = TOLD("PlanFields", "Lid layer %1")},
          {.place = "/rigs/*/recirculation/insulation/*/material",
           .label = TOLD("PlanFields", "Wrap %1")}}};
}

}  // namespace

std::vector<Part> rigParts() {
  return {rig(), vessel(), lid(), open(), stand(), jacket(), layer()};
}

}  // namespace rigs::key_rows
