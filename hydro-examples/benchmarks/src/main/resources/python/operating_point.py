"""The operating point of rowan-ghyll as an engineer writes it with SciPy: steady flow, a jet, a runner, an alternator behind a diode bridge
by mean values, a battery. Prints solves a second of the processor, and what it finds at the design's own head."""

import sys
import time

import numpy as np
from scipy.optimize import brentq, fixed_point

G, DENSITY, NU = 9.80665, 999.7, 1.307e-6
# pipe: inlet, run, branch
LENGTH = [2, 108]
BORE = [0.0508, 0.0550]
ROUGHNESS = [2e-5, 2e-5]
FITTINGS = [0.25, 1.4]
BRANCH_BORE, BRANCH_LOSS = 0.040, 0.6
NOZZLE, COEFFICIENT = 0.011, 0.97
# runner: its best efficiency, where it is, and runaway over best speed
RADIUS, EFFICIENCY, BEST_RATIO, RUNAWAY = 0.090, 0.78, 0.46, 1.85
# alternator as a star, at working temperature
POLE_PAIRS = 8
EMF = 21.3 * np.sqrt(2 / 3) / (1000 * np.pi / 30)
RESISTANCE = 0.0625 * (1 + 0.00393 * 50) + 1.5 * 0.0175 / 6
INDUCTANCE = 0.0002
IDLE_TORQUE = 18 / (1000 * np.pi / 30)
# bridge, cable there and back, battery
DROP, SLOPE = 0.85, 0.004
LOOP = 2 * 14 * 0.0175 / 16 + 0.012
BATTERY = 26.1


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
    head -= BRANCH_LOSS * (q / (np.pi / 4 * BRANCH_BORE**2)) ** 2 / (2 * G)
    jet = q / (np.pi / 4 * NOZZLE**2)
    return head - jet**2 / (2 * G * COEFFICIENT**2)


def current(speed):
    """Direct current at a speed, rad/s: mean-value bridge with overlap as a resistance."""
    no_load = 3 * np.sqrt(3) / np.pi * EMF * speed
    overlap = 3 / np.pi * POLE_PAIRS * speed * INDUCTANCE
    inner = 2 * (RESISTANCE + SLOPE) + overlap
    return max(0.0, (no_load - 2 * DROP - BATTERY) / (inner + LOOP)), no_load, overlap


def runner_torque(speed, q, jet):
    """Falls from standstill to runaway, bent so that the best speed is where it was measured."""
    x = speed * RADIUS / (BEST_RATIO * jet) / RUNAWAY
    best = 1 / RUNAWAY
    bend = (2 * best - 1) / (2 * best - 3 * best**2)
    shape = (1 - x) * (1 + bend * x)
    scale = EFFICIENCY * 0.5 * DENSITY * q * jet**2 / (BEST_RATIO * jet / RADIUS) / ((1 - best) * (1 + bend * best))
    return scale * shape


def surplus(speed, q, jet):
    amps, no_load, overlap = current(speed)
    return runner_torque(speed, q, jet) - IDLE_TORQUE - (no_load - overlap * amps) * amps / speed


def solve(gross):
    most = COEFFICIENT * np.pi / 4 * NOZZLE**2 * np.sqrt(2 * G * gross)
    q = brentq(excess, 1e-6, most, args=(gross,))
    jet = q / (np.pi / 4 * NOZZLE**2)
    speed = brentq(surplus, 1.0, 0.999 * RUNAWAY * BEST_RATIO * jet / RADIUS, args=(q, jet))
    return q, speed, current(speed)[0]


rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
begun = time.process_time()
for i in range(rounds):
    solve(32 + 1e-6 * i)
taken = time.process_time() - begun
q, speed, amps = solve(32)
print(f"{rounds / taken:.0f} solves a second; {1000 * q:.3f} L/s, {speed * 30 / np.pi:.0f} rpm, {amps:.2f} A")
