// SPDX-License-Identifier: Apache-2.0
// The season model with LANES members side by side: members innermost, the exponentials and the logarithm of the Java
// side, no branches where the compiler shall make vector code, and what is nowhere (water on its way, urea, guarded
// ammonium) is not looked after, as there. Stage, rain and what lies on the surface are computed lane by lane.
#include "season.h"
#include <math.h>
#include <string.h>

#define LANES 128
#define EACH for (int l = 0; l < LANES; l++)
#define CELL for (int c = 0; c < 2; c++) for (int i = 0; i < LAYERS; i++)

typedef double lane[LANES];

struct pool {
  int used;
  lane urea, alkaline, ammonium, nitrate, age, contact, band, slows_urea, slows_nitrification;
};

// One block of members at a time; too large for the stack.
static struct {
  const struct input *in;
  int member[LANES];
  double share[2], wp[LAYERS], sat[LAYERS], sorbed[LAYERS], ppm[LAYERS], left[LAYERS + 1], surface_factor;
  double ammonium_floor[LAYERS], nitrate_floor[LAYERS];
  lane p[PARAMETER_COUNT], fc[LAYERS], per_range[LAYERS], kd[LAYERS], drain_max, silk, black, tassel;
  lane mineralising[LAYERS], taking[LAYERS], nitrifying[LAYERS], denitrifying[LAYERS];
  // state
  lane water[2][LAYERS], nitrate[2][LAYERS], ammonium[2][LAYERS], guarded[2][LAYERS], urea[2][LAYERS];
  lane organic[2][LAYERS], airless[2][LAYERS], temperature[LAYERS], residue_c[2], residue_n[2], microbes[2];
  struct pool pools[2][POOLS];
  lane gdd, collars, rep, lai, frost, frost_collars, height, root_depth, shoot, shoot_n, root_n, critical, killed;
  lane water_factor, nitrogen_factor, shoot_at_silk, growth_sum, growth_days, hot_days, kernel_loss, wet_days;
  lane guard_heat, guard_age, guard_inhibitor, guard_band, emerged, silked, shorted;
  int any_urea, any_guarded, any_up, any_water;
  // today
  lane tmax, tmin, tmean, rain, solar, et0, dew, on_leaves, nni, transpirable, guard_rate, supply, part, scratch, ln;
  lane reaching[2], entered[2], flux[2][LAYERS], peak[2][LAYERS], roots[2][LAYERS], drawn[2][LAYERS], kcb, open;
  lane warmth2[LAYERS], warmth22[LAYERS], from_nitrate[2][LAYERS], from_ammonium[2][LAYERS], leaving[3], out, into, pace, energy;
  lane sum[RESULT_COUNT];
} s;

static double least(double a, double b) { return a < b ? a : b; }
static double most(double a, double b) { return a > b ? a : b; }
static double clamp(double x, double low, double high) { return most(low, least(high, x)); }

static double lost_slowly(double k) {
  double y = .5 * k, q = y * y;
  double n = y * (10395 + q * (1260 + q * 21)), d = 10395 + q * (4725 + q * (210 + q));
  return 2 * n / (n + d);
}

static double lost(double k) {
  double y = least(k, 40) * (1.0 / 64), q = y * y;
  double n = y * (105 + q * 10), d = 105 + q * (45 + q), e = (d - n) / (d + n);
  e *= e;
  e *= e;
  e *= e;
  e *= e;
  return 1 - e * e;
}

static double exponential(double x) {
  double y = .5 * x, q = y * y;
  double n = y * (135135 + q * (17325 + q * (378 + q))), d = 135135 + q * (62370 + q * (3150 + q * 28));
  return (d + n) / (d - n);
}

#define STEP_BITS 7
#define STEPS (1 << STEP_BITS)
static double per_step[STEPS], ln_step[STEPS];

static void lay_out_ln(void) {
  for (int i = 0; i < STEPS; i++) {
    per_step[i] = 1 / (1 + (i + .5) / STEPS);
    ln_step[i] = -log(per_step[i]);
  }
}

static inline double ln(double x) {
  long bits;
  memcpy(&bits, &x, sizeof bits);
  long step = (bits >> (52 - STEP_BITS)) & (STEPS - 1), fraction_bits = (bits & ((1L << 52) - 1)) | 0x3ff0000000000000L;
  double fraction;
  memcpy(&fraction, &fraction_bits, sizeof fraction);
  double r = fraction * per_step[step] - 1;
  double rest = r * (1 - r * (1.0 / 2 - r * (1.0 / 3 - r * (1.0 / 4 - r * (1.0 / 5)))));
  return (double)((bits >> 52) - 1023) * 0.69314718055994530942 + ln_step[step] + rest;
}

static double q10(double t, double ln_q, double reference) {
  double warmth = exponential((least(t, 35) - reference) * (ln_q / 10));
  return t > 0 ? warmth : 0;
}

static double collars_at(double gdd, double emergence, double early, double late) {
  double v = (gdd - emergence) / early;
  return v > 10 ? 10 + (gdd - emergence - 10 * early) / late : v;
}

