"""How she likes the window: night, light or high contrast, text size, and what she was told already."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QLocale, QSettings

from studiowatch.studio.units import METRIC, Degrees, Numbers, Speed, Units
from studiowatch.ui.models.quiet_hours import DAY_MIN, QuietHours
from studiowatch.ui.style import TEXT_SCALES_PCT


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
        """What figures are shown and said in; at first metric and as the locale writes numbers.

        Anything else in the file counts as metric with a point.
        """
        degrees, speed = (str(self._store.value(name, "")) for name in ("degrees", "air_speed"))
        locale = QLocale().decimalPoint()
        kept = str(self._store.value("decimal_sign", "")) or {",": "comma"}.get(locale, "")
        return Units(
            numbers=next((way for way in Numbers if way.name.lower() == kept), METRIC.numbers),
            degrees=next((unit for unit in Degrees if unit.name.lower() == degrees), METRIC.degrees),
            speed=next((unit for unit in Speed if unit.name.lower() == speed), METRIC.speed),
        )

    @units.setter
    def units(self, units: Units) -> None:
        self._store.setValue("degrees", units.degrees.name.lower())
        self._store.setValue("air_speed", units.speed.name.lower())
        self._store.setValue("decimal_sign", units.numbers.name.lower())

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
        usual = QuietHours()
        return QuietHours(
            on=self._store.value("quiet", "no") == "yes",
            from_min=self._minute("quiet_from", usual.from_min),
            to_min=self._minute("quiet_to", usual.to_min),
            wakes=self._store.value("quiet_wakes", "no") == "yes",
        )

    @quiet_hours.setter
    def quiet_hours(self, quiet: QuietHours) -> None:
        self._store.setValue("quiet", "yes" if quiet.on else "no")
        self._store.setValue("quiet_from", str(quiet.from_min))
        self._store.setValue("quiet_to", str(quiet.to_min))
        self._store.setValue("quiet_wakes", "yes" if quiet.wakes else "no")

    def _minute(self, name: str, usual: int) -> int:
        kept = str(self._store.value(name, ""))
        return int(kept) if kept.isdecimal() and int(kept) < DAY_MIN else usual

    @property
    def geometry(self) -> QByteArray:
        """Where the window stood; empty at first."""
        kept = self._store.value("geometry")
        return kept if isinstance(kept, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, geometry: QByteArray) -> None:
        self._store.setValue("geometry", geometry)
