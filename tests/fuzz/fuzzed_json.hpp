// SPDX-License-Identifier: GPL-3.0-or-later
// Changes a JSON document by its nodes; what is no JSON, and now and then what is, by its bytes.
#pragma once

#include <cstddef>
#include <cstdint>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace fuzz {

std::size_t mutateJson(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed);

}  // namespace fuzz
