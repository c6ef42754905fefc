// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a rig's file that a plan names by "from", in the plan's folder.
#include <filesystem>
#include <fstream>

#include "rigs/plans/plan.hpp"
#include "tests/fuzz/fuzzed.hpp"

namespace {

// In memory where there is such a folder; one a process.
std::filesystem::path ownFolder() {
  const std::filesystem::path shared = "/dev/shm";
  std::string pattern =
      ((std::filesystem::exists(shared) ? shared : std::filesystem::temp_directory_path()) /
       "heatledger-fuzz-XXXXXX")
          .string();
  fuzz::require(::mkdtemp(pattern.data()) != nullptr);
  static const struct Removed {
    std::filesystem::path path;
    ~Removed() { std::filesystem::remove_all(path); }
  } removed{pattern};
  return pattern;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const std::filesystem::path folder = ownFolder();
  std::ofstream(folder / "mine.json", std::ios::binary) << fuzz::textOf(data, size);
  constexpr std::string_view kPlan = R"({"format": {"name": "heat-ledger-plan", "version": 1},
      "batch": {"water": "20 L", "boil": "60 min"}, "place": {"altitude": "0 m"},
      "rigs": [{"from": "mine.json"}, {"from": "mine.json", "name": "Other", "element":
                {"power": "2000 W", "rated_voltage": "230 V", "top_height": "20 mm"}}]})";
  rigs::Problems problems;
  const auto plan = rigs::readPlan(kPlan, folder, problems);
  fuzz::requireTold(plan.has_value(), problems);
  return 0;
}
