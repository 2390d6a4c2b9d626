"""What a film keeps or loses for good: water or solvent sealed in below it or taken up by its support, and a blush."""

from __future__ import annotations

from dataclasses import replace
from datetime import tzinfo

from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import in_turn, mark, say
from studiowatch.studio.words import Sentence
from studiowatch.ui.models.times import clock_words

FLUIDS = (mark("water"), mark("solvent"), mark("water and solvent"))
_LEAST_G_M2 = 0.05  # below it, "0.0" would be said


def sealed_words(coat: CoatView) -> str:
    """Return what was sealed in below `coat` when it was laid and what is left of it, or what went into its support."""
    if coat.soaked_g_m2 >= _LEAST_G_M2:
        soaked = (
            mark("about {amount} g/m² of solvent taken up by the bare support when laid")
            if coat.solvent
            else mark("about {amount} g/m² of water taken up by the bare support when laid")
        )
        return say(soaked, amount=chosen().number(coat.soaked_g_m2, 1))
    if coat.sealed_in_g_m2 < _LEAST_G_M2:
        return ""
    sealed = {"amount": chosen().number(coat.sealed_in_g_m2, 1), "fluid": say(coat.sealed_fluid)}
    if coat.trapped_g_m2 < _LEAST_G_M2:
        return say("{amount} g/m² of {fluid} sealed in when laid, none left", **sealed)
    left = chosen().number(coat.trapped_g_m2, 1)
    return say("{amount} g/m² of {fluid} sealed in when laid, {left} left", **sealed, left=left)


def blush_words(coat: CoatView, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return since when a solvent-borne coat may have blushed, or ""."""
    if coat.blush_from_ms is None:
        return ""
    return say("may have blushed from {time}", time=clock_words(coat.blush_from_ms, now_ms, zone))


def verdict_below(piece: PieceView, *, solvent: bool) -> Sentence | None:
    """Return why no coat, `solvent`-borne or not, should go on `piece`, with what it would seal in; None if one may."""
    stop = piece.stop(solvent=solvent)
    if stop is None or piece.would_seal_g_m2 < _LEAST_G_M2:
        return stop
    amount, fluid = chosen().number(piece.would_seal_g_m2, 1), say(piece.would_seal_fluid)
    sealed = say("A coat now would seal in {amount} g/m² of {fluid}.", amount=amount, fluid=fluid)
    return replace(stop, detail=in_turn(stop.detail, sealed))


def room_or_risk(piece: PieceView, room: Sentence | None, sheet: str) -> Sentence | None:
    """Return the worse of what the room says of `sheet` and the risk that the next planned coat clouds in it."""
    following = next((coat.sheet for coat in piece.coats if coat.laid_ms is None), None)
    risk = piece.may_cloud if following == sheet else None
    return risk if risk is not None and (room is None or risk.level > room.level) else room
