// One line of the wire format: "$" kind, " key=value" pairs, "*" and the checksum of all between "$" and "*".
#pragma once

#include <Arduino.h>

namespace wire_line {

void begin(char kind);
void whole(const __FlashStringHelper *key, uint32_t value);
void hex(const __FlashStringHelper *key, uint32_t value);                   // eight digits
void number(const __FlashStringHelper *key, float value, uint8_t places);   // "!range" when it is not finite
void letter(const __FlashStringHelper *key, char value);
void token(const __FlashStringHelper *key, const __FlashStringHelper *value);
void fault(const __FlashStringHelper *key, const __FlashStringHelper *code);  // "!code" instead of a number
void end();

}  // namespace wire_line
