// SPDX-License-Identifier: Apache-2.0
// The season model written plainly: one member, one cell after the other, the C library's mathematics.
#include "season.h"
#include <math.h>
#include <string.h>

struct pool {
  double urea, alkaline, ammonium, nitrate, age, contact, band, slows_urea, slows_nitrification;
};

struct season {
  const struct input *in;
  int m;
  double p[PARAMETER_COUNT];
  // site
  double share[2], wp[LAYERS], fc[LAYERS], sat[LAYERS], kd[LAYERS], sorbed[LAYERS], ppm[LAYERS];
  double mineralising[LAYERS], taking[LAYERS], nitrifying[LAYERS], denitrifying[LAYERS];
  double ammonium_floor[LAYERS], nitrate_floor[LAYERS], left[LAYERS], tassel, drain_max, surface_factor;
  // state
  double water[2][LAYERS], nitrate[2][LAYERS], ammonium[2][LAYERS], guarded[2][LAYERS], urea[2][LAYERS];
  double organic[2][LAYERS], airless[2][LAYERS], temperature[LAYERS];
  double residue_c[2], residue_n[2], microbes[2];
  struct pool pools[2][POOLS];
  double gdd, collars, rep, lai, frost, frost_collars, height, root_depth, shoot, shoot_n, root_n, critical;
  double water_factor, nitrogen_factor, shoot_at_silk, growth_sum, growth_days, kernel_loss, wet_days;
  double guard_heat, guard_age;
  int killed, guard_inhibitor, guard_band, hot_days, emerged, silked, shorted;
  // today
  double tmax, tmin, tmean, rain, solar, et0, dew, on_leaves, nni, transpirable, growth;
  double reaching[2], entered[2], flux[2][LAYERS], peak[2][LAYERS], roots[2][LAYERS], drawn[2][LAYERS];
  double warmth2[LAYERS], warmth22[LAYERS];
  double sum[RESULT_COUNT];
};

static double clamp(double x, double low, double high) { return x < low ? low : x > high ? high : x; }
static double least(double a, double b) { return a < b ? a : b; }
static double most(double a, double b) { return a > b ? a : b; }

static double collars(const struct season *s, double gdd) {
  double v = (gdd - s->p[EMERGENCE]) / s->p[LEAF_EARLY];
  return v > 10 ? 10 + (gdd - s->p[EMERGENCE] - 10 * s->p[LEAF_EARLY]) / s->p[LEAF_LATE] : v;
}

static void lay_out(struct season *s, const struct input *in, int m) {
  memset(s, 0, sizeof *s);
  s->in = in;
  s->m = m;
  for (int k = 0; k < PARAMETER_COUNT; k++) s->p[k] = in->p[k][m];
  s->share[0] = in->row_share;
  s->share[1] = 1 - in->row_share;
  s->tassel = collars(s, in->silk[m]);
  s->drain_max = in->drain_max * s->p[DRAIN_RATE];
  s->surface_factor = clamp(exp(.5 * (in->ph[0] - 6.5)), .4, 2.2) * sqrt(clamp(20 / in->cec[0], .5, 1.8));
  double bottom = 0;
  for (int i = 0; i < LAYERS; i++) {
    double dz = in->thickness[i];
    double acid = clamp((in->ph[i] - 3.5) / 3, 0, 1);
    bottom += dz;
    s->ppm[i] = in->density[i] * dz / 100;
    s->wp[i] = in->wp[i] * dz;
    s->fc[i] = least(in->wp[i] + s->p[AVAILABLE_WATER] * (in->fc[i] - in->wp[i]), in->sat[i] - .01) * dz;
    s->sat[i] = in->sat[i] * dz;
    s->kd[i] = clamp(.25 + .20 * log10(in->ksat[i] * s->p[CONDUCTIVITY]), .10, .80);
    s->sorbed[i] = in->density[i] * .2 * in->cec[i] * dz;
    s->mineralising[i] = s->p[MINERALISATION] * DEPTH_RATE[i] * acid;
    s->taking[i] = s->p[TAKE_BACK] * DEPTH_RATE[i] * acid;
    s->nitrifying[i] = s->p[NITRIFICATION] * clamp((in->ph[i] - 4) / 2.2, 0, 1);
    s->denitrifying[i] = s->p[DENITRIFICATION] * CARBON_RATE[i];
    s->ammonium_floor[i] = s->p[AMMONIUM_FLOOR] * s->ppm[i];
    s->nitrate_floor[i] = s->p[NITRATE_FLOOR] * s->ppm[i];
    s->left[i] = pow(.961, bottom / 10);
    s->temperature[i] = in->soil_temperature;
    for (int c = 0; c < 2; c++) {
      s->water[c][i] = s->fc[i];
      s->nitrate[c][i] = in->nitrate[i] * s->ppm[i] * s->p[START_NITRATE];
      s->ammonium[c][i] = in->ammonium[i] * s->ppm[i];
      s->organic[c][i] = in->om[i] / 100 * .055 * in->density[i] * dz * 1e4;
    }
  }
  for (int c = 0; c < 2; c++) {
    s->residue_c[c] = .42 * in->residue;
    s->residue_n[c] = s->residue_c[c] / in->residue_cn;
  }
  s->frost = s->water_factor = s->nitrogen_factor = 1;
  s->emerged = s->silked = s->shorted = -1;
}

