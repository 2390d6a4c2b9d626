#include "climate_sensor.h"

#include <math.h>
#include <string.h>

#include <simavr/sim_io.h>
#include <simavr/sim_time.h>

enum {
  READ_BIT = 0x01,         /* of the address byte */
  AHT_BUSY = 0x80,
  AHT_IDLE_CALIBRATED = 0x1C,
};

struct sensor_model {
  const char *name;
  uint8_t address;
  bool refuses_early_reads; /* does not acknowledge until its answer is ready; the other kind says "busy" */
  void (*obey)(struct climate_sensor *);
};

/* CRC-8, polynomial 0x31, start value 0xFF. */
static uint8_t crc8(const uint8_t *bytes, int count) {
  uint8_t crc = 0xFF;
  for (int i = 0; i < count; i++) {
    crc ^= bytes[i];
    for (int bit = 0; bit < 8; bit++) crc = (crc & 0x80) ? (uint8_t)(crc << 1) ^ 0x31 : (uint8_t)(crc << 1);
  }
  return crc;
}

bool climate_sensor_checksum_is_right(void) {
  return crc8((const uint8_t[]){0xBE, 0xEF}, 2) == 0x92; /* SHT3x and SHT4x data sheets, section on the CRC */
}

static long scaled(double value, double low, double span, long full_scale) {
  const long raw = lrint((value - low) / span * full_scale);
  return raw < 0 ? 0 : raw > full_scale ? full_scale : raw;
}

static void put_word(uint8_t *at, unsigned word) {
  at[0] = (uint8_t)(word >> 8);
  at[1] = (uint8_t)word;
  at[2] = crc8(at, 2);
}

static void answer_words(struct climate_sensor *sensor, unsigned first, unsigned second) {
  put_word(sensor->answer, first);
  put_word(sensor->answer + 3, second);
  sensor->answer_count = 6;
}

static void ready_after_us(struct climate_sensor *sensor, unsigned us) {
  sensor->ready_at = sensor->avr->cycle + avr_usec_to_cycles(sensor->avr, us);
}

/* Gives a measurement: the recorded frame if there is one, else what `make` works out from the room. */
static void measure(struct climate_sensor *sensor, unsigned duration_us, void (*make)(struct climate_sensor *)) {
  if (sensor->recorded_count > 0) {
    memcpy(sensor->answer, sensor->recorded, sizeof sensor->answer);
    sensor->answer_count = sensor->recorded_count;
  } else {
    make(sensor);
  }
  if (sensor->bad_checksums > 0) {
    sensor->bad_checksums--;
    sensor->answer[sensor->answer_count - 1] ^= 0x10;
  }
  ready_after_us(sensor, duration_us + sensor->late_us);
}

static unsigned sht_temperature(const struct climate_sensor *sensor) {
  return (unsigned)scaled(sensor->temperature_C, -45, 175, 65535);
}

static void make_sht4x(struct climate_sensor *sensor) {
  answer_words(sensor, sht_temperature(sensor), (unsigned)scaled(sensor->humidity_pct, -6, 125, 65535));
}

static void make_sht3x(struct climate_sensor *sensor) {
  answer_words(sensor, sht_temperature(sensor), (unsigned)scaled(sensor->humidity_pct, 0, 100, 65535));
}

static void make_aht20(struct climate_sensor *sensor) {
  const long full_scale = 1 << 20;
  const long humidity = scaled(sensor->humidity_pct, 0, 100, full_scale - 1);
  const long temperature = scaled(sensor->temperature_C, -50, 200, full_scale - 1);
  const uint8_t frame[] = {
      AHT_IDLE_CALIBRATED,
      (uint8_t)(humidity >> 12),
      (uint8_t)(humidity >> 4),
      (uint8_t)(humidity << 4 | temperature >> 16), /* the two values share a byte */
      (uint8_t)(temperature >> 8),
      (uint8_t)temperature,
  };
  memcpy(sensor->answer, frame, sizeof frame);
  sensor->answer[6] = crc8(frame, sizeof frame);
  sensor->answer_count = 7;
}

static bool command_is(const struct climate_sensor *sensor, const uint8_t *bytes, int count) {
  return sensor->command_count == count && memcmp(sensor->command, bytes, (size_t)count) == 0;
}
#define COMMAND_IS(sensor, ...) \
  command_is(sensor, (const uint8_t[]){__VA_ARGS__}, (int)sizeof((const uint8_t[]){__VA_ARGS__}))

static void obey_sht4x(struct climate_sensor *sensor) {
  if (COMMAND_IS(sensor, 0x89)) {
    answer_words(sensor, 0xCAFE, 0x0042); /* serial number */
  } else if (COMMAND_IS(sensor, 0xFD)) {
    measure(sensor, 8300, make_sht4x);
  }
}