static void lay_out(const struct input *in, int first, int count) {
  memset(&s, 0, sizeof s);
  lay_out_ln();
  s.in = in;
  s.share[0] = in->row_share;
  s.share[1] = 1 - in->row_share;
  s.surface_factor = clamp(exp(.5 * (in->ph[0] - 6.5)), .4, 2.2) * sqrt(clamp(20 / in->cec[0], .5, 1.8));
  EACH s.member[l] = first + (l < count ? l : count - 1);
  for (int k = 0; k < PARAMETER_COUNT; k++) EACH s.p[k][l] = in->p[k][s.member[l]];
  double bottom = 0;
  s.left[0] = 1;
  for (int i = 0; i < LAYERS; i++) {
    double dz = in->thickness[i], acid = clamp((in->ph[i] - 3.5) / 3, 0, 1);
    bottom += dz;
    s.left[i + 1] = pow(.961, bottom / 10);
    s.ppm[i] = in->density[i] * dz / 100;
    s.wp[i] = in->wp[i] * dz;
    s.sat[i] = in->sat[i] * dz;
    s.sorbed[i] = in->density[i] * .2 * in->cec[i] * dz;
    s.ammonium_floor[i] = s.p[AMMONIUM_FLOOR][0] * s.ppm[i];
    s.nitrate_floor[i] = s.p[NITRATE_FLOOR][0] * s.ppm[i];
    EACH {
      s.fc[i][l] = least(in->wp[i] + s.p[AVAILABLE_WATER][l] * (in->fc[i] - in->wp[i]), in->sat[i] - .01) * dz;
      s.per_range[i][l] = 1 / (s.fc[i][l] - s.wp[i]);
      s.kd[i][l] = clamp(.25 + .20 * log10(in->ksat[i] * s.p[CONDUCTIVITY][l]), .10, .80);
      s.mineralising[i][l] = s.p[MINERALISATION][l] * DEPTH_RATE[i] * acid;
      s.taking[i][l] = s.p[TAKE_BACK][l] * DEPTH_RATE[i] * acid;
      s.nitrifying[i][l] = s.p[NITRIFICATION][l] * clamp((in->ph[i] - 4) / 2.2, 0, 1);
      s.denitrifying[i][l] = s.p[DENITRIFICATION][l] * CARBON_RATE[i];
      s.temperature[i][l] = in->soil_temperature;
      for (int c = 0; c < 2; c++) {
        s.water[c][i][l] = s.fc[i][l];
        s.nitrate[c][i][l] = in->nitrate[i] * s.ppm[i] * s.p[START_NITRATE][l];
        s.ammonium[c][i][l] = in->ammonium[i] * s.ppm[i];
        s.organic[c][i][l] = in->om[i] / 100 * .055 * in->density[i] * dz * 1e4;
      }
    }
  }
  EACH {
    int m = s.member[l];
    s.silk[l] = in->silk[m];
    s.black[l] = in->black[m];
    s.tassel[l] = collars_at(in->silk[m], s.p[EMERGENCE][l], s.p[LEAF_EARLY][l], s.p[LEAF_LATE][l]);
    s.drain_max[l] = in->drain_max * s.p[DRAIN_RATE][l];
    for (int c = 0; c < 2; c++) {
      s.residue_c[c][l] = .42 * in->residue;
      s.residue_n[c][l] = .42 * in->residue / in->residue_cn;
    }
    s.frost[l] = s.water_factor[l] = s.nitrogen_factor[l] = 1;
    s.emerged[l] = s.silked[l] = s.shorted[l] = -1;
  }
}

// ---- passes, lane by lane

static double lying(const struct pool *q, int l) { return q->urea[l] + q->alkaline[l] + q->ammonium[l] + q->nitrate[l]; }

static void on_surface(int c, int l, double amount, const struct pass *pass, double contact, double band) {
  struct pool *q = 0;
  for (int k = POOLS - 1; k >= 0; k--) {
    if (lying(&s.pools[c][k], l) == 0) q = &s.pools[c][k];
  }
  double alkaline = s.in->ph[0] > 7.3 ? .5 : 0;
  q->used = 1;
  q->urea[l] = amount * pass->urea;
  q->alkaline[l] = amount * alkaline * pass->ammonium;
  q->ammonium[l] = amount * (1 - alkaline) * pass->ammonium;
  q->nitrate[l] = amount * pass->nitrate;
  q->age[l] = 0;
  q->contact[l] = contact;
  q->band[l] = band;
  q->slows_urea[l] = pass->slows_urea;
  q->slows_nitrification[l] = pass->slows_nitrification;
}

static void in_cell(int c, int i, int l, double amount, const struct pass *pass) {
  s.urea[c][i][l] += amount * pass->urea;
  s.ammonium[c][i][l] += amount * pass->ammonium;
  s.nitrate[c][i][l] += amount * pass->nitrate;
  if (pass->slows_nitrification > 0 && pass->placement != AMMONIA) s.guarded[c][i][l] += amount * pass->ammonium;
}

static void apply(int l, const struct pass *pass) {
  double a = pass->nitrogen, row = a / s.share[0], middle = a / s.share[1];
  s.any_urea |= pass->urea > 0;
  if (pass->slows_nitrification > 0) {
    s.guard_inhibitor[l] = 1;
    s.guard_heat[l] = 0;
  }
  switch (pass->placement) {
    case ON_ALL:
      on_surface(0, l, a, pass, 1, 1);
      on_surface(1, l, a, pass, 1, 1);
      break;
    case ROW_BASE: on_surface(0, l, row, pass, .15, .75); break;
    case MID_DRIBBLE: on_surface(1, l, middle, pass, .15, .75); break;
    case MID_INJECT: in_cell(1, 1, l, middle, pass); break;
    case ROW_INJECT: in_cell(0, 1, l, row, pass); break;
    case INCORPORATED:
      for (int c = 0; c < 2; c++) {
        in_cell(c, 0, l, a / 3, pass);
        in_cell(c, 1, l, 2 * a / 3, pass);
      }
      break;
    case AMMONIA:
      in_cell(1, 2, l, middle, pass);
      s.guarded[1][2][l] += middle * pass->ammonium;
      s.guard_band[l] = 1;
      s.guard_age[l] = 0;
      break;
  }
}

// ---- stage, lane by lane

static double fahrenheit(double t) { return t * 1.8 + 32; }

