// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_fields.hpp"

#include <algorithm>

#include "gui/telling/tariff.hpp"
#include "gui/window/forms/circuit_fields.hpp"
#include "gui/window/forms/field_words.hpp"
#include "gui/window/forms/layer_fields.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

using namespace physics;

std::size_t entriesAt(const rigs::Texts& texts, const std::string& list) {
  std::size_t count = 0;
  for (;; ++count) {
    const std::string entry = list + '/' + std::to_string(count) + '/';
    const auto found = texts.lower_bound(entry);
    if (found == texts.end() || !found->first.starts_with(entry)) return count;
  }
}

constexpr std::size_t kMostRests = 12;
constexpr std::size_t kMostAdditions = 12;
constexpr std::size_t kMostLayers = 10;

std::vector<std::string> daysOfWeek(std::string_view) { return {"weekday", "weekend"}; }
std::vector<std::string> milestones(std::string_view) {
  std::vector<std::string> all;
  for (const auto& [word, what] : rigs::kMilestoneWords) all.emplace_back(word);
  return all;
}

QString hoursOf(const rigs::Plan& plan) {
  return plan.tariff.dependsOnTheHour() ? told(telling::tariffText(plan.tariff)) : QString();
}
QString tiersOf(const rigs::Plan& plan) {
  return plan.tariff.dependsOnUse() ? told(telling::tariffText(plan.tariff)) : QString();
}

FieldSection rulesSection() {
  return {PlanFields::tr("Electrical rules"),
          {{.place = "/place/region", .kind = FieldKind::Choice, .choices = regions},
           {.place = "/place/edition", .kind = FieldKind::Choice, .choices = editionsOf}}};
}

FieldSection airSection() {
  const std::vector<Companion> room{{"/place/air/volume", "40 m3"}};
  return {
      PlanFields::tr("The room's air"),
      {{.place = "/place/air/volume", .conversion = convertedRoom, .removes = "/place/air"},
       {.place = "/place/air/air_changes",
        .kind = FieldKind::Number,
        .replaces = {"/place/air/airflow"},
        .companions = room},
       {.place = "/place/air/airflow",
        .conversion = convertedAirflow,
        .replaces = {"/place/air/air_changes"},
        .companions = room},
       {.place = "/place/air/outdoors", .conversion = converted<Temperature>, .companions = room},
       {.place = "/place/air/outdoor_humidity", .companions = room},
       {.place = "/place/air/hood_captures", .companions = room},
       {.place = "/place/air/hold_humidity", .companions = room},
       {.place = "/place/air/window_u",
        .conversion = converted<HeatTransferCoefficient>,
        .companions = room}}};
}

FieldSection priceSection() {
  return {PlanFields::tr("Price of energy"),
          {{.place = "/tariff/price",
            .replaces = {"/tariff/times", "/tariff/tiers", "/tariff/used_this_month"},
            .removes = "/tariff"},
           {.place = "/tariff/times", .kind = FieldKind::Shown, .shown = hoursOf},
           {.place = "/tariff/tiers", .kind = FieldKind::Shown, .shown = tiersOf},
           {.place = "/tariff/name"},
           {.place = "/tariff/dated"},
           {.place = "/tariff/day", .kind = FieldKind::Choice, .choices = daysOfWeek},
           {.place = "/tariff/used_this_month"},
           {.place = "/tariff/rebate"},
           {.place = "/tariff/brew_from", .companions = {{"/tariff/brew_until", "22:00"}}},
           {.place = "/tariff/brew_until", .companions = {{"/tariff/brew_from", "06:00"}}},
           {.place = "/tariff/brews_per_year", .kind = FieldKind::Number},
           {.place = "/tariff/jacket_price", .kind = FieldKind::Number},
           {.place = "/tariff/element_price", .kind = FieldKind::Number},
           {.place = "/tariff/co2_per_kWh", .conversion = converted<Mass>},
           {.place = "/tariff/co2_source"}}};
}

FieldSection sizeSection() {
  return {PlanFields::tr("Batch"),
          {{.place = "/batch/wort", .conversion = converted<Volume>, .replaces = {"/batch/water"}},
           {.place = "/batch/water", .conversion = converted<Volume>, .replaces = {"/batch/wort"}},
           {.place = "/batch/boil"},
           {.place = "/batch/mashing_in"},
           {.place = "/batch/hot_stand"},
           {.place = "/batch/pitching_temperature", .conversion = converted<Temperature>}}};
}

