#include "i2c_bus.h"

#include <Wire.h>

namespace {

constexpr uint32_t kTimeout_us = 25000;  // longest clock stretch that SMBus allows
constexpr uint8_t kClearPulses = 9;      // bus clear, I2C-bus specification UM10204 section 3.1.16
constexpr uint8_t kHalfPulse_us = 5;     // 100 kHz

// Pulls a line low, or lets the pull-up raise it: never drives it high.
void hold(uint8_t pin, bool low) {
  digitalWrite(pin, low ? LOW : HIGH);
  pinMode(pin, low ? OUTPUT : INPUT_PULLUP);
  delayMicroseconds(kHalfPulse_us);
}

// A chip that was cut off in the middle of a byte holds the data line; clocking lets it finish.
void clear() {
  Wire.end();
  for (uint8_t pulse = 0; pulse < kClearPulses; pulse++) {
    hold(SCL, true);
    hold(SCL, false);
  }
  i2c_bus::begin();
}

bool lastTimedOut = false;

// Says how an exchange ended, and frees the bus if it is stuck.
i2c_bus::Outcome outcome(bool succeeded) {
  lastTimedOut = Wire.getWireTimeoutFlag();
  if (lastTimedOut) {
    Wire.clearWireTimeoutFlag();
    clear();
    return i2c_bus::Outcome::stuck;
  }
  return succeeded ? i2c_bus::Outcome::ok : i2c_bus::Outcome::noAnswer;
}

}  // namespace

void i2c_bus::begin() {
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

bool i2c_bus::isStuck() {
  return lastTimedOut;
}
