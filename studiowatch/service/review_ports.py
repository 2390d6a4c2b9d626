"""What the window may ask about a coat that came out, well or not."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from studiowatch.studio.review_views import Reliability, Review


class ReviewRefused(Exception):  # noqa: N818 - reads as the answer it is
    """A coat cannot be reviewed; the message is one sentence for her."""


class Reviews(Protocol):
    """Reviews coats from the records. Every call may take a while, and may come from any one thread."""

    def review(self, coat_key: str) -> Review:
        """Return the review of a laid coat by its key; raises `ReviewRefused`."""
        ...

    def reliability(self, progress: Callable[[float], None]) -> Reliability:
        """Return how often each chance came true here; `progress` is called with the share done, 0-1."""
        ...
