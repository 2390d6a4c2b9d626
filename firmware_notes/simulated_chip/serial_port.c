#define _GNU_SOURCE
#include "serial_port.h"

#include <fcntl.h>
#include <poll.h>
#include <pty.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

#include <simavr/sim_io.h>

static void note_line_end(struct serial_port *port, uint8_t byte) {
  if (byte != '\n') return;
  port->lines_sent++;
  port->last_line_at = port->avr->cycle;
}

static void on_byte_sent(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq;
  struct serial_port *port = param;
  uint8_t byte = (uint8_t)value;
  note_line_end(port, byte);
  if (random_happens(&port->faults, port->drop_probability)) return;
  if (random_happens(&port->faults, port->flip_probability)) byte ^= 1 << random_below(&port->faults, 8);
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

static bool open_terminal(struct serial_port *port) {
  int program_end;
  struct termios settings;
  if (openpty(&port->terminal, &program_end, port->path, NULL, NULL) != 0) return false;
  tcgetattr(program_end, &settings);
  cfmakeraw(&settings); /* bytes pass as they are, without echo */
  const bool is_raw = tcsetattr(program_end, TCSANOW, &settings) == 0;
  close(program_end); /* so that it shows when a reader opens it */
  return is_raw && fcntl(port->terminal, F_SETFL, O_NONBLOCK) == 0;
}

static void connect_uart(struct serial_port *port) {
  uint32_t no_flags = 0; /* no echo to the console, no sleeping inside the simulator */
  avr_ioctl(port->avr, AVR_IOCTL_UART_SET_FLAGS('0'), &no_flags);
  port->uart = avr_io_getirq(port->avr, AVR_IOCTL_UART_GETIRQ('0'), 0);
  avr_irq_register_notify(port->uart + UART_IRQ_OUTPUT, on_byte_sent, port);
  avr_irq_register_notify(port->uart + UART_IRQ_OUT_XON, on_room, port);
  avr_irq_register_notify(port->uart + UART_IRQ_OUT_XOFF, on_no_room, port);
}

bool serial_port_open(struct serial_port *port, avr_t *avr, unsigned seed) {
  port->avr = avr;
  port->faults = random_seeded(seed, RANDOM_LINE_FAULTS);
  connect_uart(port);
  return open_terminal(port);
}

bool serial_port_has_reader(const struct serial_port *port) {
  struct pollfd state = {.fd = port->terminal};
  return poll(&state, 1, 0) >= 0 && !(state.revents & POLLHUP);
}

void serial_port_flush(struct serial_port *port) {
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
  if (port->chip_listens && read(port->terminal, &byte, 1) == 1) avr_raise_irq(port->uart + UART_IRQ_INPUT, byte);
}
