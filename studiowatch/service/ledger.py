"""All that goes to disk: readings in batches, records one by one, hours that are over packed, and what was refused."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import partial

from studiowatch.room.readings import Reading
from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.journal import Journal
from studiowatch.service.leavings import Leavings
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.speech.words import in_turn, say
from studiowatch.studio.pieces import Piece

SEAL_EVERY_S = 600.0  # s between looks for an hour that may be packed
SEAL_AGE_MS = 7_200_000  # ms, hours this far back are packed: late readings are not expected any more
LAST_TRIES = 8  # at the end, so that another program's short lock loses nothing; each waits as long as the store does


@dataclass(slots=True)
class Ledger:
    """Keeps what must be written until the disk takes it. `now_s` is the monotonic clock, s; `now_ms` is UTC, ms."""

    log: ReadingsLog
    records: Records
    disk: Disk = field(default_factory=Disk)
    _journal: Journal = field(init=False)
    _noted_dropped: int = 0
    _sealed_s: float | None = None
    _unpacked: bool = False

    def __post_init__(self) -> None:
        self._journal = Journal(log=self.log, disk=self.disk)

    @property
    def trouble(self) -> str:
        """What is wrong with the disk and what became of readings, or ""."""
        return in_turn(self.disk.trouble, self._journal.trouble)

    def add(self, reading: Reading, now_s: float) -> None:
        """Take a reading."""
        self._journal.add(reading, now_s)

    def note(self, time_ms: int, kind: str, text: str) -> None:
        """Take a fact about the log."""
        self.disk.later(partial(self.records.note, time_ms, kind, text))

    def keep(self, pieces: Sequence[Piece]) -> None:
        """Take pieces as they stand now."""
        if pieces:
            self.disk.later(partial(self.records.save_pieces, tuple(pieces)))

    def flush(self, now_s: float) -> None:
        """Put the readings that wait on disk now, unless it refuses."""
        self._journal.flush(now_s)

    def catch_up(self, now_s: float) -> None:
        """Put on disk what waits, before something that is to stand behind it.

        Raises
        ------
        Refused
            If the disk does not take it.
        """
        if not self.disk.catch_up(now_s):
            raise Refused(self.disk.trouble)

    def put(self, reading: Reading, now_s: float) -> None:
        """Put one reading on disk at once: it is there on return.

        Raises
        ------
        Refused, StoreTrouble
            If the disk does not take it.
        """
        self.catch_up(now_s)
        self.log.append([reading])

    def write(self, now_ms: int, now_s: float, *, packs: bool = True) -> None:
        """Put on disk what is due, and with `packs` an old hour in the form in which it stays."""
        self.disk.settle(now_s)
        self._journal.settle(now_s)
        if not self.disk.trouble and self._journal.dropped > self._noted_dropped:
            lost = self._journal.dropped - self._noted_dropped
            self._noted_dropped = self._journal.dropped
            self.note(now_ms, "dropped", say("The disk refused for too long: readings lost: {count}.", count=lost))
        if self._sealed_s is None or now_s - self._sealed_s >= SEAL_EVERY_S:
            self._sealed_s = now_s
            self._unpacked = True
        if self._unpacked and packs:
            self.disk.attempt(partial(self._pack_hour, now_ms - SEAL_AGE_MS), now_s)

    def _pack_hour(self, before_ms: int) -> None:
        """Pack the oldest hour that is over: one with each `write`, so that many of them do not hold up the watch."""
        self._unpacked = False  # if the disk refuses, the next look for an hour tries again
        self._unpacked = self.log.seal(before_ms, most_hours=1) > 0

    def close(self, now_s: float) -> None:
        """Put all that waits on disk, with some patience; see `leavings`."""
        for _ in range(LAST_TRIES):
            all_records = self.disk.catch_up(now_s)
            self.disk.try_again()
            self._journal.flush(now_s)
            if all_records and not self._journal.waiting:
                return

    def leavings(self) -> Leavings:
        """Return what is not on disk."""
        return Leavings(readings=self._journal.left(), records=self.disk.waiting, trouble=self.disk.trouble)
