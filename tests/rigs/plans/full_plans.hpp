// SPDX-License-Identifier: GPL-3.0-or-later
// Plans that together state every key there is: keys that stand in place of each other stand in
// different rigs, or in different plans.
#pragma once

#include <nlohmann/json.hpp>
#include <vector>

namespace test_support {

using FullPlan = nlohmann::ordered_json;

inline FullPlan parsed(const char* text) { return FullPlan::parse(text); }

inline FullPlan fullTariff() {
  return parsed(R"json({
    "price": "0.28 EUR/kWh", "used_this_month": "100 kWh", "day": "weekday", "rebate": "5 %",
    "brew_from": "06:00", "brew_until": "20:00", "brews_per_year": 20, "jacket_price": 40,
    "element_price": 50, "co2_per_kWh": "0.4 kg", "co2_source": "a report", "dated": "2026-01",
    "name": "Day and night", "source": "a price list", "status": "published",
    "region": "Ontario", "about": "energy alone",
    "format": {"name": "heat-ledger-tariff", "version": 1}})json");
}

inline FullPlan fullBatch() {
  return parsed(R"json({
    "wort": "20 L",
    "grain": {"mass": "5 kg", "temperature": "19 C", "moisture": "4 %", "extract": "70 %",
              "absorption": "0.9 L/kg", "displacement": "0.7 L/kg",
              "specific_heat": "1600 J/(kg K)", "slaking_heat": "17 kJ/kg"},
    "mash": {"rests": [{"temperature": "65 C", "time": "50 min"},
                       {"temperature": "76 C", "time": "10 min"}]},
    "additions": [{"what": "candy syrup", "mass": "600 g", "extract": "78 %",
                   "temperature": "21 C", "before_end": "15 min"},
                  {"what": "hot water", "water": "2 L", "before_end": "0 min"}],
    "rinse": {"volume": "3 L", "temperature": "74 C", "heated": "same circuit", "power": "1.5 kW",
              "efficiency": "80 %", "reached": "40 %"},
    "drain": {"time": "12 min", "element": "on"},
    "mashing_in": "6 min", "boil": "70 min", "hot_stand": "10 min",
    "pitching_temperature": "19 C"
})json");
}

inline FullPlan fullPlace() {
  return parsed(R"json({
    "altitude": "300 m", "room": "18 C", "humidity": "55 %", "water": "11 C",
    "draught": "0.2 m/s", "cooling_water": "13 C", "region": "Europe", "rules": "my-region.json", "edition": "2009",
    "air": {"volume": "50 m3", "air_changes": 1, "outdoors": "4 C", "outdoor_humidity": "70 %",
            "hood_captures": "10 %", "hold_humidity": "65 %", "window_u": "3 W/(m2 K)"
}
})json");
}

inline FullPlan fullJacket() {
  return parsed(R"json({
    "side": [{"material": "cork", "thickness": "12 mm"}, {"R": "R 2"}],
    "base": [{"material": "cork", "thickness": "12 mm"}, {"R": "R 2"}],
    "lid": [{"material": "cork", "thickness": "12 mm"}, {"R": "R 2"}],
    "outside": "foil"})json");
}

inline FullPlan fullCable() {
  return parsed(R"json({
    "length": "6 m", "conductor": "4 mm2", "temperature": "45 C", "use": "cord",
    "insulation": "60 C", "ambient": "25 C", "loaded_conductors": 3, "layers_on_drum": 1,
    "method": "C"})json");
}

inline FullPlan fullSupply() {
  return parsed(R"json({
    "voltage": "230 V", "current": "20 A", "continuous": "90 %", "outlet": "14-30",
    "feeds": "several outlets", "other_load": "200 W"})json");
}

inline FullPlan withOneElement() {
  FullPlan rig = parsed(R"json({
    "name": "One", "letter": "b", "about": "one line", "source": "a drawing",
    "format": {"name": "heat-ledger-rig", "version": 1},
    "vessel": {"material": "stainless steel", "finish": "dull", "inner_diameter": "360 mm",
               "height": "410 mm", "wall": "0.9 mm", "mass": "4 kg"},
    "stands_on": {"kind": "table", "material": "pine", "thickness": "30 mm"},
    "element": {"power": "2800 W", "rated_voltage": "230 V", "top_height": "50 mm",
                "diameter": "11 mm", "heated_length": "1.8 m"},
    "pump": {"power": "25 W", "voltage": "230 V"},
    "lid": {"material": "stainless steel", "finish": "dull", "thickness": "1 mm", "gap": "2 %",
            "open": {"strike": "5 %", "mash": "6 %", "heating": "7 %", "boil": "50 %"}},
    "recirculation": {"hose_length": "1 m", "outer_diameter": "18 mm", "wall": "2 mm",
                      "material": "silicone",
                      "insulation": [{"material": "cork", "thickness": "5 mm"}, {"R": "R 2"}],
                      "returns": "below the wort", "flow": "5 L/min", "pump_heat": "20 W"},
    "dead_band": "0.5 K", "boil_power": "80 %", "evaporation_factor": 1.1,
    "loss_factor": 1.2,
    "measured": {"losses_within": "8 %", "surface_within": "15 %", "jacket": "side 5 mm cork",
                 "on": "2026-03-02", "readings": "night.csv, 5 lines (1f0c33ab)"},
    "chiller": {"kind": "counterflow", "material": "stainless steel", "tube": "12 mm",
                "length": "9 m", "wort": "stirred", "water_flow": "7 L/min",
                "wort_flow": "2 L/min"}})json");
  rig["supply"] = fullSupply();
  rig["cable"] = fullCable();
  return rig;
}

