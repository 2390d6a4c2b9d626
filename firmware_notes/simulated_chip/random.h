/* Seeded random numbers: the same seed gives the same run. Each use has its own stream. */
#pragma once

#include <stdbool.h>

struct random {
  unsigned short state[3];
};

enum random_stream { RANDOM_BEAD_NOISE = 1, RANDOM_LINE_FAULTS = 2 };

struct random random_seeded(unsigned seed, enum random_stream stream);
bool random_happens(struct random *random, double probability);
unsigned random_below(struct random *random, unsigned limit);
double random_normal(struct random *random); /* mean 0, standard deviation 1 */
