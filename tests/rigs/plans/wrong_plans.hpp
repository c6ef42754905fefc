// SPDX-License-Identifier: GPL-3.0-or-later
// Plans that are wrong, each with what a person must be told about it.
#pragma once

#include <string>
#include <vector>

#include "rigs/documents/problems.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace test_support {

struct Wrong {
  std::string document;
  rigs::Severity severity;
  std::string where;
  std::string says;  // part of the sentence
};

inline constexpr rigs::Severity kError = rigs::Severity::Error;
inline constexpr rigs::Severity kWarning = rigs::Severity::Warning;

inline std::string readyBy(const Json& ready) {
  return demoWith({{"/day_starts", removed()}, {"/ready", ready}});
}

// 500 g of sugar 10 min before the end of the boil, but for what is said.
inline std::string adding(const Json& changed) {
  Json addition = {
      {"what", "sugar"}, {"mass", "500 g"}, {"extract", "100 %"}, {"before_end", "10 min"}};
  addition.merge_patch(changed);
  return demoWith({{"/batch/additions", Json::array({addition})}});
}

inline std::vector<Wrong> wrongAdditions() {
  const std::string at = "/batch/additions/0";
  return {
      {adding({{"before_end", "2 h"}}), kError, at + "/before_end",
       "2 h before the end is before the boil begins, which lasts 1 h 10 min; accepted is 0 min to "
       "1 h 10 min, e.g. \"before_end\": \"10 min\""},
      {adding({{"mass", "-1 kg"}}), kError, at + "/mass", "1 g to 500 kg"},
      {adding({{"mass", "900 kg"}}), kError, at + "/mass", "1 g to 500 kg"},
      {adding({{"extract", "120 %"}}), kError, at + "/extract", "100 %"},
      {adding({{"extract", nullptr}}), kError, at + "/extract", "missing"},
      {adding({{"temperature", "99 C"}}), kError, at + "/temperature",
       "an addition at 99 °C is not possible: water boils at 97 °C here"},
      {adding({{"water", "2 L"}}), kError, at, "keep one"},
      {adding({{"mass", nullptr}}), kError, at, "\"mass\": \"500 g\""},
      {adding({{"mass", nullptr}, {"water", "2 L"}}), kError, at + "/extract",
       "water has no extract, but 100 % are stated"},
      {demoWith({{"/batch/boil", "0 min"},
                 {"/batch/additions",
                  Json::array({{{"what", "water"}, {"water", "1 L"}, {"before_end", "0 min"}}})}}),
       kError, at, "there is no boil for it to go into"},
      {adding({{"what", nullptr}}), kError, at + "/what", "missing"},
      {adding({{"mass", "90 kg"}, {"extract", "0 %"}}), kError, at, "does not fit"},
  };
}

// 4 L at 75 C, but for what is said.
inline std::string rinsing(const Json& changed) {
  Json rinse = {{"volume", "4 L"}, {"temperature", "75 C"}, {"heated", "not electric"}};
  rinse.merge_patch(changed);
  return demoWith({{"/batch/rinse", rinse}});
}

