"""How the C library holds memory for a program that runs for months: else what was freed stays with it in pieces."""

from __future__ import annotations

import ctypes
import os
import sys

# mallopt's names and numbers: GNU C library manual, "Malloc Tunable Parameters"; the numbers are those of its malloc.h
_TRIM_THRESHOLD, _MMAP_THRESHOLD, _ARENA_MAX = -1, -3, -8
ARENAS = 2  # heaps that the threads share; of eight a core, each would keep the most that it ever held
APART_BYTES = 512 * 1024  # an array of this size gets pages of its own, which go back at once; fixed, or it would grow
LEFT_BYTES = 1024 * 1024  # that a heap may keep at its end


def settle_heap() -> bool:
    """Set the C library up before any thread begins; return whether that is known to it: elsewhere nothing is done."""
    if not sys.platform.startswith("linux"):
        return False
    try:
        is_gnu = bool(os.confstr("CS_GNU_LIBC_VERSION"))
    except (OSError, ValueError):  # another C library does not know the name
        return False
    if not is_gnu:
        return False
    mallopt = ctypes.CDLL(None).mallopt
    wanted = ((_ARENA_MAX, ARENAS), (_MMAP_THRESHOLD, APART_BYTES), (_TRIM_THRESHOLD, LEFT_BYTES))
    done = [int(mallopt(name, value)) for name, value in wanted]  # 1 if it did
    return all(done)
