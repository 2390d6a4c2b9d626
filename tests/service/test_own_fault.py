"""How long a fault of ours is said, and how often it is printed."""

from __future__ import annotations

import pytest

from studiowatch.service.own_fault import MOST, STANDS_S, OwnFault

from .scripted import ScriptedClock


def test_that_a_fault_is_said_until_an_hour_after_it_was_met_last(capsys: pytest.CaptureFixture[str]) -> None:
    clock = ScriptedClock()
    told = OwnFault(clock)
    assert told.sentence == ""
    told.meet(ValueError("no such film"))
    clock.pass_s(STANDS_S - 1)
    told.meet(ValueError("no such film"))
    clock.pass_s(STANDS_S - 1)
    told.look()
    assert "no such film" in told.sentence
    clock.pass_s(1)
    told.look()
    assert told.sentence == ""
    assert capsys.readouterr().err.count("no such film") == 1


def test_that_a_fault_that_comes_again_after_it_was_gone_is_printed_again(capsys: pytest.CaptureFixture[str]) -> None:
    clock = ScriptedClock()
    told = OwnFault(clock)
    for _ in range(2):
        told.meet(ValueError("no such film"))
        clock.pass_s(STANDS_S)
        told.look()
    assert capsys.readouterr().err.count("no such film") == 2


def test_that_two_faults_in_turn_are_printed_once_each_and_say_one_sentence(
    capsys: pytest.CaptureFixture[str],
) -> None:
    told = OwnFault(ScriptedClock())
    said = set()
    for _ in range(5):
        for fault in (ValueError("no such film"), KeyError("no such coat")):
            told.meet(fault)
            said.add(told.sentence)
    printed = capsys.readouterr().err
    assert (printed.count("no such film"), printed.count("no such coat")) == (1, 1)
    assert len(said) == 1


def test_that_faults_without_end_are_not_kept_without_end() -> None:
    told = OwnFault(ScriptedClock())
    for number in range(MOST + 1):
        told.meet(ValueError(f"fault {number}."))
    assert "fault 1." in told.sentence