inline std::vector<Wrong> wrongLifts() {
  const std::string at = "/batch/rinse";
  return {
      {rinsing({{"volume", "0 L"}}), kError, at + "/volume", "0.1 L to 500 L"},
      {rinsing({{"volume", nullptr}}), kError, at + "/volume", "missing"},
      {rinsing({{"temperature", nullptr}}), kError, at + "/temperature", "missing"},
      {rinsing({{"temperature", "99 C"}}), kError, at + "/temperature",
       "rinsing water at 99 °C is not possible: water boils at 97 °C here"},
      {rinsing({{"temperature", "2 C"}}), kError, at + "/temperature",
       "is colder than it is drawn"},
      {rinsing({{"heated", nullptr}}), kError, at + "/heated", "missing"},
      {rinsing({{"heated", "on the stove"}}), kError, at + "/heated", "another circuit"},
      {rinsing({{"power", "2 kW"}}), kWarning, at + "/power", "has no use for this"},
      {rinsing({{"efficiency", "10 %"}}), kError, at + "/efficiency", "30 % to 100 %"},
      {rinsing({{"volume", "200 L"}}), kError, at + "/volume", "too little of the water"},
      {demoWith({{"/batch/drain", {{"time", "3 h"}}}}), kError, "/batch/drain/time",
       "1 min to 2 h"},
      {demoWith({{"/batch/drain", {{"time", "0 min"}}}}), kError, "/batch/drain/time",
       "1 min to 2 h"},
      {demoWith({{"/batch/drain", {{"time", "9 min"}, {"element", "half"}}}}), kError,
       "/batch/drain/element", "\"off\""},
      {demoWith({{"/batch/grain", removed()},
                 {"/batch/mash", removed()},
                 {"/batch/drain", {{"time", "9 min"}}}}),
       kWarning, "/batch/drain", "there is no grain to lift"},
  };
}

inline std::vector<Wrong> wrongBatches() {
  return {
      {demoWith({{"/batch/wort", 23}}), kError, "/batch/wort", "\"23 L\""},
      {demoWith({{"/batch/wort", "23 kg"}}), kError, "/batch/wort", "volume"},
      {demoWith({{"/batch/wort", "23000 L"}}), kError, "/batch/wort", "0.5 L to 2000 L"},
      {demoWith({{"/batch/wort", removed()}}), kError, "/batch", "\"wort\": \"23 L\""},
      {demoWith({{"/batch/water", "30 L"}}), kError, "/batch", "keep one"},
      {demoWith({{"/batch/boil", removed()}}), kError, "/batch/boil", "missing"},
      {demoWith({{"/batch/grain/mass", "12 kg"}, {"/batch/wort", "10 L"}}), kError, "/batch/grain",
       "12 kg of grain in about 19.6 L of water give a wort of 30.6 % extract"},
      {demoWith({{"/batch/grain/extract", "90 %"}, {"/batch/grain/moisture", "12 %"}}), kError,
       "/batch/grain/extract", "90 % and a moisture of 12 % are more than the whole grain"},
      {demoWith({{"/batch/grain/absorption", "3 L/kg"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "16 L"}}),
       kError, "/batch/water", "the grain keeps 15.6 L"},
      {demoWith({{"/batch/grain/mass", "9.6 kg"},
                 {"/batch/grain/extract", "40 %"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "17 L"}}),
       kWarning, "/batch/grain", "1.77 L/kg of water to grain is too thick"},
      {demoWith({{"/batch/grain/mass", "15 kg"},
                 {"/batch/grain/extract", "20 %"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "16 L"}}),
       kError, "/batch/grain", "1.07 L/kg of water to grain is no mash"},
      {demoWith({{"/batch/mash", removed()}}), kError, "/batch/mash", "missing"},
      {demoWith({{"/batch/grain", removed()}}), kWarning, "/batch/mash", "no grain"},
      {demoWith({{"/batch/mash/unplugged", {{"temperature", "66 C"}, {"time", "8 h"}}}}), kError,
       "/batch/mash", "keep one"},
      {demoWith({{"/batch/mash/rests", removed()}}), kError, "/batch/mash", "neither"},
      {demoWith({{"/batch/mash/rests", Json::array()}}), kError, "/batch/mash/rests",
       "1 to 12 are accepted"},
      {demoWith({{"/batch/mash/rests/1/temperature", "60 C"}}), kWarning,
       "/batch/mash/rests/1/temperature", "60 °C does not rise above the rest before, at 66 °C"},
      // 97.0 C is the boiling point at 900 m.
      {demoWith({{"/batch/mash/rests/1/temperature", "96.5 C"}}), kError,
       "/batch/mash/rests/1/temperature", "water boils at 97 °C here"},
      {demoWith({{"/batch/mash/rests/0/temperature", "94 C"}}), kError, "/batch/mash",
       "it boils at 97 °C here"},
      {demoWith({{"/batch/boil", "6 h"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "12 L"},
                 {"/batch/grain/mass", "1 kg"}}),
       kError, "/rigs/1/element", "the boil is longer than the water lasts"},
      // A wort of that much extract is a syrup long before the outside heater runs dry.
      {demoWith({{"/batch/boil", "12 h"},
                 {"/batch/wort", removed()},
                 {"/batch/water", "20 L"},
                 {"/batch/grain/mass", "5 kg"},
                 {"/rigs/1/element/power", "4000 W"},
                 {"/rigs/1/element/rated_voltage", "120 V"},
                 {"/rigs/1/element/top_height", "0 mm"}}),
       kError, "/rigs/1/element", "a syrup of more than 60 % extract, which burns on the element"},
      {demoWith(
           {{"/batch/wort", removed()}, {"/batch/water", "5 L"}, {"/batch/grain/mass", "1 kg"}}),
       kError, "/rigs/0/element", "needs at least 6.43 L"},
      {demoWith(
           {{"/batch/wort", removed()}, {"/batch/water", "5 L"}, {"/batch/grain/mass", "1 kg"}}),
       kError, "/rigs/0/element",
       "the element would run dry during heating the strike water: only "},
      {demoWith({{"/batch/wort", removed()}, {"/batch/water", "5 L"}, {"/batch/grain", removed()}}),
       kError, "/rigs/0/element", "would run dry during heating to the boil: only "},
      // An open kettle loses litres of its mash in a day, until the element stands out of it.
      {demoWith({{"/batch/wort", removed()},
                 {"/batch/water", "8 L"},
                 {"/batch/grain/mass", "1 kg"},
                 {"/batch/mash/rests/0/time", "24 h"},
                 {"/rigs/1/lid", "none"}}),
       kError, "/rigs/1/element", "would run dry during the mash rest: only "},
      {demoWith({{"/batch/mash/rests", removed()},
                 {"/batch/mash/unplugged", {{"temperature", "98 C"}, {"time", "8 h"}}}}),
       kError, "/batch/mash/unplugged/temperature", "water boils at 97 °C here"},
  };
}

