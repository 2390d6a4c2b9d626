"""Fixtures that run the reference sketch's machine code."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest
import serial

from .chip import Chip, skip_reason
from .host import READ_WITHIN_S, Host


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


@pytest.fixture
def connect(start_chip: Callable[..., Chip]) -> Iterator[Callable[..., Host]]:
    """Power a held board and open its port: ``connect(seed=1, sensor="sht4x", baud=9600) -> Host``."""
    with ExitStack() as ports:

        def connect_one(*, sensor: str = "sht4x", baud: int = 9600, **how: object) -> Host:
            chip = start_chip(speed=None, **how)
            chip.tell(f"sensor {sensor}")
            return Host(chip, ports.enter_context(serial.Serial(chip.pty, baud, timeout=READ_WITHIN_S)))

        yield connect_one
