"""The finishing record of a piece: what lies on it, how it was laid, what a cleaner must know. Nothing is invented."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.amounts import is_measured, wet_um_of
from studiowatch.studio.hazards import SOLVENT_CAUTIONS
from studiowatch.studio.labels import ISOLATION, coat_word, measured_film_text, stack_labels, volume_text
from studiowatch.studio.modelled import Modelled
from studiowatch.studio.pieces import Coat, Look, Outcome, Piece, Shape
from studiowatch.studio.unfinished import Unfinished, unfinished, wet_until_ms

REMOVAL_CAUTIONS = (
    mark("Removing a varnish is work for a conservator: try it first on the smallest spot at the edge."),
    mark("Where solvent is used: ventilate, wear gloves, and keep every flame and spark away."),
    mark("Each product's own sheet, local codes and licensed advice come before this record."),
)  # common practice, no source


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """Least, mean and greatest of one quantity."""

    least: float
    mean: float
    greatest: float


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomWhileWet:
    """The room from a coat's laying for as long as it counts as wet; see `unfinished.wet_until_ms`.

    Attributes
    ----------
    temperature_C, humidity_pct : Spread or None
        Of minute means, °C and % RH; None if nothing was read.
    moving_min : int or None
        Minutes with moving air; None if no air speed was read.
    read_min, whole_min : int
        Minutes that have a reading, and all minutes.
    trace : tuple of (int, float or None, float or None)
        UTC ms, °C and % of each minute that was read.
    """

    temperature_C: Spread | None
    humidity_pct: Spread | None
    moving_min: int | None
    read_min: int
    whole_min: int
    trace: tuple[tuple[int, float | None, float | None], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatRecord:
    """One laid coat. `sheet` is None where the product's sheet is missing; `wet_um` and `dry_um`, µm, then too.

    `measured` says that the thickness follows from what she measured rather than from the sheet.
    """

    number: int
    label: str
    product: str
    laid_ms: int
    sheet: DataSheet | None
    amount: str
    measured: bool
    wet_um: float | None
    dry_um: float | None
    thinned_pct: float
    looks: tuple[Look, ...]
    outcome: Outcome | None
    seen_ms: int | None
    room: RoomWhileWet | None
    modelled: Modelled | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishingRecord:
    """What is printed for the client and for whoever cleans the piece one day. `coats` run from the lowest up.

    `unfinished` is None unless the piece is known to be unfinished.
    """

    title: str
    size: str
    support: str
    notes: str
    photo: str
    coats: tuple[CoatRecord, ...]
    removal: tuple[str, ...]
    cautions: tuple[str, ...]
    unknown: tuple[str, ...]
    unfinished: Unfinished | None = None


def finishing_record(
    piece: Piece,
    sheets: Mapping[str, DataSheet],
    room_while_wet: Callable[[int, int], RoomWhileWet | None],
    *,
    now_ms: int,
    modelled: Callable[[int], Modelled | None] = lambda _: None,
    with_notes: bool = True,
) -> FinishingRecord:
    """Return the record of a piece.

    Parameters
    ----------
    sheets : mapping
        The data sheets that are there, by name.
    room_while_wet : callable
        Returns what was read of the room between two times, UTC ms, or None if nothing was.
    now_ms : int
        When the record is made, UTC ms.
    modelled : callable
        Returns what the model says of a coat, by its number among the laid ones from 1, or None.
    with_notes : bool
        Whether her own notes are printed.
    """
    laid = [(coat, coat.laid_ms) for coat in piece.coats if coat.laid_ms is not None]
    labels = iter(stack_labels([sheets[coat.sheet] for coat, _ in laid if coat.sheet in sheets]))
    coats = []
    for number, (coat, laid_ms) in enumerate(laid, start=1):
        sheet = sheets.get(coat.sheet)
        label = say("unknown product") if sheet is None else next(labels)
        times = modelled(number)
        room = room_while_wet(laid_ms, wet_until_ms(laid_ms, sheet, times))
        made = _coat(piece, (number, coat, laid_ms), sheet, label, room)
        coats.append(replace(made, modelled=times))
    top_sheet, top_times = (coats[-1].sheet, coats[-1].modelled) if coats else (None, None)
    return FinishingRecord(
        title=piece.title,
        size=_size(piece),
        support=piece.support,
        notes=piece.notes.strip() if with_notes else "",
        photo=piece.photo,
        coats=tuple(coats),
        removal=_removal(coats),
        cautions=_cautions(),
        unknown=tuple(_unknown(coats)),
        unfinished=unfinished(piece, top_sheet, top_times, now_ms),
    )


def _coat(
    piece: Piece, numbered: tuple[int, Coat, int], sheet: DataSheet | None, label: str, room: RoomWhileWet | None
) -> CoatRecord:
    number, coat, laid_ms = numbered
    wet_um = coat.wet_um
    if sheet is not None:
        wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    dry_um = None
    if sheet is not None and wet_um is not None:
        dry_um = wet_um * sheet.volume_solids / (1.0 + coat.thinned_pct / 100.0)
    return CoatRecord(
        number=number,
        label=label,
        product=coat.sheet if sheet is None else sheet.title,
        laid_ms=laid_ms,
        sheet=sheet,
        amount=_amount(coat),
        measured=is_measured(coat),
        wet_um=wet_um,
        dry_um=dry_um,
        thinned_pct=coat.thinned_pct,
        looks=coat.looks,
        outcome=coat.outcome,
        seen_ms=coat.seen_ms,
        room=room,
    )


def _amount(coat: Coat) -> str:
    if coat.volume_mL is not None:
        return volume_text(coat.volume_mL)
    if coat.grams is not None:
        return f"{chosen().plain(coat.grams)} g"
    if coat.wet_um is None:
        return say("not measured")
    return say("{film} wet, measured", film=measured_film_text(coat.wet_um))


def _cautions() -> tuple[str, ...]:
    spot, solvent, first = map(say, REMOVAL_CAUTIONS)
    return spot, f"{solvent} {say(SOLVENT_CAUTIONS[1])}", first


def _removal(coats: Sequence[CoatRecord]) -> tuple[str, ...]:
    """Return what whoever cleans the piece must know, the topmost coat first."""
    said = []
    for coat in reversed(coats):
        if coat.sheet is not None and coat.sheet.kind is Kind.PAINT:
            continue
        how = "" if coat.sheet is None else coat.sheet.removable_with
        removal = say("Removal: {how}.", how=how) if how else say("Removal: how it can be removed is not known.")
        said.append(f"{_name(coat)}. {removal}")
    return (*said, _isolated(coats))


def _isolated(coats: Sequence[CoatRecord]) -> str:
    isolation = [coat.number for coat in coats if coat.sheet is not None and coat_word(coat.sheet) == ISOLATION]
    if isolation:
        return say(
            "An isolation coat (coat {number}) lies beneath what was laid after it, to keep the paint safe.",
            number=isolation[0],
        )
    if any(coat.sheet is None for coat in coats):
        return say("Whether an isolation coat lies on the paint is not known: a data sheet is missing.")
    return say("No isolation coat is recorded: take it that anything that removes the varnish reaches the paint.")


def _unknown(coats: Sequence[CoatRecord]) -> Iterator[str]:
    if not coats:
        yield say("No coat has been laid, as far as is recorded.")
    for coat in coats:
        lacking = [say(what) for what, lacks in _LACKING if lacks(coat)]
        if lacking:
            yield f"{_name(coat)}: {', '.join(lacking)}."
    yield say("What was put on the piece before it was first recorded here.")


_LACKING: tuple[tuple[str, Callable[[CoatRecord], bool]], ...] = (
    (mark("its data sheet"), lambda coat: coat.sheet is None),
    (
        mark("how much was laid; the thickness is its sheet's"),
        lambda coat: not coat.measured and coat.sheet is not None,
    ),
    (mark("how it came out"), lambda coat: coat.outcome is None and (coat.sheet is None or coat.sheet.clear_film)),
    (mark("the room while it was wet"), lambda coat: coat.room is None),
    (mark("the moving air"), lambda coat: coat.room is not None and coat.room.moving_min is None),
    (
        mark("part of the room while it was wet"),
        lambda coat: coat.room is not None and coat.room.read_min < coat.room.whole_min,
    ),
)


def _name(coat: CoatRecord) -> str:
    return say("Coat {number}, {label}", number=coat.number, label=coat.label)


def _size(piece: Piece) -> str:
    size = chosen().size(piece.width_cm, piece.height_cm)
    if piece.shape is Shape.ROUND and piece.width_cm == piece.height_cm:
        return say("round, {size} across", size=chosen().side(piece.width_cm))
    if piece.shape is Shape.ROUND:
        return say("oval, {size}", size=size)
    return say("{number} panels, each {size}", number=piece.panels, size=size) if piece.shape is Shape.PANELS else size
