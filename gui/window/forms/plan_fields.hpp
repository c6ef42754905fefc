// SPDX-License-Identifier: GPL-3.0-or-later
// Every value of a plan that the forms show, section by section: the forms are made from this.
#pragma once

#include <cstddef>
#include <vector>

#include "gui/window/forms/plan_field.hpp"
#include "gui/window/forms/rig_fields.hpp"
#include "rigs/plans/plan_texts.hpp"

namespace gui {

// How many list entries the forms offer: those there are, and one to add.
struct ListLengths {
  std::size_t rests = 1;
  std::size_t additions = 1;
  std::size_t compared = 1, comparedLid = 1;
  RigLists ofRigs;  // the longest of all rigs

  bool operator==(const ListLengths&) const = default;
};
ListLengths listLengths(const rigs::Texts& texts, const std::vector<rigs::Texts>& inherited);

std::vector<FieldSection> batchSections(const ListLengths& lengths);
std::vector<FieldSection> placeSections(const ListLengths& lengths);

}  // namespace gui
