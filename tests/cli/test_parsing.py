"""A call that is wrong is refused in one sentence with exit 2, and never with a block of usage."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from studiowatch.cli.answers import complain

from .conftest import Answer

COAT = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "100", "--side-m", "0.4")


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("polish",), "there is no command 'polish'; there are "),
        (("predict",), "--sheet, --wet-um, --side-m must be given"),
        (COAT, "one of --air or --room must be given"),
        ((*COAT, "--air"), "--air needs a value behind it"),
        ((*COAT, "--air", "-5,80,0"), "below zero joined to it, as --air=-5,80,0.05"),
        ((*COAT, "--air", "20,50,0", "--support", "wood"), "allowed is 'sealed', 'bare panel', 'raw canvas'"),
        (("record", "--simulated", "--port", "COM3"), "--port and --simulated exclude each other"),
        (("history", "--csv", "-", "--name", "rack"), "--name belongs to --senml"),
        (("history", "--csv", "-", "--to", "1969-06-01"), "which is before any reading"),
        ((*COAT, "--air", "20,50,0", "--room", "a.csv"), "--room and --air exclude each other"),
        ((*COAT, "--air", "20,50,0", "--side-m", "wide"), "--side-m is 'wide'; give a number"),
        ((*COAT, "--air", "20,50,0", "--seed", "1.5"), "--seed is '1.5'; give a whole number"),
        ((*COAT, "--air", "20,50,0", "--orientation", "up"), "--orientation is 'up'; allowed is "),
        ((*COAT, "--air", "20,50,0", "--laid", "2026-03-02T09:00:00Z"), "--laid belongs to --room"),
        ((*COAT, "--air", "20,50,0", "--columns", "time=When"), "--columns belongs to --room"),
        (("plan", "--apply", "Gloss"), "--apply needs 2 values behind it; `studiowatch plan --help` shows"),
        (("boards", "now"), "now is not known here"),
        (("boards", "--json=3"), "--json takes no value, and was given '3'"),
        # an abbreviation would change its meaning with the next option of the same beginning
        (("boards", "--js"), "--js is not known here"),
    ],
)
def test_that_a_wrong_call_is_one_sentence(call: Callable[..., Answer], words: tuple[str, ...], says: str) -> None:
    answer = call(*words)
    assert (answer.code, answer.out) == (2, "")
    assert answer.err.startswith("studiowatch: ")
    assert says in answer.err
    assert answer.err.count("\n") == 1
    assert "usage" not in answer.err


def test_that_help_is_still_help(call: Callable[..., Answer], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        call("predict", "--help")
    assert ended.value.code == 0
    assert "--wet-um" in capsys.readouterr().out


def test_that_signs_that_steer_a_terminal_are_shown_as_escapes(capsys: pytest.CaptureFixture[str]) -> None:
    complain("Line 3: “\x1b[31mfarbe\x07” is no number.\nLine 4: “ü” is none.")
    assert capsys.readouterr().err == "studiowatch: Line 3: “\\x1b[31mfarbe\\x07” is no number.\nLine 4: “ü” is none.\n"
