"""The help menu: what each cause of clouding looks like, on a made-up coat."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from string import ascii_lowercase

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar

from studiowatch.speech.words import say
from studiowatch.studio.review_causes import TITLES, Cause


def add_help(bar: QMenuBar, example: Callable[[Cause], object], book: Callable[[], object]) -> QMenu:
    """Add the menu; `example` shows the made-up coat of a cause, `book` opens the studio book."""
    shown = bar.addMenu(say("Hel&p"))
    shown.addAction(say("The studio &book"), QKeySequence("F1"), book)
    causes = shown.addMenu(say("&What clouded coats look like"))
    causes.setAccessibleName(say("What clouded coats look like"))
    for letter, cause in zip(ascii_lowercase, Cause, strict=False):
        causes.addAction(f"&{letter}   {say(TITLES[cause])}", partial(example, cause))
    return shown
