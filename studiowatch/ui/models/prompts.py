"""At the rack: what to do when, for which pieces, and what a tick sets going."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from datetime import tzinfo
from enum import Enum, auto

from studiowatch.service.snapshot import PreparationView, PromptView, Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.prompts import IN_SECONDS_MS, Step
from studiowatch.ui.models.laying import chore_rows, waiting_words
from studiowatch.ui.models.times import MINUTE_MS, clock_words, countdown_words
from studiowatch.ui.models.tones import Tone

COUNTED_MS = 60 * MINUTE_MS  # what comes within the hour is counted down
TOGETHER_MS = 5 * MINUTE_MS  # prompts alike that are due this near each other are one row: assumption
_Group = list[PromptView]  # those that one row tells, soonest first
_STEPS = tuple(Step)
_BY_VALUE = {step.value: step for step in _STEPS}


class Deed(Enum):
    """What a tick sets going: it is done, or a form that asks what was seen or laid."""

    TICK = auto()
    LOOK = auto()
    TOUCH = auto()
    LAY = auto()
    READ = auto()
    PREPARE = auto()


_DEEDS = {Step.CLARITY: Deed.LOOK, Step.TOUCH_TEST: Deed.TOUCH, Step.RECOAT: Deed.LAY, Step.READ_ROOM: Deed.READ}


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptRow:
    """Something to do at the rack.

    Attributes
    ----------
    keys : tuple of str
        The prompts that one tick answers, soonest first.
    piece_key : str
        The piece, where `deed` is about one piece only.
    caution : str
        What to heed while doing it, or "".
    done : bool
        True for a moment after it was ticked.
    is_near : bool
        True for what is due or comes next: it is shown large.
    can_snooze : bool
        Whether it may be put off for a few minutes.
    """

    keys: tuple[str, ...]
    text: str
    when: str
    tone: Tone
    caution: str = ""
    deed: Deed = Deed.TICK
    piece_key: str = ""
    done: bool = False
    is_near: bool = False
    can_snooze: bool = False

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return ". ".join(part for part in (self.text, self.when, self.caution) if part)


def step_of(prompt_key: str) -> Step | None:
    """Return the step that ends a prompt's key, or None if it names none."""
    return _BY_VALUE.get(prompt_key.rpartition(":")[2])


def _order(prompt: PromptView) -> tuple[bool, int, int]:
    """Coats come first, however long ago a sensor was due to be checked."""
    step = step_of(prompt.key)
    return not prompt.piece_key, prompt.due_ms, -1 if step is None else _STEPS.index(step)


