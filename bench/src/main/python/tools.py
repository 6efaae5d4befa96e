# SPDX-License-Identifier: Apache-2.0
"""What the parts of the model in NumPy share: names, and formulas of one line."""
import numpy as np

LAYERS, POOLS = 6, 4
ROW, MIDDLE = 0, 1
ON_ALL, ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT, INCORPORATED, AMMONIA = range(7)
NEXT_TO_NOTHING = 1e-300  # keeps 0/0 away


def by_layer(*values):
    return np.array(values)[:, None]


def clamp(x, low, high):
    return np.minimum(np.maximum(x, low), high)


def positive(x):
    return np.maximum(x, 0)


def share(x):
    return clamp(x, 0, 1)


def lost(k):
    return 1 - np.exp(-k)


def q10(t, q, reference):
    return np.where(t > 0, np.exp((np.minimum(t, 35) - reference) * (np.log(q) / 10)), 0)


def inhibition(heat):
    return 1 - .8 * np.exp(-heat / 300)
