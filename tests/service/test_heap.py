"""The C library's own account of its heaps, after threads and large arrays came and went."""

from __future__ import annotations

import subprocess
import sys

import pytest

from studiowatch.service.heap import ARENAS, settle_heap

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


def arenas(*words: str) -> int:
    """Return in how many heaps sixteen threads of a new program found room, by malloc_info(3)."""
    done = subprocess.run([sys.executable, "-c", PROGRAM, *words], capture_output=True, text=True, check=True)
    return int(done.stdout)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the GNU C library's own")
def test_that_threads_share_few_heaps() -> None:
    assert arenas() > ARENAS
    assert arenas("settled") <= ARENAS


def test_that_another_system_is_left_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "win32")
    assert not settle_heap()
