// SPDX-License-Identifier: GPL-3.0-or-later
// Moist air by an independent implementation of the ASHRAE relations, as CSV on stdout.
// node make_air_table.mjs <folder into which npm installed psychrolib>
import { createRequire } from "node:module";
import path from "node:path";

const prefix = path.resolve(process.argv[2] ?? ".");
const load = createRequire(path.join(prefix, "node_modules", "psychrolib", "package.json"));
const { version } = load("./package.json");
const psychro = load("./psychrolib.js");
psychro.SetUnitSystem(psychro.SI);

// Park & Miller's minimal generator: the language's own cannot be seeded.
let state = 19620733;
const chance = () => (state = (state * 48271) % 2147483647) / 2147483647;
const between = (low, high) => low + (high - low) * chance();
const round = (x, digits) => Number(x.toFixed(digits));

console.log("# SPDX-License-Identifier: GPL-3.0-or-later");
console.log(`# Computed by psychrolib ${version} (npm), written by: node make_air_table.mjs <npm prefix>`);
console.log("# Dew points below 0 C (over ice there) and vapour above 0.9 p are left out, and air above boiling.");
console.log("# C, -, Pa, kg/kg, C, C, J/kg dry air, kg/m3");
console.log("temperature,relative_humidity,pressure,humidity_ratio,dew_point,wet_bulb,enthalpy,density");
let rows = 0;
while (rows < 400) {
  const t = round(between(0.5, 95), 2);
  const rh = round(between(0.02, 1), 4);
  const p = round(between(60e3, 108e3), 0);
  if (psychro.GetVapPresFromRelHum(t, rh) > 0.9 * p) continue;
  // Its wet bulb bisects on W, which has a pole at boiling: air hotter than that comes back as
  // its own wet bulb, whatever its humidity.
  if (psychro.GetSatVapPres(t) >= p) continue;
  const dew = psychro.GetTDewPointFromRelHum(t, rh);
  if (dew < 0.02) continue;
  const w = psychro.GetHumRatioFromRelHum(t, rh, p);
  const values = [
    w.toPrecision(9),
    dew.toFixed(4),
    psychro.GetTWetBulbFromHumRatio(t, w, p).toFixed(4),
    psychro.GetMoistAirEnthalpy(t, w).toPrecision(9),
    psychro.GetMoistAirDensity(t, w, p).toPrecision(9),
  ];
  console.log([t, rh, p, ...values].join(","));
  ++rows;
}
