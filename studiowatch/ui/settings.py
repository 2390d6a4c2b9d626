"""How she likes the window: night, light or high contrast, text size, and what she was told already."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QByteArray, QLocale, QSettings

from studiowatch.speech.units import CHOICES, METRIC, Hours, Numbers, Units, from_kept, kept_as
from studiowatch.ui.models.quiet_hours import QuietHours, kept_quiet_hours
from studiowatch.ui.style import TEXT_SCALES_PCT


def usual_units(locale: QLocale) -> Units:
    """Return metric units, with numbers and the time of day as a locale writes them."""
    twelve = "ap" in locale.timeFormat(QLocale.FormatType.ShortFormat).lower()
    return replace(
        METRIC,
        numbers=Numbers.COMMA if locale.decimalPoint() == "," else Numbers.POINT,
        hours=Hours.TWELVE if twelve else Hours.TWENTY_FOUR,
    )


class ViewSettings:
    """Preferences of the window, kept in a small INI file of the user's; never her records."""

    def __init__(self, store: QSettings | None = None) -> None:
        self._store = store or QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, "studiowatch", "window")

    @property
    def night(self) -> bool:
        """Whether the night colours are on."""
        return self._store.value("night", "no") == "yes"

    @night.setter
    def night(self, on: bool) -> None:
        self._store.setValue("night", "yes" if on else "no")

    @property
    def contrast(self) -> bool:
        """Whether the colours of high contrast are on; they stand before night and light."""
        return self._store.value("contrast", "no") == "yes"

    @contrast.setter
    def contrast(self, on: bool) -> None:
        self._store.setValue("contrast", "yes" if on else "no")

    @property
    def first_run_step(self) -> int:
        """The step of the first run that is next, 0 to 2; 3 once it was finished or skipped."""
        kept = str(self._store.value("first_run_step", "0"))
        return min(int(kept), 3) if kept.isdecimal() else 0

    @first_run_step.setter
    def first_run_step(self, step: int) -> None:
        self._store.setValue("first_run_step", str(step))

    @property
    def text_pct(self) -> int:
        """Text scale, %, one of TEXT_SCALES_PCT; anything else in the file counts as 100."""
        kept = str(self._store.value("text_pct", "100"))
        return int(kept) if kept.isdecimal() and int(kept) in TEXT_SCALES_PCT else 100

    @text_pct.setter
    def text_pct(self, percent: int) -> None:
        self._store.setValue("text_pct", str(percent))

    @property
    def units(self) -> Units:
        """What figures are shown and said in; at first metric, with numbers and the clock as the locale writes them.

        Anything else in the file counts as that.
        """
        return from_kept({name: str(self._store.value(name, "")) for name in CHOICES}, usual_units(QLocale()))

    @units.setter
    def units(self, units: Units) -> None:
        for name, choice in kept_as(units).items():
            self._store.setValue(name, choice)

    @property
    def language(self) -> str:
        """The language that she chose, "de"; "" for the computer's."""
        return str(self._store.value("language", ""))

    @language.setter
    def language(self, language: str) -> None:
        self._store.setValue("language", language)

    @property
    def told_of_tray(self) -> bool:
        """Whether she was told that closing the window keeps the watch going."""
        return self._store.value("told_of_tray", "no") == "yes"

    @told_of_tray.setter
    def told_of_tray(self, told: bool) -> None:
        self._store.setValue("told_of_tray", "yes" if told else "no")

    @property
    def quiet_hours(self) -> QuietHours:
        """When nothing but the worst may be heard; anything else in the file counts as the usual."""
        names = ("quiet", "quiet_from", "quiet_to", "quiet_wakes")
        return kept_quiet_hours({name: str(self._store.value(name, "")) for name in names})

    @quiet_hours.setter
    def quiet_hours(self, quiet: QuietHours) -> None:
        self._store.setValue("quiet", "yes" if quiet.on else "no")
        self._store.setValue("quiet_from", str(quiet.from_min))
        self._store.setValue("quiet_to", str(quiet.to_min))
        self._store.setValue("quiet_wakes", "yes" if quiet.wakes else "no")

    @property
    def geometry(self) -> QByteArray:
        """Where the window stood; empty at first."""
        kept = self._store.value("geometry")
        return kept if isinstance(kept, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, geometry: QByteArray) -> None:
        self._store.setValue("geometry", geometry)
