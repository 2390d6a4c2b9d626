"""The prompts on the keeper's desk: made from the coats, moved with the model, kept until they are ticked."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass, field
from functools import partial

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.happenings import PromptHappened
from studiowatch.service.ports import Records
from studiowatch.service.snapshot import PromptView
from studiowatch.store.shapes import PromptRecord
from studiowatch.studio.prompts import CoatToTend, Prompt, Step, prompts_for

MOVED_MS = 300_000  # ms, a modelled time must move this far before the record on disk is written again; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Tended:
    """A coat that prompts are made for, and the steps that it is too late for."""

    coat: CoatToTend
    piece_key: str
    piece_title: str
    past: frozenset[Step]


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """Something to do that is about no coat, due since `due_ms`, UTC ms; `tick` keeps on disk that it was done."""

    key: str
    due_ms: int
    headline: str
    caution: str
    tick: Callable[[int], None]


@dataclass(slots=True)
class PromptDesk:
    """Holds the open prompts; `disk` takes what changes of them.

    Attributes
    ----------
    reminder : Reminder or None
        What is due beside the coats, set by whoever knows.
    """

    records: Records
    disk: Disk
    reminder: Reminder | None = None
    _open: dict[str, tuple[Prompt, Tended]] = field(default_factory=dict)
    _due_ms: dict[str, int] = field(default_factory=dict)
    _stored: dict[str, PromptRecord] = field(default_factory=dict)
    _done: frozenset[str] = frozenset()
    _told: set[str] = field(default_factory=set)

    def reopen(self) -> None:
        """Take up the prompts as they were left; what fell due meanwhile is told once the films are up to date."""
        self._done = self.records.done_prompts()
        self._stored = {record.key: record for record in self.records.prompts()}
        self._due_ms = {record.key: record.due_ms for record in self._stored.values()}

    def settle(self, tended: Iterable[Tended], now_ms: int, *, corrected: Collection[str] = ()) -> None:
        """Bring the prompts in line with the coats.

        Parameters
        ----------
        tended : iterable of Tended
            The topmost coats.
        now_ms : int
            UTC ms.
        corrected : collection of str
            Keys of coats whose run was begun anew: their due times hold no longer.
        """
        before = {key: due_ms for key, due_ms in self._due_ms.items() if key.rpartition(":")[0] not in corrected}
        self._open = {
            prompt.key: (prompt, coat)
            for coat in tended
            for prompt in prompts_for(coat.coat, now_ms=now_ms, before=before)
            if prompt.key not in self._done and prompt.step not in coat.past
        }
        self._due_ms = {key: prompt.due_ms for key, (prompt, _) in self._open.items()}
        self._told = {key for key in self._told if self._due_ms.get(key, now_ms) <= now_ms}
        self._keep()

    def due(self, now_ms: int) -> list[PromptHappened]:
        """Return the prompts that fell due, each once."""
        fresh = [pair for key, pair in self._open.items() if pair[0].due_ms <= now_ms and key not in self._told]
        self._told |= {prompt.key for prompt, _ in fresh}
        told = [
            PromptHappened(time_ms=now_ms, piece_title=coat.piece_title, text=prompt.text) for prompt, coat in fresh
        ]
        if self.reminder is not None and self.reminder.key not in self._told:
            self._told.add(self.reminder.key)
            text = f"{self.reminder.headline}. {self.reminder.caution}"
            told.append(PromptHappened(time_ms=now_ms, piece_title="", text=text))
        return told

    def tick(self, key: str, now_ms: int) -> None:
        """Take a prompt off: it was done. What the disk was given before must be on it already.

        Raises
        ------
        Refused
            If there is no such prompt any more.
        StoreTrouble
            If the disk refuses; the prompt stays.
        """
        if self.reminder is not None and key == self.reminder.key:
            self.reminder.tick(now_ms)
            self.reminder = None
            return
        if key not in self._open:
            raise Refused("That prompt is gone: the coat has moved on.")
        prompt, _ = self._open[key]
        self.records.save_prompt(_record_of(prompt, done_ms=now_ms))
        del self._open[key]
        self._stored.pop(key, None)
        self._done |= {key}

    def views(self, now_ms: int) -> tuple[PromptView, ...]:
        """Return the open prompts, soonest first, and the reminder behind them."""
        pairs = sorted(self._open.values(), key=lambda pair: (pair[0].due_ms, pair[0].key))
        views = tuple(
            PromptView(
                key=prompt.key,
                due_ms=prompt.due_ms,
                text=prompt.headline,
                caution=prompt.caution,
                piece_key=coat.piece_key,
                piece_title=coat.piece_title,
                overdue=prompt.due_ms <= now_ms,
            )
            for prompt, coat in pairs
        )
        return views if self.reminder is None else (*views, _reminder_view(self.reminder))

    def _keep(self) -> None:
        """Hand to the disk what is new or has moved, and take from it what applies no longer."""
        for key, (prompt, _) in self._open.items():
            before = self._stored.get(key)
            if before is None or abs(before.due_ms - prompt.due_ms) >= MOVED_MS:
                self._stored[key] = _record_of(prompt, done_ms=None)
                self.disk.later(partial(self.records.save_prompt, self._stored[key]))
        for key in [key for key in self._stored if key not in self._open]:
            del self._stored[key]
            self.disk.later(partial(self.records.drop_prompt, key))


def _reminder_view(reminder: Reminder) -> PromptView:
    return PromptView(
        key=reminder.key,
        due_ms=reminder.due_ms,
        text=reminder.headline,
        caution=reminder.caution,
        piece_key="",
        piece_title="",
        overdue=True,
    )


def _record_of(prompt: Prompt, *, done_ms: int | None) -> PromptRecord:
    return PromptRecord(
        key=prompt.key, coat_key=prompt.coat_key, due_ms=prompt.due_ms, text=prompt.text, done_ms=done_ms
    )
