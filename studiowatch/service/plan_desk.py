"""The finishing plan while the studio is watched: made anew when something changed, off the keeper's thread."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future
from dataclasses import dataclass, field, replace

from studiowatch.coats.belief import Belief
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.physics.air import Air
from studiowatch.service.air_ahead import CALM_M_S, AirAhead, is_within, steady
from studiowatch.service.commands import Refused
from studiowatch.service.film_waits import FilmWaits
from studiowatch.service.piece_view import PieceView
from studiowatch.service.plan_air import PlanAir
from studiowatch.service.plan_commands import PlanCommand, SaveRecipe, SetWorkingHours
from studiowatch.service.planning import OnTheRack, ReadyByPiece, cards_ready, gathered, is_moved, pieces_to_plan
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.rack import Rack
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.finishing_plan import finishing_plan
from studiowatch.studio.otherwise import STILL_M_S
from studiowatch.studio.plan_checks import StackCoat, laying_sentence
from studiowatch.studio.plan_shapes import FinishingPlan, PiecePlan
from studiowatch.studio.recipes import BUILT_IN, Recipe, recipe_fault, with_built_in
from studiowatch.studio.words import Sentence
from studiowatch.studio.working_hours import WallClock, WorkingHours

AGAIN_MS = 180_000  # ms after which the plan is made anew though nothing was done: the coats dry
UNSEEN_AGAIN_MS = 1_800_000  # ms, the same while nobody looks: a plan, and what goes by it, is only shown
COMPARE_MS = 10_000  # ms between two looks at whether a card tells another time: films are dried every half minute
ROOM_MS = 1_800_000  # ms in which a room that wanders does not have the coats to come followed anew
LOOK_BACK_MS = (3_600_000, 86_400_000)  # ms of log that are looked through for the last air
FORETOLD_MS = 3_600_000  # ms in which an outlook dates the coats to come: it foresaw how the room wanders
ROOM_K, ROOM_PCT = 0.5, 3.0  # changes of the air that move the days of a plan; assumption
UNKNOWN_AIR = Air(temperature_C=23.0, humidity_pct=50.0, air_speed_m_s=0.1)  # the sheets' own: ISO 3270, ASTM D3924

Work = Callable[[Callable[[], FinishingPlan]], "Future[FinishingPlan]"]


@dataclass(slots=True)
class PlanDesk:
    """Holds the plan, her working hours and her recipes.

    Attributes
    ----------
    work : callable or None
        Has a plan made and returns its future; with None none is made but by `make`.
    room_ahead : callable
        Turns the air as it is now into the air ahead.
    plan : FinishingPlan or None
        The newest.
    is_seen : bool
        Whether somebody looks; else a plan is made anew for the drying of the coats only now and then.
    """

    rack: Rack
    records: Records
    clock: WallClock
    work: Work | None = None
    room_ahead: Callable[[Air], AirAhead] = steady
    plan: FinishingPlan | None = None
    is_seen: bool = True
    hours: WorkingHours = field(default_factory=WorkingHours)
    recipes: tuple[Recipe, ...] = BUILT_IN
    _asked: Future[FinishingPlan] | None = None
    _asked_ms: int | None = None
    _compared_ms: int | None = None
    _ready: ReadyByPiece = field(default_factory=dict)  # as the cards said it when the plan was asked for
    _marked: bool = True
    _closed: bool = False
    _sheets: tuple[DataSheet, ...] = ()
    _checked: dict[tuple[tuple[str, ...], bool], tuple[tuple[str, Sentence], ...]] = field(default_factory=dict)
    _told: dict[str, tuple[PieceView, PiecePlan | None, PieceView]] = field(default_factory=dict)
    _told_of: tuple[Sequence[PieceView], FinishingPlan | None, tuple[PieceView, ...]] | None = None
    _waits: FilmWaits | None = None
    _waits_for: tuple[Air, int, object] | None = None
    _is_foretold: bool = False
    _is_meant: bool = False

    def reopen(self) -> None:
        """Take up her hours and recipes from the records."""
        self.hours, self.recipes = self.records.working_hours(), with_built_in(self.records.recipes())
        self.mark()

    def mark(self) -> None:
        """Have the plan made anew: something was done."""
        self._marked = True

    def heed_the_room(self) -> None:
        """Have the coats to come followed anew: the room to come is another."""
        self._waits = None
        self.mark()

    def close(self) -> None:
        """Drop a plan that is being made: its worker ends with the coat that it is at."""
        self._closed = True

    def as_it_is(self, command: PlanCommand) -> PlanCommand:
        """Return the command that brings back what `command` would change."""
        if isinstance(command, SetWorkingHours):
            return SetWorkingHours(hours=self.hours)
        name = " ".join(command.name.split())
        own = next((recipe.sheets for recipe in self.recipes if recipe.own and recipe.name == name), ())
        return SaveRecipe(name=name, sheets=own)

    def carry_out(self, command: PlanCommand) -> str:
        """Change hours or recipes, on disk first; return the name of what was changed.

        Raises
        ------
        Refused
            If it cannot be done; nothing was changed.
        StoreTrouble
            If the disk refused; nothing was changed.
        """
        match command:
            case SetWorkingHours():
                self.records.save_working_hours(command.hours)
                key = "working hours"  # not said
            case SaveRecipe():
                key = self._save(command)
        self.reopen()
        return key

    def _save(self, command: SaveRecipe) -> str:
        name = " ".join(command.name.split())
        unknown = [sheet for sheet in command.sheets if sheet not in self.rack.shelf.sheets]
        if unknown:
            raise Refused(say("There is no data sheet {name}; choose one from the list.", name=repr(unknown[0])))
        fault = recipe_fault(name, command.sheets or ("none",))
        if fault:
            raise Refused(fault)
        self.records.save_recipe(name, command.sheets)
        return name

    def tend(self, air: Air | None, now_ms: int) -> bool:
        """Take a plan that is made, and have one made if it is time; return whether there is a new one."""
        if self.work is None:
            return False
        is_new = self._asked is not None and self._asked.done()
        if is_new and self._asked is not None:
            asked, self._asked = self._asked, None
            self.plan = asked.result()
        if self._asked is None and self._is_due(now_ms):
            self._marked, self._asked_ms = False, now_ms
            self._asked = self.work(self._making(air, now_ms))
        return is_new

    def _is_due(self, now_ms: int) -> bool:
        """Return whether a plan is to be made: in between only where a card that is seen tells another time by now."""
        since_ms = now_ms - (self._asked_ms or 0)
        again_ms = AGAIN_MS if self.is_seen else UNSEEN_AGAIN_MS
        if self._marked or not 0 <= since_ms < again_ms:
            return True
        if not self.is_seen or 0 <= now_ms - (self._compared_ms or 0) < COMPARE_MS:
            return False
        self._compared_ms = now_ms
        return is_moved(self._ready, cards_ready(self.rack))

    def make(self, air: Air | None, now_ms: int) -> FinishingPlan:
        """Return the plan, made here and now."""
        self.plan = self._making(air, now_ms)()
        return self.plan

    def told(self, views: Sequence[PieceView]) -> tuple[PieceView, ...]:
        """Return the views of the pieces with the slack that the plan gives them, and what a coat now would break.

        It is the very same tuple while views, plan and data sheets are.
        """
        self._heed_the_sheets()
        if self._told_of is not None and self._told_of[0] is views and self._told_of[1] is self.plan:
            return self._told_of[2]
        plans = {} if self.plan is None else {plan.key: plan for plan in self.plan.pieces}
        told: dict[str, tuple[PieceView, PiecePlan | None, PieceView]] = {}
        for view in views:
            plan, before = plans.get(view.key), self._told.get(view.key)
            if before is None or before[0] is not view or before[1] is not plan:
                slack_days = view.slack_days if plan is None else plan.slack_days
                before = (view, plan, replace(view, slack_days=slack_days, stack_checks=self._stack_checks(view)))
            told[view.key] = before
        self._told = told
        self._told_of = views, self.plan, tuple(after for _, _, after in told.values())
        return self._told_of[2]

    def _heed_the_sheets(self) -> None:
        """Forget what was checked by other sheets than are on the shelf, whoever put these there."""
        sheets = tuple(self.rack.shelf.sheets.values())
        if sheets != self._sheets:
            self._sheets, self._checked, self._told, self._told_of = sheets, {}, {}, None

    def _stack_checks(self, view: PieceView) -> tuple[tuple[str, Sentence], ...]:
        run = None if view.top is None else self.rack.runs.get(view.top.key)
        through_ms = None if run is None else run.told.through_ms()
        is_through = run is not None and through_ms is not None and through_ms <= run.at_ms
        key = (tuple(coat.sheet for coat in view.coats if coat.laid_ms is not None), is_through)
        if key not in self._checked:
            self._checked[key] = _stack_checks(self.rack.shelf, *key)
        return self._checked[key]

    def _making(self, air: Air | None, now_ms: int) -> Callable[[], FinishingPlan]:
        """Return what makes the plan out of what is gathered here."""
        pieces, hours, clock = gathered(self.rack), self.hours, self.clock
        self._ready = cards_ready(self.rack)
        known = air or last_air(self.rack.log, now_ms)
        waits = self._film_waits(known or UNKNOWN_AIR, now_ms)
        words = _air_words(known)
        if known is not None and self._is_foretold:
            words = _foretold_words(known, is_meant=self._is_meant)

        def make() -> FinishingPlan:
            return replace(_made(pieces, waits, hours, clock, now_ms), air=words)

        return make

    def _film_waits(self, air: Air, now_ms: int) -> FilmWaits:
        """Return what answers for the room and the products as they are, the same one while they hardly change."""
        learnt = self.rack.learning.views()
        before, since_ms, known = self._waits_for or (UNKNOWN_AIR, now_ms, None)
        held = self._waits if known == learnt else None
        if held is not None:
            lasts_ms = FORETOLD_MS if self._is_foretold else ROOM_MS
            is_fresh = 0 <= now_ms - since_ms < lasts_ms and before is not UNKNOWN_AIR
            is_held = not self._is_foretold and _alike(before, air)
            if is_fresh or is_held:
                return held
        air_ahead = self.room_ahead(air)
        self._is_foretold = isinstance(air_ahead, PlanAir)
        self._is_meant = isinstance(air_ahead, PlanAir) and air_ahead.is_meant
        if held is None:
            held = FilmWaits(air_ahead=air_ahead, beliefs=self._beliefs(), is_wanted=lambda: not self._closed)
        else:
            held = held.in_air(air_ahead)
        self._waits = held
        self._waits_for = (air, now_ms, learnt)
        return held

    def _beliefs(self) -> dict[str, Belief]:
        shelf, learning = self.rack.shelf.sheets, self.rack.learning
        return {view.sheet: learning.belief(shelf[view.sheet]) for view in learning.views() if view.sheet in shelf}


def last_air(log: ReadingsLog, now_ms: int) -> Air | None:
    """Return the last air that the log has of the day before `now_ms`, or None."""
    end_ms = now_ms + 1
    for back_ms in LOOK_BACK_MS:
        start_ms = now_ms - back_ms
        for reading in reversed(log.minute_means(start_ms, end_ms)):
            if reading.temperature_C is not None and reading.humidity_pct is not None:
                speed_m_s = STILL_M_S if reading.air_speed_m_s is None else reading.air_speed_m_s
                return Air(
                    temperature_C=reading.temperature_C,
                    humidity_pct=reading.humidity_pct,
                    air_speed_m_s=min(speed_m_s, CALM_M_S),
                )
        end_ms = start_ms
    return None


def _made(
    pieces: Sequence[OnTheRack], waits: FilmWaits, hours: WorkingHours, clock: WallClock, now_ms: int
) -> FinishingPlan:
    return finishing_plan(pieces_to_plan(pieces, waits, now_ms), hours, clock, now_ms=now_ms)


def _stack_checks(shelf: SheetShelf, laid: Sequence[str], is_through: bool) -> tuple[tuple[str, Sentence], ...]:  # noqa: FBT001 - a key's part
    below = [StackCoat(key=name, name=name, sheet=shelf.sheets.get(name), laid=True) for name in laid]
    found = []
    for name, sheet in shelf.sheets.items():
        coat = StackCoat(key="", name=name, sheet=sheet)
        sentence = laying_sentence(below, coat, is_through=is_through)
        if sentence is not None:
            found.append((name, sentence))
    return tuple(found)


def _alike(before: Air, after: Air) -> bool:
    return is_within(before, after, ROOM_K, ROOM_PCT) and (before.age_s is None) == (after.age_s is None)


def _foretold_words(air: Air, *, is_meant: bool) -> str:
    words = say(
        "Dated for the ways in which this room may go from {temperature} and {humidity} % RH, by its days so far.",
        temperature=chosen().temperature(air.temperature_C),
        humidity=chosen().number(air.humidity_pct, 0),
    )
    return f"{words} {say('What you mean to do with the room is counted in.')}" if is_meant else words


def _air_words(air: Air | None) -> str:
    if air is None:
        return say(
            "No reading of the room yet: {temperature} and 50 % RH are taken, as on the sheets.",
            temperature=chosen().limit(UNKNOWN_AIR.temperature_C),
        )
    return say(
        "Dated for the room as it was read last: {temperature}, {humidity} % RH.",
        temperature=chosen().temperature(air.temperature_C),
        humidity=chosen().number(air.humidity_pct),
    )
