"""The menu of what goes out of the records and comes into them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar

from studiowatch.speech.words import say


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordsDeeds:
    """What the entries do."""

    save: Callable[[], object]
    save_senml: Callable[[], object]
    review: Callable[[], object]
    save_records: Callable[[], object]
    take_in: Callable[[], object]
    back_up: Callable[[], object]


def add_saving(history: QMenu, deeds: RecordsDeeds) -> None:
    """Add to the history's menu what saves a part of it."""
    history.addSeparator()
    history.addAction(say("Save readings as &CSV…"), QKeySequence("Ctrl+S"), deeds.save)
    history.addAction(say("Save readings as SenM&L…"), deeds.save_senml)
    history.addAction(say("&Review what dried in the chosen stretch"), QKeySequence("Ctrl+Shift+E"), deeds.review)


def add_records(bar: QMenuBar, deeds: RecordsDeeds) -> QMenu:
    """Add the menu of the records."""
    records = bar.addMenu(say("Re&cords"))
    records.addAction(say("Save all &records…"), deeds.save_records)
    records.addAction(say("&Take a file in…"), deeds.take_in)
    records.addSeparator()
    records.addAction(say("&Back up now…"), deeds.back_up)
    return records