// ---- passes

static double lying(const struct pool *q) { return q->urea + q->alkaline + q->ammonium + q->nitrate; }

static void on_surface(struct season *s, int c, double amount, const struct pass *pass, double contact, double band) {
  struct pool *q = 0;
  for (int k = POOLS - 1; k >= 0; k--) {
    if (lying(&s->pools[c][k]) == 0) q = &s->pools[c][k];
  }
  // Passes of these benchmarks never fill all pools.
  double alkaline = s->in->ph[0] > 7.3 ? .5 : 0;
  q->urea = amount * pass->urea;
  q->alkaline = amount * alkaline * pass->ammonium;
  q->ammonium = amount * (1 - alkaline) * pass->ammonium;
  q->nitrate = amount * pass->nitrate;
  q->age = 0;
  q->contact = contact;
  q->band = band;
  q->slows_urea = pass->slows_urea;
  q->slows_nitrification = pass->slows_nitrification;
}

static void in_cell(struct season *s, int c, int i, double amount, const struct pass *pass) {
  s->urea[c][i] += amount * pass->urea;
  s->ammonium[c][i] += amount * pass->ammonium;
  s->nitrate[c][i] += amount * pass->nitrate;
  if (pass->slows_nitrification > 0 && pass->placement != AMMONIA) s->guarded[c][i] += amount * pass->ammonium;
}

static void apply(struct season *s, const struct pass *pass) {
  double a = pass->nitrogen, row = a / s->share[0], middle = a / s->share[1];
  if (pass->slows_nitrification > 0) {
    s->guard_inhibitor = 1;
    s->guard_heat = 0;
  }
  switch (pass->placement) {
    case ON_ALL:
      on_surface(s, 0, a, pass, 1, 1);
      on_surface(s, 1, a, pass, 1, 1);
      break;
    case ROW_BASE: on_surface(s, 0, row, pass, .15, .75); break;
    case MID_DRIBBLE: on_surface(s, 1, middle, pass, .15, .75); break;
    case MID_INJECT: in_cell(s, 1, 1, middle, pass); break;
    case ROW_INJECT: in_cell(s, 0, 1, row, pass); break;
    case INCORPORATED:
      for (int c = 0; c < 2; c++) {
        in_cell(s, c, 0, a / 3, pass);
        in_cell(s, c, 1, 2 * a / 3, pass);
      }
      break;
    case AMMONIA:
      in_cell(s, 1, 2, middle, pass);
      s->guarded[1][2] += middle * pass->ammonium;
      s->guard_band = 1;
      s->guard_age = 0;
      break;
  }
}

// ---- crop stage

static double fahrenheit(double t) { return t * 1.8 + 32; }

static double critical(const struct season *s) {
  double w = s->shoot / 1000;
  return s->p[CRITICAL] * (w < 1 ? w : pow(w, .63));
}

static void frost(struct season *s) {
  if (s->tmin <= -2.2 && s->collars >= 6) {
    s->killed = 1;
    s->frost = 0;
  } else if (s->tmin <= 0) {
    s->frost *= s->tmin <= -2.2 ? .1 : .7;
    s->frost_collars = s->collars < 6 ? s->collars : 99;
  } else if (s->frost < 1 && !s->killed && s->frost_collars < 99) {
    s->frost = least(1, s->frost + .3 * most(0, s->collars - s->frost_collars));
    s->frost_collars = s->collars;
  }
}

static double leaf_area(const struct season *s, double silk, double largest) {
  double emergence = s->p[EMERGENCE];
  if (s->gdd < emergence) return 0;
  if (s->gdd >= silk) {
    double late = most(0, (s->rep - .3) / .7);
    return largest * (1 - .75 * late * late);
  }
  double x = (s->gdd - emergence) / (silk - emergence);
  return largest * (1 + exp(-3.8)) / (1 + exp(-10 * (x - .62)));
}

