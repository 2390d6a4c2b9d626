"""Warnings: raised, heard, put off, cleared; the whole life of one as a table."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from studiowatch.studio.concern import Concern, Kind
from studiowatch.studio.past import never_came, over
from studiowatch.studio.set_on import set_on
from studiowatch.studio.words import Level, Sentence

RECENT = 50  # cleared warnings kept at hand; the store keeps all


class WarningState(StrEnum):
    """Where a warning stands."""

    RAISED = "raised"
    HEARD = "heard"
    REMIND = "remind"
    CLEARED = "cleared"


class Happening(StrEnum):
    """What can befall a warning."""

    STANDS = "stands"
    WORSENS = "worsens"
    HEARD = "heard"
    PUT_OFF = "put off"  # not said
    RUNS_OUT = "runs out"  # not said
    ENDS = "ends"


NEXT_STATE = {
    (WarningState.RAISED, Happening.STANDS): WarningState.RAISED,
    (WarningState.RAISED, Happening.WORSENS): WarningState.RAISED,
    (WarningState.RAISED, Happening.HEARD): WarningState.HEARD,
    (WarningState.RAISED, Happening.PUT_OFF): WarningState.REMIND,
    (WarningState.RAISED, Happening.RUNS_OUT): WarningState.RAISED,
    (WarningState.RAISED, Happening.ENDS): WarningState.CLEARED,
    (WarningState.HEARD, Happening.STANDS): WarningState.HEARD,
    (WarningState.HEARD, Happening.WORSENS): WarningState.RAISED,
    (WarningState.HEARD, Happening.HEARD): WarningState.HEARD,
    (WarningState.HEARD, Happening.PUT_OFF): WarningState.REMIND,
    (WarningState.HEARD, Happening.RUNS_OUT): WarningState.HEARD,
    (WarningState.HEARD, Happening.ENDS): WarningState.CLEARED,
    (WarningState.REMIND, Happening.STANDS): WarningState.REMIND,
    (WarningState.REMIND, Happening.WORSENS): WarningState.RAISED,
    (WarningState.REMIND, Happening.HEARD): WarningState.HEARD,
    (WarningState.REMIND, Happening.PUT_OFF): WarningState.REMIND,
    (WarningState.REMIND, Happening.RUNS_OUT): WarningState.RAISED,
    (WarningState.REMIND, Happening.ENDS): WarningState.CLEARED,
} | {(WarningState.CLEARED, happening): WarningState.CLEARED for happening in Happening}


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioWarning:
    """One warning, open or cleared.

    Attributes
    ----------
    key : str
        Kind, beginning and number: the same run of the same room gives the same keys.
    piece_keys, piece_titles : tuple of str
        All pieces that it touched while it stood; the sentence names those that it touches now.
    began_ms, raised_ms : int
        UTC ms when the cause began, and when it was first said.
    cleared_ms, remind_ms : int or None
        UTC ms when it ended, and until when it is put off.
    may_sound : bool
        Whether its cause is worth a sound.
    basis : str
        Where its limit comes from.
    expected_ms : int or None
        UTC ms at which the limit to act on is expected to be passed; None if it is not, or was.
    is_ahead : bool
        Whether what it warns of was still to come as long as it has stood.
    """

    key: str
    kind: Kind
    level: Level
    state: WarningState
    sentence: Sentence
    piece_keys: tuple[str, ...]
    piece_titles: tuple[str, ...]
    began_ms: int
    raised_ms: int
    cleared_ms: int | None = None
    remind_ms: int | None = None
    may_sound: bool = False
    basis: str = ""
    expected_ms: int | None = None
    is_ahead: bool = False

    @property
    def is_open(self) -> bool:
        """Whether its cause still stands."""
        return self.state is not WarningState.CLEARED

    @property
    def sounds(self) -> bool:
        """Whether it is to be heard now."""
        return self.state is WarningState.RAISED and self.may_sound

    def shifted(self, step_ms: int) -> StudioWarning:
        """Return the same after a wall clock was set `step_ms` on; one that is over happened when it was said to."""
        if not self.is_open:
            return self
        return replace(
            self,
            began_ms=self.began_ms + step_ms,
            raised_ms=self.raised_ms + step_ms,
            remind_ms=set_on(self.remind_ms, step_ms),
            expected_ms=set_on(self.expected_ms, step_ms),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A warning after something befell it that must be stored; `is_new` asks to say it aloud or print it."""

    warning: StudioWarning
    is_new: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningBook:
    """All open warnings, the most urgent first, and the latest cleared ones, the newest first.

    `made` counts the warnings ever made; it numbers the next one.
    """

    open: tuple[StudioWarning, ...] = ()
    recent: tuple[StudioWarning, ...] = ()
    made: int = 0

    @property
    def sounds(self) -> bool:
        """Whether a sound is due."""
        return any(warning.sounds for warning in self.open)


def reopened(warnings: Sequence[StudioWarning]) -> WarningBook:
    """Return the book as it was left, from warnings that were kept, newest first."""
    return WarningBook(
        open=_by_urgency([warning for warning in warnings if warning.is_open]),
        recent=tuple(warning for warning in warnings if not warning.is_open)[:RECENT],
        made=max((int(warning.key.rpartition("-")[2]) for warning in warnings), default=0),
    )


