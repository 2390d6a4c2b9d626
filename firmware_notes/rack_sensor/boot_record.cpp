#include "boot_record.h"

#include <EEPROM.h>
#include <avr/wdt.h>

namespace {

constexpr int kMarkAt = 0;
constexpr int kBoardAt = 1;
constexpr int kBootsAt = 5;
constexpr uint8_t kWritten = 0xA5;

uint8_t resetFlags __attribute__((section(".noinit")));

// Runs before main: the flags must be read, and the watchdog of the last run stopped, before anything takes time.
void keepResetFlags() __attribute__((naked, used, section(".init3")));
void keepResetFlags() {
  resetFlags = MCUSR;
  MCUSR = 0;
  wdt_disable();
}

// Stirs the noise of open pins and of the clock into a number that no other board is likely to draw.
uint32_t drawBoardId(uint32_t seed) {
  uint32_t id = seed;
  for (uint8_t i = 0; i < 64; i++) {
    id = (id << 5 | id >> 27) * 2654435761UL;  // 2^32 divided by the golden ratio: spreads the bits
    id ^= analogRead(A0 + (i & 3)) ^ micros();
  }
  return id;
}

}  // namespace

boot_record::Identity boot_record::countThisBoot(uint32_t seed) {
  Identity identity = {0, 0};
  if (EEPROM.read(kMarkAt) == kWritten) {
    EEPROM.get(kBoardAt, identity.board);
    EEPROM.get(kBootsAt, identity.boots);
  } else {
    identity.board = drawBoardId(seed);
    EEPROM.put(kBoardAt, identity.board);
  }
  identity.boots++;
  EEPROM.put(kBootsAt, identity.boots);
  EEPROM.update(kMarkAt, kWritten);  // last, so that a power cut leaves either all or nothing
  return identity;
}

char boot_record::resetCause() {
  if (resetFlags & _BV(PORF)) return 'p';  // first: a slow rise of the supply also sets BORF
  if (resetFlags & _BV(WDRF)) return 'w';
  if (resetFlags & _BV(BORF)) return 'b';
  if (resetFlags & _BV(EXTRF)) return 'x';
  return 'u';
}
