"""One look at the room, as the rules take it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from studiowatch.room.limits import Standing
from studiowatch.speech.units import METRIC, Units
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.heading import NOT_KNOWN, Heading
from studiowatch.studio.words import Sentence

WARM_GENTLY = mark("Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.")
WARM_NO_FLAME = mark("Warm the room gently, without flame or glowing element, and keep fresh air coming in.")


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One look at the room: what a rule may rest on. `coats` are those at risk; `before` is what was found last."""

    air: AirNow
    coats: tuple[CoatAtRisk, ...]
    now_ms: int
    clock_text: Callable[[int], str]
    before: Mapping[Kind, Concern]
    heading: Heading = NOT_KNOWN
    units: Units = METRIC

    @property
    def has_solvent(self) -> bool:
        """Whether solvent vapour comes off any coat."""
        return any(coat.solvent for coat in self.coats)

    @property
    def warm_advice(self) -> str:
        """How to warm the room without spoiling a coat or starting a fire."""
        return say(WARM_NO_FLAME if self.has_solvent else WARM_GENTLY)

    def film_C(self, coat: CoatAtRisk) -> float | None:
        """Return how warm a film is, °C: as the air where that is not known, None where neither is."""
        return self.air.temperature_C if coat.film_C is None else coat.film_C

    def standing_before(self, *kinds: Kind) -> Standing:
        """Return how the worst of `kinds` stood when last looked at."""
        levels = [int(self.before[kind].level) for kind in kinds if kind in self.before]
        return Standing(max(levels, default=0))

    def spoken_for(self, kind: Kind, found: Concern | None) -> frozenset[str]:
        """Return the keys of the pieces that a concern of `kind` speaks for, as it is found now or still held."""
        earlier = self.before.get(kind)
        return frozenset(key for one in (found, earlier) if one is not None for key in one.piece_keys)

    def concern(
        self,
        kind: Kind,
        coats: Sequence[CoatAtRisk],
        sentence: Sentence,
        *,
        began_ms: int | None = None,
        may_sound: bool = False,
        basis: str = "",
        expected_ms: int | None = None,
        is_ahead: bool = False,
    ) -> Concern:
        """Return a concern about the pieces of `coats`; it keeps the earliest beginning it ever had."""
        earlier = self.before.get(kind)
        began_ms = self.now_ms if began_ms is None else began_ms
        pieces = {coat.piece_key: coat.piece_title for coat in coats}
        return Concern(
            kind=kind,
            level=sentence.level,
            piece_keys=tuple(pieces),
            piece_titles=tuple(pieces.values()),
            began_ms=began_ms if earlier is None else min(began_ms, earlier.began_ms),
            seen_ms=self.now_ms,
            sentence=sentence,
            may_sound=may_sound,
            basis=basis,
            expected_ms=expected_ms,
            is_ahead=is_ahead,
        )


def titles_of(coats: Sequence[CoatAtRisk]) -> tuple[str, ...]:
    """Return the titles of the pieces of `coats`, each once."""
    return tuple(dict.fromkeys(coat.piece_title for coat in coats))