static void frost(int l) {
  if (s.tmin[l] <= -2.2 && s.collars[l] >= 6) {
    s.killed[l] = 1;
    s.frost[l] = 0;
  } else if (s.tmin[l] <= 0) {
    s.frost[l] *= s.tmin[l] <= -2.2 ? .1 : .7;
    s.frost_collars[l] = s.collars[l] < 6 ? s.collars[l] : 99;
  } else if (s.frost[l] < 1 && s.killed[l] == 0 && s.frost_collars[l] < 99) {
    s.frost[l] = least(1, s.frost[l] + .3 * most(0, s.collars[l] - s.frost_collars[l]));
    s.frost_collars[l] = s.collars[l];
  }
}

static double leaf_area(int l, double largest) {
  double emergence = s.p[EMERGENCE][l];
  if (s.gdd[l] < emergence) return 0;
  if (s.gdd[l] >= s.silk[l]) {
    double late = most(0, (s.rep[l] - .3) / .7);
    return largest * (1 - .75 * late * late);
  }
  double x = (s.gdd[l] - emergence) / (s.silk[l] - emergence);
  return largest * (1 + exp(-3.8)) / (1 + exp(-10 * (x - .62)));
}

static void stage(int day) {
  EACH s.nni[l] = s.shoot[l] < 50 ? 1 : s.shoot_n[l] / s.critical[l];
  s.any_up = 0;
  if (day < s.in->planted) return;
  double crowd = sqrt(s.in->population / 8);
  EACH {
    double warmed = (clamp(fahrenheit(s.tmax[l]), 50, 86) + clamp(fahrenheit(s.tmin[l]), 50, 86)) / 2 - 50;
    s.gdd[l] += (1 - s.killed[l]) * warmed;
  }
  EACH {
    int up = s.gdd[l] >= s.p[EMERGENCE][l];
    s.any_up |= up;
    if (s.p[FROST][l] > 0 && up) frost(l);
    double v = collars_at(s.gdd[l], s.p[EMERGENCE][l], s.p[LEAF_EARLY][l], s.p[LEAF_LATE][l]);
    v = clamp(v, 0, s.tassel[l]);
    if (v > s.collars[l]) {
      double more = height_cm(v, s.tassel[l]) - height_cm(s.collars[l], s.tassel[l]);
      if (v > 6) more *= s.p[HEIGHT_SCALE][l] * sqrt(least(s.water_factor[l], s.nitrogen_factor[l]));
      if (s.killed[l] == 0) s.height[l] += more;
      s.collars[l] = v;
    }
    s.rep[l] = clamp((s.gdd[l] - s.silk[l]) / (s.black[l] - s.silk[l]), 0, 1);
    double leaf = leaf_area(l, s.p[LAI_MAX][l] * crowd);
    s.lai[l] = leaf * clamp(.5 + .5 * s.nni[l], .5, 1) * s.frost[l];
    if (up && s.emerged[l] < 0) s.emerged[l] = day;
    if (s.gdd[l] >= s.silk[l] && s.silked[l] < 0) s.silked[l] = day;
  }
}

// ---- soil temperature and roots

static void warm(void) {
  EACH s.scratch[l] = s.tmean[l] + (s.lai[l] < 1 && s.in->cover < s.p[BARE_COVER][l] ? s.p[BARE_WARMING][l] : 0);
  for (int i = 0; i < LAYERS; i++) {
    EACH {
      double t = s.temperature[i][l] + FOLLOW[i] * (s.scratch[l] - s.temperature[i][l]);
      s.temperature[i][l] = t;
      s.warmth2[i][l] = q10(t, 0.69314718055994530942, 25);
      s.warmth22[i][l] = q10(t, 0.78845736036427016946, 25);
    }
  }
}

static void root(void) {
  static lane length, below, spread;
  EACH {
    double past = s.gdd[l] - s.p[EMERGENCE][l] - 5 * s.p[LEAF_EARLY][l];
    double front = 50 + 34 * least(5, s.collars[l]) + s.p[ROOT_FRONT][l] * most(0, past);
    double z = s.gdd[l] < 35 ? 0 : least(front, s.p[ROOT_DEPTH_MAX][l]);
    z = most(s.root_depth[l], z);
    s.root_depth[l] = z;
    below[l] = 1 - lost(0.039780870011844405 * z / 10);
    spread[l] = clamp((s.collars[l] - 3) / 5, 0, 1);
    double v = s.collars[l] / s.tassel[l];
    double grown = s.p[ROOT_LENGTH][l] * v * sqrt(v) * (1 - .2 * s.rep[l]) * (1 - s.killed[l]);
    length[l] = grown / most(1e-9, 1 - below[l]);
  }
  double fr = s.share[0], fm = s.share[1];
  for (int i = 0; i < LAYERS; i++) {
    double full = 10 / (s.in->thickness[i] * s.p[ROOT_HALF][0]), to_row = MIDDLE_TO_ROW[i];
    double top = s.left[i], bottom = s.left[i + 1];
    EACH {
      double here = length[l] * (most(top, below[l]) - most(bottom, below[l])) * full;
      double beside = spread[l] * to_row, row = here / (fr + fm * beside);
      s.roots[0][i][l] = lost(row);
      s.roots[1][i][l] = lost(row * beside);
    }
  }
}

static void suffocate(void) {
  EACH if (s.p[WATERLOGGING][l] > 0 && s.wet_days[l] >= 2) {
    CELL s.roots[c][i][l] *= .5;
  }
}

// ---- water

static double runoff(int l, double net) {
  double held = 0, room = 0;
  for (int i = 0; i < 3; i++) {
    held += s.share[0] * s.water[0][i][l] + s.share[1] * s.water[1][i][l] - s.wp[i];
    room += s.fc[i][l] - s.wp[i];
  }
  double wet = held / room, cn2 = s.in->curve, cn;
  if (wet < .7) {
    double dry = cn2 / (2.281 - .01281 * cn2);
    cn = dry + (cn2 - dry) * clamp(wet / .7, 0, 1);
  } else {
    cn = cn2 + (cn2 / (.427 + .00573 * cn2) - cn2) * clamp((wet - .7) / .5, 0, 1);
  }
  double storage = 25400 / cn - 254, over = net - .2 * storage;
  return over > 0 ? over * over / (net + .8 * storage) : 0;
}

