// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/target.hpp"

#include <string>

#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/documents/written_files.hpp"

namespace gui {

rigs::Told whyNotWritten(const Request& request) {
  const rigs::Verbatim to = rigs::quotedPath(request.to);
  const std::string plan = request.file == "-" ? "/dev/stdin" : request.file;
  if (!plan.empty() && rigs::isSameFile(plan, request.to))
    return rigs::Told(
        TOLD("Terminal",
             "--to: %1 is the very plan that is read; nothing was written, and --force "
             "changes nothing about that."),
        to);
  const rigs::FileContent there = rigs::contentOf(request.to);
  const rigs::FileContent own = rigs::contentByEnding(request.to);
  if (request.force || there == own || there == rigs::FileContent::Nothing ||
      there == rigs::FileContent::NoFile)  // that saving tells of
    return {};
  return rigs::Told(
      TOLD("Terminal",
           "--to: %1 is there already and is %2; nothing was written. What this program "
           "wrote of the same kind is replaced; --force replaces whatever is there."),
      to, rigs::contentTold(there));
}

}  // namespace gui
