// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_reader.hpp"

#include <algorithm>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/chill_reader.hpp"
#include "rigs/plans/json_whole_rig.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/layers.hpp"
#include "rigs/plans/measured_reader.hpp"
#include "rigs/plans/plan_names.hpp"
#include "rigs/plans/rig_bases.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/plans/supply_reader.hpp"
#include "rigs/plans/vessel_reader.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using namespace physics;

Covering covered(const Covering& bare, const JacketFace& face) {
  if (face.layers.empty()) return bare;
  Covering both = bare;
  both.insulation.insert(both.insulation.end(), face.layers.begin(), face.layers.end());
  both.emissivity = face.emissivity;
  return both;
}

Rig wearing(const Rig& bare, const Jacket& jacket) {
  Rig rig = bare;
  rig.vessel.side = covered(bare.vessel.side, jacket.side);
  rig.vessel.base = covered(bare.vessel.base, jacket.base);
  rig.vessel.lid = covered(bare.vessel.lid, jacket.lid);
  return rig;
}

// The element against what feeds it and what it hangs in.
bool fits(const Layers& rig, const Element& element, const Supply& supply) {
  const JsonCursor& at = rig.with("supply");
  if (const auto problem = overVoltage(element, supply)) {
    if (problem->severity == Severity::Error) {
      at.error("supply", problem->message);
      return false;
    }
    at.warn("supply", problem->message);
  }
  const double lost =
      static_cast<double>(supply.cableLoop / (supply.cableLoop + resistance(element)));
  if (lost > 0.15)
    rig.with("cable").warn(
        "cable", advised(Told(TOLD("Problem", "this cable would take %1 of the power as heat"),
                              amount(lost)),
                         Told(TOLD("Problem", "usual is below 5 %"))));
  return true;
}

bool fits(const Layers& rig, const Element& element, const Vessel& vessel) {
  if (element.topHeight < vessel.height) return true;
  rig.with("element").error(
      "element",
      Told(TOLD("Problem", "the element's top at %1 is not below the vessel's rim at %2"),
           amount(element.topHeight), amount(vessel.height)));
  return false;
}

// Nullopt where it is wrong; a jacket without faces where there is none.
std::optional<Jacket> readOwnJacket(const Layers& rig, bool hasLid) {
  const JsonCursor& at = rig.with("jacket");
  if (!at.has("jacket") || isNone(at, "jacket")) return Jacket{};
  const auto object = at.object("jacket");
  auto jacket = object ? readJacket(*object) : std::nullopt;
  if (jacket && !jacket->lid.layers.empty() && !hasLid) {
    object->error("lid",
                  advised(Told(TOLD("Problem", "this jacket covers a lid, but the rig has none")),
                          Told(TOLD("Problem", "add \"lid\" to the rig or leave this out"))));
    return std::nullopt;
  }
  return jacket;
}

// For elements on two circuits; the second is like the first where nothing else is stated.
std::optional<SupplyRead> readSecondSupply(const Layers& at,
                                           const std::optional<ElementsRead>& elements,
                                           const std::optional<SupplyRead>& first) {
  const bool needed = elements && elements->onTwoCircuits;
  if (!at.has("second_supply")) return needed ? first : std::nullopt;
  auto second = readSupply(at, "second_supply", "second_cable");
  if (needed || !elements) return second;
  at.with("second_supply")
      .error("second_supply", advised(Told(TOLD("Problem", "no element hangs on it")),
                                      Told(TOLD("Problem", "write \"wired\": \"two circuits\""))));
  return std::nullopt;
}

// A pump on the first circuit. False where it is wrong.
bool readPump(const Layers& at, std::optional<SupplyRead>& supply) {
  if (!at.has("pump") || isNone(at.with("pump"), "pump")) return true;
  const auto pump = at.with("pump").object("pump");
  if (!pump || !supply) return false;
  pump->warnAboutKeysExcept(keysOf("/rigs/*/pump"));
  const auto power = pump->quantity<Power>("power", {watts(1.0), watts(5000.0)});
  const auto voltage = pump->optionalQuantity<Voltage>("voltage", supply->supply.nominal,
                                                       {volts(12.0), volts(690.0)});
  if (!power || !voltage) return false;
  supply->details.pump = power;
  supply->details.pumpAt = *voltage;
  return true;
}

// A rig has its letter for itself: what it is from keeps its own. False where it is wrong.
bool readLetter(const JsonCursor& at, std::optional<std::size_t>& slot) {
  if (!at.has("letter")) return true;
  const auto text = at.text("letter", 1);
  if (!text) return false;
  slot = slotOfLetter(*text);
  if (!slot)
    at.error("letter",
             advised(Told(TOLD("Problem", "%1 is not a letter that a rig can have"), Quoted{*text}),
                     Told(TOLD("Problem", "write one from a to z, e.g. %1"), inQuotes("c"))));
  return slot.has_value();
}

