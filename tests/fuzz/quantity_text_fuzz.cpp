// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes, as every kind of quantity: no crash, and an answer or a sentence, never both.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "rigs/documents/quantity_problems.hpp"
#include "rigs/quantities/quantity_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace rigs;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  for (int i = 0; i <= static_cast<int>(QuantityKind::VolumeFlow); ++i) {
    const auto kind = static_cast<QuantityKind>(i);
    const detail::Reading reading = detail::read(kind, text);
    if (reading.si.has_value() == reading.fault.has_value()) std::abort();
    if (!reading.si) {
      const Told told = quantityProblem(*reading.fault, text, kind);
      for (const UnitSystem system : {UnitSystem::SI, UnitSystem::UsCustomary})
        if (inEnglish(told, system).empty()) std::abort();
      continue;
    }
    if (!std::isfinite(*reading.si)) std::abort();
    // What was understood can be printed, and what is printed exactly is understood again.
    for (const UnitSystem system : {UnitSystem::SI, UnitSystem::UsCustomary})
      if (detail::print(kind, *reading.si, system, {}).empty()) std::abort();
    if (detail::printLike(kind, *reading.si, text, {}).empty()) std::abort();
    const detail::Reading again = detail::read(kind, detail::printExactly(kind, *reading.si));
    const bool viaPercent = kind == QuantityKind::Fraction && (*reading.si < 0 || *reading.si > 1);
    if (!viaPercent && again.si != reading.si) std::abort();
  }
  return 0;
}
