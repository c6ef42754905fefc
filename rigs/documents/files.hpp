// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out. What goes wrong is thrown as one sentence for a person, told
// where it is caught.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "rigs/documents/file_errors.hpp"

namespace rigs {

inline constexpr std::size_t kLargestFile = std::size_t{4} * 1024 * 1024;

// Files, pipes and character devices; folders, other devices and more than `largest` bytes are
// refused.
std::string readText(const std::filesystem::path& path, std::size_t largest = kLargestFile);
// Regular files only, so that nothing is waited for.
std::string readFile(const std::filesystem::path& path, std::size_t largest = kLargestFile);
// The same, for what a document names: with all links followed it must lie within `folder`.
std::string readWithin(const std::filesystem::path& folder, const std::filesystem::path& path,
                       std::size_t largest = kLargestFile);

// Whether two paths lead to one file, over whatever links. False where one leads nowhere.
bool isSameFile(const std::filesystem::path& a, const std::filesystem::path& b);

// Either the old contents stay or the new ones are there, whatever happens in between: a new file
// in the same folder is filled, forced to the disk and renamed. A link stays a link; owner and
// permissions stay as they are.
//
// Where a new file would not be the old one to others - it has several names (hard links),
// another owner or an access list - it is written in its place; what stops in the middle of that
// is found in versionBefore(), if that is kept.
void saveText(const std::filesystem::path& path, std::string_view text);
// The same, and what stood there before is kept as versionBefore(); not where nothing changes.
void saveKeepingBefore(const std::filesystem::path& path, std::string_view text);
// "plan.json~" beside "plan.json"; a name of 255 bytes gives up its last ones.
std::filesystem::path versionBefore(const std::filesystem::path& file);

// As a new file of that name, which appears with all its contents. False if there is one already.
bool createText(const std::filesystem::path& path, std::string_view text);

// Takes away what saves have left in a folder whose process was ended, in whatever program. Of
// living processes nothing is touched.
void removeStaleDrafts(const std::filesystem::path& folder);

// All of it to an open file. False, with errno, if not everything arrived: a full disk, a reader
// who has left.
bool writeAll(int file, std::string_view text);

}  // namespace rigs
