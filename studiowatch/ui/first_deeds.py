"""The first run in the window: shown while the records are empty, kept where she left it, over with a first piece."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import QObject, QProcess, Signal

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.first_steps import DONE, ELSEWHERE, is_first_run
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.widgets.first_steps_page import FirstStepsPage

Start = Callable[[Sequence[str]], bool]
NOT_STARTED = mark("The made-up studio could not be started; run `studiowatch demo` in a terminal.")


def start_beside(words: Sequence[str]) -> bool:
    """Start a program that outlives this one; return whether it began."""
    begun, _number = QProcess.startDetached(words[0], list(words[1:]))
    return bool(begun)


class FirstDeeds(QObject):
    """Says when the steps are to be shown. `wanted` asks for their page, `over` for the rack.

    `demo` is how the made-up studio is started, or nothing where that cannot be: in the made-up studio itself.
    """

    wanted = Signal()
    over = Signal()
    done = Signal(str)
    refused = Signal(str)

    def __init__(
        self,
        page: FirstStepsPage,
        settings: ViewSettings,
        deeds: Mapping[str, Callable[[], object]],
        *,
        demo: Sequence[str],
        start: Start = start_beside,
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._page, self._settings, self._deeds = page, settings, dict(deeds)
        self._demo, self._start = tuple(demo), start
        self._offered = not demo
        self._step: int | None = None  # read once: the settings ask the disk
        page.asked.connect(self._do)
        page.stepped.connect(self._stepped)
        page.left.connect(self.over)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Offer the steps once, where the records are empty; a first piece ends them."""
        if self._step is None:
            self._step = self._settings.first_run_step
        if not self._offered and is_first_run(snapshot, self._step):
            self._offered = True
            self._page.begin(self._step)
            self.wanted.emit()
        elif snapshot.pieces and self._step < DONE and self._demo:
            self._keep(DONE)
            if self._page.isVisible():
                self.over.emit()

    def show_again(self) -> None:
        """Show the steps from the first one."""
        self._page.begin(0)
        self.wanted.emit()

    def _stepped(self, step: int) -> None:
        if self._demo:
            self._keep(step)
        if step >= DONE:
            self.over.emit()

    def _keep(self, step: int) -> None:
        self._step = self._settings.first_run_step = step

    def _do(self, deed: str) -> None:
        if deed != "demo":
            self._deeds[deed]()
        elif not self._demo:
            self.refused.emit(say("This is the made-up studio already: look around."))
        elif self._start(self._demo):
            self.done.emit(f"{say('The made-up studio is opening.')} {say(ELSEWHERE)}")
        else:
            self.refused.emit(say(NOT_STARTED))
