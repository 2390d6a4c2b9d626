"""What a coat now would break stands on its piece, for each sheet that could be next."""

from __future__ import annotations

from pathlib import Path

from studiowatch.service.correction_commands import Undo
from studiowatch.service.sheet_commands import DropSheet, KeepSheet
from studiowatch.studio.pieces import Coat

from .planned_studio import HOUR_MS, piece, watch_of
from .scripted import START_MS


def test_that_what_a_coat_now_would_break_stands_on_its_piece_for_each_sheet() -> None:
    coats = (
        Coat(key="i", sheet="isolation-waterborne", laid_ms=START_MS - 60 * HOUR_MS),
        Coat(key="s", sheet="satin-waterborne", laid_ms=START_MS - 30 * HOUR_MS),
    )
    (view,) = watch_of(piece(coats=coats)).snapshot(START_MS).pieces
    checks = dict(view.stack_checks)
    assert checks["gloss-waterborne"].headline == "Not in this order: gloss goes below satin and matt"
    assert "satin-waterborne" not in checks  # a second coat with matting agent: the generic sheet allows two
    assert checks["matt-waterborne"].headline == "Too many coats with matting agent"


def test_that_a_sheet_typed_in_edited_or_deleted_is_checked_at_once_by_what_it_says_now(tmp_path: Path) -> None:
    watch = watch_of(piece(), sheets=tmp_path)  # isolation, half an hour old: nothing solvent-borne goes on it yet

    def headline() -> str | None:
        (view,) = watch.snapshot(START_MS).pieces
        sentence = dict(view.stack_checks).get("spirit-gloss")
        return None if sentence is None else sentence.headline

    spirit = {"name": "spirit-gloss", "title": "Spirit gloss", "kind": "solventborne", "sheen": "gloss"}
    spirit |= {"volume_solids": 0.4, "wet_um": 80.0, "touch_dry_min": 240.0, "recoat_h": 24.0, "matting_agent": False}
    on_water = "Only once the coat below is dry through"
    told = [headline()]
    for command in (
        KeepSheet(fields=spirit),
        KeepSheet(fields={**spirit, "kind": "waterborne"}),
        Undo(),
        DropSheet(name="spirit-gloss"),
        Undo(),
    ):
        watch.carry_out(command, START_MS, 0.0)
        told.append(headline())
    assert told == [None, on_water, None, on_water, None, on_water]