FieldSection mashSection(std::size_t rests) {
  FieldSection mash{PlanFields::tr("Mash"), {}};
  for (std::size_t i = 0; i < rests; ++i) {
    const std::string rest = "/batch/mash/rests/" + std::to_string(i);
    mash.fields.push_back({.place = rest + "/temperature",
                           .conversion = converted<Temperature>,
                           .replaces = {"/batch/mash/unplugged"},
                           .companions = {{rest + "/time", i == 0 ? "60 min" : "10 min"}},
                           .removes = rest});
    mash.fields.push_back({.place = rest + "/time", .replaces = {"/batch/mash/unplugged"}});
  }
  mash.fields.push_back({.place = "/batch/mash/unplugged/temperature",
                         .conversion = converted<Temperature>,
                         .replaces = {"/batch/mash/rests"},
                         .companions = {{"/batch/mash/unplugged/time", "60 min"}},
                         .removes = "/batch/mash/unplugged"});
  mash.fields.push_back({.place = "/batch/mash/unplugged/time", .replaces = {"/batch/mash/rests"}});
  return mash;
}

// The last one is empty: whoever fills it in adds one.
FieldSection additionSection(std::size_t count) {
  FieldSection section{PlanFields::tr("Additions to the boil"), {}};
  for (std::size_t i = 0; i < count; ++i) {
    const std::string one = "/batch/additions/" + std::to_string(i);
    section.fields.push_back({.place = one + "/what",
                              .companions = {{one + "/mass", "500 g"},
                                             {one + "/extract", "100 %"},
                                             {one + "/before_end", "10 min"}},
                              .removes = one});
    section.fields.push_back({.place = one + "/mass",
                              .conversion = converted<Mass>,
                              .replaces = {one + "/water"},
                              .companions = {{one + "/extract", "100 %"}}});
    section.fields.push_back({.place = one + "/water",
                              .conversion = converted<Volume>,
                              .replaces = {one + "/mass", one + "/extract"}});
    section.fields.push_back({.place = one + "/extract"});
    section.fields.push_back({.place = one + "/temperature", .conversion = converted<Temperature>});
    section.fields.push_back({.place = one + "/before_end"});
  }
  return section;
}

std::vector<std::string> rinseHeatings(std::string_view) {
  return {"same circuit", "another circuit", "not electric"};
}
std::vector<std::string> elementMeanwhile(std::string_view) { return {"off", "on"}; }

FieldSection liftSection() {
  const std::vector<Companion> needed{{"/batch/rinse/volume", "4 L"},
                                      {"/batch/rinse/temperature", "75 C"},
                                      {"/batch/rinse/heated", "another circuit"}};
  return {PlanFields::tr("Lifted grain"),
          {{.place = "/batch/rinse/volume",
            .conversion = converted<Volume>,
            .companions = needed,
            .removes = "/batch/rinse"},
           {.place = "/batch/rinse/temperature",
            .conversion = converted<Temperature>,
            .companions = needed},
           {.place = "/batch/rinse/heated",
            .kind = FieldKind::Choice,
            .choices = rinseHeatings,
            .companions = needed},
           {.place = "/batch/rinse/power", .companions = needed},
           {.place = "/batch/rinse/efficiency", .companions = needed},
           {.place = "/batch/rinse/reached", .companions = needed},
           {.place = "/batch/drain/time", .removes = "/batch/drain"},
           {.place = "/batch/drain/element",
            .kind = FieldKind::Choice,
            .choices = elementMeanwhile,
            .companions = {{"/batch/drain/time", "15 min"}}}}};
}

FieldSection grainSection() {
  return {PlanFields::tr("Grain"),
          {{.place = "/batch/grain/mass",
            .conversion = converted<Mass>,
            .companions = {{"/batch/mash/rests/0/temperature", "66 C"},
                           {"/batch/mash/rests/0/time", "60 min"}},
            .removes = "/batch/grain"},
           {.place = "/batch/grain/temperature", .conversion = converted<Temperature>},
           {.place = "/batch/grain/moisture"},
           {.place = "/batch/grain/extract"},
           {.place = "/batch/grain/absorption", .conversion = converted<VolumePerMass>},
           {.place = "/batch/grain/displacement", .conversion = converted<VolumePerMass>},
           {.place = "/batch/grain/specific_heat", .conversion = converted<SpecificHeat>},
           {.place = "/batch/grain/slaking_heat", .conversion = converted<SpecificEnergy>}}};
}

