// Temperature and humidity from an SHT4x, SHT3x or AHT20, whichever answers.
// Addresses, commands, waits and formulas are those of their data sheets.
#pragma once

#include <Arduino.h>

namespace climate {

enum class Kind : uint8_t { none, sht4x, sht3x, aht20 };
enum class Fault : uint8_t { none, noSensor, noAnswer, badChecksum, stillBusy, busStuck };

struct Sensor {
  Kind kind;
  uint32_t serial;  // 0 for a sensor that has none
};

struct Reading {
  Fault fault;         // the numbers mean something only without a fault
  float temperature_C;
  float humidity_pct;
};

void probe();  // looks for a sensor; a stuck bus leaves the last one found in its place
const Sensor &sensor();
Reading measure();

inline bool operator!=(const Sensor &a, const Sensor &b) {
  return a.kind != b.kind || a.serial != b.serial;
}

}  // namespace climate
