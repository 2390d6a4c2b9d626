"""The command line speaks her language and her units; what other programs read is in English and SI."""

from __future__ import annotations

import argparse
import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace

import pytest

from studiowatch.cli.calls import parser
from studiowatch.cli.recorded_words import AIR, STRAIGHT_ON, told
from studiowatch.coats.stages import Orientation, Surface
from studiowatch.coats.support import Support
from studiowatch.room.air_movement import Movement
from studiowatch.speech.units import METRIC, US, Numbers, choose, chosen
from studiowatch.speech.words import speak_by
from studiowatch.studio.pieces import Finding, Outcome

from .conftest import Answer

Call = Callable[..., Answer]
PREDICT = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "88.9", "--side-m", "0.3048", "--air", "20,55,0.1")


def marked(text: str, _about: str, _number: int) -> str:
    return f"«{text}»"


def all_actions(of: argparse.ArgumentParser) -> Iterator[argparse.Action]:
    for action in of._actions:
        yield action
        if isinstance(action, argparse._SubParsersAction):
            yield from action._choices_actions
            for below in action.choices.values():
                yield from all_actions(below)


def test_that_every_text_of_the_help_is_said() -> None:
    speak_by(marked)
    top = parser()
    actions = list(all_actions(top))
    assert len(actions) > 100
    assert [action.help for action in actions if action.help is not None and action.help[0] != "«"] == []
    shown = top.format_help()
    assert [shown.startswith("«usage: »"), "«options»" in shown, "«positional arguments»" in shown] == [True] * 3


def test_that_nothing_is_said_before_her_language_is_chosen() -> None:
    watched = (
        "from studiowatch.speech.words import speak_by\n"
        "said = []\n"
        "speak_by(lambda text, about, number: said.append(text) or '')\n"
        "import studiowatch.__main__, studiowatch.compose\n"
        "import studiowatch.room.outlook, studiowatch.room.walk\n"
        "print(said)\n"
    )
    started = subprocess.run([sys.executable, "-c", watched], capture_output=True, encoding="utf-8", check=True)
    assert started.stdout == "[]\n"


def test_that_units_of_a_call_are_refused_for_the_window_which_has_its_own(call: Call) -> None:
    for words in ((), ("demo",)):
        answer = call("--units", "us", *words)
        assert (answer.code, answer.err.count("--units is for what a command prints")) == (2, 1)


def test_that_a_refusal_is_said_whole(call: Call) -> None:
    speak_by(marked)
    assert call("predict", "--draws", "many").err == (
        "studiowatch: ««{option} is {given}; give a whole number»; `{program} --help` shows what it takes.»\n".replace(
            "{option}", "--draws"
        )
        .replace("{given}", "'many'")
        .replace("{program}", "studiowatch predict")
    )


def test_that_figures_for_people_are_in_the_units_that_the_call_asks_for(call: Call) -> None:
    first, room, *_ = call("--units", "us", *PREDICT).out.splitlines()
    # 88.9 µm = 3.5 mil, 0.3048 m = 12 in, 20 °C = 68 °F, 0.1 m/s = 19.7 ft/min: NIST SP 811 (2008), appendix B
    assert first.endswith(": 3.5 mil wet on 12 × 12 in, face-up")
    assert room == "Room: 68 °F, 55 % RH, 20 ft/min, held all the time"


def test_that_a_call_may_ask_for_metric_against_the_window(call: Call) -> None:
    choose(US)
    first, room, *_ = call("--units", "metric", *PREDICT).out.splitlines()
    assert first.endswith(": 88.9 µm wet on 0.3048 × 0.3048 m, face-up")
    assert room == "Room: 20 °C, 55 % RH, 0.1 m/s, held all the time"


def test_that_the_decimal_sign_stays_the_one_she_chose(call: Call) -> None:
    choose(replace(METRIC, numbers=Numbers.COMMA))
    assert ": 3,5 mil wet on" in call("--units", "us", *PREDICT).out


def test_that_the_columns_of_a_prediction_stay_apart_in_a_language_of_long_words(call: Call) -> None:
    thick = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "9000", "--side-m", "0.4", "--air", "20,55,0.05")
    speak_by(lambda text, _about, _number: "not by any means reached" if text == "not reached" else "")
    rows = [line for line in call(*thick).out.splitlines() if "reached" in line]
    assert rows
    assert all(line.count("  not by any means reached") == line.count("reached") for line in rows)


def test_that_days_are_told_as_her_language_has_them(call: Call) -> None:
    add = ("piece", "add", "Kiln Light", "--width-cm", "40", "--height-cm", "30", "--due", "2026-03-20")
    assert call(*add).code == 0
    assert call("--units", "us", "piece", "list").out == (
        "Kiln Light: 15.7 × 11.8 in, 0 of 0 coats laid, due 20 Mar 2026\n"  # 1 in = 2.54 cm
    )
    assert call("--units", "us", "piece", "list", "--json").document[0]["due"] == "2026-03-20"


@pytest.mark.parametrize("words", [(), ("--units", "us"), ("--units", "metric")])
def test_that_json_is_in_english_and_si_whatever_she_chose(call: Call, words: tuple[str, ...]) -> None:
    plain = call(*PREDICT, "--json").out
    speak_by(marked)
    choose(US)
    assert call(*words, *PREDICT, "--json").out == plain
    assert chosen() == METRIC


def test_that_a_sheet_that_is_not_there_is_answered_with_those_there_are(call: Call) -> None:
    assert call("piece", "add", "Kiln Light", "--width-cm", "40", "--height-cm", "30").code == 0
    for words in (
        ("coat", "lay", "Kiln Light", "nowhere"),
        ("coat", "plan", "Kiln Light", "nowhere"),
        ("plan", "--keep-recipe", "Odd=nowhere"),
    ):
        answer = call(*words)
        assert answer.code == 1
        assert "There is no data sheet 'nowhere'; known are gloss-solventborne, gloss-waterborne" in answer.err


def test_that_every_word_of_the_records_has_its_text() -> None:
    for words in (Orientation, Finding, Outcome, Surface):
        assert [told(word) for word in words] == [word.value for word in words]
    assert (set(AIR), set(STRAIGHT_ON)) == (set(Movement), set(Support) - {Support.SEALED})
