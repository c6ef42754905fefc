// SPDX-License-Identifier: GPL-3.0-or-later
// One rig, from the plan, the catalogue and other files.
#include <algorithm>
#include <deque>

#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_parts.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using namespace physics;

// A rig that another is from. Its problems are told at the place that refers to it.
struct Base {
  std::string label;
  JsonDocument document;
  Problems problems;
};

// The documents a rig builds on; cursors point into them.
class Bases {
 public:
  // The rig, then what it is from, then what that is from.
  std::vector<JsonCursor> follow(const JsonCursor& rig, const fs::path& folder) {
    std::vector<JsonCursor> layers{rig};
    fs::path here = folder;
    while (layers.back().has("from")) {
      const auto base = open(layers.back(), here);
      if (!base) break;
      layers.push_back(*base);
    }
    return layers;
  }

  void tell(const JsonCursor& rig, Problems& problems) const {
    for (const Base& base : bases_)
      for (const Problem& p : base.problems)
        problems.push_back(
            {p.severity, rig.where() + "/from",
             "in " + base.label + (p.where.empty() ? "" : " at " + p.where) + ": " + p.message});
  }

  bool failed() const {
    return std::any_of(bases_.begin(), bases_.end(),
                       [](const Base& base) { return hasErrors(base.problems); });
  }

 private:
  static constexpr std::size_t kLongestChain = 8;

  std::optional<JsonCursor> open(const JsonCursor& at, fs::path& folder) {
    const auto name = at.text("from", 400);
    if (!name) return std::nullopt;
    if (name->ends_with(".json")) return openFile(at, *name, folder);
    if (const GenericRig* generic = catalogue().rig(*name))
      return add(at, quotedText(*name), generic->document);
    std::vector<std::string_view> known;
    for (const GenericRig& rig : catalogue().rigs) known.push_back(rig.name);
    const std::string_view near = nearestWord(*name, known);
    at.error("from", quotedText(*name) + " is no rig of the catalogue; write " + choice(known) +
                         ", or the relative path of a file that ends in .json" +
                         (near.empty() ? "" : "; perhaps \"" + std::string(near) + "\" was meant"));
    return std::nullopt;
  }

  std::optional<JsonCursor> openFile(const JsonCursor& at, const std::string& name,
                                     fs::path& folder) {
    const fs::path relative = fs::path(name).lexically_normal();
    // A plan from a stranger reads nothing but what came with it.
    if (relative.is_absolute() || relative.begin() == relative.end() || *relative.begin() == "..") {
      at.error("from", quotedText(name) + " leads out of the plan's folder; write a path within " +
                           "it, e.g. \"rigs/my-kettle.json\"");
      return std::nullopt;
    }
    std::error_code ignored;
    const fs::path path = folder / relative;
    if (!fs::exists(path, ignored)) {
      at.error("from", quotedText(name) + " is not there; looked for " + path.string());
      return std::nullopt;
    }
    const fs::path real = fs::weakly_canonical(path, ignored);
    if (std::find(files_.begin(), files_.end(), real) != files_.end()) {
      at.error("from", quotedText(name) + " is from itself, directly or over other files");
      return std::nullopt;
    }
    if (!fs::is_regular_file(path, ignored)) {
      at.error("from", quotedText(name) + " is not a file");
      return std::nullopt;
    }
    files_.push_back(real);
    folder = path.parent_path();
    try {
      constexpr std::size_t kLargestRig = 256 * 1024;
      return add(at, quotedText(name), readText(path, kLargestRig));
    } catch (const FileError& error) {
      at.error("from", error.what());
      return std::nullopt;
    }
  }

  std::optional<JsonCursor> add(const JsonCursor& at, std::string label, std::string_view text) {
    if (bases_.size() >= kLongestChain) {
      at.error("from", "more than " + std::to_string(kLongestChain) +
                           " rigs are from one another; keep fewer");
      return std::nullopt;
    }
    Base& base = bases_.emplace_back();
    base.label = std::move(label);
    base.document = parseJson(text, base.problems);
    if (!base.document) return std::nullopt;
    return JsonCursor(*base.document, base.problems).asObject();
  }

  std::deque<Base> bases_;  // cursors keep pointing into them while more are added
  std::vector<fs::path> files_;
};

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
    rig.with("cable").warn("cable", "this cable would take " + format(lost, UnitSystem::SI) +
                                        " of the power as heat; usual is below 5 %");
  return true;
}

bool fits(const Layers& rig, const Element& element, const Vessel& vessel) {
  if (element.topHeight < vessel.height) return true;
  rig.with("element").error(
      "element", "the element's top at " + format(element.topHeight, UnitSystem::SI) +
                     " is not below the vessel's rim at " + format(vessel.height, UnitSystem::SI));
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
                  "this jacket covers a lid, but the rig has none; add \"lid\" to the rig or "
                  "leave this out");
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
      .error("second_supply", "no element hangs on it; write \"wired\": \"two circuits\"");
  return std::nullopt;
}

