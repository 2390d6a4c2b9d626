"""The sentence and the warnings: what wants her, and the words for it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import Kind
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import clock_words, lasting_words
from studiowatch.ui.models.tones import LEVEL_WORDS

PAST_ROWS = 12  # past warnings that stand below the open ones
_HEARABLE = frozenset({WarningState.RAISED, WarningState.REMIND})
_PAST: dict[str, tuple[tuple[str, str], ...]] = {
    Kind.AIR_MOVING: ((mark("Air is moving over"), mark("Air moved over")),),
    Kind.TOO_COLD: (
        (mark("It is getting cold"), mark("It was getting cold")),
        (mark("Too cold"), mark("It was too cold")),
    ),
    Kind.DAMP: ((mark("It is getting damp"), mark("It was getting damp")), (mark("Too damp"), mark("It was too damp"))),
    Kind.NEAR_DEW_POINT: (
        (mark("The dew point is near"), mark("The dew point was near")),
        (mark("Water may settle"), mark("Water may have settled")),
    ),
    Kind.BOARD_SILENT: ((mark("The board is silent"), mark("The board was silent")),),
    Kind.READING_OLD: ((mark("The room was not read since"), mark("The room was not read after")),),
    Kind.READING_IMPLAUSIBLE: ((mark("A reading cannot be right"), mark("A reading could not be right")),),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class SentenceCard:
    """The most urgent sentence.

    Attributes
    ----------
    warning_key : str
        The open warning it speaks of, or "".
    can_hear, can_remind : bool
        Which answers are left.
    note, where : str
        What she answered; which pieces, and since when.
    basis : str
        Where the limit comes from.
    """

    sentence: Sentence
    warning_key: str = ""
    can_hear: bool = False
    can_remind: bool = False
    note: str = ""
    where: str = ""
    basis: str = ""

    @property
    def spoken(self) -> str:
        """Return the card as one phrase for a screen reader."""
        one = self.sentence
        said = (say(LEVEL_WORDS[one.level]), one.headline, one.detail, one.advice, self.note)
        return ". ".join(part for part in said if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningRow:
    """A warning, open or past; `can_hear` and `can_remind` say which answers are left."""

    key: str
    level: Level
    headline: str
    when: str
    is_open: bool
    can_hear: bool
    can_remind: bool
    advice: str
    basis: str = ""

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return f"{say(LEVEL_WORDS[self.level])}. {self.headline}. {self.when}"


def sentence_card(snapshot: Snapshot, zone: tzinfo | None = None) -> SentenceCard:
    """Return the card beside the figures."""
    open_ones = [one for one in snapshot.warnings if one.state is not WarningState.CLEARED]
    sentence = snapshot.sentence
    if sentence.level is Level.CALM or not open_ones:
        return SentenceCard(sentence=sentence)
    spoken_of = next((one for one in open_ones if one.sentence.headline == sentence.headline), open_ones[0])
    return SentenceCard(
        sentence=sentence,
        warning_key=spoken_of.key,
        can_hear=spoken_of.state in _HEARABLE,
        can_remind=spoken_of.state is WarningState.RAISED,
        note=_state_words(spoken_of, snapshot.time_ms, zone),
        where=_where(spoken_of, snapshot.time_ms, zone),
        basis=spoken_of.basis,
    )


def _where(warning: WarningView, now_ms: int, zone: tzinfo | None) -> str:
    since = say("since {time}", time=clock_words(warning.began_ms, now_ms, zone))
    return " · ".join(part for part in (", ".join(warning.piece_titles), since) if part)


def _state_words(warning: WarningView, now_ms: int, zone: tzinfo | None) -> str:
    if warning.state is WarningState.HEARD:
        return say("heard")
    if warning.state is WarningState.REMIND and warning.remind_ms is not None:
        return say("put off until {time}", time=clock_words(warning.remind_ms, now_ms, zone))
    return ""


def warning_rows(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[WarningRow, ...]:
    """Return the warnings as the snapshot orders them: open first, then the latest past ones; history has the rest."""
    still_open = sum(one.state is not WarningState.CLEARED for one in snapshot.warnings)
    return tuple(_warning_row(one, snapshot.time_ms, zone) for one in snapshot.warnings[: still_open + PAST_ROWS])


def _warning_row(warning: WarningView, now_ms: int, zone: tzinfo | None) -> WarningRow:
    began = clock_words(warning.began_ms, now_ms, zone)
    if warning.cleared_ms is None:
        when = say("since {time}", time=began)
    else:
        when = f"{began} · {lasting_words(warning.cleared_ms - warning.began_ms)}"
    pieces = ", ".join(warning.piece_titles) or say("no coat was wet")
    state = _state_words(warning, now_ms, zone)
    return WarningRow(
        key=warning.key,
        level=warning.level,
        headline=_headline(warning),
        when=" · ".join(part for part in (when, state, pieces) if part),
        is_open=warning.state is not WarningState.CLEARED,
        can_hear=warning.state in _HEARABLE,
        can_remind=warning.state is WarningState.RAISED,
        advice=warning.sentence.advice,
        basis=warning.basis,
    )


def _headline(warning: WarningView) -> str:
    """Return the headline, in the past once the warning is past."""
    headline = warning.sentence.headline
    if warning.state is WarningState.CLEARED:
        for present, past in _PAST.get(warning.kind, ()):
            if headline.startswith(say(present)):
                return say(past) + headline.removeprefix(say(present))
    return headline
