// SPDX-License-Identifier: GPL-3.0-or-later
// A window in a process of its own, to be killed.
#pragma once

namespace test_support {

inline constexpr const char* kTypeAndWait = "--type-and-wait";
// Opens a window on `plan` ("-" for the example), types 7 kW into the first rig's element, prints
// "kept" when the safety copy in `folder` is there, and waits to be killed.
int typeAndWait(const char* folder, const char* plan);

}  // namespace test_support