std::optional<RigPlan> assemble(const Layers& at, const Jacket* compared) {
  at.warnAboutKeysExcept(keysOf("/rigs/*"));
  const auto name = at.with("name").text("name", kLongestName);
  if (name && name->find_first_not_of(' ') == std::string::npos)
    at.with("name").error("name", Told(TOLD("Problem", "a rig needs a name that can be seen")));
  std::optional<std::size_t> slot;
  const bool letterRead = readLetter(at.own(), slot);
  const auto vessel = readVessel(at);
  const auto elements = readElements(at);
  auto supply = readSupply(at);
  const auto second = readSecondSupply(at, elements, supply);
  const bool pumpRead = readPump(at, supply);
  std::optional<Element> element;
  if (elements)
    element = elements->onTwoCircuits ? elements->elements.front()
                                      : combined(elements->elements, elements->wiring);
  const JsonCursor& withLid = at.with("lid");
  const bool statesLid = withLid.has("lid") && !isNone(withLid, "lid");
  const auto jacket = readOwnJacket(at, statesLid);
  std::optional<Hose> hose = Hose{.length = metres(0.0),
                                  .outerDiameter = millimetres(20.0),
                                  .wall = squareMetreKelvinsPerWatt(0.01)};
  const JsonCursor& withHose = at.with("recirculation");
  if (withHose.has("recirculation") && !isNone(withHose, "recirculation")) {
    const auto object = withHose.object("recirculation");
    hose = object ? readHose(*object) : std::nullopt;
  }
  const auto deadBand = at.with("dead_band")
                            .optionalQuantity<TemperatureDifference>("dead_band", kelvins(0.0),
                                                                     {kelvins(0.0), kelvins(10.0)});
  const auto boilPower =
      at.with("boil_power").optionalQuantity<double>("boil_power", 1.0, {0.05, 1.0});
  const auto measured = readMeasured(at);
  const auto chiller = readChiller(at, vessel ? &vessel->bare : nullptr);
  bool good = true;
  // The second circuit's element is not to be higher than the first: both count as the higher.
  if (elements && elements->onTwoCircuits)
    element->topHeight = std::max(element->topHeight, elements->elements.back().topHeight);
  if (element && supply) good = fits(at, *element, supply->supply) && good;
  if (elements && elements->onTwoCircuits && second)
    good = fits(at, elements->elements.back(), second->supply) && good;
  if (!letterRead || !pumpRead || (elements && elements->onTwoCircuits && !second)) good = false;
  if (element && vessel) good = fits(at, *element, vessel->bare) && good;
  if (!good || !name || !vessel || !element || !supply || !jacket || !hose || !deadBand ||
      !boilPower || !measured || !chiller)
    return std::nullopt;

  RigPlan plan;
  plan.name = *name;
  plan.statedSlot = slot;
  plan.bare = {.name = *name,
               .vessel = vessel->bare,
               .element = *element,
               .supply = supply->supply,
               .hose = *hose,
               .boilPower = *boilPower,
               .evaporationFactor = measured->evaporationFactor,
               .lossFactor = measured->lossFactor,
               .deadBand = *deadBand};
  plan.circuits.push_back(
      {.details = supply->details, .elements = elements->elements, .wiring = elements->wiring});
  if (elements->onTwoCircuits) {
    plan.bare.second = Feed{.element = elements->elements.back(), .supply = second->supply};
    plan.circuits.front().elements = {elements->elements.front()};
    plan.circuits.push_back({.details = second->details,
                             .elements = {elements->elements.back()},
                             .continuousShare = second->continuousShare});
  }
  plan.measured = measured->measured;
  plan.chiller = *chiller;
  plan.hasLid = vessel->hasLid;
  plan.finish = vessel->finish;
  plan.circuit = supply->circuit;
  plan.continuousShare = supply->continuousShare;
  plan.hasJacket = !jacket->words().empty();
  Jacket worn = plan.hasJacket ? *jacket : compared ? *compared : Jacket{};
  if (!plan.hasLid) worn.lid = {};
  plan.jacket = worn.words();
  plan.skin = worn.skin;
  plan.jacketIsCompared = !plan.jacket.empty();
  plan.jacketed = wearing(plan.bare, worn);
  plan.rig = plan.hasJacket ? plan.jacketed : plan.bare;
  return plan;
}

// A rig in a document of its own has no other beside it.
void refuseToFollow(const std::vector<JsonCursor>& layers) {
  for (const JsonCursor& one : layers)
    if (&one != &layers.front() && one.has("same_as"))
      one.error("same_as", Told(TOLD("Problem",
                                     "a rig in a document of its own has no others beside it that "
                                     "it could be the same as; leave this out")));
}

}  // namespace

std::optional<RigPlan> readWholeRig(const nlohmann::ordered_json& rig, const Jacket* compared,
                                    Problems& problems) {
  const auto at = JsonCursor(rig, problems, {}, &rigExamples()).asObject();
  return at ? assemble(Layers({*at}), compared) : std::nullopt;
}

std::optional<RigPlan> readRig(const JsonCursor& at, const fs::path& folder, const Jacket* compared,
                               Problems& problems) {
  RigBases bases;
  const std::size_t before = problems.size();
  const std::vector<JsonCursor> cursors = bases.follow(at, folder);
  const Layers layers(cursors);
  refuseToFollow(cursors);
  // A base that could not be read leaves nothing to judge the rest by.
  if (hasErrors({problems.begin() + static_cast<std::ptrdiff_t>(before), problems.end()}) ||
      bases.failed()) {
    bases.tell(at, problems);
    return std::nullopt;
  }
  auto plan = assemble(layers, compared);
  bases.tell(at, problems);
  if (bases.failed()) return std::nullopt;
  if (plan) rememberWriting(*plan, WholeRig(cursors, bases.names()));
  return plan;
}

void rememberWriting(RigPlan& plan, const WholeRig& whole) {
  plan.written.texts = textsIn(whole.json());
  const std::string_view look =
      plan.written.has("/vessel/emissivity") ? "/vessel/emissivity" : "/vessel/finish";
  plan.finishIsUsual =
      plan.written.has(look) && catalogue().rig(whole.homeOf(look).file) != nullptr;
}

}  // namespace rigs
