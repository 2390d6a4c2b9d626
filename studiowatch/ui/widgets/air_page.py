"""Air speed calibration by a cup and walks, guided."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.king_law import BEAD_C
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.air_guide import (
    STEPS,
    USUAL_DISTANCE_M,
    AirGuide,
    AirStep,
    air_trouble,
    back,
    bead_C_of,
    distance_m_of,
    fit_sentences,
    is_still_over,
    next_walk_words,
    onward,
    running_words,
    started,
    still_words,
    stopped,
    walk_words,
    with_bead,
    without_walk,
)
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.calibration_page import CalibrationPage
from studiowatch.ui.widgets.fit_plot import FitPlot
from studiowatch.ui.widgets.text import button, label, put, set_property

REFUSED = mark("It was refused, and nothing was changed. Go back to mend it.")
ACCEPTED = mark("Air speed is shown from now on.")
_TICK_MS = 200


class AirPage(CalibrationPage):
    """Keeps how far she is for as long as the program runs."""

    def __init__(self, courier: Courier, now_ms: Callable[[], int]) -> None:
        super().__init__(
            say("Air speed calibration"),
            STEPS,
            courier,
            refused_words=say(REFUSED),
            accepted_words=say(ACCEPTED),
        )
        self._now_ms = now_ms
        self.guide = AirGuide()
        self._fault = ""
        self.bead_field, self._bead = self._field(
            say("The bead is held at, °C (its own sheet says)"), chosen().plain(BEAD_C)
        )
        self.distance_field, self._distance = self._field(
            say("Distance between the marks, m"), chosen().plain(USUAL_DISTANCE_M)
        )
        self.run = button(say("Start"), "big")
        self.run.clicked.connect(self._press)
        self._signal, self._running = label("headline"), label("headline", Tone.LINK)
        self._said = label("body", Tone.MUTED, wrap=True)
        self._walks = QVBoxLayout()
        self._walk_rows: list[QFrame] = []
        self.plot = FitPlot()
        self._sentences = label("body", wrap=True)
        self._lay_out()
        self._ticking = QTimer(self)
        self._ticking.setInterval(_TICK_MS)
        self._ticking.timeout.connect(self._tick)
        self.onward_asked.connect(self._go_on)
        self.back_asked.connect(lambda: self._turn_to(back(self.guide)))
        self.anew_asked.connect(self._begin_anew)
        self._draw()

    def _field(self, name: str, text: str) -> tuple[QLineEdit, QWidget]:
        holder, field = QWidget(), QLineEdit(text)
        holder.setObjectName("inside")
        caption = label("small", Tone.MUTED, name)
        caption.setBuddy(field)
        field.setAccessibleName(name)
        field.textChanged.connect(self._typed)
        row = QVBoxLayout(holder)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(caption)
        row.addWidget(field)
        return field, holder

    def _lay_out(self) -> None:
        self._runs = QWidget()
        self._runs.setObjectName("inside")
        self._row = QHBoxLayout(self._runs)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(self.run)
        self._row.addWidget(self._running)
        self._row.addStretch(1)
        self._row.addWidget(self._signal)
        for part in (self._bead, self._distance, self._said, self._runs):
            self.content.addWidget(part)
        self.content.addLayout(self._walks)
        self.content.addWidget(self._sentences)
        self.content.addWidget(self.plot, 1)
        self.content.addStretch(0)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        super().set_style(style)
        self.plot.set_style(style)
        self._row.setSpacing(style.px(18))
        self.content.setSpacing(style.px(10))
        for field in (self.bead_field, self.distance_field):
            field.setMaximumWidth(style.px(160))

    @property
    def draft(self) -> AirSpeedCalibration | None:
        """What was tried with these walks, once it has come."""
        tried = self._tried(self.guide.command)
        return tried if isinstance(tried, AirSpeedCalibration) else None

    def _typed(self) -> None:
        self._fault = ""
        for field in (self.bead_field, self.distance_field):
            set_property(field, "wrong", "false")
        self._draw()

    def _read(self, read: Callable[[str], float], field: QLineEdit) -> float | None:
        """Return the number in `field`, or None after saying why it cannot be taken."""
        try:
            return read(field.text())
        except FormError as error:
            self._fault = str(error)
            set_property(field, "wrong", "true")
            field.setFocus()
            self._draw()
            return None

    def _press(self) -> None:
        """Start or stop the time under the cup, or a walk."""
        distance_m = self._read(distance_m_of, self.distance_field) if self.guide.step is AirStep.WALKS else 0.0
        if distance_m is None:
            return
        now_ms = self._now_ms()
        if self.guide.started_ms is None:
            self._turn_to(started(self.guide, now_ms))
            self._ticking.start()
        else:
            self._stop(now_ms, distance_m)

    def _stop(self, now_ms: int, distance_m: float) -> None:
        self._ticking.stop()
        self._turn_to(stopped(self.guide, now_ms, distance_m))

    def _tick(self) -> None:
        now_ms = self._now_ms()
        if is_still_over(self.guide, now_ms):
            self._stop(now_ms, 0.0)
        elif self.guide.started_ms is None:
            self._ticking.stop()
        put(self._running, running_words(self.guide, now_ms))

    def _turn_to(self, guide: AirGuide) -> None:
        self.guide = guide
        self._try(guide.command if guide.step is AirStep.RESULT else None)

    def _begin_anew(self) -> None:
        self._turn_to(AirGuide())

    def _go_on(self) -> None:
        if self.guide.step is AirStep.NEEDED:
            bead_C = self._read(bead_C_of, self.bead_field)
            if bead_C is None:
                return
            self.guide = with_bead(self.guide, bead_C)
        if self.guide.step is not AirStep.RESULT:
            self._turn_to(onward(self.guide))
            (self.run if self.run.isVisibleTo(self) else self.onward).setFocus()
        elif self.guide.command is not None:
            self._accept(self.guide.command)

    def _draw(self) -> None:
        guide, step = self.guide, self.guide.step
        self.show_step(step)
        self._bead.setVisible(step is AirStep.NEEDED)
        self._distance.setVisible(step is AirStep.WALKS)
        self._runs.setVisible(step in {AirStep.STILL, AirStep.WALKS})
        is_fit = step is AirStep.RESULT and self.draft is not None
        self.plot.setVisible(is_fit)
        self._sentences.setVisible(is_fit)
        may_go_on = guide.may_go_on
        if step is AirStep.RESULT:
            may_go_on = self._draw_fit()
        else:
            self._draw_runs()
        self.allow(onward=may_go_on, anew=guide.is_begun)

    def _draw_runs(self) -> None:
        guide = self.guide
        trouble = air_trouble(self._snapshot) if self._snapshot else ""
        self.run.setText(say("Start") if guide.started_ms is None else say("Stop"))
        self.run.setAccessibleName(self.run.text())
        self.run.setEnabled(not trouble)
        signal_mV = self._snapshot.room.air_signal_mV if self._snapshot else None
        put(self._signal, "" if signal_mV is None else f"{chosen().number(signal_mV)} mV")
        put(self._running, running_words(guide, self._now_ms()))
        said = still_words(guide) if guide.step is AirStep.STILL else ""
        if guide.step is AirStep.WALKS:
            said = next_walk_words(guide, self._distance_or_usual())
        put(self._said, said, hide_empty=True)
        self._draw_walks()
        wrong = self._fault or trouble
        self.say_state(wrong, Level.ACT if self._fault else Level.CAUTION)

    def _distance_or_usual(self) -> float:
        try:
            return distance_m_of(self.distance_field.text())
        except FormError:
            return USUAL_DISTANCE_M

    def _draw_walks(self) -> None:
        words = tuple(map(walk_words, self.guide.walks)) if self.guide.step is AirStep.WALKS else ()
        if words == tuple(row.accessibleName() for row in self._walk_rows):
            return
        for row in self._walk_rows:
            self._walks.removeWidget(row)
            row.hide()
            row.deleteLater()
        self._walk_rows = [self._walk_row(index, one) for index, one in enumerate(words)]
        for row in self._walk_rows:
            self._walks.addWidget(row)

    def _walk_row(self, index: int, words: str) -> QFrame:
        made = QFrame()
        made.setAccessibleName(words)
        remove: QPushButton = button(say("Remove"), "link")
        remove.setAccessibleName(say("Remove walk {number}", number=index + 1))
        remove.clicked.connect(lambda: self._turn_to(without_walk(self.guide, index)))
        shown: QLabel = label("strong", text=say("Walk {number}: {result}", number=index + 1, result=words), wrap=True)
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(shown, 1)
        row.addWidget(remove)
        return made

    def _draw_fit(self) -> bool:
        self._draw_walks()
        self._said.hide()
        calibration = self.draft
        self._say_result(is_there=calibration is not None)
        if calibration is None:
            return False
        self.plot.show_fit(calibration)
        put(self._sentences, "\n".join(fit_sentences(calibration)))
        return True
