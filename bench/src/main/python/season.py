# SPDX-License-Identifier: Apache-2.0
"""The season model in NumPy, all members at once: cells are arrays [column, layer, member], columns [column, member].

season.py INPUT [COPIES] answers lines of standard input. "check" prints the results of every member, one a line;
"turn SECONDS" works for that long and prints member-seasons a second of processor time. COPIES of every member stand
side by side, so that NumPy's price of a call is shared by more of them.

The equations are those of the package org.earleaf.season, where their sources are given; water tables, manure, tillage
and irrigation are left out. What is nowhere (water, urea, an inhibitor) is not looked after, as there.
"""
import sys
import time

import numpy as np

from crop import evaporate, feed, grow, root, stage, suffocate, transpire, warm
from soil import decay, soil
from state import Input, State
from surface import apply, surface, wash_in
from tools import positive
from water import count_wet_days, enter, fall, fill_and_drain, sideways


def step(s, day):
    p = s.p
    for name in "tmax tmin rain solar et0 dew".split():
        setattr(s, name, getattr(p, name)[day][p.weather_of])
    s.tmean = .5 * (s.tmax + s.tmin)
    stage(s, day)
    warm(s)
    if s.any_up:
        root(s)
    suffocate(s)
    fall(s)
    enter(s)
    wash_in(s)
    fill_and_drain(s)
    sideways(s)
    count_wet_days(s)
    surface(s)
    decay(s)
    soil(s)
    evaporate(s)
    if s.any_up:
        transpire(s)
        grow(s, day)
        feed(s, day)


def grain(s):
    p = s.p
    over = positive(s.growth_sum / np.maximum(1, s.growth_days) - 1.17)
    kernels = p.KERNELS * over / (1 + .67 * over) * (1 - np.minimum(1, s.kernel_loss))
    sink = kernels * p.population * p.KERNEL_WEIGHT * 1e-6 * 1e4
    source = np.where(s.silked < 0, 0, s.shoot - .92 * s.shoot_at_silk)
    nitrogen = p.NITROGEN_HARVEST * s.shoot_n / p.GRAIN_N_MIN
    index = p.HARVEST_INDEX * s.shoot * np.minimum(1, s.rep + .13)
    return np.minimum(np.minimum(sink, index), np.minimum(source, nitrogen))


def results(s):
    """By member, in the order of all contenders."""
    left = [s.on_field(cells) for cells in (s.nitrate, s.ammonium, s.water)]
    denitrified, mineralised, taken_back = (s.on_field(c) for c in (s.denitrified, s.mineralised, s.taken_back))
    return np.array([
        grain(s), s.shoot, s.shoot_n, s.root_n, *left, s.transpired, s.evaporated, s.on_leaves_sum, s.ran_off,
        s.drained, s.leached, denitrified, s.volatilised, mineralised, taken_back, s.from_residue, s.height, s.silked,
        s.shorted]).T


def season(given):
    s = State(given)
    for day in range(given.days):
        for made in given.passes:
            if made[0] == day:
                apply(s, made)
        step(s, day)
    return results(s)


def turn(given, seconds):
    start, done = time.process_time(), 0
    while True:
        season(given)
        done += given.members
        spent = time.process_time() - start
        if spent >= seconds:
            return done / spent


def main():
    given = Input(sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 1)
    for line in sys.stdin:
        if line.startswith("turn "):
            print(repr(turn(given, float(line.split()[1]))), flush=True)
        else:
            for member in season(given):
                print(" ".join(repr(float(v)) for v in member), flush=True)


if __name__ == "__main__":
    main()
