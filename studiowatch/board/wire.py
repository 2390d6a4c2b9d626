"""The wire format without I/O: bytes in any portions to checked lines and counted faults.

::

    line  = "$" kind 1*(SP key "=" value) "*" 4HEX [CR] LF   ; printable ASCII, <= 160 bytes
    kind  = "H" hello | "D" data | "E" error
    key   = lowercase then lowercase/digits, <= 8, unique in its line
    value = ["-"] 1*DIGIT ["." 1*DIGIT] | "!" code | token    ; tokens in H and E only
    code  = 1*(letter | digit | "_" | "-")
    token = printable without SP "$" "*" "=", not beginning with "!"
    crc   = CRC-16/CCITT-FALSE over the bytes between "$" and "*", upper-case hexadecimal

The bytes fall into stretches, each ended by LF or by the next "$". A stretch is a line, a fault, or empty (nothing,
or a bare CR); there is no fourth thing, whatever the bytes are.

A board sends line after line of one layout, so the grammar is judged once for each: to the grammar all digits are
alike, and a data line that differs in nothing but digits from one that was judged right is right. Only the checksum is
new each time, and the values stand where they stood.
"""

from __future__ import annotations

import re
from binascii import crc_hqx
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from operator import itemgetter
from typing import NamedTuple, Self

from studiowatch.speech.words import say

LONGEST_LINE = 160  # bytes from "$" to LF, both included: the wire format
CRC_START = 0xFFFF  # CRC-16/CCITT-FALSE (also called IBM-3740): poly 0x1021, start 0xFFFF, unreflected
CRC_START_WITH_BEGIN = 0x3A0C  # the register that "$" turns into CRC_START, so that the "$" need not be cut off
QUOTED_BYTES = 60  # of a refused line, enough to see what it was: assumption

_KEY = rb"[a-z][a-z0-9]{0,7}"
_NUMBER = rb"-?[0-9]+(?:\.[0-9]+)?"
_CODE = rb"![A-Za-z0-9_-]+"
_TOKEN = rb"(?!!)[!-#%-)+-<>-~]+"
_DATA = re.compile(rb"D(?: " + _KEY + rb"=(?:" + _NUMBER + rb"|" + _CODE + rb"))+")
_WORDS = re.compile(rb"[HE](?: " + _KEY + rb"=(?:" + _TOKEN + rb"|" + _CODE + rb"))+")
_VALUE = re.compile(rb"=([^ ]+)")
_RESYNC = re.compile(rb"[$\n]")
_NEW = tuple.__new__  # makes a WireLine at half the cost of calling it
_EMPTY = (b"", b"\r")
_DIGITS_ALIKE = bytes.maketrans(b"123456789", b"000000000")
MOST_LAYOUTS = 512  # remembered at once; a board has some dozens, as its numbers grow and shrink: assumption


class Kind(StrEnum):
    """What a line is for."""

    HELLO = "H"
    DATA = "D"
    ERROR = "E"


_SHAPES = {b"D": (Kind.DATA, _DATA), b"H": (Kind.HELLO, _WORDS), b"E": (Kind.ERROR, _WORDS)}


class WireLine(NamedTuple):
    """A line whose checksum and grammar are right.

    A named tuple because one is made for each line, and lines of one layout share their `keys`.

    Attributes
    ----------
    keys : tuple of str
        In the order of the line; no key occurs twice.
    values : tuple of str
        Values as they were sent, one for each key. In a data line each is a decimal number or ``!code``.
    """

    kind: Kind
    keys: tuple[str, ...]
    values: tuple[str, ...]

    @property
    def fields(self) -> Mapping[str, str]:
        """The values by their keys, in the order of the line."""
        return dict(zip(self.keys, self.values, strict=True))

    @classmethod
    def of(cls, kind: Kind, fields: Mapping[str, str]) -> Self:
        """Return the line that holds `fields`."""
        return cls(kind, tuple(fields), tuple(fields.values()))


@dataclass(frozen=True, slots=True)
class WireFault:
    """A stretch of bytes that is no line; `raw` holds at most its first 160 bytes."""

    reason: str
    raw: bytes

    def quoted(self) -> str:
        """Return the bytes for people; see `quoted`."""
        return quoted(self.raw)


def quoted(raw: bytes, most: int = QUOTED_BYTES) -> str:
    """Return bytes for people: printable ASCII as it is, the rest as escapes, `most` bytes of it."""
    shown = raw[:most].decode("ascii", "backslashreplace")
    text = "".join(c if c.isprintable() else f"\\x{ord(c):02x}" for c in shown)
    return text + "…" if len(raw) > most else text


def checksum(body: bytes) -> int:
    """Return the CRC-16/CCITT-FALSE of `body`."""
    return crc_hqx(body, CRC_START)


def encode(kind: Kind, fields: Mapping[str, str]) -> bytes:
    """Return the bytes of a line, CR and LF included.

    Raises
    ------
    ValueError
        If the line would not be read back: a key, value or length outside the grammar.
    """
    body = " ".join([kind.value, *(f"{key}={value}" for key, value in fields.items())]).encode()
    line = b"$%b*%04X\r\n" % (body, checksum(body))
    if isinstance(read_line(line[:-1]), WireLine):
        return line
    raise ValueError(f"{line!r} is no line of the wire format.")  # not said


