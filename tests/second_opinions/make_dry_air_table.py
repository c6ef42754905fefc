# SPDX-License-Identifier: GPL-3.0-or-later
# Dry air by its reference equations, as CSV on stdout.
# Needs Debian's python3-iapws: /usr/bin/python3 make_dry_air_table.py
import random
import warnings

import iapws
from iapws.humidAir import Air

warnings.simplefilter("ignore")
chance = random.Random(20_040_021)

print("# SPDX-License-Identifier: GPL-3.0-or-later")
print(f"# Computed by iapws {iapws.__version__} (Debian python3-iapws), written by: /usr/bin/python3 make_dry_air_table.py")
print("# Equation of state of Lemmon et al. 2000, viscosity and conductivity of Lemmon & Jacobsen 2004. SI units.")
print("temperature,pressure,density,cp,viscosity,conductivity")
for t in sorted(round(chance.uniform(220.0, 420.0), 2) for _ in range(200)):
    p = round(chance.uniform(50e3, 110e3), 0)
    air = Air(T=t, P=p * 1e-6)
    values = (air.rho, 1e3 * air.cp, air.mu, air.k)
    print(",".join([f"{t:.2f}", f"{p:.0f}", *(f"{x:.8g}" for x in values)]))
