// SPDX-License-Identifier: Apache-2.0
// What both C versions of the season model share: the input that the Java side wrote, and the list of results.
// The equations are those of the package org.earleaf.season, where their sources are given; water tables, manure,
// tillage and irrigation are left out.
#ifndef SEASON_H
#define SEASON_H

#define LAYERS 6
#define CELLS (2 * LAYERS)
#define POOLS 4

#define PARAMETERS(P) \
  P(EMERGENCE) P(LEAF_EARLY) P(LEAF_LATE) P(HEIGHT_SCALE) P(LAI_MAX) P(KCB_FULL) P(KC_MAX) P(KCB_EXTINCTION) P(EVAPORATION_READY) \
  P(EVAPORATION_RESIDUE) P(INTERCEPTION) P(STEMFLOW) P(RAIN_CATCH) P(AVAILABLE_WATER) P(CONDUCTIVITY) P(DRAIN_RATE) \
  P(LATERAL) P(SOLUTE_MIXED) P(ROOT_DEPTH_MAX) P(ROOT_FRONT) P(ROOT_LENGTH) P(ROOT_HALF) P(WATER_UPTAKE) P(BARE_WARMING) \
  P(BARE_COVER) P(WASH_IN) P(UREA_SURFACE) P(UREA_ENTRY) P(AMMONIA_LOSS) P(AMMONIA_FIXED) P(SURFACE_NITRIFY) \
  P(RESIDUE_DECAY) P(RESIDUE_DECAY_BURIED) P(RESIDUE_REACH) P(RESIDUE_REACH_SURFACE) P(CARBON_USE) P(MICROBE_CN) \
  P(MICROBE_TURNOVER) P(MINERALISATION) P(UREA_SOIL) P(NITRIFICATION) P(TAKE_BACK) P(AMMONIUM_FLOOR) P(NITRATE_FLOOR) \
  P(DENITRIFICATION) P(DEPOSIT_NITRATE) P(DEPOSIT_AMMONIUM) P(START_NITRATE) P(CRITICAL) P(LUXURY) P(ROOT_NITROGEN) P(UPTAKE_MAX) \
  P(NITRATE_UPTAKE) P(AMMONIUM_UPTAKE) P(RUE) P(NITROGEN_POWER) P(FED) P(RUE_DECLINE) P(LIGHT_EXTINCTION) P(KERNELS) P(KERNEL_WEIGHT) P(HARVEST_INDEX) \
  P(NITROGEN_HARVEST) P(GRAIN_N_MIN) P(FROST) P(HEAT) P(WATERLOGGING)

enum parameter {
#define NAME(n) n,
  PARAMETERS(NAME)
#undef NAME
  PARAMETER_COUNT
};

#define RESULTS(R) \
  R(YIELD) R(SHOOT) R(SHOOT_N) R(ROOT_N) R(NITRATE_LEFT) R(AMMONIUM_LEFT) R(WATER_LEFT) R(TRANSPIRATION) R(EVAPORATION) \
  R(ON_LEAVES) R(RUNOFF) R(DRAINAGE) R(LEACHED) R(DENITRIFIED) R(VOLATILISED) R(MINERALISED) R(TAKEN_BACK) \
  R(RESIDUE) R(HEIGHT) R(SILK_DAY) R(SHORT_DAY)

enum result {
#define NAME(n) OF_##n,
  RESULTS(NAME)
#undef NAME
  RESULT_COUNT
};

// Where a pass is put; the numbers are those of the Java side.
enum placement { ON_ALL, ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT, INCORPORATED, AMMONIA };

struct pass {
  int day;
  int member;  // -1: all
  enum placement placement;
  double nitrogen, urea, ammonium, nitrate;
  double slows_urea, slows_nitrification;
};

struct weather {
  double *tmax, *tmin, *rain, *solar, *et0, *dew;
};

struct input {
  int days, members, planted, weathers, passes;
  double row_share, population, drain_max, curve, cover, residue, residue_cn, buried, soil_temperature;
  double *silk, *black;  // by member
  double wp[LAYERS], fc[LAYERS], sat[LAYERS], ksat[LAYERS], density[LAYERS], om[LAYERS], ph[LAYERS], cec[LAYERS];
  double nitrate[LAYERS], ammonium[LAYERS], thickness[LAYERS];
  double *p[PARAMETER_COUNT];  // by member
  int *weather_of;
  struct weather *weather;
  struct pass *pass;
};

static const double DEPTH_RATE[LAYERS] = {1, 1, .9, .4, .2, .1};
static const double CARBON_RATE[LAYERS] = {1, 1, 1, .5, .2, .1};
static const double FOLLOW[LAYERS] = {.35, .30, .20, .10, .05, .03};
static const double MIDDLE_TO_ROW[LAYERS] = {.4, .4, .5, .7, .9, 1.0};

struct input *read_input(const char *path);

// Canopy height [cm] of an unstressed crop, with so many collars of so many at tassel.
double height_cm(double collars, double tassel);

// A whole season of one member, and of `count` members beginning with `first`: results by member.
void scalar_season(const struct input *in, int m, double *results);
void lanes_season(const struct input *in, int first, int count, double *results);

#endif
