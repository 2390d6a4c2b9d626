"""Constants of nature and of air and water, each with its unit and its source."""

from __future__ import annotations

ZERO_CELSIUS_K = 273.15  # K, exact; SI Brochure, 9th ed. (2019)
GAS_CONSTANT = 8.314462618  # J/(mol K); CODATA 2018, exact since 2019
STEFAN_BOLTZMANN = 5.670374419e-8  # W/(m² K⁴); CODATA 2018
GRAVITY = 9.80665  # m/s², standard; CGPM 1901
STANDARD_PRESSURE_PA = 101325.0  # Pa, standard atmosphere; ISO 2533:1975

GAS_CONSTANT_DRY_AIR = 287.042  # J/(kg K); ASHRAE Handbook Fundamentals 2017, ch. 1
GAS_CONSTANT_VAPOUR = 461.524  # J/(kg K); ASHRAE Handbook Fundamentals 2017, ch. 1
MASS_RATIO = 0.621945  # molar mass of water over that of dry air; ASHRAE Handbook Fundamentals 2017, ch. 1
HEAT_DRY_AIR = 1006.0  # J/(kg K) at constant pressure; ASHRAE Handbook Fundamentals 2017, ch. 1
HEAT_VAPOUR = 1860.0  # J/(kg K) at constant pressure; ASHRAE Handbook Fundamentals 2017, ch. 1

WATER_DENSITY = 998.0  # kg/m³ at 20 °C; IAPWS-95 gives 998.2
LATENT_HEAT_0C = 2.501e6  # J/kg of evaporation at 0 °C; FAO Irrigation and Drainage Paper 56 (1998), annex 3
LATENT_HEAT_SLOPE = 2361.0  # J/(kg K) that it falls by; FAO Irrigation and Drainage Paper 56 (1998), annex 3

REFERENCE_TEMPERATURE_C = 23.0  # °C; ISO 3270:1984, ASTM D3924
REFERENCE_HUMIDITY_PCT = 50.0  # %; ISO 3270:1984, ASTM D3924
REFERENCE_TEMPERATURE_K = REFERENCE_TEMPERATURE_C + ZERO_CELSIUS_K  # K; ISO 3270:1984
