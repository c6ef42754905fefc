# SPDX-License-Identifier: GPL-3.0-or-later
# Ten rigs heated and left to cool by SciPy's DOP853 on the laws of this project, against how the
# project follows them itself; as the Markdown table of docs/physics.md on stdout.
# Needs Debian's python3-scipy: /usr/bin/python3 solve_phases.py build/test/tests/second_opinions/phases
import subprocess
import sys

import numpy as np
from scipy.integrate import solve_ivp

PATHS = 8
program = sys.argv[1]


class Laws:
    """How fast everything changes, in the order of the project's own state."""

    def __init__(self, number):
        self.asked = 0
        self.process = subprocess.Popen(
            [program, "rates", str(number)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)

    def __call__(self, _, state):
        self.asked += 1
        self.process.stdin.write(f"{state[0]:.17g} {state[1]:.17g}\n")
        self.process.stdin.flush()
        warming, water, *watts = map(float, self.process.stdout.readline().split())
        return np.array([warming, water, *(1e-6 * watt for watt in watts)])


def solve(number, kind, kelvins, kilograms, end):
    laws = Laws(number)
    start = np.zeros(4 + PATHS)
    start[:2] = kelvins, kilograms
    reached = lambda _, state: state[0] - end
    reached.terminal = True
    heats = kind == "heats"
    found = solve_ivp(laws, (0.0, 86400.0 if heats else end), start, method="DOP853",
                      rtol=1e-12, atol=1e-14, events=[reached] if heats else None)
    assert found.success, found.message
    laws.process.stdin.close()
    laws.process.wait()
    if heats:
        return found.t_events[0][0], found.y_events[0][0], laws.asked
    return found.t[-1], found.y[:, -1], laws.asked


print("| rig | phase | lasts | time apart | temperature apart | energy of any path apart | "
      "laws asked by SciPy |")
print("|---|---|---|---|---|---|---|")
for line in subprocess.run([program], capture_output=True, text=True, check=True).stdout.splitlines():
    number, kind, kelvins, kilograms, end, lasted, *own = line.split()
    own = np.array(own, dtype=float)
    time, state, asked = solve(int(number), kind, float(kelvins), float(kilograms), float(end))
    whole = max(state[2], state[4:].sum())
    apart = np.abs(own[2:] - state[2:]).max() / whole
    hours = f"{time / 3600:.2f} h"
    print(f"| {int(number) // 2 + 1} | {kind} | {hours} | {abs(float(lasted) - time):.0e} s | "
          f"{abs(own[0] - state[0]):.0e} K | {apart:.0e} | {asked} |")