inline FullPlan withTwoCircuits(const char* name) {
  FullPlan rig = parsed(R"json({
    "vessel": {"material": "stainless steel", "emissivity": 0.4, "inner_diameter": "360 mm",
               "height": "410 mm", "wall": "0.9 mm"},
    "elements": [{"power": "2 kW", "rated_voltage": "230 V", "top_height": "50 mm",
                  "diameter": "11 mm", "heated_length": "1.4 m"},
                 {"power": "2 kW", "rated_voltage": "230 V", "top_height": "50 mm",
                  "diameter": "8.5 mm", "heated_length": "1.4 m"}],
    "wired": "two circuits",
    "supply": {"from": "Europe 230 V 16 A"},
    "cable": {"loop_resistance": "0.2 ohm"},
    "lid": {"material": "stainless steel", "emissivity": 0.4}})json");
  rig["name"] = name;
  rig["jacket"] = fullJacket();
  return rig;
}

inline std::vector<FullPlan> fullPlans() {
  FullPlan plan = parsed(R"json({
    "format": {"name": "heat-ledger-plan", "version": 1},
    "title": "All of it", "day_starts": "09:00",
    "goals": {"boil_within": "50 min", "boil_off": "7 %/h", "headspace": "12 %",
              "unplugged": "7 h"}})json");
  plan["batch"] = fullBatch();
  plan["place"] = fullPlace();
  plan["tariff"] = fullTariff();
  plan["jacket_to_compare"] = fullJacket();
  FullPlan stated = withTwoCircuits("Two");
  stated["second_supply"] = fullSupply();
  stated["second_cable"] = fullCable();
  FullPlan named = withTwoCircuits("Three");
  named["second_supply"] = parsed(R"json({"from": "Europe 230 V 16 A"})json");
  named["second_cable"] = parsed(R"json({"loop_resistance": "0.2 ohm"})json");
  plan["rigs"] = {withOneElement(), stated, named,
                  parsed(R"json({"name": "Four", "from": "40 L steel kettle"})json"),
                  parsed(R"json({"name": "Five", "same_as": "b"})json")};

  FullPlan other = plan;
  other.erase("day_starts");
  for (std::size_t i = 1; i <= 3; ++i)
    other["rigs"][i]["chiller"] = parsed(R"json({"kind": "coil"})json");
  other["ready"] = parsed(R"json({"what": "end of boil", "at": "13:00"})json");
  other["batch"].erase("wort");
  other["batch"]["water"] = "27 L";
  other["batch"]["mash"] =
      parsed(R"json({"unplugged": {"temperature": "67 C", "time": "2 h"}})json");
  other["place"].erase("altitude");
  other["place"]["pressure"] = "98 kPa";
  other["place"].erase("rules");
  other["place"]["air"].erase("air_changes");
  other["place"]["air"]["airflow"] = "100 m3/h";
  other["tariff"].erase("price");
  other["tariff"]["times"] = parsed(R"json({
    "weekday": [{"from": "07:00", "to": "22:00", "price": "0.30 EUR/kWh"},
                {"from": "22:00", "to": "07:00", "price": "0.20 EUR/kWh"}],
    "weekend": [{"from": "07:00", "to": "22:00", "price": "0.25 EUR/kWh"},
                {"from": "22:00", "to": "07:00", "price": "0.20 EUR/kWh"}]})json");

  FullPlan tiers = plan;
  tiers["tariff"].erase("price");
  tiers["tariff"]["tiers"] =
      parsed(R"json([{"up_to": "900 kWh", "price": "0.1 CAD/kWh"}, {"price": "0.2 CAD/kWh"}])json");

  FullPlan bundled = plan;
  bundled["tariff"].erase("price");
  bundled["tariff"]["from"] = "Ontario time of use, winter 2024";
  return {plan, other, tiers, bundled};
}

}  // namespace test_support
