// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a document or with options, all of it at once.
#pragma once

#include <cstddef>
#include <string>

#include "rigs/documents/problems.hpp"
#include "rigs/words/told.hpp"

namespace gui {

// One sentence to the person at the terminal, in lines of at most `width` columns.
std::string complaintText(const rigs::Told& sentence, const rigs::Reader& reader,
                          std::size_t width);

// "" without problems. `name` is the document's.
std::string problemText(const rigs::Problems& problems, const rigs::Told& name,
                        const rigs::Reader& reader, std::size_t width);

}  // namespace gui
