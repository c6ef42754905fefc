// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/rig_words.hpp"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

#include "gui/telling/jacket.hpp"
#include "gui/telling/letters.hpp"
#include "physics/vessel.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/json_whole_rig.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::Bundled;
using rigs::Joint;
using rigs::List;
using rigs::RigPlan;
using rigs::Told;

constexpr std::string_view kRig = "/rigs/*";

// Around a part in a sentence that will be cut: control characters that no text of a plan has.
constexpr char kBegins = '\x01';
constexpr char kEnds = '\x02';

enum class Cut { No, Yes };

// The part that will be the next of the sentence's.
Told inSentence(const RigSentence& sentence, Told text, Cut cut) {
  if (cut == Cut::No) return text;
  const auto index = static_cast<char>('A' + static_cast<int>(sentence.parts.size()));
  return Told(TOLD("Rig", "%1%2%3"), rigs::Verbatim{{kBegins, index}}, std::move(text),
              rigs::Verbatim{{kEnds}});
}

// A part, and how it is told where nothing stands beside it.
struct Part {
  SentencePart said;
  Told alone;
};

class Parts {
 public:
  Parts(const RigPlan& rig, const rigs::Reader& reader) : rig_(rig), reader_(reader) {
    volume();
    metal();
    elements();
    jacket();
    lid();
    boilPower();
    hose();
    pump();
    chiller();
    stand();
    measured();
  }

  const std::vector<Part>& all() const { return all_; }
  const Part* of(RigAspect aspect) const {
    const auto found = std::find_if(all_.begin(), all_.end(),
                                    [&](const Part& part) { return part.said.aspect == aspect; });
    return found == all_.end() ? nullptr : &*found;
  }

 private:
  using Keys = std::vector<std::string>;

  // Keys count from the rig on.
  void add(RigAspect aspect, Told text, const Keys& keys, Told alone = {}) {
    SentencePart said{aspect, text, {}, true};
    for (const std::string& key : keys) {
      said.keys.push_back(std::string(kRig) + key);
      said.assumed = said.assumed && !states(key);
    }
    all_.push_back({std::move(said), alone.empty() ? std::move(text) : std::move(alone)});
  }

  // "*" for the first of a list: a list that is stated has one.
  bool states(std::string key) const {
    if (const std::size_t star = key.find('*'); star != std::string::npos) key[star] = '0';
    return rig_.written.has(key);
  }

  void volume() {
    add(RigAspect::Volume,
        Told::just(
            amount(physics::capacity(rig_.rig.vessel), {.significantDigits = 3, .decimals = {}})),
        {"/vessel/inner_diameter", "/vessel/height"});
  }

  void metal() {
    const std::string_view material = rig_.written.at("/vessel/material");
    const bool emissivity = rig_.written.has("/vessel/emissivity");
    Told look = emissivity ? Told(TOLD("Catalogue", "emissivity %1"),
                                  rigs::Number{rig_.bare.vessel.side.emissivity})
                           : Told::just(Bundled{"Catalogue", rig_.finish});
    Told text = material.empty()      ? Told(TOLD("Rig", "%1 metal"), std::move(look))
                : rig_.finish.empty() ? Told::just(Bundled{"Catalogue", std::string(material)})
                : emissivity          ? Told(TOLD("Rig", "%1 of %2"),
                                             Bundled{"Catalogue", std::string(material)}, std::move(look))
                                      : Told(TOLD("Rig", "%1 %2"), std::move(look),
                                             Bundled{"Catalogue", std::string(material)});
    add(RigAspect::Metal, std::move(text),
        {"/vessel/material", emissivity ? "/vessel/emissivity" : "/vessel/finish"});
  }

  // --- What heats it.

  static Told elementText(const physics::Element& element) {
    return Told(TOLD("Rig", "%1 at %2"), amount(element.rating), amount(element.ratedAt));
  }
  static Told circuitAlone(const physics::Supply& supply) {
    return Told(TOLD("Rig", "on a circuit of %1 and %2"), amount(supply.nominal),
                amount(supply.rating));
  }
  static Told circuitText(const physics::Element& element, const physics::Supply& supply) {
    if (element.ratedAt != supply.nominal) return circuitAlone(supply);
    return Told(TOLD("Rig", "on a circuit of %1"), amount(supply.rating));
  }
  static Keys circuitKeys(const std::string& supply) {
    return {supply + "/from", supply + "/voltage", supply + "/current"};
  }

