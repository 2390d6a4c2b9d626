"""`record --sound`: the same sounds by the same rules, and Enter says that they were heard."""

from __future__ import annotations

import os
from concurrent.futures import Future
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest

from studiowatch.cli.commands import run
from studiowatch.cli.sounding import Sounding, typed
from studiowatch.compose import outfit
from studiowatch.service.commands import Command, HearWarning
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.alarm import LOUDNESS, REPEAT_S, SOFTLY, Sound, Step
from studiowatch.ui.models.quiet_hours import QuietHours, kept_quiet_hours
from studiowatch.ui.terminal_bell import TerminalBell
from tests.ui.conftest import KeptSpeaker
from tests.ui.scenes import FOUR_CALM, FOUR_WARNED, HEARD, ScriptedClock


class KeptRinger:
    """Rings for whatever has an open warning, and may have nothing to ring with."""

    def __init__(self, trouble: str = "") -> None:
        self.trouble = trouble
        self.heard: list[Snapshot] = []
        self.closed = False

    def listen(self, snapshot: Snapshot) -> bool:
        self.heard.append(snapshot)
        return any(one.sound for one in snapshot.warnings)

    def close(self) -> None:
        self.closed = True


class KeptDesk:
    """Keeps what it was asked."""

    def __init__(self) -> None:
        self.commands: list[Command] = []

    def submit(self, command: Command) -> Future[str]:
        self.commands.append(command)
        return Future()


def bell(quiet: QuietHours = QuietHours()) -> tuple[TerminalBell, KeptSpeaker, ScriptedClock]:  # noqa: B008 - frozen
    speaker, clock = KeptSpeaker(), ScriptedClock()
    return TerminalBell(speaker, clock, quiet), speaker, clock


def test_that_it_rings_again_and_louder_until_it_is_heard() -> None:
    ringing, speaker, clock = bell()
    for _ in range(4):
        assert ringing.listen(FOUR_WARNED)
        assert not ringing.listen(FOUR_WARNED)
        clock.seconds += REPEAT_S
    assert speaker.played == [Sound.INSISTENT] * 4
    assert speaker.loud == [LOUDNESS[Step.SOUND]] * 3 + [LOUDNESS[Step.CALL]]
    assert not ringing.listen(HEARD)
    assert not ringing.listen(FOUR_CALM)


def test_that_quiet_hours_hold() -> None:
    now = datetime.fromtimestamp(ScriptedClock().utc_ms() / 1000).astimezone()
    minute = now.hour * 60 + now.minute
    ringing, speaker, clock = bell(QuietHours(on=True, from_min=minute, to_min=(minute + 1) % 1440))
    assert ringing.listen(FOUR_WARNED)
    clock.seconds += REPEAT_S
    assert not ringing.listen(FOUR_WARNED)
    assert speaker.loud == [SOFTLY]


def test_that_the_quiet_hours_are_those_of_the_window() -> None:
    kept = {"quiet": "yes", "quiet_from": "1290", "quiet_to": "420", "quiet_wakes": "yes"}
    assert kept_quiet_hours(kept) == QuietHours(on=True, from_min=1290, to_min=420, wakes=True)
    assert kept_quiet_hours({"quiet": "maybe", "quiet_from": "1440", "quiet_to": "-1"}) == QuietHours()


def test_that_a_line_that_is_typed_says_that_all_that_sounds_was_heard() -> None:
    sounding, desk = Sounding(KeptRinger()), KeptDesk()
    sounding.show(FOUR_WARNED)
    sounding.take_answers(desk, ["\n"]).join(10)
    assert desk.commands == [HearWarning(warning_key="w1")]
    sounding.show(HEARD)
    sounding.take_answers(desk, ["\n"]).join(10)
    assert len(desk.commands) == 1


def test_that_what_is_typed_is_read_until_its_end(monkeypatch: pytest.MonkeyPatch) -> None:
    read_end, write_end = os.pipe()
    os.write(write_end, b"\n")
    os.close(write_end)
    with os.fdopen(read_end) as stdin:
        monkeypatch.setattr("sys.stdin", stdin)
        assert list(typed()) == [b"\n"]


def test_that_a_machine_without_sound_is_told_once_and_beeps_where_there_is_a_terminal(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    sounding = Sounding(KeptRinger("no sound on this machine"))
    sounding.show(FOUR_WARNED)
    told = capsys.readouterr().err
    assert told.count("Warnings are printed, but not heard: no sound on this machine.") == 1
    assert "\a" not in told
    monkeypatch.setattr("sys.stderr.isatty", lambda: True)
    sounding.show(FOUR_WARNED)
    assert capsys.readouterr().err == "\a"


def test_that_record_rings_only_when_it_is_asked_to(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    ringer = KeptRinger()
    parts = replace(outfit(), ringer=lambda: ringer)
    words = ["--folder", f"{tmp_path}/studio", "record", "--simulated", "--seconds", "2"]
    assert run(words, parts) == 0
    assert ringer.heard == []
    assert run([*words, "--sound"], parts) == 0
    assert ringer.heard
    assert ringer.closed
    capsys.readouterr()
