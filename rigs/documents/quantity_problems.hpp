// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a quantity that somebody wrote, in words: one sentence without a full stop
// that says what was found, what is accepted, and an example.
#pragma once

#include <string>
#include <string_view>

#include "rigs/quantities/quantity_text.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// "a power"
Told kindName(QuantityKind kind);

// What a place accepts: SI numbers, of which either may be infinite, and an example that fits.
struct AcceptedQuantity {
  QuantityKind kind;
  double min;
  double max;
  std::string example;
};

// Why `text` was not understood, of any place for such a quantity or of this one.
Told quantityProblem(const QuantityFault& fault, std::string_view text, QuantityKind kind);
Told quantityProblem(const QuantityFault& fault, std::string_view text,
                     const AcceptedQuantity& accepted);

// `text` was understood and lies outside. The ends are told in its own unit, since that is what
// they are held against, where that gives numbers that people say.
Told outOfRange(std::string_view text, const AcceptedQuantity& accepted);
// "1 min to 12 h" alone, beside a text such as `like`.
Told acceptedRange(const AcceptedQuantity& accepted, std::string_view like);

// "10 to 50", or "5 or more" where one end is infinite.
Told rangeTold(double min, double max, Argument low, Argument high);

}  // namespace rigs
