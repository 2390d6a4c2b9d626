#include "pace.h"

#include <time.h>

static double wall_now_s(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return (double)now.tv_sec + (double)now.tv_nsec * 1e-9;
}

void pace_set_speed(struct pace *pace, double speed, double chip_now_s) {
  pace->mode = speed > 0 ? PACE_MULTIPLE : PACE_UNBOUND;
  pace->speed = speed;
  pace->chip_start_s = chip_now_s;
  pace->wall_start_s = wall_now_s();
}

void pace_resume(struct pace *pace, double chip_now_s) {
  pace->chip_start_s = chip_now_s;
  pace->wall_start_s = wall_now_s();
}

void pace_hold(struct pace *pace) {
  pace->mode = PACE_HELD;
}

void pace_run(struct pace *pace, double duration_s, double chip_now_s) {
  pace->mode = PACE_RUN;
  pace->run_until_s = chip_now_s + duration_s;
}

bool pace_run_is_over(const struct pace *pace, double chip_now_s) {
  return pace->mode == PACE_RUN && chip_now_s >= pace->run_until_s;
}

int pace_wait_ms(const struct pace *pace, double chip_now_s) {
  if (pace->mode == PACE_HELD) return PACE_WAIT_FOR_EVENT;
  if (pace->mode != PACE_MULTIPLE) return 0;
  const double chip_ahead_s =
      (chip_now_s - pace->chip_start_s) / pace->speed - (wall_now_s() - pace->wall_start_s);
  return chip_ahead_s > 0 ? (int)(chip_ahead_s * 1000) : 0;
}
