"""The same steady solve as SteadyBenchmark, as an engineer writes it with SciPy: three sections, Colebrook-White, one nozzle."""

import sys
import time

import numpy as np
from scipy.optimize import brentq, fixed_point

G, NU = 9.80665, 1.307e-6
LENGTH = [2, 60, 58]
BORE = [0.0504, 0.0548, 0.0504]
ROUGHNESS = [1e-5, 1e-5, 1e-5]
FITTINGS = [0.24, 0.6, 0.8]
NOZZLE, COEFFICIENT = 0.011, 0.97


def friction(re, relative):
    if re < 2300:
        return 64 / re
    x = fixed_point(lambda y: -2 * np.log10(relative / 3.7 + 2.51 * y / re), 7.0)
    return 1 / x**2


def excess(q, gross):
    head = gross
    for length, bore, roughness, fittings in zip(LENGTH, BORE, ROUGHNESS, FITTINGS):
        v = q / (np.pi / 4 * bore**2)
        head -= (friction(v * bore / NU, roughness / bore) * length / bore + fittings) * v**2 / (2 * G)
    jet = q / (np.pi / 4 * NOZZLE**2)
    return head - jet**2 / (2 * G * COEFFICIENT**2)


rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
begun = time.process_time()
total = 0.0
for i in range(rounds):
    gross = 32 + 1e-6 * i
    most = COEFFICIENT * np.pi / 4 * NOZZLE**2 * np.sqrt(2 * G * gross)
    total += brentq(excess, 1e-6, most, args=(gross,))
print(f"{rounds / (time.process_time() - begun):.0f} solves a second, mean flow {total / rounds:.9g} m3/s")
