// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out. What goes wrong is thrown as one sentence for a person, told
// where it is caught.
#pragma once

#include <cstddef>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

#include "rigs/words/told.hpp"

namespace rigs {

// what() gives its English.
class FileError : public std::runtime_error {
 public:
  explicit FileError(Told told) : std::runtime_error(inEnglish(told)), told_(std::move(told)) {}
  const Told& told() const { return told_; }

 private:
  Told told_;
};

inline constexpr std::size_t kLargestFile = std::size_t{4} * 1024 * 1024;

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
