// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/sheet_command.hpp"

#include <filesystem>
#include <string>

#include "gui/telling/sheet.hpp"
#include "gui/telling/sheet_html.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/sheet_text.hpp"
#include "gui/terminal/target.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/answers/search.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "version.hpp"

namespace gui {
namespace {

using rigs::Told;

// The file's name alone: its folders are nobody's business on a sheet that hangs on a wall.
Told planNameOf(const Request& request, const PlanInput& read) {
  if (request.file.empty() || request.file == "-") return read.name;
  return Told::just(
      rigs::Verbatim{rigs::shownPath(std::filesystem::path(request.file).filename().string())});
}

}  // namespace

Told changedBy(const Overrides& overrides) {
  rigs::List all{{}, rigs::Joint::Comma};
  for (const Override& one : overrides)
    all.items.emplace_back(rigs::Verbatim{one.option + " \"" + one.text + '"'});
  return all.items.empty() ? Told() : Told(TOLD("Sheet", "with %1"), std::move(all));
}

Finished sheetOfPlan(const Request& request, const PlanInput& read, const Audience& audience) {
  if (!request.to.empty())
    if (const Told why = whyNotWritten(request); !why.empty())
      return {{}, complaintText(why, audience.reader, audience.style.width), 2};
  const std::size_t rig = read.rig.value_or(0);
  rigs::Solution solution{.plan = *read.plan,
                          .answers = rigs::answer(*read.plan, rigs::Depth::Day),
                          .sweeps = {},
                          .done = {}};
  rigs::addBands(solution, rig);
  const telling::Sheet sheet = telling::sheetOf({solution, solution.plan, audience.reader, {}}, rig,
                                                {.plan = planNameOf(request, read),
                                                 .but = changedBy(request.overrides),
                                                 .version = std::string(kVersion)});
  if (request.to.empty()) return {sheetText(sheet, audience.reader, audience.style), {}, 0};
  rigs::saveText(request.to, telling::sheetHtml(sheet, audience.reader));
  const Told wrote(TOLD("Terminal", "Wrote %1."), rigs::Verbatim{rigs::shownPath(request.to)});
  return {plainText(rigs::tell(wrote, audience.reader)) + '\n', {}, 0};
}

}  // namespace gui
