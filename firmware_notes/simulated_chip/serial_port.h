/* The board's serial port: a pseudo-terminal that any program opens like a real port, with faults on demand.
 * A program that opens it at another speed than the chip's reads what a real one would: garbage.
 * A pseudo-terminal does not reset the board when it is opened; the command "reset" stands in for that. */
#pragma once

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include <simavr/avr_uart.h>

#include "line.h"
#include "random.h"

enum { SERIAL_QUEUE_SIZE = 1 << 16 };

struct serial_port {
  avr_t *avr;
  avr_irq_t *uart;
  struct line line;
  const char *link;         /* where a link to the pseudo-terminal is kept while it is there; NULL: nowhere */
  int terminal;             /* our end of the pseudo-terminal; -1 while the board is unplugged */
  char path[64];            /* the end that programs open */
  double program_bit;       /* at the speed that the program set, in cycles */
  bool chip_listens;        /* the chip has room for a byte */

  double drop_probability;  /* of each byte sent */
  double flip_probability;  /* of one bit in each byte sent */
  struct random faults;

  uint8_t queue[SERIAL_QUEUE_SIZE]; /* sent by the chip, not yet taken by the terminal */
  size_t queued;

  uint64_t lines_sent;
  avr_cycle_count_t last_line_at;   /* when the end of the last line left the chip */
};

void serial_port_connect(struct serial_port *port, avr_t *avr, unsigned seed);
bool serial_port_plug(struct serial_port *port);      /* false: no pseudo-terminal, or its link cannot be made */
void serial_port_unplug(struct serial_port *port);
void serial_port_set_chip_baud(struct serial_port *port, unsigned baud); /* as the sketch could have chosen */
bool serial_port_has_reader(const struct serial_port *port);
void serial_port_flush(struct serial_port *port);     /* bytes that nobody listens to are gone, as on a real port */
void serial_port_hear(struct serial_port *port);      /* at most one waiting byte into the chip */
