// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/sure.hpp"

#include <algorithm>
#include <utility>

namespace rigs {

std::optional<SureAnswer> sure(const Plan& plan, std::size_t rig, const std::function<bool()>& stop,
                               std::size_t days) {
  auto bands = bandsOf(plan, rig, stop, days);
  if (!bands) return std::nullopt;
  auto causes = bandCauses(plan, rig, stop, std::min(days, kDaysOfACause));
  if (!causes) return std::nullopt;
  auto course = bandCourse(plan, rig, stop, std::min(days, kDaysOfACourse));
  if (!course) return std::nullopt;
  return SureAnswer{std::move(*bands), *causes, std::move(*course)};
}

}  // namespace rigs
