"""The open batch of readings: on disk within five seconds, and kept in memory while the disk refuses."""

from __future__ import annotations

import sys
import traceback
from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import partial
from itertools import islice

from studiowatch.room.readings import Reading
from studiowatch.service.disk import Disk
from studiowatch.service.ports import ReadingsLog
from studiowatch.speech.words import say

BATCH_S = 4.0  # s, age at which a batch is committed; looked at each second, so a power cut takes at most five
HELD_MOST = 200_000  # readings held in memory while the disk refuses: over two days at one a second
SLICE = 5_000  # readings in one transaction, so that many that waited do not hold up the watch


@dataclass(slots=True)
class Journal:
    """Collects readings and commits them; `now_s` is the monotonic clock, s.

    Attributes
    ----------
    dropped : int
        Readings given up because memory would have grown without end.
    set_aside : deque of Reading
        Readings that the log cannot hold, for a fault of ours; those behind them are written all the same.
    """

    log: ReadingsLog
    disk: Disk
    dropped: int = 0
    set_aside: deque[Reading] = field(default_factory=deque)
    _open: deque[Reading] = field(default_factory=deque)
    _since_s: float = 0.0
    _slice: int = SLICE

    @property
    def waiting(self) -> int:
        """How many readings wait for the disk."""
        return len(self._open)

    @property
    def trouble(self) -> str:
        """What became of readings that are not written and not merely waiting: one sentence each, or ""."""
        sentences = []
        if self.dropped:
            sentences.append(say("Readings lost because the disk refused for too long: {count}.", count=self.dropped))
        if self.set_aside:
            sentences.append(
                say(
                    "Readings that cannot be stored, through a fault of ours: {count}; they go to a room log "
                    "beside the records when studiowatch ends.",
                    count=len(self.set_aside),
                )
            )
        return " ".join(sentences)

    def add(self, reading: Reading, now_s: float) -> None:
        """Take a reading into the batch."""
        if not self._open:
            self._since_s = now_s
        if len(self._open) + len(self.set_aside) >= HELD_MOST:
            (self._open or self.set_aside).popleft()
            self.dropped += 1
        self._open.append(reading)

    def settle(self, now_s: float) -> None:
        """Commit the batch if it is due; of a long one only a slice, the next with the next call."""
        if self._open and now_s - self._since_s >= BATCH_S:
            self._write_slice(now_s)

    def flush(self, now_s: float) -> None:
        """Commit all there is, unless the disk refuses."""
        while self._open and self._write_slice(now_s):
            pass

    def left(self) -> Sequence[Reading]:
        """Return the readings that are not on disk, in the order of time."""
        return sorted((*self.set_aside, *self._open), key=lambda reading: reading.time_ms)

    def _write_slice(self, now_s: float) -> bool:
        """Write the oldest readings; return whether it is worth to go on. A reading at fault is narrowed down to."""
        batch = tuple(islice(self._open, self._slice))
        try:
            if not self.disk.attempt(partial(self.log.append, batch), now_s):
                return False
        except Exception:  # noqa: BLE001 - whatever is wrong with one reading must not keep the others off the disk
            if len(batch) > 1:
                self._slice = (len(batch) + 1) // 2
                return True
            traceback.print_exc(file=sys.stderr)
            self.set_aside.extend(batch)
            self._slice = SLICE
        for _ in batch:
            self._open.popleft()
        if not self._open:
            self._slice = SLICE
        return True
