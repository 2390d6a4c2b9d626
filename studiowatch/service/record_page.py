"""A finishing record in words: one HTML page that stands alone, and the body that is printed."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Sequence
from datetime import datetime
from html import escape

from studiowatch.service.record_drawings import DrawnLayer, DrawnRoom, film_svg, room_svg
from studiowatch.service.record_room import MOVING_M_S
from studiowatch.studio.finishing_record import CoatRecord, FinishingRecord, RoomWhileWet, Spread
from studiowatch.studio.labels import coat_word

WIDTH, FILM_HEIGHT, ROOM_HEIGHT = 500.0, 100.0, 110.0  # pt
HEADINGS = ("What lies on it", "How each coat dried", "For whoever cleans it", "Cautions", "What is not known")
LONG_MIN = 120.0  # min from which hours are said
STYLE = """
:root { color-scheme: light dark; --ink: #2b2a28; --faint: #6d675e; --paper: #fdfcf9; --rule: #d8d2c6; }
@media (prefers-color-scheme: dark) { :root { --ink: #ece8e0; --faint: #b3aca0; --paper: #1d1c1a; --rule: #4a463f; } }
body { margin: 2rem auto; max-width: 46rem; padding: 0 1rem; color: var(--ink); background: var(--paper);
  font: 16px/1.5 system-ui, sans-serif; }
h1 { font-weight: 500; margin-bottom: 0; } h2 { font-size: 1rem; margin: 1.6rem 0 .3rem; }
.facts { color: var(--faint); }
table { border-collapse: collapse; width: 100%; font-size: .875rem; }
th, td { text-align: left; vertical-align: top; padding: .35rem .6rem .35rem 0; border-bottom: 1px solid var(--rule); }
.wide { overflow-x: auto; } .notes { white-space: pre-wrap; }
svg { width: 100%; height: auto; background: #fdfcf9; border-radius: 4px; }
img { max-width: 100%; max-height: 24rem; }
@media print { :root { --ink: #000; --faint: #444; --paper: #fff; }
  body { margin: 0; max-width: none; font-size: 10pt; }
  tr, svg, img { break-inside: avoid; } h2 { break-after: avoid; } }
"""


SHEET_TIMES = "Times are those of the product's sheet, at 23 °C and 50 % RH, not measured on this piece."
WET_MEANS = (
    "A coat counts as wet here until its sheet calls it dry to touch, or for an hour where the sheet is missing. "
    f"Figures are minute means: mean, least and greatest; air moves from {MOVING_M_S:g} m/s."
)


def day_text(time_ms: int) -> str:
    """Return a day and time in her zone, "2 Mar 2026, 10:01"."""
    when = datetime.fromtimestamp(time_ms / 1000).astimezone()
    return f"{when.day} {when:%b %Y, %H:%M}"


def film_drawing(record: FinishingRecord) -> str:
    """Return the section through the coats of a record, as SVG."""
    layers = [
        DrawnLayer(
            words=f"{coat.number} {coat.label}{'' if coat.measured else ', by its sheet'}",
            dry_um=coat.dry_um,
            what="" if coat.sheet is None else coat_word(coat.sheet),
        )
        for coat in record.coats
    ]
    return film_svg(layers, WIDTH, FILM_HEIGHT)


def room_drawing(record: FinishingRecord) -> str:
    """Return the room while each coat of a record was wet, as SVG; "" if it was never read."""
    rooms = [
        DrawnRoom(
            words=f"{coat.number} {coat.label}",
            start_ms=coat.laid_ms,
            end_ms=coat.laid_ms + coat.room.whole_min * 60_000,
            trace=coat.room.trace,
        )
        for coat in record.coats
        if coat.room is not None
    ]
    return room_svg(rooms, WIDTH, ROOM_HEIGHT) if rooms else ""


def page(record: FinishingRecord, photo: bytes = b"") -> str:
    """Return the record as one HTML page that needs no other file; `photo` is a JPEG, or empty."""
    picture = ""
    if photo:
        source = f"data:image/jpeg;base64,{b64encode(photo).decode('ascii')}"
        picture = f'<figure><img src="{source}" alt="The piece"></figure>'
    title = escape(record.title)
    inside = body(record, picture, film_drawing(record), room_drawing(record))
    return (
        f'<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>{title}: finishing record</title>\n'
        f'<meta name="viewport" content="width=device-width, initial-scale=1"><style>{STYLE}</style></head>\n'
        f"<body><main>\n{inside}\n</main></body></html>\n"
    )


def body(record: FinishingRecord, photo: str, film: str, room: str) -> str:
    """Return what the page and the print have in common; photo and drawings are given as HTML, or ""."""
    parts = [
        f"<h1>{escape(record.title)}</h1>",
        f'<p class="facts">Finishing record. {escape(record.size)}, on {escape(record.support)}</p>',
        photo,
    ]
    if record.notes:
        parts.append(f'<p class="notes">{escape(record.notes)}</p>')
    if record.coats:
        parts += [
            _heading(0),
            film,
            _table(record.coats),
            _caption(SHEET_TIMES),
            _heading(1),
            room,
        ]
        parts += [_list([_dried(coat) for coat in record.coats]), _caption(WET_MEANS)]
    parts += [_heading(2), _list(record.removal)]
    parts += [_heading(3), _list(record.cautions)]
    parts += [_heading(4), _list(record.unknown)]
    return "\n".join(part for part in parts if part)


def _table(coats: Sequence[CoatRecord]) -> str:
    heads = ("Coat", "Product", "Laid", "Amount", "Film, wet / dry", "Dry to touch, recoat, cured")
    rows = "".join(f"<tr>{''.join(_cells(coat))}</tr>" for coat in reversed(coats))
    head = "".join(f'<th scope="col" align="left">{one}</th>' for one in heads)
    return (
        f'<div class="wide"><table width="100%" cellpadding="3" cellspacing="0"><thead><tr>{head}</tr></thead>'
        f"<tbody>{rows}</tbody></table></div>"
    )


def _cells(coat: CoatRecord) -> Iterator[str]:
    sheet = coat.sheet
    film, times = "not known", "not known"
    if coat.wet_um is not None and coat.dry_um is not None:
        film = f"{coat.wet_um:.0f} / {coat.dry_um:.0f} µm{'' if coat.measured else ', by the sheet'}"
    if sheet is not None:
        times = f"{_touch(sheet.touch_dry_min)}, {sheet.recoat_h:g} h, {sheet.cure_days:g} days"
    thinned = f", thinned {coat.thinned_pct:g} %" if coat.thinned_pct else ""
    sheen = f", {sheet.sheen}" if sheet is not None and sheet.sheen is not None else ""
    yield f'<th scope="row" align="left">{coat.number} {escape(coat.label)}</th>'
    for words in (f"{coat.product}{sheen}", day_text(coat.laid_ms), f"{coat.amount}{thinned}", film, times):
        yield f"<td>{escape(words)}</td>"


def _touch(minutes: float) -> str:
    return f"{minutes / 60.0:g} h" if minutes >= LONG_MIN else f"{minutes:g} min"


def _dried(coat: CoatRecord) -> str:
    said = [f"Coat {coat.number}, {coat.label}: {_room(coat.room)}."]
    said += [f"{look.finding.value.capitalize()} when tested {day_text(look.time_ms)}." for look in coat.looks]
    if coat.outcome is not None:
        seen = "" if coat.seen_ms is None else f", seen {day_text(coat.seen_ms)}"
        said.append(f"Came out {coat.outcome.value}{seen}.")
    return " ".join(said)


def _room(room: RoomWhileWet | None) -> str:
    if room is None:
        return "the room was not read while it was wet"
    parts = [_spread(room.temperature_C, "°C", 1, "temperature"), _spread(room.humidity_pct, "% RH", 0, "humidity")]
    moving = "air movement not read" if room.moving_min is None else f"moving air for {room.moving_min} min"
    gap = "" if room.read_min >= room.whole_min else f"; read in {room.read_min} of {room.whole_min} min"
    return f"while it was wet {', '.join(parts)}, {moving}{gap}"


def _spread(spread: Spread | None, unit: str, digits: int, name: str) -> str:
    if spread is None:
        return f"{name} not read"
    least, mean, greatest = (f"{value:.{digits}f}" for value in (spread.least, spread.mean, spread.greatest))
    return f"{mean} {unit} ({least} to {greatest})"


def _heading(place: int) -> str:
    return f"<h2>{HEADINGS[place]}</h2>"


def _caption(words: str) -> str:
    return f'<p class="facts">{escape(words)}</p>'


def _list(sentences: Sequence[str]) -> str:
    return f"<ul>{''.join(f'<li>{escape(one)}</li>' for one in sentences)}</ul>"
