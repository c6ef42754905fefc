// SPDX-License-Identifier: GPL-3.0-or-later
// What goes wrong with a file, as one sentence for a person that names it.
#pragma once

#include <unistd.h>

#include <filesystem>
#include <stdexcept>
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

enum class FileTask { Read, Save };

[[noreturn]] void failAbout(const std::filesystem::path& path, const Template<1>& what);
// In the words that `errno` stands for.
[[noreturn]] void failFromErrno(const std::filesystem::path& path, FileTask task);

// An open file that is closed again.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&&) = delete;

  int get() const { return number_; }
  // False, with errno, where what was written has not arrived.
  bool close() { return ::close(std::exchange(number_, -1)) == 0; }

 private:
  int number_;
};

}  // namespace rigs
