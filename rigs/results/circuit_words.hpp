// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts in words: the rule, the arithmetic, where it stands and whether somebody read it there.
#pragma once

#include <string>

#include "rigs/answers/circuit_answer.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

// "13.8 A against 80 % of 15 A = 12 A; ...". Electrical units are the same in all systems.
std::string arithmetic(const Finding& finding);
// "Fits only if ...: name: arithmetic (clause; from memory, check)."
std::string findingText(const Finding& finding);
// "Art. 100; NFPA 70, quoted in trade publications; read"
std::string citeText(const Cite& cite);
// "United States, NEC (NFPA 70) 2023"
std::string rulesText(const CircuitRules& rules);
// The verdict in one sentence: the worst binding findings, or that all fit.
std::string verdictText(const CircuitVerdict& verdict);
// For where the findings stand below: the verdict names what is broken without its arithmetic, and
// a finding leaves out the condition that the verdict has stated.
std::string verdictInBrief(const CircuitVerdict& verdict);
std::string findingInBrief(const CircuitVerdict& verdict, const Finding& finding);
// Breakers and conductors that would be next, as information.
std::string informationText(const CircuitVerdict& verdict);

// What every output with an electrical verdict ends with.
std::string_view electricianText();

}  // namespace rigs
