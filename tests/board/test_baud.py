"""Wrong rates as a receiver sees them: the wire's levels, sampled at the middle of where it expects each bit."""

from functools import cache
from itertools import permutations

import pytest

from studiowatch.board.baud import RATES, is_wrong_rate, rates_to_try
from studiowatch.board.events import LineRefused
from studiowatch.board.loose_intake import LooseIntake


def text(lines: int) -> str:
    return "".join(
        f"Humidity: {47 + at % 9 / 10:.2f} %  Temperature: {21 + at % 7 / 10:.2f} °C  Air: {590 + at} mV\r\n"
        for at in range(lines)
    )


def sent(data: bytes) -> list[int]:
    """Return the levels, one for each bit time: idle, start bit, eight bits from the lowest, stop bit (8N1)."""
    bits = [1] * 3
    for byte in data:
        bits += [0, *((byte >> at) & 1 for at in range(8)), 1]
    return [*bits, *[1] * 30]


@cache
def heard(sent_at: int, read_at: int) -> bytes:
    """Return what comes of text at another rate: a slower receiver makes fewer bytes of it, and is given more."""
    return received(sent(text(6 + 2 * sent_at // read_at).encode()), sent_at, read_at)


def received(bits: list[int], sent_at: int, read_at: int) -> bytes:
    """Return the bytes that a receiver at another rate makes of the levels; a wrong stop bit does not stop it."""
    step = sent_at / read_at
    data = bytearray()
    time = 0.0
    while time + 10 * step < len(bits):
        if bits[int(time)]:
            time = float(int(time) + 1)  # the next edge can only be where a bit begins
            continue
        data.append(sum(bits[int(time + (at + 1.5) * step)] << at for at in range(8)))
        time += 9.5 * step
        while time < len(bits) and not bits[int(time)]:  # framing error: wait for the line to rise
            time = float(int(time) + 1)
    return bytes(data)


def test_that_the_receiver_model_reads_its_own_rate() -> None:
    assert received(sent(b"T=21.4\r\n"), 9600, 9600) == b"T=21.4\r\n"


@pytest.mark.parametrize(("sent_at", "read_at"), list(permutations(RATES, 2)))
def test_that_text_at_another_rate_is_told(sent_at: int, read_at: int) -> None:
    assert is_wrong_rate(heard(sent_at, read_at))


@pytest.mark.parametrize("encoding", ["utf-8", "latin-1"])
def test_that_text_at_the_right_rate_is_not_called_wrong(encoding: str) -> None:
    assert not is_wrong_rate(text(12).encode(encoding))
    assert not is_wrong_rate("Température : 21,4 °C\tHumidité : 47 %\r\n".encode(encoding) * 4)
    assert not is_wrong_rate(b"")


def test_that_rates_are_tried_once_each_and_the_commonest_first() -> None:
    assert rates_to_try()[:2] == (9600, 115_200)
    tried: list[int] = []
    while left := rates_to_try(tried):
        tried.append(left[0])
    assert sorted(tried) == sorted(RATES)


@pytest.mark.parametrize(("sent_at", "read_at"), list(permutations(RATES, 2)))
def test_that_nothing_is_made_of_text_at_another_rate(sent_at: int, read_at: int) -> None:
    intake = LooseIntake()
    events = intake.feed(heard(sent_at, read_at), 0)
    assert [event for event in events if not isinstance(event, LineRefused)] == []
