"""What her coats taught, kept up with during a watch: learnt anew beside the keeper's thread after each outcome."""

from __future__ import annotations

import logging
from collections.abc import Callable
from concurrent.futures import Future
from contextlib import closing
from dataclasses import dataclass, field

from studiowatch.service.commands import Command, RecordOutcome
from studiowatch.service.correction_commands import Redo, TakeBackCoat, TakeBackOutcome, Undo
from studiowatch.service.reviewer import reviewer_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.review_records import ReviewRecords
from studiowatch.studio.review_curves import Curves

logger = logging.getLogger(__name__)

Learn = Callable[[str], Curves]
TEACHES = RecordOutcome | TakeBackOutcome | TakeBackCoat | Undo | Redo


@dataclass(slots=True)
class CurveDesk:
    """Has the curves learnt anew when an outcome was recorded or taken back. It only looks, and never waits.

    Attributes
    ----------
    work : callable or None
        Has the curves learnt beside the keeper, the coat with this key dried for it if need be ("": none is), and
        returns their future; with None none are learnt.
    """

    work: Callable[[str], Future[Curves]] | None = None
    _wanted: list[str] = field(default_factory=list)
    _asked: Future[Curves] | None = None

    def heed(self, command: Command) -> None:
        """Take it that `command` was carried out and is on disk."""
        if isinstance(command, TEACHES):
            key = command.coat_key if isinstance(command, RecordOutcome) else ""
            self._wanted.append(key)

    def tend(self) -> Curves | None:
        """Return new curves if some have come, else None; have the next learnt."""
        learnt = None
        if self._asked is not None and self._asked.done():
            asked, self._asked = self._asked, None
            fault = asked.exception()
            if fault is None:
                learnt = asked.result()
            else:  # the curves stay as they are until the next outcome or the next start
                logger.warning("the curves could not be learnt anew: %s", fault)  # not said
        if self._wanted and self._asked is None and self.work is not None:
            self._asked = self.work(self._wanted.pop(0))
        return learnt


def learn_from(folder: StudioFolder) -> Learn:
    """Return how the curves are learnt from the records in `folder`; for a thread other than the keeper's."""

    def learn(coat_key: str) -> Curves:
        shelf = SheetShelf.open(folder.sheets)
        with closing(ReviewRecords(open_database(folder.database, read_only=True))) as records:
            reviewer = reviewer_of(records, shelf, KeptSeverities(path=folder.severities))
            reviewer.dries, reviewer.dries_too = False, coat_key
            return reviewer.curves()

    return learn
