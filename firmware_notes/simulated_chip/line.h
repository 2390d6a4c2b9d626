/* The wire from the board to the computer, bit by bit: what a receiver at another speed makes of the bytes sent.
 * 8 data bits, no parity, 1 stop bit; times in the chip's cycles. */
#pragma once

#include <stdbool.h>
#include <stdint.h>

struct line {
  void (*receive)(void *param, uint8_t byte);
  void *param;
  double free_at; /* when the last stop bit sent is over */
  bool was_high;  /* a byte begins where the level falls */
  int bits_taken; /* of the byte under way; -1: none is */
  unsigned bits;
  double next_sample;
};

void line_connect(struct line *line, void (*receive)(void *param, uint8_t byte), void *param);
void line_send(struct line *line, uint8_t byte, double now, double bit_sent, double bit_received);
void line_idle(struct line *line, double now, double bit_received); /* nothing was sent up to `now` */
