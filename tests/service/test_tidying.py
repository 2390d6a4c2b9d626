"""What is given back now and then: memory that lies freed, and what only refers to itself."""

from __future__ import annotations

import gc
import sys
import weakref
from collections.abc import Iterator

import pytest

from studiowatch.service import tidying
from studiowatch.service.tidying import COLLECT_S, GIVE_BACK_S, Tidying

from .scripted import ScriptedClock


class Ring:
    """Refers to itself."""

    def __init__(self) -> None:
        self.itself = self


@pytest.fixture
def only_collected_when_told() -> Iterator[None]:
    gc.disable()
    yield
    gc.enable()


@pytest.mark.usefixtures("only_collected_when_told")
def test_that_what_only_refers_to_itself_is_let_go_every_hour() -> None:
    clock = ScriptedClock()
    tidy = Tidying(clock)
    for _ in range(2):
        left = weakref.ref(Ring())
        clock.pass_s(COLLECT_S - 1.0)
        tidy.look()
        assert left() is not None
        clock.pass_s(1.0)
        tidy.look()
        assert left() is None


@pytest.mark.usefixtures("only_collected_when_told")
def test_that_tuples_that_are_kept_for_the_next_are_let_go_every_hour() -> None:
    clock = ScriptedClock()
    tidy = Tidying(clock)
    gc.collect()
    before = sys.getallocatedblocks()
    for size in range(5, 10):
        many = [(at,) * size for at in range(1500)]
        many.clear()
    kept = sys.getallocatedblocks() - before
    assert kept > 5_000  # of 7,500; CPython's own, up to 2,000 of each size: MAXFREELIST in its tuple's source
    clock.pass_s(COLLECT_S)
    tidy.look()
    assert sys.getallocatedblocks() - before < 0.1 * kept


def test_that_freed_memory_is_given_back_every_two_minutes(monkeypatch: pytest.MonkeyPatch) -> None:
    clock, given = ScriptedClock(), []
    monkeypatch.setattr(tidying, "give_back", lambda: given.append(clock.monotonic_s()))
    tidy = Tidying(clock)
    began_s = clock.monotonic_s()
    for _ in range(5):
        clock.pass_s(GIVE_BACK_S / 2)
        tidy.look()
    assert [at_s - began_s for at_s in given] == [GIVE_BACK_S, 2 * GIVE_BACK_S]
