// SPDX-License-Identifier: GPL-3.0-or-later
// A report of the example, written by a process of its own.
#pragma once

namespace test_support {

inline constexpr const char* kWriteReport = "--write-report";
// The exit code: 0 once it is written.
int writeDemoReport(const char* path);

}  // namespace test_support
