// SPDX-License-Identifier: GPL-3.0-or-later
// One rig's day as far as it is known: what was read of it, what that says, and how it is shown.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/terminal/commands.hpp"
#include "gui/terminal/finished.hpp"
#include "rigs/answers/followed.hpp"
#include "rigs/answers/read_setting.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "rigs/readings/typed_line.hpp"

namespace gui {

class FollowedDay {
 public:
  // `stop` is asked between days by several threads.
  FollowedDay(const rigs::Plan& plan, std::size_t rig, const Request& request,
              const Audience& audience, std::function<bool()> stop);

  // All lines there are; what is wrong with them. Rows that are wrong are left out where that was
  // asked for, or `leaveOut` says so.
  rigs::Problems read(std::string_view text, bool leaveOut);
  // What they say. False where it was stopped.
  bool learn();

  const rigs::readings::ReadLines& lines() const { return lines_; }
  physics::Time momentOf(const rigs::readings::WallClock& clock) const;
  rigs::Followed at(const rigs::readings::WallClock& clock) const;
  // Of that, as text or as JSON.
  std::string shown(const rigs::Followed& followed) const;

  // A line that was typed, as it goes into the file; what is wrong with it behind this text.
  struct Typed {
    std::string line;
    rigs::Problems wrong;
  };
  Typed typed(const std::string& line, std::string_view text,
              const rigs::readings::WallClock& clock) const;

 private:
  rigs::readings::ReadLines linesOf(std::string_view text, bool leaveOut,
                                    rigs::Problems& problems) const;

  rigs::Solution solution_;
  std::size_t rig_;
  const Request& request_;
  const Audience& audience_;
  std::function<bool()> stop_;
  rigs::readings::Setting setting_;
  rigs::readings::ReadLines lines_;
  std::optional<std::vector<rigs::DayCourse>> planned_;
  std::optional<rigs::Learned> learned_;
};

}  // namespace gui