static void obey_sht3x(struct climate_sensor *sensor) {
  if (COMMAND_IS(sensor, 0x37, 0x80)) {
    answer_words(sensor, 0xBEEF, 0x0031); /* serial number */
  } else if (COMMAND_IS(sensor, 0x24, 0x00)) {
    measure(sensor, 15500, make_sht3x);
  }
}

static void obey_aht20(struct climate_sensor *sensor) {
  if (COMMAND_IS(sensor, 0xAC, 0x33, 0x00)) measure(sensor, 80000, make_aht20);
}

static const struct sensor_model MODELS[] = {
    {.name = "sht4x", .address = 0x44, .refuses_early_reads = true, .obey = obey_sht4x},
    {.name = "sht3x", .address = 0x44, .refuses_early_reads = true, .obey = obey_sht3x},
    {.name = "aht20", .address = 0x38, .refuses_early_reads = false, .obey = obey_aht20},
};

bool climate_sensor_select(struct climate_sensor *sensor, const char *model_name) {
  const struct sensor_model *found = NULL;
  for (size_t i = 0; i < sizeof MODELS / sizeof *MODELS; i++) {
    if (strcmp(MODELS[i].name, model_name) == 0) found = &MODELS[i];
  }
  if (!found && strcmp(model_name, "none") != 0) return false;
  sensor->model = found;
  sensor->answer_count = 0;
  return true;
}

static bool is_ready(const struct climate_sensor *sensor) {
  return sensor->answer_count > 0 && sensor->avr->cycle >= sensor->ready_at;
}

static void acknowledge(struct climate_sensor *sensor) {
  avr_raise_irq(sensor->bus + TWI_IRQ_INPUT, avr_twi_irq_msg(TWI_COND_ACK, sensor->selected, 1));
}

static void on_start(struct climate_sensor *sensor, uint8_t address_byte) {
  sensor->selected = 0;
  sensor->command_count = 0;
  if (!sensor->model || address_byte >> 1 != sensor->model->address) return;
  if ((address_byte & READ_BIT) && sensor->model->refuses_early_reads && !is_ready(sensor)) return;
  sensor->selected = address_byte;
  sensor->answer_next = 0;
  acknowledge(sensor);
}

static void on_stop(struct climate_sensor *sensor) {
  const bool was_command = sensor->selected && !(sensor->selected & READ_BIT) && sensor->command_count > 0;
  if (was_command && sensor->model) {
    sensor->answer_count = 0;
    sensor->ready_at = sensor->avr->cycle;
    sensor->model->obey(sensor);
  }
  sensor->selected = 0;
  sensor->command_count = 0;
}

static void on_write(struct climate_sensor *sensor, uint8_t byte) {
  acknowledge(sensor);
  if (sensor->command_count < SENSOR_COMMAND_MAX) sensor->command[sensor->command_count++] = byte;
}

static uint8_t next_answer_byte(struct climate_sensor *sensor) {
  const int at = sensor->answer_next++;
  if (!is_ready(sensor)) { /* only an AHT20 is read early: it gives its status */
    return at > 0 ? 0xFF : sensor->answer_count > 0 ? AHT_BUSY | AHT_IDLE_CALIBRATED : AHT_IDLE_CALIBRATED;
  }
  return at < sensor->answer_count ? sensor->answer[at] : 0xFF;
}

static void on_read(struct climate_sensor *sensor) {
  const uint8_t byte = next_answer_byte(sensor);
  avr_raise_irq(sensor->bus + TWI_IRQ_INPUT, avr_twi_irq_msg(TWI_COND_READ, sensor->selected, byte));
}

static void on_bus(avr_irq_t *irq, uint32_t value, void *param) {
  (void)irq;
  struct climate_sensor *sensor = param;
  const avr_twi_msg_t message = ((avr_twi_msg_irq_t){.u.v = value}).u.twi;
  if (message.msg & TWI_COND_STOP) on_stop(sensor);
  if (message.msg & TWI_COND_START) on_start(sensor, message.addr);
  if (!sensor->selected) return;
  if (message.msg & TWI_COND_WRITE) on_write(sensor, message.data);
  if (message.msg & TWI_COND_READ) on_read(sensor);
}

void climate_sensor_connect(struct climate_sensor *sensor, avr_t *avr) {
  sensor->avr = avr;
  sensor->bus = avr_io_getirq(avr, AVR_IOCTL_TWI_GETIRQ(0), 0);
  avr_irq_register_notify(sensor->bus + TWI_IRQ_OUTPUT, on_bus, sensor);
}
