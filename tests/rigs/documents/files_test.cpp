// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/files.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <fstream>

#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class Files : public testing::Test {
 protected:
  Files() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
  }
  ~Files() override {
    std::error_code ignored;
    fs::permissions(folder_, fs::perms::owner_all, ignored);
    fs::remove_all(folder_, ignored);
  }
  fs::path at(const std::string& name) const { return folder_ / name; }
  fs::path written(const std::string& name, const std::string& text) const {
    std::ofstream(at(name), std::ios::binary) << text;
    return at(name);
  }
  std::size_t entries() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }
  static unsigned modeOf(const fs::path& path) {
    struct stat facts {};
    ::stat(path.c_str(), &facts);
    return facts.st_mode & 07777U;
  }

  fs::path folder_;
};

template <class Action>
std::string complaint(const Action& action) {
  try {
    action();
  } catch (const FileError& error) {
    return error.what();
  }
  return "";
}

TEST_F(Files, KeepEveryByte) {
  std::string text = "a\0b\r\n\xff\n";
  text.append(200000, 'x');
  saveText(at("plan.json"), text);
  EXPECT_EQ(readText(at("plan.json")), text);
}

TEST_F(Files, SayWhatIsWrongWhenReading) {
  EXPECT_THAT(complaint([&] { readText(at("gone.json")); }), HasSubstr("is not there"));
  EXPECT_THAT(complaint([&] { readText(folder_); }), HasSubstr("is a folder"));
  written("large.json", std::string(2000, 'x'));
  EXPECT_THAT(complaint([&] { readText(at("large.json"), 1999); }), HasSubstr("too large"));
  EXPECT_EQ(readText(at("large.json"), 2000).size(), 2000U);
  EXPECT_THAT(complaint([] { readText("/dev/zero", 1000); }), HasSubstr("too large"));
  written("plain", "x");
  EXPECT_THAT(complaint([&] { readText(at("plain/plan.json")); }), HasSubstr("Not a directory"));
}

TEST_F(Files, NameTheFileInEveryComplaint) {
  EXPECT_THAT(complaint([&] { readText(at("gone.json")); }), HasSubstr(at("gone.json").string()));
  EXPECT_THAT(complaint([&] { saveText(at("no/plan.json"), ""); }),
              HasSubstr(at("no/plan.json").string()));
}

TEST_F(Files, AreNotWaitedForWhenAPipeHasNoWriter) {
  ASSERT_EQ(::mkfifo(at("pipe").c_str(), 0600), 0);
  EXPECT_EQ(readText(at("pipe")), "");
}

TEST_F(Files, SayWhatIsWrongWhenSaving) {
  EXPECT_THAT(complaint([&] { saveText(folder_, "x"); }), HasSubstr("is a folder"));
  EXPECT_THAT(complaint([&] { saveText(at("no/plan.json"), "x"); }),
              HasSubstr("its folder is not there"));
}

TEST_F(Files, KeepTheirPermissions) {
  const fs::path path = written("plan.json", "old");
  ::chmod(path.c_str(), 0640);
  saveText(path, "new");
  EXPECT_EQ(modeOf(path), 0640U);
  EXPECT_EQ(readText(path), "new");
}

TEST_F(Files, StayLinks) {
  const fs::path real = written("real.json", "old");
  fs::create_symlink("real.json", at("link.json"));
  saveText(at("link.json"), "new");
  EXPECT_TRUE(fs::is_symlink(at("link.json")));
  EXPECT_EQ(readText(real), "new");
}

TEST_F(Files, LeaveNoDraftBehind) {
  saveText(at("plan.json"), "one");
  saveText(at("plan.json"), "two");
  EXPECT_EQ(entries(), 1U);
}

// A write that fails half way, as on a full disk: the limit on file size stands in for it.
TEST_F(Files, StayAsTheyWereWhenTheDiskIsFull) {
  const fs::path path = written("plan.json", "the old plan");
  rlimit before{};
  ::getrlimit(RLIMIT_FSIZE, &before);
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  const rlimit tight{.rlim_cur = 4096, .rlim_max = before.rlim_max};
  ::setrlimit(RLIMIT_FSIZE, &tight);
  const std::string said = complaint([&] { saveText(path, std::string(100000, 'x')); });
  ::setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, handler);

  EXPECT_THAT(said, HasSubstr("cannot be saved"));
  EXPECT_EQ(readText(path), "the old plan");
  EXPECT_EQ(entries(), 1U);
}

TEST_F(Files, MayHoldAPlan) {
  savePlan(at("plan.json"), newPlanText());
  EXPECT_EQ(readText(at("plan.json")), newPlanText());
  savePlan(at("short.json"), "{}");
  EXPECT_EQ(readText(at("short.json")), "{}\n");
}

}  // namespace
}  // namespace rigs