inline std::vector<Wrong> wrongPlaces() {
  return {
      {demoWith({{"/place/pressure", "91 kPa"}}), kError, "/place/altitude", "keep one"},
      {demoWith({{"/place/altitude", removed()}}), kError, "/place", "\"altitude\": \"120 m\""},
      {demoWith({{"/place/altitude", "9000 m"}}), kError, "/place/altitude", "-430 m to 5200 m"},
      {demoWith({{"/place/humidity", "0 %"}}), kError, "/place/humidity", "1 % to 100 %"},
      {demoWith({{"/place/water", "90 C"}}), kError, "/place/water", "hotter than strike water"},
      {demoWith({{"/place/room", "68"}}), kError, "/place/room", "°C"},
      {demoWith({{"/tariff/price", "28 ct"}}), kError, "/tariff/price", "\"0.28 EUR/kWh\""},
      {demoWith({{"/tariff/price", "EUR/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/price", "0.28/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/price", "-1 EUR/kWh"}}), kError, "/tariff/price", "is negative"},
      {demoWith({{"/tariff/price", "1 2 EUR/kWh"}}), kError, "/tariff/price", "no price"},
      {demoWith({{"/tariff/dated", "last year"}}), kError, "/tariff/dated", "\"2026-01\""},
      {demoWith({{"/tariff/dated", "2026-13"}}), kError, "/tariff/dated", "no date"},
      {demoWith({{"/day_starts", "24:00"}}), kError, "/day_starts", "23:59"},
      {demoWith({{"/day_starts", "nine"}}), kError, "/day_starts", "no time of day"},
      {demoWith({{"/ready", {{"what", "boil"}, {"at", "11:00"}}}}), kError, "/ready",
       "write one of \"day_starts\" and \"ready\""},
      {readyBy({{"what", "rolling"}, {"at", "11:00"}}), kError, "/ready/what", "\"end of boil\""},
      {readyBy({{"at", "11:00"}}), kError, "/ready/what", "missing"},
      {readyBy({{"what", "boil"}}), kError, "/ready/at", "missing"},
      {readyBy({{"what", "boil"}, {"at", "24:00"}}), kError, "/ready/at", "23:59"},
      {readyBy({{"what", "boil"}, {"at", 11}}), kError, "/ready/at", "\"11:00\""},
      {readyBy("11:00"), kError, "/ready", "\"what\": \"boil\""},
      {readyBy({{"what", "boil"}, {"at", "11:00"}, {"when", "soon"}}), kWarning, "/ready/when",
       "not known"},
      {readyBy({{"what", "pitching"}, {"at", "19:00"}}), kError, "/ready/what",
       "\"chiller\": {\"kind\": \"coil\"}"},
      {demoWith({{"/day_starts", removed()},
                 {"/ready", {{"what", "end of mash"}, {"at", "11:00"}}},
                 {"/batch/grain", removed()},
                 {"/batch/mash", removed()}}),
       kError, "/ready/what", "this plan mashes nothing"},
      {demoWith({{"/goals/boil_off", "8 %"}}), kError, "/goals/boil_off", "%/h"},
      {demoWith({{"/format", removed()}}), kError, "/format", "heat-ledger-plan"},
      {demoWith({{"/format/version", 2}}), kError, "/format/version", "understands version 1"},
      {demoWith({{"/format/name", "recipe"}}), kError, "/format/name", "heat-ledger-plan"},
      {demoWith({{"/tarif", 1}, {"/tariff", removed()}}), kWarning, "/tarif",
       "perhaps \"tariff\" was meant"},
      {"", kError, "", "empty"},
      {"[]", kError, "", "an object is needed"},
      {"{\"title\": \"a\"", kError, "", "ends too early"},
  };
}

