// SPDX-License-Identifier: GPL-3.0-or-later
// What the terminal asks of the half of the program that knows Qt.
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
  std::string planName;     // of the file; empty for the bundled example
  std::string document;     // the plan as it stands
  rigs::Told changed = {};  // how what is computed differs from it: options
};
using Draw = void (*)(const Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader);

// These two are there only in the program that is linked with the window.
//
// Writes the file. The plan is free of errors. Throws rigs::FileError.
void draw(const Drawing& drawing, const rigs::Plan& plan, const rigs::Reader& reader);
// Runs until the window is closed; the exit code, or nothing where the machine lacks a part of Qt
// for its displays. `plan` is a path, "" for the bundled example.
std::optional<int> openWindow(int argc, char** argv, const std::string& plan);

// What names of such files end in.
std::span<const rigs::Verbatim> pictureEndings();
std::span<const rigs::Verbatim> reportEndings();
std::span<const rigs::Verbatim> sheetEndings();
// Whatever their case.
bool endsInOneOf(const std::filesystem::path& path, std::span<const rigs::Verbatim> endings);

}  // namespace gui::telling