static void rain(void) {
  s.any_water = 0;
  EACH {
    double p = s.rain[l] * s.p[RAIN_CATCH][l], lai = s.lai[l];
    s.on_leaves[l] = s.reaching[0][l] = s.reaching[1][l] = 0;
    if (p > 0) {
      s.any_water = 1;
      double held = least(p, s.p[INTERCEPTION][l] * lai), off = runoff(l, p - held), in = p - held - off;
      double stem = clamp(.75 - .12 * ln(most(p, .1) / 2), .40, .75) * lost(.6 * lai);
      stem = least(.95, stem * s.p[STEMFLOW][l]);
      s.reaching[0][l] = in * (stem + s.share[0] * (1 - stem)) / s.share[0];
      s.reaching[1][l] = in * (1 - stem);
      s.on_leaves[l] = held;
      s.sum[OF_RUNOFF][l] += off;
      s.sum[OF_ON_LEAVES][l] += held;
    } else if (lai > 2 && s.dew[l] > 0) {
      s.any_water = 1;
      double to_row = .5 * s.dew[l] * lost(.6 * lai);
      s.reaching[0][l] = to_row / s.share[0];
      s.sum[OF_ON_LEAVES][l] += s.dew[l] - to_row;
    }
  }
}

static void enter(void) {
  memset(s.entered, 0, sizeof s.entered);
  if (!s.any_water) return;
  for (int c = 0; c < 2; c++) {
    EACH s.scratch[l] = s.drain_max[l];
    for (int i = 0; i < LAYERS; i++) EACH s.scratch[l] += s.sat[i] - s.water[c][i][l];
    EACH {
      s.entered[c][l] = least(s.reaching[c][l], most(0, s.scratch[l]));
      s.sum[OF_RUNOFF][l] += s.share[c] * (s.reaching[c][l] - s.entered[c][l]);
    }
  }
}

// Fills the layers as deep as the day's water reaches.
static void fill(int c) {
  int on = s.any_water;
  EACH s.scratch[l] = s.entered[c][l];
  for (int i = 0; on && i < LAYERS; i++) {
    double sat = s.sat[i];
    on = 0;
    EACH {
      double put = least(s.scratch[l], most(0, sat - s.water[c][i][l]));
      s.water[c][i][l] += put;
      s.scratch[l] -= put;
      s.flux[c][i][l] = s.scratch[l];
      on |= s.scratch[l] > 0;
    }
  }
  memcpy(s.peak[c], s.water[c], sizeof s.peak[c]);
}

static int any_above_capacity(int c) {
  int any = 0;
  for (int i = 0; i < LAYERS; i++) EACH any |= s.water[c][i][l] > s.fc[i][l];
  return any;
}

static void drain(int c) {
  EACH {
    double w = s.water[c][LAYERS - 1][l], f = s.flux[c][LAYERS - 1][l];
    double out = least(most(0, w - s.fc[LAYERS - 1][l]) * s.kd[LAYERS - 1][l], most(0, s.drain_max[l] - f));
    s.water[c][LAYERS - 1][l] = w - out;
    s.flux[c][LAYERS - 1][l] = f + out;
    s.sum[OF_DRAINAGE][l] += s.share[c] * (f + out);
  }
  for (int i = LAYERS - 2; i >= 0; i--) {
    double sat = s.sat[i + 1];
    EACH {
      double w = s.water[c][i][l], below = s.water[c][i + 1][l];
      double out = least(most(0, w - s.fc[i][l]) * s.kd[i][l], most(0, sat - below));
      s.water[c][i][l] = w - out;
      s.water[c][i + 1][l] = below + out;
      s.flux[c][i][l] += out;
    }
  }
}

static void carry(int c) {
  memset(s.leaving, 0, sizeof s.leaving);
  for (int i = 0; i < LAYERS; i++) {
    double sorbed = s.sorbed[i];
    EACH {
      double w = s.water[c][i][l], f = s.flux[c][i][l];
      double share = s.p[SOLUTE_MIXED][l] * f / (w + f), slow = share * w / (w + sorbed);
      double held = s.nitrate[c][i][l] + s.leaving[0][l], gone = held * share;
      s.nitrate[c][i][l] = held - gone;
      s.leaving[0][l] = gone;
      held = s.ammonium[c][i][l] + s.leaving[1][l];
      gone = held * slow;
      s.ammonium[c][i][l] = held - gone;
      s.leaving[1][l] = gone;
    }
    if (s.any_urea) EACH {
      double w = s.water[c][i][l], f = s.flux[c][i][l];
      double held = s.urea[c][i][l] + s.leaving[2][l], gone = held * s.p[SOLUTE_MIXED][l] * f / (w + f);
      s.urea[c][i][l] = held - gone;
      s.leaving[2][l] = gone;
    }
  }
  EACH s.sum[OF_LEACHED][l] += s.share[c] * (s.leaving[0][l] + s.leaving[1][l] + s.leaving[2][l]);
}