  void elements() {
    const physics::Rig& rig = rig_.rig;
    Keys keys{"/element/power", "/element/rated_voltage"};
    Told text = elementText(rig.element);
    if (!rig_.circuits.empty() && rig_.circuits.front().elements.size() > 1) {
      const rigs::CircuitPlan& circuit = rig_.circuits.front();
      List several{{}, Joint::And};
      for (const physics::Element& one : circuit.elements)
        several.items.emplace_back(elementText(one));
      text = circuit.wiring == physics::Wiring::Series
                 ? Told(TOLD("Rig", "%1 in series"), std::move(several))
                 : Told(TOLD("Rig", "%1 in parallel"), std::move(several));
    }
    if (rig_.written.has("/elements"))
      keys = {"/elements/*/power", "/elements/*/rated_voltage", "/wired"};
    add(RigAspect::Element, std::move(text), keys);
    add(RigAspect::Circuit, circuitText(rig.element, rig.supply), circuitKeys("/supply"),
        circuitAlone(rig.supply));
    if (!rig.second) return;
    keys.pop_back();
    for (const char* supply : {"/second_supply", "/supply"})
      if (supply == std::string_view("/supply") || rig_.written.has(supply)) {
        const Keys more = circuitKeys(supply);
        keys.insert(keys.end(), more.begin(), more.end());
        break;
      }
    const Told second = elementText(rig.second->element);
    add(RigAspect::Second,
        Told(TOLD("Rig", "a second element of %1 %2"), second,
             circuitText(rig.second->element, rig.second->supply)),
        keys,
        Told(TOLD("Rig", "also a second element of %1 %2"), second,
             circuitAlone(rig.second->supply)));
  }

  // --- What is around it.

  void jacket() {
    if (!rig_.hasJacket) return add(RigAspect::Jacket, Told(TOLD("Rig", "no jacket")), {"/jacket"});
    Keys keys;
    for (const rigs::FaceText& face : rig_.jacket.faces)
      for (const char* key : {"/material", "/thickness", "/R"})
        if (states("/jacket/" + face.where + "/*" + key))
          keys.push_back("/jacket/" + face.where + "/*" + key);
    Told text = jacketShortly(rig_.jacket, reader_);
    if (isAlikeAllOver(rig_.jacket)) text = Told(TOLD("Rig", "a jacket of %1"), std::move(text));
    if (rig_.written.has("/jacket/outside")) {
      keys.emplace_back("/jacket/outside");
      text = Told(TOLD("Rig", "%1 with %2 outside"), std::move(text), outside());
    }
    add(RigAspect::Jacket, std::move(text), keys);
  }

  Told outside() const {
    if (!rig_.skin.starts_with("emissivity")) return Told::just(Bundled{"Catalogue", rig_.skin});
    return Told(TOLD("Catalogue", "emissivity %1"),
                rigs::Number{rig_.jacketed.vessel.side.emissivity});
  }

  double openAs(const std::string& stage, double otherwise) const {
    const std::string text(rig_.written.at("/lid/open/" + stage));
    const auto read = rigs::parseQuantity<double>(text);
    return text.empty() || !read ? otherwise : *read;
  }

  void lid() {
    if (!rig_.hasLid) return add(RigAspect::Lid, Told(TOLD("Rig", "no lid")), {"/lid"});
    const physics::LidUse& open = rig_.rig.vessel.open;
    const Keys keys{"/lid/open/strike", "/lid/open/mash", "/lid/open/heating", "/lid/open/boil"};
    // What a shut lid lets out all round is not how far it is open.
    const bool shutBefore =
        openAs("strike", 0.0) == 0.0 && openAs("mash", 0.0) == 0.0 && openAs("heating", 0.0) == 0.0;
    if (!shutBefore)
      return add(
          RigAspect::Lid,
          Told(TOLD("Rig",
                    "lid open by %1 for strike, %2 in the mash, %3 on the way to the boil "
                    "and %4 in the boil"),
               amount(open.strike), amount(open.mash), amount(open.heating), amount(open.boil)),
          keys);
    add(RigAspect::Lid,
        open.boil >= 1.0 ? Told(TOLD("Rig", "lid off in the boil"))
                         : Told(TOLD("Rig", "lid open by %1 in the boil"), amount(open.boil)),
        keys);
  }

