/* Commands, one on a line of standard input; each is answered with one line:
 * "OK <the command> at <chip time in s>", or "ERROR <what is wrong>". */
#pragma once

#include <stdbool.h>

#include "board.h"
#include "pace.h"

struct commands {
  struct board *board;
  struct pace *pace;
  char waiting[4096]; /* read, not yet obeyed */
  int waiting_count;
  bool has_ended;     /* "quit", or the end of standard input */
};

void commands_read(struct commands *commands);            /* take what is there */
void commands_obey(struct commands *commands);            /* up to and with a "run" */
void commands_answer_run(const struct commands *commands); /* once it is over */
