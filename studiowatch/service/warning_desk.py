"""The warnings on the keeper's desk: settled against the room at each look, and on disk before they are said."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from studiowatch.service.happenings import WarningHappened
from studiowatch.service.ports import Records
from studiowatch.service.snapshot import WarningView
from studiowatch.store.shapes import WarningRecord
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.warnings import (
    RECENT,
    Change,
    StudioWarning,
    WarningBook,
    WarningState,
    hear,
    remind_until,
    reopened,
    settle,
)
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Level, Sentence


@dataclass(slots=True)
class WarningDesk:
    """Holds the warning book.

    Attributes
    ----------
    clock_text : callable
        Turns UTC ms into the time of day as she reads it.
    silent_after_s : float
        Seconds without a reading after which a wet coat counts as unwatched.
    trouble : str
        One sentence while warnings cannot be put on disk, else ""; they stand and sound all the same.
    """

    records: Records
    clock_text: Callable[[int], str]
    silent_after_s: float
    book: WarningBook = field(default_factory=WarningBook)
    concerns: tuple[Concern, ...] = ()
    trouble: str = ""
    _unsaved: dict[str, WarningRecord] = field(default_factory=dict)

    def reopen(self) -> None:
        """Take up the warnings as they were left."""
        self.book = reopened([_warning_of(record) for record in self.records.warnings(RECENT)])

    def settle(self, air: AirNow, coats: Sequence[CoatAtRisk], now_ms: int) -> list[WarningHappened]:
        """Judge the room; keep what changed and return it."""
        self.concerns = find_concerns(
            air,
            coats,
            now_ms=now_ms,
            clock_text=self.clock_text,
            before=self.concerns,
            silent_after_s=self.silent_after_s,
        )
        self.book, changes = settle(self.book, self.concerns, now_ms)
        return self._kept(changes, now_ms)

    def hear(self, key: str, now_ms: int) -> list[WarningHappened]:
        """She has heard it."""
        self.book, changes = hear(self.book, key)
        return self._kept(changes, now_ms)

    def remind(self, key: str, until_ms: int, now_ms: int) -> list[WarningHappened]:
        """Put it off."""
        self.book, changes = remind_until(self.book, key, until_ms)
        return self._kept(changes, now_ms)

    def views(self) -> tuple[WarningView, ...]:
        """Return the open warnings, most urgent first, then the latest past ones."""
        return tuple(_view(warning) for warning in (*self.book.open, *self.book.recent))

    def _save(self) -> None:
        try:
            for key, record in tuple(self._unsaved.items()):
                self.records.save_warning(record)
                del self._unsaved[key]
        except StoreTrouble as trouble:
            self.trouble = str(trouble)
        else:
            self.trouble = ""

    def _kept(self, changes: Sequence[Change], now_ms: int) -> list[WarningHappened]:
        self._unsaved |= {change.warning.key: _record_of(change.warning) for change in changes}
        self._save()
        return [WarningHappened(time_ms=now_ms, warning=change.warning, is_new=change.is_new) for change in changes]


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
    )
