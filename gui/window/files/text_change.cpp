// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/files/text_change.hpp"

#include <algorithm>
#include <cassert>

namespace gui {
namespace {

std::string replaced(std::string_view in, std::size_t from, const std::string& old,
                     const std::string& with) {
  assert(in.substr(std::min(from, in.size()), old.size()) == old);
  std::string made(in);
  return made.replace(from, old.size(), with);
}

}  // namespace

TextChange::TextChange(std::string_view before, std::string_view after) {
  const std::size_t shorter = std::min(before.size(), after.size());
  while (from_ < shorter && before[from_] == after[from_]) ++from_;
  std::size_t behind = 0;
  while (behind < shorter - from_ &&
         before[before.size() - 1 - behind] == after[after.size() - 1 - behind])
    ++behind;
  old_ = before.substr(from_, before.size() - from_ - behind);
  new_ = after.substr(from_, after.size() - from_ - behind);
}

std::string TextChange::done(std::string_view before) const {
  return replaced(before, from_, old_, new_);
}

std::string TextChange::undone(std::string_view after) const {
  return replaced(after, from_, new_, old_);
}

}  // namespace gui
