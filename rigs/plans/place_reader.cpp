// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/place_reader.hpp"

#include "physics/air.hpp"
#include "rigs/circuits/rules_file.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"
#include "rigs/plans/ranges.hpp"

namespace rigs {

namespace fs = std::filesystem;
using namespace physics;

namespace {

// Rules in a file beside the plan; null for none, nullopt where they are wrong.
std::optional<std::shared_ptr<const CircuitRules>> readOwnRules(const JsonCursor& at,
                                                                const fs::path& folder,
                                                                Problems& problems) {
  if (!at.has("rules")) return std::shared_ptr<const CircuitRules>();
  const auto name = at.text("rules", 400);
  if (!name) return std::nullopt;
  const fs::path relative = fs::path(*name).lexically_normal();
  // A plan from a stranger reads nothing but what came with it.
  if (relative.is_absolute() || relative.begin() == relative.end() || *relative.begin() == "..") {
    at.error("rules", withExample(advised(Told(TOLD("Problem", "%1 leads out of the plan's folder"),
                                               Quoted{*name}),
                                          Told(TOLD("Problem", "write a path within it"))),
                                  inQuotes("my-region.json")));
    return std::nullopt;
  }
  auto rules = readRulesFile(folder, relative, at.where() + "/rules", problems);
  if (!rules) return std::nullopt;
  return rules;
}

std::vector<std::string_view> knownRegions() {
  std::vector<std::string_view> known;
  for (const CircuitRules& one : bundledRules()) known.push_back(one.region);
  return known;
}

// Which rules a place names; "" for none, nullopt for a name that is not there.
std::optional<std::string> readRegion(const JsonCursor& at, const CircuitRules* own) {
  const auto region = at.optionalText("region", "", kLongestName);
  const auto edition = at.optionalText("edition", "", kLongestName);
  if (!region || !edition) return std::nullopt;
  if (region->empty() && at.has("region")) {
    at.error("region",
             advised(Told(TOLD("Problem", "%1 names no region"), Quoted{*region}),
                     Told(TOLD("Problem", "%1, or leave it out"), writeOneOf(knownRegions()))));
    return std::nullopt;
  }
  if (region->empty()) {
    if (edition->empty() || (own && *edition == own->edition)) return region;
    at.error("edition", Told(TOLD("Problem", "an edition of rules needs a \"region\"")));
    return std::nullopt;
  }
  const CircuitRules* rules = own ? own : rulesOf(*region);
  if (own && !sameRegion(own->region, *region)) {
    at.error("region", advised(Told(TOLD("Problem", "%1 is not the region of the rules file, %2"),
                                    Quoted{*region}, Quoted{own->region}),
                               Told(TOLD("Problem", "keep one of them"))));
    return std::nullopt;
  }
  if (!rules) {
    const std::vector<std::string_view> known = knownRegions();
    at.error(
        "region",
        perhapsMeant(advised(Told(TOLD("Problem", "%1 is no region with electrical rules here"),
                                  Quoted{*region}),
                             Told(TOLD("Problem",
                                       "%1, or leave it out and name a file with rules of your own "
                                       "as \"rules\" (--rules at the terminal)"),
                                  writeOneOf(known))),
                     nearestWord(*region, known)));
    return std::nullopt;
  }
  if (!edition->empty() && *edition != rules->edition) {
    at.error("edition", advised(Told(TOLD("Problem", "%1 of %2 is not here"), Quoted{*edition},
                                     Bundled{"Phrases", rules->code}),
                                Told(TOLD("Problem", "there is %1"), inQuotes(rules->edition))));
    return std::nullopt;
  }
  return rules->region;
}

std::optional<RoomPlan> readRoom(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/place/air"));
  if (at.has("airflow") && at.has("air_changes")) {
    at.error("airflow", advised(Told(TOLD("Problem", "both an airflow and air changes are stated")),
                                Told(TOLD("Problem", "keep one of them"))));
    return std::nullopt;
  }
  RoomPlan room;
  room.isStated = true;
  const auto volume = at.quantity<Volume>("volume", {litres(2e3), litres(1e6)});
  const auto changes = at.optionalNumber("air_changes", 0.5, {0.0, 60.0});
  const auto airflow =
      at.quantityIfGiven<VolumeFlow>("airflow", {litresPerHour(0.0), litresPerHour(2e7)});
  const auto outdoors =
      at.optionalQuantity<Temperature>("outdoors", room.outdoors, {celsius(-20.0), celsius(45.0)});
  const auto outdoorHumidity =
      at.optionalQuantity<double>("outdoor_humidity", room.outdoorHumidity, ranges::kHumidity);
  const auto captured = at.optionalQuantity<double>("hood_captures", 0.0, {0.0, 1.0});
  const auto hold = at.optionalQuantity<double>("hold_humidity", room.holdHumidity, {0.2, 1.0});
  const auto window = at.quantityIfGiven<HeatTransferCoefficient>(
      "window_u", {perSquareMetreKelvin(0.3), perSquareMetreKelvin(7.0)});
  const bool wrong = (at.has("airflow") && !airflow) || (at.has("window_u") && !window);
  if (wrong || !volume || !changes || !outdoors || !outdoorHumidity || !captured || !hold)
    return std::nullopt;
  room.volume = *volume;
  room.airflow = airflow ? *airflow : VolumeFlow(*changes * *volume / hours(1.0));
  room.outdoors = *outdoors;
  room.outdoorHumidity = *outdoorHumidity;
  room.captured = *captured;
  room.holdHumidity = *hold;
  room.window = window;
  return room;
}

}  // namespace

std::optional<PlaceRead> readPlace(const JsonCursor& at, const fs::path& folder,
                                   Problems& problems) {
  std::optional<Pressure> pressure;
  std::optional<Length> altitude;
  if (at.has("altitude") && at.has("pressure"))
    at.error("altitude",
             advised(Told(TOLD("Problem", "both an altitude and a pressure are stated")),
                     Told(TOLD("Problem", "keep one of them"))));
  if (!at.has("altitude") && !at.has("pressure")) {
    at.error(advised(Told(TOLD("Problem", "neither an altitude nor a pressure is stated")),
                     Told(TOLD("Problem", "write e.g. %1"), Verbatim{R"("altitude": "120 m")"})));
  } else if (at.has("pressure")) {
    pressure = at.quantity<Pressure>("pressure", {pascals(50e3), pascals(110e3)});
  } else {
    // From the shore of the Dead Sea to the highest towns.
    altitude = at.quantity<Length>("altitude", ranges::kAltitude);
    if (altitude) pressure = standardAtmosphere(*altitude).pressure;
  }
  const auto room = at.quantity<Temperature>("room", ranges::kRoom);
  const auto humidity = at.optionalQuantity<double>("humidity", 0.5, ranges::kHumidity);
  const auto water = at.quantity<Temperature>("water", ranges::kWater);
  const auto draught = at.optionalQuantity<Velocity>("draught", metresPerSecond(0.0),
                                                     {metresPerSecond(0.0), metresPerSecond(5.0)});
  at.warnAboutKeysExcept(keysOf("/place"));
  const auto ownRules = readOwnRules(at, folder, problems);
  // Held against a file that could be read only.
  const auto region = ownRules ? readRegion(at, ownRules->get()) : std::nullopt;
  std::optional<RoomPlan> air = RoomPlan{};
  if (at.has("air")) {
    const auto object = at.object("air");
    air = object ? readRoom(*object) : std::nullopt;
  }
  if (!ownRules || !region || !air || !pressure || !room || !humidity || !water || !draught)
    return std::nullopt;
  return PlaceRead{.place = {.room = *room,
                             .relativeHumidity = *humidity,
                             .pressure = *pressure,
                             .water = *water,
                             .draught = *draught},
                   .altitude = altitude,
                   .region = *region,
                   .ownRules = *ownRules,
                   .room = *air};
}

std::optional<Goals> readGoals(const JsonCursor& at) {
  const auto within = at.optionalQuantity<Time>("boil_within", minutes(60.0), ranges::kWithin);
  const auto boilOff =
      at.optionalQuantity<FractionPerTime>("boil_off", 0.08 / hours(1.0), ranges::kBoilOff);
  const auto headspace = at.optionalQuantity<double>("headspace", 0.10, ranges::kHeadspace);
  const auto unplugged = at.optionalQuantity<Time>("unplugged", hours(8.0), ranges::kUnplugged);
  at.warnAboutKeysExcept(keysOf("/goals"));
  if (!within || !boilOff || !headspace || !unplugged) return std::nullopt;
  return Goals{.boilWithin = *within,
               .boilOffPerHour = static_cast<double>(*boilOff * hours(1.0)),
               .headspace = *headspace,
               .unplugged = *unplugged};
}

}  // namespace rigs
