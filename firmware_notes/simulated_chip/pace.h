/* How fast the chip's time goes: a multiple of real time, as fast as it can, or only when told to run. */
#pragma once

#include <stdbool.h>

enum pace_mode { PACE_MULTIPLE, PACE_UNBOUND, PACE_HELD, PACE_RUN };

struct pace {
  enum pace_mode mode;
  double speed;        /* chip seconds for each real second, in PACE_MULTIPLE */
  double chip_start_s; /* both clocks when the speed was set */
  double wall_start_s;
  double run_until_s;  /* chip time, in PACE_RUN */
};

enum { PACE_WAIT_FOR_EVENT = -1 };

void pace_set_speed(struct pace *pace, double speed, double chip_now_s); /* 0: as fast as it can */
void pace_resume(struct pace *pace, double chip_now_s); /* after a standstill that is not to be caught up */
void pace_hold(struct pace *pace);
void pace_run(struct pace *pace, double duration_s, double chip_now_s);  /* as fast as it can, then hold */
bool pace_run_is_over(const struct pace *pace, double chip_now_s);
int pace_wait_ms(const struct pace *pace, double chip_now_s);            /* before the chip may go on */
