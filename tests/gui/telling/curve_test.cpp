// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/curve.hpp"

#include <gtest/gtest.h>

namespace gui::telling {
namespace {

TEST(ValueAt, LiesBetweenNeighboursAndNowhereElse) {
  const std::vector<PicturePoint> line{{1.0, 10.0}, {3.0, 30.0}, {3.0, 50.0}, {4.0, 60.0}};
  EXPECT_EQ(valueAt(line, 1.0), 10.0);
  EXPECT_EQ(valueAt(line, 2.0), 20.0);
  EXPECT_EQ(valueAt(line, 3.5), 55.0);
  EXPECT_EQ(valueAt(line, 4.0), 60.0);
  EXPECT_FALSE(valueAt(line, 0.9));
  EXPECT_FALSE(valueAt(line, 4.1));
  EXPECT_FALSE(valueAt({}, 1.0));
}

TEST(AddPoint, KeepsALineAscending) {
  PictureLine line{.rig = 0, .name = "", .points = {{1.0, 1.0}, {3.0, 3.0}}};
  addPoint(line, {2.0, 5.0});
  EXPECT_EQ(line.points, (std::vector<PicturePoint>{{1.0, 1.0}, {2.0, 5.0}, {3.0, 3.0}}));
  PictureLine nothing{.rig = 0, .name = "", .points = {}};
  addPoint(nothing, {2.0, 5.0});
  EXPECT_TRUE(nothing.points.empty());
}

}  // namespace
}  // namespace gui::telling
