"""What her touch tests and looks teach: kept per coat, pooled per product, and used for the coats to come."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, field, replace

import numpy as np

from studiowatch.coats.belief import SHARED, Belief, Evidence, belief_of
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.standing import WIDENING, Standing, standing_on
from studiowatch.service.coat_run import DRAWS, SEED, CoatRun
from studiowatch.service.ports import LearntRecord, Records
from studiowatch.service.product_views import LearntView
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import Units, chosen
from studiowatch.speech.words import say, say_counted
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.amounts import is_measured
from studiowatch.studio.pieces import Coat, Piece

_VALUE = "value"
_LIKE_THE_SHEET = 0.05  # of the sheet's time that is no difference worth a number; assumption
_NUMBERS = (  # of a sheet, that decide how its coat dries
    "kind",
    "volume_solids",
    "wet_um",
    "dry_um",
    "touch_dry_min",
    "clear_h",
    "recoat_h",
    "cure_days",
    "mfft_C",
)


@dataclass(slots=True)
class LearningDesk:
    """Holds what each coat taught.

    Attributes
    ----------
    trouble : str
        One sentence while it cannot be put on disk, else ""; it counts all the same.
    """

    records: Records
    shelf: SheetShelf
    trouble: str = ""
    _kept: dict[str, LearntRecord] = field(default_factory=dict)
    _planned: dict[str, tuple[Coat, Standing]] = field(default_factory=dict)
    _views: tuple[LearntView, ...] = ()
    _said_in: Units | None = None
    _unsaved: dict[str, LearntRecord] = field(default_factory=dict)

    def reopen(self) -> None:
        """Take up what was learnt before."""
        self._kept = {record.coat_key: record for record in self.records.learnt()}
        self._views = self._viewed()

    def belief(self, sheet: DataSheet, besides: str | None = None) -> Belief:
        """Return what is held of the room and of a product, not counting the coat with the key `besides`."""
        told = (_evidence_of(record) for record in self._kept.values() if record.coat_key != besides)
        return belief_of(_product(sheet.name, numbers_hash(sheet)), told)

    def standing(self, coat: Coat, sheet: DataSheet) -> Standing:
        """Return what the range of a coat stands on: what was planned, if it is the same coat with the same tests."""
        planned_for, planned = self._planned.get(coat.key, (None, None))
        if planned is not None and planned_for == coat:
            return planned
        return standing_on(self.belief(sheet, coat.key), DRAWS, SEED, measured=is_measured(coat))

    def plan(self, coat: Coat, standing: Standing) -> None:
        """Have `coat` stand on these draws when it is dried anew."""
        self._planned[coat.key] = coat, standing

    def ready(self, run: CoatRun) -> None:
        """Let a coat with other tests than those that its draws were taken for take draws anew as often as it may."""
        planned_for, _ = self._planned.get(run.coat.key, (None, None))
        if planned_for != run.coat:
            run.standing = replace(run.standing, rounds=0)

    def renew(self, run: CoatRun) -> None:
        """Have the range of a coat stand on what is held now: its draws stay and are weighed anew."""
        belief = self.belief(run.sheet, run.coat.key)
        if run.standing.surprise is not None:
            belief = belief.widened(WIDENING)
        run.standing = replace(run.standing, belief=belief)
        run.weigh()

    def keep(self, run: CoatRun) -> bool:
        """Keep what the tests on a coat teach; return whether that is anything new."""
        record = _record_of(run)
        if self._kept.get(record.coat_key) == record or not (record.tests or record.coat_key in self._kept):
            return False
        self._kept[record.coat_key] = self._unsaved[record.coat_key] = record
        self._save()
        self._views = self._viewed()
        return True

    def forget(self, coat_key: str, *, is_there: bool) -> bool:
        """Let go of what a coat taught that was taken back, or whose tests were; return whether that is anything.

        `is_there` says that the coat itself is kept.
        """
        self._planned.pop(coat_key, None)
        self._unsaved.pop(coat_key, None)
        record = self._kept.pop(coat_key, None)
        if record is None:
            return False
        if is_there:
            self._unsaved[coat_key] = replace(record, tests=0, rows=())
            self._save()
        self._views = self._viewed()
        return True

    def let_go(self, piece: Piece) -> None:
        """Let go of the draws of a piece that is off the rack; they are taken anew should it come back."""
        for coat in piece.coats:
            self._planned.pop(coat.key, None)

    def forget_plans(self, sheet: str) -> None:
        """Let no coat stand on draws that were planned by other figures of its sheet."""
        self._planned = {key: planned for key, planned in self._planned.items() if planned[0].sheet != sheet}
        self._views = self._viewed()

    def save_rest(self) -> None:
        """Try again to put on disk what it refused."""
        if self._unsaved:
            self._save()

    def _save(self) -> None:
        """Put on disk what is not there yet; what the disk refuses waits for the next try."""
        try:
            for key in tuple(self._unsaved):
                self.records.save_learnt(self._unsaved[key])
                del self._unsaved[key]
            self.trouble = ""
        except StoreTrouble as trouble:
            self.trouble = str(trouble)

    def views(self) -> tuple[LearntView, ...]:
        """Return how far each product that was tested differs here from its sheet, in the order of the shelf.

        They are the same values until something is learnt, or figures are written otherwise.
        """
        if self._said_in != chosen():
            self._views = self._viewed()
        return self._views

    def _viewed(self) -> tuple[LearntView, ...]:
        self._said_in = chosen()
        views = (self._view(sheet) for sheet in self.shelf.sheets.values())
        return tuple(view for view in views if view.tests)

    def _view(self, sheet: DataSheet) -> LearntView:
        product = _product(sheet.name, numbers_hash(sheet))
        own = [record for record in self._kept.values() if _product(record.sheet, record.sheet_hash) == product]
        tests = sum(record.tests for record in own)
        low, middle, high = self.belief(sheet).times_as_long() if tests else (1.0, 1.0, 1.0)
        return LearntView(
            sheet=sheet.name,
            times_as_long=middle,
            low=low,
            high=high,
            tests=tests,
            coats=len({record.coat_key for record in own if record.tests}),
            sentence=_sentence(sheet.title, (low, middle, high), tests),
        )


def numbers_hash(sheet: DataSheet) -> str:
    """Return a short hash of the numbers that decide how a sheet's coat dries: 12 hexadecimal digits."""
    numbers = json.dumps([getattr(sheet, name) for name in _NUMBERS])
    return hashlib.sha256(numbers.encode()).hexdigest()[:12]