def read_line(raw: bytes) -> WireLine | WireFault:
    """Judge one stretch that was ended by LF; `raw` is without the LF, and not empty."""
    if len(raw) >= LONGEST_LINE:
        return _too_long(raw)
    if not raw.startswith(b"$"):
        return WireFault(say("The bytes do not begin with $: noise between lines."), raw)
    line = raw.removesuffix(b"\r")
    body, check = line[1:-5], line[-5:]
    if check != b"*%04X" % crc_hqx(body, CRC_START):
        return WireFault(
            say("The checksum {checksum} was expected: bytes were changed or lost.", checksum=f"{checksum(body):04X}"),
            raw,
        )
    kind, shape = _SHAPES.get(body[:1], (None, _DATA))
    if kind is None or not shape.fullmatch(body):
        return WireFault(say("The checksum is right, but the line does not follow the wire format."), raw)
    parts = body.decode("ascii").replace("=", " ").split(" ")
    keys = parts[1::2]
    if len(set(keys)) != len(keys):
        return WireFault(say("The checksum is right, but a key occurs twice in the line."), raw)
    return WireLine(kind, tuple(keys), tuple(parts[2::2]))


def _too_long(raw: bytes) -> WireFault:
    return WireFault(say("The line is longer than {most} bytes.", most=LONGEST_LINE), raw[:LONGEST_LINE])


def _broken_off(raw: bytes) -> WireFault:
    if len(raw) > LONGEST_LINE:
        return _too_long(raw)
    return WireFault(say("The line broke off: $ came before its end."), raw)


_Layout = tuple[tuple[str, ...], Callable[[str], tuple[str, ...]], bytes]
"""What all lines of one layout share: the keys, what takes the values out of the body, and the checksum's form."""


def _may_stand_for_others(line: WireLine) -> bool:
    """Tell whether all lines of this layout have the same keys, and so many that `itemgetter` gives a tuple."""
    return line.kind is Kind.DATA and len(line.keys) > 1 and "".join(line.keys).isalpha()


def _layout(keys: tuple[str, ...], body: bytes, check: bytes) -> _Layout:
    """Return the layout of a line that may stand for others."""
    values_of = itemgetter(*(slice(*value.span(1)) for value in _VALUE.finditer(body)))
    return keys, values_of, b"%04X\r" if check.endswith(b"\r") else b"%04X"


class LineParser:
    """Bytes to lines and faults, in any portions; the result does not depend on the portions.

    Parameters
    ----------
    mid_line : bool
        True if the first bytes may be the rest of a line that began before anyone listened: they are then passed
        over, uncounted, up to the first "$" or LF.
    """

    __slots__ = ("_layouts", "_pending", "_skipping")

    def __init__(self, *, mid_line: bool = False) -> None:
        self._layouts: dict[bytes, _Layout] = {}
        self._pending = b""
        self._skipping = mid_line

    def feed(self, data: bytes) -> list[WireLine | WireFault]:
        """Take `data`, return what it completed. Holds at most 160 bytes back."""
        buffer = self._pending + data
        if self._skipping:
            buffer = self._resync(buffer)
        *ended, rest = buffer.split(b"\n")
        found: list[WireLine | WireFault] = []
        layout_of, take, kind = self._layouts.get, found.append, Kind.DATA
        for stretch in ended:
            body, _, check = stretch.partition(b"*")
            layout = layout_of(body.translate(_DIGITS_ALIKE))
            if layout is not None:
                keys, values_of, check_form = layout
                if check == check_form % crc_hqx(body, CRC_START_WITH_BEGIN):
                    take(_NEW(WireLine, (kind, keys, values_of(body.decode()))))
                    continue
            if (raw := self._cut_at_begins(stretch, found)) not in _EMPTY:
                take(self._judge(raw))
        self._pending = self._cut_at_begins(rest, found)
        if len(self._pending) > LONGEST_LINE:
            found.append(_too_long(self._pending))
            self._pending, self._skipping = b"", True
        return found

    def _judge(self, raw: bytes) -> WireLine | WireFault:
        """Judge a stretch in full, and remember the layout of a data line."""
        line = read_line(raw)
        if isinstance(line, WireLine) and _may_stand_for_others(line):
            if len(self._layouts) >= MOST_LAYOUTS:
                self._layouts.clear()
            body, _, check = raw.partition(b"*")
            self._layouts[body.translate(_DIGITS_ALIKE)] = _layout(line.keys, body, check)
        return line

    def _resync(self, buffer: bytes) -> bytes:
        """Pass over bytes up to the next "$" or past the next LF."""
        found = _RESYNC.search(buffer)
        if found is None:
            return b""
        self._skipping = False
        return buffer[found.start() :] if found[0] == b"$" else buffer[found.end() :]

    @staticmethod
    def _cut_at_begins(stretch: bytes, found: list[WireLine | WireFault]) -> bytes:
        """Report every part that a "$" cut off, and return the last one, which is still whole."""
        head, *begun = stretch.split(b"$")
        if not begun:
            return stretch
        cut = [head, *(b"$" + part for part in begun[:-1])]
        found += [_broken_off(raw) for raw in cut if raw not in _EMPTY]
        return b"$" + begun[-1]
