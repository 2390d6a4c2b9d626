"""When a sound is due."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level
from studiowatch.ui.models.alarm import LOUDNESS, REPEAT_S, SOFTLY, Alarm, Ring, Sound, Step, newly_raised
from studiowatch.ui.models.quiet_hours import QuietHours, Voice

from .scenes import AIR_WARNING, BLIND, EMPTY, FOUR_CALM, FOUR_WARNED, HEARD, warning


def heard_over(moments: list[tuple[float, Snapshot]]) -> list[Sound | None]:
    return [None if ring is None else ring.sound for ring in rung(moments)]


def rung(
    moments: list[tuple[float, Snapshot]], *, quiet: QuietHours | None = None, minute: int = 0
) -> list[Ring | None]:
    alarm, rings = Alarm(), []
    for now_s, snapshot in moments:
        alarm, ring = alarm.step(snapshot, now_s, minute=minute, quiet=quiet or QuietHours())
        rings.append(ring)
    return rings


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


def in_vain(times: int, snapshot: Snapshot = FOUR_WARNED) -> list[tuple[float, Snapshot]]:
    return [(turn * REPEAT_S, snapshot) for turn in range(times)]


def test_that_it_grows_louder_in_three_steps_and_calls_and_comes_to_the_front_once() -> None:
    rings = [ring for ring in rung(in_vain(12)) if ring is not None]
    assert [ring.loudness for ring in rings] == [LOUDNESS[Step.SOUND]] * 3 + [LOUDNESS[Step.CALL]] * 3 + [1.0] * 6
    assert sorted(LOUDNESS.values()) == [LOUDNESS[step] for step in Step]
    reached = {turn: ring.reached for turn, ring in enumerate(rings) if ring.reached is not None}
    assert reached == {0: Step.SOUND, 3: Step.CALL, 6: Step.FRONT}


def test_that_it_begins_anew_once_it_was_heard() -> None:
    moments = [*in_vain(5), (99.0, HEARD), (100.0, FOUR_WARNED)]
    assert rung(moments)[-1] == Ring(sound=Sound.INSISTENT, loudness=LOUDNESS[Step.SOUND], reached=Step.SOUND)


def test_that_a_second_warning_does_not_make_it_softer() -> None:
    second = warning("w2", BLIND, WarningState.RAISED, 0, sound=True)
    ring = rung([*in_vain(5), (4 * REPEAT_S + 1, with_warnings(AIR_WARNING, second))])[-1]
    assert ring is not None
    assert ring.loudness == LOUDNESS[Step.CALL]


NIGHT = QuietHours(on=True, from_min=22 * 60, to_min=7 * 60)
DAY = QuietHours(on=True, from_min=7 * 60, to_min=22 * 60)


@pytest.mark.parametrize(
    ("quiet", "minute", "holds"),
    [
        (NIGHT, 22 * 60 - 1, False),
        (NIGHT, 22 * 60, True),
        (NIGHT, 0, True),
        (NIGHT, 7 * 60 - 1, True),
        (NIGHT, 7 * 60, False),
        (DAY, 12 * 60, True),
        (DAY, 23 * 60, False),
        (replace(NIGHT, on=False), 0, False),
        (QuietHours(on=True, from_min=60, to_min=60), 59, True),
    ],
)
def test_that_quiet_hours_may_lie_over_midnight(quiet: QuietHours, minute: int, *, holds: bool) -> None:
    assert quiet.hold(minute) is holds


COLD_ACT = replace(AIR_WARNING, key="c", kind="too-cold")
WAKING = replace(NIGHT, wakes=True)


@pytest.mark.parametrize(
    ("quiet", "warned", "voice"),
    [
        (NIGHT, AIR_WARNING, Voice.ONCE_SOFTLY),
        (NIGHT, MILD, Voice.SILENT),
        (WAKING, AIR_WARNING, Voice.FULL),
        (WAKING, COLD_ACT, Voice.ONCE_SOFTLY),
        (WAKING, MILD, Voice.SILENT),
        (DAY, MILD, Voice.FULL),
    ],
)
def test_that_the_rule_of_quiet_hours_is_this_table(quiet: QuietHours, warned: WarningView, voice: Voice) -> None:
    assert quiet.voice(warned, 60) is voice


def test_that_at_night_what_must_be_acted_on_sounds_once_softly_and_calls_nobody() -> None:
    rings = rung(in_vain(9), quiet=NIGHT, minute=60)
    assert rings == [Ring(sound=Sound.INSISTENT, loudness=SOFTLY)] + [None] * 8
    assert rung([(0, with_warnings(MILD))], quiet=NIGHT, minute=60) == [None]


def test_that_who_wants_to_be_woken_is() -> None:
    assert rung(in_vain(9), quiet=WAKING, minute=60) == rung(in_vain(9))


def test_that_a_caution_of_the_night_is_heard_once_in_the_morning_and_one_of_the_evening_is_not() -> None:
    night, morning = 7 * 60 - 1, 7 * 60
    alarm, ring = Alarm().step(with_warnings(MILD), 0.0, minute=night, quiet=NIGHT)
    assert ring is None
    alarm, ring = alarm.step(with_warnings(MILD), 60.0, minute=morning, quiet=NIGHT)
    assert ring == Ring(sound=Sound.ATTENTION, loudness=LOUDNESS[Step.SOUND])
    assert alarm.step(with_warnings(MILD), 120.0, minute=morning, quiet=NIGHT)[1] is None
    alarm, ring = Alarm().step(with_warnings(MILD), 0.0, minute=22 * 60 - 1, quiet=NIGHT)
    assert ring is not None
    for at_s, minute in ((60.0, night), (120.0, morning)):
        alarm, ring = alarm.step(with_warnings(MILD), at_s, minute=minute, quiet=NIGHT)
        assert ring is None


def test_that_in_the_morning_what_still_stands_is_heard() -> None:
    alarm, _ = Alarm().step(FOUR_WARNED, 0.0, minute=7 * 60 - 1, quiet=NIGHT)
    _, ring = alarm.step(FOUR_WARNED, 60.0, minute=7 * 60, quiet=NIGHT)
    assert ring is not None
    assert ring.loudness == LOUDNESS[Step.SOUND]
