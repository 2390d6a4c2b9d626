"""The C library's own account of what numpy keeps of small arrays that came and went."""

from __future__ import annotations

import sys

import pytest

from .heap_account import IN_USE, told_by

PROGRAM = (
    IN_USE
    + """
import sys
import numpy as np
from studiowatch.service.small_arrays import gather_small_arrays
if "gathered" in sys.argv:
    gather_small_arrays()
early = in_use()
for size in range(1, 2048):
    arrays = [np.empty(size, dtype=np.uint8) for _ in range(20)]
    arrays.clear()
print(in_use() - early)
"""
)


def kept(*words: str) -> float:
    """Return how many bytes stay with a new program after arrays of all small sizes came and went."""
    return told_by(PROGRAM, *words)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the GNU C library's own")
def test_that_what_was_gathered_at_the_start_is_all_that_small_arrays_ever_keep() -> None:
    """By hand: seven of each size from 1 to 1023 bytes are 3.7 MB. The C library keeps 0.2 MB for a thread."""
    assert kept() > 3_600_000
    assert kept("gathered") < 400_000
