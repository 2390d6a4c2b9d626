"""Which lines never came, and when the board started again: a pure reduction over checked lines."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from studiowatch.board.wire import Kind, WireLine

UPTIME_WRAP_MS = 2**32  # the board counts milliseconds in 32 bits: the wire format
LONGEST_STEP_MS = 60_000  # between two numbered lines of a board that did not restart: assumption
NUMBER_WRAPS = (2**16, 2**32)  # a sketch counts its lines in an unsigned int of 16 or 32 bits
LONGEST_GAP = 86_400  # lines, a day at one a second: a longer leap is another numbering, not lost lines; assumption
LONGEST_GAP_OVER_WRAP = 600  # lines, ten minutes at one a second: what fell further started again; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Sequence:
    """Where the board's numbering stands.

    Attributes
    ----------
    number : int or None
        ``n`` of the last numbered line; -1 after a restart that only the hello told; None before any.
    uptime_ms : int or None
        ``u`` of the last line, 0 to 2^32 - 1 ms.
    boot : tuple of str or None
        ``id`` and ``b`` of the last hello; None if not known, or out of date since a restart.
    """

    number: int | None = None
    uptime_ms: int | None = None
    boot: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """What one line told about the lines before it: `lost` never came, `reset` if the board started again."""

    lost: int = 0
    reset: bool = False


def follow(seen: Sequence, line: WireLine) -> tuple[Sequence, Step]:
    """Advance the numbering by one line.

    A gap in ``n`` is lost lines. ``n`` or ``u`` falling, ``b`` changing, or ``n`` leaping by more than `LONGEST_GAP`
    is a restart, after which the lines numbered before this one are lost too, if they are no more than that. ``u``
    passing 2^32, or ``n`` passing 2^16 or 2^32, is no restart.
    """
    if line.kind is Kind.HELLO:
        return _follow_hello(seen, line)
    fields = line.fields
    number, uptime_ms = _count(fields, "n"), _count(fields, "u")
    steps = _steps(seen.number, number)
    if steps is None or _uptime_fell(seen, uptime_ms, steps):
        return Sequence(number=number, uptime_ms=uptime_ms), Step(lost=_lost_before(number), reset=True)
    now = Sequence(
        number=seen.number if number is None else number,
        uptime_ms=seen.uptime_ms if uptime_ms is None else uptime_ms,
        boot=seen.boot,
    )
    return now, Step(lost=max(steps - 1, 0))


def _follow_hello(seen: Sequence, line: WireLine) -> tuple[Sequence, Step]:
    boots = line.fields.get("b")
    if boots is None:
        return seen, Step()
    boot = (line.fields.get("id", ""), boots)
    if seen.boot is not None and boot != seen.boot:
        return Sequence(number=-1, boot=boot), Step(reset=True)
    return Sequence(number=seen.number, uptime_ms=seen.uptime_ms, boot=boot), Step()


def _steps(before: int | None, number: int | None) -> int | None:
    """Return how many lines on `number` is, 0 if that cannot be told, or None if another numbering began."""
    if before is None or number is None:
        return 0
    if before < 0:
        return _lost_before(number) + 1
    if before <= number:
        return number - before if number - before <= LONGEST_GAP else None
    over_wrap = [number + wrap - before for wrap in NUMBER_WRAPS if before < wrap]
    return next((steps for steps in over_wrap if steps <= LONGEST_GAP_OVER_WRAP), None)


def _uptime_fell(seen: Sequence, uptime_ms: int | None, steps: int) -> bool:
    if uptime_ms is None or seen.uptime_ms is None or uptime_ms >= seen.uptime_ms:
        return False
    forward_ms = (uptime_ms - seen.uptime_ms) % UPTIME_WRAP_MS
    return forward_ms > LONGEST_STEP_MS * max(steps, 1)


def _lost_before(number: int | None) -> int:
    """Return how many lines of a new start went before its first one heard; a leap tells nothing of them."""
    return number if number is not None and number <= LONGEST_GAP else 0


def _count(fields: Mapping[str, str], key: str) -> int | None:
    """Return a whole number that is not negative, or None if the field is not there or is something else."""
    text = fields.get(key, "")
    return int(text) if text.isdigit() else None
