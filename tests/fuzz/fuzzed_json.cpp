// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/fuzzed_json.hpp"

#include <cstring>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/support/mutated_json.hpp"

namespace fuzz {

std::size_t mutateJson(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed) {
  test_support::Mutator mutator(seed);
  auto document =
      nlohmann::ordered_json::parse(data, data + size, nullptr, /*allow_exceptions=*/false);
  if (document.is_discarded() || mutator.below(5) == 0) return LLVMFuzzerMutate(data, size, most);
  for (std::size_t left = 1 + mutator.below(3); left > 0; --left) mutator.mutate(document);
  const std::string text =
      document.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
  if (text.size() > most) return LLVMFuzzerMutate(data, size, most);
  std::memcpy(data, text.data(), text.size());
  return text.size();
}

}  // namespace fuzz

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned seed) {
  return fuzz::mutateJson(data, size, most, seed);
}
