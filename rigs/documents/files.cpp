// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

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

// In full and between quotation marks.
Verbatim quotedPath(const fs::path& path) { return inQuotes(path.string()); }

[[noreturn]] void fail(const fs::path& path, const Template<1>& what) {
  throw FileError(Told(what, quotedPath(path)));
}

enum class Task { Read, Save };

[[noreturn]] void failFromErrno(const fs::path& path, Task task) {
  const int error = errno;
  const bool reading = task == Task::Read;
  switch (error) {
    case ENOENT:
      fail(path, TOLD("Problem", "%1 is not there"));
    case EISDIR:
      fail(path, TOLD("Problem", "%1 is a folder, not a file"));
    case EACCES:
    case EPERM:
    case EROFS:
      if (reading) fail(path, TOLD("Problem", "%1 may not be read by you: permission is missing"));
      fail(path, TOLD("Problem", "%1 may not be saved by you: permission is missing"));
    case ENOSPC:
    case EDQUOT:
      if (!reading) fail(path, TOLD("Problem", "%1 cannot be saved: the disk is full"));
      break;
    default:
      break;
  }
  throw FileError(reading ? Told(TOLD("Problem", "%1 cannot be read: %2"), quotedPath(path),
                                 systemsAnswer(error))
                          : Told(TOLD("Problem", "%1 cannot be saved: %2"), quotedPath(path),
                                 systemsAnswer(error)));
}

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  int get() const { return number_; }
  bool close() {
    const int number = number_;
    number_ = -1;
    return ::close(number) == 0;
  }

 private:
  int number_;
};

// A file that goes away again unless it is kept.
class Draft {
 public:
  explicit Draft(fs::path path) : path_(std::move(path)) {}
  ~Draft() {
    if (!path_.empty()) ::unlink(path_.c_str());
  }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;
  void keep() { path_.clear(); }

 private:
  fs::path path_;
};

// A new file beside `target`, with a name that nobody else has.
int createBeside(const fs::path& target, fs::path& draft) {
  for (int attempt = 0; attempt < 1000; ++attempt) {
    draft = target.parent_path() / ('.' + target.filename().string() + '.' +
                                    std::to_string(::getpid()) + '-' + std::to_string(attempt));
    const int file = ::open(draft.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file >= 0 || errno != EEXIST) return file;
  }
  return -1;
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
  // Without O_NONBLOCK a named pipe without a writer would be waited for, forever.
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (file.get() < 0) failFromErrno(path, Task::Read);
  struct stat facts {};
  if (::fstat(file.get(), &facts) != 0) failFromErrno(path, Task::Read);
  if (S_ISDIR(facts.st_mode)) fail(path, TOLD("Problem", "%1 is a folder, not a file"));
  if (!S_ISREG(facts.st_mode)) {
    if (!S_ISFIFO(facts.st_mode) && !S_ISCHR(facts.st_mode))
      fail(path, TOLD("Problem", "%1 is not a file"));
    const int flags = ::fcntl(file.get(), F_GETFL);
    ::fcntl(file.get(), F_SETFL, flags & ~O_NONBLOCK);
  }
  std::string text;
  std::array<char, 65536> buffer;
  for (;;) {
    const ssize_t count = ::read(file.get(), buffer.data(), buffer.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) failFromErrno(path, Task::Read);
    if (count == 0) return text;
    text.append(buffer.data(), static_cast<std::size_t>(count));
    if (text.size() > largest) {
      throw FileError(Told(TOLD("Problem", "%1 is larger than %2, too large to be read here"),
                           quotedPath(path), Verbatim{std::to_string(largest / 1024) + " KiB"}));
    }
  }
}

void saveText(const fs::path& path, std::string_view text) {
  std::error_code error;
  // Renaming onto a link would replace the link; a link to nothing yet is replaced.
  const fs::path resolved = fs::canonical(path, error);
  const fs::path target = error ? path : resolved;
  struct stat old {};
  const bool replaces = ::stat(target.c_str(), &old) == 0;
  if (replaces && S_ISDIR(old.st_mode)) fail(path, TOLD("Problem", "%1 is a folder, not a file"));
  if (replaces && !S_ISREG(old.st_mode)) fail(path, TOLD("Problem", "%1 is not a file"));
  // Renaming needs no permission on the old file; a file that is write-protected stays as it is.
  if (replaces && ::access(target.c_str(), W_OK) != 0) failFromErrno(path, Task::Save);
  if (target.filename().empty()) fail(path, TOLD("Problem", "%1 has no file name"));

  fs::path draftPath;
  Descriptor file(createBeside(target, draftPath));
  if (file.get() < 0) {
    if (errno == ENOENT) fail(path, TOLD("Problem", "%1 cannot be saved: its folder is not there"));
    failFromErrno(path, Task::Save);
  }
  Draft draft(draftPath);
  if (replaces && ::fchmod(file.get(), old.st_mode & 07777) != 0) failFromErrno(path, Task::Save);
  if (!writeAll(file.get(), text) || ::fsync(file.get()) != 0 || !file.close()) {
    failFromErrno(path, Task::Save);
  }
  if (::rename(draftPath.c_str(), target.c_str()) != 0) failFromErrno(path, Task::Save);
  draft.keep();
  // The rename itself, too. Some file systems cannot force a folder out; the file is right anyway.
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (directory.get() >= 0) ::fsync(directory.get());
}

}  // namespace rigs