static void sideways(void) {
  double fr = s.share[0], fm = s.share[1], per_row = 1 / fr, per_middle = 1 / fm;
  for (int i = 0; i < LAYERS; i++) {
    double wp = s.wp[i], sat = s.sat[i];
    EACH {
      double row = s.water[0][i][l], middle = s.water[1][i][l];
      double wet = clamp((.5 * (row + middle) - wp) * s.per_range[i][l], 0, 1);
      double v = s.p[LATERAL][l] * fr * fm / (fr + fm) * wet * wet * wet * (row - middle);
      v = most(least(v, (sat - middle) * fm), (row - sat) * fr);
      double out = s.p[SOLUTE_MIXED][l] * most(0, v) / row, in = s.p[SOLUTE_MIXED][l] * most(0, -v) / middle;
      s.water[0][i][l] = row - v * per_row;
      s.water[1][i][l] = middle + v * per_middle;
      double n = s.nitrate[0][i][l], k = s.nitrate[1][i][l], net = n * out - k * in;
      s.nitrate[0][i][l] = n - net * per_row;
      s.nitrate[1][i][l] = k + net * per_middle;
      s.out[l] = out;
      s.into[l] = in;
    }
    if (s.any_urea) EACH {
      double n = s.urea[0][i][l], k = s.urea[1][i][l], net = n * s.out[l] - k * s.into[l];
      s.urea[0][i][l] = n - net * per_row;
      s.urea[1][i][l] = k + net * per_middle;
    }
  }
}

static void count_wet_days(void) {
  static lane held;
  EACH held[l] = 0;
  double full = 0;
  for (int i = 0; i < 3; i++) {
    full += s.sat[i];
    for (int c = 0; c < 2; c++) EACH held[l] += s.share[c] * (s.peak[c][i][l] + s.water[c][i][l]) / 2;
  }
  EACH s.wet_days[l] = held[l] > .95 * full ? s.wet_days[l] + 1 : 0;
}

// ---- nitrogen on the surface, lane by lane

static double inhibition(double heat) { return 1 - .8 * exp(-heat / 300); }

static void wash(struct pool *q, int c, int l, double w) {
  double ammonium = w * (q->ammonium[l] + q->alkaline[l]);
  s.urea[c][0][l] += w * q->urea[l];
  s.ammonium[c][0][l] += ammonium;
  s.nitrate[c][0][l] += w * q->nitrate[l];
  if (q->slows_nitrification[l] > 0) s.guarded[c][0][l] += ammonium;
  q->urea[l] *= 1 - w;
  q->alkaline[l] *= 1 - w;
  q->ammonium[l] *= 1 - w;
  q->nitrate[l] *= 1 - w;
}

static void wash_in(void) {
  for (int c = 0; c < 2; c++) {
    for (int k = 0; k < POOLS; k++) {
      if (s.pools[c][k].used) EACH {
        if (s.entered[c][l] > 0) wash(&s.pools[c][k], c, l, lost(s.entered[c][l] / s.p[WASH_IN][l]));
      }
    }
  }
}

static void react(struct pool *q, int c, int l) {
  double fc = s.fc[0][l], wp = s.wp[0], cover = s.in->cover, warmth2 = s.warmth2[0][l];
  double moist = clamp((s.water[c][0][l] - .5 * wp) / (fc - .5 * wp), .1, 1);
  if (s.entered[c][l] > 0) moist = most(.8, moist);
  double held = q->slows_urea[l] > 0 ? .10 + .90 * clamp((q->age[l] - 7) / 14, 0, 1) : 1;
  double kh = s.p[UREA_SURFACE][l] * warmth2 * moist * sqrt(q->band[l]) * (1 + .3 * cover) * held;
  double kdif = s.p[UREA_ENTRY][l] * moist;
  double gone = q->urea[l] * lost(kh + kdif), hydrolysed = gone * kh / (kh + kdif);
  q->urea[l] -= gone;
  q->alkaline[l] += hydrolysed;
  s.urea[c][0][l] += gone - hydrolysed;
  double onset = clamp((q->age[l] + 1) / 4, .25, 1), t = s.temperature[0][l];
  double kv = s.p[AMMONIA_LOSS][l] * onset * q10(t, 0.47000362924573558, 22) * s.surface_factor * (1 + .5 * cover) * q->band[l];
  double kf = t > 0 ? s.p[AMMONIA_FIXED][l] : 0;
  double left = q->alkaline[l] * lost(kv + kf), gas = kv + kf > 0 ? left * kv / (kv + kf) : 0;
  q->alkaline[l] -= left;
  s.ammonium[c][0][l] += left - gas;
  s.sum[OF_VOLATILISED][l] += s.share[c] * gas;
  if (q->slows_nitrification[l] > 0) s.guarded[c][0][l] += left - gas;
  double slowed = q->slows_nitrification[l] > 0 ? inhibition(s.guard_heat[l]) : 1;
  double nitrified = q->ammonium[l] * lost(s.p[SURFACE_NITRIFY][l] * s.warmth22[0][l] * moist * slowed);
  q->ammonium[l] -= nitrified;
  q->nitrate[l] += nitrified;
  q->age[l] += 1;
}

static void surface(void) {
  for (int c = 0; c < 2; c++) {
    for (int k = 0; k < POOLS; k++) {
      struct pool *q = &s.pools[c][k];
      if (!q->used) continue;
      q->used = 0;
      EACH {
        if (lying(q, l) == 0) continue;
        react(q, c, l);
        if (lying(q, l) < 1e-6) {
          wash(q, c, l, 1);
        } else {
          q->used = 1;
        }
      }
    }
  }
}

// ---- residue