def settle(book: WarningBook, concerns: Sequence[Concern], now_ms: int) -> tuple[WarningBook, tuple[Change, ...]]:
    """Bring the book in line with what is wrong now; at most one open warning for each kind.

    Returns
    -------
    book : WarningBook
        The book after it.
    changes : tuple of Change
        What must be stored and said. Words that merely follow the figures are no change.
    """
    standing = {concern.kind: concern for concern in concerns}
    known = {warning.kind for warning in book.open}
    changes: list[Change] = []
    kept: list[StudioWarning] = []
    ended: list[StudioWarning] = []
    for warning in book.open:
        after, change = _followed(warning, standing.get(warning.kind), now_ms)
        (kept if after.is_open else ended).append(after)
        changes += [change] if change else []
    made = book.made
    for kind, concern in standing.items():
        if kind not in known:
            made += 1
            fresh = _raised(concern, made, now_ms)
            kept.append(fresh)
            changes.append(Change(warning=fresh, is_new=True))
    after_book = WarningBook(open=_by_urgency(kept), recent=(*ended, *book.recent)[:RECENT], made=made)
    return after_book, tuple(changes)


def hear(book: WarningBook, key: str) -> tuple[WarningBook, tuple[Change, ...]]:
    """She heard it: no more sound. A key that is not open changes nothing."""
    return _told(book, key, Happening.HEARD, None)


def remind_until(book: WarningBook, key: str, until_ms: int) -> tuple[WarningBook, tuple[Change, ...]]:
    """Put it off until `until_ms`, UTC ms. A key that is not open changes nothing."""
    return _told(book, key, Happening.PUT_OFF, until_ms)


def answered_as(book: WarningBook, answered: StudioWarning) -> tuple[WarningBook, tuple[Change, ...]]:
    """Have the open warning of that key answered as `answered` is: an answer is taken back, or given again."""
    warning = next((warning for warning in book.open if warning.key == answered.key), None)
    if warning is None:
        return book, ()
    after = replace(warning, state=answered.state, remind_ms=answered.remind_ms)
    kept = [after if other is warning else other for other in book.open]
    return replace(book, open=_by_urgency(kept)), (Change(warning=after),)


def _told(
    book: WarningBook, key: str, happening: Happening, remind_ms: int | None
) -> tuple[WarningBook, tuple[Change, ...]]:
    warning = next((warning for warning in book.open if warning.key == key), None)
    if warning is None:
        return book, ()
    after = replace(warning, state=NEXT_STATE[warning.state, happening], remind_ms=remind_ms)
    if after == warning:
        return book, ()
    kept = [after if other is warning else other for other in book.open]
    return replace(book, open=_by_urgency(kept)), (Change(warning=after),)


def _followed(warning: StudioWarning, concern: Concern | None, now_ms: int) -> tuple[StudioWarning, Change | None]:
    """Return a warning after one look at its cause, and the change if it is one."""
    happening = _happening(warning, concern, now_ms)
    state = NEXT_STATE[warning.state, happening]
    after = replace(
        warning,
        state=state,
        cleared_ms=now_ms if state is WarningState.CLEARED else None,
        remind_ms=warning.remind_ms if state is WarningState.REMIND else None,
    )
    if concern is not None:
        after = replace(
            after,
            level=concern.level,
            sentence=concern.sentence,
            piece_keys=_joined(warning.piece_keys, concern.piece_keys),
            piece_titles=_joined(warning.piece_titles, concern.piece_titles),
            may_sound=concern.may_sound,
            basis=concern.basis or warning.basis,
            expected_ms=concern.expected_ms,
            is_ahead=warning.is_ahead and concern.is_ahead,
        )
    if state is WarningState.CLEARED:
        after = replace(after, sentence=_over(warning))
    if _kept(after) == _kept(warning):
        return after, None
    is_new = state is WarningState.RAISED and happening is not Happening.STANDS
    return after, Change(warning=after, is_new=is_new)


def _joined(before: tuple[str, ...], now: tuple[str, ...]) -> tuple[str, ...]:
    """Return all that a warning ever touched: a piece that was covered since was bare in that air all the same."""
    return tuple(dict.fromkeys((*before, *now)))


def _happening(warning: StudioWarning, concern: Concern | None, now_ms: int) -> Happening:
    if concern is None:
        return Happening.ENDS
    if concern.level > warning.level or not set(concern.piece_keys) <= set(warning.piece_keys):
        return Happening.WORSENS
    if warning.remind_ms is not None and now_ms >= warning.remind_ms:
        return Happening.RUNS_OUT
    return Happening.STANDS


def _kept(warning: StudioWarning) -> tuple[object, ...]:
    """Return what of a warning is worth a line in the records: all but the words and the beginning."""
    is_expected = warning.expected_ms is not None
    return (warning.state, warning.level, warning.piece_keys, warning.may_sound, is_expected, warning.is_ahead)


def _raised(concern: Concern, number: int, now_ms: int) -> StudioWarning:
    return StudioWarning(
        key=f"{concern.kind}-{concern.began_ms}-{number}",
        kind=concern.kind,
        level=concern.level,
        state=WarningState.RAISED,
        sentence=concern.sentence,
        piece_keys=concern.piece_keys,
        piece_titles=concern.piece_titles,
        began_ms=concern.began_ms,
        raised_ms=now_ms,
        may_sound=concern.may_sound,
        basis=concern.basis,
        expected_ms=concern.expected_ms,
        is_ahead=concern.is_ahead,
    )


def _over(warning: StudioWarning) -> Sentence:
    """Return what is kept of a warning: what was, or what was ahead and did not come."""
    told = never_came if warning.is_ahead else over
    return told(warning.kind, warning.level, warning.piece_titles)


def _by_urgency(warnings: Sequence[StudioWarning]) -> tuple[StudioWarning, ...]:
    order = list(Kind)
    return tuple(sorted(warnings, key=lambda warning: (-warning.level, order.index(warning.kind), warning.raised_ms)))
