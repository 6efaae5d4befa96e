# SPDX-License-Identifier: Apache-2.0
"""What is given, and everything a season carries from day to day, as arrays with the members innermost."""
import numpy as np

from tools import LAYERS, POOLS, by_layer, clamp, share

DEPTH_RATE = by_layer(1, 1, .9, .4, .2, .1)
CARBON_RATE = by_layer(1, 1, 1, .5, .2, .1)


class Input:
    """Lines of a name, how many numbers, and the numbers: becomes attributes."""

    def __init__(self, path, copies):
        v = {}
        with open(path) as lines:
            for line in lines:
                name, _, *numbers = line.split()
                v[name] = np.array(numbers, dtype=float)
        one = int(v["members"][0])
        self.members = one * copies
        self.kind = np.tile(np.arange(one), copies)
        self.days, self.planted = int(v["days"][0]), int(v["planted"][0])
        for name, numbers in v.items():
            if len(numbers) == one and name not in ("members", "days", "planted", "weathers", "passes"):
                setattr(self, name, np.tile(numbers, copies))
        for name in ("row_share population drain_max curve cover residue residue_cn buried soil_temperature").split():
            setattr(self, name, v[name][0])
        for name in "wp fc sat ksat density om ph cec nitrate ammonium thickness".split():
            setattr(self, name, v[name][:, None])
        self.weather_of = self.weather_of.astype(int)
        for name in "tmax tmin rain solar et0 dew".split():
            setattr(self, name, v[name].reshape(-1, self.days).T.copy())
        self.passes = v["pass"].reshape(-1, 9)


def collars_at(gdd, p):
    v = (gdd - p.EMERGENCE) / p.LEAF_EARLY
    return np.where(v > 10, 10 + (gdd - p.EMERGENCE - 10 * p.LEAF_EARLY) / p.LEAF_LATE, v)


class Pool:
    def __init__(self, n):
        self.used = False
        self.urea, self.alkaline, self.ammonium, self.nitrate, self.age, self.contact, self.band = np.zeros((7, n))
        self.slows_urea, self.slows_nitrification = np.zeros((2, n), dtype=bool)

    def lying(self):
        return self.urea + self.alkaline + self.ammonium + self.nitrate


class State:
    def __init__(s, given):
        p, n = given, given.members
        s.p = p
        cell, column, member = (2, LAYERS, n), (2, n), n
        s.share = np.array([p.row_share, 1 - p.row_share])
        s.of_cell, s.of_column = s.share[:, None, None], s.share[:, None]
        dz = p.thickness
        s.ppm = p.density * dz / 100
        s.wp, s.sat, s.sorbed = p.wp * dz, p.sat * dz, p.density * .2 * p.cec * dz
        s.fc = np.minimum(p.wp + p.AVAILABLE_WATER * (p.fc - p.wp), p.sat - .01) * dz
        s.per_range = 1 / (s.fc - s.wp)
        s.kd = clamp(.25 + .20 * np.log10(p.ksat * p.CONDUCTIVITY), .10, .80)
        acid = share((p.ph - 3.5) / 3)
        s.mineralising, s.taking = p.MINERALISATION * DEPTH_RATE * acid, p.TAKE_BACK * DEPTH_RATE * acid
        s.nitrifying = p.NITRIFICATION * share((p.ph - 4) / 2.2)
        s.denitrifying = p.DENITRIFICATION * CARBON_RATE
        s.ammonium_floor, s.nitrate_floor = p.AMMONIUM_FLOOR * s.ppm, p.NITRATE_FLOOR * s.ppm
        depth = np.concatenate(([0], np.cumsum(dz))) / 10
        s.left = (.961 ** depth)[:, None]
        s.tassel = collars_at(p.silk, p)
        s.drain_max = p.drain_max * p.DRAIN_RATE
        s.surface_factor = clamp(np.exp(.5 * (p.ph[0] - 6.5)), .4, 2.2) * np.sqrt(clamp(20 / p.cec[0], .5, 1.8))
        s.water = np.broadcast_to(s.fc, cell).copy()
        s.nitrate = np.broadcast_to(p.nitrate * s.ppm * p.START_NITRATE, cell).copy()
        s.ammonium = np.broadcast_to(p.ammonium * s.ppm, cell).copy()
        s.organic = np.broadcast_to(p.om / 100 * .055 * p.density * dz * 1e4, cell).copy()
        s.urea, s.guarded, s.airless, s.roots, s.drawn = (np.zeros(cell) for _ in range(5))
        s.temperature = np.full((LAYERS, n), p.soil_temperature)
        s.residue_c = np.full(column, .42 * p.residue)
        s.residue_n = s.residue_c / p.residue_cn
        s.microbes = np.zeros(column)
        s.pools = [[Pool(n) for _ in range(POOLS)] for _ in range(2)]
        for name in ("gdd collars rep lai frost_collars height table_height root_depth shoot shoot_n root_n critical "
                     "shoot_at_silk growth_sum growth_days kernel_loss wet_days guard_heat guard_age").split():
            setattr(s, name, np.zeros(member))
        for name in "killed inhibited in_band".split():
            setattr(s, name, np.zeros(member, dtype=bool))
        s.hot_days = np.zeros(member, dtype=int)
        s.frost, s.water_factor, s.nitrogen_factor = np.ones((3, member))
        s.emerged, s.silked, s.shorted = np.full((3, member), -1.)
        s.any_urea = False
        (s.transpired, s.evaporated, s.on_leaves_sum, s.ran_off, s.drained, s.leached, s.volatilised,
         s.from_residue) = np.zeros((8, member))
        s.mineralised, s.taken_back, s.denitrified = (np.zeros(cell) for _ in range(3))

    def on_field(s, cells):
        """Sum over the cells of every member, per area of field."""
        return (s.of_cell * cells).sum(axis=(0, 1))
