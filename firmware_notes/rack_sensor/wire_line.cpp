#include "wire_line.h"

namespace {

// CRC-16/CCITT-FALSE: polynomial 0x1021, start value 0xFFFF, nothing reflected, nothing inverted.
constexpr uint16_t kPolynomial = 0x1021;
constexpr uint16_t kStart = 0xFFFF;

uint16_t checksum;

// Every checked character passes here, so the checksum cannot miss one.
void put(char character) {
  Serial.write(character);
  checksum ^= static_cast<uint16_t>(static_cast<uint8_t>(character)) << 8;
  for (uint8_t bit = 0; bit < 8; bit++) {
    checksum = (checksum & 0x8000) ? (checksum << 1) ^ kPolynomial : checksum << 1;
  }
}

void put(const char *text) {
  while (*text) put(*text++);
}

void put(const __FlashStringHelper *text) {
  PGM_P next = reinterpret_cast<PGM_P>(text);
  while (const char character = pgm_read_byte(next++)) put(character);
}

void putHex(uint32_t value, uint8_t digits) {
  while (digits--) {
    const uint8_t digit = (value >> (4 * digits)) & 0x0F;
    put(static_cast<char>(digit < 10 ? '0' + digit : 'A' + digit - 10));
  }
}

void putKey(const __FlashStringHelper *key) {
  put(' ');
  put(key);
  put('=');
}

}  // namespace

void wire_line::begin(char kind) {
  Serial.write('$');
  checksum = kStart;
  put(kind);
}

void wire_line::whole(const __FlashStringHelper *key, uint32_t value) {
  char text[11];  // 4294967295 and its end
  putKey(key);
  put(ultoa(value, text, 10));
}

void wire_line::hex(const __FlashStringHelper *key, uint32_t value) {
  putKey(key);
  putHex(value, 8);
}

void wire_line::number(const __FlashStringHelper *key, float value, uint8_t places) {
  // dtostrf writes as many digits as the number needs; anything larger than this is no measurement.
  constexpr float kLargest = 1e6;
  if (!(fabs(value) < kLargest)) return fault(key, F("range"));

  char text[16];
  putKey(key);
  put(dtostrf(value, 1, places, text));
}

void wire_line::letter(const __FlashStringHelper *key, char value) {
  putKey(key);
  put(value);
}

void wire_line::token(const __FlashStringHelper *key, const __FlashStringHelper *value) {
  putKey(key);
  put(value);
}

void wire_line::fault(const __FlashStringHelper *key, const __FlashStringHelper *code) {
  putKey(key);
  put('!');
  put(code);
}

void wire_line::end() {
  const uint16_t ofThisLine = checksum;  // putHex goes on counting
  Serial.write('*');
  putHex(ofThisLine, 4);
  Serial.print(F("\r\n"));
}
