"""Each term of a coat's balance at one moment, for people and, as the object "explain", for other programs."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from studiowatch.cli.hours import told
from studiowatch.coats.balance import balance_at
from studiowatch.coats.film import Film, advance
from studiowatch.coats.prediction import Room
from studiowatch.coats.terms import MomentTerms, Phase, Terms
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import check
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

HOURS = (0.0, 8760.0)  # h after laying
PHASES = {
    Phase.OPEN: mark("wet: the polymer is not packed yet, and water leaves as from a plate of water"),
    Phase.PACKED: mark("packed: free water leaves through a dry layer that grows from the top"),
    Phase.BOUND: mark("touch-dry: free water has gone, and bound water leaves through the film"),
    Phase.SOLVENT: mark("wet: free solvent leaves through the air"),
    Phase.RETAINED: mark("touch-dry: free solvent has gone, and what is retained leaves through the resin"),
    Phase.PAINT: mark("paint: water leaves by diffusion"),
}

GROUPS = {
    "air": mark("air"),
    "film": mark("film"),
    "vapour": mark("vapour"),
    "transfer": mark("transfer"),
    "heat": mark("heat"),
    "skinning": mark("skinning"),
    "water": mark("water"),
    "solvent": mark("solvent"),
    "blush": mark("blush"),
    "ages": mark("ages"),
}


def moment_at(fresh: Film, room: Room, at_h: float, *, covered: bool) -> MomentTerms:
    """Return the balance of a coat `at_h` after it was laid in `room`; each air of a log holds until the next.

    Raises
    ------
    OutOfRange
        If `at_h` is not a number from 0 to 8760 h.
    """
    check(say("the moment to explain"), at_h, *HOURS, say("h after laying"))
    log = [(0.0, room)] if isinstance(room, Air) else room
    ends_s = [*(at_s for at_s, _ in log[1:]), inf]
    film, now = fresh, log[0][1]
    for (_, air), end_s in zip(log, ends_s, strict=True):
        film, _ = advance(film, air, max(min(end_s, at_h * 3600.0) - film.elapsed_s, 0.0), covered=covered)
        now = air
        if end_s > at_h * 3600.0:
            break
    return balance_at(film, now, covered=covered)


def document(moment: MomentTerms) -> dict[str, object]:
    """Return the moment in the form that other programs read.

    ``at_h`` is hours after laying and ``phase`` one of open, packed, bound (water-borne), solvent, retained
    (solvent-borne) and paint. Then come the groups, each an object of numbers whose names end in their units: air and
    film, and

    - water-borne: vapour, transfer, heat, skinning, water, ages;
    - solvent-borne: vapour, transfer, heat, solvent, blush, ages;
    - paint: water, ages.

    A term that plays no part at that moment is null; none is left out.
    """
    groups = {name: {term: terms[term].value for term in terms} for name, terms in moment.groups.items()}
    return {"at_h": moment.elapsed_s / 3600.0, "phase": moment.phase.value, **groups}


def lines(moment: MomentTerms) -> Iterator[str]:
    """Yield the moment as a table, a term to a line."""
    yield say("The balance {length} after laying, nominal run", length=told(moment.elapsed_s))
    yield say(PHASES[moment.phase])
    for name, terms in moment.groups.items():
        yield say(GROUPS[name])
        yield from _group(terms)


def _group(terms: Terms) -> Iterator[str]:
    if all(term.value is None for term in terms.values()):
        yield f"  {say('not in play: nothing free is left')}"
        return
    for term in terms.values():
        value = "-" if term.value is None else f"{term.value:.4g}".replace(".", chosen().numbers.value)
        yield f"  {value:>11} {term.unit:<9} {say(term.says)}"
