// The two-wire bus to the temperature and humidity chip. A stuck bus costs a timeout, never the sketch.
#pragma once

#include <Arduino.h>

namespace i2c_bus {

enum class Outcome : uint8_t { ok, noAnswer, stuck };
enum class Stuck : uint8_t { no, dataLow, clockLow, hung };  // hung: neither line is held, yet nothing goes on

void begin();  // also frees a chip that a reset cut off in the middle of a byte
Outcome send(uint8_t address, const uint8_t *bytes, uint8_t count);
Outcome fetch(uint8_t address, uint8_t *bytes, uint8_t count);
Stuck lastStuck();  // how the bus was stuck in the last exchange

}  // namespace i2c_bus
