// SPDX-License-Identifier: GPL-3.0-or-later
// A window in a process of its own, to be killed or ended.
#pragma once

namespace test_support {

inline constexpr const char* kTypeAndWait = "--type-and-wait";
// Opens a window on `plan` ("-" for the example), types 7 kW into the first rig's element, prints
// "kept" when the safety copy in `folder` is there, and waits to be killed.
int typeAndWait(const char* folder, const char* plan);

inline constexpr const char* kTypeInProgram = "--type-in-program";
// The program's own window, from the start of it, with `data` as XDG_DATA_HOME: types 7 kW into the
// first rig's element, prints "typed" at once, without a pause or Enter, and goes on until it is
// ended. Before any application object is made.
int typeInProgram(int argc, char** argv, const char* data, const char* plan);

}  // namespace test_support
