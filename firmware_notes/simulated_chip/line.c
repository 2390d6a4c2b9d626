#include "line.h"

enum { DATA_BITS = 8 };

/* A receiver takes the level in the middle of each bit and gives the byte at the stop bit; a stop bit that is low is an
 * error of framing, and a raw terminal passes the byte on all the same. */
static void take_sample(struct line *line, bool level, double bit) {
  if (line->bits_taken < DATA_BITS) {
    line->bits |= (unsigned)level << line->bits_taken++;
    line->next_sample += bit;
    return;
  }
  line->bits_taken = -1;
  line->receive(line->param, (uint8_t)line->bits);
}

static void begin_byte(struct line *line, double fell_at, double bit) {
  line->bits_taken = 0;
  line->bits = 0;
  line->next_sample = fell_at + 1.5 * bit;
}

/* The line has one level from `from` to `to`. */
static void hear(struct line *line, bool level, double from, double to, double bit) {
  if (line->bits_taken < 0 && line->was_high && !level) begin_byte(line, from, bit);
  while (line->bits_taken >= 0 && line->next_sample < to) take_sample(line, level, bit);
  line->was_high = level;
}

void line_connect(struct line *line, void (*receive)(void *param, uint8_t byte), void *param) {
  *line = (struct line){.receive = receive, .param = param, .was_high = true, .bits_taken = -1};
}

void line_send(struct line *line, uint8_t byte, double now, double bit_sent, double bit_received) {
  line_idle(line, now, bit_received);
  const unsigned frame = 1u << (DATA_BITS + 1) | (unsigned)byte << 1; /* start bit low, data, stop bit high */
  for (int i = 0; i < DATA_BITS + 2; i++) {
    const double from = line->free_at;
    line->free_at += bit_sent;
    hear(line, frame >> i & 1, from, line->free_at, bit_received);
  }
}

void line_idle(struct line *line, double now, double bit_received) {
  if (now <= line->free_at) return;
  hear(line, true, line->free_at, now, bit_received);
  line->free_at = now;
}
