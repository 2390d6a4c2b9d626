#define _GNU_SOURCE
#include "serial_port.h"

#include <fcntl.h>
#include <math.h>
#include <poll.h>
#include <pty.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

#include <simavr/sim_io.h>

enum { /* the port's registers in the ATmega328P */
  UCSR0A_ADDRESS = 0xC0,
  UCSR0A_DOUBLE_SPEED = 1 << 1,
  UBRR0L_ADDRESS = 0xC4,
  UBRR0H_ADDRESS = 0xC5,
};

static const struct {
  speed_t code;
  unsigned baud;
} SPEEDS[] = {
    {B1200, 1200},   {B2400, 2400},   {B4800, 4800},     {B9600, 9600},
    {B19200, 19200}, {B38400, 38400}, {B57600, 57600},   {B115200, 115200},
};

/* Cycles for each step of the divider, "Baud Rate Generation" in the data sheet. */
static unsigned divider_step(const struct serial_port *port) {
  return port->avr->data[UCSR0A_ADDRESS] & UCSR0A_DOUBLE_SPEED ? 8 : 16;
}

static double chip_bit(const struct serial_port *port) {
  const unsigned divider = (unsigned)port->avr->data[UBRR0H_ADDRESS] << 8 | port->avr->data[UBRR0L_ADDRESS];
  return divider_step(port) * (divider + 1.0);
}

static void on_byte_sent(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq;
  struct serial_port *port = param;
  uint8_t byte = (uint8_t)value;
  if (random_happens(&port->faults, port->drop_probability)) return;
  if (random_happens(&port->faults, port->flip_probability)) byte ^= 1 << random_below(&port->faults, 8);
  line_send(&port->line, byte, (double)port->avr->cycle, chip_bit(port), port->program_bit);
}

static void on_byte_received(void *param, uint8_t byte) {
  struct serial_port *port = param;
  if (byte == '\n') {
    port->lines_sent++;
    port->last_line_at = port->avr->cycle;
  }
  if (port->queued < SERIAL_QUEUE_SIZE) port->queue[port->queued++] = byte;
}

static void on_room(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq, (void)value;
  ((struct serial_port *)param)->chip_listens = true;
}

static void on_no_room(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq, (void)value;
  ((struct serial_port *)param)->chip_listens = false;
}

/* 8N1 bears about 5 %: the last of ten bits must still be sampled inside itself. */
static bool speeds_agree(const struct serial_port *port) {
  return fabs(chip_bit(port) / port->program_bit - 1) < 0.05;
}

static void read_program_speed(struct serial_port *port) {
  struct termios settings;
  if (tcgetattr(port->terminal, &settings) != 0) return;
  const speed_t speed = cfgetospeed(&settings);
  for (size_t i = 0; i < sizeof SPEEDS / sizeof *SPEEDS; i++) {
    if (SPEEDS[i].code == speed) port->program_bit = (double)port->avr->frequency / SPEEDS[i].baud;
  }
}

static bool open_terminal(struct serial_port *port) {
  int program_end;
  struct termios settings;
  if (openpty(&port->terminal, &program_end, port->path, NULL, NULL) != 0) return false;
  tcgetattr(program_end, &settings);
  cfmakeraw(&settings); /* bytes pass as they are, without echo */
  cfsetspeed(&settings, B9600);
  const bool is_raw = tcsetattr(program_end, TCSANOW, &settings) == 0;
  close(program_end); /* so that it shows when a reader opens it */
  return is_raw && fcntl(port->terminal, F_SETFL, O_NONBLOCK) == 0;
}

void serial_port_connect(struct serial_port *port, avr_t *avr, unsigned seed) {
  port->avr = avr;
  port->terminal = -1;
  port->faults = random_seeded(seed, RANDOM_LINE_FAULTS);
  line_connect(&port->line, on_byte_received, port);

  uint32_t no_flags = 0; /* no echo to the console, no sleeping inside the simulator */
  avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &no_flags);
  port->uart = avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), 0);
  avr_irq_register_notify(port->uart + UART_IRQ_OUTPUT, on_byte_sent, port);
  avr_irq_register_notify(port->uart + UART_IRQ_OUT_XON, on_room, port);
  avr_irq_register_notify(port->uart + UART_IRQ_OUT_XOFF, on_no_room, port);
}

bool serial_port_plug(struct serial_port *port) {
  if (!open_terminal(port)) return false;
  read_program_speed(port);
  return !port->link || symlink(port->path, port->link) == 0;
}

void serial_port_unplug(struct serial_port *port) {
  if (port->terminal < 0) return;
  if (port->link) unlink(port->link);
  close(port->terminal);
  port->terminal = -1;
  port->queued = 0;
}

void serial_port_set_chip_baud(struct serial_port *port, unsigned baud) {
  avr_t *avr = port->avr;
  const unsigned step = divider_step(port) * baud;
  const unsigned divider = (avr->frequency + step / 2) / step - 1; /* to the nearest */
  avr->data[UBRR0H_ADDRESS] = (uint8_t)(divider >> 8);
  const int low = AVR_DATA_TO_IO(UBRR0L_ADDRESS);
  avr->io[low].w.c(avr, UBRR0L_ADDRESS, (uint8_t)divider, avr->io[low].w.param);
}

bool serial_port_has_reader(const struct serial_port *port) {
  struct pollfd state = {.fd = port->terminal};
  return poll(&state, 1, 0) >= 0 && !(state.revents & POLLHUP);
}

void serial_port_flush(struct serial_port *port) {
  read_program_speed(port);
  line_idle(&port->line, (double)port->avr->cycle, port->program_bit);
  if (port->queued == 0) return;
  if (!serial_port_has_reader(port)) {
    port->queued = 0;
    return;
  }
  const ssize_t taken = write(port->terminal, port->queue, port->queued);
  if (taken <= 0) return; /* full: what is queued is tried again */
  port->queued -= (size_t)taken;
  memmove(port->queue, port->queue + taken, port->queued);
}

void serial_port_hear(struct serial_port *port) {
  uint8_t byte;
  if (!port->chip_listens || read(port->terminal, &byte, 1) != 1) return;
  if (speeds_agree(port)) avr_raise_irq(port->uart + UART_IRQ_INPUT, byte); /* else no byte that means anything */
}
