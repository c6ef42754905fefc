// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/kettle_volume.hpp"

#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/kettle_size.hpp"
#include "rigs/plans/rig_variants.hpp"

namespace gui {
namespace {

using physics::Length;

constexpr const char* kWidthPlace = "/vessel/inner_diameter";
constexpr const char* kHeightPlace = "/vessel/height";

std::string textOfSize(const rigs::Texts& texts, std::size_t rig, const rigs::Texts& inherited,
                       const char* place) {
  const auto own = texts.find("/rigs/" + std::to_string(rig) + place);
  if (own != texts.end()) return own->second;
  const auto from = inherited.find(place);
  return from == inherited.end() ? std::string() : from->second;
}

// In millimetres where it is not in inches.
std::string sized(Length length, const std::string& like) {
  if (!isCustomary(like)) return rigs::inMillimetresText(length);
  return rigs::formatLike(length, like, {.significantDigits = 5, .decimals = {}});
}

std::string withSize(const std::string& document, const FieldOwner& owner, const char* place,
                     const std::string& text) {
  const PlanField field{.place = place};
  return withField(document, {owner, field, text});
}

}  // namespace

std::optional<physics::Volume> kettleVolume(const rigs::Texts& texts, std::size_t rig,
                                            const rigs::Texts& inherited) {
  const auto width = rigs::parseQuantity<Length>(textOfSize(texts, rig, inherited, kWidthPlace));
  const auto height = rigs::parseQuantity<Length>(textOfSize(texts, rig, inherited, kHeightPlace));
  if (!width || !height) return std::nullopt;
  return rigs::KettleSize{*width, *height}.volume();
}

std::optional<std::string> withKettleVolume(const std::string& document, const FieldOwner& owner,
                                            std::string_view typed, rigs::Problems& problems) {
  const auto volume = rigs::readKettleVolume(typed, kWidthPlace, problems);
  if (!volume) return std::nullopt;
  const rigs::Texts texts = rigs::textsOf(document);
  const rigs::Texts inherited = rigs::inheritedTexts(*owner.origins);
  const std::string widthText = textOfSize(texts, *owner.rig, inherited, kWidthPlace);
  const auto width = rigs::parseQuantity<Length>(widthText);
  const auto height =
      rigs::parseQuantity<Length>(textOfSize(texts, *owner.rig, inherited, kHeightPlace));
  const bool shaped = width && height && *width > physics::metres(0.0);
  const double ratio = shaped ? physics::inMetres(*height) / physics::inMetres(*width) : 1.0;
  const rigs::KettleSize size = rigs::kettleOf(*volume, ratio > 0.0 ? ratio : 1.0);
  return withSize(withSize(document, owner, kWidthPlace, sized(size.diameter, widthText)), owner,
                  kHeightPlace, sized(size.height, widthText));
}

PlanField kettleVolumeField() {
  PlanField field{.place = "/vessel/volume", .kind = FieldKind::KettleVolume};
  field.label = PlanFields::tr("Volume");
  field.meaning = PlanFields::tr(
      "To the rim. A volume typed here sets diameter and height; the kettle keeps its shape.");
  field.help = field.meaning;
  field.section = PlanFields::tr("Kettle");
  return field;
}

}  // namespace gui
