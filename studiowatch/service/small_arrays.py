"""How numpy holds the memory of small arrays, for a program that runs for months."""

from __future__ import annotations

import numpy as np

# NBUCKETS and NCACHE of numpy's core/src/multiarray/alloc.c: below which size what is freed is kept, how many of each
SMALL_BYTES, OF_EACH = 1024, 7


def gather_small_arrays() -> None:
    """Have numpy take at once, side by side, what it keeps of small arrays for the next of their size: 3.5 MB.

    Else it takes that over months, as sizes come up that were not asked for before: each from among what is freed soon
    after, whose page it then holds. It takes about five milliseconds.
    """
    for size in range(1, SMALL_BYTES):
        together = [np.empty(size, dtype=np.uint8) for _ in range(OF_EACH)]
        together.clear()
