"""Where the window asks for reviews: from a worker's thread, while the keeper watches on."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, field

from studiowatch.coats.sheet_file import SheetFaults
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.other_coats import other_coats
from studiowatch.service.review_log import ReviewedCoat, number_of
from studiowatch.service.reviewer import Reviewer, reviewer_of
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown
from studiowatch.speech.words import say
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.review_records import ReviewRecords
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.review_views import OtherCoat, Reliability, Review

REFUSALS = (ReviewedCoat, OutOfRange, StoreTrouble, SheetFaults, SheetUnknown)
"""Why there is no review: the message is for her."""


@dataclass(slots=True)
class ReviewDesk:
    """Answers with reviews of what the records hold at that moment. For one thread at a time.

    Each call opens the records for reading beside the keeper, and lets go of them.
    """

    folder: StudioFolder
    utc_ms: Callable[[], int] | None = None
    _kept: KeptSeverities = field(init=False)

    def __post_init__(self) -> None:
        self._kept = KeptSeverities(path=self.folder.severities)

    def review(self, coat_key: str, progress: Callable[[float], None] = lambda _: None) -> Review:
        """Return the review of a laid coat; `progress` is called with the share done, 0-1, and may raise to cancel.

        Raises
        ------
        ReviewedCoat, OutOfRange
            If the coat cannot be reviewed: one sentence.
        StoreTrouble, SheetFaults, SheetUnknown
            If the records or a sheet cannot be read: one sentence.
        """
        with self._reviewer() as reviewer:
            for piece in reviewer.pieces:
                for coat in piece.coats:
                    if coat.key == coat_key and coat.laid_ms is not None:
                        reviewer.told(progress, besides=coat_key)
                        return reviewer.review(piece, number_of(piece, coat))
        raise ReviewedCoat(say("This coat is not among the records, or has not been laid yet."))

    def others(self, coat_key: str) -> Sequence[OtherCoat]:
        """Return a coat and her others of the same kind; see `other_coats`."""
        with self._reviewer() as reviewer:
            return other_coats(reviewer, coat_key)

    def reliability(self, progress: Callable[[float], None] = lambda _: None) -> Reliability:
        """Return how often each chance of clouding came true here; see `review`."""
        with self._reviewer() as reviewer:
            reviewer.told(progress)
            return reviewer.reliability()

    @contextmanager
    def _reviewer(self) -> Iterator[Reviewer]:
        shelf = SheetShelf.open(self.folder.sheets)
        with closing(ReviewRecords(open_database(self.folder.database, read_only=True))) as records:
            yield reviewer_of(records, shelf, self._kept, None if self.utc_ms is None else self.utc_ms())
