# SPDX-License-Identifier: GPL-3.0-or-later
# Properties of water by an independent implementation of the IAPWS releases, as CSV on stdout.
# Needs Debian's python3-iapws: /usr/bin/python3 make_water_table.py
import random
import warnings

import iapws
from iapws._iapws import _Liquid
from iapws.iapws95 import IAPWS95
from iapws.iapws97 import _PSat_T

warnings.simplefilter("ignore")
chance = random.Random(19_930_783)
temperatures = sorted(round(chance.uniform(274.0, 382.0), 3) for _ in range(300))

print("# SPDX-License-Identifier: GPL-3.0-or-later")
print(f"# Computed by iapws {iapws.__version__} (Debian python3-iapws), written by: /usr/bin/python3 make_water_table.py")
print("# density to conductivity: liquid at 0.1 MPa, SR6-08. if97_pressure: region 4 of R7-97.")
print("# The last four: phase equilibrium of the R6-95 equation of state. SI units.")
print("temperature,density,cp,enthalpy,expansion,viscosity,conductivity,"
      "if97_pressure,iapws95_pressure,iapws95_liquid_density,iapws95_vapour_density,iapws95_latent_heat")
for t in temperatures:
    liquid = _Liquid(t)
    vapour = IAPWS95(T=t, x=1)
    boiling = IAPWS95(T=t, x=0)
    row = [
        f"{t:.3f}",
        *(f"{x:.10g}" for x in (
            liquid["rho"], 1e3 * liquid["cp"], 1e3 * liquid["h"], liquid["alfav"],
            liquid["mu"], liquid["k"], 1e6 * _PSat_T(t))),
        # Found by iteration: fewer digits are reproducible.
        *(f"{x:.7g}" for x in (
            1e6 * vapour.P, boiling.rho, vapour.rho, 1e3 * (vapour.h - boiling.h))),
    ]
    print(",".join(row))