  void boilPower() {
    if (rig_.rig.boilPower >= 1.0) return;
    add(RigAspect::BoilPower,
        Told(TOLD("Rig", "%1 of the power in the boil"), amount(rig_.rig.boilPower)),
        {"/boil_power"});
  }
  void hose() {
    if (rig_.rig.hose.length <= physics::metres(0.0)) return;
    add(RigAspect::Hose, Told(TOLD("Rig", "a hose of %1"), amount(rig_.rig.hose.length)),
        {"/recirculation/hose_length"});
  }
  void pump() {
    if (rig_.circuits.empty() || !rig_.circuits.front().details.pump) return;
    add(RigAspect::Pump,
        Told(TOLD("Rig", "a pump of %1"), amount(*rig_.circuits.front().details.pump)),
        {"/pump/power"});
  }

  void chiller() {
    const rigs::Chiller& own = rig_.chiller;
    if (!own.isStated) return;
    switch (own.kind) {
      case rigs::Chiller::Kind::Coil:
        return add(RigAspect::Chiller,
                   own.stirred
                       ? Told(TOLD("Rig", "a coil of %1 in stirred wort"), amount(own.length))
                       : Told(TOLD("Rig", "a coil of %1 in still wort"), amount(own.length)),
                   {"/chiller/kind", "/chiller/length", "/chiller/wort"});
      case rigs::Chiller::Kind::Counterflow:
        return add(RigAspect::Chiller,
                   Told(TOLD("Rig", "a counterflow chiller of %1"), amount(own.length)),
                   {"/chiller/kind", "/chiller/length"});
      case rigs::Chiller::Kind::Air:
        return add(RigAspect::Chiller, Told(TOLD("Rig", "chilled by air alone")),
                   {"/chiller/kind"});
    }
  }

  void stand() {
    const std::string_view kind = rig_.written.at("/stands_on/kind");
    const Told material =
        Told::just(Bundled{"Catalogue", std::string(rig_.written.at("/stands_on/material"))});
    if (kind == "legs") {
      add(RigAspect::Stand, Told(TOLD("Rig", "on legs")), {"/stands_on/kind"});
    } else if (kind == "thick floor") {
      add(RigAspect::Stand, Told(TOLD("Rig", "on a thick floor of %1"), material),
          {"/stands_on/kind", "/stands_on/material"});
    } else if (!kind.empty() && rig_.rig.vessel.support != usualTable()) {
      const auto thick = rigs::parseQuantity<physics::Length>(
          std::string(rig_.written.at("/stands_on/thickness")));
      if (!thick) return;
      add(RigAspect::Stand,
          Told(TOLD("Rig", "on a table of %1, %2 thick"), material, amount(*thick)),
          {"/stands_on/kind", "/stands_on/material", "/stands_on/thickness"});
    }
  }

  // --- What its owner read of it.

  void measured() {
    const double losses = rig_.rig.lossFactor, surface = rig_.rig.evaporationFactor;
    if (losses == 1.0 && surface == 1.0) return;
    const auto lost = [&] {
      return Told(TOLD("Rig", "%1 times the computed losses"), rigs::Number{losses});
    };
    const auto evaporates = [&] {
      return Told(TOLD("Rig", "%1 times the computed evaporation"), rigs::Number{surface});
    };
    add(RigAspect::Measured,
        surface == 1.0  ? lost()
        : losses == 1.0 ? evaporates()
                        : Told(TOLD("Rig", "%1 and %2"), lost(), evaporates()),
        {"/loss_factor", "/evaporation_factor"});
  }

