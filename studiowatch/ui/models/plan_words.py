"""The finishing plan in words: its rows, what to do today, and one piece's coats to come as they may be changed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.dates import day_seen_from
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.labels import suggested_mL, volume_text
from studiowatch.studio.plan_shapes import FinishingPlan, Milestone, MilestoneTime, PiecePlan, PlannedCoat, TodayStep
from studiowatch.studio.plan_words import slack_text
from studiowatch.studio.words import Level
from studiowatch.ui.models.empty import NO_PLAN
from studiowatch.ui.models.times import clock_words, clock_words_beside, local
from studiowatch.ui.models.tones import LEVEL_TONES, Tone

NO_PIECES = NO_PLAN
BEING_MADE = mark("The plan is being made.")
NO_COATS = mark("No coat is to come. Add one, or apply a recipe.")
_FIT = {
    Milestone.HANDLE: (
        mark("Fit to handle, no time in sight"),
        mark("Fit to handle by {time}"),
        mark("Fit to handle by {time}, perhaps {early}"),
    ),
    Milestone.WRAP: (
        mark("Fit to wrap, no time in sight"),
        mark("Fit to wrap by {time}"),
        mark("Fit to wrap by {time}, perhaps {early}"),
    ),
    Milestone.SHIP: (
        mark("Fit to ship, no time in sight"),
        mark("Fit to ship by {time}"),
        mark("Fit to ship by {time}, perhaps {early}"),
    ),
}
"""For each milestone: without a time, with the time it is promised by, and with the time it may be at as well."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanRow:
    """One piece in the plan's list."""

    key: str
    title: str
    due: str
    slack: str
    slack_tone: Tone
    note: str
    note_tone: Tone

    @property
    def spoken(self) -> str:
        """The row as it is read out."""
        return ", ".join(part for part in (self.title, self.due, self.slack, self.note) if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class TodayRow:
    """One coat to lay today."""

    at: str
    words: str
    why: str

    @property
    def spoken(self) -> str:
        """The row as it is read out."""
        return ", ".join(part for part in (self.at, self.words, self.why) if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatRow:
    """A coat to come, as it may be changed."""

    key: str
    label: str
    sheet: str
    dates: str
    dates_tone: Tone
    place: int
    is_first: bool
    is_last: bool

    @property
    def spoken(self) -> str:
        """The row as it is read out."""
        return ", ".join(part for part in (self.label, self.sheet, self.dates) if part)


@dataclass(frozen=True, slots=True, kw_only=True)
class SaidRow:
    """A sentence with its level, and what it rests on in small."""

    level: Level
    sentence: str
    basis: str = ""
    tone: Tone = Tone.INK
    is_marked: bool = True

    @property
    def spoken(self) -> str:
        """The row as it is read out."""
        return f"{self.sentence} {self.basis}".strip()


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceEditor:
    """One piece's plan, as it may be changed."""

    key: str
    title: str
    due: str
    slack: str
    slack_tone: Tone
    coats: tuple[CoatRow, ...]
    said: tuple[SaidRow, ...]
    fit: tuple[SaidRow, ...]
    sheets: tuple[str, ...]


def plan_rows(snapshot: Snapshot) -> tuple[PlanRow, ...]:
    """Return a row for each piece on the rack."""
    today = local(snapshot.time_ms).date()
    return tuple(_row(piece, _plan_of(snapshot.plan, piece.key), today) for piece in snapshot.pieces)


def today_rows(plan: FinishingPlan) -> tuple[TodayRow, ...]:
    """Return what to lay today, in the order in which to do it."""
    return tuple(_today(step, plan.made_ms) for step in plan.today)


def first_words(snapshot: Snapshot) -> str:
    """Return what to do first, in one sentence."""
    if snapshot.plan is None:
        return say(BEING_MADE if snapshot.pieces else NO_PIECES)
    return snapshot.plan.first if snapshot.pieces else say(NO_PIECES)


def piece_editor(snapshot: Snapshot, key: str, sheets: Mapping[str, SheetChoice]) -> PieceEditor | None:
    """Return one piece's plan; its coats as they are by now, with the dates of the newest plan."""
    piece = next((piece for piece in snapshot.pieces if piece.key == key), None)
    if piece is None:
        return None
    plan = _plan_of(snapshot.plan, key)
    row = _row(piece, plan, local(snapshot.time_ms).date())
    to_come = [coat for coat in piece.coats if coat.laid_ms is None]
    dated = {} if plan is None else {coat.coat.key: coat for coat in plan.coats}
    return PieceEditor(
        key=key,
        title=piece.title,
        due=row.due,
        slack=row.slack,
        slack_tone=row.slack_tone,
        coats=tuple(
            _coat(
                piece,
                coat,
                dated=dated.get(coat.key),
                sheets=sheets,
                at=at,
                count=len(to_come),
                now_ms=snapshot.time_ms,
            )
            for at, coat in enumerate(to_come)
        ),
        said=() if plan is None else tuple(_said(plan)),
        fit=() if plan is None else tuple(_fit(milestone, snapshot.time_ms) for milestone in plan.milestones),
        sheets=tuple(coat.sheet for coat in to_come),
    )


def _plan_of(plan: FinishingPlan | None, key: str) -> PiecePlan | None:
    return None if plan is None else plan.piece(key)


def _row(piece: PieceView, plan: PiecePlan | None, today: date) -> PlanRow:
    due = say("no day due") if piece.due is None else say("due {day}", day=day_seen_from(piece.due, today))
    slack_days = None if plan is None else plan.slack_days
    note, tone = _note(plan)
    return PlanRow(
        key=piece.key,
        title=piece.title,
        due=due,
        slack=slack_text(slack_days),
        slack_tone=_slack_tone(slack_days),
        note=note,
        note_tone=tone,
    )


def _slack_tone(slack_days: int | None) -> Tone:
    if slack_days is None:
        return Tone.MUTED
    if slack_days < 0:
        return Tone.ACT
    return Tone.CAUTION if slack_days == 0 else Tone.GOOD


def _note(plan: PiecePlan | None) -> tuple[str, Tone]:
    """Return what of a piece wants to be looked at first."""
    if plan is None:
        return say(BEING_MADE), Tone.MUTED
    worst = max((remark.level for remark in plan.remarks), default=Level.CALM)
    if worst is not Level.CALM:
        count = sum(remark.level is not Level.CALM for remark in plan.remarks)
        return say_counted(count, "1 thing to look at", "{n} things to look at"), LEVEL_TONES[worst]
    if plan.unsure:
        return plan.unsure, Tone.MUTED
    return "", Tone.MUTED


def _today(step: TodayStep, now_ms: int) -> TodayRow:
    coat = step.coat
    at = "" if coat.lay_ms is None else clock_words(coat.lay_ms, now_ms)
    amount = "" if coat.coat.volume_mL is None else f", {volume_text(coat.coat.volume_mL)}"
    start = "" if coat.start_ms is None else say("prepare from {time}", time=clock_words(coat.start_ms, now_ms))
    why = " · ".join(part for part in (start, coat.why_first) if part)
    return TodayRow(at=at, words=f"{step.piece_title}: {coat.coat.label}{amount}", why=why)


def _coat(
    piece: PieceView,
    coat: CoatView,
    *,
    dated: PlannedCoat | None,
    sheets: Mapping[str, SheetChoice],
    at: int,
    count: int,
    now_ms: int,
) -> CoatRow:
    sheet = sheets.get(coat.sheet)
    mL = None if sheet is None else suggested_mL(piece.area_m2, sheet.wet_um)
    words, tone = _dates(dated, now_ms)
    return CoatRow(
        key=coat.key,
        label=coat.label if mL is None else f"{coat.label}, {volume_text(mL)}",
        sheet=coat.sheet if sheet is None else sheet.title,
        dates=words,
        dates_tone=tone,
        place=at,
        is_first=at == 0,
        is_last=at == count - 1,
    )


def _dates(dated: PlannedCoat | None, now_ms: int) -> tuple[str, Tone]:
    if dated is None:
        return say("date to come"), Tone.MUTED
    if dated.lay_ms is None:
        return say("no time in sight"), Tone.CAUTION
    early, lay = dated.ready.p10, clock_words(dated.lay_ms, now_ms)
    if early is None or early <= now_ms:
        return say("lay {time}", time=lay), Tone.INK
    beside = clock_words_beside(early, dated.lay_ms, now_ms)
    return say("lay {time}; perhaps ready from {early}", time=lay, early=beside), Tone.INK


def _said(plan: PiecePlan) -> Sequence[SaidRow]:
    rows = []
    if plan.late:
        rows.append(SaidRow(level=Level.ACT, sentence=plan.late, tone=Tone.ACT))
    rows += [SaidRow(level=Level.CALM, sentence=sentence, is_marked=False) for sentence in plan.helps]
    rows += [
        SaidRow(
            level=remark.level, sentence=remark.sentence, basis=remark.basis, is_marked=remark.level is not Level.CALM
        )
        for remark in sorted(plan.remarks, key=lambda remark: -remark.level)
    ]
    if plan.unsure:
        rows.append(SaidRow(level=Level.CALM, sentence=plan.unsure, is_marked=False))
    return rows


def _fit(milestone: MilestoneTime, now_ms: int) -> SaidRow:
    return SaidRow(
        level=Level.CALM,
        sentence=_fit_words(milestone, now_ms),
        basis=f"{milestone.basis[:1].upper()}{milestone.basis[1:]}.",
        is_marked=False,
    )


def _fit_words(milestone: MilestoneTime, now_ms: int) -> str:
    never, promised, perhaps = _FIT[milestone.kind]
    early, by = milestone.times.p10, milestone.times.p90
    if by is None:
        return say(never)
    if early is None or early <= now_ms:
        return say(promised, time=clock_words(by, now_ms))
    return say(perhaps, time=clock_words(by, now_ms), early=clock_words_beside(early, by, now_ms))
