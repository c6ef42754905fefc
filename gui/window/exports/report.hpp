// SPDX-License-Identifier: GPL-3.0-or-later
// The whole plan on paper: the figures that decide, the sheet to brew by, inputs, answers with
// pictures and tables, assumptions. What to take care of with this plan stands in front, what
// always holds at the end.
#pragma once

#include <QByteArray>
#include <QString>
#include <cstddef>
#include <filesystem>

#include "rigs/answers/solution.hpp"
#include "rigs/words/told.hpp"

class QPagedPaintDevice;

namespace gui {

struct ReportInput {
  rigs::SolutionPtr solution;  // with sweeps
  rigs::UnitSystem units = rigs::UnitSystem::SI;
  QString planName;     // of the file, or what the plan is called
  QByteArray document;  // the plan as it stands; attached to the PDF
  // Whose sheet to brew by is in it, and whom the others' figures are compared with.
  std::size_t rig = 0;
  rigs::Told changed = {};  // how what was computed differs from the plan's file
};

// A4, or letter size for US units.
QByteArray reportPdf(const ReportInput& input);
// Throws rigs::FileError.
void writeReport(const std::filesystem::path& path, const ReportInput& input);
// For a printer, whose paper is already chosen. True if everything was printed.
bool paintReport(QPagedPaintDevice& device, const ReportInput& input);

}  // namespace gui
