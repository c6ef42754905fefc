// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a document or with options, all of it at once.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "gui/terminal/page.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// One sentence to the person at the terminal, in lines.
std::string complaintText(std::string_view sentence, std::size_t width);

// "" without problems. `name` is the document's, ready for a terminal.
std::string problemText(const rigs::Problems& problems, const std::string& name,
                        const rigs::Reader& reader, const TextStyle& style);

}  // namespace gui
