"""Made-up warnings, past and present; `warning` makes one of a sentence."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.service.snapshot import WarningView
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import HOUR_MS, MINUTE_MS

from .clock import NOW_MS

AIR = Sentence(
    level=Level.ACT,
    headline="Air is moving over two wet coats",
    detail="A fan came on at 14:07 (0.34 m/s). Orchard at Low Water and Blue Ladder are still wet.",
    advice="Turn the fan off or turn it away.",
)
DAMP = Sentence(level=Level.CAUTION, headline="Humidity above 75 %", detail="The room was at 78 %.")
BLIND = Sentence(
    level=Level.ACT,
    headline="The board has fallen silent",
    detail="No reading for 40 seconds while Orchard at Low Water is wet.",
    advice="Check the USB plug at both ends.",
)
NOT_READ = Sentence(
    level=Level.CAUTION,
    headline="The room was not read since 11:02",
    detail="Orchard at Low Water is still drying, in air that nobody knows: the ready times are the wider for it.",
    advice="Read the hygrometer, and type what it says.",
)
AHEAD = Sentence(
    level=Level.CAUTION,
    headline="Humidity will pass the limit in about 40 minutes",
    detail="If the room goes on like this it passes 75 % at about 14:54, between 14:38 and 15:20: Orchard at "
    "Low Water.",
    advice="Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.",
)
DUSTY = Sentence(
    level=Level.CAUTION,
    headline="Dust over two sticky coats",
    detail="400,000 specks over 5 µm in a cubic metre; it sticks until about 15:05: Orchard at Low Water.",
    advice="Set the mesh cover once no more bubbles rise; move little, and stir nothing up.",
)
MATTING = Sentence(
    level=Level.CAUTION,
    headline="Too many coats with matting agent",
    detail="3 lie on each other, 2 are enough: Blue Ladder.",
    advice="Lay no more satin or matt on it: each one dulls the dark colours below.",
)


def warning(key: str, sentence: Sentence, state: WarningState, ago_ms: int, **more: object) -> WarningView:
    """Return a warning that began some time ago."""
    cleared = NOW_MS - ago_ms + 12 * MINUTE_MS if state is WarningState.CLEARED else None
    plain = WarningView(
        key=key,
        kind="air-moving",
        state=state,
        level=sentence.level,
        sentence=sentence,
        began_ms=NOW_MS - ago_ms,
        cleared_ms=cleared,
        piece_titles=("Orchard at Low Water", "Blue Ladder"),
    )
    return replace(plain, **more)


AIR_WARNING = warning("w1", AIR, WarningState.RAISED, 5 * MINUTE_MS, sound=True)
PAST_WARNINGS = (
    warning(
        "w2",
        replace(AIR, level=Level.CAUTION, headline="Air moving, coat covered"),
        WarningState.CLEARED,
        6 * HOUR_MS,
        piece_titles=("Lamp in the Fog",),
    ),
    warning("w3", DAMP, WarningState.CLEARED, 26 * HOUR_MS, kind="damp", piece_titles=()),
    warning(
        "w4",
        Sentence(level=Level.CALM, headline="Board unplugged for 6 min"),
        WarningState.CLEARED,
        28 * HOUR_MS,
        kind="board-silent",
        piece_titles=(),
    ),
)
AHEAD_WARNING = warning(
    "w11",
    AHEAD,
    WarningState.RAISED,
    2 * MINUTE_MS,
    kind="damp",
    piece_titles=("Orchard at Low Water",),
    basis="75 %: the product's sheet; care 5 % below it: assumption. Foreseen by the room's last hour.",
    expected_ms=NOW_MS + 42 * MINUTE_MS,
)
SILENT_WARNING = warning(
    "w9",
    BLIND,
    WarningState.RAISED,
    40_000,
    kind="board-silent",
    sound=True,
    piece_titles=("Orchard at Low Water",),
)
NOT_READ_WARNINGS = (
    warning(
        "w10",
        NOT_READ,
        WarningState.RAISED,
        190 * MINUTE_MS,
        kind="reading-old",
        piece_titles=("Orchard at Low Water",),
    ),
    warning(
        "w11",
        NOT_READ,
        WarningState.CLEARED,
        27 * HOUR_MS,
        kind="reading-old",
        piece_titles=("Orchard at Low Water",),
    ),
)
MANY_WARNINGS = (
    replace(AIR_WARNING, basis="Draught rate of ISO 7730: 0.15 to 0.31 m/s at 18 to 28 °C; 0.5 m/s: assumption."),
    AHEAD_WARNING,
    warning("w12", DUSTY, WarningState.HEARD, 9 * MINUTE_MS, kind="dust", basis="ISO 14644-1, class 9."),
    warning("w13", MATTING, WarningState.RAISED, 50 * MINUTE_MS, kind="matting-build-up", basis="The sheet."),
    *PAST_WARNINGS,
)
