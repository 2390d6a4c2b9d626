"""Sketch styles of our own, each with the truth, through the tolerant intake, in rooms that differ."""

import re
import tomllib
from collections import Counter, deque
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import exp, sin
from pathlib import Path

import pytest

from studiowatch.board.events import BoardEvent, ReadingArrived
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.mapping import Choice, Outcome
from studiowatch.room.readings import Channel, Reading

CORPUS = Path(__file__).parent / "sketch_corpus"
SKETCHES = [
    sketch
    for path in sorted(CORPUS.glob("*.toml"))
    for sketch in tomllib.loads(path.read_text(encoding="utf-8"))["sketch"]
]
LOOPS = 40  # printed by each sketch in each room
_VALUE = re.compile(r"@(\w+):([^@]+)@")


@dataclass(frozen=True, kw_only=True)
class Room:
    """A made-up room that moves a little."""

    t_C: float
    h: float
    moves: float = 1.0

    def at(self, loop: int) -> dict[str, float]:
        t_C = self.t_C + self.moves * 0.2 * sin(loop / 3)
        h = self.h + self.moves * 0.9 * sin(loop / 5)
        v = 0.06 + 0.05 * abs(sin(loop * 1.7))
        a_mV = 600.0 + 40.0 * sin(loop * 0.9)
        p_Pa = 100_900.0 + 30.0 * sin(loop / 9)
        surface_C = t_C - 0.8
        vapour_hPa = h / 100 * 6.112 * exp(17.62 * t_C / (243.12 + t_C))  # Magnus formula: WMO-No. 8
        return {
            "t_C": t_C,
            "t_F": t_C * 1.8 + 32,
            "t_K": t_C + 273.15,
            "t_dC": round(t_C * 10),
            "t_cC": round(t_C * 100),
            "h": h,
            "h_d": round(h * 10),
            "h_part": h / 100,
            "v": v,
            "v_kmh": v * 3.6,
            "v_mph": v / 0.44704,
            "v_fpm": v / 0.00508,
            "a_mV": a_mV,
            "a_V": a_mV / 1000,
            "a_count": int(a_mV * 1024 / 5000),
            "p_Pa": p_Pa,
            "p_hPa": p_Pa / 100,
            "p_kPa": p_Pa / 1000,
            "p_inHg": p_Pa / 3386.389,
            "p_mmHg": p_Pa / 133.3224,
            "surface_C": surface_C,
            "surface_F": surface_C * 1.8 + 32,
            "hi_C": t_C + 0.6,
            "hi_F": (t_C + 0.6) * 1.8 + 32,
            "dew_C": t_C - (100 - h) / 5,
            "dew_F": (t_C - (100 - h) / 5) * 1.8 + 32,
            "gm3": 216.7 * vapour_hPa / (t_C + 273.15),  # g/m³, ideal gas
            "chip_C": t_C + 19.0,
            "out_C": t_C - 11.0,
            "co2": 640.0 + 9 * sin(loop),
            "light": round(310 + 5 * sin(loop)),
            "alt": 27.0 + sin(loop),
            "ms": 2013 * loop + 512,
            "s": 2 * loop + 1,
            "n": loop + 1,
        }


ROOMS = {
    "usual": Room(t_C=21.4, h=47.0),
    "cool garage": Room(t_C=6.8, h=66.0),
    "frosty garage": Room(t_C=-3.6, h=79.0),
    "hot and damp": Room(t_C=33.4, h=78.0),
    "dry in winter": Room(t_C=19.2, h=21.5),
    "20 °C and 68 %, standing still": Room(t_C=20.0, h=68.0, moves=0.0),  # 20 °C is 68 °F
}
# one step of a sketch that prints whole numbers, as °C, %RH, m/s, mV, Pa
STEP = {
    "temperature_C": 0.56,
    "surface_C": 0.56,
    "humidity_pct": 1.0,
    "air_speed_m_s": 0.02,
    "air_signal_mV": 13.0,
    "pressure_Pa": 101.0,
}
NATURE = {
    "temperature_C": "t_C",
    "surface_C": "surface_C",
    "humidity_pct": "h",
    "air_speed_m_s": "v",
    "air_signal_mV": "a_mV",
    "pressure_Pa": "p_Pa",
}


def printed(sketch: Mapping[str, str], room: Room, loop: int) -> bytes:
    values = room.at(loop)

    def show(found: re.Match[str]) -> str:
        return format(values[found[1]], found[2]).replace(".", sketch.get("decimal", "."))

    text = _VALUE.sub(show, sketch["line"]) + sketch.get("end", "")
    if loop % 7 == 3:
        text += sketch.get("sometimes", "")
    return text.encode(sketch.get("encoding", "utf-8"))