def _product(sheet: str, sheet_hash: str) -> str:
    return f"{sheet} {sheet_hash}"


def _record_of(run: CoatRun) -> LearntRecord:
    observation = run.observation().shared()
    rows = np.column_stack([observation.loadings, observation.values])
    return LearntRecord(
        coat_key=run.coat.key,
        sheet=run.sheet.name,
        sheet_hash=numbers_hash(run.sheet),
        laid_ms=run.laid_ms,
        tests=len(run.tests()),
        rows=tuple(dict(zip((*SHARED, _VALUE), row.tolist(), strict=True)) for row in rows),
    )


def _evidence_of(record: LearntRecord) -> Evidence:
    rows = [[row.get(name, 0.0) for name in SHARED] for row in record.rows]
    return Evidence(
        product=_product(record.sheet, record.sheet_hash),
        laid_ms=record.laid_ms,
        loadings=np.array(rows, dtype=np.float64).reshape(len(rows), len(SHARED)),
        values=np.array([row[_VALUE] for row in record.rows], dtype=np.float64),
    )


def _sentence(title: str, times: tuple[float, float, float], tests: int) -> str:
    low, middle, high = times
    source = say_counted(tests, "from 1 test", "from {n} tests")
    if abs(middle - 1.0) < _LIKE_THE_SHEET:
        return say(
            "{title} dries here as its sheet says ({low} to {high} times as long), {source}.",
            title=title,
            low=chosen().number(low, 1),
            high=chosen().number(high, 1),
            source=source,
        )
    return say(
        "{title} dries {middle} times as long here as its sheet says ({low} to {high}), {source}.",
        title=title,
        middle=chosen().number(middle, 1),
        low=chosen().number(low, 1),
        high=chosen().number(high, 1),
        source=source,
    )
