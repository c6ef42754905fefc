// SPDX-License-Identifier: GPL-3.0-or-later
// How files are saved.
#include <dirent.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdio>
#include <ctime>
#include <memory>
#include <optional>
#include <string>
#include <system_error>
#include <vector>

#include "rigs/documents/files.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kDraftBegins = ".heatledger-";
constexpr std::string_view kDraftEnds = ".draft";

fs::path folderOf(const fs::path& file) {
  return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

// A new file in a folder, with a name that nobody else has and which does not grow with that of
// the file it becomes. It is locked as long as it is filled, which tells whether somebody still
// does, and goes away again unless it is kept.
class Draft {
 public:
  explicit Draft(const fs::path& folder) : file_(create(folder)) {
    if (file_.get() >= 0) ::flock(file_.get(), LOCK_EX | LOCK_NB);
  }
  ~Draft() { drop(); }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;

  int get() const { return file_.get(); }
  // Forced to the disk. False, with errno, if that failed.
  bool fill(std::string_view text) {
    return writeAll(file_.get(), text) && ::fsync(file_.get()) == 0;
  }
  bool becomes(const fs::path& target) { return kept(::rename(path_.c_str(), target.c_str())); }
  // False with EEXIST where there is a file of that name. Some file systems know one of the two
  // ways, some the other.
  bool becomesNew(const fs::path& target) {
    if (kept(::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE)))
      return true;
    return errno != EEXIST && ::link(path_.c_str(), target.c_str()) == 0;
  }
  void drop() {
    if (!path_.empty()) ::unlink(path_.c_str());
    path_.clear();
  }

 private:
  int create(const fs::path& folder) {
    for (int attempt = 0; attempt < 1000; ++attempt) {
      path_ = folder / (std::string(kDraftBegins) + std::to_string(::getpid()) + '-' +
                        std::to_string(attempt) + std::string(kDraftEnds));
      const int file = ::open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
      if (file >= 0) return file;
      if (errno != EEXIST) break;
    }
    path_.clear();
    return -1;
  }
  bool kept(int failed) {
    if (failed == 0) path_.clear();
    return failed == 0;
  }

  fs::path path_;
  Descriptor file_;  // after path_, which create() sets
};

// The process in a draft's name; nullopt for any other name.
std::optional<pid_t> writerOf(std::string_view name) {
  if (!name.starts_with(kDraftBegins) || !name.ends_with(kDraftEnds)) return std::nullopt;
  name.remove_prefix(kDraftBegins.size());
  name.remove_suffix(kDraftEnds.size());
  pid_t process = 0;
  int attempt = 0;
  const char* end = name.data() + name.size();
  const auto first = std::from_chars(name.data(), end, process);
  if (first.ec != std::errc() || first.ptr == end || *first.ptr != '-' || process < 1)
    return std::nullopt;
  const auto second = std::from_chars(first.ptr + 1, end, attempt);
  if (second.ec != std::errc() || second.ptr != end || attempt < 0) return std::nullopt;
  return process;
}

// A number is given to another process one day; nobody fills a draft for an hour.
bool mayStillBeWritten(pid_t writer, const struct stat& facts) {
  constexpr std::time_t kHour = 3600;
  const bool lives = ::kill(writer, 0) == 0 || errno == EPERM;
  return lives && std::time(nullptr) - facts.st_mtime < kHour;
}

void removeIfStale(const fs::path& draft, pid_t writer) {
  const Descriptor file(
      ::open(draft.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_NOCTTY | O_CLOEXEC));
  struct stat facts {};
  if (file.get() < 0 || ::fstat(file.get(), &facts) != 0) return;
  if (!S_ISREG(facts.st_mode) || facts.st_uid != ::geteuid()) return;
  // The lock also tells of processes whose numbers are not ours: in a container, over a network.
  if (mayStillBeWritten(writer, facts) || ::flock(file.get(), LOCK_EX | LOCK_NB) != 0) return;
  ::unlink(draft.c_str());
}

