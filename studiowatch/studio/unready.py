"""A coat that was found tacky, or milky, last: which of the model's times stand beside that, and when to test again."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.studio.pieces import Finding

AGAIN_SHARE = 0.1  # of its age, by which a coat is to be older than when it was found not dry; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Unready:
    """The last test of a coat, where that found it tacky or milky still.

    It says what the coat was like at one moment. A time of the model that lies well after it, with all that the model
    learnt from it, stands; one that does not is no better known than the test that speaks against it: a new test
    decides then.

    Attributes
    ----------
    found_ms, again_ms : int
        UTC ms of the test, and from which a new one says something new: two of the model's blurs of an answer
        (`studiowatch.coats.learning.EDGE`) later, as shares of the coat's age.
    """

    finding: Finding
    found_ms: int
    again_ms: int

    @classmethod
    def of(cls, finding: Finding, found_ms: int, *, laid_ms: int) -> Unready:
        """Return what `finding` at `found_ms` says of a coat that was laid at `laid_ms`, both UTC ms."""
        again_ms = found_ms + round(AGAIN_SHARE * (found_ms - laid_ms))
        return cls(finding=finding, found_ms=found_ms, again_ms=again_ms)

    def told_ms(self, ready_ms: int | None) -> int | None:
        """Return the modelled time of being ready, UTC ms, or None where a new test must come first."""
        return ready_ms if ready_ms is not None and ready_ms > self.again_ms else None

    def likely_ms(self, early_ms: int | None) -> int | None:
        """Return an early end of a range, UTC ms, no earlier than the new test."""
        return None if early_ms is None else max(early_ms, self.again_ms)
