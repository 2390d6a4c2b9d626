#include "commands.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static const double LONGEST_RUN_S = 900; /* its lines still fit the queue of the serial port */

enum argument { NO_ARGUMENT, NUMBER, WORD };
enum needs { NEEDS_NOTHING, NEEDS_PLUGGED_IN, NEEDS_UNPLUGGED };

struct command {
  const char *name;
  enum argument argument;
  enum needs needs;
  double lowest, highest; /* of a number */
  void (*obey)(struct commands *, double number);
  bool (*obey_word)(struct commands *, const char *word); /* false: not such a word */
  const char *words;      /* which words there are */
};

static void set_temperature(struct commands *commands, double C) { commands->board->sensor.temperature_C = C; }
static void set_humidity(struct commands *commands, double pct) { commands->board->sensor.humidity_pct = pct; }
static void set_bead(struct commands *commands, double mV) { commands->board->bead_mV = mV; }
static void set_bead_noise(struct commands *commands, double mV) { commands->board->bead_noise_mV = mV; }
static void set_supply(struct commands *commands, double mV) { board_set_supply_mV(commands->board, (unsigned)mV); }
static void set_clock(struct commands *commands, double on) { bus_lines_hold_clock(&commands->board->bus, on != 0); }
static void set_late(struct commands *commands, double ms) { commands->board->sensor.late_us = (unsigned)(ms * 1000); }
static void set_drop(struct commands *commands, double share) { commands->board->port.drop_probability = share; }
static void set_flip(struct commands *commands, double share) { commands->board->port.flip_probability = share; }

static void set_data(struct commands *commands, double pulses) {
  bus_lines_hold_data(&commands->board->bus, (unsigned)pulses);
}

static void set_baud(struct commands *commands, double baud) {
  serial_port_set_chip_baud(&commands->board->port, (unsigned)baud);
}

static void spoil_checksums(struct commands *commands, double count) {
  commands->board->sensor.bad_checksums = (unsigned)count;
}

static void set_speed(struct commands *commands, double speed) {
  pace_set_speed(commands->pace, speed, board_time_s(commands->board));
}

static void run(struct commands *commands, double duration_s) {
  pace_run(commands->pace, duration_s, board_time_s(commands->board));
}

static void hold(struct commands *commands, double unused) {
  (void)unused;
  pace_hold(commands->pace);
}

static void reset(struct commands *commands, double unused) {
  (void)unused;
  board_reset(commands->board, RESET_LINE);
}

static void dip(struct commands *commands, double unused) {
  (void)unused;
  board_reset(commands->board, RESET_SUPPLY_DIP);
}

static void plug_in(struct commands *commands, double unused) {
  (void)unused;
  commands->has_ended = !board_plug_in(commands->board); /* without a port there is nothing more to test */
  pace_resume(commands->pace, board_time_s(commands->board));
}

static void unplug(struct commands *commands, double unused) {
  (void)unused;
  board_unplug(commands->board);
}

static void hang(struct commands *commands, double unused) {
  (void)unused;
  board_hang(commands->board);
}

static void quit(struct commands *commands, double unused) {
  (void)unused;
  commands->has_ended = true;
}

static void only_answer(struct commands *commands, double unused) {
  (void)commands, (void)unused; /* with what answer_ok adds */
}

static bool choose_sensor(struct commands *commands, const char *word) {
  return climate_sensor_select(&commands->board->sensor, word);
}

static bool set_frame(struct commands *commands, const char *word) {
  struct climate_sensor *sensor = &commands->board->sensor;
  if (strcmp(word, "off") == 0) {
    sensor->recorded_count = 0;
    return true;
  }
  const size_t digits = strlen(word);
  const bool is_hex = strspn(word, "0123456789ABCDEFabcdef") == digits;
  if (!is_hex || (digits != 12 && digits != 14)) return false;
  sensor->recorded_count = (int)digits / 2;
  for (int i = 0; i < sensor->recorded_count; i++) sscanf(word + 2 * i, "%2hhx", &sensor->recorded[i]);
  return true;
}

static const struct command COMMANDS[] = {
    {.name = "t", .argument = NUMBER, .lowest = -40, .highest = 85, .obey = set_temperature},
    {.name = "h", .argument = NUMBER, .lowest = 0, .highest = 100, .obey = set_humidity},
    {.name = "air", .argument = NUMBER, .lowest = 0, .highest = 5000, .obey = set_bead},
    {.name = "noise", .argument = NUMBER, .lowest = 0, .highest = 500, .obey = set_bead_noise},
    {.name = "vcc", .argument = NUMBER, .lowest = 2700, .highest = 5500, .obey = set_supply},
    {.name = "crcbad", .argument = NUMBER, .lowest = 0, .highest = 1e9, .obey = spoil_checksums},
    {.name = "late", .argument = NUMBER, .lowest = 0, .highest = 1000, .obey = set_late},
    {.name = "stuck", .argument = NUMBER, .lowest = 0, .highest = 1, .obey = set_clock},
    {.name = "latch", .argument = NUMBER, .lowest = 0, .highest = 1e6, .obey = set_data},
    {.name = "drop", .argument = NUMBER, .lowest = 0, .highest = 1, .obey = set_drop},
    {.name = "flip", .argument = NUMBER, .lowest = 0, .highest = 1, .obey = set_flip},
    {.name = "baud", .argument = NUMBER, .needs = NEEDS_PLUGGED_IN, .lowest = 1200, .highest = 115200,
     .obey = set_baud},
    {.name = "speed", .argument = NUMBER, .lowest = 0, .highest = 1000, .obey = set_speed},
    {.name = "run", .argument = NUMBER, .needs = NEEDS_PLUGGED_IN, .lowest = 0, .highest = LONGEST_RUN_S, .obey = run},
    {.name = "hold", .obey = hold},
    {.name = "reset", .needs = NEEDS_PLUGGED_IN, .obey = reset},
    {.name = "dip", .needs = NEEDS_PLUGGED_IN, .obey = dip},
    {.name = "hang", .needs = NEEDS_PLUGGED_IN, .obey = hang},
    {.name = "unplug", .needs = NEEDS_PLUGGED_IN, .obey = unplug},
    {.name = "plug", .needs = NEEDS_UNPLUGGED, .obey = plug_in},
    {.name = "time", .obey = only_answer},
    {.name = "stack", .obey = only_answer},
    {.name = "quit", .obey = quit},
    {.name = "sensor", .argument = WORD, .obey_word = choose_sensor, .words = "sht4x, sht3x, aht20 or none"},
    {.name = "frame", .argument = WORD, .obey_word = set_frame, .words = "6 or 7 bytes in hex, or off"},
};