def heard(intake: LooseIntake, sketch: Mapping[str, str], room: Room) -> Iterator[tuple[int, BoardEvent]]:
    intake.feed(b"torn off\n" + sketch.get("before", "").encode(sketch.get("encoding", "utf-8")), 0)
    for loop in range(LOOPS):
        for event in intake.feed(printed(sketch, room, loop), loop * 2000):
            yield loop, event


def is_true(reading: Reading, room: Room, truth: Mapping[str, str], loop: int) -> bool:
    """Tell whether all that a reading says is so, now or one loop ago: blocks end when the next one begins."""
    told = {channel.value: value for channel in Channel if (value := reading.value(channel)) is not None}
    return all(
        name in truth and any(abs(value - room.at(at)[NATURE[name]]) <= STEP[name] for at in (loop, max(loop - 1, 0)))
        for name, value in told.items()
    )


def readings(intake: LooseIntake, sketch: Mapping[str, str], room: Room) -> list[tuple[int, Reading]]:
    return [(at, event.reading) for at, event in heard(intake, sketch, room) if isinstance(event, ReadingArrived)]


def answer_gives_truth(intake: LooseIntake, sketch: Mapping[str, object], room: Room, choice: Choice) -> bool:
    """Tell whether an asked column offers `choice` and, once she takes it, the channel is read rightly."""
    for column in intake.mapping.columns if intake.mapping else ():
        if column.outcome is not Outcome.ASKED or choice not in column.candidates:
            continue
        answered = LooseIntake(intake.mapping.set_by_hand(column.key, choice))
        told = [
            (at, reading)
            for at, reading in readings(answered, sketch, room)
            if reading.value(choice.channel) is not None
        ]
        if told and all(is_true(reading, room, sketch["truth"], at) for at, reading in told):
            return True
    return False


def judged(sketch: Mapping[str, object], room: Room) -> str:
    """Return "mapped" (all right), "asked" (right, or the right answer is offered), "missed" or "wrong"."""
    intake = LooseIntake()
    deque(heard(intake, sketch, room), maxlen=0)
    told = readings(LooseIntake(intake.mapping), sketch, room) if intake.mapping else []
    if not all(is_true(reading, room, sketch["truth"], at) for at, reading in told):
        return "wrong"
    chosen = set(intake.mapping.chosen.values()) if intake.mapping else set()
    wanted = [Choice(Channel(name), unit) for name, unit in sketch["truth"].items()]
    open_ones = [choice for choice in wanted if choice not in chosen]
    if any(choice.channel in {one.channel for one in chosen} for choice in open_ones):
        return "wrong"
    if not open_ones:
        return "mapped" if all(any(r.value(c.channel) is not None for _, r in told) for c in wanted) else "missed"
    return "asked" if all(answer_gives_truth(intake, sketch, room, choice) for choice in open_ones) else "missed"


def outcomes(sketch: Mapping[str, object]) -> dict[str, str]:
    return {name: judged(sketch, ROOMS[name]) for name in sketch.get("rooms", ROOMS)}


@pytest.fixture(scope="module")
def all_outcomes() -> dict[str, dict[str, str]]:
    return {sketch["name"]: outcomes(sketch) for sketch in SKETCHES}


@pytest.mark.parametrize("name", [sketch["name"] for sketch in SKETCHES])
def test_that_no_sketch_is_read_wrongly_in_silence(name: str, all_outcomes: Mapping[str, Mapping[str, str]]) -> None:
    assert {room: outcome for room, outcome in all_outcomes[name].items() if outcome == "wrong"} == {}


def test_that_the_corpus_is_mapped_rightly_or_asked(all_outcomes: Mapping[str, Mapping[str, str]]) -> None:
    assert len(all_outcomes) == len(SKETCHES) >= 40
    tally = Counter(outcome for by_room in all_outcomes.values() for outcome in by_room.values())
    assert tally["mapped"] + tally["asked"] >= 0.95 * tally.total()
    assert tally["mapped"] >= 0.3 * tally.total()  # asking always would be no help


def test_that_a_wrong_reading_is_seen_as_wrong() -> None:
    sketch = {"line": "Temp: @hi_C:.1f@ C\r\n", "truth": {"temperature_C": "°C"}}
    assert judged(sketch, ROOMS["usual"]) == "wrong"
    assert judged({**sketch, "line": "Temp: @t_C:.1f@ C\r\n", "truth": {}}, ROOMS["usual"]) == "wrong"
    assert judged({**sketch, "line": "Dew point @t_C:.1f@ C\r\n"}, ROOMS["usual"]) == "missed"
