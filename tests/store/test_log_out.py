"""SenML as RFC 8428 has it: the rules below are its own, and its own examples are put to them first.

Rules and examples were read in the working group's draft 09 (draft-ietf-core-senml-09); section numbers, and what the
RFC changed after that draft, are from memory.
"""

from __future__ import annotations

import io
import json
import re
from typing import Any

import pytest

from studiowatch.board.room_log import read_room_log
from studiowatch.board.translate import LIMITS
from studiowatch.room.readings import Channel, Reading
from studiowatch.store.database import Database
from studiowatch.store.log_out import RoomLogWriter, SenmlWriter, span_ms, stream
from studiowatch.store.readings import ReadingsStore

MIDNIGHT_MS = 1_772_409_600_000  # date -u -d 2026-03-02T00:00:00Z +%s
HOUR_MS = 3_600_000
BASE = "urn:dev:ow:10e2073a01080063:"

# RFC 8428, section 12.1, "SenML units", those without an asterisk ("not recommended")
# fmt: off
UNITS = {
    "m", "kg", "s", "A", "K", "cd", "mol", "Hz", "rad", "sr", "N", "Pa", "J", "W", "C", "V", "F", "Ohm", "S", "Wb", "T",
    "H", "Cel", "lm", "lx", "Bq", "Gy", "Sv", "kat", "m2", "m3", "m/s", "m/s2", "m3/s", "W/m2", "cd/m2", "bit", "bit/s",
    "lat", "lon", "pH", "dB", "dBW", "count", "/", "%RH", "%EL", "EL", "1/s", "S/m",
}
# fmt: on
LABELS = {"bn": str, "bt": float, "bu": str, "bv": float, "bs": float, "bver": int, "n": str, "u": str, "v": float}
LABELS |= {"vs": str, "vb": bool, "vd": str, "s": float, "t": float, "ut": float}  # section 4.3, table 1
NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9\-:./_]*")  # section 4.5.1

# section 5.1.2, "Multiple Datapoints": both examples; section 5.1.3 with several units
EXAMPLES = [
    """[{"bn":"urn:dev:ow:10e2073a01080063:","n":"voltage","u":"V","v":120.1},{"n":"current","u":"A","v":1.2}]""",
    """[{"bn":"urn:dev:ow:10e2073a0108006:","bt":1.276020076001e+09,"bu":"A","bver":5,"n":"voltage","u":"V","v":120.1},
    {"n":"current","t":-5,"v":1.2},{"n":"current","t":-4,"v":1.3},{"n":"current","t":-3,"v":1.4},
    {"n":"current","t":-2,"v":1.5},{"n":"current","t":-1,"v":1.6},{"n":"current","v":1.7}]""",
    """[{"bn":"urn:dev:ow:10e2073a01080063","bt":1.320067464e+09,"bu":"%RH","v":20},{"u":"lon","v":24.30621},
    {"u":"lat","v":60.07965},{"t":60,"v":20.3}]""",
]


def resolved(text: str) -> list[tuple[str, str, float, float]]:
    """Return name, unit, time and value of each record (section 4.6), after the rules on its form were put to it."""
    pack = json.loads(text)
    assert isinstance(pack, list)  # section 5: a JSON array of objects
    base: dict[str, Any] = {"bn": "", "bt": 0.0, "bu": ""}
    records = []
    for record in pack:
        for label, value in record.items():
            kind = LABELS[label]  # an unknown label must not be there unless it ends in "_" (section 4.4)
            assert isinstance(value, (int, float) if kind is float else kind)
            assert not (kind is float and isinstance(value, bool))
        assert sum(label in record for label in ("v", "vs", "vb", "vd")) == 1  # section 4.2, one value at most
        base |= {label: value for label, value in record.items() if label in base}
        name = base["bn"] + record.get("n", "")
        unit = record.get("u", base["bu"])
        assert NAME.fullmatch(name)
        assert unit in UNITS
        records.append((name, unit, base["bt"] + record.get("t", 0), record["v"]))
    return records


@pytest.mark.parametrize("example", EXAMPLES)
def test_that_the_rules_hold_for_the_standards_own_examples(example: str) -> None:
    assert resolved(example)


def test_that_the_rules_resolve_as_the_standard_does() -> None:
    # section 5.1.4, "Resolved Data", of the third example
    assert resolved(EXAMPLES[2]) == [
        ("urn:dev:ow:10e2073a01080063", "%RH", 1.320067464e9, 20),
        ("urn:dev:ow:10e2073a01080063", "lon", 1.320067464e9, 24.30621),
        ("urn:dev:ow:10e2073a01080063", "lat", 1.320067464e9, 60.07965),
        ("urn:dev:ow:10e2073a01080063", "%RH", 1.320067524e9, 20.3),
    ]


