// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/csv_export.hpp"

#include <gtest/gtest.h>

using namespace gui;

namespace {

Page page() {
  Page p;
  p.rigNames = {"Old, \"big\"", "=1+1"};
  Table t;
  t.name = "boil";
  t.columns = {letter(0), letter(1)};
  t.heading("Boil");
  t.rows.push_back({"boil-off", "%/h", {{"8.1", 8.123456789}, noFigure()}, {}});
  p.show(t);
  p.cautions = {"Stay with the kettle."};
  return p;
}

}  // namespace

TEST(PageCsv, CarriesAllDigitsAndTheRigsNames) {
  EXPECT_EQ(pageCsv(page()),
            "table,group,figure,unit,\"(a) Old, \"\"big\"\"\",(b) =1+1\n"
            "boil,Boil,boil-off,%/h,8.123456789,\n"
            "caution,,Stay with the kettle.,,,\n");
}

TEST(PageCsv, KeepsSpreadsheetsFromRunningText) {
  Page p = page();
  std::get<Table>(p.blocks[0]).rows.push_back({"=SUM(A1)", "", {{"+x", {}}, {"-2", -2.0}}, {}});
  const std::string csv = pageCsv(p);
  EXPECT_NE(csv.find("'=SUM(A1),,'+x,-2\n"), std::string::npos) << csv;
}
