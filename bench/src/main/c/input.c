// SPDX-License-Identifier: Apache-2.0
// Reads what the Java side wrote: lines of a name, how many numbers, and the numbers.
#include "season.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *const NAMES[] = {
#define NAME(n) #n,
    PARAMETERS(NAME)
#undef NAME
};

static void fail(const char *what, const char *name) {
  fprintf(stderr, "season input: %s: %s\n", what, name);
  exit(2);
}

struct line {
  char name[64];
  int count;
  double *values;
};

static struct line *lines;
static int line_count;

static void read_lines(const char *path) {
  FILE *file = fopen(path, "r");
  if (!file) fail("cannot be opened", path);
  struct line next;
  while (fscanf(file, "%63s %d", next.name, &next.count) == 2) {
    next.values = malloc(sizeof(double) * (size_t)(next.count + 1));
    for (int k = 0; k < next.count; k++) {
      if (fscanf(file, "%lf", &next.values[k]) != 1) fail("too few numbers", next.name);
    }
    lines = realloc(lines, sizeof(struct line) * (size_t)(line_count + 1));
    lines[line_count++] = next;
  }
  fclose(file);
}

static double *numbers(const char *name, int count) {
  for (int k = 0; k < line_count; k++) {
    if (strcmp(lines[k].name, name) == 0) {
      if (count >= 0 && lines[k].count != count) fail("another count of numbers was expected", name);
      return lines[k].values;
    }
  }
  fail("missing", name);
  return 0;
}

static double number(const char *name) { return *numbers(name, 1); }

static void layers(const char *name, double *to) { memcpy(to, numbers(name, LAYERS), sizeof(double) * LAYERS); }

static void read_weather(struct input *in) {
  in->weather = malloc(sizeof(struct weather) * (size_t)in->weathers);
  double *tmax = numbers("tmax", in->weathers * in->days), *tmin = numbers("tmin", in->weathers * in->days);
  double *rain = numbers("rain", in->weathers * in->days), *solar = numbers("solar", in->weathers * in->days);
  double *et0 = numbers("et0", in->weathers * in->days), *dew = numbers("dew", in->weathers * in->days);
  for (int k = 0; k < in->weathers; k++) {
    int at = k * in->days;
    in->weather[k] = (struct weather){tmax + at, tmin + at, rain + at, solar + at, et0 + at, dew + at};
  }
}

static void read_passes(struct input *in) {
  in->passes = (int)number("passes");
  in->pass = malloc(sizeof(struct pass) * (size_t)(in->passes + 1));
  double *v = numbers("pass", 9 * in->passes);
  for (int k = 0; k < in->passes; k++, v += 9) {
    in->pass[k] = (struct pass){(int)v[0], (int)v[1], (enum placement)(int)v[2], v[3], v[4], v[5], v[6], v[7], v[8]};
  }
}

struct input *read_input(const char *path) {
  read_lines(path);
  struct input *in = malloc(sizeof *in);
  in->days = (int)number("days");
  in->members = (int)number("members");
  in->weathers = (int)number("weathers");
  in->planted = (int)number("planted");
  in->row_share = number("row_share");
  in->population = number("population");
  in->drain_max = number("drain_max");
  in->curve = number("curve");
  in->cover = number("cover");
  in->residue = number("residue");
  in->residue_cn = number("residue_cn");
  in->buried = number("buried");
  in->soil_temperature = number("soil_temperature");
  in->silk = numbers("silk", in->members);
  in->black = numbers("black", in->members);
  layers("wp", in->wp);
  layers("fc", in->fc);
  layers("sat", in->sat);
  layers("ksat", in->ksat);
  layers("density", in->density);
  layers("om", in->om);
  layers("ph", in->ph);
  layers("cec", in->cec);
  layers("nitrate", in->nitrate);
  layers("ammonium", in->ammonium);
  layers("thickness", in->thickness);
  for (int k = 0; k < PARAMETER_COUNT; k++) in->p[k] = numbers(NAMES[k], in->members);
  in->weather_of = malloc(sizeof(int) * (size_t)in->members);
  double *of = numbers("weather_of", in->members);
  for (int m = 0; m < in->members; m++) in->weather_of[m] = (int)of[m];
  read_weather(in);
  read_passes(in);
  return in;
}

double height_cm(double collars, double tassel) {
  static const double V[] = {0, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16};
  static const double H[] = {0, 10, 15, 22, 30, 43, 66, 98, 140, 185, 225};
  if (collars >= tassel) return 260;
  int k = 1;
  while (k < 11 && V[k] < tassel && collars > V[k]) k++;
  double low = V[k - 1] > collars ? V[k - 1] : collars;
  if (k < 11 && V[k] < tassel) return H[k - 1] + (H[k] - H[k - 1]) * (low - V[k - 1]) / (V[k] - V[k - 1]);
  return H[k - 1] + (260 - H[k - 1]) * (low - V[k - 1]) / (tassel - V[k - 1]);
}
