"""What the room history offers to do with a coat: a menu at the pointer, or of a chosen stretch."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QMenu, QWidget

from studiowatch.speech.words import say

MOST_OFFERED = 12  # coats of a stretch from which one is chosen for a review


def offer_coat(parent: QWidget, at: QPoint, go: Callable[[], None], review: Callable[[], None] | None) -> None:
    """Offer what can be done with one coat, at a place on the screen; no review where nobody listens for one."""
    menu = _menu(parent)
    menu.addAction(say("&Go to this coat"), go)
    if review is not None:
        menu.addAction(say("&Why did it cloud?"), review)
    menu.popup(at)


def offer_reviews(parent: QWidget, at: QPoint, coats: Sequence[tuple[str, str]], review: Callable[[str], None]) -> None:
    """Offer the reviews of `coats`, keys and titles, that dried in the chosen stretch, at a place on the screen."""
    menu = _menu(parent)
    menu.setAccessibleName(say("Coats that dried in the chosen stretch"))
    for key, title in coats[:MOST_OFFERED]:
        words = f"{say('Why did it cloud?')} {title}".replace("&", "&&")
        menu.addAction(words, partial(review, key))
    menu.popup(at)


def _menu(parent: QWidget) -> QMenu:
    menu = QMenu(parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    return menu
