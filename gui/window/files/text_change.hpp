// SPDX-License-Identifier: GPL-3.0-or-later
// What makes one text of another: the one stretch in which they differ. A step back keeps this in
// place of two whole plans.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace gui {

class TextChange {
 public:
  TextChange(std::string_view before, std::string_view after);

  // To the byte. Contract: what is given is what the other one makes.
  std::string done(std::string_view before) const;
  std::string undone(std::string_view after) const;
  bool isNothing() const { return old_.empty() && new_.empty(); }
  std::size_t bytes() const { return old_.capacity() + new_.capacity(); }  // kept

 private:
  std::size_t from_ = 0;
  std::string old_, new_;
};

}  // namespace gui
