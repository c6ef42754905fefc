// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as plain data: what is drawn, in the reader's units and language, without a word about
// how. The chart, the exports and the tests all read this.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gui::telling {

struct PicturePoint {
  double x = 0.0;
  double y = 0.0;

  bool operator==(const PicturePoint&) const = default;
};

// What a rig is about along a piece of its line, told where a person points.
struct PicturePhase {
  double until = 0.0;  // x; ascending
  std::string name;
};

// Rigs keep their place, dash and shade in every picture: `rig` is the index in the plan, and
// slotOfRig() that of its dash, shade and letter.
struct PictureLine {
  int rig = 0;
  std::string name;
  std::vector<PicturePoint> points;  // finite, x ascending; a gap is a second line of the same rig
  // A companion, such as the same rig without its jacket; of no rig's: what was thought before.
  bool faint = false;
  std::vector<PicturePhase> phases = {};
  // Of no rig's: a bound that others are held against, named at its own end.
  bool limit = false;
};

// What lies between two of the lines, as a wash of the first one's colour.
struct PictureWash {
  std::size_t low = 0, high = 0;  // of the lines, both of one rig
  bool operator==(const PictureWash&) const = default;
};

struct PictureMark {  // an event, an operating point
  int rig = 0;
  PicturePoint at;
  std::string label;       // short; empty: a dot
  std::string event = {};  // what happens there: told where a person points, and beside such a dot
  // Of what a person read: by how much its last digit leaves it open either way, along y; 0 or
  // more.
  std::optional<double> rounding = {};
};

struct PictureBand {  // a published range of y (or of x), with its source
  double from = 0.0;
  double to = 0.0;
  bool alongX = false;
  std::string label;
  std::string source;
  bool shaded = true;  // else only its label stands there
};

struct PictureLimit {  // a vertical line, e.g. what a circuit can carry
  double x = 0.0;
  std::string label;
};

struct PictureStack {  // one bar of stacked parts
  int rig = 0;         // below 0: not a rig's, as those of a picture that is all about one
  std::string name;
  // Same order and length as Picture::partNames. A part that has no figure is not drawn: 0.
  std::vector<double> parts;
  std::vector<std::string> notes =
      {};  // of each part, told where a person points; none: its figure
};

// A rig that a person took out of the picture, and may bring back.
struct PictureLeftOut {
  int rig = 0;
  std::string name;
};

struct Picture {
  enum class Kind { Lines, Areas, StackedBars };
  Kind kind = Kind::Lines;
  std::string title;
  std::string xTitle, yTitle;  // with their units; of a clock without, see xTitleWith()
  std::string xUnit, yUnit;    // for the read-out; empty: none
  bool xIsClock = false;       // minutes shown as h:mm
  // The window first shown, where it is not simply all the data.
  std::optional<double> xFrom, xTo, yFrom, yTo;
  bool lettered = true;               // rigs are told apart by letters; not the only one of a plan
  std::optional<int> yDecimals = {};  // of a figure read along y: as many as the tables have
  bool exactly = false;  // no rounding of these outwards: a piece that a person zoomed to
  // Told beside the rig's name, by rig; "" and beyond the last: nothing.
  std::vector<std::string> rigMarks;
  std::vector<int> slots = {};  // by rig; beyond the last: the rig's own index
  std::vector<PictureLeftOut> leftOut = {};
  std::vector<PictureLine> lines;  // Lines
  std::vector<PictureWash> washes;
  std::vector<PictureMark> marks;
  std::vector<PictureBand> bands;
  std::vector<PictureLimit> limits;
  std::vector<std::string> partNames;  // Areas and StackedBars
  std::vector<PictureStack> stacks;    // StackedBars
  // Of what a bar's parts add up to, where the axis would tell digits that nobody knows.
  std::optional<int> totalDecimals = {};
  std::vector<std::vector<PicturePoint>> areas;  // Areas: one per part, stacked by the chart
  // A horizontal line a person may drag, e.g. the wanted time; and what dragging it means.
  std::optional<double> draggable;
  std::string draggableLabel;
};

// What stands for such a mark where there is no room for its word.
inline constexpr std::string_view kMarkShape = "▲";

inline std::string markOfRig(const Picture& picture, int rig) {
  const auto i = static_cast<std::size_t>(rig);
  return i < picture.rigMarks.size() ? picture.rigMarks[i] : std::string();
}

inline int slotOfRig(const Picture& picture, int rig) {
  const auto i = static_cast<std::size_t>(rig);
  return i < picture.slots.size() ? picture.slots[i] : rig;
}

// What stands at the x axis: of a clock with the unit in which its numbers are told there, "h:min"
// where people read them and "min" in numbers for programs.
inline std::string xTitleWith(const Picture& picture, const std::string& clockUnit) {
  return picture.xIsClock ? picture.xTitle + ", " + clockUnit : picture.xTitle;
}

}  // namespace gui::telling
