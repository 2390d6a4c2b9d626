#include "board.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>

#include <simavr/avr_adc.h>
#include <simavr/sim_elf.h>
#include <simavr/sim_io.h>

enum {
  CLOCK_HZ = 16000000,
  MCUSR_ADDRESS = 0x54, /* which reset it was */
  JUMP_TO_SELF = 0xCFFF, /* rjmp .-2 */
};

/* Keeps the simulator's chatter off standard output, which is for answers. */
static void log_errors(avr_t *avr, const int level, const char *format, va_list arguments) {
  (void)avr;
  if (level <= LOG_ERROR) vfprintf(stderr, format, arguments);
}

/* The simulator's own would sleep in real time; the pace is kept elsewhere. */
static void do_not_sleep(avr_t *avr, avr_cycle_count_t cycles) {
  (void)avr, (void)cycles;
}

static void on_conversion(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq, (void)value;
  struct board *board = param;
  const double mV = board->bead_mV + board->bead_noise_mV * random_normal(&board->bead_random);
  avr_raise_irq(board->bead_input, (uint32_t)lrint(fmax(0, mV)));
}

static void connect_bead(struct board *board) {
  board->bead_input = avr_io_getirq(board->avr, AVR_IOCTL_ADC_GETIRQ, ADC_IRQ_ADC0);
  avr_irq_t *conversion = avr_io_getirq(board->avr, AVR_IOCTL_ADC_GETIRQ, ADC_IRQ_OUT_TRIGGER);
  avr_irq_register_notify(conversion, on_conversion, board);
}

/* The last word of the flash holds the endless loop that board_hang jumps to. */
static avr_flashaddr_t endless_loop(const struct board *board) {
  return board->avr->flashend - 1;
}

static void place_endless_loop(struct board *board) {
  const avr_flashaddr_t at = endless_loop(board);
  board->avr->flash[at] = JUMP_TO_SELF & 0xFF;
  board->avr->flash[at + 1] = JUMP_TO_SELF >> 8;
  board->avr->codeend = board->avr->flashend;
}

static void set_room_at_start(struct board *board) {
  board->sensor.temperature_C = 21.4;
  board->sensor.humidity_pct = 48;
  climate_sensor_select(&board->sensor, "sht4x");
  board->bead_mV = 600;
  board->bead_noise_mV = 4;
  board_set_supply_mV(board, 5000);
}

const char *board_make(struct board *board, const char *firmware_path, unsigned seed, const char *link) {
  avr_global_logger_set(log_errors);
  elf_firmware_t firmware = {.frequency = CLOCK_HZ};
  if (elf_read_firmware(firmware_path, &firmware) != 0) return "the firmware cannot be read";
  firmware.frequency = CLOCK_HZ;

  board->avr = avr_make_mcu_by_name("atmega328p");
  if (!board->avr || avr_init(board->avr) != 0) return "the simulator does not know the ATmega328P";
  avr_load_firmware(board->avr, &firmware);
  board->avr->sleep = do_not_sleep;
  place_endless_loop(board);

  climate_sensor_connect(&board->sensor, board->avr);
  bus_lines_connect(&board->bus, board->avr);
  connect_bead(board);
  board->bead_random = random_seeded(seed, RANDOM_BEAD_NOISE);
  set_room_at_start(board);
  serial_port_connect(&board->port, board->avr, seed);
  board->port.link = link;
  return board_plug_in(board) ? NULL : "no pseudo-terminal can be opened, or its link cannot be made";
}

bool board_plug_in(struct board *board) {
  board_reset(board, RESET_POWER_ON);
  board->is_plugged_in = true;
  return serial_port_plug(&board->port);
}

void board_unplug(struct board *board) {
  board->is_plugged_in = false;
  serial_port_unplug(&board->port);
}

double board_time_s(const struct board *board) {
  return (double)board->avr->cycle / CLOCK_HZ;
}

double board_last_line_s(const struct board *board) {
  return (double)board->port.last_line_at / CLOCK_HZ;
}

static void note_stack(struct board *board) {
  const avr_t *avr = board->avr;
  const unsigned pointer = (unsigned)avr->data[R_SPH] << 8 | avr->data[R_SPL];
  if (pointer <= avr->ramend && avr->ramend - pointer > board->deepest_stack) {
    board->deepest_stack = avr->ramend - pointer;
  }
}

bool board_run_ms(struct board *board, unsigned ms) {
  const avr_cycle_count_t end = board->avr->cycle + (avr_cycle_count_t)ms * (CLOCK_HZ / 1000);
  while (board->avr->cycle < end) {
    const int state = avr_run(board->avr);
    if (state == cpu_Done || state == cpu_Crashed) return false;
    note_stack(board);
  }
  return true;
}

void board_reset(struct board *board, enum board_reset cause) {
  avr_reset(board->avr);
  board->avr->data[MCUSR_ADDRESS] = (uint8_t)cause;
}

void board_hang(struct board *board) {
  board->avr->sreg[S_I] = 0;
  board->avr->state = cpu_Running; /* awake, if it slept */
  board->avr->pc = endless_loop(board);
}

void board_set_supply_mV(struct board *board, unsigned supply_mV) {
  board->avr->vcc = board->avr->avcc = board->avr->aref = supply_mV;
}
