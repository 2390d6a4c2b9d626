"""The prompts on the keeper's desk: made from the coats, moved with the model, kept until they are ticked."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass, field, replace
from functools import partial

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.happenings import PromptHappened
from studiowatch.service.ports import Records
from studiowatch.service.snapshot import PromptView
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.store.shapes import PromptRecord, TellingRecord
from studiowatch.studio.prompts import CoatToTend, Prompt, prompts_for

MOVED_MS = 300_000  # ms, a modelled time must move this far before the record on disk is written again; assumption
SHOWN_MS = 30 * 60_000  # ms that a prompt which is of no use any more stays after it was told; assumption
LONGEST_SNOOZE_MS = 6 * 3_600_000  # ms; one put off for longer is as good as ticked: assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Tended:
    """A coat that prompts are made for."""

    coat: CoatToTend
    piece_key: str
    piece_title: str


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
    _tellings: dict[str, TellingRecord] = field(default_factory=dict)
    _is_reminded: str = ""

    def reopen(self) -> None:
        """Take up the prompts as they were left; what fell due meanwhile is told once the films are up to date."""
        self._done = self.records.done_prompts()
        self._stored = {record.key: record for record in self.records.prompts()}
        self._due_ms = {record.key: record.due_ms for record in self._stored.values()}
        self._tellings = {telling.key: telling for telling in self.records.tellings()}

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
        before = {key: due_ms for key, due_ms in self._due_ms.items() if _coat_key(key) not in corrected}
        self._open = {
            prompt.key: (prompt, coat)
            for coat in tended
            for prompt in prompts_for(coat.coat, now_ms=now_ms, before=before, given=self._due_ms)
            if prompt.key not in self._done and self._is_worth(prompt, now_ms)
        }
        self._due_ms = {key: prompt.due_ms for key, (prompt, _) in self._open.items()}
        self._tellings = {
            key: telling
            for key, telling in self._tellings.items()
            if self._due_ms.get(key, now_ms) <= now_ms or telling.snoozed_ms is not None
        }
        self._keep()

    def _is_worth(self, prompt: Prompt, now_ms: int) -> bool:
        """Return whether to show a prompt: one of no use goes some time after it was told, or if none knew of it."""
        if not prompt.is_useless:
            return True
        told_ms = self._telling(prompt.key).told_ms
        return prompt.key in self._stored and (told_ms is None or now_ms - told_ms < SHOWN_MS)

    def _telling(self, key: str) -> TellingRecord:
        return self._tellings.get(key, TellingRecord(key=key))

    def _due_at(self, prompt: Prompt) -> int:
        """Return when a prompt is due, UTC ms, or until when it was put off."""
        telling = self._tellings.get(prompt.key)
        return prompt.due_ms if telling is None else max(prompt.due_ms, telling.snoozed_ms or prompt.due_ms)

    def shift(self, step_ms: int) -> None:
        """Move what is remembered along with a wall clock that was set: no prompt falls due by its step."""
        self._due_ms = {key: due_ms + step_ms for key, due_ms in self._due_ms.items()}
        for telling in list(self._tellings.values()):
            self._tell(telling.shifted(step_ms))

    def has_due(self, now_ms: int) -> bool:
        """Return whether a prompt fell due of which nobody was told yet."""
        return bool(self._fresh(now_ms))

    def _fresh(self, now_ms: int) -> list[tuple[Prompt, Tended]]:
        return [
            pair
            for key, pair in self._open.items()
            if self._due_at(pair[0]) <= now_ms and self._telling(key).told_ms is None
        ]

    def due(self, now_ms: int) -> list[PromptHappened]:
        """Return what fell due and was not told yet; a prompt that was put off once more.

        Prompts of coats are told once, over a restart too. The reminder, which is about no coat, is told once in each
        run of the program until it is ticked: tellings are kept beside the prompts of coats only.
        """
        fresh = self._fresh(now_ms)
        for prompt, _ in fresh:
            self._tell(replace(self._telling(prompt.key), told_ms=now_ms))
        told = [
            PromptHappened(time_ms=now_ms, piece_title=coat.piece_title, text=prompt.text, is_missed=prompt.is_missed)
            for prompt, coat in fresh
        ]
        if self.reminder is not None and self.reminder.key != self._is_reminded:
            self._is_reminded = self.reminder.key
            text = f"{self.reminder.headline}. {self.reminder.caution}"
            told.append(PromptHappened(time_ms=now_ms, piece_title="", text=text))
        return told

    def _tell(self, telling: TellingRecord) -> None:
        self._tellings[telling.key] = telling
        self.disk.later(partial(self.records.save_telling, telling))

    def is_told_as(self, telling: TellingRecord) -> bool:
        """Return whether a prompt is open, and was told and put off as `telling` has it."""
        return telling.key in self._open and self._telling(telling.key) == telling

    def put_telling(self, telling: TellingRecord) -> None:
        """Have a prompt told and put off as `telling` has it. Raises StoreTrouble if the disk refuses."""
        self.records.save_telling(telling)
        self._tellings[telling.key] = telling

    def snooze(self, key: str, until_ms: int, now_ms: int) -> tuple[Prompt, TellingRecord, TellingRecord]:
        """Put a prompt off until `until_ms`, UTC ms. What the disk was given before must be on it already.

        Returns
        -------
        Prompt, TellingRecord, TellingRecord
            What was put off, and what was told of it before and after.

        Raises
        ------
        Refused
            If there is no such prompt any more, or the time lies outside what is allowed.
        StoreTrouble
            If the disk refuses; the prompt stands as it did.
        """
        if self.reminder is not None and key == self.reminder.key:
            raise Refused(say("A check of a sensor stands until it is done: tick it then."))
        if key not in self._open:
            raise Refused(say("That prompt is gone: the coat has moved on."))
        if not 0 < until_ms - now_ms <= LONGEST_SNOOZE_MS:
            minutes = (until_ms - now_ms) / 60_000
            raise Refused(
                say(
                    "The prompt would be put off by {minutes} min; allowed is 1 to 360 min. Choose again.",
                    minutes=chosen().number(minutes),
                )
            )
        prompt, _ = self._open[key]
        if prompt.is_useless:
            raise Refused(say("That prompt is of no use any more: tick it, or leave it."))
        before, telling = self._telling(key), TellingRecord(key=key, snoozed_ms=until_ms)
        self.put_telling(telling)
        return prompt, before, telling

    def tick(self, key: str, now_ms: int) -> PromptRecord | None:
        """Take a prompt off: it was done. What the disk was given before must be on it already.

        Returns
        -------
        PromptRecord or None
            As it is on disk now, so that it can be unticked; None for what is about no coat.

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
            return None
        if key not in self._open:
            raise Refused(say("That prompt is gone: the coat has moved on."))
        prompt, _ = self._open[key]
        record = _record_of(prompt, done_ms=now_ms)
        self.tick_again(record)
        return record

    def tick_again(self, record: PromptRecord) -> None:
        """Take a prompt off as it was ticked before. Raises StoreTrouble if the disk refuses."""
        self.records.save_prompt(record)
        self._open.pop(record.key, None)
        self._stored.pop(record.key, None)
        self._tellings.pop(record.key, None)
        self._done |= {record.key}

    def untick(self, record: PromptRecord) -> None:
        """Have a prompt that was ticked come again where it still applies. Raises StoreTrouble if the disk refuses."""
        again = replace(record, done_ms=None)
        self.records.save_prompt(again)
        self._stored[record.key] = again
        self._done -= {record.key}

    def views(self, now_ms: int) -> tuple[PromptView, ...]:
        """Return the open prompts, soonest first, and the reminder behind them."""
        pairs = sorted(self._open.values(), key=lambda pair: (self._due_at(pair[0]), pair[0].key))
        views = tuple(self._view(prompt, coat, now_ms) for prompt, coat in pairs)
        return views if self.reminder is None else (*views, _reminder_view(self.reminder))

    def _view(self, prompt: Prompt, coat: Tended, now_ms: int) -> PromptView:
        due_ms = self._due_at(prompt)
        return PromptView(
            key=prompt.key,
            due_ms=due_ms,
            text=prompt.headline,
            caution=prompt.caution,
            piece_key=coat.piece_key,
            piece_title=coat.piece_title,
            overdue=due_ms <= now_ms,
            missed=prompt.is_missed,
            useless=prompt.is_useless,
            snoozed=due_ms > prompt.due_ms,
        )

    def _keep(self) -> None:
        """Hand to the disk what is new or has moved, and take from it what applies no longer."""
        for key, (prompt, _) in self._open.items():
            before = self._stored.get(key)
            if before is None or abs(before.due_ms - prompt.due_ms) >= MOVED_MS or before.text != prompt.text:
                self._stored[key] = _record_of(prompt, done_ms=None)
                self.disk.later(partial(self.records.save_prompt, self._stored[key]))
        for key in [key for key in self._stored if key not in self._open]:
            del self._stored[key]
            self._tellings.pop(key, None)
            self.disk.later(partial(self.records.drop_prompt, key))


def _coat_key(key: str) -> str:
    """Return the key of the coat that a prompt is about; a new test is asked for by the time of the last too."""
    return key.rpartition(":")[0].partition("@")[0]


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
