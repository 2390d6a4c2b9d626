"""A made-up year of records for a year of readings: 300 coats on 75 pieces, 2,000 warnings, 1,500 prompts."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.store.database import open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import PromptRecord, WarningRecord
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.words import Level

SEED = 11
PIECES, ON_RACK, COATS, WARNINGS, PROMPTS_A_COAT = 75, 8, 4, 2000, 5
HOUR_MS = 3_600_000
COAT_EVERY_MS = 40 * HOUR_MS
RESTS_MS = 14 * 24 * HOUR_MS  # on the rack after the last coat
SHEETS = ("isolation-waterborne", "gloss-waterborne", "gloss-waterborne", "matt-waterborne")
KINDS = (Kind.AIR_MOVING, Kind.DAMP, Kind.TOO_COLD, Kind.NEAR_DEW_POINT)


def pieces(start_ms: int, end_ms: int) -> list[Piece]:
    """Return the pieces of a year, evenly; the last few are still on the rack."""
    last_ms = end_ms - COATS * COAT_EVERY_MS
    begins = np.linspace(start_ms + HOUR_MS, last_ms, PIECES).astype(np.int64).tolist()
    return [
        Piece(
            key=f"piece-{number}",
            title=f"Study {number}",
            width_cm=40.0,
            height_cm=50.0,
            place=number,
            archived=number < PIECES - ON_RACK,
            coats=tuple(
                Coat(
                    key=f"coat-{number}-{layer}",
                    sheet=sheet,
                    laid_ms=begin_ms + layer * COAT_EVERY_MS,
                    outcome=Outcome.MILKY_IN_PATCHES if (number + layer) % 9 == 0 else Outcome.CLEAR,
                    seen_ms=begin_ms + (layer + 1) * COAT_EVERY_MS - HOUR_MS,
                )
                for layer, sheet in enumerate(SHEETS)
            ),
        )
        for number, begin_ms in enumerate(begins)
    ]


def add(path: Path, start_ms: int, end_ms: int) -> tuple[PieceView, ...]:
    """Write the records of a year into the file at `path`, and return the pieces that are still on the rack."""
    made = pieces(start_ms, end_ms)
    now_ms = [start_ms]
    database = open_database(path)
    database.rows("PRAGMA synchronous = OFF")
    records = RecordsStore(database, lambda: now_ms[0])
    records.save_pieces([replace(piece, archived=False) for piece in made])
    for piece in made:
        now_ms[0] = (piece.coats[-1].laid_ms or 0) + RESTS_MS
        records.save_piece(piece)
    drawn = np.random.default_rng(SEED)
    coats = [coat for piece in made for coat in piece.coats]
    for number, began_ms in enumerate(np.sort(drawn.integers(start_ms, end_ms, WARNINGS)).tolist()):
        wet = [piece.title for piece in made if _is_on(piece, began_ms)][:3]
        records.save_warning(
            WarningRecord(
                key=f"warning-{number}",
                kind=KINDS[number % len(KINDS)],
                level=int(drawn.choice([Level.CAUTION, Level.ACT])),
                state="cleared",
                headline="Made up",
                detail="",
                advice="",
                began_ms=began_ms,
                raised_ms=began_ms + 3000,
                cleared_ms=began_ms + 600_000,
                pieces=tuple(wet),
            )
        )
    for coat in coats:
        for step in range(PROMPTS_A_COAT):
            due_ms = (coat.laid_ms or 0) + (step + 1) * HOUR_MS // 2
            records.save_prompt(
                PromptRecord(
                    key=f"{coat.key}-{step}", coat_key=coat.key, due_ms=due_ms, text="Made up", done_ms=due_ms + 60_000
                )
            )
    database.close()
    return tuple(_view(piece) for piece in made if not piece.archived)


def _is_on(piece: Piece, time_ms: int) -> bool:
    first, last = piece.coats[0].laid_ms or 0, piece.coats[-1].laid_ms or 0
    return first <= time_ms < last + COAT_EVERY_MS


def _view(piece: Piece) -> PieceView:
    return PieceView(
        key=piece.key,
        title=piece.title,
        width_cm=piece.width_cm,
        height_cm=piece.height_cm,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=tuple(_coat_view(coat) for coat in piece.coats),
    )


def _coat_view(coat: Coat) -> CoatView:
    laid_ms = coat.laid_ms or 0
    hours = ((Stage.SET_TO_TOUCH, 1.0), (Stage.TACK_FREE, 2.0), (Stage.DRY_TO_TOUCH, 2.5), (Stage.DRY_TO_RECOAT, 6.0))
    return CoatView(
        key=coat.key,
        sheet=coat.sheet,
        label="gloss",
        sheen="gloss",
        clear_film=True,
        laid_ms=laid_ms,
        surface=Surface.DRY,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        stages=tuple(
            StageTime(stage=stage, time_ms=laid_ms + round(hour * HOUR_MS), reached=True) for stage, hour in hours
        ),
    )
