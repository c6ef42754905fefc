// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <system_error>

#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

// Without O_NONBLOCK a named pipe without a writer would be waited for, forever; without O_NOCTTY
// a terminal would take charge of us.
Descriptor openToRead(const fs::path& path) {
  Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
  if (file.get() < 0) failFromErrno(path, FileTask::Read);
  return file;
}

struct stat factsOf(const Descriptor& file, const fs::path& path) {
  struct stat facts {};
  if (::fstat(file.get(), &facts) != 0) failFromErrno(path, FileTask::Read);
  if (S_ISDIR(facts.st_mode)) failAbout(path, TOLD("Problem", "%1 is a folder, not a file"));
  return facts;
}

std::string wholeText(const Descriptor& file, const fs::path& path, std::size_t largest) {
  std::string text;
  std::array<char, 65536> buffer;
  for (;;) {
    const ssize_t count = ::read(file.get(), buffer.data(), buffer.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) failFromErrno(path, FileTask::Read);
    if (count == 0) return text;
    text.append(buffer.data(), static_cast<std::size_t>(count));
    if (text.size() > largest) {
      throw FileError(Told(TOLD("Problem", "%1 is larger than %2, too large to be read here"),
                           quotedPath(path.string()),
                           Verbatim{std::to_string(largest / 1024) + " KiB"}));
    }
  }
}

// Looked at before it is opened, because opening some devices does something; and again once it is
// open, because it may have been replaced in between.
Descriptor openRegular(const fs::path& path) {
  std::error_code unknown;
  const fs::file_status looks = fs::status(path, unknown);
  if (fs::exists(looks) && !fs::is_regular_file(looks) && !fs::is_directory(looks))
    failAbout(path, TOLD("Problem", "%1 is not a file"));
  Descriptor file = openToRead(path);
  if (!S_ISREG(factsOf(file, path).st_mode)) failAbout(path, TOLD("Problem", "%1 is not a file"));
  return file;
}

// Where an open file lies, with all links followed: of the file itself, not of a path that may
// lead elsewhere by now.
fs::path placeOf(const Descriptor& file, const fs::path& path) {
  std::error_code none;
  const fs::path place = fs::read_symlink("/proc/self/fd/" + std::to_string(file.get()), none);
  return none ? fs::weakly_canonical(path) : place;
}

bool liesWithin(const fs::path& folder, const fs::path& place) {
  return std::mismatch(folder.begin(), folder.end(), place.begin(), place.end()).first ==
         folder.end();
}

}  // namespace

bool writeAll(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(file, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return false;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

std::string readText(const fs::path& path, std::size_t largest) {
  const Descriptor file = openToRead(path);
  const struct stat facts = factsOf(file, path);
  if (!S_ISREG(facts.st_mode)) {
    if (!S_ISFIFO(facts.st_mode) && !S_ISCHR(facts.st_mode))
      failAbout(path, TOLD("Problem", "%1 is not a file"));
    const int flags = ::fcntl(file.get(), F_GETFL);
    ::fcntl(file.get(), F_SETFL, flags & ~O_NONBLOCK);
  }
  return wholeText(file, path, largest);
}

std::string readFile(const fs::path& path, std::size_t largest) {
  return wholeText(openRegular(path), path, largest);
}

std::string readWithin(const fs::path& folder, const fs::path& path, std::size_t largest) {
  const Descriptor file = openRegular(path);
  std::error_code failed;
  const fs::path root = fs::canonical(folder.empty() ? fs::path(".") : folder, failed);
  if (failed || !liesWithin(root, placeOf(file, path)))
    failAbout(path, TOLD("Problem", "%1 is a link that leads out of the plan's folder"));
  return wholeText(file, path, largest);
}

bool isSameFile(const fs::path& a, const fs::path& b) {
  struct stat one {
  }, other{};
  return ::stat(a.c_str(), &one) == 0 && ::stat(b.c_str(), &other) == 0 &&
         one.st_dev == other.st_dev && one.st_ino == other.st_ino;
}

}  // namespace rigs