static void decay(int c) {
  static lane within, taken, decayed, ratio, need;
  double buried = s.in->buried;
  int deep = buried > 0, k = deep ? RESIDUE_DECAY_BURIED : RESIDUE_DECAY;
  EACH {
    double moist = clamp((s.water[c][0][l] - s.wp[0]) * s.per_range[0][l], .05, 1);
    moist = s.entered[c][l] > 0 ? most(.6, moist) : moist;
    double pace = s.warmth2[0][l] * moist, carbon = s.residue_c[c][l];
    s.pace[l] = pace;
    decayed[l] = carbon * least(1, s.p[k][l] * pace);
    ratio[l] = s.residue_n[c][l] / (carbon + 1e-300);
    need[l] = decayed[l] * (s.p[CARBON_USE][l] / s.p[MICROBE_CN][l] - ratio[l]);
    within[l] = s.p[RESIDUE_REACH][l] * (s.nitrate[c][0][l] + s.ammonium[c][0][l]);
  }
  if (deep) EACH within[l] += s.p[RESIDUE_REACH][l] * (s.nitrate[c][1][l] + s.ammonium[c][1][l]);
  for (int j = 0; j < POOLS; j++) {
    const struct pool *q = &s.pools[c][j];
    if (q->used) EACH {
      within[l] += s.p[RESIDUE_REACH_SURFACE][l] * q->contact[l] * (q->ammonium[l] + q->nitrate[l] + q->alkaline[l]);
    }
  }
  EACH {
    double wanted = most(0, need[l]);
    taken[l] = least(wanted, within[l]);
    decayed[l] *= 1 - .65 * (wanted - taken[l]) / (wanted + 1e-300);
    within[l] = taken[l] / (within[l] + 1e-300);
  }
  for (int i = 0; i <= deep; i++) {
    EACH {
      double keep = 1 - within[l] * s.p[RESIDUE_REACH][l];
      s.nitrate[c][i][l] *= keep;
      s.ammonium[c][i][l] *= keep;
      s.guarded[c][i][l] *= keep;
    }
  }
  for (int j = 0; j < POOLS; j++) {
    struct pool *q = &s.pools[c][j];
    if (q->used) EACH {
      double keep = 1 - within[l] * s.p[RESIDUE_REACH_SURFACE][l] * q->contact[l];
      q->ammonium[l] *= keep;
      q->nitrate[l] *= keep;
      q->alkaline[l] *= keep;
    }
  }
  EACH {
    double spare = most(0, -need[l]);
    double held = s.microbes[c][l] + decayed[l] * ratio[l] + taken[l] - spare;
    double released = held * s.p[MICROBE_TURNOVER][l] * s.pace[l];
    s.microbes[c][l] = held - released;
    s.ammonium[c][0][l] += spare + released;
    s.residue_c[c][l] -= decayed[l];
    s.residue_n[c][l] -= decayed[l] * ratio[l];
    s.sum[OF_RESIDUE][l] += s.share[c] * (taken[l] - spare - released);
  }
}

// ---- nitrogen in the soil

static void guard(void) {
  s.any_guarded = 0;
  EACH {
    s.guard_rate[l] = 1;
    if (s.guard_inhibitor[l] > 0 || s.guard_band[l] > 0) {
      s.any_guarded = 1;
      if (s.guard_inhibitor[l] > 0) s.guard_rate[l] *= inhibition(s.guard_heat[l]);
      if (s.guard_band[l] > 0) s.guard_rate[l] *= .25 + .75 * clamp((s.guard_age[l] - 14) / 14, 0, 1);
      s.guard_heat[l] += most(0, s.temperature[1][l]);
      s.guard_age[l] += 1;
    }
  }
}

// Compiled once for every answer to whether there is urea, and guarded ammonium.
static inline __attribute__((always_inline)) void transform(int c, int i, const int urea, const int guards) {
  double wp = s.wp[i], sat = s.sat[i], per_wp = 1 / wp, per_sat = 1 / sat, floor = s.ammonium_floor[i];
  if (urea) EACH {
    double fw = clamp((s.water[c][i][l] - .5 * wp) / (s.fc[i][l] - .5 * wp), .1, 1);
    double gone = s.urea[c][i][l] * lost_slowly(s.p[UREA_SOIL][l] * s.warmth2[i][l] * fw);
    s.urea[c][i][l] -= gone;
    s.scratch[l] = gone;
    s.guarded[c][i][l] += s.guard_inhibitor[l] * gone;
  }
  EACH {
    double w = s.water[c][i][l], warm2 = s.warmth2[i][l], organic = s.organic[c][i][l];
    double dry = .40 * least(1, w * per_wp) + .60 / .90 * most(0, (w - wp) * s.per_range[i][l]);
    double moist = least(least(1, dry), most(.3, 1 - .7 / .3 * (w * per_sat - .7)));
    double given = organic * s.mineralising[i][l] * warm2 * moist;
    double ammonium = s.ammonium[c][i][l] + given + (urea ? s.scratch[l] : 0);
    double ki = s.taking[i][l] * warm2 * moist, k = s.nitrifying[i][l] * s.warmth22[i][l] * moist + ki;
    double free = most(0, ammonium - floor), slow = guards ? least(s.guarded[c][i][l], free) : 0;
    double slow_gone = guards ? slow * lost_slowly(k * s.guard_rate[l]) : 0;
    double gone = (free - slow) * lost_slowly(k) + slow_gone, taken = gone * ki / (k + 1e-300);
    if (guards) s.guarded[c][i][l] = slow - slow_gone;
    s.ammonium[c][i][l] = ammonium - gone;
    s.organic[c][i][l] = organic - given + taken;
    s.sum[OF_MINERALISED][l] += s.share[c] * given;
    s.sum[OF_TAKEN_BACK][l] += s.share[c] * taken;
    double x = .5 * (s.peak[c][i][l] + w) * per_sat, airless = x > .75 ? s.airless[c][i][l] + 1 : 0;
    double wet = clamp((x - .60) / .30, 0, 1), nitrate = s.nitrate[c][i][l] + (gone - taken);
    double rate = s.denitrifying[i][l] * wet * wet * clamp(airless / 3, .25, 1) * warm2;
    double gas = nitrate * lost_slowly(rate);
    s.airless[c][i][l] = airless;
    s.nitrate[c][i][l] = nitrate - gas;
    s.sum[OF_DENITRIFIED][l] += s.share[c] * gas;
  }
}