static const struct command *find(const char *name) {
  for (size_t i = 0; i < sizeof COMMANDS / sizeof *COMMANDS; i++) {
    if (strcmp(COMMANDS[i].name, name) == 0) return &COMMANDS[i];
  }
  return NULL;
}

static void answer_ok(const struct commands *commands, const char *line) {
  const struct board *board = commands->board;
  printf("OK %s at %.6f", line, board_time_s(board));
  if (strcmp(line, "time") == 0) {
    printf(" lines %llu last %.6f", (unsigned long long)board->port.lines_sent, board_last_line_s(board));
  }
  if (strcmp(line, "stack") == 0) printf(" deepest %u", board->deepest_stack);
  if (strcmp(line, "plug") == 0) printf(" port %s", board->port.path);
  putchar('\n');
}

/* Obeys and says true, or answers with what is wrong. */
static bool obey_number(struct commands *commands, const struct command *command, const char *text) {
  char *end = NULL;
  const double number = text ? strtod(text, &end) : 0;
  if (!text || end == text || *end || !(number >= command->lowest && number <= command->highest)) {
    printf("ERROR %s: got \"%s\", allowed is a number from %g to %g\n", command->name, text ? text : "",
           command->lowest, command->highest);
    return false;
  }
  command->obey(commands, number);
  return true;
}

static bool obey_word(struct commands *commands, const struct command *command, const char *text) {
  if (text && command->obey_word(commands, text)) return true;
  printf("ERROR %s: got \"%s\", allowed is %s\n", command->name, text ? text : "", command->words);
  return false;
}

static bool obey_plain(struct commands *commands, const struct command *command, const char *text) {
  if (!text) {
    command->obey(commands, 0);
    return true;
  }
  printf("ERROR %s: got \"%s\", allowed is nothing after the name\n", command->name, text);
  return false;
}

static bool can_obey(const struct board *board, const struct command *command) {
  const bool is_out_of_place = command->needs == (board->is_plugged_in ? NEEDS_UNPLUGGED : NEEDS_PLUGGED_IN);
  if (is_out_of_place) {
    printf("ERROR %s: the board is %s\n", command->name, board->is_plugged_in ? "plugged in" : "unplugged");
  }
  return !is_out_of_place;
}

static bool obey(struct commands *commands, const struct command *command, const char *text) {
  if (!can_obey(commands->board, command)) return false;
  switch (command->argument) {
    case NUMBER: return obey_number(commands, command, text);
    case WORD: return obey_word(commands, command, text);
    default: return obey_plain(commands, command, text);
  }
}

static void obey_line(struct commands *commands, char *line) {
  char as_given[sizeof commands->waiting];
  strcpy(as_given, line);
  char *const text = strchr(line, ' ');
  if (text) *text = '\0';

  const struct command *command = find(line);
  if (!command) {
    printf("ERROR \"%s\": no such command\n", as_given);
  } else if (obey(commands, command, text ? text + 1 : NULL) && commands->pace->mode != PACE_RUN) {
    answer_ok(commands, as_given); /* a run is answered when it is over */
  }
  fflush(stdout);
}

void commands_read(struct commands *commands) {
  const size_t room = sizeof commands->waiting - 1 - (size_t)commands->waiting_count;
  const ssize_t count = read(STDIN_FILENO, commands->waiting + commands->waiting_count, room);
  if (count <= 0) {
    commands->has_ended = true; /* the other side is gone, or sent a line longer than any command */
    return;
  }
  commands->waiting_count += (int)count;
}

void commands_obey(struct commands *commands) {
  char *end;
  while (commands->pace->mode != PACE_RUN && !commands->has_ended &&
         (end = memchr(commands->waiting, '\n', (size_t)commands->waiting_count))) {
    *end = '\0';
    char line[sizeof commands->waiting];
    strcpy(line, commands->waiting);
    const int used = (int)(end + 1 - commands->waiting);
    commands->waiting_count -= used;
    memmove(commands->waiting, end + 1, (size_t)commands->waiting_count);
    obey_line(commands, line);
  }
}

void commands_answer_run(const struct commands *commands) {
  printf("OK run at %.6f\n", board_time_s(commands->board));
  fflush(stdout);
}