static void stage(struct season *s, int day) {
  const struct input *in = s->in;
  s->nni = s->shoot < 50 ? 1 : s->shoot_n / s->critical;
  if (day < in->planted) return;
  double silk = in->silk[s->m], black = in->black[s->m], tassel = s->tassel;
  if (!s->killed) s->gdd += (clamp(fahrenheit(s->tmax), 50, 86) + clamp(fahrenheit(s->tmin), 50, 86)) / 2 - 50;
  int up = s->gdd >= s->p[EMERGENCE];
  if (s->p[FROST] > 0 && up) frost(s);
  double v = clamp(collars(s, s->gdd), 0, tassel);
  double more = height_cm(v, tassel) - height_cm(s->collars, tassel);
  if (v > 6) more *= s->p[HEIGHT_SCALE] * sqrt(least(s->water_factor, s->nitrogen_factor));
  if (!s->killed) s->height += more;
  s->collars = v;
  s->rep = clamp((s->gdd - silk) / (black - silk), 0, 1);
  double leaf = leaf_area(s, silk, s->p[LAI_MAX] * sqrt(in->population / 8));
  s->lai = leaf * clamp(.5 + .5 * s->nni, .5, 1) * s->frost;
  if (up && s->emerged < 0) s->emerged = day;
  if (s->gdd >= silk && s->silked < 0) s->silked = day;
}

// ---- soil temperature and roots

static double q10(double t, double q, double reference) {
  return t <= 0 ? 0 : exp((least(t, 35) - reference) / 10 * log(q));
}

static void warm(struct season *s) {
  double air = s->tmean + (s->lai < 1 && s->in->cover < s->p[BARE_COVER] ? s->p[BARE_WARMING] : 0);
  for (int i = 0; i < LAYERS; i++) {
    s->temperature[i] += FOLLOW[i] * (air - s->temperature[i]);
    s->warmth2[i] = q10(s->temperature[i], 2, 25);
    s->warmth22[i] = q10(s->temperature[i], 2.2, 25);
  }
}

static void root(struct season *s) {
  double past = s->gdd - s->p[EMERGENCE] - 5 * s->p[LEAF_EARLY];
  double front = 50 + 34 * least(5, s->collars) + s->p[ROOT_FRONT] * most(0, past);
  double z = s->gdd < 35 ? 0 : least(front, s->p[ROOT_DEPTH_MAX]);
  s->root_depth = most(s->root_depth, z);
  double v = s->collars / s->tassel;
  double below = exp(log(.961) * s->root_depth / 10);
  double spread = clamp((s->collars - 3) / 5, 0, 1);
  double length = s->killed ? 0 : s->p[ROOT_LENGTH] * v * sqrt(v) * (1 - .2 * s->rep) / most(1e-9, 1 - below);
  for (int i = 0; i < LAYERS; i++) {
    double here = length * most(0, (i ? s->left[i - 1] : 1) - most(s->left[i], below));
    double row = s->share[0] / (s->share[0] + s->share[1] * spread * MIDDLE_TO_ROW[i]);
    double full = s->in->thickness[i] / 10 * s->p[ROOT_HALF];
    s->roots[0][i] = here > 0 ? 1 - exp(-least(40, here * row / (s->share[0] * full))) : 0;
    s->roots[1][i] = here > 0 ? 1 - exp(-least(40, here * (1 - row) / (s->share[1] * full))) : 0;
  }
}

static void suffocate(struct season *s) {
  if (s->p[WATERLOGGING] > 0 && s->wet_days >= 2) {
    for (int c = 0; c < 2; c++) {
      for (int i = 0; i < LAYERS; i++) s->roots[c][i] *= .5;
    }
  }
}

// ---- water

static double runoff(const struct season *s, double net) {
  double held = 0, room = 0;
  for (int i = 0; i < 3; i++) {
    held += s->share[0] * s->water[0][i] + s->share[1] * s->water[1][i] - s->wp[i];
    room += s->fc[i] - s->wp[i];
  }
  double wet = held / room, cn2 = s->in->curve, cn;
  if (wet < .7) {
    double dry = cn2 / (2.281 - .01281 * cn2);
    cn = dry + (cn2 - dry) * clamp(wet / .7, 0, 1);
  } else {
    cn = cn2 + (cn2 / (.427 + .00573 * cn2) - cn2) * clamp((wet - .7) / .5, 0, 1);
  }
  double storage = 25400 / cn - 254, over = net - .2 * storage;
  return over > 0 ? over * over / (net + .8 * storage) : 0;
}

