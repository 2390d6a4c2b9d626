"""The foot of a small form that sends no command: to take what it says, or to leave all as it was."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QDialog, QHBoxLayout

from studiowatch.speech.words import say
from studiowatch.ui.widgets.text import button


def take_or_cancel(dialog: QDialog, take: Callable[[], None], spacing_px: int) -> QHBoxLayout:
    """Return the row of both buttons; Enter takes."""
    foot = QHBoxLayout()
    foot.setSpacing(spacing_px)
    cancel, taking = button(say("Cancel")), button(say("Take it"), "primary")
    cancel.clicked.connect(dialog.reject)
    taking.clicked.connect(take)
    taking.setDefault(True)
    foot.addWidget(cancel)
    foot.addStretch(1)
    foot.addWidget(taking)
    return foot
