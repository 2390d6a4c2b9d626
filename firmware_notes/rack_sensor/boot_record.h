// Who this board is and how often it has started: kept through power cuts in the chip's EEPROM.
#pragma once

#include <Arduino.h>

namespace boot_record {

struct Identity {
  uint32_t board;  // drawn once from noise, then kept
  uint16_t boots;  // 1 on the first start
};

Identity countThisBoot(uint32_t seed);

// p power on, x reset line or button, b supply dipped, w watchdog, u unknown (a boot loader hid it)
char resetCause();

}  // namespace boot_record
