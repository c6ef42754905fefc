// SPDX-License-Identifier: GPL-3.0-or-later
// Put before the C library of a process that a test starts (LD_PRELOAD): lets a call fail as a full
// disk, a broken one, or a machine without memory or threads would. The environment says which:
//
//   FAIL_BELOW=/folder FAIL_CALL=7 FAIL_WITH=28   the 7th call about files below the folder: ENOSPC
//   FAIL_ALLOCATION=7                             the 7th allocation since main() began
//   FAIL_ON=1                                     and all that follow
//   FAIL_THREADS=1                                every new thread
//   FAIL_NOTE=/file                               the name of the first call that failed goes there
#include <dlfcn.h>
#include <fcntl.h>
#include <pthread.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <sys/xattr.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdarg>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <cstring>

extern "C" {
void* __libc_malloc(std::size_t);
void* __libc_calloc(std::size_t, std::size_t);
void* __libc_realloc(void*, std::size_t);
}

namespace {

std::atomic<long> calls{0}, allocations{0};
std::atomic<bool> inMain{false};

long numberFrom(const char* name) {
  const char* text = std::getenv(name);
  return text ? std::atol(text) : 0;
}

// Whether a counted call is to fail.
bool isTurn(std::atomic<long>& count, long wanted) {
  static const bool on = numberFrom("FAIL_ON") != 0;
  if (wanted <= 0) return false;
  const long now = ++count;
  return now == wanted || (on && now > wanted);
}

// Without the functions below, which would count again.
void note(const char* call) {
  static std::atomic<bool> noted{false};
  const char* to = std::getenv("FAIL_NOTE");
  if (!to || noted.exchange(true)) return;
  const long file = ::syscall(SYS_openat, AT_FDCWD, to, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (file < 0) return;
  ::syscall(SYS_write, file, call, std::strlen(call));
  ::syscall(SYS_close, file);
}

bool isBelow(const char* path) {
  static const char* folder = std::getenv("FAIL_BELOW");
  return folder && path && std::strncmp(path, folder, std::strlen(folder)) == 0;
}
bool isBelow(int file) {
  char link[64], path[4096];
  std::snprintf(link, sizeof link, "/proc/self/fd/%d", file);
  const long size = ::syscall(SYS_readlinkat, AT_FDCWD, link, path, sizeof path - 1);
  if (size <= 0) return false;
  path[size] = '\0';
  return isBelow(path);
}

// The error that the call is to give; 0 for none. Paths and open files are counted together.
template <class What>
int errorOf(const char* call, What what) {
  static const long wanted = numberFrom("FAIL_CALL");
  if (wanted <= 0 || !isBelow(what) || !isTurn(calls, wanted)) return 0;
  note(call);
  return static_cast<int>(numberFrom("FAIL_WITH"));
}

void* nextOf(const char* function) { return ::dlsym(RTLD_NEXT, function); }

// For calls that return -1 and set errno.
template <class What>
bool fails(const char* call, What what) {
  const int error = errorOf(call, what);
  if (error != 0) errno = error;
  return error != 0;
}

bool isOutOfMemory() {
  static const long wanted = numberFrom("FAIL_ALLOCATION");
  if (wanted <= 0 || !inMain || !isTurn(allocations, wanted)) return false;
  note("malloc");
  errno = ENOMEM;
  return true;
}

int (*realMain)(int, char**, char**) = nullptr;

int countedMain(int argc, char** argv, char** environment) {
  inMain = true;
  const int result = realMain(argc, argv, environment);
  inMain = false;
  return result;
}

}  // namespace

// Name, result, parameters, arguments, and which of them says what file it is about.
#define FAILING(name, Result, parameters, arguments, what)                            \
  Result name parameters {                                                            \
    static const auto really = reinterpret_cast<Result(*) parameters>(nextOf(#name)); \
    return fails(#name, what) ? Result{-1} : really arguments;                        \
  }

// A struct of the system and a function have one name.
#pragma GCC diagnostic ignored "-Wshadow"

extern "C" {

FAILING(read, ssize_t, (int file, void* to, std::size_t size), (file, to, size), file)
FAILING(write, ssize_t, (int file, const void* from, std::size_t size), (file, from, size), file)
FAILING(fsync, int, (int file), (file), file)
FAILING(ftruncate, int, (int file, off_t size) noexcept, (file, size), file)
FAILING(fchown, int, (int file, uid_t owner, gid_t group) noexcept, (file, owner, group), file)
FAILING(fchmod, int, (int file, mode_t mode) noexcept, (file, mode), file)
FAILING(flock, int, (int file, int operation) noexcept, (file, operation), file)
FAILING(fstat, int, (int file, struct stat* to) noexcept, (file, to), file)
FAILING(stat, int, (const char* path, struct stat* to) noexcept, (path, to), path)
FAILING(lstat, int, (const char* path, struct stat* to) noexcept, (path, to), path)
FAILING(access, int, (const char* path, int kind) noexcept, (path, kind), path)
FAILING(unlink, int, (const char* path) noexcept, (path), path)
FAILING(rename, int, (const char* from, const char* to) noexcept, (from, to), to)
FAILING(renameat2, int, (int a, const char* from, int b, const char* to, unsigned flags) noexcept,
        (a, from, b, to, flags), to)
FAILING(link, int, (const char* from, const char* to) noexcept, (from, to), to)
FAILING(listxattr, ssize_t, (const char* path, char* list, std::size_t size) noexcept,
        (path, list, size), path)

char* realpath(const char* path, char* to) noexcept {
  static const auto really = reinterpret_cast<char* (*)(const char*, char*)>(nextOf("realpath"));
  return fails("realpath", path) ? nullptr : really(path, to);
}

// It is closed all the same, as the system does.
int close(int file) {
  static const auto really = reinterpret_cast<int (*)(int)>(nextOf("close"));
  const bool failed = fails("close", file);
  const int error = errno;
  const int result = really(file);
  if (!failed) return result;
  errno = error;
  return -1;
}

// Returns its error.
int posix_fallocate(int file, off_t from, off_t size) {
  static const auto really =
      reinterpret_cast<int (*)(int, off_t, off_t)>(nextOf("posix_fallocate"));
  const int error = errorOf("posix_fallocate", file);
  return error != 0 ? error : really(file, from, size);
}

int open(const char* path, int flags, ...) {
  std::va_list more;
  va_start(more, flags);
  const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(more, mode_t) : 0;
  va_end(more);
  if (fails("open", path)) return -1;
  return static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags, mode));
}

void* malloc(std::size_t size) { return isOutOfMemory() ? nullptr : __libc_malloc(size); }
void* calloc(std::size_t count, std::size_t size) {
  return isOutOfMemory() ? nullptr : __libc_calloc(count, size);
}
void* realloc(void* block, std::size_t size) {
  return isOutOfMemory() ? nullptr : __libc_realloc(block, size);
}

int pthread_create(pthread_t* thread, const pthread_attr_t* attributes, void* (*run)(void*),
                   void* argument) noexcept {
  using Create = int (*)(pthread_t*, const pthread_attr_t*, void* (*)(void*), void*);
  static const auto really = reinterpret_cast<Create>(nextOf("pthread_create"));
  if (numberFrom("FAIL_THREADS") == 0) return really(thread, attributes, run, argument);
  note("pthread_create");
  return EAGAIN;
}

// What the loader and the C++ library allocate before main() is not the program's to answer for.
int __libc_start_main(int (*program)(int, char**, char**), int argc, char** argv, void (*begin)(),
                      void (*end)(), void (*unload)(), void* stack) {
  using Start =
      int (*)(int (*)(int, char**, char**), int, char**, void (*)(), void (*)(), void (*)(), void*);
  realMain = program;
  return reinterpret_cast<Start>(nextOf("__libc_start_main"))(countedMain, argc, argv, begin, end,
                                                              unload, stack);
}

}  // extern "C"
