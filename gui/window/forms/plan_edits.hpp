// SPDX-License-Identifier: GPL-3.0-or-later
// What an edit in a form does to the document. Text in, text out.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/window/forms/plan_field.hpp"
#include "rigs/plans/plan_texts.hpp"

namespace gui {

// Whose field it is: the plan's own, or a rig's with what it is from.
struct FieldOwner {
  std::optional<std::size_t> rig;
  const std::vector<std::string>* origins = nullptr;  // with a rig, see rigs::originsOf()
  std::filesystem::path folder = ".";                 // of the plan

  std::string prefix() const;  // "" or "/rigs/2"
};

struct FieldEdit {
  FieldOwner owner;
  const PlanField& field;
  std::string_view typed;
};
// The document with the field saying what was typed; emptied, the field is no longer stated, and
// neither is a part that then holds nothing. A part the rig has from elsewhere is stated in full
// first, and "none" where it is taken out. A rig that follows another states what then differs.
std::string withField(const std::string& document, const FieldEdit& edit);

// Names that no rig has yet: "Kettle", then "Kettle 2".
std::string freeRigName(const rigs::Texts& texts, const std::string& wanted);
std::string rigNameAt(const rigs::Texts& texts, std::size_t index,
                      const rigs::Texts& inherited);  // "" if it has none

std::string withCatalogueRig(const std::string& document, const rigs::Texts& texts,
                             std::string_view rig);

// "The same, but": a copy right of the rig.
// Following: the same as the rig in all, now and later, but for what will be said of it.
enum class Variant { Same, Following, WithJacket, WithoutJacket, WithLid };
struct VariantOf {
  std::size_t rig;
  const std::vector<std::string>& origins;  // of that rig, see rigs::originsOf()
  std::string name;                         // a number is added where a rig has it already
  Variant variant = Variant::Same;
};
std::string withVariant(const std::string& document, const rigs::Texts& texts,
                        const VariantOf& wanted);

inline constexpr std::size_t kFewestRigs = 1;
inline constexpr std::size_t kMostRigs = 12;

}  // namespace gui
