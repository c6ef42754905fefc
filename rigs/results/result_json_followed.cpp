// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_followed.hpp"

#include <cmath>
#include <functional>
#include <utility>

#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/alarms.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

using namespace physics;

std::string_view keyOf(readings::Event event) {
  switch (event) {
    case readings::Event::PluggedIn:
      return "plugged in";
    case readings::Event::GrainIn:
      return "grain in";
    case readings::Event::Unplugged:
      return "unplugged";
    case readings::Event::Heating:
      return "heating";
    case readings::Event::Boil:
      return "boil";
    case readings::Event::LidOn:
      return "lid on";
    case readings::Event::LidOff:
      break;
  }
  return "lid off";
}

std::string_view keyOf(const std::optional<StageKind>& begins) {
  if (!begins) return "end";
  switch (*begins) {
    case StageKind::Strike:
      return "strike";
    case StageKind::MashingIn:
      return "mashing in";
    case StageKind::Ramp:
      return "ramp";
    case StageKind::Rest:
      return "rest";
    case StageKind::UnpluggedRest:
      return "unplugged rest";
    case StageKind::Draining:
      return "draining";
    case StageKind::HeatingToBoil:
      return "heating to boil";
    case StageKind::Boil:
      break;
  }
  return "boil";
}

std::string_view verdictOf(const LastRead& last) {
  if (!last.isOfTheDay) return "not of the day";
  if (last.contradicted) return "contradicted";
  if (!last.low || !last.high) return "nothing was expected";
  if (std::abs(last.surprise) >= kAsksAgain) return "far outside";
  return std::abs(last.surprise) >= kABitOutside ? "a bit outside" : "as expected";
}

template <class Q>
void setBand(Object& object, const std::string& key, const Band<Q>& band) {
  const auto set = [&](const char* which, const std::optional<Q>& value) {
    if (value) object.set(key + which, *value);
  };
  set("low", band.low);
  set("middle", band.middle);
  set("high", band.high);
}

void setNumbers(Object& object, const std::string& unit, const LastRead& last, double read,
                const std::function<double(double)>& made) {
  object.set("read" + unit, made(read));
  const auto set = [&](const char* which, const std::optional<double>& value) {
    if (value) object.set(which + unit, made(*value));
  };
  set("expected_low", last.low);
  set("expected_middle", last.middle);
  set("expected_high", last.high);
}

Json lastJson(const readings::Reading& read, const LastRead& last) {
  Object object;
  object.put("line", read.line).set("clock", read.at);
  if (const auto* event = std::get_if<readings::Event>(&read.value)) {
    object.set("event", keyOf(*event));
    const auto at = [](const std::optional<double>& s) {
      return s ? std::optional(seconds(*s)) : std::nullopt;
    };
    setBand(object, "expected_clock_", Band<Time>{at(last.low), at(last.middle), at(last.high)});
    return object.take();
  }
  if (const auto* wort = std::get_if<Temperature>(&read.value))
    setNumbers(object, "_C", last, inKelvin(*wort),
               [](double si) { return inCelsius(kelvin(si)); });
  else if (const auto* energy = std::get_if<Energy>(&read.value))
    setNumbers(object, "_kWh", last, inJoules(*energy),
               [](double si) { return inKilowattHours(joules(si)); });
  else if (const auto* volume = std::get_if<readings::ReadVolume>(&read.value))
    setNumbers(object, "_L", last, inCubicMetres(volume->volume),
               [](double si) { return 1e3 * si; });
  else if (const auto* gravity = std::get_if<readings::ReadGravity>(&read.value))
    setNumbers(object, "_gravity", last, gravity->gravity, [](double si) { return si; });
  return object.set("surprise", last.surprise).set("verdict", verdictOf(last)).take();
}

Json comingJson(const Coming& coming, const Told& action) {
  Object object;
  object.set("begins", keyOf(coming.begins)).set("do", inEnglish(action)).set("due", coming.isDue);
  setBand(object, "clock_", coming.at);
  setBand(object, "planned_clock_", coming.planned);
  setBand(object, "wort_", coming.wort);
  return object.take();
}

}  // namespace

std::string followedJson(const Plan& plan, std::size_t rig,
                         const std::vector<readings::Reading>& read, const Followed& followed,
                         const std::vector<Told>& actions, const std::vector<Caution>& cautions) {
  Object object;
  object.put("format",
             Object().set("name", "heat-ledger-followed").put("version", kFollowedVersion).take());
  object.set("rig", letterOfSlot(slotsOf(plan.rigs)[rig])).set("name", plan.rigs[rig].name);
  object.set("clock", followed.now).set("ranges", followed.isSure).set("rolls", followed.rolls);
  if (followed.last) object.put("last", lastJson(read[followed.last->which], *followed.last));
  setBand(object, "wort_", followed.wort);
  Json coming = Json::array();
  for (std::size_t i = 0; i < followed.coming.size(); ++i)
    coming.push_back(comingJson(followed.coming[i], actions.at(i)));
  object.put("next", std::move(coming));
  Json alarms = Json::array();
  for (const Alarm& one : followed.alarms)
    alarms.push_back(Object()
                         .set("code", alarmCode(one.what))
                         .set("now", one.isNow)
                         .set("text", inEnglish(alarmText(one, followed.now)))
                         .take());
  object.put("alarms", std::move(alarms));
  Json told = Json::array();
  for (const Caution& one : cautions)
    told.push_back(Object().set("topic", one.topic).set("text", inEnglish(one.text)).take());
  object.put("cautions", std::move(told));
  return object.take().dump() + '\n';
}

}  // namespace rigs
