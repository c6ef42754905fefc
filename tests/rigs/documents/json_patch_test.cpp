// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/json_patch.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "rigs/documents/json_edit.hpp"

namespace rigs {
namespace {

using Json = nlohmann::ordered_json;

// Any tree of a few keys, so that two of them meet often; without nulls in objects, which no patch
// can ask for.
Json someTree(int levels) {
  const int kind = *rc::gen::inRange(0, levels > 0 ? 6 : 3);
  if (kind == 0) return *rc::gen::inRange(0, 3);
  if (kind == 1) return std::string(1, static_cast<char>('x' + *rc::gen::inRange(0, 3)));
  if (kind == 2) return *rc::gen::arbitrary<bool>();
  if (kind == 3) {
    Json list = Json::array();
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) list.push_back(someTree(levels - 1));
    return list;
  }
  Json object = Json::object();
  for (int i = *rc::gen::inRange(0, 5); i > 0; --i)
    object[std::string(1, static_cast<char>('a' + *rc::gen::inRange(0, 5)))] = someTree(levels - 1);
  return object;
}

}  // namespace

// RFC 7396, appendix A: the document, the patch, the result.
TEST(MergePatch, DoesWhatTheStandardsExamplesDo) {
  const char* kExamples[][3] = {
      {R"({"a":"b"})", R"({"a":"c"})", R"({"a":"c"})"},
      {R"({"a":"b"})", R"({"b":"c"})", R"({"a":"b","b":"c"})"},
      {R"({"a":"b"})", R"({"a":null})", R"({})"},
      {R"({"a":"b","b":"c"})", R"({"a":null})", R"({"b":"c"})"},
      {R"({"a":["b"]})", R"({"a":"c"})", R"({"a":"c"})"},
      {R"({"a":"c"})", R"({"a":["b"]})", R"({"a":["b"]})"},
      {R"({"a":{"b":"c"}})", R"({"a":{"b":"d","c":null}})", R"({"a":{"b":"d"}})"},
      {R"({"a":[{"b":"c"}]})", R"({"a":[1]})", R"({"a":[1]})"},
      {R"(["a","b"])", R"(["c","d"])", R"(["c","d"])"},
      {R"({"a":"b"})", R"(["c"])", R"(["c"])"},
      {R"({"a":"foo"})", "null", "null"},
      {R"({"a":"foo"})", R"("bar")", R"("bar")"},
      {R"({"e":null})", R"({"a":1})", R"({"e":null,"a":1})"},
      {"[1,2]", R"({"a":"b","c":null})", R"({"a":"b"})"},
      {"{}", R"({"a":{"bb":{"ccc":null}}})", R"({"a":{"bb":{}}})"}};
  for (const auto& [document, patch, result] : kExamples)
    EXPECT_EQ(patched(document, patch), result) << document << " with " << patch;
}

TEST(PatchBetween, SaysOnlyWhatDiffers) {
  const char* base = R"({"name":"a","lid":{"material":"glass","open":{"boil":"100 %"}},"l":[1,2]})";
  EXPECT_EQ(patchBetween(base, base), "{}");
  // The order of keys is nobody's difference.
  EXPECT_EQ(patchBetween(R"({"a":1,"b":{"c":1,"d":2}})", R"({"b":{"d":2,"c":1},"a":1})"), "{}");
  EXPECT_EQ(patchBetween(base, R"({"name":"a","lid":{"material":"glass","open":{"boil":"50 %"}}})"),
            R"({"lid":{"open":{"boil":"50 %"}},"l":null})");
  // One entry less is another list.
  EXPECT_EQ(patchBetween(R"({"l":[1,2]})", R"({"l":[1]})"), R"({"l":[1]})");
  EXPECT_EQ(patchBetween(R"({"lid":"none"})", R"({"lid":{"gap":"0 %"}})"),
            R"({"lid":{"gap":"0 %"}})");
}

TEST(PatchBetween, TakesANullForAKeyLeftOut) {
  EXPECT_EQ(patchBetween(R"({"a":1})", R"({"a":null,"b":{"c":null,"d":1}})"),
            R"({"b":{"d":1},"a":null})");
}

TEST(Patches, AreOfJsonAlone) {
  EXPECT_THROW(patched("{", "{}"), EditError);
  EXPECT_THROW(patchBetween("{}", "}"), EditError);
}

RC_GTEST_PROP(AnyTwoDocuments, ArePatchedIntoEachOther, ()) {
  Json base = Json::object();
  Json wanted = Json::object();
  for (const char* key : {"a", "b", "c"}) {
    if (*rc::gen::arbitrary<bool>()) base[key] = someTree(3);
    if (*rc::gen::arbitrary<bool>()) wanted[key] = someTree(3);
  }
  const std::string patch = patchBetween(base.dump(), wanted.dump());
  RC_ASSERT(saysTheSame(patched(base.dump(), patch), wanted.dump()));
  // And nothing is in it that need not be.
  RC_ASSERT((patch == "{}") == saysTheSame(base.dump(), wanted.dump()));
  const Json parts = Json::parse(patch);
  for (const auto& [key, value] : parts.items()) {
    Json less = parts;
    less.erase(key);
    RC_ASSERT(!saysTheSame(patched(base.dump(), less.dump()), wanted.dump()));
  }
}

}  // namespace rigs
