// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan_writer.hpp"

#include <algorithm>
#include <cassert>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/files.hpp"

namespace rigs {

std::string_view demoPlanText() {
  const auto documents = embeddedDocuments();
  const auto demo = std::find_if(documents.begin(), documents.end(), [](const auto& document) {
    return document.name == "demo/altbier-after-the-move.json";
  });
  assert(demo != documents.end());
  return demo->text;
}

std::string newPlanText() { return std::string(demoPlanText()); }

void savePlan(const std::filesystem::path& path, std::string_view document) {
  std::string text(document);
  if (!text.ends_with('\n')) text += '\n';
  saveKeepingBefore(path, text);
}

}  // namespace rigs
