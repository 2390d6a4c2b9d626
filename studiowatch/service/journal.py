"""The open batch of readings: on disk within five seconds, and kept in memory while the disk refuses."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass, field

from studiowatch.room.readings import Reading
from studiowatch.service.ports import ReadingsLog
from studiowatch.store.trouble import StoreTrouble

BATCH_S = 4.0  # s, age at which a batch is committed; looked at each second, so a power cut takes at most five
RETRY_S = 5.0  # s between attempts while the disk refuses
HELD_MOST = 200_000  # readings held in memory while the disk refuses: over two days at one a second


@dataclass(slots=True)
class Journal:
    """Collects readings and commits them; `now_s` is the monotonic clock, s.

    Attributes
    ----------
    trouble : str
        One sentence while the disk refuses, else "".
    dropped : int
        Readings given up because memory would have grown without end.
    """

    log: ReadingsLog
    trouble: str = ""
    dropped: int = 0
    _open: deque[Reading] = field(default_factory=deque)
    _since_s: float = 0.0
    _retry_s: float = 0.0

    def add(self, reading: Reading, now_s: float) -> None:
        """Take a reading; commit if the batch is old."""
        if not self._open:
            self._since_s = now_s
        if len(self._open) >= HELD_MOST:
            self._open.popleft()
            self.dropped += 1
        self._open.append(reading)
        self.settle(now_s)

    def settle(self, now_s: float) -> None:
        """Commit the batch if it is due."""
        if self._open and now_s - self._since_s >= BATCH_S and now_s >= self._retry_s:
            self.flush(now_s)

    def flush(self, now_s: float) -> None:
        """Commit the batch now; on trouble keep it and say so."""
        if not self._open:
            return
        try:
            self.log.append(tuple(self._open))
        except StoreTrouble as trouble:
            self.trouble = str(trouble)
            self._retry_s = now_s + RETRY_S
            return
        self._open.clear()
        self.trouble = ""
        self._retry_s = 0.0
