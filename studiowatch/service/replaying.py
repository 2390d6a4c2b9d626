"""A room log through the whole watch, in memory and faster than life: the same code as the live one."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date
from itertools import pairwise
from statistics import median

from studiowatch.board.replay import replayed
from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.readings import Reading
from studiowatch.service.happenings import Happening
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.shapes import LearntRecord, PromptRecord, TellingRecord, WarningRecord
from studiowatch.studio.meant import Meant
from studiowatch.studio.pieces import Piece
from studiowatch.studio.preparation import Preparation
from studiowatch.studio.recipes import Recipe
from studiowatch.studio.watch import SILENT_AFTER_S
from studiowatch.studio.working_hours import WorkingHours

SILENT_STEPS = 5  # a log of one reading a minute is silent after five minutes; assumption


class NoLog:
    """A readings log that keeps nothing: a replayed reading is on disk already."""

    def append(self, readings: Sequence[Reading]) -> None:
        """Keep nothing."""

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:  # noqa: ARG002 - a Protocol's signature
        """Return nothing: a coat laid before the log began was seen by nobody."""
        return ()

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:  # noqa: ARG002 - a Protocol's signature
        """Return nothing, as `between`."""
        return ()

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:  # noqa: ARG002 - a Protocol's signature
        """Pack nothing."""
        return 0


@dataclass(slots=True)
class MemoryRecords:
    """Records of one replay, gone with it."""

    held: dict[str, Piece]
    kept_prompts: dict[str, PromptRecord] = field(default_factory=dict)
    kept_tellings: dict[str, TellingRecord] = field(default_factory=dict)
    kept_preparations: dict[str, Preparation] = field(default_factory=dict)
    kept_warnings: dict[str, WarningRecord] = field(default_factory=dict)
    kept_learnt: dict[str, LearntRecord] = field(default_factory=dict)
    kept_calibrations: dict[str, Kept] = field(default_factory=dict)
    kept_sightings: list[Sighting] = field(default_factory=list)
    kept_imported: list[Imported] = field(default_factory=list)
    kept_checks: list[Sighting] = field(default_factory=list)
    kept_recipes: dict[str, Recipe] = field(default_factory=dict)
    kept_hours: WorkingHours = field(default_factory=WorkingHours)
    kept_intentions: dict[str, Meant] = field(default_factory=dict)
    notes: list[tuple[int, str, str]] = field(default_factory=list)

    def pieces(self) -> Sequence[Piece]:
        """Return all pieces."""
        return tuple(self.held.values())

    def save_piece(self, piece: Piece) -> None:
        """Keep a piece."""
        self.held[piece.key] = piece

    def save_pieces(self, pieces: Sequence[Piece]) -> None:
        """Keep pieces."""
        self.held |= {piece.key: piece for piece in pieces}

    def corrections(self, piece_key: str) -> Sequence[tuple[int, Piece]]:  # noqa: ARG002 - a Protocol's signature
        """Return nothing: what is replayed is not corrected."""
        return ()

    def warnings(self, limit: int) -> Sequence[WarningRecord]:
        """Return the latest warnings, newest first."""
        return tuple(reversed(self.kept_warnings.values()))[:limit]

    def save_warning(self, warning: WarningRecord) -> None:
        """Keep a warning."""
        self.kept_warnings[warning.key] = warning

    def prompts(self) -> Sequence[PromptRecord]:
        """Return the prompts that are not done."""
        return tuple(prompt for prompt in self.kept_prompts.values() if prompt.done_ms is None)

    def done_prompts(self) -> frozenset[str]:
        """Return the keys of the prompts that were ticked."""
        return frozenset(key for key, prompt in self.kept_prompts.items() if prompt.done_ms is not None)

    def save_prompt(self, prompt: PromptRecord) -> None:
        """Keep a prompt."""
        self.kept_prompts[prompt.key] = prompt

    def drop_prompt(self, key: str) -> None:
        """Forget a prompt that applies no longer."""
        self.kept_prompts.pop(key, None)
        self.kept_tellings.pop(key, None)

    def tellings(self) -> Sequence[TellingRecord]:
        """Return what was done with the prompts that are not ticked."""
        return tuple(one for one in self.kept_tellings.values() if one.key not in self.done_prompts())

    def save_telling(self, telling: TellingRecord) -> None:
        """Keep what was done with a prompt."""
        if telling.key in self.kept_prompts:
            self.kept_tellings[telling.key] = telling

    def preparations(self) -> Sequence[Preparation]:
        """Return the preparations that nobody ended."""
        return tuple(one for one in self.kept_preparations.values() if one.ended_ms is None)

    def save_preparation(self, preparation: Preparation) -> None:
        """Keep a preparation."""
        self.kept_preparations[preparation.key] = preparation

    def learnt(self) -> Sequence[LearntRecord]:
        """Return what the tests on each coat taught."""
        return tuple(self.kept_learnt.values())

    def save_learnt(self, learnt: LearntRecord) -> None:
        """Keep what the tests on one coat taught."""
        self.kept_learnt[learnt.coat_key] = learnt

    def calibrations(self) -> Sequence[Kept]:
        """Return all calibrations."""
        return tuple(self.kept_calibrations.values())

    def save_calibration(self, kept: Kept) -> None:
        """Keep a calibration."""
        self.kept_calibrations[kept.key] = kept

    def sightings(self) -> Sequence[Sighting]:
        """Return which sensor was on from when."""
        return tuple(self.kept_sightings)

    def imported(self) -> Sequence[Imported]:
        """Return which stretches of the log came from outside."""
        return tuple(self.kept_imported)

    def save_sighting(self, sighting: Sighting) -> None:
        """Keep a sighting."""
        self.kept_sightings.append(sighting)

    def checks(self) -> Sequence[Sighting]:
        """Return when which sensor was checked."""
        return tuple(self.kept_checks)

    def save_check(self, check: Sighting) -> None:
        """Keep a check."""
        self.kept_checks.append(check)

    def recipes(self) -> Sequence[Recipe]:
        """Return the recipes that she saved."""
        return tuple(self.kept_recipes.values())

    def save_recipe(self, name: str, sheets: Sequence[str]) -> None:
        """Keep a recipe, or drop it if it has no sheets."""
        self.kept_recipes.pop(name, None)
        if sheets:
            self.kept_recipes[name] = Recipe(name=name, sheets=tuple(sheets), own=True)

    def working_hours(self) -> WorkingHours:
        """Return her working hours."""
        return self.kept_hours

    def save_working_hours(self, hours: WorkingHours) -> None:
        """Keep her working hours."""
        self.kept_hours = hours

    def intentions(self) -> Sequence[Meant]:
        """Return what she means to do with the room."""
        return tuple(self.kept_intentions.values())

    def save_intention(self, meant: Meant) -> None:
        """Keep what she means to do."""
        self.kept_intentions[meant.key] = meant

    def drop_intention(self, key: str) -> None:
        """Forget what she meant to do."""
        self.kept_intentions.pop(key, None)

    def note(self, time_ms: int, kind: str, text: str) -> None:
        """Keep a fact about the log."""
        self.notes.append((time_ms, kind, text))

    def noted(self, kind: str) -> Sequence[tuple[int, str]]:
        """Return the facts of one kind."""
        return tuple((time_ms, text) for time_ms, noted, text in self.notes if noted == kind)


def replay(
    readings: Sequence[Reading],
    pieces: Sequence[Piece],
    *,
    shelf: SheetShelf,
    tell: Callable[[Happening], None],
    clock_text: Callable[[int], str],
    local_date: Callable[[int], date],
    records: MemoryRecords | None = None,
) -> Watchkeeping:
    """Run the watch over a log and return it as the log's end left it.

    Parameters
    ----------
    readings : sequence of Reading
        Rising in time; a hole makes the board silent, as it would have.
    tell : callable
        Called with each happening in the order of the log.
    records : MemoryRecords, optional
        What is known beside the pieces; they are in there too.
    """
    silent_after_s = max(SILENT_AFTER_S, SILENT_STEPS * _usual_step_s(readings))
    watch = Watchkeeping(
        log=NoLog(),
        records=records or MemoryRecords(held={piece.key: piece for piece in pieces}),
        shelf=shelf,
        clock_text=clock_text,
        local_date=local_date,
        began_ms=readings[0].time_ms if readings else 0,
        tell=tell,
        silent_after_s=silent_after_s,
    )
    watch.open()
    before_ms: int | None = None
    for event in replayed(readings):
        time_ms = event.reading.time_ms
        if before_ms is not None and time_ms - before_ms > silent_after_s * 1000:
            _look(watch, before_ms + round(silent_after_s * 1000) + 1)
        watch.take(event, time_ms / 1000)
        watch.speak()
        _look(watch, time_ms)
        before_ms = time_ms
    return watch


def _look(watch: Watchkeeping, now_ms: int) -> None:
    watch.look(now_ms, now_ms / 1000)
    watch.speak()
    watch.write(now_ms, now_ms / 1000)


def _usual_step_s(readings: Sequence[Reading]) -> float:
    steps_ms = [after.time_ms - before.time_ms for before, after in pairwise(readings[:1000])]
    return median(steps_ms) / 1000 if steps_ms else 0.0
