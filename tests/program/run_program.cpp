// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/program/run_program.hpp"

#include <fcntl.h>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cctype>
#include <cstddef>
#include <cstdint>
#include <cstdio>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace test_support {
namespace {

// From now on: any socket of IPv4 or IPv6 ends this process and those it becomes.
void endOnNetwork() {
  constexpr auto kOf = [](std::size_t member) { return static_cast<std::uint32_t>(member); };
  sock_filter steps[] = {BPF_STMT(BPF_LD | BPF_W | BPF_ABS, kOf(offsetof(seccomp_data, nr))),
                         BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_socket, 0, 4),
                         BPF_STMT(BPF_LD | BPF_W | BPF_ABS, kOf(offsetof(seccomp_data, args))),
                         BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET, 1, 0),
                         BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET6, 0, 1),
                         BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_KILL_PROCESS),
                         BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW)};
  const sock_fprog program{.len = std::size(steps), .filter = steps};
  if (::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0 ||
      ::prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) != 0)
    ::_exit(126);
}

// A temporary file that is gone once it is closed; pipes would need reading while writing.
int scratch() {
  std::string name = std::filesystem::temp_directory_path() / "heatledger-test-XXXXXX";
  const int file = ::mkstemp(name.data());
  if (file < 0) throw std::runtime_error("no temporary file");
  ::unlink(name.c_str());
  return file;
}

std::string drained(int file) {
  std::string text;
  char buffer[4096];
  ::lseek(file, 0, SEEK_SET);
  for (ssize_t n = 0; (n = ::read(file, buffer, sizeof buffer)) > 0;) {
    text.append(buffer, static_cast<std::size_t>(n));
  }
  ::close(file);
  return text;
}

}  // namespace

std::string testedProgram() {
  const char* other = std::getenv("HEATLEDGER_TESTED_PROGRAM");
  return other ? other : HEATLEDGER_PROGRAM;
}

Ran runProgram(const std::vector<std::string>& arguments, const Stage& stage) {
  const int input = scratch();
  if (::write(input, stage.standardInput.data(), stage.standardInput.size()) < 0) {
    throw std::runtime_error("no input");
  }
  ::lseek(input, 0, SEEK_SET);
  const int complaint = scratch();
  int output = -1;
  if (stage.readerLeaves) {
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
    ::close(ends[0]);
    output = ends[1];
  } else {
    output = stage.outputTo.empty() ? scratch() : ::open(stage.outputTo.c_str(), O_WRONLY);
  }

  std::vector<std::string> words{stage.program.empty() ? testedProgram() : stage.program};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> argv;
  for (std::string& word : words) argv.push_back(word.data());
  argv.push_back(nullptr);

  const pid_t child = ::fork();
  if (child == 0) {
    ::dup2(input, STDIN_FILENO);
    ::dup2(output, STDOUT_FILENO);
    ::dup2(complaint, STDERR_FILENO);
    std::signal(SIGPIPE, SIG_DFL);
    ::setenv("LC_ALL", stage.locale.c_str(), 1);
    stage.columns.empty() ? ::unsetenv("COLUMNS") : ::setenv("COLUMNS", stage.columns.c_str(), 1);
    if (!stage.hasDisplay) {
      for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) ::unsetenv(name);
    }
    for (const auto& [name, value] : stage.environment) ::setenv(name.c_str(), value.c_str(), 1);
    if (stage.endsOnNetwork) endOnNetwork();
    if (stage.endsAfter > 0) {
      const rlimit tight{.rlim_cur = stage.endsAfter, .rlim_max = stage.endsAfter};
      const rlimit none{.rlim_cur = 0, .rlim_max = 0};
      ::setrlimit(RLIMIT_FSIZE, &tight);
      ::setrlimit(RLIMIT_CORE, &none);
    }
    ::execv(argv[0], argv.data());
    ::_exit(127);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  ::close(input);
  Ran ran;
  ran.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  if (stage.readerLeaves || !stage.outputTo.empty()) {
    ::close(output);
  } else {
    ran.output = drained(output);
  }
  ran.complaint = drained(complaint);
  return ran;
}

Folder::Folder() {
  path_ = std::filesystem::temp_directory_path() / "heatledger-test-XXXXXX";
  if (!::mkdtemp(path_.data())) throw std::runtime_error("no temporary folder");
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::string Folder::write(const std::string& name, const std::string& text) const {
  std::ofstream(file(name), std::ios::binary) << text;
  return file(name);
}

std::string contents(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

std::string fixed(double number, int decimals) {
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%.*f", decimals, number);
  return buffer;
}

std::string squeezed(std::string text) {
  std::erase_if(text, [](unsigned char c) { return std::isspace(c) != 0; });
  return text;
}

}  // namespace test_support
