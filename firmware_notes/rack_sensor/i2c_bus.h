// The two-wire bus to the temperature and humidity chip. A stuck bus costs a timeout, never the sketch.
#pragma once

#include <Arduino.h>

namespace i2c_bus {

enum class Outcome : uint8_t { ok, noAnswer, stuck };

void begin();
Outcome send(uint8_t address, const uint8_t *bytes, uint8_t count);
Outcome fetch(uint8_t address, uint8_t *bytes, uint8_t count);
bool isStuck();  // the last exchange timed out

}  // namespace i2c_bus