static void soil(void) {
  guard();
  for (int c = 0; c < 2; c++) {
    EACH {
      s.nitrate[c][0][l] += s.p[DEPOSIT_NITRATE][l];
      s.ammonium[c][0][l] += s.p[DEPOSIT_AMMONIUM][l];
    }
    for (int i = 0; i < LAYERS; i++) {
      if (s.any_urea && s.any_guarded) transform(c, i, 1, 1);
      else if (s.any_urea) transform(c, i, 1, 0);
      else if (s.any_guarded) transform(c, i, 0, 1);
      else transform(c, i, 0, 0);
    }
  }
}

// ---- evaporation and transpiration

static void evaporate(void) {
  double kc_max = s.p[KC_MAX][0], full = s.p[KCB_FULL][0];
  EACH {
    s.kcb[l] = s.lai[l] > 0 ? .15 + (full - .15) * lost(s.p[KCB_EXTINCTION][l] * s.lai[l]) : 0;
    s.open[l] = .99;
  }
  if (s.any_up) {
    EACH s.scratch[l] = ln(clamp((s.kcb[l] - .15) / (kc_max - .15), .01, .99));
    EACH s.ln[l] = ln(most(1e-9, s.lai[l]) / 20);
    double at_top = pow(4, .7);
    EACH {
      double height = 2.7 * at_top * (1 - lost(-.7 * s.ln[l]));
      double open = lost(-s.scratch[l] * (1 + .5 * height));
      s.open[l] = s.kcb[l] > .15 ? open : .99;
    }
  }
  EACH {
    double et0 = s.et0[l] * (1 - s.p[EVAPORATION_RESIDUE][l] * s.in->cover), rep = s.rep[l];
    s.energy[l] = et0 * (kc_max - s.kcb[l]);
    s.open[l] *= et0 * kc_max;
    s.transpirable[l] = most(0, s.kcb[l] * s.et0[l] - s.on_leaves[l]) * (1 - .5 * rep * rep * rep);
  }
  for (int c = 0; c < 2; c++) {
    EACH {
      double top = s.water[c][0][l], second = s.water[c][1][l];
      double r = clamp((1 - (s.fc[0][l] - top) * s.per_range[0][l]) / (1 - s.p[EVAPORATION_READY][l]), 0, 1);
      double e = least(r * r * r * s.energy[l], s.open[l]);
      double from_second = most(0, least(e / 3, second - .8 * s.wp[1]));
      double from_top = most(0, least(2 * e / 3, top - s.wp[0]));
      s.water[c][0][l] = top - from_top;
      s.water[c][1][l] = second - from_second;
      s.sum[OF_EVAPORATION][l] += s.share[c] * (from_top + from_second);
    }
  }
}

static void transpire(void) {
  EACH s.supply[l] = 0;
  CELL {
    double wp = s.wp[i], share = s.share[c];
    EACH {
      double drawn = s.p[WATER_UPTAKE][l] * s.roots[c][i][l] * most(0, s.water[c][i][l] - wp);
      s.drawn[c][i][l] = drawn;
      s.supply[l] += share * drawn;
    }
  }
  EACH {
    double use = least(s.transpirable[l], s.supply[l]);
    s.part[l] = use / (s.supply[l] + 1e-300);
    s.water_factor[l] = least(1, (s.supply[l] + 1e-300) / (s.transpirable[l] + 1e-300));
    s.sum[OF_TRANSPIRATION][l] += use;
  }
  CELL EACH {
    double drawn = s.drawn[c][i][l] * s.part[l];
    s.drawn[c][i][l] = drawn;
    s.water[c][i][l] -= drawn;
  }
}

// ---- growth and uptake

static void heat(int l, int day) {
  int hot = s.tmax[l] > 35 && s.water_factor[l] < .8;
  if (s.silked[l] < 0) {
    int bits = ((int)s.hot_days[l] << 1 | hot) & 127;
    s.hot_days[l] = bits;
    s.kernel_loss[l] = .03 * __builtin_popcount((unsigned)bits);
  } else if (hot && day - s.silked[l] <= 7) {
    s.kernel_loss[l] += .03;
  }
}

static void grow(int day) {
  double per_plant = .1 / s.in->population;
  EACH {
    double fn = exponential(s.p[NITROGEN_POWER][l] * ln(clamp(s.nni[l], .05, 1))), rep = s.rep[l];
    double light = .5 * s.solar[l] * lost(s.p[LIGHT_EXTINCTION][l] * s.lai[l]);
    double cool = clamp((s.tmean[l] - 8) * (rep > 0 ? 1. / 10 : 1. / 8), 0, 1);
    double growth = 10 * light * s.p[RUE][l] * (1 - s.p[RUE_DECLINE][l] * rep * sqrt(rep)) * cool * least(s.water_factor[l], s.p[FED][l] * fn);
    int up = s.emerged[l] >= 0;
    growth = up && rep < 1 && s.killed[l] == 0 ? growth : 0;
    s.nitrogen_factor[l] = up ? fn : s.nitrogen_factor[l];
    s.shoot[l] += growth;
    s.shoot_at_silk[l] = s.silked[l] == day ? s.shoot[l] : s.shoot_at_silk[l];
    int near = up && s.gdd[l] >= s.silk[l] - 450 && s.gdd[l] <= s.silk[l] + 150;
    s.growth_sum[l] += near ? growth * per_plant : 0;
    s.growth_days[l] += near ? 1 : 0;
  }
  EACH if (s.emerged[l] >= 0 && s.p[HEAT][l] > 0) heat(l, day);
}

