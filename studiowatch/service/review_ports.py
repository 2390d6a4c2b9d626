"""What the window may ask about a coat that came out, well or not."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Protocol

from studiowatch.studio.review_views import OtherCoat, Reliability, Review


class Reviews(Protocol):
    """Reviews coats from the records. Calls may take a while, and come from one thread at a time.

    `progress` is called with the share done, 0-1, and may raise to cancel. `review_desk.REFUSALS` are answers for her.
    """

    def review(self, coat_key: str, progress: Callable[[float], None]) -> Review:
        """Return the review of a laid coat by its key."""
        ...

    def others(self, coat_key: str) -> Sequence[OtherCoat]:
        """Return her other coats of the same kind with a recorded outcome, and this one first."""
        ...

    def reliability(self, progress: Callable[[float], None]) -> Reliability:
        """Return how often each chance came true here."""
        ...
