// SPDX-License-Identifier: GPL-3.0-or-later
// Results as JSON, shared by the parts of rigs/result_json.
#pragma once

#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

#include "rigs/answers/answers.hpp"

namespace rigs {

using Json = nlohmann::ordered_json;

// An object under construction; one `set` per kind of quantity, so that a unit is written once.
class Object {
 public:
  Object& set(const char* key, double number) {
    if (!std::isfinite(number)) {
      throw std::domain_error("the result has a number that is not finite: " + std::string(key));
    }
    json_[key] = number;
    return *this;
  }
  Object& set(const std::string& key, double number) { return set(key.c_str(), number); }
  Object& set(const char* key, bool flag) { return put(key, flag); }
  Object& set(const char* key, std::string_view text) { return put(key, std::string(text)); }
  Object& set(const char* key, const char* text) { return put(key, std::string(text)); }
  Object& put(const char* key, Json value) {
    json_[key] = std::move(value);
    return *this;
  }
  Object& set(std::string key, physics::Power q) { return set(key + "_W", physics::inWatts(q)); }
  Object& set(std::string key, physics::Energy q) {
    return set(key + "_kWh", physics::inKilowattHours(q));
  }
  Object& set(std::string key, physics::Time q) { return set(key + "_s", physics::inSeconds(q)); }
  Object& set(std::string key, physics::Temperature q) {
    return set(key + "_C", physics::inCelsius(q));
  }
  Object& set(std::string key, physics::Volume q) { return set(key + "_L", physics::inLitres(q)); }
  Object& set(std::string key, physics::Mass q) {
    return set(key + "_kg", physics::inKilograms(q));
  }
  Object& set(std::string key, physics::MassFlow q) {
    return set(key + "_kg_per_h", physics::inKilogramsPerHour(q));
  }
  Object& set(std::string key, physics::VolumeFlow q) {
    return set(key + "_L_per_h", physics::inLitresPerHour(q));
  }
  Object& set(std::string key, physics::HeatFlux q) {
    return set(key + "_W_per_m2", physics::inWattsPerSquareMetre(q));
  }
  Object& set(std::string key, physics::Voltage q) { return set(key + "_V", physics::inVolts(q)); }
  Object& set(std::string key, physics::Current q) {
    return set(key + "_A", physics::inAmperes(q));
  }
  Object& set(std::string key, physics::Resistance q) {
    return set(key + "_ohm", physics::inOhms(q));
  }
  Object& set(std::string key, physics::Area q) {
    return set(key + "_mm2", 1e6 * physics::inSquareMetres(q));
  }
  Object& set(std::string key, physics::Pressure q) {
    return set(key + "_Pa", physics::inPascals(q));
  }
  Object& set(std::string key, physics::Length q) { return set(key + "_m", physics::inMetres(q)); }
  Object& set(std::string key, physics::Velocity q) {
    return set(key + "_m_per_s", physics::inMetresPerSecond(q));
  }
  template <class Q>
  Object& setIf(const char* key, const std::optional<Q>& q) {
    if (q) set(key, *q);
    return *this;
  }
  Json take() { return std::move(json_); }

 private:
  Json json_ = Json::object();
};

Json circuitJson(const CircuitAnswer& circuit);
Json roomJson(const RoomAnswer& room);
// `hasJacket`: what is supposed is the rig without it.
Json nightJson(const NightAnswer& night, bool hasJacket);
Json chillJson(const ChillAnswer& chill);
Json wortJson(const WortAnswer& wort);
std::string keyOf(Unknown what);
// With what makes them wide where `sure` has it.
Json bandsJson(const Bands& bands, const SureAnswer* sure);
Json helpsJson(const HelpsAnswer& helps, double brewsPerYear);
// Prices, windows and tiers as they are stated.
Json tariffJson(const Tariff& tariff);
// What a rig's day costs beyond its stages: the year, starts, paybacks, carbon dioxide.
void addMoney(Json& rig, const Plan& plan, const Answers& answers, std::size_t index);
// All of a rig's part of the result.
Json rigJson(const Plan& plan, const Answers& answers, std::size_t index);
std::string_view outcomeKey(physics::Outcome outcome);

}  // namespace rigs