  physics::Support usualTable() const {
    return physics::onTable(rig_.rig.vessel.innerDiameter, physics::millimetres(25.0),
                            rigs::catalogue().material("plywood")->conductivity);
  }

  const RigPlan& rig_;
  const rigs::Reader& reader_;
  std::vector<Part> all_;
};

// What a rig does not have that another has.
Told withoutIt(RigAspect aspect) {
  switch (aspect) {
    case RigAspect::Second:
      return Told(TOLD("Rig", "no second circuit"));
    case RigAspect::BoilPower:
      return Told(TOLD("Rig", "all of the power in the boil"));
    case RigAspect::Hose:
      return Told(TOLD("Rig", "no hose"));
    case RigAspect::Pump:
      return Told(TOLD("Rig", "no pump"));
    case RigAspect::Chiller:
      return Told(TOLD("Rig", "no chiller stated"));
    case RigAspect::Stand:
      return Told(TOLD("Rig", "on the usual table"));
    case RigAspect::Measured:
      return Told(TOLD("Rig", "losses and evaporation as computed"));
    default:
      return {};
  }
}

// Whether it is one of those that parts stand for; places count from the rig on.
bool isTold(const std::string& place, const std::vector<Part>& parts) {
  const rigs::Key* key = rigs::keyAt(std::string(kRig) + place);
  if (!key) return true;  // nothing that the rig depends on
  return std::any_of(parts.begin(), parts.end(), [&](const Part& part) {
    const auto& keys = part.said.keys;
    return std::find(keys.begin(), keys.end(), key->place) != keys.end();
  });
}

std::string partOf(const std::string& place) { return place.substr(0, place.find('/', 1)); }

bool isForReaders(const std::string& place) {
  // How sure its factors are makes it no other rig.
  return rigs::isOwnOfEachRig(partOf(place).substr(1)) || place.ends_with("/note") ||
         place.starts_with("/measured/");
}

// That one of them has such a thing and the other has none is told of the thing as a whole.
bool isToldAsAWhole(const std::string& place, const RigPlan& one, const RigPlan& other) {
  static const std::vector<std::string> kWhole{"/lid",      "/jacket",   "/recirculation",
                                               "/pump",     "/chiller",  "/element",
                                               "/elements", "/stands_on"};
  const std::string part = partOf(place);
  const auto lacksIt = [&part](const RigPlan& rig) {
    return !rig.written.has(part) || rig.written.at(part) == "none";
  };
  return std::find(kWhole.begin(), kWhole.end(), part) != kWhole.end() &&
         (lacksIt(one) || lacksIt(other));
}

bool differInDetails(const RigPlan& one, const Parts& ofOne, const RigPlan& other,
                     const Parts& ofOther) {
  rigs::Texts all = one.written.texts;
  all.insert(other.written.texts.begin(), other.written.texts.end());
  return std::any_of(all.begin(), all.end(), [&](const auto& entry) {
    const std::string& place = entry.first;
    return one.written.at(place) != other.written.at(place) && !isForReaders(place) &&
           !isToldAsAWhole(place, one, other) && !isTold(place, ofOne.all()) &&
           !isTold(place, ofOther.all());
  });
}

std::vector<SentencePart> differences(const Parts& parts, const Parts& baseParts) {
  std::vector<SentencePart> all;
  for (int i = 0; i <= static_cast<int>(RigAspect::Measured); ++i) {
    const auto aspect = static_cast<RigAspect>(i);
    const Part* own = parts.of(aspect);
    const Part* there = baseParts.of(aspect);
    if (own && !(there && there->alone == own->alone)) {
      all.push_back(own->said);
      all.back().text = own->alone;
    } else if (!own && there) {
      all.push_back({aspect, withoutIt(aspect), there->said.keys, false});
    }
  }
  return all;
}

Told likeIt(const std::string& other, List all, bool inDetails) {
  const rigs::Verbatim called{other};
  if (all.items.empty())
    return inDetails ? Told(TOLD("Rig", "like %1 but for details"), called)
                     : Told(TOLD("Rig", "like %1"), called);
  return inDetails ? Told(TOLD("Rig", "like %1, but %2, and other details"), called, std::move(all))
                   : Told(TOLD("Rig", "like %1, but %2"), called, std::move(all));
}

