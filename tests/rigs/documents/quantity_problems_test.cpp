// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/quantity_problems.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace {

using namespace physics;
using namespace rigs;

// Of a place for lengths between 1 m and 5000 m, where "120 m" is usual.
std::string refusedLength(const std::string& text, UnitSystem units = UnitSystem::SI) {
  const auto fault = parseQuantity<Length>(text).fault;
  if (!fault) return {};
  return inEnglish(quantityProblem(*fault, text, {QuantityKind::Length, 1.0, 5000.0, "120 m"}),
                   units);
}

TEST(QuantityProblem, KeepsTheDigitsOfANumberWithoutItsUnit) {
  const std::string how = " has no unit; write it with one of mm, cm, m, in, ft, e.g. ";
  EXPECT_EQ(refusedLength("900"), "\"900\"" + how + "\"900 m\"");
  EXPECT_EQ(refusedLength("1 1/2"), "\"1 1/2\"" + how + "\"1 1/2 m\"");
  EXPECT_EQ(refusedLength("900000"), "\"900000\"" + how + "\"120 m\"");
}

TEST(QuantityProblem, SaysWhatIsAcceptedWhereNothingElseIsAdvised) {
  EXPECT_EQ(refusedLength("1/0 m"),
            R"("1/0 m" has a fraction without a value; 1 m to 5000 m is accepted, e.g. "120 m")");
  EXPECT_EQ(refusedLength("1/0 m", UnitSystem::UsCustomary),
            R"("1/0 m" has a fraction without a value; 3.281 ft to 16404 ft is accepted, )"
            R"(e.g. "120 m")");
  EXPECT_EQ(refusedLength("1e308 km"), R"("1e308 km" is too large or too small a number; )"
                                       R"(1 m to 5000 m is accepted, e.g. "120 m")");
  EXPECT_EQ(refusedLength("5 MM"), R"("5 MM" has the unit "MM", where capitals change the size; )"
                                   R"(write "mm", e.g. "120 m")");
}

TEST(QuantityProblem, QuotesWhatWasWrittenWhateverItHolds) {
  EXPECT_EQ(refusedLength("; e.g. \"9 m\" has no unit"),
            R"("; e.g. "9 m" has no unit" does not start with a number; )"
            R"(write it with one of mm, cm, m, in, ft, e.g. "120 m")");
}

// Every kind of fault, told of every kind of quantity.
TEST(QuantityProblem, HasAWholeSentenceForEveryFault) {
  for (int i = 0; i <= static_cast<int>(QuantityFault::Kind::GaugePressure); ++i) {
    const QuantityFault fault{
        .kind = static_cast<QuantityFault::Kind>(i), .part = "part", .instead = {"one", "other"}};
    for (int k = 0; k <= static_cast<int>(QuantityKind::VolumeFlow); ++k) {
      const auto kind = static_cast<QuantityKind>(k);
      SCOPED_TRACE(std::to_string(i) + ", " + inEnglish(kindName(kind)));
      const std::string any = inEnglish(quantityProblem(fault, "12 xy", kind));
      EXPECT_TRUE(any.starts_with("\"12 xy\" ")) << any;
      const std::string here =
          inEnglish(quantityProblem(fault, "12 xy", {kind, 1.0, 2.0, "an example"}));
      EXPECT_NE(here.find(", e.g. \""), std::string::npos) << here;
      EXPECT_EQ(here.find('%' + std::string("1")), std::string::npos) << here;
    }
  }
}

}  // namespace
