"""What both calibrations' guides share: a calibration is tried, shown, and then accepted or refused."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence

from PySide6.QtCore import Signal

from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity, TryCalibration
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.guide import GuideStep
from studiowatch.ui.widgets.guide_page import GuidePage

Asked = CalibrateHumidity | CalibrateAirSpeed


class CalibrationPage(GuidePage):
    """A guide whose last step shows the calibration. `accepted` tells in words that one holds.

    Parameters
    ----------
    refused_words, accepted_words : str
        One sentence each, for her.
    """

    accepted = Signal(str)

    def __init__(
        self, title: str, steps: Sequence[GuideStep], courier: Courier, *, refused_words: str, accepted_words: str
    ) -> None:
        super().__init__(title, steps)
        self._courier = courier
        self._refused_words, self._accepted_words = refused_words, accepted_words
        self._snapshot: Snapshot | None = None
        self._refusal = ""

    @abstractmethod
    def _draw(self) -> None:
        """Show the step as it stands."""

    @abstractmethod
    def _begin_anew(self) -> None:
        """Go to the first step, with nothing taken yet."""

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what the sensor says now."""
        self._snapshot = snapshot
        self._draw()

    def _tried(self, command: Asked | None) -> HumidityCalibration | AirSpeedCalibration | None:
        """Return what `command` would make, once it has come, and unless it was refused."""
        draft = self._snapshot.calibrations.draft if self._snapshot else None
        fits = draft is not None and draft.of == command and not self._refusal
        return draft.calibration if fits and draft else None

    def _try(self, command: Asked | None) -> None:
        """Ask what `command` would make; None asks for nothing."""
        self._refusal = ""
        if command is not None:
            tried = TryCalibration(of=command)
            self._courier.send(tried, owner=self, done=lambda _key: None, refused=self._refused)
        self._draw()

    def _accept(self, command: Asked) -> None:
        self.onward.setEnabled(False)
        self._courier.send(command, owner=self, done=self._accepted, refused=self._refused)

    def _accepted(self, _key: str) -> None:
        self._begin_anew()
        self.accepted.emit(self._accepted_words)

    def _refused(self, sentence: str) -> None:
        self._refusal = sentence
        self._draw()

    def _say_result(self, *, is_there: bool) -> None:
        """Say how the last step stands."""
        if self._refusal:
            self.say_words(self._refused_words)
            self.say_state(self._refusal, Level.ACT)
        else:
            self.say_state("" if is_there else say("Working it out…"))
