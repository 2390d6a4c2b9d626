"""What an own sketch's numbers are: each column with what it is taken for and why, what she says, and the two tests."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from studiowatch.board.column_tests import ACT_MS, QUIET_MS, ColumnTest, Kind, Stage, Verdict, settle
from studiowatch.board.loose_units import CHANNELS, UNITS
from studiowatch.board.mapping import Choice, ColumnMapping, Outcome
from studiowatch.room.readings import Channel
from studiowatch.service.columns_view import ColumnsView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.ui.models.times import SECOND_MS
from studiowatch.ui.models.tones import Tone

CHANNEL_WORDS = {
    Channel.TEMPERATURE: mark("air temperature"),
    Channel.SURFACE: mark("surface temperature"),
    Channel.HUMIDITY: mark("relative humidity"),
    Channel.AIR_SPEED: mark("air speed"),
    Channel.AIR_SIGNAL: mark("air sensor's voltage"),
    Channel.PRESSURE: mark("air pressure"),
    Channel.PARTICLES: mark("dust"),
}
NOT_USED, NOT_SAID = mark("not used"), mark("say what it is")
ASKED_FIRST = mark("Say what each number is, or that it is not used; until then nothing is read.")
ACCEPTED = mark("Read as below. What you change holds from the next line on.")
_ALL_CHOICES = tuple(Choice(channel, name) for name, unit in UNITS.items() for channel in CHANNELS[unit.dimension])


@dataclass(frozen=True, slots=True, kw_only=True)
class Option:
    """One meaning as offered; `choice` is None for "not used"."""

    words: str
    choice: Choice | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnRow:
    """One column.

    Attributes
    ----------
    number : str
        Its newest number as the sketch sent it, or "".
    options : tuple of Option
        The likeliest first; `chosen` is the index of what it is taken for, or None where that is asked.
    why : str
        Why, one sentence.
    """

    key: str
    number: str
    options: tuple[Option, ...]
    chosen: int | None
    why: str
    tone: Tone


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnsDraft:
    """What she said and what the tests showed, not sent yet."""

    said: Mapping[str, Choice | None] = field(default_factory=dict)
    verdicts: tuple[Verdict, ...] = ()

    def mapping(self, view: ColumnsView) -> ColumnMapping:
        """Return the board's mapping with the tests and her own words applied; columns that went are passed over."""
        mapping = view.mapping
        for verdict in self.verdicts:
            known = {key: channels for key, channels in verdict.found.items() if key in mapping.keys}
            mapping = settle(mapping, replace(verdict, found=known))
        for key in self.said:
            if key in mapping.keys:
                mapping = mapping.set_by_hand(key, None)
        for key, choice in self.said.items():
            if key in mapping.keys and choice is not None:
                mapping = mapping.set_by_hand(key, choice)
        return mapping

    def with_word(self, view: ColumnsView, key: str, choice: Choice | None) -> ColumnsDraft:
        """Return the draft after she said what column `key` is.

        Raises
        ------
        ValueError
            If another column already is that, with one sentence for her.
        """
        draft = replace(self, said={**self.said, key: choice})
        draft.mapping(view)
        return draft


def column_rows(view: ColumnsView, mapping: ColumnMapping) -> tuple[ColumnRow, ...]:
    """Return the columns of `mapping` with their newest numbers."""
    numbers = dict(view.numbers)
    rows = []
    for column in mapping.columns:
        first = (column.choice,) if column.choice else column.candidates
        rest = tuple(choice for choice in _ALL_CHOICES if choice not in first)
        options = (*map(_option, first), Option(words=say(NOT_USED)), *map(_option, rest))
        taken = 0 if column.choice else None if column.outcome is Outcome.ASKED else len(first)
        value = numbers.get(column.key)
        rows.append(
            ColumnRow(
                key=column.key,
                number="" if value is None else chosen().plain(value),
                options=options,
                chosen=taken,
                why=column.why,
                tone=Tone.CAUTION if taken is None else Tone.MUTED,
            )
        )
    return tuple(rows)


def _option(choice: Choice) -> Option:
    words = say("{quantity} in {unit}", quantity=say(CHANNEL_WORDS[choice.channel]), unit=say(choice.unit))
    return Option(words=words, choice=choice)


def unsaid_sentence(mapping: ColumnMapping) -> str:
    """Return what is left to say before it can be used, one sentence, or ""."""
    unsaid = [column.key for column in mapping.columns if column.outcome is Outcome.ASKED]
    if not unsaid:
        return "" if mapping.chosen else say("Every column is “not used”: say of one at least what it is.")
    return say_counted(
        len(unsaid),
        "Say what {columns} is, or choose “not used”.",
        "Say what {columns} are, or choose “not used”.",
        columns=", ".join(unsaid),
    )


def can_test(view: ColumnsView) -> bool:
    """Return whether the tests can tell anything: single lines come only while she has not accepted."""
    return not view.accepted


@dataclass(frozen=True, slots=True, kw_only=True)
class Doing:
    """A test under way: what she is to do, and the seconds that are left of this."""

    told: str
    left_s: int


def doing(test: ColumnTest, now_ms: int) -> Doing:
    """Return what to do at UTC `now_ms`."""
    test = replace(test, now_ms=max(test.now_ms, now_ms))
    until_ms = test.started_ms + QUIET_MS + (ACT_MS if test.stage is Stage.ACT else 0)
    return Doing(told=test.told, left_s=max(0, -(-(until_ms - test.now_ms) // SECOND_MS)))


def is_over(test: ColumnTest, now_ms: int) -> bool:
    """Return whether the test is to be judged."""
    return replace(test, now_ms=max(test.now_ms, now_ms)).stage is Stage.DONE


TEST_NAMES = {Kind.BREATH: mark("Breath test"), Kind.FAN: mark("Fan test")}
TEST_CAUTIONS = {
    Kind.BREATH: mark("Keep your face off the bead: it is hot enough to hurt."),
    Kind.FAN: mark("Not beside a wet coat: moving air and dust mark it. A mains fan's own instructions come first."),
}
