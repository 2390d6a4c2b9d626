"""What she does with prompts: tick them off, put them off, or answer one with a form."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QObject, Signal

from studiowatch.service.commands import Command, SnoozePrompt, TickPrompt
from studiowatch.service.ports import Clock, Desk
from studiowatch.speech.words import say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.deeds import Deeds
from studiowatch.ui.models.look_form import BY_EYE, BY_TOUCH
from studiowatch.ui.models.prompts import Deed, PromptRow
from studiowatch.ui.models.times import SNOOZE_AFTER_MS, clock_words
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.look_dialog import LookDialog
from studiowatch.ui.widgets.prompts import PromptList


class PromptDeeds(QObject):
    """Acts on the rows of `prompts`.

    `done` and `refused` tell in words how one went; `answered` carries the row of a prompt that a form answered.
    """

    done = Signal(str)
    refused = Signal(str)
    answered = Signal(object)

    def __init__(self, desk: Desk, clock: Clock, deeds: Deeds, prompts: PromptList, parent: QObject) -> None:
        super().__init__(parent)
        self._clock, self._deeds, self._prompts = clock, deeds, prompts
        self._courier = Courier(desk, self)
        prompts.ticked.connect(self.tick)
        prompts.snoozed.connect(self.snooze)
        prompts.asked.connect(self.answer)
        self.answered.connect(prompts.hold)

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        self._courier.close()

    def tick(self, prompt_keys: Sequence[str]) -> None:
        """Say that prompts were done."""
        for key in prompt_keys:
            self._send(TickPrompt(prompt_key=key), say("Ticked off."), partial(self._prompts.release, key))

    def snooze(self, prompt_keys: Sequence[str]) -> None:
        """Put prompts off for five minutes."""
        now_ms = self._clock.utc_ms()
        until_ms = now_ms + SNOOZE_AFTER_MS
        words = say("Put off until {time}.", time=clock_words(until_ms, now_ms))
        for key in prompt_keys:
            self._send(SnoozePrompt(prompt_key=key, until_ms=until_ms), words)

    def answer(self, row: PromptRow) -> FormDialog | None:
        """Open the form that answers a prompt; the prompt is ticked once that is recorded."""
        if row.deed is Deed.READ:
            reading = self._deeds.type_reading()
            reading.recorded.connect(lambda _key: self.answered.emit(row))
            return reading
        if row.deed is Deed.PREPARE:
            return self._deeds.lay_coat(row.piece_key)
        form: CoatDialog | LookDialog | None
        if row.deed is Deed.LAY:
            form = self._deeds.lay_coat(row.piece_key)
        else:
            form = self._deeds.touch_test(row.piece_key, row.text, BY_EYE if row.deed is Deed.LOOK else BY_TOUCH)
        if form is not None:
            form.piece_field.setEnabled(False)  # the prompt is about this piece only
            form.recorded.connect(lambda _key: self._tick_answered(row))
        return form

    def _tick_answered(self, row: PromptRow) -> None:
        self.answered.emit(row)
        for key in row.keys:
            # What was recorded may have taken the prompt away already; then there is nothing left to tick.
            self._courier.send(TickPrompt(prompt_key=key), owner=self, done=_ignore, refused=_ignore)

    def _send(self, command: Command, words: str, refused: Callable[[], None] | None = None) -> None:
        def declined(sentence: str) -> None:
            self.refused.emit(sentence)
            if refused is not None:
                refused()

        self._courier.send(command, owner=self, done=lambda _key: self.done.emit(words), refused=declined)


def _ignore(_answer: str) -> None:
    """Take an answer that changes nothing."""
