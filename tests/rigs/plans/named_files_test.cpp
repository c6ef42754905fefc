// SPDX-License-Identifier: GPL-3.0-or-later
// Files that a plan names: whatever stands there, the plan is read at once and nothing from
// outside its folder gets into it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "rigs/plans/plan.hpp"
#include "rigs/plans/plan_texts.hpp"
#include "rigs/plans/plan_writer.hpp"
#include "tests/rigs/plans/plan_edit.hpp"

namespace {

namespace fs = std::filesystem;
using test_support::Json;
using testing::HasSubstr;

constexpr const char* kSecret = "a word that nobody outside may read";

class NamedFiles : public testing::Test {
 protected:
  NamedFiles() {
    std::string pattern = (fs::temp_directory_path() / "heatledger-XXXXXX").string();
    root_ = ::mkdtemp(pattern.data());
    fs::create_directories(folder() / "sub");
    write(root_ / "outside.json", Json{{"name", kSecret}}.dump());
  }
  ~NamedFiles() override {
    std::error_code ignored;
    fs::remove_all(root_, ignored);
  }
  fs::path folder() const { return root_ / "plan"; }
  static void write(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
  }
  // Where the plan names `name` as rules or as a rig, what is said at that very place.
  std::string said(const std::string& pointer, const std::string& name) const {
    Json document = Json::parse(rigs::demoPlanText());
    document[Json::json_pointer(pointer)] = name;
    rigs::Problems problems;
    rigs::readPlan(document.dump(), folder(), problems);
    std::string all;
    for (const rigs::Problem& problem : problems) {
      EXPECT_EQ(problem.where, pointer) << rigs::inEnglish(problem.message);
      EXPECT_EQ(problem.severity, rigs::Severity::Error);
      all += rigs::inEnglish(problem.message) + '\n';
    }
    EXPECT_THAT(all, testing::Not(HasSubstr(kSecret)));
    return all;
  }
  fs::path root_;
};
constexpr const char* kPlaces[] = {"/place/rules", "/rigs/0/from"};

TEST_F(NamedFiles, AreNeitherPipesNorDevicesNorSocketsOverLinksOrNot) {
  ASSERT_EQ(::mkfifo((folder() / "pipe.json").c_str(), 0600), 0);
  const int socket = ::socket(AF_UNIX, SOCK_STREAM, 0);
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  (folder() / "socket.json").string().copy(address.sun_path, sizeof address.sun_path - 1);
  ASSERT_EQ(::bind(socket, reinterpret_cast<sockaddr*>(&address), sizeof address), 0);
  fs::create_symlink("pipe.json", folder() / "to-pipe.json");
  for (const char* device : {"zero", "random", "null", "tty", "full", "stdin"})
    fs::create_symlink(std::string("/dev/") + device, folder() / (std::string(device) + ".json"));
  for (const char* place : kPlaces) {
    for (const char* name : {"pipe.json", "to-pipe.json", "socket.json", "zero.json", "random.json",
                             "null.json", "full.json"}) {
      SCOPED_TRACE(std::string(place) + ' ' + name);
      EXPECT_THAT(said(place, name), HasSubstr("is not a file"));
    }
    for (const char* name : {"tty.json", "stdin.json"}) EXPECT_NE(said(place, name), "") << name;
  }
  ::close(socket);
}

TEST_F(NamedFiles, LieWithinThePlansFolderOverLinksToo) {
  fs::create_symlink("../outside.json", folder() / "out.json");
  fs::create_symlink(root_ / "outside.json", folder() / "absolute.json");
  fs::create_symlink("..", folder() / "up");
  fs::create_symlink("out.json", folder() / "over-two.json");
  for (const char* place : kPlaces) {
    for (const char* name : {"out.json", "absolute.json", "up/outside.json", "over-two.json",
                             "sub/../up/outside.json"}) {
      SCOPED_TRACE(std::string(place) + ' ' + name);
      EXPECT_THAT(said(place, name), HasSubstr("leads out of the plan's folder"));
    }
  }
}

TEST_F(NamedFiles, MayBeLinksWithinThePlansFolder) {
  const Json rig = Json::parse(rigs::demoPlanText())["rigs"][1];
  write(folder() / "kettle.json", rig.dump());
  fs::create_symlink("../kettle.json", folder() / "sub/kettle.json");
  fs::create_symlink(folder() / "kettle.json", folder() / "absolute.json");
  EXPECT_EQ(said("/rigs/0/from", "sub/kettle.json"), "");
  EXPECT_EQ(said("/rigs/0/from", "absolute.json"), "");
}

// What a rig is from is read by the window's forms, too.
TEST_F(NamedFiles, OutsideAreNotSeenByFormsEither) {
  fs::create_symlink("../outside.json", folder() / "out.json");
  Json document = Json::parse(rigs::demoPlanText());
  document["rigs"][0]["from"] = "out.json";
  EXPECT_TRUE(rigs::originsOf(document.dump(), 0, folder()).empty());
}

TEST_F(NamedFiles, InCirclesAndWithoutEndAreToldAtOnce) {
  fs::create_symlink("circle.json", folder() / "circle.json");
  fs::create_directory(folder() / "folder.json");
  write(folder() / "large.json", std::string(5 * 1024 * 1024, ' '));
  for (const char* place : kPlaces) {
    EXPECT_NE(said(place, "circle.json"), "");
    EXPECT_NE(said(place, "folder.json"), "");
    EXPECT_THAT(said(place, "large.json"), HasSubstr("too large"));
  }
}

}  // namespace
