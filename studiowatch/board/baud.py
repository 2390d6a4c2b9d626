"""Which rate a board sends at: told by how much of what it sends is text."""

from __future__ import annotations

from collections.abc import Collection

from studiowatch.board.loose_lines import PRINTABLE_SHARE, decoded, printable_share

RATES = (9600, 115_200, 57_600, 38_400, 19_200, 4800, 2400, 230_400, 74_880)  # Bd, commonest first: from memory
JUDGED_BYTES = 64  # fewer bytes may be one damaged line: assumption


def is_wrong_rate(data: bytes) -> bool:
    """Tell whether `data`, the newest bytes of a port, were read at another rate than they were sent.

    Fewer than 90 % printable characters say so. Too few bytes say nothing: the answer is then no.
    """
    return len(data) >= JUDGED_BYTES and printable_share(decoded(data)) < PRINTABLE_SHARE


def rates_to_try(tried: Collection[int] = ()) -> tuple[int, ...]:
    """Return the rates, Bd, to try next, in order, without those that were `tried`."""
    return tuple(rate for rate in RATES if rate not in tried)