// What a new file of that name would not have: its other names, its owner, its access list.
bool isWrittenInPlace(const fs::path& target, const struct stat& old, const Draft& draft) {
  if (old.st_nlink > 1) return true;
  if (::fchown(draft.get(), old.st_uid, old.st_gid) != 0) return true;
  std::array<char, 4096> names{};
  const ssize_t size = ::listxattr(target.c_str(), names.data(), names.size());
  if (size < 0) return errno == ERANGE;
  std::string_view left(names.data(), static_cast<std::size_t>(size));
  while (!left.empty()) {
    const std::string_view name = left.substr(0, left.find('\0'));
    if (!name.starts_with("security.")) return true;  // those the system gives by itself
    left.remove_prefix(std::min(left.size(), name.size() + 1));
  }
  return false;
}

// The rename itself, too: until then a loss of power may bring the old file back, and nobody may
// be told that the new one is safe. Some file systems cannot force a folder out, and some folders
// may be written but not opened; the file is right anyway.
void forceOut(const fs::path& folder, const fs::path& path) {
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (directory.get() < 0 || ::fsync(directory.get()) == 0) return;
  if (errno == EIO || errno == ENOSPC || errno == EDQUOT) failFromErrno(path, FileTask::Save);
}

bool copied(int from, int to) {
  std::array<char, 65536> buffer;
  for (;;) {
    const ssize_t count = ::read(from, buffer.data(), buffer.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return false;
    if (count == 0) return ::fsync(to) == 0;
    if (!writeAll(to, {buffer.data(), static_cast<std::size_t>(count)})) return false;
  }
}

bool holds(const fs::path& target, const struct stat& old, std::string_view text) {
  return static_cast<std::size_t>(old.st_size) == text.size() &&
         readFile(target, text.size()) == text;
}

void keepBefore(const fs::path& target, const struct stat& old) {
  const Descriptor from(::open(target.c_str(), O_RDONLY | O_CLOEXEC));
  if (from.get() < 0) failFromErrno(target, FileTask::Save);
  Draft copy(folderOf(target));
  if (copy.get() < 0) failFromErrno(target, FileTask::Save);
  // A copy of somebody else's file is for nobody but whom it was for.
  const bool sameOwner = ::fchown(copy.get(), old.st_uid, old.st_gid) == 0;
  const bool same = ::fchmod(copy.get(), old.st_mode & (sameOwner ? 07777U : 0700U)) == 0;
  if (!same || !copied(from.get(), copy.get()) || !copy.becomes(versionBefore(target)))
    failFromErrno(versionBefore(target), FileTask::Save);
}

// Its room is taken first, so that a full disk is met before anything is lost.
void writeInPlace(const fs::path& target, const struct stat& old, std::string_view text) {
  const Descriptor file(::open(target.c_str(), O_WRONLY | O_CLOEXEC));
  if (file.get() < 0) failFromErrno(target, FileTask::Save);
  const auto size = static_cast<off_t>(text.size());
  const int full = size > old.st_size ? ::posix_fallocate(file.get(), 0, size) : 0;
  if (full != 0) {
    static_cast<void>(::ftruncate(file.get(), old.st_size) == 0);
    errno = full;
    failFromErrno(target, FileTask::Save);
  }
  if (!writeAll(file.get(), text) || ::ftruncate(file.get(), size) != 0 || ::fsync(file.get()) != 0)
    failFromErrno(target, FileTask::Save);
}

enum class Before { Dropped, Kept };

// Renaming onto a link would replace the link; a link to nothing yet is replaced.
fs::path withLinksFollowed(const fs::path& path) {
  std::error_code error;
  const fs::path resolved = fs::canonical(path, error);
  if (!error) return resolved;
  if (error == std::errc::no_such_file_or_directory) return path;
  errno = error.value();
  failFromErrno(path, FileTask::Save);
}

// False where there is nothing yet. A file that cannot be looked at is not taken for none: its
// other names, its permissions and the version before would be lost.
bool isThere(const fs::path& target, struct stat& facts, const fs::path& path) {
  if (::stat(target.c_str(), &facts) == 0) return true;
  if (errno != ENOENT) failFromErrno(path, FileTask::Save);
  return false;
}

void requireName(const fs::path& path) {
  if (path.filename().empty()) failAbout(path, TOLD("Problem", "%1 has no file name"));
}

// That there is a draft to fill.
void require(const Draft& draft, const fs::path& path) {
  if (draft.get() >= 0) return;
  if (errno == ENOENT)
    failAbout(path, TOLD("Problem", "%1 cannot be saved: its folder is not there"));
  failFromErrno(path, FileTask::Save);
}

void save(const fs::path& path, std::string_view text, Before before) {
  const fs::path target = withLinksFollowed(path);
  struct stat old {};
  const bool replaces = isThere(target, old, path);
  if (replaces && S_ISDIR(old.st_mode))
    failAbout(path, TOLD("Problem", "%1 is a folder, not a file"));
  if (replaces && !S_ISREG(old.st_mode)) failAbout(path, TOLD("Problem", "%1 is not a file"));
  // Renaming needs no permission on the old file; a file that is write-protected stays as it is.
  if (replaces && ::access(target.c_str(), W_OK) != 0) failFromErrno(path, FileTask::Save);
  requireName(target);
  removeStaleDrafts(folderOf(target));

  Draft draft(folderOf(target));
  require(draft, path);
  const bool inPlace = replaces && isWrittenInPlace(target, old, draft);
  if (replaces && ::fchmod(draft.get(), old.st_mode & 07777) != 0)
    failFromErrno(path, FileTask::Save);
  // Filled in any case: where this does not fit, nothing has been touched yet.
  if (!draft.fill(text)) failFromErrno(path, FileTask::Save);
  if (replaces && before == Before::Kept && !holds(target, old, text)) keepBefore(target, old);
  if (inPlace)
    writeInPlace(target, old, text);
  else if (!draft.becomes(target))
    failFromErrno(path, FileTask::Save);
  forceOut(folderOf(target), path);
}

}  // namespace