static void rain(struct season *s) {
  double p = s->rain * s->p[RAIN_CATCH];
  s->on_leaves = s->reaching[0] = s->reaching[1] = 0;
  if (p > 0) {
    s->on_leaves = least(p, s->p[INTERCEPTION] * s->lai);
    double off = runoff(s, p - s->on_leaves), in = p - s->on_leaves - off;
    double stem = clamp(.75 - .12 * log(most(p, .1) / 2), .40, .75) * (1 - exp(-.6 * s->lai));
    stem = least(.95, stem * s->p[STEMFLOW]);
    s->reaching[0] = in * (stem + s->share[0] * (1 - stem)) / s->share[0];
    s->reaching[1] = in * (1 - stem);
    s->sum[OF_RUNOFF] += off;
    s->sum[OF_ON_LEAVES] += s->on_leaves;
  } else if (s->lai > 2 && s->dew > 0) {
    double to_row = .5 * s->dew * (1 - exp(-.6 * s->lai));
    s->reaching[0] = to_row / s->share[0];
    s->sum[OF_ON_LEAVES] += s->dew - to_row;
  }
}

static void enter(struct season *s) {
  for (int c = 0; c < 2; c++) {
    double room = s->drain_max;
    for (int i = 0; i < LAYERS; i++) room += s->sat[i] - s->water[c][i];
    s->entered[c] = least(s->reaching[c], most(0, room));
    s->sum[OF_RUNOFF] += s->share[c] * (s->reaching[c] - s->entered[c]);
  }
}

static void fill_and_drain(struct season *s, int c) {
  double left = s->entered[c];
  for (int i = 0; i < LAYERS; i++) {
    double put = least(left, most(0, s->sat[i] - s->water[c][i]));
    s->water[c][i] += put;
    left -= put;
    s->flux[c][i] = left;
    s->peak[c][i] = s->water[c][i];
  }
  double limit = s->drain_max - s->flux[c][LAYERS - 1];
  for (int i = LAYERS - 1; i >= 0; i--) {
    double out = least(most(0, s->water[c][i] - s->fc[i]) * s->kd[i], most(0, limit));
    s->water[c][i] -= out;
    s->flux[c][i] += out;
    if (i < LAYERS - 1) s->water[c][i + 1] += out;
    if (i > 0) limit = s->sat[i] - s->water[c][i];
  }
  s->sum[OF_DRAINAGE] += s->share[c] * s->flux[c][LAYERS - 1];
}

static void carry(struct season *s, int c) {
  double nitrate = 0, urea = 0, ammonium = 0;
  for (int i = 0; i < LAYERS; i++) {
    s->nitrate[c][i] += nitrate;
    s->urea[c][i] += urea;
    s->ammonium[c][i] += ammonium;
    nitrate = urea = ammonium = 0;
    if (s->flux[c][i] > 0) {
      double share = s->p[SOLUTE_MIXED] * s->flux[c][i] / (s->water[c][i] + s->flux[c][i]);
      nitrate = s->nitrate[c][i] * share;
      urea = s->urea[c][i] * share;
      ammonium = s->ammonium[c][i] * share * s->water[c][i] / (s->water[c][i] + s->sorbed[i]);
      s->nitrate[c][i] -= nitrate;
      s->urea[c][i] -= urea;
      s->ammonium[c][i] -= ammonium;
    }
  }
  s->sum[OF_LEACHED] += s->share[c] * (nitrate + urea + ammonium);
}

static void sideways(struct season *s) {
  double fr = s->share[0], fm = s->share[1];
  for (int i = 0; i < LAYERS; i++) {
    double *row = &s->water[0][i], *middle = &s->water[1][i];
    double wet = clamp((.5 * (*row + *middle) - s->wp[i]) / (s->fc[i] - s->wp[i]), 0, 1);
    double v = s->p[LATERAL] * fr * fm / (fr + fm) * wet * wet * wet * (*row - *middle);
    double to_middle = least(most(0, v), most(0, s->sat[i] - *middle) * fm);
    double to_row = least(most(0, -v), most(0, s->sat[i] - *row) * fr);
    double out = s->p[SOLUTE_MIXED] * to_middle / (fr * most(1e-300, *row));
    double in = s->p[SOLUTE_MIXED] * to_row / (fm * most(1e-300, *middle));
    double net = s->nitrate[0][i] * out * fr - s->nitrate[1][i] * in * fm;
    *row += (to_row - to_middle) / fr;
    *middle += (to_middle - to_row) / fm;
    s->nitrate[0][i] -= net / fr;
    s->nitrate[1][i] += net / fm;
    net = s->urea[0][i] * out * fr - s->urea[1][i] * in * fm;
    s->urea[0][i] -= net / fr;
    s->urea[1][i] += net / fm;
  }
}

static void count_wet_days(struct season *s) {
  double held = 0, full = 0;
  for (int i = 0; i < 3; i++) {
    for (int c = 0; c < 2; c++) held += s->share[c] * (s->peak[c][i] + s->water[c][i]) / 2;
    full += s->sat[i];
  }
  s->wet_days = held > .95 * full ? s->wet_days + 1 : 0;
}

