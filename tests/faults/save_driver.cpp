// SPDX-License-Identifier: GPL-3.0-or-later
// One save, for a test that lets its calls fail: save_driver plan|text|new FILE TEXT. What goes
// wrong is told as the programs do.
#include <cstdio>
#include <string_view>

#include "rigs/documents/files.hpp"
#include "rigs/plans/plan_writer.hpp"

int main(int argc, char** argv) {
  if (argc != 4) return 2;
  const std::string_view kind = argv[1];
  try {
    const std::string text = rigs::readText(argv[3]);
    if (kind == "plan") rigs::savePlan(argv[2], text);
    if (kind == "text") rigs::saveText(argv[2], text);
    if (kind == "new" && !rigs::createText(argv[2], text)) return 3;
  } catch (const rigs::FileError& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
  return 0;
}
