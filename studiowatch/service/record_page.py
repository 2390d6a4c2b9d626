"""A finishing record in words: one HTML page that stands alone, and the body that is printed."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Sequence
from html import escape

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.language import language_tag
from studiowatch.service.local_time import dated_text, when_text
from studiowatch.service.record_drawings import DrawnLayer, DrawnRoom, film_svg, room_svg
from studiowatch.service.record_room import MOVING_M_S
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.finishing_record import CoatRecord, FinishingRecord, Spread
from studiowatch.studio.labels import coat_word
from studiowatch.studio.modelled import Modelled, TimeRange
from studiowatch.studio.pieces import Finding
from studiowatch.studio.supports import support_words

WIDTH, FILM_HEIGHT, ROOM_HEIGHT = 500.0, 100.0, 110.0  # pt
HEADINGS = (
    mark("What lies on it"),
    mark("How each coat dried"),
    mark("For whoever cleans it"),
    mark("Cautions"),
    mark("What is not known"),
)
COLUMNS = (
    mark("Coat"),
    mark("Product"),
    mark("Laid"),
    mark("Amount"),
    mark("Film, wet / dry"),
    mark("Dry to touch, recoat, cured"),
)
_FOUND = {
    Finding.TACKY: mark("Tacky when tested {time}."),
    Finding.DRY: mark("Dry when tested {time}."),
    Finding.MILKY: mark("Still milky when tested {time}."),
    Finding.CLEAR: mark("Clear when tested {time}."),
}
SHEET_C = 23.0  # °C at which sheets give their times: ISO 3270
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
"""  # not said


def headings() -> tuple[str, ...]:
    """Return the headings as they are read."""
    return tuple(say(one) for one in HEADINGS)


def film_drawing(record: FinishingRecord) -> str:
    """Return the section through the coats of a record, as SVG."""
    return film_svg([_layer(coat) for coat in record.coats], WIDTH, FILM_HEIGHT)


def _layer(coat: CoatRecord) -> DrawnLayer:
    words = f"{coat.number} {coat.label}"
    return DrawnLayer(
        words=words if coat.measured else say("{coat}, by its sheet", coat=words),
        dry_um=coat.dry_um,
        what="" if coat.sheet is None else coat_word(coat.sheet),
    )


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


def page_title(record: FinishingRecord) -> str:
    """Return what the page is called."""
    return say("{title}: finishing record", title=record.title)


def page(record: FinishingRecord, photo: bytes = b"") -> str:
    """Return the record as one HTML page that needs no other file; `photo` is a JPEG, or empty."""
    picture = ""
    if photo:
        source = f"data:image/jpeg;base64,{b64encode(photo).decode('ascii')}"
        alt = escape(say("The piece"))
        picture = f'<figure><img src="{source}" alt="{alt}"></figure>'
    title = escape(page_title(record))
    inside = body(record, picture, film_drawing(record), room_drawing(record))
    return (
        f'<!DOCTYPE html>\n<html lang="{language_tag()}"><head><meta charset="utf-8"><title>{title}</title>\n'
        f'<meta name="viewport" content="width=device-width, initial-scale=1"><style>{STYLE}</style></head>\n'
        f"<body><main>\n{inside}\n</main></body></html>\n"
    )


def body(record: FinishingRecord, photo: str, film: str, room: str) -> str:
    """Return what the page and the print have in common; photo and drawings are given as HTML, or ""."""
    parts = [
        f"<h1>{escape(record.title)}</h1>",
        _caption(
            say("Finishing record. {size}, on {support}", size=record.size, support=support_words(record.support))
        ),
        _unfinished(record),
        photo,
    ]
    if record.notes:
        parts.append(f'<p class="notes">{escape(record.notes)}</p>')
    if record.coats:
        parts += [
            _heading(0),
            film,
            _table(record.coats),
            _caption(_sheet_times()),
            _heading(1),
            room,
        ]
        parts += [_list([_dried(coat) for coat in record.coats]), _caption(_means(record.coats))]
    parts += [_heading(2), _list(record.removal)]
    parts += [_heading(3), _list(record.cautions)]
    parts += [_heading(4), _list(record.unknown)]
    return "\n".join(part for part in parts if part)


def _unfinished(record: FinishingRecord) -> str:
    why = record.unfinished
    if why is None:
        return ""
    said = [say("As of {time}: this piece is not finished.", time=dated_text(why.as_of_ms))]
    if why.is_wet:
        top = record.coats[-1]
        said.append(say("Coat {number}, {label}, is still wet.", number=top.number, label=top.label))
    if why.to_come:
        said.append(say_counted(why.to_come, "A coat is still to come.", "{n} coats are still to come."))
    return f"<p><strong>{escape(' '.join(said))}</strong></p>"


def _table(coats: Sequence[CoatRecord]) -> str:
    heads = [say(one) for one in COLUMNS]
    rows = "".join(f"<tr>{''.join(_cells(coat))}</tr>" for coat in reversed(coats))
    head = "".join(f'<th scope="col" align="left">{escape(one)}</th>' for one in heads)
    return (
        f'<div class="wide"><table width="100%" cellpadding="3" cellspacing="0"><thead><tr>{head}</tr></thead>'
        f"<tbody>{rows}</tbody></table></div>"
    )


def _sheet_times() -> str:
    return say(
        "Times are those of the product's sheet, at {temperature} and 50 % RH, not measured on this piece.",
        temperature=chosen().limit(SHEET_C),
    )


