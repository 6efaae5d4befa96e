# SPDX-License-Identifier: Apache-2.0
"""Stage, warmth of the soil, roots, evaporation, transpiration, growth, uptake."""
import numpy as np

from state import collars_at
from tools import MIDDLE, NEXT_TO_NOTHING, ROW, by_layer, clamp, lost, positive, q10, share

FOLLOW = by_layer(.35, .30, .20, .10, .05, .03)
MIDDLE_TO_ROW = by_layer(.4, .4, .5, .7, .9, 1.0)
COLLARS = np.array([0, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, np.inf])
HEIGHT_CM = np.array([0, 10, 15, 22, 30, 43, 66, 98, 140, 185, 225, 260.])
BITS = np.array([bin(k).count("1") for k in range(128)])


def fahrenheit(t):
    return t * 1.8 + 32


def height_cm(collars, tassel):
    """Of an unstressed crop: straight lines between marks, the last of them at the tassel."""
    k = np.searchsorted(COLLARS[1:], collars) + 1
    marked = COLLARS[k] < tassel
    x0, y0 = COLLARS[k - 1], HEIGHT_CM[k - 1]
    x1, y1 = np.where(marked, COLLARS[k], tassel), np.where(marked, HEIGHT_CM[k], 260)
    at = y0 + (y1 - y0) * (np.maximum(collars, x0) - x0) / np.where(x1 > x0, x1 - x0, 1)
    return np.where(collars >= tassel, 260, at)


def freeze(s, up):
    cold = up & (s.p.FROST > 0)
    hard = s.tmin <= -2.2
    kills = cold & hard & (s.collars >= 6)
    burns = cold & ~kills & (s.tmin <= 0)
    regrows = cold & ~kills & ~burns & (s.frost < 1) & ~s.killed & (s.frost_collars < 99)
    back = np.minimum(1, s.frost + .3 * positive(s.collars - s.frost_collars))
    burnt = s.frost * np.where(hard, .1, .7)
    s.killed |= kills
    s.frost = np.where(kills, 0, np.where(burns, burnt, np.where(regrows, back, s.frost)))
    from_here = np.where(burns & (s.collars >= 6), 99, s.collars)
    s.frost_collars = np.where(burns | regrows, from_here, s.frost_collars)


def leaf_share(s):
    x = (s.gdd - s.p.EMERGENCE) / (s.p.silk - s.p.EMERGENCE)
    before = (1 + np.exp(-3.8)) / (1 + np.exp(-10 * (x - .62)))
    late = positive((s.rep - .3) / .7)
    grown = np.where(s.gdd >= s.p.silk, 1 - .75 * late * late, before)
    return np.where(s.gdd >= s.p.EMERGENCE, grown, 0)


def stage(s, day):
    p = s.p
    s.nni = np.where(s.shoot < 50, 1, s.shoot_n / (s.critical + NEXT_TO_NOTHING))
    s.any_up = False
    if day < p.planted:
        return
    warmed = .5 * (clamp(fahrenheit(s.tmax), 50, 86) + clamp(fahrenheit(s.tmin), 50, 86)) - 50
    s.gdd += np.where(s.killed, 0, warmed)
    up = s.gdd >= p.EMERGENCE
    s.any_up = bool(up.any())
    if not s.any_up:
        return
    if (s.tmin <= 0).any() or (s.frost < 1).any():
        freeze(s, up)
    v = np.maximum(s.collars, clamp(collars_at(s.gdd, p), 0, s.tassel))
    table = height_cm(v, s.tassel)
    slowed = p.HEIGHT_SCALE * np.sqrt(np.minimum(s.water_factor, s.nitrogen_factor))
    more = (table - s.table_height) * np.where(v > 6, slowed, 1)
    s.height += np.where(s.killed, 0, more)
    s.collars, s.table_height = v, table
    s.rep = share((s.gdd - p.silk) / (p.black - p.silk))
    fed = clamp(.5 + .5 * s.nni, .5, 1)
    s.lai = p.LAI_MAX * np.sqrt(p.population / 8) * leaf_share(s) * fed * s.frost
    s.emerged = np.where(up & (s.emerged < 0), day, s.emerged)
    s.silked = np.where((s.gdd >= p.silk) & (s.silked < 0), day, s.silked)


def warm(s):
    bare = (s.lai < 1) & (s.p.cover < s.p.BARE_COVER)
    air = s.tmean + np.where(bare, s.p.BARE_WARMING, 0)
    s.temperature += FOLLOW * (air - s.temperature)
    s.warmth2, s.warmth22 = q10(s.temperature, 2, 25), q10(s.temperature, 2.2, 25)


def root(s):
    p = s.p
    past = s.gdd - p.EMERGENCE - 5 * p.LEAF_EARLY
    front = 50 + 34 * np.minimum(5, s.collars) + p.ROOT_FRONT * positive(past)
    z = np.where(s.gdd < 35, 0, np.minimum(front, p.ROOT_DEPTH_MAX))
    s.root_depth = np.maximum(s.root_depth, z)
    below = np.exp(np.log(.961) / 10 * s.root_depth)
    v = s.collars / s.tassel
    grown = p.ROOT_LENGTH * v * np.sqrt(v) * (1 - .2 * s.rep) * ~s.killed
    length = grown / np.maximum(1e-9, 1 - below)
    cut = np.maximum(s.left, below)
    here = length * (cut[:-1] - cut[1:]) * (10 / (p.thickness * p.ROOT_HALF))
    beside = share((s.collars - 3) / 5) * MIDDLE_TO_ROW
    row = here / (s.share[ROW] + s.share[MIDDLE] * beside)
    s.roots[ROW] = lost(np.minimum(row, 40))
    s.roots[MIDDLE] = lost(np.minimum(row * beside, 40))


