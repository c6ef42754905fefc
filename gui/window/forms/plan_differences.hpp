// SPDX-License-Identifier: GPL-3.0-or-later
// In what two texts of one plan differ, in the words of the forms.
#pragma once

#include <QStringList>
#include <string_view>

namespace gui {

struct PlanDifferences {
  int count = 0;      // values that one of them has and the other has not, or has otherwise
  QStringList first;  // the first few that a form shows: "Wort wanted 25 L → 27 L"
};

// Both must be JSON: throws rigs::EditError. Values as they are written.
PlanDifferences differencesOf(std::string_view before, std::string_view after);

}  // namespace gui
