// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_family.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/rig_bases.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace rigs {
namespace {

std::size_t indexInList(const JsonCursor& entry) {
  const std::string& where = entry.where();
  std::size_t index = 0;
  std::from_chars(where.data() + where.rfind('/') + 1, where.data() + where.size(), index);
  return index;
}

std::vector<std::size_t> lettersOf(const std::vector<JsonCursor>& entries) {
  StatedSlots stated;
  for (const JsonCursor& entry : entries) {
    stated.resize(indexInList(entry) + 1);
    if (const auto letter = entry.textThere("letter")) stated.back() = slotOfLetter(*letter);
  }
  return slotsOf(std::move(stated));
}

}  // namespace

RigFamily::RigFamily(std::vector<JsonCursor> entries, std::filesystem::path folder)
    : entries_(std::move(entries)),
      slots_(lettersOf(entries_)),
      folder_(std::move(folder)),
      wholes_(entries_.size()) {
  for (std::size_t i = 0; i < size(); ++i) bases_.push_back(named(i));
  std::vector<std::size_t> inCircle;
  for (std::size_t i = 0; i < size(); ++i)
    if (goesRound(i)) inCircle.push_back(i);
  for (const std::size_t i : inCircle) {
    at(i).error("same_as", advised(Told(TOLD("Problem",
                                             "this rig is the same as itself, directly or over "
                                             "other rigs")),
                                   Told(TOLD("Problem",
                                             "let one of them state all of its parts, e.g. with "
                                             "%1"),
                                        Verbatim{R"("from": "40 L steel kettle")"})));
    bases_[i].reset();
  }
}

std::size_t RigFamily::slotOf(std::size_t entry) const { return slots_[indexOf(entry)]; }

std::optional<std::size_t> RigFamily::entryAt(std::size_t index) const {
  const auto found = std::find_if(entries_.begin(), entries_.end(), [&](const JsonCursor& entry) {
    return indexInList(entry) == index;
  });
  return found == entries_.end()
             ? std::nullopt
             : std::optional(static_cast<std::size_t>(found - entries_.begin()));
}

std::size_t RigFamily::indexOf(std::size_t entry) const { return indexInList(entries_[entry]); }

std::optional<std::size_t> RigFamily::named(std::size_t entry) const {
  if (!follows(entry)) return std::nullopt;
  const JsonCursor& rig = at(entry);
  if (rig.has("from"))
    rig.error("from", advised(Told(TOLD("Problem", "both \"from\" and \"same_as\" are stated")),
                              Told(TOLD("Problem", "keep one of them"))));
  const auto letter = rig.text("same_as", 1);
  if (!letter) return std::nullopt;
  const auto slot = slotOfLetter(*letter);
  std::vector<std::string> letters;
  for (std::size_t i = 0; i < size(); ++i) {
    if (slot == slotOf(i)) return i;
    if (i != entry) letters.push_back(letterOfSlot(slotOf(i)));
  }
  std::sort(letters.begin(), letters.end());
  Told none(TOLD("Problem", "no rig of this plan has the letter %1"), Quoted{*letter});
  rig.error("same_as",
            letters.empty()
                ? advised(std::move(none),
                          Told(TOLD("Problem", "there is no other rig; state the parts here")))
                : advised(std::move(none), withExample(writeOneOf({letters.begin(), letters.end()}),
                                                       inQuotes(letters.front()))));
  return std::nullopt;
}

bool RigFamily::goesRound(std::size_t entry) const {
  std::optional<std::size_t> next = bases_[entry];
  for (std::size_t steps = 0; next && steps < size(); ++steps) {
    if (*next == entry) return true;
    next = bases_[*next];
  }
  return false;
}

const std::optional<WholeRig>& RigFamily::whole(std::size_t entry) const {
  if (!wholes_[entry]) wholes_[entry] = made(entry);
  return *wholes_[entry];
}

std::optional<WholeRig> RigFamily::made(std::size_t entry) const {
  if (follows(entry)) {
    const auto base = baseOf(entry);
    if (!base || !whole(*base)) return std::nullopt;
    return whole(*base)->followedBy(at(entry));
  }
  // What is wrong with its references is told when it is read.
  Problems told;
  const JsonDocument tree = at(entry).tree();
  const JsonCursor rig(*tree, told, at(entry).where());
  RigBases bases;
  const auto layers = bases.follow(rig, folder_);
  if (hasErrors(told) || bases.failed()) return std::nullopt;
  return WholeRig(layers, bases.names());
}

}  // namespace rigs
