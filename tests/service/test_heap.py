"""The C library's own account of its heaps, after threads and large arrays came and went."""

from __future__ import annotations

import sys

import pytest

from studiowatch.service import heap
from studiowatch.service.heap import ARENAS, give_back, settle_heap

from .heap_account import told_by

PROGRAM = """
import ctypes, os, sys, tempfile, threading
import numpy as np
if "settled" in sys.argv:
    from studiowatch.service.heap import settle_heap
    assert settle_heap()
c = ctypes.CDLL(None)
c.malloc.restype, c.malloc.argtypes = ctypes.c_void_p, [ctypes.c_size_t]
gate = threading.Barrier(17)
def hold():
    c.malloc(1000)
    gate.wait()
threads = [threading.Thread(target=hold) for _ in range(16)]
for thread in threads:
    thread.start()
gate.wait()
c.fopen.restype = ctypes.c_void_p
c.malloc_info.argtypes, c.fclose.argtypes = [ctypes.c_int, ctypes.c_void_p], [ctypes.c_void_p]
with tempfile.NamedTemporaryFile() as kept:
    told = c.fopen(kept.name.encode(), b"w")
    c.malloc_info(0, told)
    c.fclose(told)
    print(kept.read().decode().count("<heap nr="))
"""


def arenas(*words: str) -> float:
    """Return in how many heaps sixteen threads of a new program found room, by malloc_info(3)."""
    return told_by(PROGRAM, *words)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the GNU C library's own")
def test_that_threads_share_few_heaps() -> None:
    assert arenas() > ARENAS
    assert arenas("settled") <= ARENAS


RIDDLED = """
import ctypes, os
from pathlib import Path
from studiowatch.service.heap import give_back
def resident_MB():
    return int(Path("/proc/self/statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6
c = ctypes.CDLL(None)
c.malloc.restype, c.malloc.argtypes, c.free.argtypes = ctypes.c_void_p, [ctypes.c_size_t], [ctypes.c_void_p]
pieces = [c.malloc(20_000) for _ in range(4_000)]
for piece in pieces:
    ctypes.memset(piece, 1, 20_000)
for at, piece in enumerate(pieces):
    if at % 100:
        c.free(piece)
held = resident_MB()
assert give_back()
print(held - resident_MB())
"""


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the GNU C library's own")
def test_that_what_was_freed_between_pieces_that_stay_is_given_back() -> None:
    assert told_by(RIDDLED) > 0.8 * 80.0  # MB of the 80 that were freed but for one in a hundred


def test_that_another_system_is_left_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(heap, "_gnu", heap._gnu.__wrapped__)
    monkeypatch.setattr(sys, "platform", "win32")
    assert not settle_heap()
    assert not give_back()
