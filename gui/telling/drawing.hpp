// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and reports as files, as the terminal asks for them: the half of the program that knows
// Qt draws them.
#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <string>

#include "gui/telling/question.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

struct Drawing {
  std::optional<Question> question;  // none: a report of all
  QuestionView view;
  std::filesystem::path to;
  std::string planName;  // of the file; empty for the bundled example
  std::string document;  // the plan as it stands
};
// The plan is free of errors. Throws an exception with a sentence, such as rigs::FileError.
using Draw = void (*)(const Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader);

// What names of such files end in.
std::span<const rigs::Verbatim> pictureEndings();
std::span<const rigs::Verbatim> reportEndings();
// Whatever their case.
bool endsInOneOf(const std::filesystem::path& path, std::span<const rigs::Verbatim> endings);

}  // namespace gui::telling
