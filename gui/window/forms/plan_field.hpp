// SPDX-License-Identifier: GPL-3.0-or-later
// A value of a plan that a form shows: where it stands, what it is called, what it means.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>
#include <string_view>
#include <vector>

#include "gui/window/forms/quantity_field.hpp"
#include "rigs/plans/plan.hpp"

namespace gui {

class PlanFields {  // whose texts these are, for translators
  Q_DECLARE_TR_FUNCTIONS(PlanFields)
};

// Shown: told by the plan, changed in the file alone. KettleVolume: of diameter and height, which a
// volume typed here sets both; the plan has no key for it.
enum class FieldKind { Text, Number, Choice, LayerAmount, Shown, KettleVolume };

// What is written along with a value if it is not there yet: a cable needs two numbers.
struct Companion {
  std::string place;
  std::string text;
};

struct PlanField {
  std::string place = {};  // JSON pointer, in a rig's fields from the rig on: "/element/power"
  FieldKind kind = FieldKind::Text;
  // The words of the key at that place; field_words.hpp fills them in.
  QString label = {};
  QString section = {};  // that it stands in
  QString meaning = {};  // with range and what holds if it is not stated; for the tool tip
  QString help = {};     // all of that, with an example: at F1 and "what is this?"
  QString usual = {};    // what holds if it is not stated, as a hint; may be empty
  Conversion conversion = nullptr;
  // What may be chosen; `about` is the material that stands beside a finish, and the plan's region
  // for an outlet or an edition.
  std::vector<std::string> (*choices)(std::string_view about) = nullptr;
  // Of a Shown one; empty where the plan has no such thing.
  QString (*shown)(const rigs::Plan& plan) = nullptr;
  std::vector<std::string> replaces = {};  // other places that this one stands instead of
  std::vector<Companion> companions = {};
  std::string removes = {};  // emptying this takes out the whole part
};

struct FieldSection {
  QString title;
  std::vector<PlanField> fields;
};

}  // namespace gui
