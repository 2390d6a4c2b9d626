#include "bus_lines.h"

#include <simavr/avr_ioport.h>
#include <simavr/sim_io.h>

enum {
  TWCR_ADDRESS = 0xBC, /* bus control register of the ATmega328P */
  TWCR_START = 1 << 5,
  DATA_PIN = 4, /* of port C */
  CLOCK_PIN = 5,
};

/* A pin that the chip does not drive reads low while it is held, else what the pull-up gives. */
static void show_on_pins(struct bus_lines *lines) {
  const bool data_is_held = lines->data_pulses_left > 0;
  avr_ioport_external_t held = {
      .name = 'C',
      .mask = (unsigned)data_is_held << DATA_PIN | (unsigned)lines->clock_is_held << CLOCK_PIN,
      .value = 0,
  };
  avr_ioctl(lines->avr, AVR_IOCTL_IOPORT_SET_EXTERNAL('C'), &held);

  avr_irq_t *pins = avr_io_getirq(lines->avr, AVR_IOCTL_IOPORT_GETIRQ('C'), IOPORT_IRQ_PIN0);
  avr_raise_irq(pins + DATA_PIN, !data_is_held);
  avr_raise_irq(pins + CLOCK_PIN, !lines->clock_is_held);
}

/* The chip pulls a line low by making its pin an output; a pulse is over when it lets the line rise. */
static void on_direction(avr_irq_t *irq, uint32_t outputs, void *param) {
  (void)irq;
  struct bus_lines *lines = param;
  const bool pulled = lines->chip_pulls_clock;
  lines->chip_pulls_clock = outputs >> CLOCK_PIN & 1;
  const bool rises = pulled && !lines->chip_pulls_clock && !lines->clock_is_held;
  if (rises && lines->data_pulses_left > 0 && --lines->data_pulses_left == 0) show_on_pins(lines);
}

/* With a line held low, a start never completes: the request is dropped here. */
static void on_control_write(avr_t *avr, avr_io_addr_t address, uint8_t value, void *param) {
  struct bus_lines *lines = param;
  const bool is_held = lines->clock_is_held || lines->data_pulses_left > 0;
  if (is_held && (value & TWCR_START)) return;
  lines->control_write(avr, address, value, lines->control_param);
}

void bus_lines_connect(struct bus_lines *lines, avr_t *avr) {
  lines->avr = avr;
  avr_irq_t *direction = avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ('C'), IOPORT_IRQ_DIRECTION_ALL);
  avr_irq_register_notify(direction, on_direction, lines);

  const int control = AVR_DATA_TO_IO(TWCR_ADDRESS);
  lines->control_write = avr->io[control].w.c;
  lines->control_param = avr->io[control].w.param;
  avr->io[control].w.c = on_control_write;
  avr->io[control].w.param = lines;
}

void bus_lines_hold_clock(struct bus_lines *lines, bool hold) {
  lines->clock_is_held = hold;
  show_on_pins(lines);
}

void bus_lines_hold_data(struct bus_lines *lines, unsigned pulses) {
  lines->data_pulses_left = pulses;
  show_on_pins(lines);
}
