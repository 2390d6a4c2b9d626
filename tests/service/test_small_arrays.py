"""The C library's own account of what numpy keeps of small arrays that came and went."""

from __future__ import annotations

import subprocess
import sys

import pytest

PROGRAM = """
import ctypes, sys
import numpy as np
from studiowatch.service.small_arrays import gather_small_arrays
class Held(ctypes.Structure):
    _fields_ = [(name, ctypes.c_size_t) for name in
        ("arena", "ordblks", "smblks", "hblks", "hblkhd", "usmblks", "fsmblks", "uordblks", "fordblks", "keepcost")]
c = ctypes.CDLL(None)
c.mallinfo2.restype = Held
if "gathered" in sys.argv:
    gather_small_arrays()
early = c.mallinfo2().uordblks
for size in range(1, 2048):
    arrays = [np.empty(size, dtype=np.uint8) for _ in range(20)]
    arrays.clear()
print(c.mallinfo2().uordblks - early)
"""


def kept(*words: str) -> int:
    """Return how many bytes stay with a new program after arrays of all small sizes came and went, by mallinfo(3)."""
    done = subprocess.run([sys.executable, "-c", PROGRAM, *words], capture_output=True, text=True, check=True)
    return int(done.stdout)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the GNU C library's own")
def test_that_what_was_gathered_at_the_start_is_all_that_small_arrays_ever_keep() -> None:
    """By hand: seven of each size from 1 to 1023 bytes are 3.7 MB. The C library keeps 0.2 MB for a thread."""
    assert kept() > 3_600_000
    assert kept("gathered") < 400_000
