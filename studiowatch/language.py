"""Her language and her units, before anything is said."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from dataclasses import replace

from studiowatch.service.preferences import ENGLISH, chosen_language, kept_choices
from studiowatch.speech.units import METRIC, Numbers, choose, from_kept
from studiowatch.speech.words import speak_by

WITH_COMMA = {"de"}  # languages whose decimal sign is a comma: Unicode CLDR, numbers of the locale


def her_language() -> str:
    """Return the language that she chose, or the computer's; Qt is only asked where the environment says nothing."""
    return _language_by(kept_choices(os.environ, sys.platform))


def _language_by(kept: Mapping[str, str]) -> str:
    platform = sys.platform
    named = chosen_language(os.environ, kept)
    if named or platform.startswith("linux"):
        return named or ENGLISH
    from studiowatch.ui.translation import computer_language  # noqa: PLC0415

    return computer_language()


def speak() -> None:
    """Speak her language, where there is a translation, and show figures as she chose; Qt only loads a translation."""
    kept = kept_choices(os.environ, sys.platform)
    language = _language_by(kept)
    choose(from_kept(kept, replace(METRIC, numbers=Numbers.COMMA) if language in WITH_COMMA else METRIC))
    if language != ENGLISH:
        from studiowatch.ui.translation import translation  # noqa: PLC0415

        speak_by(translation(language))