def prompt_rows(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[PromptRow, ...]:
    """Return the prompts, soonest first, those about no piece last; those alike and due together are one row."""
    ordered, near = _in_order(snapshot)
    rows = [_made(one, snapshot.time_ms, zone) for one in ordered]
    return tuple(replace(row, is_near=at < near) for at, row in enumerate(rows))


def counted_down(rows: tuple[PromptRow, ...], snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[PromptRow, ...]:
    """Return `rows`, made of these prompts not long ago, with the seconds of what is due soon brought up to now."""
    now_ms = snapshot.time_ms
    soon = {prompt.key for prompt in snapshot.prompts if 0 < prompt.due_ms - now_ms < IN_SECONDS_MS}
    if not soon:
        return rows
    by_key = {prompt.key: prompt for prompt in snapshot.prompts}

    def brought_up(row: PromptRow) -> PromptRow:
        if row.keys[0] not in soon:
            return row
        return replace(_row([by_key[key] for key in row.keys], now_ms, zone), is_near=row.is_near)

    return tuple(brought_up(row) for row in rows)


def _in_order(snapshot: Snapshot) -> tuple[list[_Group | PreparationView], int]:
    """Return what each row tells, in the order of the rows, and how many of them are near: late, or being prepared."""
    groups: list[_Group] = []
    alike: dict[tuple[str, str], list[_Group]] = {}
    for prompt in sorted(snapshot.prompts, key=_order):
        same = alike.setdefault((prompt.text, prompt.caution), [])
        group = next((group for group in same if _belongs(prompt, group)), None)
        if group is None:
            groups.append([prompt])
            same.append(groups[-1])
        else:
            group.append(prompt)
    late = [group for group in groups if group[0].piece_key and _is_late(group[0], snapshot.time_ms)]
    rest = [group for group in groups if group not in late]
    return [*late, *snapshot.preparations, *rest], len(late) + len(snapshot.preparations) or 1


def _is_late(prompt: PromptView, now_ms: int) -> bool:
    return prompt.overdue or prompt.due_ms <= now_ms


def _made(one: _Group | PreparationView, now_ms: int, zone: tzinfo | None) -> PromptRow:
    return _preparing(one, now_ms) if isinstance(one, PreparationView) else _row(one, now_ms, zone)


def _preparing(view: PreparationView, now_ms: int) -> PromptRow:
    """Return an open preparation as a row that leads back to it."""
    preparation = view.preparation
    waiting = [
        title for coat, title in zip(preparation.coats, view.titles, strict=True) if coat.laid_ms is None and title
    ]
    turn = preparation.turn
    stands = waiting_words(chore_rows(preparation, now_ms)) or say("all is ready")
    text = say("Prepare to lay a coat")
    if waiting:
        is_going_on = len(waiting) < len(preparation.coats)
        prompt = mark("Next: lay a coat on {title}") if is_going_on else mark("Prepare: lay a coat on {title}")
        text = say(prompt, title=waiting[0])
    return PromptRow(
        keys=(preparation.key,),
        text=text,
        when=" · ".join((stands, *waiting[1:])),
        tone=Tone.LINK,
        deed=Deed.PREPARE,
        piece_key="" if turn is None else turn.piece_key,
    )


def _belongs(prompt: PromptView, group: Sequence[PromptView]) -> bool:
    """Return whether one tick may answer `prompt` with the others of `group`, which say the same."""
    first = group[0]
    return (
        step_of(prompt.key) not in _DEEDS
        and prompt.due_ms - first.due_ms <= TOGETHER_MS
        and all(prompt.piece_key != other.piece_key for other in group)
    )


def _row(group: Sequence[PromptView], now_ms: int, zone: tzinfo | None) -> PromptRow:
    first = group[0]
    late = _is_late(first, now_ms)
    clock = clock_words(first.due_ms, now_ms, zone)
    titles = (one.piece_title for one in group)  # a title may have a comma of its own
    step = step_of(first.key)
    return PromptRow(
        keys=tuple(one.key for one in group),
        text=first.text,
        when=" · ".join(part for part in (_when(first, now_ms, clock, late=late), *titles) if part),
        tone=Tone.CAUTION if late else Tone.MUTED,
        caution=first.caution,
        deed=Deed.TICK if step is None else _DEEDS.get(step, Deed.TICK),
        piece_key=first.piece_key,
        can_snooze=late and bool(first.piece_key) and not first.useless,
    )


def _when(prompt: PromptView, now_ms: int, clock: str, *, late: bool) -> str:
    if prompt.missed:
        return say("missed, was due {time}", time=clock)
    if late:
        return say("now, since {time}", time=clock)
    left_ms = prompt.due_ms - now_ms
    ahead = say("in {length}, {time}", length=countdown_words(left_ms), time=clock) if left_ms < COUNTED_MS else clock
    return say("put off, {time}", time=ahead) if prompt.snoozed else ahead


def with_ticked(
    rows: Sequence[PromptRow], shown: Sequence[PromptRow], ticked: Collection[str]
) -> tuple[PromptRow, ...]:
    """Return `rows` with those of `shown` whose first key is in `ticked` kept in their places, as done."""
    kept = [(place, row) for place, row in enumerate(shown) if row.keys[0] in ticked]
    answered = {key for _, row in kept for key in row.keys}
    merged = [row for row in rows if answered.isdisjoint(row.keys)]
    for place, row in kept:
        merged.insert(place, replace(row, done=True))
    return tuple(merged)


def next_prompt_words(snapshot: Snapshot, zone: tzinfo | None = None) -> str:
    """Return the next thing to do, and below it when and where, for the view from across the room."""
    ordered, _near = _in_order(snapshot)
    if not ordered:
        return say("Nothing to do at the rack")
    row = _made(ordered[0], snapshot.time_ms, zone)
    return f"{row.text}\n{row.when}"
