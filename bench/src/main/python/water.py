# SPDX-License-Identifier: Apache-2.0
"""Rain, and water through and between the columns with the nitrogen that rides along."""
import numpy as np

from tools import LAYERS, MIDDLE, ROW, clamp, lost, positive, share


def runoff(s, net):
    mean = s.share[ROW] * s.water[ROW, :3] + s.share[MIDDLE] * s.water[MIDDLE, :3]
    wet = (mean - s.wp[:3]).sum(axis=0) / (s.fc[:3] - s.wp[:3]).sum(axis=0)
    middle = s.p.curve
    dry, soaked = middle / (2.281 - .01281 * middle), middle / (.427 + .00573 * middle)
    curve = dry + (middle - dry) * share(wet / .7) + (soaked - middle) * share((wet - .7) / .5)
    storage = 25400 / curve - 254
    over = positive(net - .2 * storage)
    return over * over / (net + .8 * storage)


def fall(s):
    rain = s.rain * s.p.RAIN_CATCH
    rains, dewy = rain > 0, (rain <= 0) & (s.lai > 2) & (s.dew > 0)
    s.any_water = bool(rains.any() or dewy.any())
    s.reaching = np.zeros((2, s.p.members))
    s.on_leaves = np.zeros(s.p.members)
    if not s.any_water:
        return
    closed = lost(.6 * s.lai)
    held = np.minimum(rain, s.p.INTERCEPTION * s.lai)
    off = np.where(rains, runoff(s, rain - held), 0)
    into = rain - held - off
    stem = clamp(.75 - .12 * np.log(np.maximum(rain, .1) / 2), .40, .75) * closed
    stem = np.minimum(.95, stem * s.p.STEMFLOW)
    dew_to_row = .5 * s.dew * closed
    row = s.share[ROW]
    s.reaching[ROW] = np.where(rains, into * (stem + row * (1 - stem)) / row, np.where(dewy, dew_to_row / row, 0))
    s.reaching[MIDDLE] = into * (1 - stem)
    s.on_leaves = held
    s.ran_off += off
    s.on_leaves_sum += held + np.where(dewy, s.dew - dew_to_row, 0)


def enter(s):
    s.entered = s.reaching
    if s.any_water:
        room = positive(s.drain_max + (s.sat - s.water).sum(axis=1))
        s.entered = np.minimum(s.reaching, room)
        s.ran_off += (s.of_column * (s.reaching - s.entered)).sum(axis=0)


def fill_and_drain(s):
    water = s.water
    flux = np.zeros_like(water)
    left = s.entered
    for i in range(LAYERS if s.any_water else 0):
        put = np.minimum(left, positive(s.sat[i] - water[:, i]))
        water[:, i] += put
        left = left - put
        flux[:, i] = left
    s.peak = water.copy()
    over = positive(water - s.fc) * s.kd
    if not (s.any_water or over.any()):
        return
    room = positive(s.drain_max - flux[:, -1])
    for i in reversed(range(LAYERS)):
        out = np.minimum(over[:, i], room)
        water[:, i] -= out
        flux[:, i] += out
        if i < LAYERS - 1:
            water[:, i + 1] += out
        if i > 0:
            room = positive(s.sat[i] - water[:, i])
    s.drained += (s.of_column * flux[:, -1]).sum(axis=0)
    free = s.p.SOLUTE_MIXED * flux / (water + flux)
    carry(s, s.nitrate, free)
    carry(s, s.ammonium, free * water / (water + s.sorbed))
    if s.any_urea:
        carry(s, s.urea, free)


def carry(s, pool, part):
    """Layer by layer, so that what crosses several layers is carried on."""
    gone = 0
    for i in range(LAYERS):
        held = pool[:, i] + gone
        gone = held * part[:, i]
        pool[:, i] = held - gone
    s.leached += (s.of_column * gone).sum(axis=0)


def sideways(s):
    fr, fm = s.share
    row, middle = s.water
    wet = share((.5 * (row + middle) - s.wp) * s.per_range)
    v = s.p.LATERAL * (fr * fm / (fr + fm)) * wet * wet * wet * (row - middle)
    v = np.maximum(np.minimum(v, (s.sat - middle) * fm), (row - s.sat) * fr)
    out, into = s.p.SOLUTE_MIXED * positive(v) / row, s.p.SOLUTE_MIXED * positive(-v) / middle
    row -= v / fr
    middle += v / fm
    for pool in (s.nitrate, s.urea) if s.any_urea else (s.nitrate,):
        net = pool[ROW] * out - pool[MIDDLE] * into
        pool[ROW] -= net / fr
        pool[MIDDLE] += net / fm


def count_wet_days(s):
    held = (s.of_cell * .5 * (s.peak[:, :3] + s.water[:, :3])).sum(axis=(0, 1))
    s.wet_days = np.where(held > .95 * s.sat[:3].sum(), s.wet_days + 1, 0)
