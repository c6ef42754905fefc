// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/watched_file.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <thread>

#include "rigs/documents/file_errors.hpp"

namespace {

namespace fs = std::filesystem;
using gui::WatchedFile;

class AWatchedFile : public testing::Test {
 protected:
  AWatchedFile() {
    std::string name = fs::temp_directory_path() / "heatledger-watched-XXXXXX";
    folder_ = ::mkdtemp(name.data());
    path_ = folder_ / "night.csv";
  }
  ~AWatchedFile() override { fs::remove_all(folder_); }

  void write(const std::string& text, std::ios::openmode mode = std::ios::app) const {
    std::ofstream(path_, std::ios::binary | mode) << text;
  }
  std::string contents() const {
    std::ifstream file(path_, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  }

  fs::path folder_, path_;
};

TEST_F(AWatchedFile, NeedNotBeThereAndIsSeenWhenItComesGrowsIsReplacedAndGoes) {
  WatchedFile file(path_, 1000);
  EXPECT_EQ(file.read(), "");
  EXPECT_FALSE(file.isThere() || file.hasChanged());
  write("20:48 unplugged\n");
  EXPECT_TRUE(file.hasChanged());
  EXPECT_EQ(file.read(), "20:48 unplugged\n");
  EXPECT_TRUE(file.isThere());
  EXPECT_FALSE(file.hasChanged());
  write("20:49 66.6\n");
  EXPECT_TRUE(file.hasChanged());
  file.read();
  // Another file of the same size, by the same name.
  const fs::path other = folder_ / "other";
  std::ofstream(other) << "20:48 unplugged\n20:49 77.7\n";
  fs::rename(other, path_);
  EXPECT_TRUE(file.hasChanged());
  EXPECT_EQ(file.read(), "20:48 unplugged\n20:49 77.7\n");
  fs::remove(path_);
  EXPECT_TRUE(file.hasChanged());
  EXPECT_EQ(file.read(), "");
}

TEST_F(AWatchedFile, GetsLinesOfTheirOwn) {
  const WatchedFile file(path_, 1000);
  file.append("20:48 unplugged");
  EXPECT_EQ(contents(), "20:48 unplugged\n");
  write("20:49 66");
  file.append("20:50 66.6");  // nobody finished the one before
  EXPECT_EQ(contents(), "20:48 unplugged\n20:49 66\n20:50 66.6\n");
}

TEST_F(AWatchedFile, GivesALoggerAMomentToFinishItsLine) {
  write("20:49 66");
  std::thread logger([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(250));
    write(".6\n");
  });
  WatchedFile(path_, 1000).append("20:50 66.5");
  logger.join();
  EXPECT_EQ(contents(), "20:49 66.6\n20:50 66.5\n");
}

TEST_F(AWatchedFile, StaysAsItWasWhereALineDoesNotFit) {
  write("20:48 unplugged\n");
  rlimit before{};
  ::getrlimit(RLIMIT_FSIZE, &before);
  const auto usual = std::signal(SIGXFSZ, SIG_IGN);
  const rlimit tight{.rlim_cur = 20, .rlim_max = before.rlim_max};
  ::setrlimit(RLIMIT_FSIZE, &tight);
  EXPECT_THROW(WatchedFile(path_, 1000).append("20:49 66.6"), rigs::FileError);
  ::setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, usual);
  EXPECT_EQ(contents(), "20:48 unplugged\n");
}

TEST_F(AWatchedFile, IsAFileAndNoFolder) {
  EXPECT_THROW(WatchedFile(folder_, 1000).read(), rigs::FileError);
  EXPECT_THROW(WatchedFile(folder_, 1000).append("20:49 66.6"), rigs::FileError);
  EXPECT_THROW(WatchedFile(folder_ / "none" / "night.csv", 1000).append("x"), rigs::FileError);
}

TEST(WholeLines, LeaveOutTheLastOneThatHasNoEnd) {
  EXPECT_EQ(gui::wholeLines(""), "");
  EXPECT_EQ(gui::wholeLines("20:49 6"), "");
  EXPECT_EQ(gui::wholeLines("20:49 66.6\n20:5"), "20:49 66.6\n");
  EXPECT_EQ(gui::wholeLines("20:49 66.6\n"), "20:49 66.6\n");
}

}  // namespace
