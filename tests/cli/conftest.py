"""A studio on disk and a way to call the commands."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import pytest

from studiowatch.cli.commands import run
from studiowatch.compose import outfit

STUDIO = """
[[piece]]
title = "Kiln Light"
width_cm = 40
height_cm = 40
due = 2026-03-20
[[piece.coat]]
sheet = "isolation-waterborne"
laid = 2026-03-02T09:01:00Z
volume_mL = 14
"""


@dataclass(frozen=True)
class Answer:
    """What a call left behind."""

    code: int
    out: str
    err: str

    @property
    def document(self) -> Any:  # noqa: ANN401 - whatever was printed
        return json.loads(self.out)

    @property
    def lines(self) -> list[Any]:
        return [json.loads(line) for line in self.out.splitlines()]


@pytest.fixture
def call(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> Callable[..., Answer]:
    """Run a call as the program does, with its folders under the test's own."""
    parts = replace(outfit(), data_folder=tmp_path / "data", demo_folder=tmp_path / "demo")

    def answer(*words: str | Path) -> Answer:
        capsys.readouterr()
        code = run([str(word) for word in words], parts)
        captured = capsys.readouterr()
        return Answer(code, captured.out, captured.err)

    return answer


@pytest.fixture
def studio_file(tmp_path: Path) -> Path:
    path = tmp_path / "studio.toml"
    path.write_text(STUDIO, "utf-8")
    return path


def room_text(rows: Sequence[Sequence[object]]) -> str:
    header = "time,temperature_C,humidity_pct,air_speed_m_s"
    return "\n".join([header, *(",".join(map(str, row)) for row in rows)]) + "\n"
