"""The warnings on the keeper's desk: settled against the room at each look, said, and then put on disk."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.happenings import WarningHappened
from studiowatch.service.ports import Records
from studiowatch.service.room_foretold import RoomForetold
from studiowatch.service.room_heading import RoomHeading
from studiowatch.service.snapshot import WarningView
from studiowatch.speech.units import Units, chosen
from studiowatch.speech.words import say
from studiowatch.store.shapes import WarningRecord
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.warnings import (
    RECENT,
    Change,
    StudioWarning,
    WarningBook,
    WarningState,
    answered_as,
    hear,
    remind_until,
    reopened,
    settle,
)
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level, Sentence

FRESH_MS = 2000  # ms, a room that was read longer ago is not taken as another point of its trend
PUT_OFF_MOST_MS = 86_400_000  # ms, a warning that is put off for longer is forgotten rather than put off; assumption


@dataclass(slots=True)
class WarningDesk:
    """Holds the warning book.

    Attributes
    ----------
    disk : Disk
        Takes every state of every warning, in order; while it refuses, the warnings stand and sound all the same.
    clock_text : callable
        Turns UTC ms into the time of day as she reads it.
    silent_after_s : float
        Seconds without a reading after which a wet coat counts as unwatched.
    units : Units
        What warnings and verdicts are said in, at first as the program was started; the records keep their words.
    """

    records: Records
    disk: Disk
    clock_text: Callable[[int], str]
    silent_after_s: float
    book: WarningBook = field(default_factory=WarningBook)
    concerns: tuple[Concern, ...] = ()
    heading: RoomHeading | RoomForetold = field(default_factory=RoomHeading)
    units: Units = field(default_factory=chosen)

    def reopen(self, piece_keys: Mapping[str, str], now_ms: int) -> None:
        """Take up the warnings as they were left, and their causes as if they held until now.

        Parameters
        ----------
        piece_keys : mapping of str to str
            The keys of the pieces on the rack, by title: the records know the titles alone.
        now_ms : int
            UTC ms.
        """
        book = reopened([_warning_of(record) for record in self.records.warnings(RECENT)])
        self.book = replace(book, open=tuple(_with_keys(warning, piece_keys) for warning in book.open))
        self.concerns = tuple(
            _cause_of(warning, now_ms) for warning in self.book.open if warning.piece_keys or not warning.piece_titles
        )

    def settle(self, air: AirNow, coats: Sequence[CoatAtRisk], now_ms: int) -> list[WarningHappened]:
        """Judge the room; keep what changed and return it."""
        if now_ms - air.blind_since_ms(now_ms) < FRESH_MS:
            self.heading.take(air, now_ms)
        self.concerns = find_concerns(
            air,
            coats,
            now_ms=now_ms,
            clock_text=self.clock_text,
            before=self.concerns,
            silent_after_s=self.silent_after_s,
            heading=self.heading,
            units=self.units,
        )
        self.book, changes = settle(self.book, self.concerns, now_ms)
        return self._kept(changes, now_ms)

    def open_one(self, key: str) -> StudioWarning | None:
        """Return an open warning, or None."""
        return next((warning for warning in self.book.open if warning.key == key), None)

    def is_as(self, warning: StudioWarning) -> bool:
        """Return whether a warning is open, and heard or put off as `warning` is."""
        now = self.open_one(warning.key)
        return now is not None and (now.state, now.remind_ms) == (warning.state, warning.remind_ms)

    def put(self, warning: StudioWarning, now_ms: int) -> list[WarningHappened]:
        """Have an open warning heard or put off, or neither, as `warning` is; what it says of the room stays."""
        self.book, changes = answered_as(self.book, warning)
        return self._kept(changes, now_ms)

    def hear(self, key: str, now_ms: int) -> list[WarningHappened]:
        """She has heard it."""
        self.book, changes = hear(self.book, key)
        return self._kept(changes, now_ms)

    def remind(self, key: str, until_ms: int, now_ms: int) -> list[WarningHappened]:
        """Put it off.

        Raises
        ------
        Refused
            If the time does not lie within the next 24 h; nothing was changed.
        """
        if not now_ms <= until_ms <= now_ms + PUT_OFF_MOST_MS:
            ahead_h = (until_ms - now_ms) / 3_600_000
            raise Refused(
                say(
                    "The warning would come again in {hours} h; allowed is 0 to 24 h. Choose another time.",
                    hours=chosen().number(ahead_h, 1),
                )
            )
        self.book, changes = remind_until(self.book, key, until_ms)
        return self._kept(changes, now_ms)

    def shift(self, step_ms: int) -> None:
        """Move what stands along with a wall clock that was set, on disk too: it lasts as long as it would have."""
        self.concerns = tuple(concern.shifted(step_ms) for concern in self.concerns)
        self.book = replace(self.book, open=tuple(warning.shifted(step_ms) for warning in self.book.open))
        for warning in self.book.open:
            self.disk.later(partial(self.records.save_warning, _record_of(warning)))

    def views(self) -> tuple[WarningView, ...]:
        """Return the open warnings, most urgent first, then the latest past ones."""
        return tuple(_view(warning) for warning in (*self.book.open, *self.book.recent))

    def _kept(self, changes: Sequence[Change], now_ms: int) -> list[WarningHappened]:
        for change in changes:
            self.disk.later(partial(self.records.save_warning, _record_of(change.warning)))
        return [WarningHappened(time_ms=now_ms, warning=change.warning, is_new=change.is_new) for change in changes]


def _with_keys(warning: StudioWarning, piece_keys: Mapping[str, str]) -> StudioWarning:
    return replace(
        warning, piece_keys=tuple(piece_keys[title] for title in warning.piece_titles if title in piece_keys)
    )


def _cause_of(warning: StudioWarning, now_ms: int) -> Concern:
    return Concern(
        kind=warning.kind,
        level=warning.level,
        piece_keys=warning.piece_keys,
        piece_titles=warning.piece_titles,
        began_ms=warning.began_ms,
        seen_ms=now_ms,
        sentence=warning.sentence,
        expected_ms=warning.expected_ms,
        is_ahead=warning.is_ahead,
    )


def _view(warning: StudioWarning) -> WarningView:
    return WarningView(
        key=warning.key,
        kind=warning.kind.value,
        state=warning.state,
        level=warning.level,
        sentence=warning.sentence,
        began_ms=warning.began_ms,
        cleared_ms=warning.cleared_ms,
        piece_titles=warning.piece_titles,
        sound=warning.sounds,
        remind_ms=warning.remind_ms,
        basis=warning.basis,
        expected_ms=warning.expected_ms,
    )


def _record_of(warning: StudioWarning) -> WarningRecord:
    return WarningRecord(
        key=warning.key,
        kind=warning.kind.value,
        level=int(warning.level),
        state=warning.state.value,
        headline=warning.sentence.headline,
        detail=warning.sentence.detail,
        advice=warning.sentence.advice,
        began_ms=warning.began_ms,
        raised_ms=warning.raised_ms,
        cleared_ms=warning.cleared_ms,
        pieces=warning.piece_titles,
        remind_ms=warning.remind_ms,
        ahead_ms=warning.expected_ms if warning.is_ahead else None,
    )


def _warning_of(record: WarningRecord) -> StudioWarning:
    level = Level(record.level)
    return StudioWarning(
        key=record.key,
        kind=Kind(record.kind),
        level=level,
        state=WarningState(record.state),
        sentence=Sentence(level=level, headline=record.headline, detail=record.detail, advice=record.advice),
        piece_keys=(),
        piece_titles=record.pieces,
        began_ms=record.began_ms,
        raised_ms=record.raised_ms,
        cleared_ms=record.cleared_ms,
        remind_ms=record.remind_ms,
        expected_ms=record.ahead_ms,
        is_ahead=record.ahead_ms is not None,
    )
