// SPDX-License-Identifier: GPL-3.0-or-later
// Layered walls and thermal radiation: what stands between wort and room.
#pragma once

#include <span>

#include "physics/units.hpp"

namespace physics {

// One layer of a wall. Either conductivity and thickness, or an insulance stated by its maker:
// in that case thickness is only used for the radius of what lies outside it.
struct Layer {
  Length thickness;
  ThermalInsulance flatInsulance;  // thickness / conductivity, or as stated

  bool operator==(const Layer&) const = default;
};
// Thickness not negative, k positive; asserted.
Layer layerOf(Length thickness, ThermalConductivity k);

// Insulance of flat layers in series.
ThermalInsulance flatInsulance(std::span<const Layer> layers);

// Cylindrical layers from the inside out, referred to the area at `innerRadius`:
// r1 ln(r2/r1) / k. A layer with stated insulance has k = thickness / flatInsulance.
// A layer of zero thickness counts with its flat insulance at the radius where it lies, which
// is what a very thin layer tends to. The radius must be positive; asserted.
ThermalInsulance cylindricalInsulance(Length innerRadius, std::span<const Layer> layers);
Length outerRadius(Length innerRadius, std::span<const Layer> layers);

// Below this outer radius more insulation loses more heat: k/h. About 4 mm for a kettle's
// foam, so it matters for hoses and thermometer wells, never for kettles.
Length criticalRadius(ThermalConductivity k, HeatTransferCoefficient h);

// Net grey radiation of a small body to a large room, per area: eps sigma (T^4 - Troom^4).
// Emissivity 0-1; asserted.
HeatFlux radiationToRoom(double emissivity, Temperature surface, Temperature room);
// The same as a film coefficient: eps sigma (T^2 + Tr^2)(T + Tr); finite at equal temperatures.
HeatTransferCoefficient radiationFilm(double emissivity, Temperature surface, Temperature room);
// Between two grey faces, per area of the inner: areaRatio = inner area / outer area (1: parallel).
// Emissivities 0-1 and ratio >= 0; asserted. A perfect mirror on either side stops it.
HeatFlux radiationBetween(double innerEmissivity, double outerEmissivity, double areaRatio,
                          Temperature inner, Temperature outer);

// A straight fin held at its foot, one face warmed and the other cooled; temperatures as excesses
// over what cools it. Steady, one-dimensional: k t theta'' = cool theta - warm (warmth - theta), no
// heat through its end.
struct WarmedFin {
  Length width, length;
  ThermalConductance along;  // conductivity times thickness
  HeatTransferCoefficient warm, cool;
  TemperatureDifference foot;
  TemperatureDifference warmth;  // of what warms it
};
struct FinFlows {
  Power warmed;  // in by the warmed face, negative where the fin is hotter than what should warm it
  Power cooled;  // out by the cooled face; the difference comes from the foot
};
// With far = warm warmth/(warm + cool), m^2 = (warm + cool)/(k t) and the fin's mean over its
// length far + (foot - far) tanh(m length)/(m length). Without warmth it is the textbook fin,
// without conduction along it the two films in series. Both flows are linear in foot and warmth.
// Lengths not negative, k t and one film positive; asserted. Own derivation.
FinFlows flowsThrough(const WarmedFin& fin);
// The same for any foot and warmth.
struct FinResponse {
  Length width, length;
  HeatTransferCoefficient warm, cool;
  Length reach;  // tanh(m length)/m
  FinFlows flows(TemperatureDifference foot, TemperatureDifference warmth) const;
};
FinResponse responseOf(const WarmedFin& fin);

}  // namespace physics
