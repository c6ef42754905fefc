// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_edits.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/rig_variants.hpp"

namespace gui {
namespace {

std::string parentOf(std::string_view pointer) {
  return std::string(pointer.substr(0, pointer.rfind('/')));
}

std::string firstPart(std::string_view place) {
  return std::string(place.substr(1, place.find('/', 1) - 1));
}

bool isAnywhereBelow(const rigs::Texts& texts, const std::string& place) {
  const auto found = texts.lower_bound(place);
  return found != texts.end() && found->first.starts_with(place) &&
         (found->first.size() == place.size() || found->first[place.size()] == '/');
}

// Parts of which a plan can say that there are none.
bool mayBeNone(std::string_view part) {
  static constexpr std::array<std::string_view, 4> kParts{"lid", "jacket", "cable",
                                                          "recirculation"};
  return std::find(kParts.begin(), kParts.end(), part) != kParts.end();
}

// Takes it out, and upwards whatever is left empty, down to `root`.
std::string pruned(std::string document, std::string pointer, const std::string& root) {
  document = rigs::without(document, pointer);
  for (std::string parent = parentOf(pointer); parent.size() > root.size();
       parent = parentOf(parent)) {
    if (!rigs::exists(document, parent)) continue;
    const std::string left = rigs::valueAt(document, parent);
    if (left != "{}" && left != "[]") break;
    document = rigs::without(document, parent);
  }
  return document;
}

bool isNumber(std::string_view text) {
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size();
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

// A document on its way from one text to the next; places count from the owner on.
class Edit {
 public:
  Edit(std::string document, const FieldOwner& owner)
      : document_(std::move(document)), owner_(owner) {}

  // The part that the place is in, in full: a part the rig only has from elsewhere is not there to
  // be changed.
  void state(const std::string& place) {
    if (!owner_.rig) return;
    const std::string part = firstPart(place);
    if (part.size() + 1 == place.size()) return;  // the part itself is the value
    document_ = rigs::withPartStated(document_, *owner_.rig, part, *owner_.origins);
    const std::string at = owner_.prefix() + '/' + part;
    if (rigs::textAt(document_, at) == "none") document_ = rigs::without(document_, at);
  }

  void put(const std::string& place, std::string_view text) {
    document_ = rigs::withText(document_, owner_.prefix() + place, text);
  }
  void putNumber(const std::string& place, std::string_view number) {
    document_ = rigs::withValue(document_, owner_.prefix() + place, number);
  }

  // With what is left empty around it; a part that the rig would then have from elsewhere is
  // stated as none.
  void takeOut(const std::string& place) {
    const std::string part = firstPart(place);
    const std::string partAt = owner_.prefix() + '/' + part;
    const bool wasThere = rigs::exists(document_, partAt);
    document_ = pruned(std::move(document_), owner_.prefix() + place, owner_.prefix());
    if (!owner_.rig || !wasThere || rigs::exists(document_, partAt) || !mayBeNone(part)) return;
    if (isAnywhereBelow(rigs::inheritedTexts(*owner_.origins), '/' + part))
      document_ = rigs::withText(document_, partAt, "none");
  }

  bool has(const std::string& place) const {
    return rigs::exists(document_, owner_.prefix() + place);
  }
  std::optional<std::string> textAt(const std::string& place) const {
    return rigs::textAt(document_, owner_.prefix() + place);
  }
  std::string take() { return std::move(document_); }

 private:
  std::string document_;
  const FieldOwner& owner_;
};

constexpr std::array<std::string_view, 5> kElementKeys{"power", "rated_voltage", "top_height",
                                                       "diameter", "heated_length"};
constexpr std::string_view kElement = "/element/";
const std::string kFirstElement = "/elements/0";
constexpr std::string_view kSecondElement = "/elements/1/";

// The first element moves into the list that stands in place of it; the second begins as its twin.
void addSecondElement(Edit& edit, const FieldOwner& owner) {
  const rigs::Texts inherited = rigs::inheritedTexts(*owner.origins);
  for (const std::string_view key : kElementKeys) {
    const std::string place = "/element/" + std::string(key);
    const auto from = inherited.find(place);
    std::string text = from == inherited.end() ? std::string() : from->second;
    if (const auto own = edit.textAt(place)) text = *own;
    if (text.empty()) continue;
    edit.put("/elements/0/" + std::string(key), text);
    edit.put(std::string(kSecondElement) + std::string(key), text);
  }
  if (edit.has("/element")) edit.takeOut("/element");
  if (!edit.has("/wired")) edit.put("/wired", "parallel");
}

// The first element is the only one again, and what fed the second is gone.
void removeSecondElement(Edit& edit) {
  for (const std::string_view key : kElementKeys) {
    const auto text = edit.textAt("/elements/0/" + std::string(key));
    if (text) edit.put("/element/" + std::string(key), *text);
  }
  for (const char* part : {"/elements", "/wired", "/second_supply", "/second_cable"})
    if (edit.has(part)) edit.takeOut(part);
}

// A finish that the new material does not have would only be a riddle: take its first one.
void fitFinish(Edit& edit, const PlanField& field, std::string_view material) {
  if (!field.place.ends_with("/material") ||
      (!field.place.starts_with("/vessel") && !field.place.starts_with("/lid")))
    return;
  const std::string part = parentOf(field.place);
  const rigs::Material* known = rigs::catalogue().material(material);
  if (!known || edit.has(part + "/emissivity")) return;
  const auto stated = edit.textAt(part + "/finish");
  if (stated && known->finish(*stated)) return;
  if (known->finishes.front().word.empty()) {
    if (stated) edit.takeOut(part + "/finish");
    return;
  }
  edit.put(part + "/finish", known->finishes.front().word);
}

void putLayerAmount(Edit& edit, const std::string& place, std::string_view text) {
  const std::string layer = parentOf(place);
  const bool isR = rigs::parseQuantity<physics::ThermalInsulance>(text).quantity.has_value();
  const std::string other = layer + (isR ? "/thickness" : "/R");
  edit.put(layer + (isR ? "/R" : "/thickness"), text);
  if (edit.has(other)) edit.takeOut(other);
}

// The field is no longer stated, nor what only goes with it.
void empty(Edit& edit, const PlanField& field) {
  const bool wholePart = !field.removes.empty();
  // Nothing to take out where the part is only the origin's.
  edit.state(wholePart ? field.removes + "/x" : field.place);
  const std::string resistance = parentOf(field.place) + "/R";
  if (field.kind == FieldKind::LayerAmount && edit.has(resistance)) edit.takeOut(resistance);
  edit.takeOut(wholePart ? field.removes : field.place);
}

// The field says `text`, and what cannot stand without it or beside it follows.
void fill(Edit& edit, const PlanField& field, std::string_view text) {
  edit.state(field.place);
  if (field.kind == FieldKind::LayerAmount) {
    putLayerAmount(edit, field.place, text);
  } else if (field.kind == FieldKind::Number && isNumber(text)) {
    edit.putNumber(field.place, text);
  } else {
    edit.put(field.place, text);
  }
  for (const std::string& other : field.replaces)
    if (edit.has(other)) edit.takeOut(other);
  for (const Companion& companion : field.companions) {
    const bool isLayer =
        companion.place.ends_with("/thickness") && edit.has(parentOf(companion.place) + "/R");
    if (!edit.has(companion.place) && !isLayer) edit.put(companion.place, companion.text);
  }
  fitFinish(edit, field, text);
}

bool hasLid(const std::string& document, const std::string& rig,
            const std::vector<std::string>& origins) {
  // A rig that follows another says null where it takes that one's off.
  if (const auto own = rigs::textAt(document, rig + "/lid"))
    return *own != "none" && *own != "null";
  return rigs::exists(document, rig + "/lid") ||
         isAnywhereBelow(rigs::inheritedTexts(origins), "/lid");
}

// The plan's own jacket to compare is what the person has in mind; its lid goes on a lid only.
std::string withJacket(const std::string& document, const std::string& rig,
                       const std::vector<std::string>& origins) {
  const std::string own = "/jacket_to_compare";
  const bool isStated = rigs::exists(document, own) && rigs::textAt(document, own) != "none";
  const std::string jacket =
      isStated ? rigs::valueAt(document, own)
               : R"({"side": [{"material": "closed-cell rubber foam", "thickness": "13 mm"}]})";
  std::string wrapped = rigs::withValue(document, rig + "/jacket", jacket);
  return hasLid(document, rig, origins) ? wrapped
                                        : pruned(std::move(wrapped), rig + "/jacket/lid", rig);
}

// Edited as if it stood on its own, and written as what it has otherwise than the one it follows.
std::optional<std::string> withFollowersField(const std::string& document,
                                              const FieldEdit& wanted) {
  const FieldOwner& owner = wanted.owner;
  if (!owner.rig || !rigs::followsAnother(document, *owner.rig)) return std::nullopt;
  const auto whole = rigs::wholeRigAt(document, *owner.rig, owner.folder);
  if (!whole) return std::nullopt;  // what it follows is wrong: its own text is all there is
  static const std::vector<std::string> kNoOrigins;
  const std::string alone =
      withField(rigs::withValue(document, owner.prefix(), *whole),
                {{owner.rig, &kNoOrigins, owner.folder}, wanted.field, wanted.typed});
  return rigs::changeRig(document, *owner.rig, rigs::valueAt(alone, owner.prefix()), owner.folder);
}

}  // namespace

std::string FieldOwner::prefix() const { return rig ? "/rigs/" + std::to_string(*rig) : ""; }

std::string withField(const std::string& document, const FieldEdit& wanted) {
  if (auto changed = withFollowersField(document, wanted)) return *std::move(changed);
  const std::string_view text = trimmed(wanted.typed);
  Edit edit(document, wanted.owner);
  PlanField field = wanted.field;
  if (field.place.starts_with(kElement) && edit.has(kFirstElement))
    field.place.replace(0, kElement.size(), kFirstElement + '/');
  if (field.place.starts_with(kSecondElement)) {
    const bool isThere = edit.has("/elements/1");
    if (!isThere && text.empty()) return document;
    if (!isThere) addSecondElement(edit, wanted.owner);
    if (isThere && text.empty() && field.place.ends_with("/power")) {
      removeSecondElement(edit);
      return edit.take();
    }
  }
  const std::string part = firstPart(field.place);
  if (text.empty()) {
    empty(edit, field);
  } else if (text == "none" && mayBeNone(part)) {
    edit.put('/' + part, "none");
  } else {
    fill(edit, field, text);
  }
  return edit.take();
}

std::string rigNameAt(const rigs::Texts& texts, std::size_t index, const rigs::Texts& inherited) {
  const auto own = texts.find("/rigs/" + std::to_string(index) + "/name");
  if (own != texts.end()) return own->second;
  const auto from = inherited.find("/name");
  return from == inherited.end() ? std::string() : from->second;
}

std::string freeRigName(const rigs::Texts& texts, const std::string& wanted) {
  std::vector<std::string> taken;
  for (std::size_t i = 0; i < kMostRigs; ++i) {
    const std::string rig = "/rigs/" + std::to_string(i);
    auto stated = texts.find(rig + "/name");
    if (stated == texts.end()) stated = texts.find(rig + "/from");  // then named after that one
    if (stated != texts.end()) taken.push_back(stated->second);
  }
  const auto isTaken = [&taken](const std::string& name) {
    return std::find(taken.begin(), taken.end(), name) != taken.end();
  };
  std::string name = wanted;
  for (int i = 2; isTaken(name); ++i) name = wanted + ' ' + std::to_string(i);
  return name;
}

std::string withCatalogueRig(const std::string& document, const rigs::Texts& texts,
                             std::string_view rig) {
  const std::string name = freeRigName(texts, std::string(rig));
  std::string entry = rigs::withText("{}", "/name", name);
  entry = rigs::withText(entry, "/from", rig);
  return rigs::withRigAdded(document, entry);
}

std::string withVariant(const std::string& document, const rigs::Texts& texts,
                        const VariantOf& wanted) {
  if (wanted.variant == Variant::Following)
    return rigs::sameWith(document, wanted.rig, freeRigName(texts, wanted.name));
  std::string changed =
      rigs::withRigDuplicated(document, wanted.rig, freeRigName(texts, wanted.name));
  const std::string copy = "/rigs/" + std::to_string(wanted.rig + 1);
  if (rigs::exists(changed, copy + "/letter")) changed = rigs::without(changed, copy + "/letter");
  switch (wanted.variant) {
    case Variant::Same:
    case Variant::Following:
      return changed;
    case Variant::WithJacket:
      return withJacket(changed, copy, wanted.origins);
    case Variant::WithoutJacket:
      return rigs::withText(changed, copy + "/jacket", "none");
    case Variant::WithLid:
      return rigs::withValue(changed, copy + "/lid",
                             R"({"material": "stainless steel", "finish": "bright"})");
  }
  return changed;
}

}  // namespace gui
