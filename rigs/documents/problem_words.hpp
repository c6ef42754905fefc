// SPDX-License-Identifier: GPL-3.0-or-later
// How problems are put together: what was found; what is accepted, with an example; what may have
// been meant.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rigs/documents/problems.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// A text of ours as it may be written in a document. What a person wrote is Quoted instead.
Verbatim inQuotes(std::string_view text);
// A path as messages show it: in full, but for its middle where nobody would read to the end.
std::string shownPath(std::string_view path);
// The same between quotation marks.
Verbatim quotedPath(std::string_view path);

// "found; advice"
Told advised(Told found, Told advice);
// "told, e.g. example"
Told withExample(Told told, Verbatim example);
// "told; perhaps "flat" was meant"; only `told` where no word is near.
Told perhapsMeant(Told told, std::string_view near);

// "one of "flat", "round""; the word itself where there is one.
Told choice(const std::vector<std::string_view>& words);
// "write one of "flat", "round""
Told writeOneOf(const std::vector<std::string_view>& words);

// ""lid" is missing; needed"
Told missing(std::string_view key, Told needed);

// "in "my-kettle.json" at /element/power: ...": of another file, told where it is referred to.
Told withinFile(const std::string& name, const Problem& problem);

}  // namespace rigs
