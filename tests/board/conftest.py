"""What the board's tests share: the vectors, and a pty as a device."""

import json
import os
import tty
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

VECTORS = Path(__file__).parents[2] / "shared" / "wire_vectors.json"


class Device:
    """The board's end of a pty; `path` is what the reader opens."""

    def __init__(self) -> None:
        self._own, theirs = self._ends = list(os.openpty())
        tty.setraw(theirs)
        self.path = os.ttyname(theirs)

    def send(self, data: bytes) -> None:
        os.write(self._own, data)

    def receive(self) -> bytes:
        return os.read(self._own, 100)

    def vanish(self) -> None:
        while self._ends:
            os.close(self._ends.pop())


@pytest.fixture(scope="session")
def vectors() -> dict[str, list[dict[str, object]]]:
    return json.loads(VECTORS.read_text(encoding="utf-8"))


@pytest.fixture
def make_device() -> Iterator[Callable[[], Device]]:
    made: list[Device] = []

    def make() -> Device:
        made.append(Device())
        return made[-1]

    yield make
    for device in made:
        device.vanish()
