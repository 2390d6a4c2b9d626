"""Her language and her units, before anything is said."""

from __future__ import annotations

import os
import sys

from studiowatch.service.preferences import ENGLISH, chosen_language, kept_choices
from studiowatch.speech.units import METRIC, choose, from_kept
from studiowatch.speech.words import speak_by


def her_language() -> str:
    """Return the language that she chose, or the computer's; Qt is only asked where the environment says nothing."""
    platform = sys.platform
    named = chosen_language(os.environ, kept_choices(os.environ, platform))
    if named or platform.startswith("linux"):
        return named or ENGLISH
    from studiowatch.ui.translation import computer_language  # noqa: PLC0415

    return computer_language()


def speak() -> None:
    """Speak her language, where there is a translation, and show figures as she chose; Qt only loads a translation."""
    kept, language = kept_choices(os.environ, sys.platform), her_language()
    choose(from_kept(kept, METRIC))
    if language != ENGLISH:
        from studiowatch.ui.translation import translation  # noqa: PLC0415

        speak_by(translation(language))