FieldSection placeSection() {
  return {PlanFields::tr("Place"),
          {{.place = "/place/altitude",
            .conversion = converted<Length>,
            .replaces = {"/place/pressure"}},
           {.place = "/place/pressure",
            .conversion = converted<Pressure>,
            .replaces = {"/place/altitude"}},
           {.place = "/place/room", .conversion = converted<Temperature>},
           {.place = "/place/water", .conversion = converted<Temperature>},
           {.place = "/place/humidity"},
           {.place = "/place/draught", .conversion = converted<Velocity>},
           {.place = "/place/cooling_water", .conversion = converted<Temperature>}}};
}

FieldSection goalsSection() {
  return {PlanFields::tr("Goals"),
          {{.place = "/goals/boil_within"},
           {.place = "/goals/boil_off"},
           {.place = "/goals/headspace"},
           {.place = "/goals/unplugged"}}};
}

FieldSection planSection() {
  return {PlanFields::tr("Plan"),
          {{.place = "/title"},
           {.place = "/day_starts", .replaces = {"/ready"}},
           {.place = "/ready/what",
            .kind = FieldKind::Choice,
            .choices = milestones,
            .replaces = {"/day_starts"},
            .companions = {{"/ready/at", "11:00"}}},
           // The keyboard goes to another choice by way of none, which must not lose the clock.
           {.place = "/ready/at",
            .replaces = {"/day_starts"},
            .companions = {{"/ready/what", "boil"}},
            .removes = "/ready"}}};
}

FieldSection comparedSection(const ListLengths& lengths) {
  FieldSection compared{PlanFields::tr("Jacket to compare"), {}};
  addLayers(compared, "/jacket_to_compare/side", lengths.compared);
  addLayers(compared, "/jacket_to_compare/lid", lengths.comparedLid);
  compared.fields.push_back(outsideField("/jacket_to_compare"));
  return compared;
}

}  // namespace

ListLengths listLengths(const rigs::Texts& texts, const std::vector<rigs::Texts>& inherited) {
  ListLengths lengths;
  const auto layers = [&texts](const std::string& list, std::size_t& length) {
    length = std::max(length, std::min(entriesAt(texts, list) + 1, kMostLayers));
  };
  lengths.rests = std::min(entriesAt(texts, "/batch/mash/rests") + 1, kMostRests);
  lengths.additions = std::min(entriesAt(texts, "/batch/additions") + 1, kMostAdditions);
  layers("/jacket_to_compare/side", lengths.compared);
  layers("/jacket_to_compare/lid", lengths.comparedLid);
  for (std::size_t i = 0; i < inherited.size(); ++i) {
    const std::string rig = "/rigs/" + std::to_string(i);
    layers(rig + "/jacket/side", lengths.ofRigs.side);
    layers(rig + "/jacket/base", lengths.ofRigs.base);
    layers(rig + "/jacket/lid", lengths.ofRigs.lid);
    layers(rig + "/recirculation/insulation", lengths.ofRigs.hose);
    const auto from = [&](const std::string& list, std::size_t& length) {
      length = std::max(length, std::min(entriesAt(inherited[i], list) + 1, kMostLayers));
    };
    from("/jacket/side", lengths.ofRigs.side);
    from("/jacket/base", lengths.ofRigs.base);
    from("/jacket/lid", lengths.ofRigs.lid);
  }
  return lengths;
}

std::vector<FieldSection> batchSections(const ListLengths& lengths) {
  return inWords({sizeSection(), mashSection(lengths.rests), grainSection(), liftSection(),
                  additionSection(lengths.additions)},
                 "");
}

std::vector<FieldSection> placeSections(const ListLengths& lengths) {
  return inWords({placeSection(), rulesSection(), airSection(), goalsSection(), priceSection(),
                  planSection(), comparedSection(lengths)},
                 "");
}

}  // namespace gui