def suffocate(s):
    short_of_air = (s.p.WATERLOGGING > 0) & (s.wet_days >= 2)
    if short_of_air.any():
        s.roots *= np.where(short_of_air, .5, 1)


def evaporate(s):
    p, lai = s.p, s.lai
    if s.any_up:
        kcb = np.where(lai > 0, .15 + (p.KCB_FULL - .15) * lost(p.KCB_EXTINCTION * lai), 0)
        lit = clamp((kcb - .15) / (p.KC_MAX - .15), .01, .99)
        cover = np.where(kcb > .15, lit ** (1 + .5 * 2.7 * (lai / 5) ** .7), .01)
    else:
        kcb, cover = 0, .01
    et0 = s.et0 * (1 - p.EVAPORATION_RESIDUE * p.cover)
    energy, open_ = et0 * (p.KC_MAX - kcb), et0 * (1 - cover) * p.KC_MAX
    s.transpirable = positive(kcb * s.et0 - s.on_leaves) * (1 - .5 * s.rep * s.rep * s.rep)
    top, second = s.water[:, 0], s.water[:, 1]
    r = share((1 - (s.fc[0] - top) * s.per_range[0]) / (1 - p.EVAPORATION_READY))
    e = np.minimum(r * r * r * energy, open_)
    from_second = positive(np.minimum(e / 3, second - .8 * s.wp[1]))
    from_top = positive(np.minimum(2 * e / 3, top - s.wp[0]))
    top -= from_top
    second -= from_second
    s.evaporated += (s.of_column * (from_top + from_second)).sum(axis=0)


def transpire(s):
    offered = s.p.WATER_UPTAKE * s.roots * positive(s.water - s.wp)
    supply = s.on_field(offered)
    use = np.minimum(s.transpirable, supply)
    s.water_factor = np.minimum(1, (supply + NEXT_TO_NOTHING) / (s.transpirable + NEXT_TO_NOTHING))
    s.transpired += use
    s.drawn = offered * (use / (supply + NEXT_TO_NOTHING))
    s.water -= s.drawn


def heat(s, up, day):
    hot = up & (s.p.HEAT > 0) & (s.tmax > 35) & (s.water_factor < .8)
    before = up & (s.p.HEAT > 0) & (s.silked < 0)
    s.hot_days = np.where(before, (s.hot_days << 1 | hot) & 127, s.hot_days)
    after = hot & ~before & (day - s.silked <= 7)
    s.kernel_loss = np.where(before, .03 * BITS[s.hot_days], s.kernel_loss + .03 * after)


def grow(s, day):
    p, rep = s.p, s.rep
    up = s.emerged >= 0
    fn = clamp(s.nni, .05, 1) ** p.NITROGEN_POWER
    light = .5 * s.solar * lost(p.LIGHT_EXTINCTION * s.lai)
    cool = share((s.tmean - 8) / np.where(rep > 0, 10, 8))
    growth = 10 * light * p.RUE * (1 - p.RUE_DECLINE * rep * np.sqrt(rep)) * cool * np.minimum(s.water_factor, p.FED * fn)
    growth = np.where(up & (rep < 1) & ~s.killed, growth, 0)
    s.nitrogen_factor = np.where(up, fn, s.nitrogen_factor)
    s.shoot += growth
    s.shoot_at_silk = np.where(s.silked == day, s.shoot, s.shoot_at_silk)
    near = up & (s.gdd >= p.silk - 450) & (s.gdd <= p.silk + 150)
    s.growth_sum += near * growth * (.1 / p.population)
    s.growth_days += near
    heat(s, up, day)


def feed(s, day):
    p, w = s.p, s.water
    active = s.roots * share(2 * (w - s.wp) * s.per_range)
    free = positive(s.nitrate - s.nitrate_floor)
    no3 = np.minimum(free, p.NITRATE_UPTAKE * active * free + s.drawn / np.maximum(1, w) * s.nitrate)
    nh4 = p.AMMONIUM_UPTAKE * active * positive(s.ammonium - s.ammonium_floor)
    supply = s.on_field(no3 + nh4)
    weight = s.shoot / 1000
    s.critical = p.CRITICAL * np.minimum(weight, np.maximum(1, weight) ** .63)
    gap = clamp(p.LUXURY * s.critical - s.shoot_n, 0, p.UPTAKE_MAX)
    demand = np.where((s.rep >= .97) | s.killed, 0, gap / (1 - p.ROOT_NITROGEN))
    part = np.minimum(1, demand / (supply + NEXT_TO_NOTHING))
    nh4 *= part
    if s.any_guarded:
        s.guarded *= 1 - nh4 / (s.ammonium + NEXT_TO_NOTHING)
    s.nitrate -= part * no3
    s.ammonium -= nh4
    s.shoot_n += (1 - p.ROOT_NITROGEN) * part * supply
    s.root_n += p.ROOT_NITROGEN * part * supply
    short = (s.shorted < 0) & (s.collars > 4) & (s.rep < .9) & (s.nni < .855)
    s.shorted = np.where(short, day, s.shorted)
