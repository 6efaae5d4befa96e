# SPDX-License-Identifier: Apache-2.0
"""Decay of residue, and nitrogen changing form in the soil."""
import numpy as np

from tools import MIDDLE, NEXT_TO_NOTHING, ROW, clamp, inhibition, lost, positive, share


def decay(s):
    p = s.p
    buried = p.buried > 0
    layers = slice(0, 2 if buried else 1)
    moist = clamp((s.water[:, 0] - s.wp[0]) * s.per_range[0], .05, 1)
    moist = np.where(s.entered > 0, np.maximum(.6, moist), moist)
    pace = s.warmth2[0] * moist
    decayed = s.residue_c * np.minimum(1, (p.RESIDUE_DECAY_BURIED if buried else p.RESIDUE_DECAY) * pace)
    ratio = s.residue_n / (s.residue_c + NEXT_TO_NOTHING)
    need = decayed * (p.CARBON_USE / p.MICROBE_CN - ratio)
    within = p.RESIDUE_REACH * (s.nitrate[:, layers] + s.ammonium[:, layers]).sum(axis=1)
    lying = [(c, pool) for c in (ROW, MIDDLE) for pool in s.pools[c] if pool.used]
    for c, pool in lying:
        mineral = pool.ammonium + pool.nitrate + pool.alkaline
        within[c] += p.RESIDUE_REACH_SURFACE * pool.contact * mineral
    wanted = positive(need)
    taken = np.minimum(wanted, within)
    decayed *= 1 - .65 * (wanted - taken) / (wanted + NEXT_TO_NOTHING)
    part = taken / (within + NEXT_TO_NOTHING)
    for pool in (s.nitrate, s.ammonium, s.guarded):
        pool[:, layers] *= 1 - (part * p.RESIDUE_REACH)[:, None]
    for c, pool in lying:
        keep = 1 - part[c] * p.RESIDUE_REACH_SURFACE * pool.contact
        pool.ammonium *= keep
        pool.nitrate *= keep
        pool.alkaline *= keep
    spare = positive(-need)
    held = s.microbes + decayed * ratio + taken - spare
    released = held * p.MICROBE_TURNOVER * pace
    s.microbes = held - released
    s.ammonium[:, 0] += spare + released
    s.residue_c -= decayed
    s.residue_n -= decayed * ratio
    s.from_residue += (s.of_column * (taken - spare - released)).sum(axis=0)


def guard(s):
    guards = s.inhibited | s.in_band
    s.any_guarded = bool(guards.any())
    if s.any_guarded:
        slowed = np.where(s.inhibited, inhibition(s.guard_heat), 1)
        slowed *= np.where(s.in_band, .25 + .75 * share((s.guard_age - 14) / 14), 1)
        s.guard_rate = slowed
        s.guard_heat += guards * positive(s.temperature[1])
        s.guard_age += guards


def soil(s):
    p, w, wp = s.p, s.water, s.wp
    guard(s)
    s.nitrate[:, 0] += p.DEPOSIT_NITRATE
    s.ammonium[:, 0] += p.DEPOSIT_AMMONIUM
    dry = .40 * np.minimum(1, w / wp) + .60 / .90 * positive((w - wp) * s.per_range)
    wet = np.maximum(.3, 1 - .7 / .3 * (w / s.sat - .7))
    moist = np.minimum(np.minimum(1, dry), wet)
    warm = s.warmth2 * moist
    given = s.organic * (s.mineralising * warm)
    s.organic -= given
    s.ammonium += given
    s.mineralised += given
    if s.any_urea:
        gone = s.urea * lost(p.UREA_SOIL * s.warmth2 * clamp((w - .5 * wp) / (s.fc - .5 * wp), .1, 1))
        s.urea -= gone
        s.ammonium += gone
        if s.any_guarded:
            s.guarded += s.inhibited * gone
    ki = s.taking * warm
    k = s.nitrifying * s.warmth22 * moist + ki
    free = positive(s.ammonium - s.ammonium_floor)
    if s.any_guarded:
        slow = np.minimum(s.guarded, free)
        slow_gone = slow * lost(k * s.guard_rate)
        s.guarded = slow - slow_gone
        gone = (free - slow) * lost(k) + slow_gone
    else:
        gone = free * lost(k)
    taken = gone * ki / (k + NEXT_TO_NOTHING)
    s.ammonium -= gone
    s.nitrate += gone - taken
    s.organic += taken
    s.taken_back += taken
    denitrify(s)


def denitrify(s):
    x = .5 * (s.peak + s.water) / s.sat
    s.airless = np.where(x > .75, s.airless + 1, 0)
    wet = share((x - .60) / .30)
    gas = s.nitrate * lost(s.denitrifying * wet * wet * clamp(s.airless / 3, .25, 1) * s.warmth2)
    s.nitrate -= gas
    s.denitrified += gas
