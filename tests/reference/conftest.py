"""Published tables, kept as comma-separated files whose first lines name the source."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import pytest

Rows = list[dict[str, str]]
TABLES = Path(__file__).parents[2] / "shared" / "reference"


@pytest.fixture(scope="session")
def table() -> Callable[[str], Rows]:
    def read(name: str) -> Rows:
        lines = (TABLES / f"{name}.csv").read_text(encoding="utf-8").splitlines()
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))

    return read
