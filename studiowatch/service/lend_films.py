"""The films on the rack, asked for beside the watch."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studiowatch.service.films_to_come import FilmsToCome


@dataclass(frozen=True, slots=True, kw_only=True)
class LendFilms:
    """Call `to` with the films as they stand, on the keeper's thread: it must hand them over and return."""

    to: Callable[[FilmsToCome], None]
