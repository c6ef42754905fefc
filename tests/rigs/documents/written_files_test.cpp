// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a file is told by what is in it.
#include "rigs/documents/written_files.hpp"

#include <gtest/gtest.h>

#include <random>

#include "rigs/plans/plan_writer.hpp"

namespace rigs {
namespace {

using namespace std::string_view_literals;

TEST(FileContents, AreToldByTheirMarks) {
  const std::pair<std::string_view, FileContent> cases[] = {
      {"", FileContent::Nothing},
      {"x", FileContent::Unknown},
      {" \n", FileContent::Unknown},
      {"my notes", FileContent::Unknown},
      {"{}", FileContent::OtherJson},
      {"\xef\xbb\xbf{\"format\": {\"name\": \"heat-ledger-plan\"}}", FileContent::Plan},
      {"{\"format\": {\"name\": \"heat-ledger-result\"}}", FileContent::OwnResult},
      {"{\n\"seen\": {\n    \"cautions\": [], \"question\": \"room\"", FileContent::OwnNumbers},
      {"{\n\"seen\": {\"by\": \"me\"}}", FileContent::OtherJson},
      {"<?xml version=\"1.0\"?><!-- Heat Ledger -->\n<svg", FileContent::OwnSvg},
      {"<?xml version=\"1.0\"?>\n<svg", FileContent::Svg},
      {"<html>", FileContent::Html},
      {"<!DOCTYPE html>\n<!-- Heat Ledger: a sheet to brew by -->\n<html>", FileContent::OwnSheet},
      {"<!DOCTYPE html>\n<!-- mine -->\n<html>", FileContent::Html},
      {"\x89PNG\r\n\x1a\n....tEXtSoftware\0Heat Ledger"sv, FileContent::OwnPng},
      {"\x89PNG\r\n\x1a\n....tEXtSoftware\0Another"sv, FileContent::Png},
      {"%PDF-1.4\n1 0 obj", FileContent::Pdf},
      {"%PDF-1.4\n/Creator (\xfe\xff\0H\0e\0a\0t\0 \0L\0e\0d\0g\0e\0r\0 \0001"sv,
       FileContent::OwnReport},
      {"%PDF-1.4\n/Creator (\xfe\xff\0H\0e\0a\0t\0 \0L\0e\0d\0g\0e\0r\0 \0s\0h\0e\0e\0t\0 \0001"sv,
       FileContent::OwnSheetPdf},
      {"table,group,figure,unit,(a),(b)\n", FileContent::OwnTable},
      {"date,price\n", FileContent::Unknown}};
  for (const auto& [bytes, content] : cases) EXPECT_EQ(contentOfBytes(bytes), content) << bytes;
}

TEST(FileContents, KnowEveryPlan) {
  EXPECT_EQ(contentOfBytes(newPlanText()), FileContent::Plan);
  EXPECT_EQ(contentOfBytes(std::string(100, '\n') + newPlanText()), FileContent::Plan);
}

TEST(FileContents, OfOthersAreNeverTakenForOurs) {
  std::mt19937 random(20260101);
  std::uniform_int_distribution<int> byte(0, 255), size(1, 300);
  for (const std::string_view begins :
       {""sv, "{"sv, "<svg"sv, "<html"sv, "%PDF-"sv, "\x89PNG\r\n\x1a\n"sv}) {
    for (int round = 0; round < 400; ++round) {
      std::string bytes(begins);
      for (int i = size(random); i > 0; --i) bytes += static_cast<char>(byte(random));
      const FileContent content = contentOfBytes(bytes);
      EXPECT_TRUE(content >= FileContent::Plan) << static_cast<int>(content);
    }
  }
}

TEST(FileContents, HaveAnEndingForEachKindThatIsWritten) {
  EXPECT_EQ(contentByEnding("a/day.svg"), FileContent::OwnSvg);
  EXPECT_EQ(contentByEnding("DAY.PNG"), FileContent::OwnPng);
  EXPECT_EQ(contentByEnding("day.csv"), FileContent::OwnTable);
  EXPECT_EQ(contentByEnding("plan.json"), FileContent::OwnNumbers);
  EXPECT_EQ(contentByEnding("day.pdf"), FileContent::OwnReport);
  EXPECT_EQ(contentByEnding("day.html"), FileContent::OwnSheet);
  EXPECT_EQ(contentByEnding("day"), FileContent::Unknown);
}

}  // namespace
}  // namespace rigs
