// SPDX-License-Identifier: GPL-3.0-or-later
// Plan documents on their way out.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace rigs {

// The bundled demo, which is also what a new plan starts from.
std::string_view demoPlanText();
std::string newPlanText();

// Saves the text as it is, so that everything its author wrote survives; see saveText() for what
// a failure leaves behind. Throws FileError.
void savePlan(const std::filesystem::path& path, std::string_view document);

}  // namespace rigs
