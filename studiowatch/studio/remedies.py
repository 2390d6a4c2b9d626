"""What to do now about a clouded coat, least invasive first.

The steps are common practice, no source, and the times in them judgement; the product's sheet comes first, and a
conservator for a piece that cannot be replaced.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Remedy

STILL_ROOM = "in still air at 18 to 24 °C and under 60 %"
LOOK_AGAIN = "Then look again in the same light and record what you see: this review learns from it."
STOP = "Stop as soon as a step shows no change on a small test corner: more of it only harms the film."
CONSERVATOR = (
    "A valuable or irreplaceable piece: do nothing but wait, and ask a conservator before anything touches the film."
)
NO_REWORK = "No brushing, rubbing, heating or polishing while it may still clear by itself."
REMOVAL = (
    "Only if waiting has failed: taking the varnish off. Read its sheet first for whether it can be removed, and with "
    "what; test a corner; the isolation coat below must be whole, or the paint goes with it."
)
REMOVAL_CAUTIONS = (
    (
        "Removal with solvent: open windows and let air through, gloves, no flame, spark or heater, a respirator as "
        "the product's sheet says."
    ),
    (
        "Solvent-wet rags can heat up and catch fire by themselves: dry them flat outdoors, or keep them in a closed "
        "metal container with water."
    ),
    "The product's own sheet, local rules and licensed advice come first.",
)
SANDING_CAUTION = "Sanding dust: a respirator as the product's sheet says, and wipe it up damp, never dry."
VAPOUR_CAUTION = (
    "It is solvent-borne: keep fresh air coming through the room all the time, away from the piece; no flame or spark."
)
_CLEARING = (
    f"Leave it uncovered {STILL_ROOM}: a fresh coat is milky until its water has left.",
    "Look again after the normal milky time, at the earliest when the next coat may go on.",
)
_STEPS: Mapping[Cause, tuple[str, ...]] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: (
            f"Leave it uncovered {STILL_ROOM} for three days; sealed-in water often leaves, and the film clears.",
            "Look for edges that clear first, a sign that it works; then give it up to a week more.",
            NO_REWORK,
        ),
        Cause.DAMP_AIR: (
            f"Dry the room, then leave it {STILL_ROOM} for three days: what is only damp clears.",
            "Look for milkiness that thins evenly; if it has not changed after a week, it will hardly clear by itself.",
            NO_REWORK,
        ),
        Cause.BELOW_MFFT: (
            "Keep the room at 20 to 24 °C for three days: it hardens the film, though what did not knit stays so.",
            "Rub a hidden corner with a dry finger: powder comes off a film that never formed.",
            "If no powder comes off: a thin coat of the same gloss, in a warm room, may wet it through; test a corner.",
        ),
        Cause.CONDENSATION: (
            f"Leave it {STILL_ROOM} for two days, the piece as warm as the room.",
            "Look at it in slanting light: rings and runs of droplets stay, an even haze often clears.",
            "Haze that stays: a thin coat of the same product in a dry room, tested on a corner, often takes it in.",
        ),
        Cause.SKINNED: (
            f"Leave it {STILL_ROOM} for a week: under a skin the rest dries slowly.",
            "Press a gloved fingertip at an edge: while it gives, it is not dry below, and nothing may go on it.",
            "Wrinkles stay. Once dry through, they can be levelled by fine wet sanding and another thin coat.",
        ),
        Cause.TOO_THICK: (
            f"Leave it uncovered {STILL_ROOM} for a week; twice the thickness takes about four times as long.",
            "Look for thin places that clear first; the thick ones follow in the order of their thickness.",
            NO_REWORK,
        ),
        Cause.THINNED: (
            f"Leave it {STILL_ROOM} for three days.",
            "Wipe a corner with a barely damp cloth: if it turns clear while wet and dull again, the film has pores.",
            "A thin coat of the product as it comes from the bottle often closes them; test a corner.",
        ),
        Cause.MATTING_BUILD_UP: (
            "Waiting does not help: the matting agent stays where it is.",
            "Look at it in the light that it will hang in: dull darks show most in slanting light.",
            "A last coat of gloss brings some depth back, at the cost of the sheen that was ordered; test a corner.",
        ),
        Cause.TOUCHED: (
            "Leave it to dry through before anything else; a mark in a soft film only grows.",
            "A week later: level the mark by fine wet sanding of that spot, and lay a thin coat over the whole face.",
        ),
        Cause.STILL_CLEARING: _CLEARING,
        Cause.UNKNOWN: (
            f"Leave it {STILL_ROOM} for three days and look again: most haze of a fresh coat leaves by itself.",
            "Look closely in slanting light: specks and hairs lie in the film, rings come from water or soap below.",
        ),
    }
)
_CLEARS = frozenset({Cause.STILL_CLEARING})
_SANDS = frozenset({Cause.SKINNED, Cause.TOUCHED})


_CLEAR_STEPS = ("Nothing needs doing: it came out clear. Leave it in peace until it is fit to wrap.",)
_OPEN_STEPS = (
    "Nothing needs doing yet: how it came out is not recorded.",
    "Look at it once it should be clear, in slanting light and from the front, and record what you see.",
)


def remedy(cause: Cause, sheet: DataSheet, outcome: Outcome | None) -> Remedy:
    """Return what to do about `cause` on a coat of `sheet` that came out so.

    Removal is never named without its cautions, and not at all for a coat that only needs time, or none.
    """
    if outcome in (None, Outcome.CLEAR):
        steps_now = _OPEN_STEPS if outcome is None else _CLEAR_STEPS
        return Remedy(cause=cause, steps=steps_now, cautions=())
    steps = [*_STEPS[cause], LOOK_AGAIN]
    cautions: list[str] = [SANDING_CAUTION] if cause in _SANDS else []
    if sheet.kind is Kind.SOLVENTBORNE:
        steps = [_ventilated(step) for step in steps]
        cautions.append(VAPOUR_CAUTION)
    if cause not in _CLEARS:
        removes = f" Removal: {sheet.removable_with}." if sheet.removable_with else ""
        steps += [STOP, REMOVAL + removes, CONSERVATOR]
        cautions += REMOVAL_CAUTIONS
    return Remedy(cause=cause, steps=tuple(steps), cautions=tuple(cautions))


def _ventilated(step: str) -> str:
    """Return a step that asks for still air as it holds for a coat that gives off vapour: fresh air comes first."""
    return step.replace("in still air at", "in fresh air that does not blow on it, at")


def remedies(order: Sequence[Cause], sheet: DataSheet, outcome: Outcome | None) -> tuple[Remedy, ...]:
    """Return what to do about several causes, in their order; nothing about a coat that did not cloud."""
    if outcome in (None, Outcome.CLEAR):
        return ()
    return tuple(remedy(cause, sheet, outcome) for cause in order)
