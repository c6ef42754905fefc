// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_letters.hpp"

#include <algorithm>
#include <utility>

namespace rigs {
namespace {

std::string placeOfRig(std::size_t rig) { return "/rigs/" + std::to_string(rig); }
std::string placeOfLetter(std::size_t rig) { return placeOfRig(rig) + "/letter"; }

}  // namespace

std::optional<std::size_t> slotOfLetter(std::string_view letter) {
  if (letter.size() != 1 || letter[0] < 'a' || letter[0] > 'z') return std::nullopt;
  return static_cast<std::size_t>(letter[0] - 'a');
}

std::string letterOfSlot(std::size_t slot) {
  return std::string(1, static_cast<char>('a' + static_cast<int>(slot)));
}

std::size_t nextSlot(const std::vector<std::size_t>& taken) {
  std::size_t slot = 0;
  while (std::find(taken.begin(), taken.end(), slot) != taken.end()) ++slot;
  return slot;
}

std::vector<std::size_t> slotsOf(StatedSlots stated) {
  std::vector<std::size_t> taken;
  for (auto& slot : stated) {
    if (!slot) continue;
    if (std::find(taken.begin(), taken.end(), *slot) != taken.end()) {
      slot.reset();
    } else {
      taken.push_back(*slot);
    }
  }
  std::vector<std::size_t> slots;
  for (const auto& slot : stated) {
    slots.push_back(slot ? *slot : nextSlot(taken));
    taken.push_back(slots.back());
  }
  return slots;
}

std::vector<std::size_t> slotsOf(const std::vector<RigPlan>& rigs) {
  StatedSlots stated;
  for (const RigPlan& rig : rigs) stated.push_back(rig.statedSlot);
  return slotsOf(std::move(stated));
}

std::vector<std::size_t> slotsIn(const Texts& document, std::size_t rigs) {
  StatedSlots stated;
  for (std::size_t rig = 0; rig < rigs; ++rig) {
    const auto letter = document.find(placeOfLetter(rig));
    stated.push_back(letter == document.end() ? std::nullopt : slotOfLetter(letter->second));
  }
  return slotsOf(std::move(stated));
}

std::string withSlots(std::string document, const std::vector<std::size_t>& wanted) {
  // What one states changes the letter of nobody before it: all of those have other ones.
  auto now = slotsIn(textsOf(document), wanted.size());
  for (std::size_t rig = 0; rig < wanted.size(); ++rig) {
    const bool isRig = valueAt(document, placeOfRig(rig)).starts_with('{');
    if (now[rig] == wanted[rig] || !isRig) continue;
    document = withText(document, placeOfLetter(rig), letterOfSlot(wanted[rig]));
    now = slotsIn(textsOf(document), wanted.size());
  }
  return document;
}

}  // namespace rigs
