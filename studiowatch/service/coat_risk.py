"""The present risk of one coat: tallied as it dries, weighed when it is shown."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array
from studiowatch.studio.pieces import Coat
from studiowatch.studio.review_curves import Curves
from studiowatch.studio.review_live import present_risk
from studiowatch.studio.review_severity import columns, film_severities, touched, unready_water_g_m2
from studiowatch.studio.review_tally import Tally, nothing_met, tallied
from studiowatch.studio.review_views import Risk

EVERY_S = 120.0  # s of a film's time between two tallies: what harms it takes minutes
LONGEST_S = 48 * 3600.0  # s after which what clouds a coat is over; as in a review


@dataclass(slots=True)
class CoatRisk:
    """Follows what a topmost coat meets.

    Attributes
    ----------
    sheets : tuple of DataSheet
        Of the coats of its stack, lowest first, its own last.
    sealed_g_m2 : ndarray or None
        Water that had still to leave those below when it was laid, g/m².
    """

    film: Film
    sheets: tuple[DataSheet, ...]
    sealed_g_m2: Array | None
    tally: Tally = field(init=False)
    _sums: Array = field(default_factory=lambda: np.zeros(4))
    _shown: tuple[Curves, Coat, Risk] | None = None

    def __post_init__(self) -> None:
        self.tally = nothing_met(len(self.film.anchor.draws))

    @classmethod
    def of(cls, film: Film, over: Film | None, sheets: Sequence[DataSheet]) -> CoatRisk:
        """Return the risk of a coat that was laid this moment as `film`, over `over` as that stood just before."""
        return cls(film=film, sheets=tuple(sheets), sealed_g_m2=None if over is None else unready_water_g_m2(over))

    def follow(self, film: Film, spans: Sequence[tuple[Air, float]]) -> None:
        """Take it that the film became `film` in these airs; those of two minutes are tallied together."""
        if self._is_over:
            return
        for air, dt_s in spans:
            self._sums += dt_s * np.array([air.temperature_C, air.humidity_pct, air.air_speed_m_s, 1.0])
        if film.elapsed_s - self.film.elapsed_s < EVERY_S:
            return
        temperature_C, humidity_pct, speed_m_s, span_s = self._sums.tolist()
        mean = Air(
            temperature_C=temperature_C / span_s, humidity_pct=humidity_pct / span_s, air_speed_m_s=speed_m_s / span_s
        )
        self.tally = tallied(self.tally, self.film, film, mean)
        self.film, self._sums, self._shown = film, np.zeros(4), None

    def told(self, coat: Coat, curves: Curves) -> Risk | None:
        """Return the risk of `coat`, its times by the clock of its film, as it is now, or None for paint."""
        if self.film.sheet.kind is Kind.PAINT:
            return None
        if self._shown is None or self._shown[0] is not curves or self._shown[1] != coat:
            self._shown = (curves, coat, present_risk(curves, self._severities(coat)))
        return self._shown[2]

    def _severities(self, coat: Coat) -> Array:
        set_s, dry_s = self.film.reached_s(Stage.SET_TO_TOUCH), self.film.reached_s(Stage.DRY_TO_TOUCH)
        laid_ms = coat.laid_ms or 0
        hands = touched(
            coat,
            set_ms=None if set_s is None else laid_ms + round(1000.0 * set_s),
            dry_ms=None if dry_s is None else laid_ms + round(1000.0 * dry_s),
            above_ms=None,
        )
        found = film_severities(self.film, self.tally, sheets=self.sheets, sealed_g_m2=self.sealed_g_m2, hands=hands)
        return columns(found)

    @property
    def _is_over(self) -> bool:
        """Whether nothing that clouds this film can come any more."""
        film = self.film
        if film.sheet.kind is Kind.PAINT or film.elapsed_s > LONGEST_S:
            return True
        return not bool(np.isinf(film.state.reached[ROW[Stage.DRY_TO_RECOAT]]).any())
