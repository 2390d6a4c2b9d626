"""The best hours to lay the coats that come next, as lines of the plan's page."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.intention_form import counted_in, withheld
from studiowatch.ui.models.tones import Tone

ASIDES = 3  # of the reasons against other hours that are told; the terminal has them all


@dataclass(frozen=True, slots=True, kw_only=True)
class BestLine:
    """One line; `strong` for what it is about."""

    text: str
    tone: Tone = Tone.INK
    strong: bool = False


def best_lines(snapshot: Snapshot) -> tuple[BestLine, ...]:
    """Return the lines for each sheet that is to be laid next, and what they count on; none while none is planned."""
    lines = [line for view in snapshot.best_hours for line in _of_sheet(view)]
    if lines:
        lines += [BestLine(text=reason, tone=Tone.CAUTION) for reason in withheld(snapshot)]
        lines += [BestLine(text=counted, tone=Tone.MUTED) for counted in [counted_in(snapshot)] if counted]
    return tuple(lines)


def _of_sheet(view: BestHoursView) -> list[BestLine]:
    title = say("Best hours in the next two days for {title}", title=view.title)
    head = BestLine(text=f"{title} · {', '.join(view.piece_titles)}", strong=True)
    if view.unknown:
        return [head, BestLine(text=view.unknown, tone=Tone.MUTED)]
    cautions = [BestLine(text=view.caution, tone=Tone.CAUTION)] if view.caution else []
    good = [BestLine(text=line) for line in view.lines]
    others = [BestLine(text=line, tone=Tone.MUTED) for line in view.aside_lines[:ASIDES]]
    return [head, *cautions, *good, *others]
