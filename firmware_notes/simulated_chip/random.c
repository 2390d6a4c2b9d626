#include "random.h"

#include <math.h>
#include <stdlib.h>

struct random random_seeded(unsigned seed, enum random_stream stream) {
  const unsigned short low = (unsigned short)seed, high = (unsigned short)(seed >> 16);
  return (struct random){.state = {(unsigned short)stream, low, high}};
}

bool random_happens(struct random *random, double probability) {
  return probability > 0 && erand48(random->state) < probability;
}

unsigned random_below(struct random *random, unsigned limit) {
  return (unsigned)(erand48(random->state) * limit);
}

double random_normal(struct random *random) {
  /* Box and Muller's transform; 1 - u keeps the logarithm away from zero. */
  const double radius = sqrt(-2 * log(1 - erand48(random->state)));
  return radius * cos(2 * M_PI * erand48(random->state));
}
