"""One clouded coat: its piece, its coats, its room, the cause that an expert would name, and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import numpy as np

from .room import Air, Logger, room_log
from .sheets import numbers_of

AFTER_H = 30.0  # the log goes on this long after the laying, unless the coat was looked at sooner


@dataclass(frozen=True, slots=True, kw_only=True)
class Laid:
    """One coat; `at_h` counts from the laying of the reviewed coat. `times` is its thickness over the sheet's."""

    sheet: str
    at_h: float
    times: float = 1.0
    amount: str = "volume_mL"  # or grams, wet_um, ""
    thinned_pct: float = 0.0
    covered_h: float | None = None  # after its own laying
    outcome: str = ""
    seen_h: float | None = None  # after its own laying


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """Everything that is written to disk, and what is true of it."""

    name: str
    cause: str
    why: str
    air: Air
    coats: Sequence[Laid]
    logger: Logger = field(default_factory=Logger)
    laid: datetime = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
    size_cm: tuple[float, float] = (40.0, 40.0)
    orientation: str = ""
    neighbours: int = 0
    own_sheets: Mapping[str, Mapping[str, object]] = field(default_factory=dict)
    from_h: float | None = None
    to_h: float | None = None
    seed: int = 0

    @property
    def title(self) -> str:
        return f"Piece {self.name}"

    @property
    def coat_number(self) -> int:
        return len(self.coats)


@dataclass(frozen=True, slots=True)
class Written:
    """The files of a case."""

    studio: Path
    room: Path


def write(case: Case, folder: Path, built_in: Path) -> Written:
    """Write the case's files into `folder`; `built_in` holds the sheets that ship."""
    rng = np.random.default_rng([case.seed, *case.name.encode()])
    folder.mkdir(parents=True, exist_ok=True)
    for name, fields in case.own_sheets.items():
        (folder / name).write_text("".join(f"{key} = {_toml(value)}\n" for key, value in fields.items()), "utf-8")
    studio = folder / "studio.toml"
    studio.write_text(_studio_text(case, folder, built_in, rng), "utf-8")
    first_h = min(coat.at_h for coat in case.coats if coat.at_h > -60) - 1.0
    room = folder / "room.csv"
    text = room_log(
        case.air,
        case.logger,
        laid=case.laid,
        from_h=first_h if case.from_h is None else case.from_h,
        to_h=_last_h(case),
        rng=rng,
    )
    room.write_bytes(text.encode())
    return Written(studio, room)


def _last_h(case: Case) -> float:
    if case.to_h is not None:
        return case.to_h
    seen = case.coats[-1].seen_h
    return AFTER_H if seen is None else min(seen + 0.25, AFTER_H)


def _studio_text(case: Case, folder: Path, built_in: Path, rng: np.random.Generator) -> str:
    lines = [_piece(f"Neighbour {index + 1}", 30.0, 24.0, "") for index in range(case.neighbours)]
    lines.insert(int(rng.integers(0, case.neighbours + 1)), _reviewed(case, folder, built_in))
    return "\n".join(lines)


def _piece(title: str, width: float, height: float, orientation: str) -> str:
    text = f'[[piece]]\ntitle = "{title}"\nwidth_cm = {width:g}\nheight_cm = {height:g}\n'
    return text + (f'orientation = "{orientation}"\n' if orientation else "")


def _reviewed(case: Case, folder: Path, built_in: Path) -> str:
    text = _piece(case.title, *case.size_cm, case.orientation)
    for coat in case.coats:
        path = folder / coat.sheet if coat.sheet.endswith(".toml") else built_in / f"{coat.sheet}.toml"
        text += _coat(case, coat, path)
    return text


def _coat(case: Case, coat: Laid, sheet: Path) -> str:
    laid = case.laid + timedelta(hours=coat.at_h)
    lines = ["[[piece.coat]]", f'sheet = "{coat.sheet}"', f"laid = {_moment(laid, case)}"]
    if coat.amount:
        lines.append(f"{coat.amount} = {_amount(case, coat, sheet):.4g}")
    if coat.thinned_pct:
        lines.append(f"thinned_pct = {coat.thinned_pct:g}")
    if coat.covered_h is not None:
        lines.append(f"covered_from = {_moment(laid + timedelta(hours=coat.covered_h), case)}")
    if coat.outcome:
        lines.append(f'outcome = "{coat.outcome}"')
    if coat.seen_h is not None:
        lines.append(f"seen = {_moment(laid + timedelta(hours=coat.seen_h), case)}")
    return "\n".join(lines) + "\n"


def _amount(case: Case, coat: Laid, sheet: Path) -> float:
    """Return what was poured: the sheet's film on this piece, so many times over."""
    numbers = numbers_of(sheet)
    wet_um = numbers["wet_um"] * coat.times
    volume_mL = wet_um * case.size_cm[0] * case.size_cm[1] / 1e4
    return {"wet_um": wet_um, "volume_mL": volume_mL, "grams": volume_mL * numbers["density_kg_m3"] / 1e3}[coat.amount]


def _moment(moment: datetime, case: Case) -> str:
    zone = timezone(timedelta(hours=case.logger.zone_h)) if case.logger.zone_h else UTC
    return moment.replace(microsecond=0).astimezone(zone).isoformat().replace("+00:00", "Z")


def _toml(value: object) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    return f'"{value}"' if isinstance(value, str) else repr(value)
