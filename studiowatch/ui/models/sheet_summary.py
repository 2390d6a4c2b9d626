"""What a data sheet says, line by line, for a look at it."""

from __future__ import annotations

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.seen_words import KIND_WORDS, SHEEN_WORDS, capital


def summary_lines(sheet: DataSheet) -> tuple[str, ...]:
    """Return what a sheet says, line by line, for a look at it."""
    units = chosen()
    kind = say(KIND_WORDS[sheet.kind])
    lines = [kind if sheet.sheen is None else f"{kind}, {say(SHEEN_WORDS[sheet.sheen])}", _coat_line(sheet)]
    touch = units.plain(sheet.touch_dry_min)
    if sheet.clear_h is None:
        lines.append(say("dry to touch after {minutes} min", minutes=touch))
    else:
        clear = units.plain(sheet.clear_h)
        lines.append(say("dry to touch after {minutes} min, clear after {hours} h", minutes=touch, hours=clear))
    recoat, cure = units.plain(sheet.recoat_h), units.plain(sheet.cure_days)
    lines.append(say("next coat after {hours} h, cured after {days} days", hours=recoat, days=cure))
    if sheet.mfft_C is not None:
        lines.append(say("forms a film from {temperature} on", temperature=units.limit(sheet.mfft_C)))
    if sheet.apply_C is not None:
        low_C, high_C = sheet.apply_C
        low = units.plain(round(units.degrees.from_celsius(low_C), 1))
        lines.append(say("to be laid at {low} to {high}", low=low, high=units.limit(high_C)))
    if sheet.max_humidity_pct is not None:
        lines.append(say("up to {limit} % relative humidity", limit=units.plain(sheet.max_humidity_pct)))
    return (*lines, *(f"{capital(one)}." for one in sheet.assumed))


def _coat_line(sheet: DataSheet) -> str:
    units = chosen()
    wet, dry = (
        f"{units.plain(float(f'{film_um / units.thickness.um:.3g}'))} {units.thickness.value}"
        for film_um in (sheet.wet_um, sheet.dry_um)
    )
    solids = units.plain(float(f"{100 * sheet.volume_solids:.3g}"))
    return say("one coat {wet} wet, {dry} dry, {solids} % solids", wet=wet, dry=dry, solids=solids)
