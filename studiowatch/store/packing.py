"""Columns of numbers as bytes: differences, bytes of equal weight together, zlib. Every bit comes back.

Two earlier forms are still read: blobs that begin with the first byte of a zlib stream, 0x78, hold plain differences,
and those that begin with `_FOLDED` hold all eight bytes of each.
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

Integers = NDArray[np.int64]
Numbers = NDArray[np.float64]

_ZLIB_LEVEL = 6  # 0.3 ms for an hour at 1 Hz
_INT64_BYTES = 8
_WIDTHS = (1, 2, 4, _INT64_BYTES)  # bytes of a whole number in numpy
_FOLDED = b"\x01"  # in front of differences whose sign is in the lowest bit
_TRIMMED = b"\x02"  # in front of such differences without the heavy bytes that are all zero; next is how many stay
_MOST_DECIMALS = 6  # no sensor prints more
_EXACT_BELOW = 2.0**53  # largest run of integers that a float64 holds exactly, IEEE 754
_AS_BITS = 255  # in the place of the decimals: the numbers' own bits follow


def pack_integers(values: Integers) -> bytes:
    """Return the (n,) int64 `values` as bytes.

    The sign of each difference is folded into its lowest bit, so that the heavy bytes of small ones are all zero. Those
    are left out: to unpack them took longer than all the rest.
    """
    differences = np.diff(values, prepend=np.int64(0))
    folded = (differences << 1) ^ (differences >> 63)
    shuffled = folded.astype("<i8").view(np.uint8).reshape(-1, _INT64_BYTES).T
    used = np.flatnonzero(shuffled.any(axis=1))
    kept = int(used[-1]) + 1 if used.size else 1
    packer = zlib.compressobj(_ZLIB_LEVEL, strategy=zlib.Z_FILTERED)
    return _TRIMMED + bytes([kept]) + packer.compress(shuffled[:kept].tobytes()) + packer.flush()


def unpack_integers(data: bytes) -> Integers:
    """Return the (n,) int64 that `pack_integers` was given."""
    if data.startswith(_TRIMMED):
        differences = _unfold(_unshuffle(data[2:], data[1]))
    elif data.startswith(_FOLDED):
        differences = _unfold(_unshuffle(data[1:], _INT64_BYTES))
    else:
        differences = _unshuffle(data, _INT64_BYTES).view("<i8")
    return np.cumsum(differences, dtype=np.int64)


def _unshuffle(stream: bytes, kept: int) -> NDArray[np.unsignedinteger]:
    """Return the (n,) numbers, of the narrowest type, whose `kept` bytes the stream holds, each weight together."""
    if not 1 <= kept <= _INT64_BYTES:
        raise ValueError(f"{kept} bytes for a whole number; a packed column has 1 to {_INT64_BYTES}")  # not said
    shuffled = np.frombuffer(zlib.decompress(stream), dtype=np.uint8).reshape(kept, -1)
    width = min(width for width in _WIDTHS if width >= kept)
    whole = np.zeros((shuffled.shape[1], width), dtype=np.uint8)
    whole[:, :kept] = shuffled.T
    return whole.reshape(-1).view(f"<u{width}")


def _unfold(folded: NDArray[np.unsignedinteger]) -> NDArray[np.signedinteger]:
    return ((folded >> 1) ^ -(folded & 1)).view(f"<i{folded.itemsize}")


def pack_numbers(values: Numbers) -> bytes:
    """Return the (n,) float64 `values` as bytes; NaN stands for "not read" and comes back as NaN."""
    present = ~np.isnan(values)
    decimals, integers = _as_integers(values[present])
    mask = zlib.compress(np.packbits(present).tobytes(), _ZLIB_LEVEL)
    return join_parts([struct.pack("<BI", decimals, values.size), mask, pack_integers(integers)])


def unpack_numbers(data: bytes) -> Numbers:
    """Return the (n,) float64 that `pack_numbers` was given."""
    head, mask, body = split_parts(data)
    decimals, count = struct.unpack("<BI", head)
    integers = unpack_integers(body)
    there = integers.view(np.float64) if decimals == _AS_BITS else integers / 10.0**decimals
    if there.size == count:
        return there
    values = np.full(count, np.nan)
    values[np.unpackbits(np.frombuffer(zlib.decompress(mask), dtype=np.uint8), count=count).astype(bool)] = there
    return values


def join_parts(parts: Sequence[bytes]) -> bytes:
    """Return `parts` as one, each behind its length."""
    return b"".join(struct.pack("<I", len(part)) + part for part in parts)


def split_parts(data: bytes) -> list[bytes]:
    """Return the parts that `join_parts` was given."""
    parts = []
    at = 0
    while at < len(data):
        (length,) = struct.unpack_from("<I", data, at)
        parts.append(data[at + 4 : at + 4 + length])
        at += 4 + length
    return parts


def _as_integers(values: Numbers) -> tuple[int, Integers]:
    """Return the fewest decimals that give every bit of `values` back, and the values times ten to that power."""
    bits = values.view(np.int64)
    for decimals in range(_MOST_DECIMALS + 1):
        power = 10.0**decimals
        with np.errstate(over="ignore"):
            scaled = np.rint(values * power)
        if np.all(np.abs(scaled) < _EXACT_BELOW):
            integers = scaled.astype(np.int64)
            if np.array_equal((integers / power).view(np.int64), bits):
                return decimals, integers
    return _AS_BITS, bits
