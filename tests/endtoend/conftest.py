"""Fixtures that run the reference sketch's machine code."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from .chip import Chip, skip_reason


@pytest.fixture(scope="session")
def chip_builds(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Folder for the built sketch and simulated chip; skips the test where they cannot be built."""
    reason = skip_reason()
    if reason:
        pytest.skip(reason)
    return tmp_path_factory.mktemp("chip")


@pytest.fixture
def start_chip(chip_builds: Path) -> Iterator[Callable[..., Chip]]:
    """Start simulated boards: ``start_chip(speed=1, seed=1) -> Chip``; they stop at the end of the test."""
    with ExitStack() as running:
        yield lambda **how: running.enter_context(Chip(chip_builds, **how))