// ---- nitrogen on the surface

static double inhibition(double heat) { return 1 - .8 * exp(-heat / 300); }

static void wash(struct season *s, struct pool *q, int c, double w) {
  double ammonium = w * (q->ammonium + q->alkaline);
  s->urea[c][0] += w * q->urea;
  s->ammonium[c][0] += ammonium;
  s->nitrate[c][0] += w * q->nitrate;
  if (q->slows_nitrification > 0) s->guarded[c][0] += ammonium;
  q->urea *= 1 - w;
  q->alkaline *= 1 - w;
  q->ammonium *= 1 - w;
  q->nitrate *= 1 - w;
}

static void wash_in(struct season *s) {
  for (int c = 0; c < 2; c++) {
    for (int k = 0; k < POOLS; k++) {
      struct pool *q = &s->pools[c][k];
      if (s->entered[c] > 0 && lying(q) > 0) wash(s, q, c, 1 - exp(-s->entered[c] / s->p[WASH_IN]));
    }
  }
}

static void react(struct season *s, struct pool *q, int c) {
  double moist = clamp((s->water[c][0] - .5 * s->wp[0]) / (s->fc[0] - .5 * s->wp[0]), .1, 1);
  if (s->entered[c] > 0) moist = most(.8, moist);
  double held = q->slows_urea > 0 ? .10 + .90 * clamp((q->age - 7) / 14, 0, 1) : 1;
  double cover = s->in->cover;
  double kh = s->p[UREA_SURFACE] * s->warmth2[0] * moist * sqrt(q->band) * (1 + .3 * cover) * held;
  double kdif = s->p[UREA_ENTRY] * moist;
  double gone = q->urea * (1 - exp(-(kh + kdif)));
  double hydrolysed = gone * kh / (kh + kdif);
  q->urea -= gone;
  q->alkaline += hydrolysed;
  s->urea[c][0] += gone - hydrolysed;
  double onset = clamp((q->age + 1) / 4, .25, 1), warmth = q10(s->temperature[0], 1.6, 22);
  double kv = s->p[AMMONIA_LOSS] * onset * warmth * s->surface_factor * (1 + .5 * cover) * q->band;
  double kf = s->temperature[0] > 0 ? s->p[AMMONIA_FIXED] : 0;
  double left = q->alkaline * (1 - exp(-(kv + kf)));
  double lost = kv + kf > 0 ? left * kv / (kv + kf) : 0;
  q->alkaline -= left;
  s->ammonium[c][0] += left - lost;
  s->sum[OF_VOLATILISED] += s->share[c] * lost;
  if (q->slows_nitrification > 0) s->guarded[c][0] += left - lost;
  double slowed = q->slows_nitrification > 0 ? inhibition(s->guard_heat) : 1;
  double nitrified = q->ammonium * (1 - exp(-s->p[SURFACE_NITRIFY] * s->warmth22[0] * moist * slowed));
  q->ammonium -= nitrified;
  q->nitrate += nitrified;
  q->age += 1;
}

static void surface(struct season *s) {
  for (int c = 0; c < 2; c++) {
    for (int k = 0; k < POOLS; k++) {
      struct pool *q = &s->pools[c][k];
      if (lying(q) == 0) continue;
      react(s, q, c);
      if (lying(q) < 1e-6) wash(s, q, c, 1);
    }
  }
}

// ---- residue

static double reach(const struct season *s, int c) {
  double sum = 0;
  for (int i = 0; i <= (s->in->buried > 0); i++) sum += s->p[RESIDUE_REACH] * (s->nitrate[c][i] + s->ammonium[c][i]);
  for (int k = 0; k < POOLS; k++) {
    const struct pool *q = &s->pools[c][k];
    sum += s->p[RESIDUE_REACH_SURFACE] * q->contact * (q->ammonium + q->nitrate + q->alkaline);
  }
  return sum;
}

static void take_within_reach(struct season *s, int c, double share) {
  double keep = 1 - share * s->p[RESIDUE_REACH];
  for (int i = 0; i <= (s->in->buried > 0); i++) {
    s->nitrate[c][i] *= keep;
    s->ammonium[c][i] *= keep;
    s->guarded[c][i] *= keep;
  }
  for (int k = 0; k < POOLS; k++) {
    struct pool *q = &s->pools[c][k];
    double left = 1 - share * s->p[RESIDUE_REACH_SURFACE] * q->contact;
    q->ammonium *= left;
    q->nitrate *= left;
    q->alkaline *= left;
  }
}

