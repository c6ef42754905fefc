// SPDX-License-Identifier: GPL-3.0-or-later
// Why a text is no quantity. rigs/documents/quantity_problems puts it into words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rigs/quantities/quantity_kinds.hpp"

namespace rigs {

struct QuantityFault {
  enum class Kind {
    // The text as a whole.
    Empty,
    TooLong,
    ForeignCharacter,
    // Its number.
    NoNumber,
    TwoDecimalSigns,
    TwoReadings,  // `instead` has both
    GroupedDigits,
    NoSuchFraction,
    TooLargeOrSmall,    // `part` is the unit, where it was understood
    BelowAbsoluteZero,  // `part` is the unit
    NoShare,            // `part` is the number
    NoWireGauge,
    // Number and unit.
    NoUnit,  // `part` is the number
    NotAUnit,
    Colon,
    OtherQuantity,    // `part` is the unit, which measures something else
    MoreAfterNumber,  // `part` is the label that has its unit already: "R", "RSI"
    MoreAfterUnit,
    NumberWithoutUnit,
    BrokenNumberInside,
    NoLadder,
    NotSmaller,
    // The grammar of units.
    NumberAfterSign,   // `part` is the sign
    MisplacedSign,     // `part` is the sign
    NothingAfterSign,  // `part` is the sign
    SlashInBrackets,
    BracketsInBrackets,
    NotOpened,
    NotClosed,
    EmptyBrackets,
    TwoWays,  // `instead` has one of them in brackets, where that is plain
    TooManyUnits,
    NoPower,
    // A single unit, which is `part`.
    UnknownUnit,
    Capitals,
    JoinedUnits,
    SeveralTons,
    ManySizes,
    KelvinOrThousand,
    WhoseDegrees,
    GramOrGrain,
    MetricHorsepower,
    ApparentPower,
    GaugePressure,
  };

  Kind kind;
  std::string part = {};                      // of the text, as printed
  std::vector<std::string> instead = {};      // what may be written in its place
  std::optional<QuantityKind> measured = {};  // by the unit there is, where it is of a known kind

  bool operator==(const QuantityFault&) const = default;
};

}  // namespace rigs
