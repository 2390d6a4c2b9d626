"""A question with two answers; the harmless one is the default."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QMessageBox, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.plain import plain_box


def question(parent: QWidget, headline: str, detail: str, yes: str, no: str = "") -> QMessageBox:
    """Return a question: Enter and Escape both answer `no`, and `accepted` tells of `yes`. It deletes itself.

    `no` is "Cancel" where nothing else is said.
    """
    box = plain_box(parent, headline, detail)
    box.addButton(yes, QMessageBox.ButtonRole.AcceptRole).setAutoDefault(False)
    harmless = box.addButton(no or say("Cancel"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(harmless)
    box.setEscapeButton(harmless)
    return box


def stop_question(parent: QWidget, wet_titles: Sequence[str]) -> QMessageBox:
    """Return the question before the watch ends, with what is still wet."""
    detail = say("Nobody watches the room until studiowatch is opened again.")
    if wet_titles:
        detail = f"{say('Still wet: {titles}.', titles=', '.join(wet_titles))} {detail}"
    return question(parent, say("Stop watching?"), detail, say("Stop watching"), say("Keep watching"))
