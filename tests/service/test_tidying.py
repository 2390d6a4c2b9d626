"""What is given back now and then: memory that lies freed, and what only refers to itself."""

from __future__ import annotations

import gc
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


def test_that_freed_memory_is_given_back_every_two_minutes(monkeypatch: pytest.MonkeyPatch) -> None:
    clock, given = ScriptedClock(), []
    monkeypatch.setattr(tidying, "give_back", lambda: given.append(clock.monotonic_s()))
    tidy = Tidying(clock)
    began_s = clock.monotonic_s()
    for _ in range(5):
        clock.pass_s(GIVE_BACK_S / 2)
        tidy.look()
    assert [at_s - began_s for at_s in given] == [GIVE_BACK_S, 2 * GIVE_BACK_S]
