"""Bytes from outside: what ever broke a target, and what Hypothesis makes of pieces that come near the grammar."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from .targets import TARGETS

CRASHES = Path(__file__).resolve().parent / "crashes"
FOUND = [(path.parent.name, path.name) for path in sorted(CRASHES.glob("*/*"))]
PIECES = {
    "wire": b"$|\n|\r|*|$D t=1| t=|H|E|!nak|$D n=0 u=194 t=21.40 h=48.00 a=596.9 s=5001*5962\r\n",
    "loose": b'Temp|: |21.4| C|, |Humidity| %|\r\n|{|}|"t":|nan|\t|-127.00|1e999|;',
    "room_log": b'time|,|temperature_C|humidity_pct|air_speed_m_s|\n|2026-03-02T09:00:00Z|21.0|"|nan|;|1e400',
    "studio": b'[[piece]]\n|[[piece.coat]]\n|title = "A"\n|width_cm = 40\n|height_cm = 1e999\n|sheet = "x"\n'
    b'|laid = 2026-03-02T09:00:00Z\n|due = 2026-03-20\n|[|=|"',
    "sheet": b'name = "x"\n|kind = "waterborne"\n|volume_solids = 0.36\n|wet_um = 90\n|dry_um = inf\n|clear_h = nan\n'
    b'|apply_C = [10, 30]\n|mfft_C = -1e308\n|[basis]\n|=|"',
}
"""Pieces that come near each grammar, between bars."""


@pytest.mark.parametrize(("target", "name"), FOUND, ids=["/".join(found) for found in FOUND])
def test_that_what_once_broke_it_breaks_it_no_more(target: str, name: str) -> None:
    TARGETS[target]((CRASHES / target / name).read_bytes())


@pytest.mark.parametrize("target", TARGETS)
def test_that_any_bytes_are_read_or_refused_in_words(target: str) -> None:
    near = st.lists(st.one_of(st.sampled_from(PIECES[target].split(b"|")), st.binary(max_size=6)), max_size=60).map(
        b"".join
    )

    @settings(max_examples=200)
    @given(near)
    def holds(data: bytes) -> None:
        TARGETS[target](data)

    holds()
