#include "voltage.h"

namespace {

constexpr uint8_t kBeadPin = A0;
constexpr float kReference_mV = 1100;    // band gap, 1.0 to 1.2 V, ATmega328P data sheet
constexpr uint8_t kBandGapChannel = 0x0E;
constexpr float kFullScale = 1024;
constexpr uint8_t kSupplyReadings = 64;
constexpr uint16_t kSettle_us = 1000;    // after the multiplexer moves to the band gap

uint32_t beadSum = 0;
uint16_t beadReadings = 0;

uint16_t convert() {
  ADCSRA |= _BV(ADSC);
  while (ADCSRA & _BV(ADSC)) {
  }
  return ADC;
}

}  // namespace

void voltage::begin() {
  analogRead(kBeadPin);  // the first conversion after power-up is off
}

float voltage::supply_mV() {
  ADMUX = _BV(REFS0) | kBandGapChannel;
  delayMicroseconds(kSettle_us);
  uint32_t sum = 0;
  for (uint8_t i = 0; i < kSupplyReadings; i++) sum += convert();
  analogRead(kBeadPin);  // moves the multiplexer back; its first reading is off
  return kReference_mV * kFullScale * kSupplyReadings / sum;
}

void voltage::sampleBead() {
  beadSum += analogRead(kBeadPin);
  beadReadings++;
}

float voltage::takeBeadMean() {
  const float mean = beadSum / (kFullScale * beadReadings);
  beadSum = 0;
  beadReadings = 0;
  return mean;
}
