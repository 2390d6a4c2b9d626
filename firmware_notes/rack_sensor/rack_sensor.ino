// Rack sensor: the reference sketch for a 5 V ATmega328P board beside a drying rack.
//
// Once a second it sends one checked line with the temperature and humidity of the room air, the voltage of
// the air-speed bead on A0 and the supply voltage. ../README.md describes the lines, the wiring and the cautions.
// It needs no library beyond those that come with the board's own package.

#include <avr/sleep.h>
#include <avr/wdt.h>

#include "boot_record.h"
#include "climate.h"
#include "i2c_bus.h"
#include "voltage.h"
#include "wire_line.h"

namespace {

constexpr uint32_t kBaud = 9600;
constexpr uint16_t kPeriod_ms = 1000;
constexpr uint16_t kFirstLineAfter_ms = 200;
constexpr uint8_t kHelloEveryLines = 60;
constexpr uint8_t kWakesPerBeadReading = 4;  // of about 1 ms each: some 200 readings in a line's mean

boot_record::Identity identity;
uint32_t sequence = 0;          // numbers D and E lines since boot
uint8_t linesSinceHello = 0;
uint32_t nextLineDue_ms = 0;
bool busWasStuck = false;       // and its error line was sent

const __FlashStringHelper *sensorName() {
  switch (climate::sensor().kind) {
    case climate::Kind::sht4x: return F("sht4x");
    case climate::Kind::sht3x: return F("sht3x");
    case climate::Kind::aht20: return F("aht20");
    default: return F("none");
  }
}

const __FlashStringHelper *faultCode(climate::Fault fault) {
  switch (fault) {
    case climate::Fault::noAnswer: return F("nak");
    case climate::Fault::badChecksum: return F("crc");
    case climate::Fault::stillBusy: return F("busy");
    case climate::Fault::busStuck: return F("bus");
    default: return F("none");
  }
}

const __FlashStringHelper *howBusIsStuck() {
  switch (i2c_bus::lastStuck()) {
    case i2c_bus::Stuck::dataLow: return F("sda_low");
    case i2c_bus::Stuck::clockLow: return F("scl_low");
    default: return F("timeout");
  }
}

void sendHello() {
  wire_line::begin('H');
  wire_line::whole(F("v"), 1);
  wire_line::hex(F("id"), identity.board);
  wire_line::token(F("fw"), F("rack-ref/0.3"));
  wire_line::whole(F("b"), identity.boots);
  wire_line::letter(F("r"), boot_record::resetCause());
  wire_line::token(F("th"), sensorName());
  wire_line::hex(F("sn"), climate::sensor().serial);
  wire_line::whole(F("per"), kPeriod_ms);
  wire_line::token(F("ch"), F("t:Cel,h:%RH,a:mV,s:mV"));
  wire_line::end();
  linesSinceHello = 0;
}

void beginNumberedLine(char kind) {
  wire_line::begin(kind);
  wire_line::whole(F("n"), sequence++);
  wire_line::whole(F("u"), millis());
  linesSinceHello++;
}

void sendData(const climate::Reading &air) {
  const float supply_mV = voltage::supply_mV();
  const float bead_mV = voltage::takeBeadMean() * supply_mV;

  beginNumberedLine('D');
  if (air.fault == climate::Fault::none) {
    wire_line::number(F("t"), air.temperature_C, 2);
    wire_line::number(F("h"), air.humidity_pct, 2);
  } else {
    wire_line::fault(F("t"), faultCode(air.fault));
    wire_line::fault(F("h"), faultCode(air.fault));
  }
  wire_line::number(F("a"), bead_mV, 1);
  wire_line::number(F("s"), supply_mV, 0);
  wire_line::end();
}

// One error line when the bus becomes stuck, not one a second: the data lines go on saying it.
void reportStuckBus(climate::Fault fault) {
  const bool isStuck = fault == climate::Fault::busStuck;
  if (isStuck && !busWasStuck) {
    beginNumberedLine('E');
    wire_line::token(F("c"), F("bus"));
    wire_line::token(F("m"), howBusIsStuck());
    wire_line::end();
  }
  busWasStuck = isStuck;
}

// Looks for a sensor again; a hello follows a change, because the calibration goes with the sensor's serial.
void findSensor() {
  const climate::Sensor before = climate::sensor();
  climate::probe();
  if (climate::sensor() != before) sendHello();
}

// Averages the bead over the whole second, asleep between readings, and answers '?' meanwhile.
void waitUntilLineIsDue() {
  uint8_t wakes = 0;
  do {
    wdt_reset();
    if (wakes++ % kWakesPerBeadReading == 0) voltage::sampleBead();
    if (Serial.available() && Serial.read() == '?') sendHello();
    sleep_mode();  // the millisecond timer wakes the chip
  } while (static_cast<int32_t>(millis() - nextLineDue_ms) < 0);
  nextLineDue_ms += kPeriod_ms;
}

}  // namespace

void setup() {
  wdt_enable(WDTO_2S);
  Serial.begin(kBaud);
  i2c_bus::begin();
  voltage::begin();
  climate::probe();
  identity = boot_record::countThisBoot(climate::sensor().serial);
  Serial.print(F("\r\n"));  // ends whatever line a reset cut short
  sendHello();
  nextLineDue_ms = millis() + kFirstLineAfter_ms;
}

void loop() {
  waitUntilLineIsDue();
  if (linesSinceHello >= kHelloEveryLines) sendHello();

  const climate::Reading air = climate::measure();
  sendData(air);
  reportStuckBus(air.fault);
  if (air.fault != climate::Fault::none) findSensor();
}
