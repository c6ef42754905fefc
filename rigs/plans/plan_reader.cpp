// SPDX-License-Identifier: GPL-3.0-or-later
// Puts the readers of a plan's parts together.
#include <utility>

#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/batch_reader.hpp"
#include "rigs/plans/chill_reader.hpp"
#include "rigs/plans/jacket_reader.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/place_reader.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_names.hpp"
#include "rigs/plans/ready_reader.hpp"
#include "rigs/plans/rigs_reader.hpp"
#include "rigs/plans/tariff_reader.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr int kVersion = 1;

// The parts without which there is no plan, with an example where one is missing.
bool isStated(const JsonCursor& at, const std::string& key) {
  if (at.has(key)) return true;
  const std::string example = quotedText(key) + ": " + std::string(keyAt('/' + key)->example);
  at.error(key, missing(key, Told(TOLD("Problem", "write e.g. %1"), Verbatim{example})));
  return false;
}

void readFormat(const JsonCursor& at) {
  if (!isStated(at, "format")) return;
  const auto object = at.object("format");
  if (!object) return;
  object->warnAboutKeysExcept(keysOf("/format"));
  static_cast<void>(object->oneOf("name", {"heat-ledger-plan"}));
  const auto version = object->integer("version", {1, 1000000});
  if (version && *version > kVersion)
    object->error(
        "version",
        advised(Told(TOLD("Problem", "this plan is of version %1"), Count{*version}),
                Told(TOLD("Problem", "this program understands version %1"), Count{kVersion})));
}

std::vector<RigPlan> readRigs(const JsonCursor& at, const std::filesystem::path& folder,
                              const Jacket* compared, Problems& problems) {
  if (!isStated(at, "rigs")) return {};
  // More columns than twelve nobody reads.
  auto entries = at.objects("rigs", {1, 12});
  return entries ? readRigs(std::move(*entries), folder, compared, problems)
                 : std::vector<RigPlan>();
}

// On the rig's first circuit, beside its element.
void noteRinseHeater(const Batch& batch, std::vector<RigPlan>& rigs) {
  if (!batch.rinse || !batch.rinse->electric || !batch.rinse->electric->onSameCircuit) return;
  for (RigPlan& rig : rigs) {
    if (rig.circuits.empty()) rig.circuits.emplace_back();
    rig.circuits.front().details.heatsRinse = true;
    rig.circuits.front().details.rinseHeater = batch.rinse->electric->power;
  }
}

}  // namespace

std::optional<Plan> readPlan(std::string_view document, const std::filesystem::path& folder,
                             Problems& problems) {
  const std::size_t before = problems.size();
  const auto json = parseJson(document, problems);
  if (!json) return std::nullopt;
  const auto at = JsonCursor(*json, problems, {}, &planExamples()).asObject();
  if (!at) return std::nullopt;

  readFormat(*at);
  const auto title = at->optionalText("title", "", 200);
  const auto placeAt = isStated(*at, "place") ? at->object("place") : std::nullopt;
  const auto place = placeAt ? readPlace(*placeAt, folder, problems) : std::nullopt;
  // Without a place the batch is still read, for its problems; a room at the sea is a stand-in.
  const Place standIn{.room = celsius(20.0),
                      .relativeHumidity = 0.5,
                      .pressure = pascals(101325.0),
                      .water = celsius(15.0),
                      .draught = metresPerSecond(0.0)};
  const auto batchAt = isStated(*at, "batch") ? at->object("batch") : std::nullopt;
  const auto batch = batchAt ? readBatch(*batchAt, place ? place->place : standIn) : std::nullopt;
  const auto chilling = readChilling(batchAt, placeAt);
  std::optional<Tariff> tariff = Tariff{};
  if (at->has("tariff")) {
    const auto object = at->object("tariff");
    tariff = object ? readTariff(*object) : std::nullopt;
  }
  const auto start = readClock(*at, "day_starts");
  const auto ready = readReady(*at);
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
  at->warnAboutKeysExcept(keysOf(""));
  if (Told why = ready && batch ? neverComes(ready->what, *batch, rigs) : Told(); !why.empty())
    problems.push_back({Severity::Error, "/ready/what", std::move(why)});

  const bool failed =
      hasErrors({problems.begin() + static_cast<std::ptrdiff_t>(before), problems.end()});
  if (failed || !title || !place || !batch || !tariff || !start || !goals || !chilling)
    return std::nullopt;
  noteRinseHeater(*batch, rigs);
  return Plan{.title = *title,
              .batch = *batch,
              .place = place->place,
              .altitude = place->altitude,
              .region = place->region,
              .ownRules = place->ownRules,
              .room = place->room,
              .tariff = *tariff,
              .startOfDay = *start,
              .ready = ready,
              .goals = *goals,
              .chilling = *chilling,
              .rigs = std::move(rigs)};
}

}  // namespace rigs
