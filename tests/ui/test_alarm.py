"""When a sound is due."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level
from studiowatch.ui.models.alarm import REPEAT_S, Alarm, Sound, newly_raised

from .scenes import AIR_WARNING, BLIND, EMPTY, FOUR_CALM, FOUR_WARNED, HEARD, warning


def heard_over(moments: list[tuple[float, Snapshot]]) -> list[Sound | None]:
    alarm, sounds = Alarm(), []
    for now_s, snapshot in moments:
        alarm, sound = alarm.step(snapshot, now_s)
        sounds.append(sound)
    return sounds


def with_warnings(*warnings: object) -> Snapshot:
    return replace(FOUR_WARNED, warnings=warnings)


MILD = replace(AIR_WARNING, key="m", level=Level.CAUTION)


def test_that_an_urgent_warning_sounds_at_once_and_again_until_heard() -> None:
    sounds = heard_over(
        [(0, FOUR_WARNED), (1, FOUR_WARNED), (REPEAT_S, FOUR_WARNED), (REPEAT_S + 1, HEARD), (99, HEARD)]
    )
    assert sounds == [Sound.INSISTENT, None, Sound.INSISTENT, None, None]


def test_that_a_mild_warning_sounds_once() -> None:
    assert heard_over([(0, with_warnings(MILD)), (99, with_warnings(MILD))]) == [Sound.ATTENTION, None]


def test_that_a_second_warning_sounds_at_once() -> None:
    second = warning("w2", BLIND, WarningState.RAISED, 0, sound=True)
    sounds = heard_over(
        [(0, FOUR_WARNED), (1, with_warnings(AIR_WARNING, second)), (2, with_warnings(AIR_WARNING, second))]
    )
    assert sounds == [Sound.INSISTENT, Sound.INSISTENT, None]


def test_that_a_warning_put_off_sounds_again_when_it_comes_back() -> None:
    quiet = replace(AIR_WARNING, state=WarningState.REMIND, sound=False)
    sounds = heard_over([(0, FOUR_WARNED), (2, with_warnings(quiet)), (3, FOUR_WARNED)])
    assert sounds == [Sound.INSISTENT, None, Sound.INSISTENT]


def test_that_a_warning_without_sound_is_silent() -> None:
    silent = replace(AIR_WARNING, sound=False)
    assert heard_over([(0, with_warnings(silent)), (99, with_warnings(silent))]) == [None, None]


def test_that_calm_is_silent() -> None:
    assert heard_over([(0, EMPTY), (99, FOUR_CALM)]) == [None, None]


def test_that_only_what_is_new_is_told() -> None:
    assert [one.key for one in newly_raised(None, FOUR_WARNED)] == ["w1"]
    assert newly_raised(FOUR_WARNED, FOUR_WARNED) == ()
    assert newly_raised(FOUR_WARNED, FOUR_CALM) == ()
    assert [one.key for one in newly_raised(HEARD, FOUR_WARNED)] == ["w1"]