// A pump on the first circuit. False where it is wrong.
bool readPump(const Layers& at, std::optional<SupplyRead>& supply) {
  if (!at.has("pump") || isNone(at.with("pump"), "pump")) return true;
  const auto pump = at.with("pump").object("pump");
  if (!pump || !supply) return false;
  pump->warnAboutKeysExcept({"power", "voltage", "note"});
  const auto power = pump->quantity<Power>("power", {watts(1.0), watts(5000.0)});
  const auto voltage = pump->optionalQuantity<Voltage>("voltage", supply->supply.nominal,
                                                       {volts(12.0), volts(690.0)});
  if (!power || !voltage) return false;
  supply->details.pump = power;
  supply->details.pumpAt = *voltage;
  return true;
}

std::optional<RigPlan> assemble(const Layers& at, const Jacket* compared) {
  at.warnAboutKeysExcept({"name",     "from",          "about",         "source",
                          "note",     "format",        "vessel",        "stands_on",
                          "element",  "supply",        "cable",         "lid",
                          "jacket",   "recirculation", "boil_power",    "evaporation_factor",
                          "elements", "wired",         "second_supply", "second_cable",
                          "pump"});
  const auto name = at.with("name").text("name", kLongestName);
  if (name && name->find_first_not_of(' ') == std::string::npos)
    at.with("name").error("name", "a rig needs a name that can be seen");
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
  const auto boilPower =
      at.with("boil_power").optionalQuantity<double>("boil_power", 1.0, {0.05, 1.0});
  const auto factor =
      at.with("evaporation_factor").optionalNumber("evaporation_factor", 1.0, {0.1, 5.0});
  bool good = true;
  // The second circuit's element is not to be higher than the first: both count as the higher.
  if (elements && elements->onTwoCircuits)
    element->topHeight = std::max(element->topHeight, elements->elements.back().topHeight);
  if (element && supply) good = fits(at, *element, supply->supply) && good;
  if (elements && elements->onTwoCircuits && second)
    good = fits(at, elements->elements.back(), second->supply) && good;
  if (!pumpRead || (elements && elements->onTwoCircuits && !second)) good = false;
  if (element && vessel) good = fits(at, *element, vessel->bare) && good;
  if (!good || !name || !vessel || !element || !supply || !jacket || !hose || !boilPower || !factor)
    return std::nullopt;

  RigPlan plan;
  plan.name = *name;
  plan.bare = {.name = *name,
               .vessel = vessel->bare,
               .element = *element,
               .supply = supply->supply,
               .hose = *hose,
               .boilPower = *boilPower,
               .evaporationFactor = *factor};
  plan.circuits.push_back(
      {.details = supply->details, .elements = elements->elements, .wiring = elements->wiring});
  if (elements->onTwoCircuits) {
    plan.bare.second = Feed{.element = elements->elements.back(), .supply = second->supply};
    plan.circuits.front().elements = {elements->elements.front()};
    plan.circuits.push_back({.details = second->details,
                             .elements = {elements->elements.back()},
                             .continuousShare = second->continuousShare});
  }
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

}  // namespace

std::optional<Problem> overVoltage(const Element& element, const Supply& supply) {
  const std::string rated = format(element.ratedAt, UnitSystem::SI);
  const std::string fed = format(supply.nominal, UnitSystem::SI);
  const double times = static_cast<double>(supply.nominal / element.ratedAt);
  const std::string power = formatNumber(times * times, {.significantDigits = 3, .decimals = {}});
  if (times > kMostOverRated * (1.0 + 1e-9))
    return Problem{Severity::Error, "",
                   "an element of " + rated + " on " + fed + " would give " + power +
                       " times its rated power and surface load. Supplies rise to 110 % of their "
                       "nominal voltage and elements are made for that; this is above it all the "
                       "time. Use one rated for " +
                       fed};
  if (times > 1.0 + kSameVoltage)
    return Problem{Severity::Warning, "",
                   "an element of " + rated + " on " + fed + " gives " + power +
                       " times its rated power; that is within what supplies vary by, and more "
                       "current than its name plate says"};
  return std::nullopt;
}

std::optional<RigPlan> readRig(const JsonCursor& at, const fs::path& folder, const Jacket* compared,
                               Problems& problems) {
  Bases bases;
  const std::size_t before = problems.size();
  const Layers layers(bases.follow(at, folder));
  // A base that could not be read leaves nothing to judge the rest by.
  if (hasErrors({problems.begin() + static_cast<std::ptrdiff_t>(before), problems.end()}) ||
      bases.failed()) {
    bases.tell(at, problems);
    return std::nullopt;
  }
  auto plan = assemble(layers, compared);
  bases.tell(at, problems);
  return bases.failed() ? std::nullopt : plan;
}

}  // namespace rigs