def _means(coats: Sequence[CoatRecord]) -> str:
    wet = say(
        "A clear coat counts as wet here until it is set to touch by the model in the room that was read, for two days "
        "at most, and at least until its sheet calls it dry to touch; other coats go by their sheet, or by an hour "
        "where the sheet is missing. "
        "Figures are minute means: mean, least and greatest; air moves from {air_speed}.",
        air_speed=chosen().air_speed_limit(MOVING_M_S),
    )
    if not any(coat.modelled is not None and coat.modelled.has_times for coat in coats):
        return wet
    modelled = say(
        "Times by the model are those of this piece in the room that was read, worked out and not seen: "
        "the middle one, and in brackets the range in which eight in ten lie."
    )
    return f"{wet} {modelled}"


def _cells(coat: CoatRecord) -> Iterator[str]:
    product = coat.product
    if coat.sheet is not None and coat.sheet.sheen is not None:
        product = f"{product}, {coat.sheet.sheen.word}"
    amount = coat.amount
    if coat.thinned_pct:
        amount = say("{amount}, thinned {share} %", amount=amount, share=chosen().plain(coat.thinned_pct))
    yield f'<th scope="row" align="left">{coat.number} {escape(coat.label)}</th>'
    for words in (product, dated_text(coat.laid_ms), amount, _film(coat), _times(coat.sheet)):
        yield f"<td>{escape(words)}</td>"


def _film(coat: CoatRecord) -> str:
    if coat.wet_um is None or coat.dry_um is None:
        return say("not known")
    units = chosen()
    film = f"{units.number(coat.wet_um / units.thickness.um, units.thickness.places)} / {units.film(coat.dry_um)}"
    return film if coat.measured else say("{film}, by the sheet", film=film)


def _times(sheet: DataSheet | None) -> str:
    if sheet is None:
        return say("not known")
    return say(
        "{touch}, {recoat} h, {cured} days",
        touch=_touch(sheet.touch_dry_min),
        recoat=chosen().plain(sheet.recoat_h),
        cured=chosen().plain(sheet.cure_days),
    )


def _touch(minutes: float) -> str:
    return f"{chosen().plain(minutes / 60.0)} h" if minutes >= LONG_MIN else f"{chosen().plain(minutes)} min"


def _dried(coat: CoatRecord) -> str:
    said = [_wet(coat)]
    if coat.modelled is not None and coat.modelled.has_times:
        said.append(say("By the model: {times}.", times="; ".join(_modelled(coat.modelled))))
    said += [say(_FOUND[look.finding], time=dated_text(look.time_ms)) for look in coat.looks]
    if coat.outcome is not None and coat.seen_ms is None:
        said.append(say("Came out {outcome}.", outcome=coat.outcome.word))
    elif coat.outcome is not None and coat.seen_ms is not None:
        seen = dated_text(coat.seen_ms)
        said.append(say("Came out {outcome}, seen {time}.", outcome=coat.outcome.word, time=seen))
    return " ".join(said)


def _modelled(times: Modelled) -> Iterator[str]:
    if times.clear is not None:
        yield say("clear {time} ({earliest} to {latest})", **_range(times.clear))
    if times.recoat is not None:
        yield say("dry to recoat {time} ({earliest} to {latest})", **_range(times.recoat))
    if times.ready_ms is not None:
        yield say("ready for the next coat from {time}", time=dated_text(times.ready_ms))


def _range(times: TimeRange) -> dict[str, str]:
    return {
        "time": dated_text(times.middle_ms),
        "earliest": when_text(times.earliest_ms, times.middle_ms),
        "latest": when_text(times.latest_ms, times.middle_ms),
    }


def _wet(coat: CoatRecord) -> str:
    room, values = coat.room, {"number": str(coat.number), "coat": coat.label}
    if room is None:
        return say("Coat {number}, {coat}: the room was not read while it was wet.", **values)
    values |= {
        "temperature": _temperature(room.temperature_C),
        "humidity": _humidity(room.humidity_pct),
        "movement": _movement(room.moving_min),
    }
    if room.read_min >= room.whole_min:
        return say("Coat {number}, {coat}: while it was wet {temperature}, {humidity}, {movement}.", **values)
    return say(
        "Coat {number}, {coat}: while it was wet {temperature}, {humidity}, {movement}; read in {read} of {whole} min.",
        **values,
        read=room.read_min,
        whole=room.whole_min,
    )


def _temperature(spread: Spread | None) -> str:
    if spread is None:
        return say("temperature not read")
    degrees = chosen().degrees
    least, greatest = (chosen().number(degrees.from_celsius(one), 1) for one in (spread.least, spread.greatest))
    return say("{mean} ({least} to {greatest})", mean=chosen().temperature(spread.mean), least=least, greatest=greatest)


def _humidity(spread: Spread | None) -> str:
    if spread is None:
        return say("humidity not read")
    least, mean, greatest = (chosen().number(one) for one in (spread.least, spread.mean, spread.greatest))
    return say(
        "{mean} ({least} to {greatest})", mean=say("{humidity} % RH", humidity=mean), least=least, greatest=greatest
    )


def _movement(moving_min: int | None) -> str:
    if moving_min is None:
        return say("air movement not read")
    return say("moving air for {minutes} min", minutes=moving_min)


def _heading(place: int) -> str:
    return f"<h2>{escape(say(HEADINGS[place]))}</h2>"


def _caption(words: str) -> str:
    return f'<p class="facts">{escape(words)}</p>'


def _list(sentences: Sequence[str]) -> str:
    return f"<ul>{''.join(f'<li>{escape(one)}</li>' for one in sentences)}</ul>"
