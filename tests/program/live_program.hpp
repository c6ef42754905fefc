// SPDX-License-Identifier: GPL-3.0-or-later
// The built program while it runs: somebody types, reads what it prints, and ends it.
#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

namespace test_support {

class LiveProgram {
 public:
  explicit LiveProgram(const std::vector<std::string>& arguments);
  ~LiveProgram();  // ends it where nobody did
  LiveProgram(const LiveProgram&) = delete;
  LiveProgram& operator=(const LiveProgram&) = delete;

  void type(const std::string& text) const;
  void endInput();
  void send(int signal) const;
  // Waits, at the most some 20 s, until it has printed `text` at least so many times, on either
  // stream.
  bool prints(const std::string& text, int times = 1);
  // Waits for its end; 128 + signal if one ended it, -1 where it does not end in some 20 s.
  int exitCode();
  std::string output() const { return output_; }
  std::string complaint() const { return complaint_; }

 private:
  void drain();

  pid_t child_ = -1;
  int input_ = -1, outputEnd_ = -1, complaintEnd_ = -1;
  std::string output_, complaint_;
};

}  // namespace test_support