std::optional<std::size_t> followed(const rigs::Plan& plan, std::size_t rig) {
  if (!plan.rigs[rig].sameAs) return std::nullopt;
  const auto slots = rigs::slotsOf(plan.rigs);
  const auto at = std::find(slots.begin(), slots.end(), *plan.rigs[rig].sameAs);
  if (at == slots.end()) return std::nullopt;
  return static_cast<std::size_t>(at - slots.begin());
}

RigSentence inFull(const RigPlan& rig, const rigs::Reader& reader, Cut cut) {
  const Parts parts(rig, reader);
  RigSentence sentence;
  std::map<RigAspect, Told> texts;
  List rest{{}, Joint::Comma};
  for (const Part& part : parts.all()) {
    Told text = inSentence(sentence, part.said.text, cut);
    sentence.parts.push_back(part.said);
    if (part.said.aspect > RigAspect::Second) {
      rest.items.emplace_back(std::move(text));
    } else {
      texts.emplace(part.said.aspect, std::move(text));
    }
  }
  const auto text = [&](RigAspect aspect) { return texts.at(aspect); };
  sentence.text =
      texts.contains(RigAspect::Second)
          ? Told(TOLD("Rig", "a kettle of %1 in %2 with %3 %4 and %5, %6"), text(RigAspect::Volume),
                 text(RigAspect::Metal), text(RigAspect::Element), text(RigAspect::Circuit),
                 text(RigAspect::Second), std::move(rest))
          : Told(TOLD("Rig", "a kettle of %1 in %2 with %3 %4, %5"), text(RigAspect::Volume),
                 text(RigAspect::Metal), text(RigAspect::Element), text(RigAspect::Circuit),
                 std::move(rest));
  return sentence;
}

RigSentence inWords(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader, Cut cut) {
  const RigPlan& own = plan.rigs[rig];
  const auto base = followed(plan, rig);
  // The first is told in full, or by the one that it follows: never by who is told by it.
  if (!base && (rig == 0 || plan.rigs.front().sameAs)) return inFull(own, reader, cut);
  const RigPlan& other = plan.rigs[base.value_or(0)];
  const Parts parts(own, reader);
  const Parts otherParts(other, reader);
  const auto differ = differences(parts, otherParts);
  if (!base && differ.size() > kFewDifferences) return inFull(own, reader, cut);
  RigSentence sentence;
  List all{{}, Joint::Comma};
  for (const SentencePart& part : differ) {
    all.items.emplace_back(inSentence(sentence, part.text, cut));
    sentence.parts.push_back(part);
  }
  sentence.like = base.value_or(0);
  sentence.text = likeIt(letter(rigs::slotsOf(plan.rigs)[*sentence.like]), std::move(all),
                         differInDetails(own, parts, other, otherParts));
  return sentence;
}

}  // namespace

RigSentence rigInFull(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader) {
  return inFull(plan.rigs[rig], reader, Cut::No);
}

RigSentence rigInWords(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader) {
  return inWords(plan, rig, reader, Cut::No);
}

std::vector<SentencePiece> rigInPieces(const rigs::Plan& plan, std::size_t rig,
                                       const rigs::Reader& reader) {
  const RigSentence sentence = inWords(plan, rig, reader, Cut::Yes);
  const std::string text = rigs::tell(sentence.text, reader);
  std::vector<SentencePiece> pieces;
  for (std::size_t from = 0; from < text.size();) {
    const bool part = text[from] == kBegins;
    const std::size_t to = std::min(text.find(part ? kEnds : kBegins, from), text.size());
    if (part) {
      const auto index = static_cast<std::size_t>(text[from + 1] - 'A');
      pieces.push_back({text.substr(from + 2, to - from - 2), sentence.parts[index]});
    } else {
      pieces.push_back({text.substr(from, to - from), std::nullopt});
    }
    from = part ? to + 1 : to;
  }
  return pieces;
}

}  // namespace gui::telling
