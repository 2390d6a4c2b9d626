"""A made-up half year behind the rack: pieces that left it, their coats, warnings and prompts."""

from __future__ import annotations

from studiowatch.service.past import GoneCoat, GonePiece, PastPrompt, PastView, PastWarning
from studiowatch.studio.concern import Kind
from studiowatch.studio.words import Level
from studiowatch.ui.models.times import DAY_MS, HOUR_MS, MINUTE_MS

TITLES = ("Tide Table", "Ash Lane", "Winter Wheat", "Two Kilns", "The Weir", "Slate Roofs", "Night Ferry", "Hazel")
LAYERS = (("isolation", 0), ("gloss 1", 26), ("gloss 2", 52), ("matt", 80))  # h after the first
WET_MIN = 70
CLOUDED = {("Ash Lane", "gloss 1"): "milky in patches", ("Night Ferry", "matt"): "powdery"}
STEPS = (("Break the bubbles", 15), ("Scrape the drips", 18), ("Set the mesh cover", 30))


def gone(title: str, begin_ms: int) -> GonePiece:
    """Return a piece that got all its coats and left two weeks after the last."""
    laid_ms = [begin_ms + hours * HOUR_MS for _, hours in LAYERS]
    ends_ms = [*laid_ms[1:], laid_ms[-1] + 14 * DAY_MS]
    return GonePiece(
        key=title.lower(),
        title=title,
        coats=tuple(
            GoneCoat(
                key=f"{title.lower()} {label}",
                label=label,
                laid_ms=at_ms,
                touch_dry_ms=at_ms + WET_MIN * MINUTE_MS,
                end_ms=end_ms,
                outcome=CLOUDED.get((title, label), "clear"),
            )
            for (label, _), at_ms, end_ms in zip(LAYERS, laid_ms, ends_ms, strict=True)
        ),
    )


def past(now_ms: int) -> PastView:
    """Return the half year before `now_ms`."""
    pieces = tuple(gone(title, now_ms - (170 - 18 * at) * DAY_MS - 5 * HOUR_MS) for at, title in enumerate(TITLES))
    pieces = tuple(piece for piece in pieces if (piece.coats[-1].end_ms or 0) < now_ms)
    coats = [(piece, coat) for piece in pieces for coat in piece.coats]
    kinds = (Kind.AIR_MOVING, Kind.DAMP, Kind.TOO_COLD)
    warnings = [
        PastWarning(
            key=f"{coat.key} {number}",
            kind=kinds[(at + number) % len(kinds)],
            level=Level.ACT if (at + number) % 3 else Level.CAUTION,
            began_ms=coat.laid_ms + (12 + 9 * number) * MINUTE_MS,
            headline=("Air is moving over wet coats", "Too damp for a wet coat", "Too cold")[(at + number) % 3],
            pieces=(piece.title,),
        )
        for at, (piece, coat) in enumerate(coats)
        for number in range(at % 5)
    ]
    prompts = [
        PastPrompt(
            piece_key=piece.key,
            due_ms=coat.laid_ms + minutes * MINUTE_MS,
            done_ms=None if (at, step) == (6, "Scrape the drips") else coat.laid_ms + (minutes + 2) * MINUTE_MS,
            text=step,
        )
        for at, (piece, coat) in enumerate(coats)
        for step, minutes in STEPS
    ]
    return PastView(
        pieces=pieces,
        warnings=tuple(sorted(warnings, key=lambda one: one.began_ms)),
        prompts=tuple(prompts),
    )