def test_that_readings_become_a_pack_of_the_standard() -> None:
    out = io.StringIO()
    writer = SenmlWriter(out, BASE)
    first = Reading(time_ms=MIDNIGHT_MS, temperature_C=20.5, humidity_pct=48.25, air_signal_mV=812.5)
    writer.write([first, Reading(time_ms=MIDNIGHT_MS + 1500)])
    writer.write([Reading(time_ms=MIDNIGHT_MS + HOUR_MS, pressure_Pa=101_325.0, particles_per_m3_5um=12.0)])
    writer.close()
    midnight_s = MIDNIGHT_MS / 1000
    assert resolved(out.getvalue()) == [
        (f"{BASE}temperature_C", "Cel", midnight_s, 20.5),
        (f"{BASE}humidity_pct", "%RH", midnight_s, 48.25),
        (f"{BASE}air_signal", "V", midnight_s, 0.8125),
        (f"{BASE}pressure_Pa", "Pa", midnight_s + 3600, 101_325.0),
        (f"{BASE}particles_per_m3_5um", "count", midnight_s + 3600, 12.0),
    ]
    times = [time for _, _, time, _ in resolved(out.getvalue())]
    assert times == sorted(times)  # section 4.6: resolved records are in chronological order
    assert min(times) >= 2**28  # section 4.5.3: below this a time is relative to now
    assert (writer.rows, writer.empty) == (3, 1)


def test_that_no_readings_are_an_empty_pack() -> None:
    out = io.StringIO()
    writer = SenmlWriter(out, BASE)
    writer.write([])
    writer.close()
    assert json.loads(out.getvalue()) == []


def test_that_every_channel_has_a_unit_of_the_standard() -> None:
    out = io.StringIO()
    writer = SenmlWriter(out, BASE)
    writer.write([Reading(time_ms=MIDNIGHT_MS, **{channel.value: 1.0 for channel in Channel})])  # type: ignore[arg-type]
    writer.close()
    assert len(resolved(out.getvalue())) == len(Channel)


def test_that_readings_are_streamed_by_the_hour_across_sealed_open_and_missing_hours(
    database: Database, readings_store: ReadingsStore
) -> None:
    hours = (0, 1, 5, 700)
    readings = [
        Reading(time_ms=MIDNIGHT_MS + hour * HOUR_MS + minute * 60_000, temperature_C=20.0)
        for hour in hours
        for minute in range(60)
    ]
    readings_store.append(readings)
    readings_store.seal(MIDNIGHT_MS + 5 * HOUR_MS)
    parts = list(stream(database, 0, 2**60))
    assert [len(part) for part in parts] == [60] * 4
    assert [one for part in parts for one in part] == readings
    assert span_ms(database) == (readings[0].time_ms, readings[-1].time_ms)
    part = [one for some in stream(database, readings[30].time_ms, readings[-30].time_ms) for one in some]
    assert part == readings[30:-30]


@pytest.mark.parametrize("seals", [False, True])
def test_that_a_range_within_a_gap_of_an_hour_yields_nothing(
    database: Database,
    readings_store: ReadingsStore,
    seals: bool,  # noqa: FBT001 - given by name
) -> None:
    before, after = MIDNIGHT_MS + 5 * 60_000, MIDNIGHT_MS + 30 * 60_000
    readings_store.append([Reading(time_ms=time_ms, temperature_C=20.0) for time_ms in (before, after)])
    if seals:
        readings_store.seal(MIDNIGHT_MS + HOUR_MS)
    assert list(stream(database, before + 60_000, after)) == []
    assert [[one.time_ms for one in part] for part in stream(database, before + 60_000, after + 1)] == [[after]]


def test_that_readings_of_one_time_are_counted() -> None:
    out = io.StringIO()
    writer = RoomLogWriter(out)
    writer.write([Reading(time_ms=MIDNIGHT_MS, temperature_C=20.0), Reading(time_ms=MIDNIGHT_MS, temperature_C=21.0)])
    writer.write([Reading(time_ms=MIDNIGHT_MS, temperature_C=20.0)])
    assert (writer.rows, writer.same_time) == (3, 2)


def test_that_a_room_log_reads_back_with_every_value_that_a_sensor_can_mean() -> None:
    values = [(channel, value) for channel, limits in LIMITS.items() for value in (limits.low, limits.high)]
    # in the sun, in a dead sensor's mouth, before a hair dryer: of another logger these would be other units
    values += [(Channel.TEMPERATURE, 51.25), (Channel.HUMIDITY, 0.6), (Channel.AIR_SPEED, 16.5)]
    readings = tuple(
        Reading(time_ms=MIDNIGHT_MS + 1000 * at, **{channel.value: value})  # type: ignore[arg-type]
        for at, (channel, value) in enumerate(values)
    )
    out = io.StringIO(newline="")
    RoomLogWriter(out).write(list(readings))
    out.seek(0)
    assert read_room_log(out, "room.csv").readings() == readings
