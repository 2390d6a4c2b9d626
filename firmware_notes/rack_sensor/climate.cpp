#include "climate.h"

#include "i2c_bus.h"

using climate::Fault;
using climate::Kind;
using climate::Reading;
using i2c_bus::Outcome;

namespace {

constexpr uint8_t kShtAddress = 0x44;
constexpr uint8_t kAhtAddress = 0x38;
constexpr uint8_t kPowerUp_ms = 40;  // AHT20, the slowest of the three

struct Command {
  uint8_t bytes[3];
  uint8_t count;
  uint8_t wait_ms;  // until the answer is ready
};

constexpr Command kSht4Serial = {{0x89}, 1, 2};
constexpr Command kSht4Measure = {{0xFD}, 1, 10};              // high precision: 8.3 ms at most
constexpr Command kSht3Serial = {{0x37, 0x80}, 2, 2};
constexpr Command kSht3Measure = {{0x24, 0x00}, 2, 20};        // high repeatability: 15.5 ms at most
constexpr Command kAhtInitialise = {{0xBE, 0x08, 0x00}, 3, 10};
constexpr Command kAhtMeasure = {{0xAC, 0x33, 0x00}, 3, 85};   // 80 ms

constexpr uint8_t kShtFrame = 6;  // two words, each of two bytes and its checksum
constexpr uint8_t kAhtFrame = 7;  // status, five bytes of values, checksum
constexpr uint8_t kAhtBusy = 0x80;
constexpr uint8_t kAhtCalibrated = 0x08;

climate::Sensor present = {Kind::none, 0};

// CRC-8, polynomial 0x31, start value 0xFF: the same in all three sensors.
uint8_t crc8(const uint8_t *bytes, uint8_t count) {
  uint8_t crc = 0xFF;
  while (count--) {
    crc ^= *bytes++;
    for (uint8_t bit = 0; bit < 8; bit++) crc = (crc & 0x80) ? (crc << 1) ^ 0x31 : crc << 1;
  }
  return crc;
}

Fault faultOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::ok: return Fault::none;
    case Outcome::stuck: return Fault::busStuck;
    default: return Fault::noAnswer;
  }
}

Fault ask(uint8_t address, const Command &command, uint8_t *answer, uint8_t count) {
  const Outcome sent = i2c_bus::send(address, command.bytes, command.count);
  if (sent != Outcome::ok) return faultOf(sent);
  delay(command.wait_ms);
  return faultOf(i2c_bus::fetch(address, answer, count));
}

Fault askSht(const Command &command, uint16_t words[2]) {
  uint8_t frame[kShtFrame];
  const Fault fault = ask(kShtAddress, command, frame, kShtFrame);
  if (fault != Fault::none) return fault;
  for (uint8_t i = 0; i < 2; i++) {
    const uint8_t *word = frame + 3 * i;
    if (crc8(word, 2) != word[2]) return Fault::badChecksum;
    words[i] = static_cast<uint16_t>(word[0]) << 8 | word[1];
  }
  return Fault::none;
}

bool answersAsSht(const Command &readSerial, uint32_t *serial) {
  uint16_t words[2];
  if (askSht(readSerial, words) != Fault::none) return false;
  *serial = static_cast<uint32_t>(words[0]) << 16 | words[1];
  return true;
}

bool answersAsAht() {
  uint8_t status;
  if (i2c_bus::fetch(kAhtAddress, &status, 1) != Outcome::ok) return false;
  if (!(status & kAhtCalibrated)) {
    i2c_bus::send(kAhtAddress, kAhtInitialise.bytes, kAhtInitialise.count);
    delay(kAhtInitialise.wait_ms);
  }
  return true;
}

climate::Sensor find() {
  uint32_t serial;
  if (answersAsSht(kSht4Serial, &serial)) return {Kind::sht4x, serial};
  if (answersAsSht(kSht3Serial, &serial)) return {Kind::sht3x, serial};
  if (answersAsAht()) return {Kind::aht20, 0};
  return {Kind::none, 0};
}

bool isBusStuck() {
  return i2c_bus::lastStuck() != i2c_bus::Stuck::no;
}

Reading measureSht(const Command &command, float humidityOffset_pct, float humiditySpan_pct) {
  uint16_t words[2];
  const Fault fault = askSht(command, words);
  if (fault != Fault::none) return {fault, 0, 0};
  const float temperature_C = -45 + 175 * (words[0] / 65535.0);
  const float humidity_pct = humidityOffset_pct + humiditySpan_pct * (words[1] / 65535.0);
  return {Fault::none, temperature_C, humidity_pct};
}

Reading measureAht() {
  uint8_t frame[kAhtFrame];
  const Fault fault = ask(kAhtAddress, kAhtMeasure, frame, kAhtFrame);
  if (fault != Fault::none) return {fault, 0, 0};
  if (frame[0] & kAhtBusy) return {Fault::stillBusy, 0, 0};
  if (crc8(frame, kAhtFrame - 1) != frame[kAhtFrame - 1]) return {Fault::badChecksum, 0, 0};

  // Two values of 20 bits share the byte in the middle.
  const uint32_t humidity =
      static_cast<uint32_t>(frame[1]) << 12 | static_cast<uint32_t>(frame[2]) << 4 | frame[3] >> 4;
  const uint32_t temperature =
      static_cast<uint32_t>(frame[3] & 0x0F) << 16 | static_cast<uint32_t>(frame[4]) << 8 | frame[5];
  constexpr float kFullScale = 1048576;  // 2^20
  return {Fault::none, -50 + 200 * (temperature / kFullScale), 100 * (humidity / kFullScale)};
}

}  // namespace

void climate::probe() {
  delay(kPowerUp_ms);
  const Sensor found = find();
  if (found.kind == Kind::none && isBusStuck()) return;  // says nothing about what is connected
  present = found;
}

const climate::Sensor &climate::sensor() {
  return present;
}

Reading climate::measure() {
  switch (present.kind) {
    case Kind::sht4x: return measureSht(kSht4Measure, -6, 125);
    case Kind::sht3x: return measureSht(kSht3Measure, 0, 100);
    case Kind::aht20: return measureAht();
    default: return {isBusStuck() ? Fault::busStuck : Fault::noSensor, 0, 0};
  }
}
