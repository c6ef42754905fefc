// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/watched_file.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <thread>
#include <utility>

#include "rigs/documents/file_errors.hpp"
#include "rigs/documents/files.hpp"

namespace gui {
namespace {

namespace fs = std::filesystem;
using rigs::Descriptor;

constexpr int kPatience = 10;
constexpr std::chrono::milliseconds kAMoment{100};

bool endsALine(int file, off_t size) {
  char last = '\n';
  return size == 0 || ::pread(file, &last, 1, size - 1) != 1 || last == '\n';
}

// A new name is on the disk once its folder is.
void syncFolder(const fs::path& path) {
  const fs::path folder = path.parent_path().empty() ? fs::path(".") : path.parent_path();
  const Descriptor open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (open.get() >= 0) ::fsync(open.get());
}

off_t sizeOf(int file, const fs::path& path) {
  struct stat facts {};
  if (::fstat(file, &facts) != 0) rigs::failFromErrno(path, rigs::FileTask::Save);
  if (!S_ISREG(facts.st_mode)) rigs::failAbout(path, TOLD("Problem", "%1 is not a file"));
  return facts.st_size;
}

// Takes back what arrived of a line that did not arrive as a whole, unless others wrote meanwhile.
void takeBack(int file, off_t before, std::size_t most) {
  const int error = errno;
  struct stat facts {};
  const bool isOurs = ::fstat(file, &facts) == 0 && facts.st_size > before &&
                      facts.st_size <= before + static_cast<off_t>(most);
  // Where that fails, too, the line is told as not written all the same.
  if (isOurs) static_cast<void>(::ftruncate(file, before) == 0);
  errno = error;
}

}  // namespace

bool WatchedFile::Look::operator==(const Look& other) const {
  return isThere == other.isThere && device == other.device && place == other.place &&
         size == other.size && changed.tv_sec == other.changed.tv_sec &&
         changed.tv_nsec == other.changed.tv_nsec;
}

WatchedFile::WatchedFile(fs::path path, std::size_t largest)
    : path_(std::move(path)), largest_(largest) {}

WatchedFile::Look WatchedFile::look() const {
  struct stat facts {};
  if (::stat(path_.c_str(), &facts) != 0) return {};
  return {true, facts.st_dev, facts.st_ino, facts.st_size, facts.st_mtim};
}

bool WatchedFile::hasChanged() const { return !(look() == look_); }

std::string WatchedFile::read() {
  // Looked at before: what is written while it is read shows as a change afterwards.
  look_ = look();
  return look_.isThere ? rigs::readFile(path_, largest_) : std::string();
}

void WatchedFile::append(std::string_view line) const {
  const bool isNew = !look().isThere;
  const Descriptor file(
      ::open(path_.c_str(), O_RDWR | O_APPEND | O_CREAT | O_CLOEXEC | O_NONBLOCK, 0666));
  if (file.get() < 0) rigs::failFromErrno(path_, rigs::FileTask::Save);
  off_t size = sizeOf(file.get(), path_);
  for (int i = 0; i < kPatience && !endsALine(file.get(), size); ++i) {
    std::this_thread::sleep_for(kAMoment);
    size = sizeOf(file.get(), path_);
  }
  std::string text = endsALine(file.get(), size) ? "" : "\n";
  text.append(line).append("\n");
  if (!rigs::writeAll(file.get(), text) || ::fsync(file.get()) != 0) {
    takeBack(file.get(), size, text.size());
    rigs::failFromErrno(path_, rigs::FileTask::Save);
  }
  if (isNew) syncFolder(path_);
}

std::string_view wholeLines(std::string_view text) {
  const auto end = text.rfind('\n');
  return end == std::string_view::npos ? std::string_view() : text.substr(0, end + 1);
}

}  // namespace gui
