// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/vessel_reader.hpp"

#include <algorithm>
#include <numbers>

#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"

namespace rigs {
namespace {

using namespace physics;

struct Face {
  double emissivity = 0.9;
  std::string finish;
};

// How a face of a material looks: a word, or an emissivity.
std::optional<Face> readFinish(const JsonCursor& at, const Material& material) {
  if (at.has("finish") && at.has("emissivity")) {
    at.error("emissivity",
             advised(Told(TOLD("Problem", "both a finish and an emissivity are stated")),
                     Told(TOLD("Problem", "keep one of them"))));
    return std::nullopt;
  }
  if (at.has("emissivity")) {
    const auto emissivity = at.quantity<double>("emissivity", {0.01, 1.0});
    if (!emissivity) return std::nullopt;
    return Face{.emissivity = *emissivity, .finish = "emissivity " + formatNumber(*emissivity)};
  }
  std::vector<std::string_view> words;
  for (const Finish& finish : material.finishes)
    if (!finish.word.empty()) words.push_back(finish.word);
  if (!at.has("finish")) {
    // Metals are asked for, since the answer changes their radiation several times over.
    const Finish& usual = material.finishes.front();
    if (words.size() <= 1 || usual.word == "enamel" || usual.word == "plastic")
      return Face{.emissivity = usual.emissivity, .finish = usual.word};
    at.error(
        "finish",
        Told(TOLD("Problem", "how does the %1 look? Write %2, or an \"emissivity\" from 0.01 to 1"),
             Bundled{"Catalogue", material.name}, choice(words)));
    return std::nullopt;
  }
  const auto word = at.text("finish", kLongestName);
  if (!word) return std::nullopt;
  if (const Finish* finish = material.finish(*word); finish && !word->empty())
    return Face{.emissivity = finish->emissivity, .finish = finish->word};
  at.error("finish",
           perhapsMeant(
               advised(Told(TOLD("Problem", "%1 is no known look of %2"), Quoted{*word},
                            Bundled{"Catalogue", material.name}),
                       words.empty()
                           ? Told(TOLD("Problem", "leave it out, or write an \"emissivity\""))
                           : Told(TOLD("Problem", "write %1, or an \"emissivity\" from 0.01 to 1"),
                                  choice(words))),
               nearestWord(*word, words)));
  return std::nullopt;
}

// A straight cylinder with a base: what the shell weighs if nobody weighed it.
Mass shellMass(const Vessel& vessel, MassDensity density) {
  const Area sheet = crossSection(vessel) + std::numbers::pi * vessel.innerDiameter * vessel.height;
  return sheet * vessel.wallThickness * density;
}

std::optional<VesselRead> readShell(const Layers& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/vessel"));
  const Material* material = readMaterial(at.with("material"), "material", Use::Vessel);
  const auto face =
      material ? readFinish(at.withAny({"finish", "emissivity"}), *material) : std::nullopt;
  const auto diameter =
      at.with("inner_diameter")
          .quantity<Length>("inner_diameter", {millimetres(80.0), millimetres(2000.0)});
  const auto height =
      at.with("height").quantity<Length>("height", {millimetres(50.0), millimetres(2500.0)});
  const auto wall = at.with("wall").quantity<Length>("wall", {millimetres(0.2), millimetres(20.0)});
  const auto mass =
      at.with("mass").quantityIfGiven<Mass>("mass", {kilograms(0.1), kilograms(1000.0)});
  const bool massGood = mass || !at.has("mass");
  if (!material || !face || !diameter || !height || !wall || !massGood) return std::nullopt;
  VesselRead read{.bare = {.innerDiameter = *diameter,
                           .height = *height,
                           .wallThickness = *wall,
                           .wallConductivity = material->conductivity,
                           .mass = kilograms(0.0),
                           .specificHeat = material->specificHeat,
                           .side = {.insulation = {}, .emissivity = face->emissivity},
                           .base = {.insulation = {}, .emissivity = face->emissivity},
                           .lid = {.insulation = {}, .emissivity = face->emissivity},
                           .open = {},
                           .support = {}},
                  .hasLid = false,
                  .finish = face->finish};
  const Mass computed = shellMass(read.bare, material->density);
  read.bare.mass = mass.value_or(computed);
  if (mass && (*mass < 0.3 * computed || *mass > 6.0 * computed))
    at.with("mass").warn(
        "mass",
        Told(TOLD("Problem", "%1 is far from the %2 that the stated size and wall would weigh"),
             amount(*mass), amount(computed)));
  return read;
}

std::optional<Support> readSupport(const JsonCursor& at, Length diameter) {
  enum class StandKind { Table, ThickFloor, Legs };
  at.warnAboutKeysExcept(keysOf("/rigs/*/stands_on"));
  const auto kind = at.oneOf<StandKind>("kind", {{"table", StandKind::Table},
                                                 {"thick floor", StandKind::ThickFloor},
                                                 {"legs", StandKind::Legs}});
  if (!kind) return std::nullopt;
  if (*kind == StandKind::Legs) return Support{};
  const Material* material = readMaterial(at, "material", Use::Stand);
  if (*kind == StandKind::ThickFloor) {
    if (!material) return std::nullopt;
    return onThickFloor(diameter, material->conductivity);
  }
  const auto thickness = at.quantity<Length>("thickness", {millimetres(1.0), millimetres(200.0)});
  if (!material || !thickness) return std::nullopt;
  return onTable(diameter, *thickness, material->conductivity);
}

std::optional<LidUse> readOpen(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/lid/open"));
  constexpr Range<double> kShares{0.0, 1.0};
  const auto strike = at.optionalQuantity("strike", 0.0, kShares);
  const auto mash = at.optionalQuantity("mash", 0.0, kShares);
  const auto heating = at.optionalQuantity("heating", 0.0, kShares);
  const auto boil = at.optionalQuantity("boil", 1.0, kShares);
  if (!strike || !mash || !heating || !boil) return std::nullopt;
  if (*boil < 0.05)
    at.warn("boil",
            withExample(advised(Told(TOLD("Problem",
                                          "never boil under a closed lid: it boils over, and in a "
                                          "tight vessel pressure rises")),
                                Told(TOLD("Problem", "leave at least a gap"))),
                        inQuotes("25 %")));
  return LidUse{.strike = *strike, .mash = *mash, .heating = *heating, .boil = *boil};
}

// Puts the lid on.
bool readLid(const JsonCursor& at, VesselRead& read) {
  at.warnAboutKeysExcept(keysOf("/rigs/*/lid"));
  const Material* material = readMaterial(at, "material", Use::Lid);
  const auto face = material ? readFinish(at, *material) : std::nullopt;
  const auto thickness =
      at.quantityIfGiven<Length>("thickness", {millimetres(0.2), millimetres(100.0)});
  std::optional<LidUse> open = LidUse{.strike = 0.0, .mash = 0.0, .heating = 0.0, .boil = 1.0};
  if (at.has("open")) {
    const auto object = at.object("open");
    open = object ? readOpen(*object) : std::nullopt;
  }
  // What a lid lying on its rim lets out all round. 0 for one that fits.
  const auto gap = at.optionalQuantity<double>("gap", physics::kRimGap, {0.0, 0.2});
  if (!material || !face || !open || !gap || (at.has("thickness") && !thickness)) return false;
  read.hasLid = true;
  for (double* share : {&open->strike, &open->mash, &open->heating, &open->boil}) {
    *share = std::max(*share, *gap);
  }
  read.bare.open = *open;
  read.bare.lid.emissivity = face->emissivity;
  if (thickness) read.bare.lid.insulation = {layerOf(*thickness, material->conductivity)};
  return true;
}

}  // namespace

std::optional<VesselRead> readVessel(const Layers& rig) {
  const auto shell = rig.within("vessel");
  auto read = shell ? readShell(*shell) : std::nullopt;
  // Without a vessel the rest is still read, for its problems; 0.35 m is only a stand-in.
  VesselRead standIn{};
  VesselRead& target = read ? *read : standIn;
  bool good = read.has_value();

  const JsonCursor& withLid = rig.with("lid");
  if (withLid.has("lid") && !isNone(withLid, "lid")) {
    const auto lid = withLid.object("lid");
    good = lid && readLid(*lid, target) && good;
  }
  const Length diameter = read ? read->bare.innerDiameter : metres(0.35);
  const JsonCursor& withStand = rig.with("stands_on");
  if (withStand.has("stands_on")) {
    const auto object = withStand.object("stands_on");
    const auto support = object ? readSupport(*object, diameter) : std::nullopt;
    if (support) target.bare.support = *support;
    good = support && good;
  } else {
    // What most kettles stand on.
    target.bare.support =
        onTable(diameter, millimetres(25.0), catalogue().material("plywood")->conductivity);
  }
  return good ? read : std::nullopt;
}

}  // namespace rigs
