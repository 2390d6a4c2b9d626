"""Which lines never came, and when the board started again: a pure reduction over checked lines."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.board.wire import Kind, WireLine

UPTIME_WRAP_MS = 2**32  # the board counts milliseconds in 32 bits: the wire format
LONGEST_STEP_MS = 60_000  # between two numbered lines of a board that did not restart: assumption


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

    A gap in ``n`` is lost lines. ``n`` or ``u`` falling, or ``b`` changing, is a restart, after which the lines
    numbered before this one are lost too. ``u`` passing 2^32 is no restart.
    """
    if line.kind is Kind.HELLO:
        return _follow_hello(seen, line)
    number, uptime_ms = _count(line, "n"), _count(line, "u")
    if _restarted(seen, number, uptime_ms):
        return Sequence(number=number, uptime_ms=uptime_ms), Step(lost=number or 0, reset=True)
    lost = 0 if number is None or seen.number is None else max(number - seen.number - 1, 0)
    now = Sequence(
        number=seen.number if number is None else number,
        uptime_ms=seen.uptime_ms if uptime_ms is None else uptime_ms,
        boot=seen.boot,
    )
    return now, Step(lost=lost)


def _follow_hello(seen: Sequence, line: WireLine) -> tuple[Sequence, Step]:
    boots = line.fields.get("b")
    if boots is None:
        return seen, Step()
    boot = (line.fields.get("id", ""), boots)
    if seen.boot is not None and boot != seen.boot:
        return Sequence(number=-1, boot=boot), Step(reset=True)
    return Sequence(number=seen.number, uptime_ms=seen.uptime_ms, boot=boot), Step()


def _restarted(seen: Sequence, number: int | None, uptime_ms: int | None) -> bool:
    steps = 1
    if number is not None and seen.number is not None:
        if number < seen.number:
            return True
        steps = max(number - seen.number, 1)
    if uptime_ms is None or seen.uptime_ms is None or uptime_ms >= seen.uptime_ms:
        return False
    forward_ms = (uptime_ms - seen.uptime_ms) % UPTIME_WRAP_MS
    return forward_ms > LONGEST_STEP_MS * steps


def _count(line: WireLine, key: str) -> int | None:
    """Return a whole number that is not negative, or None if the field is not there or is something else."""
    text = line.fields.get(key, "")
    return int(text) if text.isdigit() else None