inline std::vector<Wrong> wrongRigs() {
  const Json cork = Json::array({{{"material", "cork"}, {"thickness", "10 mm"}}});
  const Json nothing = Json::array({{{"material", "cork"}, {"thickness", "0 mm"}}});
  const Json small{{"power", "500 W"}, {"rated_voltage", "120 V"}, {"top_height", "50 mm"}};
  return {
      {demoWith({{"/rigs", Json::array()}}), kError, "/rigs", "1 to 12 are accepted"},
      {demoWith({{"/rigs/3/name", "New element, kitchen"}}), kError, "/rigs/3/name",
       "two rigs are called \"New element, kitchen\""},
      {demoWith({{"/rigs/0/from", "40 L stel kettle"}}), kError, "/rigs/0/from",
       "perhaps \"40 L steel kettle\" was meant"},
      {demoWith({{"/rigs/0/from", "../x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "a/../../x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "/etc/x.json"}}), kError, "/rigs/0/from", "out of the plan's"},
      {demoWith({{"/rigs/0/from", "x.json"}}), kError, "/rigs/0/from", "is not there"},
      {demoWith({{"/rigs/0/vessel/finish", "shiny"}}), kError, "/rigs/0/vessel/finish",
       "one of \"bright\", \"brushed\", \"dull\", \"painted\""},
      {demoWith({{"/rigs/0/vessel/emissivity", 0.3}}), kError, "/rigs/0/vessel/emissivity",
       "keep one"},
      {demoWith({{"/rigs/0/vessel/material", "cork"}}), kError, "/rigs/0/vessel/material",
       "no known material for a vessel"},
      {demoWith({{"/rigs/0/vessel/mass", "40 kg"}}), kWarning, "/rigs/0/vessel/mass",
       "far from the 3.48 kg"},
      {demoWith({{"/rigs/1/element/top_height", "500 mm"}}), kError, "/rigs/1/element",
       "50 cm is not below the vessel's rim at 40.5 cm"},
      // 120 V on 208 V: (208/120)^2 is 3.0; 140 V: 1.36; 125 V: 1.085, which is ordinary.
      {demoWith({{"/rigs/1/supply/from", "North America 208 V 30 A"}}), kError, "/rigs/1/supply",
       "an element of 120 V on 208 V would give 3 times its rated power"},
      {demoWith({{"/rigs/1/supply/voltage", "140 V"}}), kError, "/rigs/1/supply",
       "an element of 120 V on 140 V would give 1.36 times"},
      {demoWith({{"/rigs/1/element/rated_voltage", "115 V"}}), kWarning, "/rigs/1/supply",
       "an element of 115 V on 120 V gives 1.09 times"},
      {demoWith({{"/rigs/1/supply/from", "Nort America 120 V 15 A"}}), kError,
       "/rigs/1/supply/from", "perhaps \"North America 120 V 15 A\" was meant"},
      {demoWith({{"/rigs/1/cable/loop_resistance", "0.1 ohm"}}), kError, "/rigs/1/cable/length",
       "keep one"},
      {demoWith({{"/rigs/1/cable", {{"loop_resistance", "12 ohm"}}}}), kError,
       "/rigs/1/cable/loop_resistance", "accepted is 0 Ω to 10 Ω"},
      {demoWith({{"/rigs/1/element", removed()},
                 {"/rigs/1/elements", Json::array({small, small, small})},
                 {"/rigs/1/wired", "two circuits"}}),
       kError, "/rigs/1/elements", "two circuits feed two elements, not 3"},
      {demoWith({{"/rigs/1/pump", {{"power", "6 kW"}}}}), kError, "/rigs/1/pump/power",
       "accepted is 1 W to 5 kW"},
      {demoWith({{"/rigs/1/cable/length", "150 m"}}), kWarning, "/rigs/1/cable", "as heat"},
      {demoWith({{"/rigs/2/lid", "none"}}), kError, "/rigs/2/jacket/lid", "the rig has none"},
      {demoWith({{"/rigs/2/lid/open/boil", "0 %"}}), kWarning, "/rigs/2/lid/open/boil",
       "never boil under a closed lid"},
      {demoWith({{"/rigs/2/jacket", Json::object()}}), kError, "/rigs/2/jacket", "around nothing"},
      {demoWith({{"/rigs/2/jacket/side", Json::array()}}), kError, "/rigs/2/jacket/side",
       "this list of layers is empty"},
      {demoWith({{"/rigs/2/jacket/side", nothing}}), kError, "/rigs/2/jacket/side/0/thickness",
       "accepted is 0.1 mm to 300 mm"},
      {demoWith({{"/rigs/2/jacket/outside", "foul"}}), kError, "/rigs/2/jacket/outside",
       "perhaps \"foil\" was meant"},
      {demoWith({{"/rigs/2/jacket/side/0/material", "corc"}}), kError,
       "/rigs/2/jacket/side/0/material", "perhaps \"cork\" was meant"},
      {demoWith({{"/jacket_to_compare/sides", cork}}), kWarning, "/jacket_to_compare/sides",
       "no effect"},
      {demoWith({{"/rigs/0/stands_on", {{"kind", "tabel"}}}}), kError, "/rigs/0/stands_on/kind",
       "perhaps \"table\" was meant"},
      {demoWith({{"/rigs/0/recirculation",
                  {{"hose_length", "1 m"}, {"outer_diameter", "10 mm"}, {"wall", "5 mm"}}}}),
       kError, "/rigs/0/recirculation/wall", "no room for wort"},
      {demoWith({{"/batch/wort", "60 L"}}), kError, "/rigs/0/vessel",
       "and the vessel holds 40.1 L"},
  };
}

}  // namespace test_support
