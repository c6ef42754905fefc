// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/csv.hpp"

#include <gtest/gtest.h>

using namespace gui::telling;
using rigs::Told;
using rigs::Verbatim;

namespace {

Told word(const std::string& text) { return Told::just(Verbatim{text}); }

Answer answer() {
  Table t;
  t.name = "boil";
  t.columns = {word("(a)"), word("(b)")};
  t.heading(word("Boil"));
  t.rows.push_back(
      {word("boil-off"), {rigs::Argument(rigs::Number{8.123456789}), std::nullopt}, "%/h"});
  Answer a;
  a.show(t);
  a.cautions = {word("Stay with the kettle.")};
  return a;
}

}  // namespace

TEST(CsvOf, CarriesAllDigitsAndTheRigsNames) {
  EXPECT_EQ(csvOf(answer(), {"Old, \"big\"", "=1+1"}, {}),
            "table,group,figure,unit,\"(a) Old, \"\"big\"\"\",(b) =1+1\n"
            "boil,Boil,boil-off,%/h,8.123456789,\n"
            "caution,,Stay with the kettle.,,,\n");
}

TEST(CsvOf, KeepsSpreadsheetsFromRunningText) {
  Answer a = answer();
  std::get<Table>(a.blocks[0])
      .rows.push_back(
          {word("=SUM(A1)"), {rigs::Argument(Verbatim{"+x"}), rigs::Argument(rigs::Number{-2.0})}});
  const std::string csv = csvOf(a, {}, {});
  EXPECT_NE(csv.find("'=SUM(A1),,'+x,-2\n"), std::string::npos) << csv;
}

TEST(CsvField, TakesNoControlCharacterAndDoublesQuotationMarks) {
  EXPECT_EQ(csvField("a\nb\x7f"), "a b ");
  EXPECT_EQ(csvField("5 \" pipe"), "\"5 \"\" pipe\"");
  EXPECT_EQ(csvField("@home"), "'@home");
}
