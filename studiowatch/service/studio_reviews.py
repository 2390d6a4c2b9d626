"""Reviews for the window, from the records as they are at the moment of asking."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.review_log import ReviewedCoat, number_of
from studiowatch.service.review_ports import ReviewRefused
from studiowatch.service.reviewer import Reviewer, reviewer_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.review_records import ReviewRecords
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.review_views import Reliability, Review


class StudioReviews:
    """Meets `service.review_ports.Reviews`.

    Parameters
    ----------
    folder : StudioFolder
        Where the records lie; they are only read.
    """

    def __init__(self, folder: StudioFolder) -> None:
        self._folder = folder

    def review(self, coat_key: str) -> Review:
        """Return the review of a laid coat by its key.

        Raises
        ------
        ReviewRefused
            One sentence: it cannot be followed, or is not in the records any more.
        """
        with self._reviewer() as reviewer:
            for piece in reviewer.pieces:
                for coat in piece.coats:
                    if coat.key == coat_key:
                        return reviewer.review(piece, number_of(piece, coat))
        raise ReviewRefused("That coat is not in the records any more; choose another.")

    def reliability(self, progress: Callable[[float], None]) -> Reliability:
        """Return how often each chance came true here."""
        with self._reviewer() as reviewer:
            reviewer.told(progress)
            return reviewer.reliability()

    @contextmanager
    def _reviewer(self) -> Iterator[Reviewer]:
        try:
            with looking(self._folder.database) as database:
                shelf = SheetShelf.open(self._folder.sheets)
                yield reviewer_of(ReviewRecords(database), shelf, KeptSeverities(path=self._folder.severities))
        except (ReviewedCoat, OutOfRange, StoreTrouble) as fault:
            raise ReviewRefused(str(fault)) from fault
