"""How often the keeper takes what came and hands out what it sees: by who looks, and by what is due."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.snapshot import Snapshot

LOOK_S = 1.25  # s, longest time between two looks at the clock: a board that speaks each second brings the looks itself
TOGETHER = 2  # readings taken at once while nobody looks: to wake up for each costs more than to take it
CLOSELY_S = 2.5  # s between two snapshots of mere drift while one looks: every third reading of most boards
SOON_MS = 5_000  # ms before something falls due from which each reading is taken by itself, so that it is told in time
SELDOM_S = 60.0  # s between two snapshots while nobody looks and nothing happens


@dataclass(slots=True)
class Pace:
    """The keeper's pace.

    Attributes
    ----------
    closely : bool
        Whether one looks.
    latest : Snapshot or None
        What was handed out last, at the monotonic time `handed_s`, s; None before the first.
    """

    closely: bool = True
    latest: Snapshot | None = None
    handed_s: float | None = None

    def together(self, now_ms: int, *, is_stirred: bool) -> int:
        """Return how many readings may wait for one another: one where it matters in which second they are taken.

        That is where something falls due, or the air may be found to move (`is_stirred`): no warning waits for a pair.
        """
        is_alone = self.closely or is_stirred or self.latest is None or self.latest.is_due_within(SOON_MS, now_ms)
        return 1 if is_alone else TOGETHER

    def is_due(self, now_s: float, count: int) -> bool:
        """Return whether mere drift is to go out after `count` things came.

        As closely as one looks; and what one sees is brought up to date at the latest when nothing more comes.
        """
        if self.handed_s is None or (self.closely and not count):
            return True
        return now_s - self.handed_s >= (CLOSELY_S if self.closely else SELDOM_S)
