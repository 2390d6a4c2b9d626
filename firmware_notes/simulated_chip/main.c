/* The simulated board: runs the sketch's machine code and offers its serial port as a pseudo-terminal.
 *
 *   simulated_chip FIRMWARE.elf [--speed N] [--seed N] [--hold] [--link PATH]
 *
 * Prints "PTY <path>", then obeys commands on standard input (see ../simulated-board.md). A test tool: it links simavr,
 * which is under GPL-3, and is never shipped. */
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "board.h"
#include "commands.h"
#include "pace.h"

enum { SLICE_MS = 1 }; /* chip time between looks at the outside: one byte at 9600 baud */

struct options {
  const char *firmware;
  const char *link;
  double speed;
  unsigned seed;
  bool hold;
};

static bool read_options(int count, char **words, struct options *options) {
  *options = (struct options){.speed = 1, .seed = 1};
  for (int i = 1; i < count; i++) {
    if (strcmp(words[i], "--hold") == 0) {
      options->hold = true;
    } else if (strcmp(words[i], "--speed") == 0 && i + 1 < count) {
      options->speed = atof(words[++i]);
    } else if (strcmp(words[i], "--seed") == 0 && i + 1 < count) {
      options->seed = (unsigned)strtoul(words[++i], NULL, 10);
    } else if (strcmp(words[i], "--link") == 0 && i + 1 < count) {
      options->link = words[++i];
    } else if (!options->firmware && words[i][0] != '-') {
      options->firmware = words[i];
    } else {
      return false;
    }
  }
  return options->firmware && options->speed >= 0;
}

/* Sleeps until a command comes, the terminal takes bytes again, or the time is up; true if a command came. */
static bool wait_for_outside(const struct board *board, const struct pace *pace, bool terminal_is_full, int wait_ms) {
  struct pollfd events[] = {
      {.fd = pace->mode == PACE_RUN ? -1 : STDIN_FILENO, .events = POLLIN},
      {.fd = terminal_is_full ? board->port.terminal : -1, .events = POLLOUT},
  };
  return poll(events, 2, wait_ms) > 0 && events[0].revents != 0;
}

/* A run may get ahead of the reader by what the queue holds; otherwise the chip waits for the terminal. */
static bool must_wait_for_reader(const struct serial_port *port, const struct pace *pace) {
  const size_t allowed = pace->mode == PACE_RUN ? SERIAL_QUEUE_SIZE - 1024 : 0;
  return port->queued > allowed;
}

static void end_run(struct commands *commands) {
  pace_hold(commands->pace);
  commands_answer_run(commands);
  commands_obey(commands);
}

/* Runs until told to quit; false if the chip stopped by itself. */
static bool serve(struct commands *commands) {
  struct board *board = commands->board;
  struct pace *pace = commands->pace;
  while (!commands->has_ended) {
    serial_port_flush(&board->port);
    const bool must_wait = must_wait_for_reader(&board->port, pace);
    const bool must_stand = must_wait || !board->is_plugged_in;
    const int wait_ms = must_stand ? PACE_WAIT_FOR_EVENT : pace_wait_ms(pace, board_time_s(board));
    if (wait_for_outside(board, pace, board->port.queued > 0, wait_ms)) {
      commands_read(commands);
      commands_obey(commands);
    }
    if (must_stand || pace->mode == PACE_HELD) continue;
    serial_port_hear(&board->port);
    if (!board_run_ms(board, SLICE_MS)) return false;
    if (pace_run_is_over(pace, board_time_s(board))) {
      serial_port_flush(&board->port);
      end_run(commands);
    }
  }
  return true;
}

int main(int count, char **words) {
  struct options options;
  if (!read_options(count, words, &options)) {
    fprintf(stderr, "usage: %s FIRMWARE.elf [--speed N] [--seed N] [--hold] [--link PATH]\n", words[0]);
    return EXIT_FAILURE;
  }
  if (!climate_sensor_checksum_is_right()) {
    fprintf(stderr, "the simulated sensor's checksum differs from its data sheet\n");
    return EXIT_FAILURE;
  }

  static struct board board;
  const char *problem = board_make(&board, options.firmware, options.seed, options.link);
  if (problem) {
    fprintf(stderr, "%s: %s\n", options.firmware, problem);
    return EXIT_FAILURE;
  }

  struct pace pace;
  pace_set_speed(&pace, options.speed, 0);
  if (options.hold) pace_hold(&pace);
  printf("PTY %s\n", board.port.path);
  fflush(stdout);

  struct commands commands = {.board = &board, .pace = &pace};
  const bool has_ended_well = serve(&commands);
  board_unplug(&board);
  if (!has_ended_well) {
    fprintf(stderr, "the chip stopped at %.6f s\n", board_time_s(&board));
    return EXIT_FAILURE;
  }
  return EXIT_SUCCESS;
}
