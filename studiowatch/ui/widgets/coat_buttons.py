"""The buttons that lead through laying a coat: which stand at which step, and which of them Enter presses."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.coat_form import short_title
from studiowatch.ui.models.laying import LayingStep
from studiowatch.ui.plain import literal, set_tip
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import button

BRUSH_DOWN_WORDS = mark("The brush is down")
PREPARE_WORDS = mark("Prepare")
LATE_WORDS = mark("It is on already…")
LEAVE_WORDS = mark("Leave it")
KEEP_WORDS = mark("Later")
RECORD_WORDS = mark("Record it")
_REST_MS = 1000  # after a step in which the second press of a hurried hand presses nothing; assumption
_BESIDE_UNITS = 760  # so wide a screen that a long name stands on the button beside the others


class CoatButtons:
    """Stand at the foot of `form`; what they do comes from outside."""

    def __init__(self, form: FormDialog) -> None:
        self._form = form
        self.leave, self.back, self.keep = button(say(LEAVE_WORDS)), button(say("Back")), button(say(KEEP_WORDS))
        set_tip(self.leave, say("Ends the preparation"))
        set_tip(self.keep, say("Closes this; the timers run on"))
        self.earlier = button(say(LATE_WORDS))
        self.earlier.setCheckable(True)
        self.earlier.setAccessibleName(say("The brush went down earlier"))
        self.begin = button(say(PREPARE_WORDS), "big")
        for one in (self.leave, self.back, self.keep, self.earlier, self.begin):
            form.foot.addWidget(one)
        self.brush_down = add_primary(form, say(BRUSH_DOWN_WORDS), "big")
        self._rest = QTimer(form)
        self._rest.setSingleShot(True)
        self._rest.setInterval(_REST_MS)
        self._rest.timeout.connect(self._wake)

    def shown_at(self, step: LayingStep) -> dict[QWidget, bool]:
        """Return whether each stands at `step`."""
        is_what, is_ready = step is LayingStep.WHAT, step is LayingStep.READY
        return {
            self.earlier: not is_ready,
            self.begin: is_what,
            self.brush_down: not is_what,
            **dict.fromkeys((self.leave, self.back, self.keep), is_ready),
        }

    def go(self, step: LayingStep) -> None:
        """Have Enter press the one that goes on from `step`."""
        self.earlier.setText(say("It goes down now") if step is LayingStep.LATE else say(LATE_WORDS))
        self.begin.setDefault(step is LayingStep.WHAT)
        self.brush_down.setDefault(step is not LayingStep.WHAT)
        is_ready = step is LayingStep.READY
        self.brush_down.setEnabled(not is_ready)  # it comes to stand where the last press was
        if is_ready:
            self._rest.start()
        else:
            self._rest.stop()

    def _wake(self) -> None:
        is_free = self._form.focusWidget() in {None, self._form}
        self.brush_down.setEnabled(True)
        if is_free:
            self.brush_down.setFocus()

    def name_by(self, title: str, step: LayingStep) -> None:
        """Name the last one by the piece, as far as that fits beside the others; the heading names it in any case."""
        if step is LayingStep.LATE:
            words = spoken = say(RECORD_WORDS)
        else:
            words, spoken = say(BRUSH_DOWN_WORDS), say("The brush is down on {title}", title=title)
            if self._form.screen().availableSize().width() > self._form.dress.px(_BESIDE_UNITS):
                words = literal(say("The brush is down on {title}", title=short_title(title)))
        self.brush_down.setText(words)
        self.brush_down.setAccessibleName(spoken)
