"""What the C library says of its heap in a program of its own, for the tests that count what stays there."""

from __future__ import annotations

import subprocess
import sys

IN_USE = """
import ctypes
class Held(ctypes.Structure):
    _fields_ = [(name, ctypes.c_size_t) for name in
        ("arena", "ordblks", "smblks", "hblks", "hblkhd", "usmblks", "fsmblks", "uordblks", "fordblks", "keepcost")]
c = ctypes.CDLL(None)
c.mallinfo2.restype = Held
def in_use():
    return c.mallinfo2().uordblks
"""
"""The beginning of such a program: `in_use` returns the bytes in use by mallinfo(3), without mapped arrays."""


def told_by(program: str, *words: str) -> float:
    """Return the one number that `program` prints when it is called with `words`."""
    done = subprocess.run([sys.executable, "-c", program, *words], capture_output=True, text=True, check=True)
    return float(done.stdout)
