// Voltages: the supply against the chip's own reference, the air-speed bead against the supply.
#pragma once

#include <Arduino.h>

namespace voltage {

void begin();
float supply_mV();       // mean of 64 readings; the reference is 1.1 V to within 10 %
void sampleBead();       // adds one reading of A0 to the running mean
float takeBeadMean();    // mean since the last call, as a share of the supply, 0 to 1

}  // namespace voltage
