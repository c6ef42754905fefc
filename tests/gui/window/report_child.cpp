// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/window/report_child.hpp"

#include "gui/window/exports/report.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace test_support {

int writeDemoReport(const char* path) {
  const std::string_view text = rigs::demoPlanText();
  try {
    gui::writeReport(path, {.solution = solvedDemo(),
                            .units = rigs::UnitSystem::SI,
                            .planName = QStringLiteral("altbier.json"),
                            .document = {text.data(), static_cast<qsizetype>(text.size())}});
  } catch (const rigs::FileError&) {
    return 1;
  }
  return 0;
}

}  // namespace test_support
