// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/finding.hpp"

namespace rigs {

Told fitWords(Fit fit) {
  switch (fit) {
    case Fit::Fits:
      return Told(TOLD("Phrases", "fits"));
    case Fit::OnlyIf:
      return Told(TOLD("Phrases", "fits only if"));
    case Fit::OnTheEdge:
      return Told(TOLD("Phrases", "on the edge"));
    case Fit::CannotSay:
      return Told(TOLD("Phrases", "cannot say"));
    case Fit::DoesNotFit:
      return Told(TOLD("Phrases", "does not fit"));
  }
  return {};
}

Told feedsOneOutletAlone() { return Told(TOLD("Phrases", "the circuit feeds one outlet alone")); }

Told enabledIsNot(const LongUse& rule) {
  return Told(TOLD("Phrases",
                   "the time with the element merely enabled does not count as a %1; an "
                   "electrician's or inspector's judgement decides"),
              fromRules(rule.name));
}

}  // namespace rigs
