// SPDX-License-Identifier: GPL-3.0-or-later
// The whole plan on paper: inputs, answers, pictures, tables, assumptions, cautions.
#pragma once

#include <QByteArray>
#include <QString>
#include <filesystem>

#include "rigs/answers/solution.hpp"

class QPagedPaintDevice;

namespace gui {

struct ReportInput {
  rigs::SolutionPtr solution;  // with sweeps
  rigs::UnitSystem units = rigs::UnitSystem::SI;
  QString planName;     // of the file, or what the plan is called
  QByteArray document;  // the plan as it stands; attached to the PDF
};

// A4, or letter size for US units.
QByteArray reportPdf(const ReportInput& input);
// Throws rigs::FileError.
void writeReport(const std::filesystem::path& path, const ReportInput& input);
// For a printer, whose paper is already chosen. True if everything was printed.
bool paintReport(QPagedPaintDevice& device, const ReportInput& input);

}  // namespace gui
