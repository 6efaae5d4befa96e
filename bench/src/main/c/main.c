// SPDX-License-Identifier: Apache-2.0
// season scalar|lanes INPUT: answers lines of standard input. "check" prints the results of every member, one a line;
// "turn SECONDS" works for that long and prints member-seasons a second of processor time.
#include "season.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static double cpu(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static void work(const struct input *in, int lanes, int first, int count, double *results) {
  if (lanes) {
    lanes_season(in, first, count, results);
  } else {
    for (int m = 0; m < count; m++) scalar_season(in, first + m, results + m * RESULT_COUNT);
  }
}

static void check(const struct input *in, int lanes, double *results) {
  work(in, lanes, 0, in->members, results);
  for (int m = 0; m < in->members; m++) {
    for (int k = 0; k < RESULT_COUNT; k++) printf("%.17g ", results[m * RESULT_COUNT + k]);
    printf("\n");
  }
}

static double turn(const struct input *in, int lanes, double seconds, double *results) {
  double start = cpu(), sink = 0;
  long done = 0;
  int m = 0;
  do {
    int count = lanes ? in->members : 1;
    work(in, lanes, m, count, results);
    sink += results[OF_YIELD];
    done += count;
    m = (m + count) % in->members;
  } while (cpu() - start < seconds);
  return sink > 0 ? (double)done / (cpu() - start) : 0;
}

int main(int argc, char **argv) {
  if (argc != 3) return 2;
  int lanes = strcmp(argv[1], "lanes") == 0;
  struct input *in = read_input(argv[2]);
  double *results = malloc(sizeof(double) * (size_t)(RESULT_COUNT * in->members));
  char line[64];
  while (fgets(line, sizeof line, stdin)) {
    if (strncmp(line, "turn ", 5) == 0) {
      printf("%.17g\n", turn(in, lanes, atof(line + 5), results));
    } else {
      check(in, lanes, results);
    }
    fflush(stdout);
  }
  return 0;
}
