// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_variants.hpp"

#include <vector>

#include "rigs/documents/json_edit.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/plans/rig_family.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

std::string placeAt(std::size_t index) { return "/rigs/" + std::to_string(index); }

// A document's rigs, whatever is wrong with them.
class FamilyOf {
 public:
  FamilyOf(std::string_view document, const fs::path& folder)
      : json_(parsed(document)), family_(entries(), folder) {}

  const RigFamily* operator->() const { return &family_; }

  std::optional<std::string> whole(std::size_t index) const {
    const auto entry = family_.entryAt(index);
    if (!entry || !family_.whole(*entry)) return std::nullopt;
    return family_.whole(*entry)->text();
  }
  std::optional<std::size_t> baseOf(std::size_t index) const {
    const auto entry = family_.entryAt(index);
    const auto base = entry ? family_.baseOf(*entry) : std::nullopt;
    return base ? std::optional(family_.indexOf(*base)) : std::nullopt;
  }

 private:
  static JsonDocument parsed(std::string_view document) {
    Problems problems;
    JsonDocument json = parseJson(document, problems);
    if (!json) throw EditError("the document is not JSON");
    return json;
  }
  std::vector<JsonCursor> entries() {
    const auto plan = JsonCursor(*json_, ignored_).asObject();
    return plan ? plan->objectsIfGiven("rigs", {}) : std::vector<JsonCursor>();
  }

  JsonDocument json_;
  Problems ignored_;
  RigFamily family_;
};

void requireRig(std::string_view document, std::size_t index) {
  if (index >= rigCount(document)) throw EditError("there is no such rig");
}

std::vector<std::size_t> lettersIn(std::string_view document) {
  return slotsIn(textsOf(document), rigCount(document));
}

// Written as what differs from the rig at `base`.
std::string following(std::string_view document, std::size_t base, std::string_view baseWhole,
                      std::string_view wanted, std::string_view before) {
  return writtenAsFollower(baseWhole, letterOfSlot(lettersIn(document)[base]), wanted, before);
}

}  // namespace

bool followsAnother(std::string_view document, std::size_t index) {
  return exists(document, placeAt(index) + "/same_as");
}

std::optional<std::string> wholeRigAt(std::string_view document, std::size_t index,
                                      const fs::path& folder) {
  return FamilyOf(document, folder).whole(index);
}

std::string changeRig(std::string_view document, std::size_t index, std::string_view edited,
                      const fs::path& folder) {
  requireRig(document, index);
  const FamilyOf before(document, folder);
  const auto base = before.baseOf(index);
  const auto baseWhole = base ? before.whole(*base) : std::nullopt;
  std::string rig(edited);
  if (baseWhole && !exists(edited, "/same_as"))
    rig = following(document, *base, *baseWhole, edited, valueAt(document, placeAt(index)));
  std::string changed = withValue(document, placeAt(index), rig);
  const auto letters = lettersIn(changed);
  if (letters == lettersIn(document)) return changed;
  std::vector<Placed> renamed;
  for (std::size_t i = 0; i < letters.size(); ++i)
    if (const auto followed = before.baseOf(i); followed && followsAnother(changed, i))
      renamed.push_back({placeAt(i) + "/same_as", letterOfSlot(letters[*followed])});
  return withAll(changed, renamed);
}

std::string removeRig(std::string_view document, std::size_t index, const fs::path& folder) {
  requireRig(document, index);
  const FamilyOf before(document, folder);
  const auto base = before.baseOf(index);
  const auto baseWhole = base ? before.whole(*base) : std::nullopt;
  std::string changed(document);
  auto letters = lettersIn(document);
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (before.baseOf(i) != index) continue;
    const auto whole = before.whole(i);
    if (!whole) continue;
    const std::string rig =
        baseWhole ? following(document, *base, *baseWhole, *whole, valueAt(document, placeAt(i)))
                  : *whole;
    changed = withValue(changed, placeAt(i), rig);
  }
  letters.erase(letters.begin() + static_cast<std::ptrdiff_t>(index));
  return withSlots(withRigRemoved(changed, index), letters);
}

std::string sameWith(std::string_view document, std::size_t index, std::string_view name) {
  requireRig(document, index);
  auto letters = lettersIn(document);
  const std::string behind = placeAt(index + 1);
  std::string changed = withRigDuplicated(document, index, name);
  changed = withValue(changed, behind, withText("{}", "/name", name));
  changed = withText(changed, behind + "/same_as", letterOfSlot(letters[index]));
  letters.insert(letters.begin() + static_cast<std::ptrdiff_t>(index) + 1, nextSlot(letters));
  return withSlots(std::move(changed), letters);
}

}  // namespace rigs
