// SPDX-License-Identifier: GPL-3.0-or-later
// A file that others write while it is read here: a logger, an editor, and what is typed here.
#pragma once

#include <sys/stat.h>

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace gui {

class WatchedFile {
 public:
  // It need not be there yet; regular files only. `largest` bytes are read at the most.
  WatchedFile(std::filesystem::path path, std::size_t largest);

  // Whether it is another one, or looks otherwise, than at the last read(): size, time, place.
  bool hasChanged() const;
  // All of it as it is now; "" where there is none. Throws rigs::FileError.
  std::string read();
  bool isThere() const { return look_.isThere; }

  // As a line of its own at its end, forced to the disk before this returns; the file is made where
  // there is none. A line that somebody else has not finished is given a second to be. Throws
  // rigs::FileError, and the file then is as it was.
  void append(std::string_view line) const;

 private:
  struct Look {
    bool isThere = false;
    dev_t device = 0;
    ino_t place = 0;
    off_t size = 0;
    timespec changed{};

    bool operator==(const Look& other) const;
  };
  Look look() const;

  std::filesystem::path path_;
  std::size_t largest_;
  Look look_;
};

// Without a last line that no line feed ends yet.
std::string_view wholeLines(std::string_view text);

}  // namespace gui
