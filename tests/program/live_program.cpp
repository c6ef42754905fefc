// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/program/live_program.hpp"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <stdexcept>
#include <thread>

#include "tests/program/run_program.hpp"

namespace test_support {
namespace {

constexpr int kMoments = 800;
void aMoment() { std::this_thread::sleep_for(std::chrono::milliseconds(25)); }

void readAll(int end, std::string& into) {
  char some[4096];
  for (ssize_t n = 0; (n = ::read(end, some, sizeof some)) > 0;)
    into.append(some, static_cast<std::size_t>(n));
}

int timesIn(const std::string& text, const std::string& what) {
  int times = 0;
  for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + what.size()))
    ++times;
  return times;
}

}  // namespace

LiveProgram::LiveProgram(const std::vector<std::string>& arguments) {
  int in[2], out[2], err[2];
  if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0 || ::pipe2(err, O_CLOEXEC) != 0)
    throw std::runtime_error("no pipe");
  std::vector<std::string> words{testedProgram()};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> argv;
  for (std::string& word : words) argv.push_back(word.data());
  argv.push_back(nullptr);
  child_ = ::fork();
  if (child_ == 0) {
    ::dup2(in[0], STDIN_FILENO);
    ::dup2(out[1], STDOUT_FILENO);
    ::dup2(err[1], STDERR_FILENO);
    ::setenv("LC_ALL", "C.UTF-8", 1);
    ::unsetenv("COLUMNS");
    ::execv(argv[0], argv.data());
    ::_exit(127);
  }
  ::close(in[0]);
  ::close(out[1]);
  ::close(err[1]);
  input_ = in[1];
  outputEnd_ = out[0];
  complaintEnd_ = err[0];
  ::fcntl(outputEnd_, F_SETFL, O_NONBLOCK);
  ::fcntl(complaintEnd_, F_SETFL, O_NONBLOCK);
}

LiveProgram::~LiveProgram() {
  if (child_ > 0) {
    ::kill(child_, SIGKILL);
    ::waitpid(child_, nullptr, 0);
  }
  for (const int end : {input_, outputEnd_, complaintEnd_})
    if (end >= 0) ::close(end);
}

void LiveProgram::type(const std::string& text) const {
  if (::write(input_, text.data(), text.size()) != static_cast<ssize_t>(text.size()))
    throw std::runtime_error("nothing can be typed");
}

void LiveProgram::endInput() {
  ::close(input_);
  input_ = -1;
}

void LiveProgram::send(int signal) const { ::kill(child_, signal); }

void LiveProgram::drain() {
  readAll(outputEnd_, output_);
  readAll(complaintEnd_, complaint_);
}

bool LiveProgram::prints(const std::string& text, int times) {
  for (int i = 0; i < kMoments; ++i, aMoment()) {
    drain();
    if (timesIn(output_, text) + timesIn(complaint_, text) >= times) return true;
  }
  return false;
}

int LiveProgram::exitCode() {
  for (int i = 0; i < kMoments; ++i, aMoment()) {
    drain();
    int status = 0;
    if (::waitpid(child_, &status, WNOHANG) != child_) continue;
    child_ = -1;
    drain();
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  }
  return -1;
}

}  // namespace test_support
