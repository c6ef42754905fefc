// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sheet_looks.hpp"

namespace gui::telling {

std::vector<Look> looksAt(const rigs::Night& night,
                          const std::function<bool(physics::Time)>& isAwake) {
  std::vector<rigs::NightPoint> evening, morning;
  bool slept = false;
  for (const rigs::NightPoint& point : night.readings) {
    if (point.alone < physics::minutes(29.5)) continue;
    if (point.alone > night.alone - physics::minutes(59.5)) break;
    if (!isAwake(point.alone)) {
      slept = true;
      continue;
    }
    (slept ? morning : evening).push_back(point);
  }
  std::vector<Look> looks;
  if (!evening.empty()) looks.push_back({evening.front()});
  if (evening.size() > 3 && !slept) looks.push_back({evening[evening.size() / 2]});
  if (evening.size() > 1) looks.push_back({evening.back(), slept});
  if (!morning.empty()) looks.push_back({morning.front()});
  return looks;
}

}  // namespace gui::telling
