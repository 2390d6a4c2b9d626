/* The temperature and humidity sensor on the two-wire bus: an SHT4x, an SHT3x, an AHT20, or none. */
#pragma once

#include <stdbool.h>
#include <stdint.h>

#include <simavr/avr_twi.h>

enum {
  SENSOR_COMMAND_MAX = 8, /* bytes of a command that are kept */
  SENSOR_FRAME_MAX = 7,   /* bytes of the longest answer */
};

struct climate_sensor {
  avr_t *avr;
  avr_irq_t *bus;
  const struct sensor_model *model; /* NULL: nothing is connected */

  double temperature_C;
  double humidity_pct;
  unsigned bad_checksums;               /* answers still to be spoilt */
  uint8_t recorded[SENSOR_FRAME_MAX];   /* given instead of the two values above, */
  int recorded_count;                   /* when there is something in it */
  unsigned late_us;                     /* a measurement takes this much longer than its data sheet allows */

  /* the transfer under way */
  uint8_t selected;                     /* address byte as sent; 0 between transfers */
  uint8_t command[SENSOR_COMMAND_MAX];
  int command_count;
  uint8_t answer[SENSOR_FRAME_MAX];
  int answer_count;
  int answer_next;
  avr_cycle_count_t ready_at;
};

void climate_sensor_connect(struct climate_sensor *sensor, avr_t *avr);
bool climate_sensor_select(struct climate_sensor *sensor, const char *model_name); /* false: no such model */
bool climate_sensor_checksum_is_right(void); /* against the example printed in the sensors' data sheets */
