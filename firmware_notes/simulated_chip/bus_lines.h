/* The two wires of the bus as something outside the chip holds them low: then no transfer can start, and the chip's
 * pins show it. */
#pragma once

#include <stdbool.h>

#include <simavr/sim_avr.h>

struct bus_lines {
  avr_t *avr;
  bool clock_is_held;        /* until let go */
  unsigned data_pulses_left; /* the data line is held until the clock line has pulsed this often */
  bool chip_pulls_clock;

  /* the simulator's own handler of the bus control register, behind ours */
  avr_io_write_t control_write;
  void *control_param;
};

void bus_lines_connect(struct bus_lines *lines, avr_t *avr);
void bus_lines_hold_clock(struct bus_lines *lines, bool hold);
void bus_lines_hold_data(struct bus_lines *lines, unsigned pulses);
