// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts in words: the rule, the arithmetic, where it stands and whether somebody read it there.
#pragma once

#include <vector>

#include "rigs/answers/circuit_answer.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// "13.04 A", to the digits that tell it from 13 A; "4.2 mA".
Amount closely(physics::Current current);
// "13.8 A against 80 % of 15 A = 12 A; ...". Electrical units are the same in all systems.
Told arithmetic(const Finding& finding);
// "13.8 A against 15 A: fits.", "advice: fits only if ....": what a rule comes to, without its name
// and clause.
Told outcomeText(const Finding& finding);
// "Name: arithmetic: fits only if .... [clause; source; from memory, check]".
Told findingText(const Finding& finding);
// "Art. 100; NFPA 70, quoted in trade publications; read"
Told citeText(const Cite& cite);
// "United States, NEC (NFPA 70) 2023"
Told rulesText(const CircuitRules& rules);
// The verdict in one sentence: the worst binding findings and what else it hangs on, or that all
// fit.
Told verdictText(const CircuitVerdict& verdict);
// For where the findings stand below: what is broken is named without its arithmetic. A condition
// is never left out.
Told verdictInBrief(const CircuitVerdict& verdict);
// What a verdict hangs on, each condition once; none where it does not fit anyway.
std::vector<Told> conditionsOf(const CircuitVerdict& verdict);
// "fits only if the circuit feeds one outlet alone": the outcome and what it hangs on, for a list.
Told outcomeText(const CircuitVerdict& verdict);
// Breakers and conductors that would be next, as information.
Told informationText(const CircuitVerdict& verdict);

// What every output with an electrical verdict ends with.
Told electricianText();

}  // namespace rigs
