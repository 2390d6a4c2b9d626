"""Humidity calibration with two salts, guided."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QFrame, QGridLayout, QVBoxLayout

from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.humidity_guide import (
    STEPS,
    HumidityGuide,
    HumidityStep,
    back,
    box_now,
    onward,
    result_rows,
    result_sentences,
)
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.box_plot import BoxPlot
from studiowatch.ui.widgets.calibration_page import CalibrationPage
from studiowatch.ui.widgets.text import label, put

REFUSED = mark("It was refused, and nothing was changed. Go back to take a reading again.")
ACCEPTED = mark("Humidity is put right from now on.")


class HumidityPage(CalibrationPage):
    """Keeps how far she is for as long as the program runs."""

    def __init__(self, courier: Courier, now_ms: Callable[[], int]) -> None:
        super().__init__(
            say("Humidity calibration"),
            STEPS,
            courier,
            refused_words=say(REFUSED),
            accepted_words=say(ACCEPTED),
        )
        self._now_ms = now_ms
        self.guide = HumidityGuide()
        self._lay_out()
        self.onward_asked.connect(self._go_on)
        self.back_asked.connect(lambda: self._turn_to(back(self.guide)))
        self.anew_asked.connect(self._begin_anew)
        self._draw()

    def _lay_out(self) -> None:
        self._now = label("headline")
        self._plot = BoxPlot()
        self._waiting = QFrame()
        waiting = QVBoxLayout(self._waiting)
        waiting.setContentsMargins(0, 0, 0, 0)
        waiting.addWidget(self._now)
        waiting.addWidget(self._plot, 1)
        self._result = QFrame()
        grid = QGridLayout()
        self._cells = [[label("body") for _ in range(4)] for _ in range(3)]
        for row, cells in enumerate(self._cells):
            for column, cell in enumerate(cells):
                grid.addWidget(cell, row, column)
        grid.setColumnStretch(4, 1)
        self._grid = grid
        self._sentences = label("strong", wrap=True)
        result = QVBoxLayout(self._result)
        result.setContentsMargins(0, 0, 0, 0)
        result.addLayout(grid)
        result.addWidget(self._sentences)
        self._below = result
        self.content.addWidget(self._waiting, 1)
        self.content.addWidget(self._result)
        self.content.addStretch(0)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        super().set_style(style)
        self._plot.set_style(style)
        self._grid.setHorizontalSpacing(style.px(28))
        self._grid.setVerticalSpacing(style.px(5))
        self._below.setSpacing(style.px(14))

    @property
    def draft(self) -> HumidityCalibration | None:
        """What was tried with these readings, once it has come."""
        tried = self._tried(self.guide.command)
        return tried if isinstance(tried, HumidityCalibration) else None

    def _turn_to(self, guide: HumidityGuide) -> None:
        self.guide = guide
        self._try(guide.command if guide.step is HumidityStep.RESULT else None)

    def _begin_anew(self) -> None:
        self._turn_to(HumidityGuide())

    def _go_on(self) -> None:
        if self.guide.step is not HumidityStep.RESULT:
            self._turn_to(onward(self.guide, self._now_ms()))
        elif self.guide.command is not None:
            self._accept(self.guide.command)

    def _draw(self) -> None:
        guide = self.guide
        self.show_step(guide.step)
        self._waiting.setVisible(guide.is_waiting)
        self._result.setVisible(guide.step is HumidityStep.RESULT and self.draft is not None)
        may_go_on = True
        self.say_state("")
        if guide.is_waiting:
            may_go_on = self._draw_box()
        elif guide.step is HumidityStep.RESULT:
            may_go_on = self._draw_result()
        self.allow(onward=may_go_on, anew=guide.is_begun)

    def _draw_box(self) -> bool:
        if self._snapshot is None:
            return False
        plateau, room = self._snapshot.calibrations.plateau, self._snapshot.room
        if not self._snapshot.board.connected:
            self.say_state(say("No board is read: plug it in; the minutes on end begin anew."), Level.CAUTION)
            return False
        box = box_now(self.guide, plateau, self._now_ms())
        mean_pct = plateau.humidity_pct if box.may_take else None
        shown = plateau.humidities_pct[-1] if plateau.humidities_pct else None
        words = "–" if shown is None else say("{humidity} %RH", humidity=chosen().number(shown, 1))
        temperature = "" if room.temperature_C is None else f"   {chosen().temperature(room.temperature_C)}"
        put(self._now, f"{words}{temperature}")
        self._plot.show_minutes(plateau.humidities_pct[-box.minutes :] if box.minutes else ())
        self.say_state(box.words, box.level, good=mean_pct is not None and box.level is Level.CALM)
        return box.may_take

    def _draw_result(self) -> bool:
        calibration = self.draft
        self._say_result(is_there=calibration is not None)
        if calibration is None:
            return False
        for row, (cells, words) in enumerate(zip(self._cells, result_rows(calibration), strict=True)):
            for cell, word in zip(cells, words, strict=True):
                put(cell, word, Tone.INK if row else Tone.MUTED)
        put(self._sentences, "\n".join(result_sentences(calibration)))
        return True