static void decay(struct season *s, int c) {
  double moist = clamp((s->water[c][0] - s->wp[0]) / (s->fc[0] - s->wp[0]), .05, 1);
  if (s->entered[c] > 0) moist = most(.6, moist);
  double pace = s->warmth2[0] * moist;
  double carbon = s->residue_c[c];
  if (carbon > 1e-9) {
    double decayed = carbon * least(1, s->p[s->in->buried > 0 ? RESIDUE_DECAY_BURIED : RESIDUE_DECAY] * pace);
    double ratio = s->residue_n[c] / carbon;
    double need = decayed * (s->p[CARBON_USE] / s->p[MICROBE_CN] - ratio);
    if (need <= 0) {
      s->microbes[c] += decayed * s->p[CARBON_USE] / s->p[MICROBE_CN];
      s->ammonium[c][0] -= need;
      s->sum[OF_RESIDUE] += s->share[c] * need;
    } else {
      double within = reach(s, c), taken = least(need, within);
      take_within_reach(s, c, within > 0 ? taken / within : 0);
      decayed *= .35 + .65 * taken / need;
      s->microbes[c] += decayed * ratio + taken;
      s->sum[OF_RESIDUE] += s->share[c] * taken;
    }
    s->residue_c[c] -= decayed;
    s->residue_n[c] -= decayed * ratio;
  }
  double released = s->microbes[c] * s->p[MICROBE_TURNOVER] * pace;
  s->microbes[c] -= released;
  s->ammonium[c][0] += released;
  s->sum[OF_RESIDUE] -= s->share[c] * released;
}

// ---- nitrogen in the soil

static double guard(struct season *s) {
  double slowed = 1;
  if (s->guard_inhibitor || s->guard_band) {
    if (s->guard_inhibitor) slowed *= inhibition(s->guard_heat);
    if (s->guard_band) slowed *= .25 + .75 * clamp((s->guard_age - 14) / 14, 0, 1);
    s->guard_heat += most(0, s->temperature[1]);
    s->guard_age += 1;
  }
  return slowed;
}

static void transform(struct season *s, int c, int i, double guard_rate) {
  double w = s->water[c][i], wp = s->wp[i], fc = s->fc[i], sat = s->sat[i];
  double dry = .40 * least(1, w / wp) + .60 / .90 * most(0, (w - wp) / (fc - wp));
  double wet = most(.3, 1 - .7 / .3 * (w / sat - .7));
  double moist = least(least(1, dry), wet);
  double given = s->organic[c][i] * s->mineralising[i] * s->warmth2[i] * moist;
  s->organic[c][i] -= given;
  s->ammonium[c][i] += given;
  s->sum[OF_MINERALISED] += s->share[c] * given;
  if (s->urea[c][i] > 0) {
    double fw = clamp((w - .5 * wp) / (fc - .5 * wp), .1, 1);
    double gone = s->urea[c][i] * (1 - exp(-s->p[UREA_SOIL] * s->warmth2[i] * fw));
    s->urea[c][i] -= gone;
    s->ammonium[c][i] += gone;
    if (s->guard_inhibitor) s->guarded[c][i] += gone;
  }
  double kn = s->nitrifying[i] * s->warmth22[i] * moist, ki = s->taking[i] * s->warmth2[i] * moist;
  double free = most(0, s->ammonium[c][i] - s->ammonium_floor[i]);
  double lost = 1 - exp(-(kn + ki)), gone = free * lost;
  if (s->guard_inhibitor || s->guard_band) {
    double slow = least(s->guarded[c][i], free);
    double gone_slow = slow * (1 - exp(-(kn + ki) * guard_rate));
    gone = (free - slow) * lost + gone_slow;
    s->guarded[c][i] = slow - gone_slow;
  }
  double taken = kn + ki > 0 ? gone * ki / (kn + ki) : 0;
  s->ammonium[c][i] -= gone;
  s->nitrate[c][i] += gone - taken;
  s->organic[c][i] += taken;
  s->sum[OF_TAKEN_BACK] += s->share[c] * taken;
}

static void denitrify(struct season *s, int c, int i) {
  double x = .5 * (s->peak[c][i] + s->water[c][i]) / s->sat[i];
  s->airless[c][i] = x > .75 ? s->airless[c][i] + 1 : 0;
  if (x > .60) {
    double wet = least(1, (x - .60) / .30);
    double k = s->denitrifying[i] * wet * wet * clamp(s->airless[c][i] / 3, .25, 1) * s->warmth2[i];
    double lost = s->nitrate[c][i] * (1 - exp(-k));
    s->nitrate[c][i] -= lost;
    s->sum[OF_DENITRIFIED] += s->share[c] * lost;
  }
}

