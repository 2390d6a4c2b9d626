"""How the C library holds memory for a program that runs for months: else what was freed stays with it in pieces."""

from __future__ import annotations

import ctypes
import os
import sys
from functools import cache

# mallopt's names and numbers: GNU C library manual, "Malloc Tunable Parameters"; the numbers are those of its malloc.h
_TRIM_THRESHOLD, _MMAP_THRESHOLD, _ARENA_MAX = -1, -3, -8
ARENAS = 1  # heap that the threads share, as they share the interpreter; each would keep the most that it ever held
APART_BYTES = 160 * 1024  # an array of this size gets pages of its own, which go back at once; fixed, or it would grow
LEFT_BYTES = 1024 * 1024  # that a heap may keep at its end


@cache
def _gnu() -> ctypes.CDLL | None:
    """Return the GNU C library that the program runs with, or None with another."""
    if not sys.platform.startswith("linux"):
        return None
    try:
        is_gnu = bool(os.confstr("CS_GNU_LIBC_VERSION"))
    except (OSError, ValueError):  # another C library does not know the name
        return None
    return ctypes.CDLL(None) if is_gnu else None


def settle_heap() -> bool:
    """Set the C library up before any thread begins; return whether that is known to it: elsewhere nothing is done."""
    library = _gnu()
    if library is None:
        return False
    wanted = ((_ARENA_MAX, ARENAS), (_MMAP_THRESHOLD, APART_BYTES), (_TRIM_THRESHOLD, LEFT_BYTES))
    done = [int(library.mallopt(name, value)) for name, value in wanted]  # 1 if it did
    return all(done)


def give_back() -> bool:
    """Give whole freed pages back to the system, in the middle of heaps too; return whether there were any.

    See malloc_trim(3). It takes about a millisecond.
    """
    library = _gnu()
    return library is not None and bool(library.malloc_trim(ctypes.c_size_t(0)))