void saveText(const fs::path& path, std::string_view text) { save(path, text, Before::Dropped); }

void saveKeepingBefore(const fs::path& path, std::string_view text) {
  save(path, text, Before::Kept);
}

fs::path versionBefore(const fs::path& file) {
  constexpr std::size_t kLongestName = 255;  // bytes, on the file systems of Linux
  std::string name = file.filename().string();
  if (name.size() >= kLongestName) {
    std::size_t end = kLongestName - 1;
    while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xc0) == 0x80) --end;
    name.resize(end);
  }
  return file.parent_path() / (name + '~');
}

bool createText(const fs::path& path, std::string_view text) {
  requireName(path);
  struct stat there {};
  if (::lstat(path.c_str(), &there) == 0) return false;
  removeStaleDrafts(folderOf(path));
  Draft draft(folderOf(path));
  require(draft, path);
  if (!draft.fill(text)) failFromErrno(path, FileTask::Save);
  if (!draft.becomesNew(path)) {
    if (errno == EEXIST) return false;
    failFromErrno(path, FileTask::Save);
  }
  draft.drop();
  forceOut(folderOf(path), path);
  return true;
}

void removeStaleDrafts(const fs::path& folder) {
  // The standard library's iterator ends the program where it finds no memory.
  const fs::path where = folder.empty() ? fs::path(".") : folder;
  const std::unique_ptr<DIR, int (*)(DIR*)> names(::opendir(where.c_str()), ::closedir);
  if (!names) return;
  std::vector<std::pair<fs::path, pid_t>> drafts;
  while (const dirent* entry = ::readdir(names.get())) {
    if (const auto writer = writerOf(entry->d_name))
      drafts.emplace_back(where / entry->d_name, *writer);
  }
  for (const auto& [draft, writer] : drafts) removeIfStale(draft, writer);
}

}  // namespace rigs
