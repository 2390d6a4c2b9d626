/* The board: an ATmega328P at 16 MHz, its climate sensor, the air-speed bead on A0 and its serial port. */
#pragma once

#include "bus_lines.h"
#include "climate_sensor.h"
#include "random.h"
#include "serial_port.h"

struct board {
  avr_t *avr;
  struct climate_sensor sensor;
  struct bus_lines bus;
  struct serial_port port;
  avr_irq_t *bead_input;
  double bead_mV;
  double bead_noise_mV; /* standard deviation */
  struct random bead_random;
  bool is_plugged_in;
  unsigned deepest_stack; /* bytes, since the program started */
};

enum board_reset { RESET_POWER_ON = 1 << 0, RESET_LINE = 1 << 1, RESET_SUPPLY_DIP = 1 << 2 }; /* bits of MCUSR */

/* Makes the board and plugs it in; NULL, or what went wrong. `link` is a path for a link to its port, or NULL. */
const char *board_make(struct board *board, const char *firmware_path, unsigned seed, const char *link);
bool board_plug_in(struct board *board);               /* it starts anew, with its EEPROM kept; false: no port */
void board_unplug(struct board *board);                /* no power, and its port is gone */
double board_time_s(const struct board *board);        /* since power-on, in the chip's own time */
double board_last_line_s(const struct board *board);   /* when the end of the last line left the chip */
bool board_run_ms(struct board *board, unsigned ms);   /* false: the chip has stopped for good */
void board_reset(struct board *board, enum board_reset cause);
void board_hang(struct board *board);                  /* an endless loop, interrupts off: only a watchdog ends it */
void board_set_supply_mV(struct board *board, unsigned supply_mV);
