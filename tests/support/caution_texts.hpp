// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions as people read them in English.
#pragma once

#include <string>
#include <vector>

#include "rigs/results/cautions.hpp"

namespace test_support {

inline std::vector<std::string> cautionTexts(rigs::About about, const rigs::Plan& plan,
                                             const rigs::Answers& answers, rigs::UnitSystem units) {
  std::vector<std::string> texts;
  for (const rigs::Caution& caution : rigs::cautionsFor(about, plan, answers))
    texts.push_back(rigs::inEnglish(caution.text, units));
  return texts;
}

}  // namespace test_support
