// SPDX-License-Identifier: GPL-3.0-or-later
// A rig in one sentence, whose parts are fields: each knows which keys of the plan it stands for.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

enum class RigAspect {
  Volume,     // brimful
  Metal,      // of the kettle, and how it looks
  Element,    // power at the voltage it is rated for; several, with how they are wired
  Circuit,    // its rating, and its voltage where the element is rated for another
  Second,     // element and circuit of the second of two circuits
  Jacket,     // by its parts, or that there is none
  Lid,        // how far it is open, where that is not as usual
  BoilPower,  // where it is turned down for the boil
  Hose,
  Pump,
  Chiller,  // where one is stated
  Stand,    // where it is not the usual table
  Measured  // own factors on what it loses and evaporates, where there are some
};

struct SentencePart {
  RigAspect aspect;
  rigs::Told text;
  std::vector<std::string> keys;  // places of the table of keys: "/rigs/*/vessel/height"
  bool assumed = false;           // the person states none of them: they are as by default
};

struct RigSentence {
  rigs::Told text;                  // the whole, without a full stop
  std::vector<SentencePart> parts;  // those told, in the order of the English sentence
  std::optional<std::size_t> like;  // the rig that it is told by, as what differs
};

// "a kettle of 45 L in brushed stainless steel with 2200 W at 230 V on a circuit of 16 A, no
// jacket, lid off in the boil".
RigSentence rigInFull(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader);

// The same, but "like (a), but a jacket of 13 mm wool felt on side and lid" of a rig that follows
// another, and of one that differs from the first in few parts; "and other details" where they
// differ in what no part tells of.
inline constexpr std::size_t kFewDifferences = 3;
RigSentence rigInWords(const rigs::Plan& plan, std::size_t rig, const rigs::Reader& reader);

// That sentence as it is read, cut where its parts begin and end.
struct SentencePiece {
  std::string text;
  std::optional<SentencePart> part;  // nothing: words between them

  bool isPart() const { return part.has_value(); }
};
std::vector<SentencePiece> rigInPieces(const rigs::Plan& plan, std::size_t rig,
                                       const rigs::Reader& reader);

}  // namespace gui::telling
