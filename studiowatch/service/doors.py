"""What the window is given of one folder of records, beside the desk."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studiowatch.service.exchange import Exchange
from studiowatch.service.finishing_sheets import FinishingSheets, StudioFinishing
from studiowatch.service.ports import Desk, History
from studiowatch.service.review_desk import ReviewDesk
from studiowatch.service.review_ports import Reviews
from studiowatch.service.studio_exchange import StudioExchange
from studiowatch.store.folder import StudioFolder

if TYPE_CHECKING:
    from studiowatch.service.outfit import Outfit


@dataclass(frozen=True, slots=True, kw_only=True)
class Doors:
    """The log and the records of `folder` to look at, files out and in, reviews, finishing records."""

    folder: StudioFolder
    history: History
    exchange: Exchange
    reviews: Reviews
    finishing: FinishingSheets


@contextmanager
def doors_of(outfit: Outfit, folder: StudioFolder, desk: Desk) -> Iterator[Doors]:
    """Open the doors of a folder that is watched; close them on leaving."""
    with closing(outfit.open_history(folder.database)) as history:
        yield Doors(
            folder=folder,
            history=history,
            exchange=StudioExchange(folder=folder, clock=outfit.clock, desk=desk, check=outfit.check_store),
            reviews=ReviewDesk(folder=folder, utc_ms=outfit.clock.utc_ms),
            finishing=StudioFinishing(folder=folder, photo=outfit.photo, clock=outfit.clock),
        )
