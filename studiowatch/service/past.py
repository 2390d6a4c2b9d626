"""The time behind as the window sees it: coats of pieces that left the rack by name, all warnings, all prompts."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Protocol

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.sheet_file import SheetFaults
from studiowatch.room.readings import Channel
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown
from studiowatch.store.past import Past, PastPiece, PastPrompt, PastWarning
from studiowatch.store.shapes import Series
from studiowatch.studio.labels import stack_labels

__all__ = ["GoneCoat", "GonePiece", "PastPrompt", "PastView", "PastWarning", "StudioHistory"]

_MINUTE_MS = 60_000


@dataclass(frozen=True, slots=True, kw_only=True)
class GoneCoat:
    """A laid coat of a piece that left the rack.

    Attributes
    ----------
    touch_dry_ms : int or None
        UTC ms when it was dry to touch by its sheet, at the sheet's own conditions; None for paint, or if the sheet
        is gone.
    end_ms : int or None
        UTC ms when the next coat went over it, or the piece left the rack; None if that was not told.
    outcome : str
        How it came out, or "".
    """

    key: str
    label: str
    laid_ms: int
    touch_dry_ms: int | None
    end_ms: int | None
    outcome: str


@dataclass(frozen=True, slots=True, kw_only=True)
class GonePiece:
    """A piece that left the rack, with at least one coat that was laid."""

    key: str
    title: str
    coats: tuple[GoneCoat, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PastView:
    """All of the time behind."""

    pieces: tuple[GonePiece, ...] = ()
    warnings: tuple[PastWarning, ...] = ()
    prompts: tuple[PastPrompt, ...] = ()


class Recorded(Protocol):
    """The store's side: the log and the records, read beside the writer."""

    def span_ms(self) -> tuple[int, int] | None:
        """Return the times of the first and the last reading, or None if there is none."""
        ...

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        """Return `channel` between two times in at most about `buckets` buckets."""
        ...

    def past(self) -> Past:
        """Return the time behind; the same value until it changes."""
        ...

    def close(self) -> None:
        """Let go of the file."""
        ...


@dataclass(slots=True)
class StudioHistory:
    """The log and the records for the room history, with the names that coats have by their sheets.

    Parameters
    ----------
    recorded : Recorded
        Opened for this reader alone.
    sheets : Path or None
        The folder with her own data sheets.
    """

    recorded: Recorded
    sheets: Path | None = None
    _of: Past | None = None
    _view: PastView = field(default_factory=PastView)

    def span_ms(self) -> tuple[int, int] | None:
        """Return the times of the first and the last reading, or None if there is none."""
        return self.recorded.span_ms()

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        """Return `channel` between two times in at most about `buckets` buckets."""
        return self.recorded.series(channel, start_ms, end_ms, buckets)

    def past(self) -> PastView:
        """Return the time behind; the same value until it changes."""
        past = self.recorded.past()
        if past is not self._of:
            self._view, self._of = past_view(past, self._shelf()), past
        return self._view

    def close(self) -> None:
        """Let go of the file."""
        self.recorded.close()

    def _shelf(self) -> SheetShelf:
        """Return her sheets; with a bad one among them, which the watch tells of, the built-in ones must do."""
        try:
            return SheetShelf.open(self.sheets)
        except (SheetFaults, SheetUnknown):
            return SheetShelf.open()


def past_view(past: Past, shelf: SheetShelf) -> PastView:
    """Return `past` with its coats named; pieces without a laid coat have no lane and are left out."""
    laid = [piece for piece in past.pieces if any(coat.laid_ms is not None for coat in piece.coats)]
    return PastView(pieces=tuple(_gone(piece, shelf) for piece in laid), warnings=past.warnings, prompts=past.prompts)


def _gone(piece: PastPiece, shelf: SheetShelf) -> GonePiece:
    labels = stack_labels([shelf.stand_in(coat.sheet) for coat in piece.coats])
    laid = [
        (coat, label, coat.laid_ms) for coat, label in zip(piece.coats, labels, strict=True) if coat.laid_ms is not None
    ]
    ends_ms = [*(laid_ms for _, _, laid_ms in laid[1:]), piece.left_ms]
    coats = [
        GoneCoat(
            key=coat.key,
            label=label,
            laid_ms=laid_ms,
            touch_dry_ms=_touch_dry_ms(laid_ms, shelf.sheets.get(coat.sheet)),
            end_ms=None if end_ms is None else max(end_ms, laid_ms),
            outcome=coat.outcome or "",
        )
        for (coat, label, laid_ms), end_ms in zip(laid, ends_ms, strict=True)
    ]
    return GonePiece(key=piece.key, title=piece.title, coats=tuple(coats))


def _touch_dry_ms(laid_ms: int, sheet: DataSheet | None) -> int | None:
    if sheet is None or sheet.kind is Kind.PAINT:
        return None
    return laid_ms + round(sheet.touch_dry_min * _MINUTE_MS)
