// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out. What goes wrong is thrown as one sentence for a person.
#pragma once

#include <cstddef>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <string_view>

namespace rigs {

class FileError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

inline constexpr std::size_t kLargestFile = 4 * 1024 * 1024;

// Files, pipes and character devices; folders, other devices and more than `largest` bytes are
// refused.
std::string readText(const std::filesystem::path& path, std::size_t largest = kLargestFile);

// Either the old contents stay or the new ones are there, whatever happens in between: a new file
// in the same folder is filled, forced to the disk and renamed. A link stays a link, permissions
// stay as they are.
void saveText(const std::filesystem::path& path, std::string_view text);

// All of it to an open file. False, with errno, if not everything arrived: a full disk, a reader
// who has left.
bool writeAll(int file, std::string_view text);

}  // namespace rigs