static void soil(struct season *s) {
  double rate = guard(s);
  for (int c = 0; c < 2; c++) {
    s->nitrate[c][0] += s->p[DEPOSIT_NITRATE];
    s->ammonium[c][0] += s->p[DEPOSIT_AMMONIUM];
    for (int i = 0; i < LAYERS; i++) {
      transform(s, c, i, rate);
      denitrify(s, c, i);
    }
  }
}

// ---- evaporation and transpiration

static void evaporate(struct season *s) {
  double kc_max = s->p[KC_MAX], lai = s->lai, kcb = 0, cover = .01;
  if (lai > 0) kcb = .15 + (s->p[KCB_FULL] - .15) * (1 - exp(-s->p[KCB_EXTINCTION] * lai));
  if (kcb > .15) {
    double share = clamp((kcb - .15) / (kc_max - .15), .01, .99);
    cover = pow(share, 1 + .5 * 2.7 * pow(lai / 5, .7));
  }
  double et0 = s->et0 * (1 - s->p[EVAPORATION_RESIDUE] * s->in->cover);
  double energy = et0 * (kc_max - kcb), open = et0 * (1 - cover) * kc_max;
  s->transpirable = most(0, kcb * s->et0 - s->on_leaves) * (1 - .5 * s->rep * s->rep * s->rep);
  for (int c = 0; c < 2; c++) {
    double *top = &s->water[c][0], *second = &s->water[c][1];
    double r = clamp((1 - (s->fc[0] - *top) / (s->fc[0] - s->wp[0])) / (1 - s->p[EVAPORATION_READY]), 0, 1);
    double e = least(r * r * r * energy, open);
    double from_second = most(0, least(e / 3, *second - .8 * s->wp[1]));
    double from_top = most(0, least(2 * e / 3, *top - s->wp[0]));
    *top -= from_top;
    *second -= from_second;
    s->sum[OF_EVAPORATION] += s->share[c] * (from_top + from_second);
  }
}

static void transpire(struct season *s) {
  double supply = 0;
  for (int c = 0; c < 2; c++) {
    for (int i = 0; i < LAYERS; i++) {
      s->drawn[c][i] = s->p[WATER_UPTAKE] * s->roots[c][i] * most(0, s->water[c][i] - s->wp[i]);
      supply += s->share[c] * s->drawn[c][i];
    }
  }
  double use = least(s->transpirable, supply), part = supply > 0 ? use / supply : 0;
  s->water_factor = s->transpirable > 0 ? least(1, supply / s->transpirable) : 1;
  s->sum[OF_TRANSPIRATION] += use;
  for (int c = 0; c < 2; c++) {
    for (int i = 0; i < LAYERS; i++) {
      s->drawn[c][i] *= part;
      s->water[c][i] -= s->drawn[c][i];
    }
  }
}

// ---- growth and uptake

static void heat(struct season *s, int day) {
  int hot = s->tmax > 35 && s->water_factor < .8;
  if (s->silked < 0) {
    s->hot_days = (s->hot_days << 1 | hot) & 127;
    s->kernel_loss = .03 * __builtin_popcount((unsigned)s->hot_days);
  } else if (hot && day - s->silked <= 7) {
    s->kernel_loss += .03;
  }
}

static void grow(struct season *s, int day) {
  if (s->emerged < 0) return;
  const struct input *in = s->in;
  double fn = pow(clamp(s->nni, .05, 1), s->p[NITROGEN_POWER]);
  double light = .5 * s->solar * (1 - exp(-s->p[LIGHT_EXTINCTION] * s->lai));
  double cool = clamp((s->tmean - 8) / (s->rep > 0 ? 10 : 8), 0, 1);
  double growth = 10 * light * s->p[RUE] * (1 - s->p[RUE_DECLINE] * s->rep * sqrt(s->rep)) * cool * least(s->water_factor, s->p[FED] * fn);
  if (s->rep >= 1 || s->killed) growth = 0;
  s->nitrogen_factor = fn;
  s->shoot += growth;
  if (s->silked == day) s->shoot_at_silk = s->shoot;
  double silk = in->silk[s->m];
  if (s->gdd >= silk - 450 && s->gdd <= silk + 150) {
    s->growth_sum += growth * .1 / in->population;
    s->growth_days += 1;
  }
  if (s->p[HEAT] > 0) heat(s, day);
}