static void feed(int day) {
  EACH s.supply[l] = 0;
  CELL {
    double wp = s.wp[i], share = s.share[c], no3_floor = s.nitrate_floor[i], nh4_floor = s.ammonium_floor[i];
    EACH {
      double w = s.water[c][i][l], active = s.roots[c][i][l] * clamp(2 * (w - wp) * s.per_range[i][l], 0, 1);
      double n = s.nitrate[c][i][l], free = most(0, n - no3_floor);
      double no3 = least(free, s.p[NITRATE_UPTAKE][l] * active * free + s.drawn[c][i][l] / most(1, w) * n);
      double nh4 = s.p[AMMONIUM_UPTAKE][l] * active * most(0, s.ammonium[c][i][l] - nh4_floor);
      s.from_nitrate[c][i][l] = no3;
      s.from_ammonium[c][i][l] = nh4;
      s.supply[l] += share * (no3 + nh4);
    }
  }
  EACH s.ln[l] = ln(most(1, s.shoot[l] / 1000));
  EACH {
    s.critical[l] = s.p[CRITICAL][l] * least(s.shoot[l] / 1000, exponential(.63 * s.ln[l]));
    double gap = clamp(s.p[LUXURY][l] * s.critical[l] - s.shoot_n[l], 0, s.p[UPTAKE_MAX][l]);
    double in_roots = s.p[ROOT_NITROGEN][l], demand = gap / (1 - in_roots);
    demand = s.rep[l] >= .97 || s.killed[l] > 0 ? 0 : demand;
    double part = least(1, demand / (s.supply[l] + 1e-300));
    s.part[l] = part;
    s.shoot_n[l] += (1 - in_roots) * part * s.supply[l];
    s.root_n[l] += in_roots * part * s.supply[l];
  }
  CELL EACH {
    double nh4 = s.part[l] * s.from_ammonium[c][i][l], held = s.ammonium[c][i][l];
    s.nitrate[c][i][l] -= s.part[l] * s.from_nitrate[c][i][l];
    if (s.any_guarded) s.guarded[c][i][l] *= 1 - nh4 / (held + 1e-300);
    s.ammonium[c][i][l] = held - nh4;
  }
  EACH if (s.shorted[l] < 0 && s.collars[l] > 4 && s.rep[l] < .9 && s.nni[l] < .855) s.shorted[l] = day;
}

// ---- the day, the season

static void step(int day) {
  EACH {
    const struct weather *w = &s.in->weather[s.in->weather_of[s.member[l]]];
    s.tmax[l] = w->tmax[day];
    s.tmin[l] = w->tmin[day];
    s.tmean[l] = (w->tmax[day] + w->tmin[day]) / 2;
    s.rain[l] = w->rain[day];
    s.solar[l] = w->solar[day];
    s.et0[l] = w->et0[day];
    s.dew[l] = w->dew[day];
  }
  stage(day);
  warm();
  if (s.any_up) root();
  suffocate();
  rain();
  enter();
  wash_in();
  for (int c = 0; c < 2; c++) {
    memset(s.flux[c], 0, sizeof s.flux[c]);
    fill(c);
    int drains = any_above_capacity(c);
    if (drains) drain(c);
    if (drains || s.any_water) carry(c);
  }
  sideways();
  count_wet_days();
  surface();
  for (int c = 0; c < 2; c++) decay(c);
  soil();
  evaporate();
  if (s.any_up) {
    transpire();
    grow(day);
    feed(day);
  }
}

static double yield(int l) {
  double pgr = s.growth_days[l] > 0 ? s.growth_sum[l] / s.growth_days[l] : 0, over = pgr - 1.17;
  double set = over <= 0 ? 0 : over / (1 + .67 * over);
  double kernels = s.p[KERNELS][l] * set * (1 - least(1, s.kernel_loss[l]));
  double sink = kernels * s.in->population * s.p[KERNEL_WEIGHT][l] * 1e-6 * 1e4;
  double source = s.silked[l] < 0 ? 0 : s.shoot[l] - s.shoot_at_silk[l] + .08 * s.shoot_at_silk[l];
  double nitrogen = s.p[NITROGEN_HARVEST][l] * s.shoot_n[l] / s.p[GRAIN_N_MIN][l];
  double index = s.p[HARVEST_INDEX][l] * s.shoot[l] * least(1, s.rep[l] + .13);
  return least(least(sink, index), least(source, nitrogen));
}

static void block(const struct input *in, int first, int count, double *results) {
  lay_out(in, first, count);
  for (int day = 0; day < in->days; day++) {
    for (int k = 0; k < in->passes; k++) {
      const struct pass *pass = &in->pass[k];
      if (pass->day == day) EACH if (pass->member < 0 || pass->member == s.member[l]) apply(l, pass);
    }
    step(day);
  }
  CELL EACH {
    s.sum[OF_NITRATE_LEFT][l] += s.share[c] * s.nitrate[c][i][l];
    s.sum[OF_AMMONIUM_LEFT][l] += s.share[c] * s.ammonium[c][i][l];
    s.sum[OF_WATER_LEFT][l] += s.share[c] * s.water[c][i][l];
  }
  EACH {
    s.sum[OF_YIELD][l] = yield(l);
    s.sum[OF_SHOOT][l] = s.shoot[l];
    s.sum[OF_SHOOT_N][l] = s.shoot_n[l];
    s.sum[OF_ROOT_N][l] = s.root_n[l];
    s.sum[OF_HEIGHT][l] = s.height[l];
    s.sum[OF_SILK_DAY][l] = s.silked[l];
    s.sum[OF_SHORT_DAY][l] = s.shorted[l];
  }
  for (int l = 0; l < count; l++) {
    for (int k = 0; k < RESULT_COUNT; k++) results[l * RESULT_COUNT + k] = s.sum[k][l];
  }
}

void lanes_season(const struct input *in, int first, int count, double *results) {
  for (int at = 0; at < count; at += LANES) {
    block(in, first + at, count - at < LANES ? count - at : LANES, results + at * RESULT_COUNT);
  }
}
