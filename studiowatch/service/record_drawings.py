"""Drawings for paper and for pages, as SVG: a stack of coats to scale, and the room while each coat was wet.

They use SVG Tiny 1.2 (W3C) alone, so that every reader draws them alike. Lengths are points, 1/72 inch.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from html import escape
from itertools import pairwise

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

INK, FAINT, WARM, COOL = "#2b2a28", "#9a958c", "#a8501f", "#2f6690"
FILLS = {"paint": "#b9a58a", "gloss": "#dfeaf2", "satin": "#cfdbe2", "matt": "#c3c9cc"}
OTHER_FILL = "#e6e2da"
LINE = 11.0  # pt, from one line of words to the next
FONT = 'font-family="sans-serif" font-size="8"'
JOINED_MS = 600_000  # ms without a reading over which a line is not drawn


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnLayer:
    """One coat of a section: its words, its dry thickness, µm, or None if not known, and what it is."""

    words: str
    dry_um: float | None
    what: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnRoom:
    """The room while one coat was wet: UTC ms, °C and % of each minute that was read, and its limits in time."""

    words: str
    start_ms: int
    end_ms: int
    trace: tuple[tuple[int, float | None, float | None], ...]


def film_svg(layers: Sequence[DrawnLayer], width: float, height: float) -> str:
    """Return a section through the coats, lowest first, thickness to scale; one of unknown thickness is dashed."""
    unknown = LINE  # pt, height of a coat whose thickness is not known
    total_um = sum(layer.dry_um or 0.0 for layer in layers)
    room = height - LINE - 6 - unknown * sum(layer.dry_um is None for layer in layers)
    scale = room / total_um if total_um > 0 else 0.0
    parts, y, last = [], height - 6, height + LINE
    for layer in layers:
        tall = unknown if layer.dry_um is None else layer.dry_um * scale
        y -= tall
        dash = ' stroke-dasharray="3 2"' if layer.dry_um is None else ""
        fill = FILLS.get(layer.what, OTHER_FILL)
        parts.append(
            f'<rect x="1" y="{y:.2f}" width="{width * 0.34:.1f}" height="{tall:.2f}" fill="{fill}" stroke="{INK}" '
            f'stroke-width="0.5"{dash}/>'
        )
        place = min(y + tall / 2, last - LINE)
        last = place
        left = width * 0.34 + 1
        parts.append(
            f'<polyline points="{left:.1f},{y + tall / 2:.2f} {left + 12:.1f},{place:.2f}" fill="none" '
            f'stroke="{FAINT}" stroke-width="0.5"/>'
        )
        parts.append(_text(left + 16, place + 3, _layer_words(layer)))
    return _svg(width, height, say("Section through the coats, to scale"), parts)


def _layer_words(layer: DrawnLayer) -> str:
    if layer.dry_um is None:
        return say("{coat}, thickness not known", coat=layer.words)
    return say("{coat}, {film} dry", coat=layer.words, film=chosen().film(layer.dry_um))


def room_svg(rooms: Sequence[DrawnRoom], width: float, height: float) -> str:
    """Return temperature and humidity while each coat was wet, one panel a coat, on common scales."""
    parts: list[str] = []
    left, gap = 34.0, 8.0
    wide = (width - left - 1 - gap * (len(rooms) - 1)) / max(len(rooms), 1)  # 1 pt for the frame of the last
    half = (height - 2 * LINE) / 2
    rooms = [_in_hers(room) for room in rooms]
    for row, (column, unit, colour) in enumerate(((1, chosen().degrees.value, WARM), (2, say("% RH"), COOL))):
        values = [point[column] for room in rooms for point in room.trace if point[column] is not None]
        low, high = _scale([value for value in values if value is not None])
        top = LINE + row * (half + 4)
        tall = half - 4
        parts.append(_text(left - 4, top + 7, f"{high:g}", "end"))
        parts.append(_text(left - 4, top + tall, f"{low:g}", "end"))
        parts.append(_text(left - 4, top + tall / 2 + 3, unit, "end", colour))
        for place, room in enumerate(rooms):
            x = left + place * (wide + gap)
            parts.append(
                f'<rect x="{x:.1f}" y="{top:.1f}" width="{wide:.1f}" height="{tall:.1f}" fill="none" '
                f'stroke="{FAINT}" stroke-width="0.5"/>'
            )
            parts += _lines(room, column, (x, top, wide, tall), (low, high), colour)
    for place, room in enumerate(rooms):
        x = left + place * (wide + gap)
        parts.append(_text(x, LINE - 3, room.words))
        minutes = (room.end_ms - room.start_ms) / 60_000
        parts.append(_text(x + wide, height - 2, f"{minutes:.0f} min", "end"))
        if not room.trace:
            parts.append(_text(x + 4, LINE + half / 2, say("not read")))
    return _svg(width, height, say("The room while each coat was wet"), parts)


def _in_hers(room: DrawnRoom) -> DrawnRoom:
    """Return a room with its temperatures in her unit."""
    hers = chosen().degrees.from_celsius
    trace = tuple((at_ms, None if warm_C is None else hers(warm_C), damp_pct) for at_ms, warm_C, damp_pct in room.trace)
    return replace(room, trace=trace)


def _lines(
    room: DrawnRoom,
    column: int,
    area: tuple[float, float, float, float],
    scale: tuple[float, float],
    colour: str,
) -> list[str]:
    x, top, wide, tall = area
    low, high = scale
    runs: list[list[str]] = []
    points = [(point[0], value) for point in room.trace if (value := (point[1], point[2])[column - 1]) is not None]
    starts = {after[0] for before, after in pairwise(points) if after[0] - before[0] > JOINED_MS}
    for time_ms, value in points:
        if not runs or time_ms in starts:
            runs.append([])
        across = min(max((time_ms - room.start_ms) / (room.end_ms - room.start_ms), 0.0), 1.0)
        runs[-1].append(f"{x + across * wide:.2f},{top + tall - (value - low) / (high - low) * tall:.2f}")
    return [f'<polyline points="{" ".join(run)}" fill="none" stroke="{colour}" stroke-width="1.2"/>' for run in runs]


def _scale(values: Sequence[float]) -> tuple[float, float]:
    """Return round limits around all values, at least 4 apart."""
    if not values:
        return 0.0, 1.0
    low, high = 2 * (min(values) // 2), 2 * -(-max(values) // 2)
    return (low, high) if high - low >= 4 else (low - 2, high + 2)  # noqa: PLR2004 - said above


def _text(x: float, y: float, words: str, anchor: str = "start", colour: str = INK) -> str:
    return f'<text x="{x:.1f}" y="{y:.1f}" {FONT} text-anchor="{anchor}" fill="{colour}">{escape(words)}</text>'


def _svg(width: float, height: float, title: str, parts: Sequence[str]) -> str:
    head = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width:g} {height:g}" role="img">'
    return f"{head}<title>{escape(title)}</title>{''.join(parts)}</svg>"
