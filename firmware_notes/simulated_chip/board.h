/* The board: an ATmega328P at 16 MHz, its climate sensor, the air-speed bead on A0 and its serial port. */
#pragma once

#include "climate_sensor.h"
#include "random.h"
#include "serial_port.h"

struct board {
  avr_t *avr;
  struct climate_sensor sensor;
  struct serial_port port;
  avr_irq_t *bead_input;
  double bead_mV;
  double bead_noise_mV; /* standard deviation */
  struct random bead_random;
};

/* NULL, or what went wrong. */
const char *board_power_on(struct board *board, const char *firmware_path, unsigned seed);
double board_time_s(const struct board *board);        /* since power-on, in the chip's own time */
double board_last_line_s(const struct board *board); /* when the end of the last line left the chip */
bool board_run_ms(struct board *board, unsigned ms);   /* false: the chip has stopped for good */
void board_reset(struct board *board);                 /* as the reset line does */
void board_hang(struct board *board);                  /* an endless loop, interrupts off: only a watchdog ends it */
void board_set_supply_mV(struct board *board, unsigned supply_mV);
