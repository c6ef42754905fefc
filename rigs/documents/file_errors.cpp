// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/file_errors.hpp"

#include <array>
#include <cerrno>
#include <system_error>

#include "rigs/documents/problem_words.hpp"

namespace rigs {

namespace fs = std::filesystem;

namespace {

// What the system answers, in the words of the C library.
constexpr std::array<Marked, 25> kAnswers{{
    TOLD("Problem", "Interrupted system call"),
    TOLD("Problem", "Input/output error"),
    TOLD("Problem", "No such device or address"),
    TOLD("Problem", "Bad file descriptor"),
    TOLD("Problem", "Resource temporarily unavailable"),
    TOLD("Problem", "Cannot allocate memory"),
    TOLD("Problem", "Device or resource busy"),
    TOLD("Problem", "File exists"),
    TOLD("Problem", "Invalid cross-device link"),
    TOLD("Problem", "No such device"),
    TOLD("Problem", "Not a directory"),
    TOLD("Problem", "Invalid argument"),
    TOLD("Problem", "Too many open files in system"),
    TOLD("Problem", "Too many open files"),
    TOLD("Problem", "Text file busy"),
    TOLD("Problem", "File too large"),
    TOLD("Problem", "Too many links"),
    TOLD("Problem", "File name too long"),
    TOLD("Problem", "Too many levels of symbolic links"),
    TOLD("Problem", "Value too large for defined data type"),
    TOLD("Problem", "Operation not supported"),
    TOLD("Problem", "Connection timed out"),
    TOLD("Problem", "Host is down"),
    TOLD("Problem", "Stale file handle"),
    TOLD("Problem", "Remote I/O error"),
}};

Argument systemsAnswer(int error) {
  const std::string text = std::generic_category().message(error);
  for (const Marked& one : kAnswers)
    if (text == one.english) return Bundled{one.context, one.english};
  return Verbatim{text};
}

}  // namespace

void failAbout(const fs::path& path, const Template<1>& what) {
  throw FileError(Told(what, quotedPath(path.string())));
}

void failFromErrno(const fs::path& path, FileTask task) {
  const int error = errno;
  const bool reading = task == FileTask::Read;
  switch (error) {
    case ENOENT:
      failAbout(path, TOLD("Problem", "%1 is not there"));
    case EISDIR:
      failAbout(path, TOLD("Problem", "%1 is a folder, not a file"));
    case EACCES:
    case EPERM:
    case EROFS:
      if (reading)
        failAbout(path, TOLD("Problem", "%1 may not be read by you: permission is missing"));
      failAbout(path, TOLD("Problem", "%1 may not be saved by you: permission is missing"));
    case ENOSPC:
    case EDQUOT:
      if (!reading) failAbout(path, TOLD("Problem", "%1 cannot be saved: the disk is full"));
      break;
    default:
      break;
  }
  throw FileError(reading ? Told(TOLD("Problem", "%1 cannot be read: %2"),
                                 quotedPath(path.string()), systemsAnswer(error))
                          : Told(TOLD("Problem", "%1 cannot be saved: %2"),
                                 quotedPath(path.string()), systemsAnswer(error)));
}

}  // namespace rigs