static void feed(struct season *s, int day) {
  double from_nitrate[2][LAYERS], from_ammonium[2][LAYERS], supply = 0;
  for (int c = 0; c < 2; c++) {
    for (int i = 0; i < LAYERS; i++) {
      double w = s->water[c][i], fw = clamp(2 * (w - s->wp[i]) / (s->fc[i] - s->wp[i]), 0, 1);
      double n = s->nitrate[c][i], free = most(0, n - s->nitrate_floor[i]), roots = s->roots[c][i];
      from_nitrate[c][i] = least(free, s->p[NITRATE_UPTAKE] * roots * fw * free + s->drawn[c][i] / most(1, w) * n);
      from_ammonium[c][i] =
          s->p[AMMONIUM_UPTAKE] * roots * fw * most(0, s->ammonium[c][i] - s->ammonium_floor[i]);
      supply += s->share[c] * (from_nitrate[c][i] + from_ammonium[c][i]);
    }
  }
  s->critical = critical(s);
  double gap = clamp(s->p[LUXURY] * s->critical - s->shoot_n, 0, s->p[UPTAKE_MAX]);
  double demand = s->rep >= .97 || s->killed ? 0 : gap / (1 - s->p[ROOT_NITROGEN]);
  double part = supply > 0 ? least(1, demand / supply) : 0;
  for (int c = 0; c < 2; c++) {
    for (int i = 0; i < LAYERS; i++) {
      s->nitrate[c][i] -= part * from_nitrate[c][i];
      if (s->guarded[c][i] > 0) s->guarded[c][i] *= 1 - part * from_ammonium[c][i] / s->ammonium[c][i];
      s->ammonium[c][i] -= part * from_ammonium[c][i];
    }
  }
  s->shoot_n += (1 - s->p[ROOT_NITROGEN]) * part * supply;
  s->root_n += s->p[ROOT_NITROGEN] * part * supply;
  if (s->shorted < 0 && s->collars > 4 && s->rep < .9 && s->nni < .855) s->shorted = day;
}

// ---- the day, the season

static void step(struct season *s, int day) {
  const struct weather *w = &s->in->weather[s->in->weather_of[s->m]];
  s->tmax = w->tmax[day];
  s->tmin = w->tmin[day];
  s->tmean = (s->tmax + s->tmin) / 2;
  s->rain = w->rain[day];
  s->solar = w->solar[day];
  s->et0 = w->et0[day];
  s->dew = w->dew[day];
  stage(s, day);
  int up = s->gdd >= s->p[EMERGENCE];
  warm(s);
  if (up) root(s);
  suffocate(s);
  rain(s);
  enter(s);
  wash_in(s);
  for (int c = 0; c < 2; c++) {
    fill_and_drain(s, c);
    carry(s, c);
  }
  sideways(s);
  if (s->p[WATERLOGGING] > 0) count_wet_days(s);
  surface(s);
  for (int c = 0; c < 2; c++) decay(s, c);
  soil(s);
  evaporate(s);
  if (up) {
    transpire(s);
    grow(s, day);
    feed(s, day);
  }
}

static double yield(const struct season *s) {
  double pgr = s->growth_days > 0 ? s->growth_sum / s->growth_days : 0, over = pgr - 1.17;
  double set = over <= 0 ? 0 : over / (1 + .67 * over);
  double kernels = s->p[KERNELS] * set * (1 - least(1, s->kernel_loss));
  double sink = kernels * s->in->population * s->p[KERNEL_WEIGHT] * 1e-6 * 1e4;
  double source = s->silked < 0 ? 0 : s->shoot - s->shoot_at_silk + .08 * s->shoot_at_silk;
  double nitrogen = s->p[NITROGEN_HARVEST] * s->shoot_n / s->p[GRAIN_N_MIN];
  double index = s->p[HARVEST_INDEX] * s->shoot * least(1, s->rep + .13);
  return least(least(sink, index), least(source, nitrogen));
}

void scalar_season(const struct input *in, int m, double *results) {
  struct season s;
  lay_out(&s, in, m);
  for (int day = 0; day < in->days; day++) {
    for (int k = 0; k < in->passes; k++) {
      const struct pass *pass = &in->pass[k];
      if (pass->day == day && (pass->member < 0 || pass->member == m)) apply(&s, pass);
    }
    step(&s, day);
  }
  for (int c = 0; c < 2; c++) {
    for (int i = 0; i < LAYERS; i++) {
      s.sum[OF_NITRATE_LEFT] += s.share[c] * s.nitrate[c][i];
      s.sum[OF_AMMONIUM_LEFT] += s.share[c] * s.ammonium[c][i];
      s.sum[OF_WATER_LEFT] += s.share[c] * s.water[c][i];
    }
  }
  s.sum[OF_YIELD] = yield(&s);
  s.sum[OF_SHOOT] = s.shoot;
  s.sum[OF_SHOOT_N] = s.shoot_n;
  s.sum[OF_ROOT_N] = s.root_n;
  s.sum[OF_HEIGHT] = s.height;
  s.sum[OF_SILK_DAY] = s.silked;
  s.sum[OF_SHORT_DAY] = s.shorted;
  memcpy(results, s.sum, sizeof s.sum);
}
