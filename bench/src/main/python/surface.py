# SPDX-License-Identifier: Apache-2.0
"""Passes, and the nitrogen that they leave on the surface."""
import numpy as np

from tools import (
    AMMONIA, INCORPORATED, MID_DRIBBLE, MID_INJECT, MIDDLE, NEXT_TO_NOTHING, ON_ALL, ROW, ROW_BASE, ROW_INJECT, clamp,
    inhibition, lost, q10, share)


def on_surface(s, c, who, amount, made, contact, band):
    _, _, _, _, urea, ammonium, nitrate, slows_urea, slows_nitrification = made
    alkaline = .5 if s.p.ph[0] > 7.3 else 0
    for pool in s.pools[c]:
        here = who & (pool.lying() == 0)
        who = who & ~here
        pool.used |= bool(here.any())
        pool.urea[here], pool.nitrate[here] = amount * urea, amount * nitrate
        pool.alkaline[here], pool.ammonium[here] = amount * alkaline * ammonium, amount * (1 - alkaline) * ammonium
        pool.age[here], pool.contact[here], pool.band[here] = 0, contact, band
        pool.slows_urea[here], pool.slows_nitrification[here] = slows_urea > 0, slows_nitrification > 0


def in_cell(s, c, i, who, amount, made):
    _, _, placement, _, urea, ammonium, nitrate, _, slows_nitrification = made
    s.urea[c, i, who] += amount * urea
    s.ammonium[c, i, who] += amount * ammonium
    s.nitrate[c, i, who] += amount * nitrate
    if slows_nitrification > 0 or placement == AMMONIA:
        s.guarded[c, i, who] += amount * ammonium


def apply(s, made):
    _, member, placement, a, urea, _, _, _, slows_nitrification = made
    who = np.full(s.p.members, True) if member < 0 else s.p.kind == member
    row, middle = a / s.share
    s.any_urea |= urea > 0
    if slows_nitrification > 0:
        s.inhibited[who], s.guard_heat[who] = True, 0
    if placement == ON_ALL:
        on_surface(s, ROW, who, a, made, 1, 1)
        on_surface(s, MIDDLE, who, a, made, 1, 1)
    elif placement == ROW_BASE:
        on_surface(s, ROW, who, row, made, .15, .75)
    elif placement == MID_DRIBBLE:
        on_surface(s, MIDDLE, who, middle, made, .15, .75)
    elif placement == MID_INJECT:
        in_cell(s, MIDDLE, 1, who, middle, made)
    elif placement == ROW_INJECT:
        in_cell(s, ROW, 1, who, row, made)
    elif placement == INCORPORATED:
        for c in (ROW, MIDDLE):
            in_cell(s, c, 0, who, a / 3, made)
            in_cell(s, c, 1, who, 2 * a / 3, made)
    elif placement == AMMONIA:
        in_cell(s, MIDDLE, 2, who, middle, made)
        s.in_band[who], s.guard_age[who] = True, 0


def wash(s, pool, c, part):
    ammonium = part * (pool.ammonium + pool.alkaline)
    s.urea[c, 0] += part * pool.urea
    s.ammonium[c, 0] += ammonium
    s.nitrate[c, 0] += part * pool.nitrate
    s.guarded[c, 0] += pool.slows_nitrification * ammonium
    keep = 1 - part
    pool.urea *= keep
    pool.alkaline *= keep
    pool.ammonium *= keep
    pool.nitrate *= keep


def wash_in(s):
    for c in (ROW, MIDDLE):
        for pool in s.pools[c]:
            if pool.used and s.any_water:
                wash(s, pool, c, lost(s.entered[c] / s.p.WASH_IN))


def react(s, pool, c):
    p, cover, t = s.p, s.p.cover, s.temperature[0]
    moist = clamp((s.water[c, 0] - .5 * s.wp[0]) / (s.fc[0] - .5 * s.wp[0]), .1, 1)
    moist = np.where(s.entered[c] > 0, np.maximum(.8, moist), moist)
    held = np.where(pool.slows_urea, .10 + .90 * share((pool.age - 7) / 14), 1)
    kh = p.UREA_SURFACE * s.warmth2[0] * moist * np.sqrt(pool.band) * (1 + .3 * cover) * held
    k = kh + p.UREA_ENTRY * moist
    gone = pool.urea * lost(k)
    hydrolysed = gone * kh / k
    pool.urea -= gone
    s.urea[c, 0] += gone - hydrolysed
    alkaline = pool.alkaline + hydrolysed
    onset = clamp((pool.age + 1) / 4, .25, 1)
    kv = p.AMMONIA_LOSS * onset * q10(t, 1.6, 22) * s.surface_factor * (1 + .5 * cover) * pool.band
    k = kv + np.where(t > 0, p.AMMONIA_FIXED, 0)
    left = alkaline * lost(k)
    gas = left * kv / (k + NEXT_TO_NOTHING)
    pool.alkaline = alkaline - left
    s.ammonium[c, 0] += left - gas
    s.guarded[c, 0] += pool.slows_nitrification * (left - gas)
    s.volatilised += s.share[c] * gas
    slowed = np.where(pool.slows_nitrification, inhibition(s.guard_heat), 1)
    nitrified = pool.ammonium * lost(p.SURFACE_NITRIFY * s.warmth22[0] * moist * slowed)
    pool.ammonium -= nitrified
    pool.nitrate += nitrified
    pool.age += 1


def surface(s):
    for c in (ROW, MIDDLE):
        for pool in s.pools[c]:
            if pool.used:
                react(s, pool, c)
                wash(s, pool, c, pool.lying() < 1e-6)
                pool.used = bool((pool.lying() > 0).any())
