// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "rigs/plans/plan_parts.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr int kVersion = 1;

// The parts without which there is no plan, with an example where one is missing.
bool isStated(const JsonCursor& at, std::string_view key, std::string_view example) {
  if (at.has(key)) return true;
  at.error(key, quotedText(key) + " is missing; write e.g. " + std::string(example));
  return false;
}

void readFormat(const JsonCursor& at) {
  if (!isStated(at, "format", R"("format": {"name": "heat-ledger-plan", "version": 1})")) return;
  const auto object = at.object("format");
  if (!object) return;
  object->warnAboutKeysExcept({"name", "version"});
  static_cast<void>(object->oneOf("name", {"heat-ledger-plan"}));
  const auto version = object->integer("version", {1, 1000000});
  if (version && *version > kVersion)
    object->error("version", "this plan is of version " + std::to_string(*version) +
                                 "; this program understands version " + std::to_string(kVersion));
}

std::vector<RigPlan> readRigs(const JsonCursor& at, const std::filesystem::path& folder,
                              const Jacket* compared, Problems& problems) {
  std::vector<RigPlan> rigs;
  if (!isStated(
          at, "rigs",
          R"("rigs": [{"name": "A", "from": "40 L steel kettle"}, {"name": "B", "from": "60 L steel kettle"}])"))
    return rigs;
  // One rig alone is no comparison, and more columns than twelve nobody reads.
  const auto entries = at.objects("rigs", {2, 12});
  if (!entries) return rigs;
  std::vector<std::string> names;
  for (const JsonCursor& entry : *entries) {
    auto rig = readRig(entry, folder, compared, problems);
    if (!rig) continue;
    if (std::find(names.begin(), names.end(), rig->name) != names.end())
      entry.error("name",
                  "two rigs are called " + quotedText(rig->name) + "; give each a name of its own");
    names.push_back(rig->name);
    rigs.push_back(std::move(*rig));
  }
  return rigs;
}

}  // namespace

std::optional<Plan> readPlan(std::string_view document, const std::filesystem::path& folder,
                             Problems& problems) {
  const std::size_t before = problems.size();
  const auto json = parseJson(document, problems);
  if (!json) return std::nullopt;
  const auto at = JsonCursor(*json, problems).asObject();
  if (!at) return std::nullopt;

  readFormat(*at);
  const auto title = at->optionalText("title", "", 200);
  const auto placeAt =
      isStated(*at, "place", R"("place": {"altitude": "120 m", "room": "20 C", "water": "12 C"})")
          ? at->object("place")
          : std::nullopt;
  const auto place = placeAt ? readPlace(*placeAt, folder, problems) : std::nullopt;
  // Without a place the batch is still read, for its problems; a room at the sea is a stand-in.
  const Place standIn{.room = celsius(20.0),
                      .relativeHumidity = 0.5,
                      .pressure = pascals(101325.0),
                      .water = celsius(15.0),
                      .draught = metresPerSecond(0.0)};
  const auto batchAt = isStated(*at, "batch", R"("batch": {"wort": "23 L", "boil": "60 min"})")
                           ? at->object("batch")
                           : std::nullopt;
  const auto batch = batchAt ? readBatch(*batchAt, place ? place->place : standIn) : std::nullopt;
  std::optional<Tariff> tariff = Tariff{};
  if (at->has("tariff")) {
    const auto object = at->object("tariff");
    tariff = object ? readTariff(*object) : std::nullopt;
  }
  const auto start = readClock(*at, "day_starts");
  std::optional<Jacket> compared;
  if (at->has("jacket_to_compare") && !isNone(*at, "jacket_to_compare")) {
    const auto object = at->object("jacket_to_compare");
    if (object) compared = readJacket(*object);
  }
  std::optional<Goals> goals = Goals{.boilWithin = minutes(60.0), .unplugged = hours(8.0)};
  if (at->has("goals")) {
    const auto object = at->object("goals");
    goals = object ? readGoals(*object) : std::nullopt;
  }
  auto rigs = readRigs(*at, folder, compared ? &*compared : nullptr, problems);
  at->warnAboutKeysExcept({"format", "title", "note", "batch", "place", "tariff", "day_starts",
                           "jacket_to_compare", "goals", "rigs"});

  const bool failed =
      hasErrors({problems.begin() + static_cast<std::ptrdiff_t>(before), problems.end()});
  if (failed || !title || !place || !batch || !tariff || !start || !goals) return std::nullopt;
  return Plan{.title = *title,
              .batch = *batch,
              .place = place->place,
              .altitude = place->altitude,
              .region = place->region,
              .ownRules = place->ownRules,
              .room = place->room,
              .tariff = *tariff,
              .startOfDay = *start,
              .goals = *goals,
              .rigs = std::move(rigs)};
}

const Material* readMaterial(const JsonCursor& at, std::string_view key, Use use) {
  const auto name = at.text(key, kLongestName);
  if (!name) return nullptr;
  const Material* material = catalogue().material(*name);
  if (material && material->isFor(use)) return material;
  static constexpr std::string_view kUses[] = {"a vessel", "a lid", "a jacket", "a stand",
                                               "a hose"};
  const auto known = catalogue().namesFor(use);
  const std::string_view near = material ? "" : nearestWord(*name, known);
  at.error(key, quotedText(*name) + " is no known material for " +
                    std::string(kUses[static_cast<std::size_t>(use)]) + "; write " + choice(known) +
                    (near.empty() ? "" : "; perhaps \"" + std::string(near) + "\" was meant"));
  return nullptr;
}

bool isNone(const JsonCursor& at, std::string_view key) {
  return at.isText(key) && at.text(key, kLongestNote) == "none";
}

std::string choice(const std::vector<std::string_view>& words) {
  std::string result = words.size() > 1 ? "one of " : "";
  for (std::size_t i = 0; i < words.size(); ++i)
    result += (i > 0 ? ", \"" : "\"") + std::string(words[i]) + '"';
  return result;
}

}  // namespace rigs
