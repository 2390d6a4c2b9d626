from collections.abc import Mapping

import pytest

from studiowatch.board.formats import describe
from studiowatch.board.loose_lines import Style
from studiowatch.board.mapping import Choice
from studiowatch.room.readings import Channel


@pytest.mark.parametrize(
    ("lines", "words", "style"),
    [
        (b"orn\nT=21.4 H=48\nT=21.4 H=48\nT=21.", "labelled numbers", Style.LABELLED),
        (b'x\n{"t":21.4}\n{"t":21.5}\n', "JSON", Style.JSON),
        (b"x\ntemp,hum\n21.4,48\n21.5,48\n", "a table with a header", Style.TABLE),
        (b"x\nhello there\n21.4;48\n21.5;48\n", "bare columns", Style.COLUMNS),
        (b"x\nno numbers here\nnone at all\n", "text without numbers", None),
        (b"half a line", "unknown lines", None),
        (bytes(range(128, 256)) * 2, "wrong baud rate", None),
        (b"", "", None),
    ],
)
def test_that_the_format_is_named(lines: bytes, words: str, style: Style | None) -> None:
    told = describe(lines)
    assert (told.words, told.style) == (words, style)


def test_that_checked_lines_are_named(vectors: Mapping) -> None:
    line = vectors["accepted"][1]["line"].encode()
    assert describe(b"torn*1234\r\nready 1\r\n" + line).words == "checked lines"


def test_that_the_columns_are_told_as_far_as_the_lines_go() -> None:
    told = describe(b"x\n" + b"Temp: 21.4 C\n" * 6)
    assert told.mapping is not None
    assert told.mapping.chosen == {"Temp °C": Choice(Channel.TEMPERATURE, "°C")}
