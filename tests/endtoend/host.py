"""A program that listens to the simulated board line by line, with a checksum that is not the project's."""

from __future__ import annotations

import binascii
import re
from dataclasses import dataclass

import serial

from .chip import Chip

LINE = re.compile(rb"\$([HDE])((?: [a-z][a-z0-9]{0,7}=[!-)+-~]+)+)\*([0-9A-F]{4})\r?\n?")
LONGEST_LINE = 160
READ_WITHIN_S = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line whose grammar and checksum are right."""

    kind: str
    values: dict[str, str]

    def __getitem__(self, key: str) -> str:
        return self.values[key]


def checked(raw: bytes) -> Line | None:
    """Check one line; the checksum is the standard library's, not the project's."""
    match = LINE.fullmatch(raw)
    if not match or len(raw.rstrip()) > LONGEST_LINE:
        return None
    covered = raw[1 : raw.index(b"*")]
    if binascii.crc_hqx(covered, 0xFFFF) != int(match[3], 16):
        return None
    pairs = (pair.partition("=") for pair in match[2].decode("ascii").split())
    return Line(kind=match[1].decode("ascii"), values={key: value for key, _, value in pairs})


class Host:
    """A program that listens to a held chip: time passes only in `hear`."""

    def __init__(self, chip: Chip, port: serial.Serial) -> None:
        self.chip = chip
        self.port = port
        self._lines_read = 0

    def raw_lines(self, chip_seconds: float) -> list[bytes]:
        """Let the chip run and take every line it sent."""
        self.chip.tell(f"run {chip_seconds}")
        sent = int(self.chip.tell("time").partition(" lines ")[2].split()[0])
        lines = [self.port.readline() for _ in range(sent - self._lines_read)]
        assert all(line.endswith(b"\n") for line in lines), f"nothing came within {READ_WITHIN_S} s"
        self._lines_read = sent
        return lines

    def hear(self, chip_seconds: float) -> list[Line]:
        """Take the checked lines; blank lines, which a boot sends first, are left out."""
        raw = [line for line in self.raw_lines(chip_seconds) if line.strip()]
        lines = [checked(line) for line in raw]
        assert None not in lines, raw
        return [line for line in lines if line]

    def hear_data(self, chip_seconds: float) -> list[Line]:
        """Take the data lines only."""
        return [line for line in self.hear(chip_seconds) if line.kind == "D"]
