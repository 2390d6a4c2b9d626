#include "i2c_bus.h"

#include <Wire.h>

namespace {

constexpr uint32_t kTimeout_us = 25000;  // longest clock stretch that SMBus allows
constexpr uint8_t kClearPulses = 9;      // bus clear, I2C-bus specification UM10204 section 3.1.16
constexpr uint8_t kHalfPulse_us = 5;     // 100 kHz

i2c_bus::Stuck stuck = i2c_bus::Stuck::no;

// A line is pulled low, or let go for the pull-ups to raise: never driven high.
void pullLow(uint8_t pin) {
  digitalWrite(pin, LOW);
  pinMode(pin, OUTPUT);
  delayMicroseconds(kHalfPulse_us);
}

void letGo(uint8_t pin) {
  pinMode(pin, INPUT_PULLUP);
  delayMicroseconds(kHalfPulse_us);
}

i2c_bus::Stuck heldLine() {
  if (digitalRead(SCL) == LOW) return i2c_bus::Stuck::clockLow;
  if (digitalRead(SDA) == LOW) return i2c_bus::Stuck::dataLow;
  return i2c_bus::Stuck::hung;
}

// A chip that was cut off in the middle of a byte holds the data line: clocking lets it finish, a stop ends it.
void clear() {
  for (uint8_t pulse = 0; pulse < kClearPulses && digitalRead(SDA) == LOW; pulse++) {
    pullLow(SCL);
    letGo(SCL);
  }
  pullLow(SCL);
  pullLow(SDA);
  letGo(SCL);
  letGo(SDA);
}

// Says how an exchange ended, and frees the bus if it is stuck.
i2c_bus::Outcome outcome(bool succeeded) {
  if (!Wire.getWireTimeoutFlag()) {
    stuck = i2c_bus::Stuck::no;
    return succeeded ? i2c_bus::Outcome::ok : i2c_bus::Outcome::noAnswer;
  }
  Wire.end();
  letGo(SCL);
  letGo(SDA);
  stuck = heldLine();
  i2c_bus::begin();
  return i2c_bus::Outcome::stuck;
}

}  // namespace

void i2c_bus::begin() {
  letGo(SCL);
  letGo(SDA);
  clear();
  Wire.begin();
  Wire.setWireTimeout(kTimeout_us, true);
}

i2c_bus::Outcome i2c_bus::send(uint8_t address, const uint8_t *bytes, uint8_t count) {
  Wire.beginTransmission(address);
  Wire.write(bytes, count);
  return outcome(Wire.endTransmission() == 0);
}

i2c_bus::Outcome i2c_bus::fetch(uint8_t address, uint8_t *bytes, uint8_t count) {
  const bool isComplete = Wire.requestFrom(address, count) == count;
  for (uint8_t i = 0; isComplete && i < count; i++) bytes[i] = Wire.read();
  return outcome(isComplete);
}

i2c_bus::Stuck i2c_bus::lastStuck() {
  return stuck;
}
