// SPDX-License-Identifier: GPL-3.0-or-later
// The documents built into the program.
#pragma once

#include <span>
#include <string_view>

namespace rigs {

struct EmbeddedDocument {
  std::string_view name;  // path within rigs/data/: "catalogue/materials.json"
  std::string_view text;
};

std::span<const EmbeddedDocument> embeddedDocuments();

}  // namespace rigs
