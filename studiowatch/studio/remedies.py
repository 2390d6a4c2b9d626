"""What to do now about a clouded coat, least invasive first.

The steps are common practice, no source, and the times in them judgement; the product's sheet comes first, and a
conservator for a piece that cannot be replaced.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from types import MappingProxyType

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Remedy

STILL_ROOM = mark("in still air at {least} to {most} and under 60 %")
FRESH_ROOM = mark("in fresh air that does not blow on it, at {least} to {most} and under 60 %")
ROOM_C = (18.0, 24.0)  # °C in which a coat is left to clear
WARM_C = (20.0, 24.0)  # °C in which a soft film hardens
LOOK_AGAIN = mark("Then look again in the same light and record what you see: this review learns from it.")
STOP = mark("Stop as soon as a step shows no change on a small test corner: more of it only harms the film.")
CONSERVATOR = mark(
    "A valuable or irreplaceable piece: do nothing but wait, and ask a conservator before anything touches the film."
)
NO_REWORK = mark("No brushing, rubbing, heating or polishing while it may still clear by itself.")
REMOVAL = mark(
    "Only if waiting has failed: taking the varnish off. Read its sheet first for whether it can be removed, and with "
    "what; test a corner; the isolation coat below must be whole, or the paint goes with it."
)
REMOVAL_CAUTIONS = (
    mark(
        "Removal with solvent: open windows and let air through, gloves, no flame, spark or heater, a respirator as "
        "the product's sheet says."
    ),
    mark(
        "Solvent-wet rags can heat up and catch fire by themselves: dry them flat outdoors, or keep them in a closed "
        "metal container with water."
    ),
    mark("The product's own sheet, local rules and licensed advice come first."),
)
SANDING_CAUTION = mark("Sanding dust: a respirator as the product's sheet says, and wipe it up damp, never dry.")
VAPOUR_CAUTION = mark(
    "It is solvent-borne: keep fresh air coming through the room all the time, away from the piece; no flame or spark."
)
_CLEARING = (
    mark("Leave it uncovered {room}: a fresh coat is milky until its water has left."),
    mark("Look again after the normal milky time, at the earliest when the next coat may go on."),
)
_STEPS: Mapping[Cause, tuple[str, ...]] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: (
            mark("Leave it uncovered {room} for three days; sealed-in water often leaves, and the film clears."),
            mark("Look for edges that clear first, a sign that it works; then give it up to a week more."),
            NO_REWORK,
        ),
        Cause.DAMP_AIR: (
            mark("Dry the room, then leave it {room} for three days: what is only damp clears."),
            mark(
                "Look for milkiness that thins evenly; if it has not changed after a week, it will hardly "
                "clear by itself."
            ),
            NO_REWORK,
        ),
        Cause.BELOW_MFFT: (
            mark(
                "Keep the room at {least} to {most} for three days: it hardens the film, though what did "
                "not knit stays so."
            ),
            mark("Rub a hidden corner with a dry finger: powder comes off a film that never formed."),
            mark(
                "If no powder comes off: a thin coat of the same gloss, in a warm room, may wet it "
                "through; test a corner."
            ),
        ),
        Cause.CONDENSATION: (
            mark("Leave it {room} for two days, the piece as warm as the room."),
            mark("Look at it in slanting light: rings and runs of droplets stay, an even haze often clears."),
            mark(
                "Haze that stays: a thin coat of the same product in a dry room, tested on a corner, often takes it in."
            ),
        ),
        Cause.SKINNED: (
            mark("Leave it {room} for a week: under a skin the rest dries slowly."),
            mark("Press a gloved fingertip at an edge: while it gives, it is not dry below, and nothing may go on it."),
            mark("Wrinkles stay. Once dry through, they can be levelled by fine wet sanding and another thin coat."),
        ),
        Cause.TOO_THICK: (
            mark("Leave it uncovered {room} for a week; twice the thickness takes about four times as long."),
            mark("Look for thin places that clear first; the thick ones follow in the order of their thickness."),
            NO_REWORK,
        ),
        Cause.THINNED: (
            mark("Leave it {room} for three days."),
            mark(
                "Wipe a corner with a barely damp cloth: if it turns clear while wet and dull again, the "
                "film has pores."
            ),
            mark("A thin coat of the product as it comes from the bottle often closes them; test a corner."),
        ),
        Cause.MATTING_BUILD_UP: (
            mark("Waiting does not help: the matting agent stays where it is."),
            mark("Look at it in the light that it will hang in: dull darks show most in slanting light."),
            mark(
                "A last coat of gloss brings some depth back, at the cost of the sheen that was ordered; test a corner."
            ),
        ),
        Cause.TOUCHED: (
            mark("Leave it to dry through before anything else; a mark in a soft film only grows."),
            mark(
                "A week later: level the mark by fine wet sanding of that spot, and lay a thin coat over "
                "the whole face."
            ),
        ),
        Cause.STILL_CLEARING: _CLEARING,
        Cause.UNKNOWN: (
            mark("Leave it {room} for three days and look again: most haze of a fresh coat leaves by itself."),
            mark(
                "Look closely in slanting light: specks and hairs lie in the film, rings come from water or soap below."
            ),
        ),
    }
)
_CLEARS = frozenset({Cause.STILL_CLEARING})
_SANDS = frozenset({Cause.SKINNED, Cause.TOUCHED})


_CLEAR_STEPS = (mark("Nothing needs doing: it came out clear. Leave it in peace until it is fit to wrap."),)
_OPEN_STEPS = (
    mark("Nothing needs doing yet: how it came out is not recorded."),
    mark("Look at it once it should be clear, in slanting light and from the front, and record what you see."),
)


def remedy(cause: Cause, sheet: DataSheet, outcome: Outcome | None) -> Remedy:
    """Return what to do about `cause` on a coat of `sheet` that came out so.

    Removal is never named without its cautions, and not at all for a coat that only needs time, or none.
    """
    if outcome in (None, Outcome.CLEAR):
        steps_now = _OPEN_STEPS if outcome is None else _CLEAR_STEPS
        return Remedy(cause=cause, steps=tuple(map(say, steps_now)), cautions=())
    gives_vapour = sheet.kind is Kind.SOLVENTBORNE
    steps = [*_steps(cause, gives_vapour=gives_vapour), say(LOOK_AGAIN)]
    cautions: list[str] = [say(SANDING_CAUTION)] if cause in _SANDS else []
    if gives_vapour:
        cautions.append(say(VAPOUR_CAUTION))
    if cause not in _CLEARS:
        removal = say(REMOVAL)
        if sheet.removable_with:
            removal = f"{removal} {say('Removal: {how}.', how=sheet.removable_with)}"
        steps += [say(STOP), removal, say(CONSERVATOR)]
        cautions += map(say, REMOVAL_CAUTIONS)
    return Remedy(cause=cause, steps=tuple(steps), cautions=tuple(cautions))


def _steps(cause: Cause, *, gives_vapour: bool) -> Iterator[str]:
    """Yield the first steps; for a coat that gives off vapour, fresh air comes before still air."""
    least, most = _warmth(ROOM_C)
    room = say(FRESH_ROOM if gives_vapour else STILL_ROOM, least=least, most=most)
    least, most = _warmth(WARM_C)
    for step in _STEPS[cause]:
        yield say(step, room=room, least=least, most=most)


def _warmth(range_C: tuple[float, float]) -> tuple[str, str]:
    """Return the two ends of a range of temperatures, the unit with the second."""
    units = chosen()
    return units.plain(round(units.degrees.from_celsius(range_C[0]), 1)), units.limit(range_C[1])


def remedies(order: Sequence[Cause], sheet: DataSheet, outcome: Outcome | None) -> tuple[Remedy, ...]:
    """Return what to do about several causes, in their order; nothing about a coat that did not cloud."""
    if outcome in (None, Outcome.CLEAR):
        return ()
    return tuple(remedy(cause, sheet, outcome) for cause in order)
