"""The atlas: for each cause a made-up coat that shows it, reviewed as hers are."""

from __future__ import annotations

from dataclasses import dataclass
from importlib.resources import files

from studiowatch.board.room_log import read_room_log
from studiowatch.service.local_time import when_text
from studiowatch.service.review_log import LogInMemory, room_from, stack_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.store.studio_file import read_studio
from studiowatch.studio.review import Setting, review
from studiowatch.studio.review_causes import TITLES, Cause
from studiowatch.studio.review_views import Review


@dataclass(frozen=True, slots=True, kw_only=True)
class AtlasPage:
    """A cause, and what to call it; `read` reviews its coat."""

    cause: Cause
    title: str

    def read(self) -> Review:
        """Return the review of the made-up coat that shows this cause: its last one; it takes a moment."""
        folder = files("studiowatch.resources") / "atlas"
        names = f"{self.cause.value}.toml", f"{self.cause.value}.csv"
        studio, log = ((folder / name).read_text("utf-8") for name in names)
        piece = read_studio(studio, names[0]).pieces[0]
        readings = read_room_log(log.splitlines(keepends=True), names[1]).readings()
        shelf = SheetShelf.open()
        stack = stack_of(piece, shelf, len(piece.coats))
        return review(stack, room_from(LogInMemory(readings=readings), stack), Setting(when_text=when_text))


def pages() -> tuple[AtlasPage, ...]:
    """Return a page for every cause, "unknown" last."""
    return tuple(AtlasPage(cause=cause, title=say(TITLES[cause])) for cause in Cause)


def example_of(cause: Cause) -> Review:
    """Return the review of the made-up coat that shows `cause`; it takes a moment."""
    return next(page for page in pages() if page.cause is cause).read()
