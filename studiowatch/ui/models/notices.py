"""The sentence, the prompts and the warnings: what wants her, and the words for it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.service.snapshot import PromptView, Snapshot, WarningView
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import clock_words, lasting_words
from studiowatch.ui.models.tones import LEVEL_WORDS, Tone


@dataclass(frozen=True, slots=True, kw_only=True)
class SentenceCard:
    """The most urgent sentence; `warning_key` is the open warning it speaks of, or ""."""

    sentence: Sentence
    warning_key: str = ""
    can_hear: bool = False
    note: str = ""

    @property
    def spoken(self) -> str:
        """Return the card as one phrase for a screen reader."""
        one = self.sentence
        said = (LEVEL_WORDS[one.level], one.headline, one.detail, one.advice, self.note)
        return ". ".join(part for part in said if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptRow:
    """Something to do at the rack; `caution` is what to heed while doing it, or ""."""

    key: str
    text: str
    when: str
    tone: Tone
    caution: str = ""

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return ". ".join(part for part in (self.text, self.when, self.caution) if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningRow:
    """A warning, open or past; `is_open` ones may be heard while `can_hear`."""

    key: str
    level: Level
    headline: str
    when: str
    is_open: bool
    can_hear: bool
    advice: str

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return f"{LEVEL_WORDS[self.level]}. {self.headline}. {self.when}"


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
        can_hear=spoken_of.state is WarningState.RAISED,
        note=_state_words(spoken_of, snapshot.time_ms, zone),
    )


def _state_words(warning: WarningView, now_ms: int, zone: tzinfo | None) -> str:
    if warning.state is WarningState.HEARD:
        return "heard"
    if warning.state is WarningState.REMIND and warning.remind_ms is not None:
        return f"quiet until {clock_words(warning.remind_ms, now_ms, zone)}"
    return ""


def prompt_rows(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[PromptRow, ...]:
    """Return the prompts, soonest first."""
    due = sorted(snapshot.prompts, key=lambda one: one.due_ms)
    return tuple(_prompt_row(one, snapshot.time_ms, zone) for one in due)


def _prompt_row(prompt: PromptView, now_ms: int, zone: tzinfo | None) -> PromptRow:
    late = prompt.overdue or prompt.due_ms <= now_ms
    when = clock_words(prompt.due_ms, now_ms, zone)
    if late:
        when = f"now, since {when}"
    return PromptRow(
        key=prompt.key,
        text=prompt.text,
        when=f"{when} · {prompt.piece_title}" if prompt.piece_title else when,
        tone=Tone.CAUTION if late else Tone.MUTED,
        caution=prompt.caution,
    )


def next_prompt_words(snapshot: Snapshot, zone: tzinfo | None = None) -> str:
    """Return the next thing to do, and below it when and where, for the view from across the room."""
    rows = prompt_rows(snapshot, zone)
    return f"{rows[0].text}\n{rows[0].when}" if rows else "Nothing to do at the rack"


def warning_rows(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[WarningRow, ...]:
    """Return the warnings as the snapshot orders them: open first, then the latest past ones."""
    return tuple(_warning_row(one, snapshot.time_ms, zone) for one in snapshot.warnings)


def _warning_row(warning: WarningView, now_ms: int, zone: tzinfo | None) -> WarningRow:
    began = clock_words(warning.began_ms, now_ms, zone)
    if warning.cleared_ms is None:
        when = f"since {began}"
    else:
        when = f"{began} · {lasting_words(warning.cleared_ms - warning.began_ms)}"
    pieces = ", ".join(warning.piece_titles) or "no coat was wet"
    state = _state_words(warning, now_ms, zone)
    return WarningRow(
        key=warning.key,
        level=warning.level,
        headline=warning.sentence.headline,
        when=" · ".join(part for part in (when, state, pieces) if part),
        is_open=warning.state is not WarningState.CLEARED,
        can_hear=warning.state is WarningState.RAISED,
        advice=warning.sentence.advice,
    )
