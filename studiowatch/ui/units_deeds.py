"""Choose units: kept for this window, and told to the watch that makes the sentences."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from studiowatch.ui.deeds import Deeds
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.widgets.units_dialog import UnitsDialog


def choose_units(settings: ViewSettings, deeds: Deeds, window: QWidget) -> UnitsDialog:
    """Open the form for the units; what is taken shows with the next snapshot."""

    def take() -> None:
        settings.units, settings.language = form.units, form.language
        deeds.speak_in(form.units)
        deeds.done.emit(form.words)

    form = UnitsDialog(settings.units, settings.language, deeds.style, window)
    form.chosen.connect(take)
    form.open()
    return form
