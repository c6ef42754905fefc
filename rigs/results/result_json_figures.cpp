// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_figures.hpp"

#include <algorithm>
#include <cassert>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

Json resultSchema() {
  for (const EmbeddedDocument& document : embeddedDocuments())
    if (document.name == "schemas/result.schema.json") return Json::parse(document.text);
  assert(false);
  return {};
}

void collectPlaces(const Json& schema, const Json& node, const std::string& place,
                   std::vector<std::string>& places) {
  if (node.contains("$ref")) {
    const std::string name = node["$ref"].get<std::string>();
    const Json::json_pointer at(name.substr(1));  // behind "#"
    return collectPlaces(schema, schema.at(at), place, places);
  }
  const std::string below = place.empty() ? place : place + '/';
  if (node.contains("properties")) {
    for (const auto& one : node["properties"].items())
      collectPlaces(schema, one.value(), below + one.key(), places);
  } else if (node.contains("items")) {
    collectPlaces(schema, node["items"], below + '*', places);
  } else if (!place.empty()) {
    places.push_back(place);
  }
}

std::string_view lastStep(std::string_view place) { return place.substr(place.rfind('/') + 1); }
std::string_view firstStep(std::string_view place) { return place.substr(0, place.find('/')); }

// With "*" for each index.
std::string patternOf(std::string_view place) {
  std::string pattern;
  while (!place.empty()) {
    const std::size_t end = std::min(place.find('/'), place.size());
    const std::string_view step = place.substr(0, end);
    const bool index = !step.empty() && step.size() < 9 &&
                       step.find_first_not_of("0123456789") == std::string_view::npos;
    pattern += index ? "*" : std::string(step);
    place.remove_prefix(end);
    if (!place.empty()) {
      pattern += '/';
      place.remove_prefix(1);
    }
  }
  return pattern;
}

std::optional<Figure> figureAt(const Json& rig, const std::string& place) {
  const Json::json_pointer at('/' + place);
  if (!rig.contains(at)) return std::nullopt;
  const Json& node = rig.at(at);
  if (node.is_string()) return Figure{node.get<std::string>(), true};
  return node.is_structured() ? std::nullopt : std::optional(Figure{node.dump(), false});
}

// Of a day that stopped the result tells how far it came; no page calls that the day's duration or
// its wort, and neither does a column that is read without the outcome.
bool isOfSuchADay(std::string_view place, const physics::BrewDay& day) {
  if (place.starts_with("day/pre_boil_")) return day.find(physics::StageKind::Boil) != nullptr;
  if (place.starts_with("day/lifted_"))
    return day.find(physics::StageKind::HeatingToBoil) != nullptr ||
           day.find(physics::StageKind::Draining) != nullptr;
  if (place.starts_with("day/result_") || place == "day/duration_s")
    return day.finished() && !day.stages.empty();
  return true;
}

bool anyIsBelow(std::string_view step, const std::vector<std::string>& places) {
  return std::any_of(places.begin(), places.end(),
                     [step](const std::string& place) { return firstStep(place) == step; });
}

// The least that has to be answered for what stands below this step.
Depth depthOf(std::string_view step) {
  if (step == "room") return Depth::Room;
  if (step == "circuit") return Depth::Circuit;
  if (step == "sizing") return Depth::Everything;
  if (step == "jacket" || step == "jacket_payback") return Depth::DayAndJacket;
  if (step == "night") return Depth::Night;
  if (step == "chilling") return Depth::Chill;
  if (step == "wort") return Depth::Wort;
  if (step == "what_would_boil" || step == "on_the_edge") return Depth::Day;
  return Depth::Figures;
}

}  // namespace

const std::vector<std::string>& figurePlaces() {
  static const std::vector<std::string> all = [] {
    const Json schema = resultSchema();
    std::vector<std::string> places;
    collectPlaces(schema, schema["$defs"]["rig"], {}, places);
    return places;
  }();
  return all;
}

bool isFigurePlace(std::string_view place) {
  const auto& all = figurePlaces();
  // An index is needed where the schema has a list: "*" itself is no place.
  return place.find('*') == std::string_view::npos &&
         std::find(all.begin(), all.end(), patternOf(place)) != all.end();
}

std::string_view nearestFigurePlace(std::string_view written) {
  std::vector<std::string_view> whole, last;
  std::string_view called;  // so; rather without an index that somebody has to fill in
  for (const std::string& place : figurePlaces()) {
    whole.push_back(place);
    last.push_back(lastStep(place));
    if (lastStep(place) != written) continue;
    if (place.find('*') == std::string::npos) return place;
    if (called.empty()) called = place;
  }
  if (!called.empty()) return called;
  if (const std::string_view near = nearestWord(written, whole); !near.empty()) return near;
  const std::string_view name = nearestWord(lastStep(written), last);
  const auto at = std::find(last.begin(), last.end(), name);
  return name.empty() ? name : whole[static_cast<std::size_t>(at - last.begin())];
}

std::vector<std::optional<Figure>> figuresOf(const Plan& plan, const Answers& answers,
                                             std::size_t rig,
                                             const std::vector<std::string>& places) {
  const Json json = rigJson(plan, answers, rig);
  std::vector<std::optional<Figure>> all;
  for (const std::string& place : places)
    all.push_back(isOfSuchADay(place, answers.rigs[rig].day) ? figureAt(json, place)
                                                             : std::nullopt);
  return all;
}

std::vector<Depth> depthsFor(const std::vector<std::string>& places) {
  std::vector<Depth> depths;
  for (const std::string& place : places) {
    const Depth depth = depthOf(firstStep(place));
    if (std::find(depths.begin(), depths.end(), depth) == depths.end()) depths.push_back(depth);
  }
  // The day is in all of them.
  if (depths.size() > 1) std::erase(depths, Depth::Figures);
  if (depths.size() > 1) std::erase(depths, Depth::Day);
  if (depths.empty()) depths.push_back(Depth::Figures);
  return depths;
}

bool needsWhatHelps(const std::vector<std::string>& places) { return anyIsBelow("helps", places); }

bool needsAllRigs(const std::vector<std::string>& places) {
  return anyIsBelow("element_payback", places);
}

}  // namespace rigs
