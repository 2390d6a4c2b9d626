"""Once a day, beside the watch and without holding it up: a backup, and the old ones cleared away."""

from __future__ import annotations

import sys
import threading
import traceback
from pathlib import Path

from studiowatch.service.ports import Clock
from studiowatch.speech.words import say
from studiowatch.store.folder import StudioFolder
from studiowatch.store.rotation import DAILY, backup_studio, daily_backups, rotate, set_apart
from studiowatch.store.trouble import StoreTrouble

DAY_MS = 86_400_000
FIRST_LOOK_S = 60.0  # s, so that a start is not slowed
LOOK_S = 600.0  # s between two looks at the clock
JOIN_S = 60.0  # s, longer than any copy takes; a thread that lives on after it is a fault


class DailyBackup:
    """Keeps the daily backups of one studio, in its own folder ``backups``, on a thread of its own.

    Attributes
    ----------
    trouble : str
        Why the last backup could not be made, or "".
    """

    def __init__(self, folder: StudioFolder, clock: Clock) -> None:
        self.trouble = ""
        self._folder = folder
        self._clock = clock
        self._ended = threading.Event()
        self._thread = threading.Thread(target=self._run, name="daily-backup", daemon=True)

    @property
    def into(self) -> Path:
        """Where the backups lie."""
        return self._folder.backups

    def start(self) -> None:
        """Begin to look at the clock."""
        self._thread.start()

    def stop(self) -> None:
        """End, after the backup that is being made; raise if the thread lives on."""
        self._ended.set()
        self._thread.join(JOIN_S)
        if self._thread.is_alive():
            raise RuntimeError("the backup's thread did not end")  # not said

    def look(self) -> None:
        """Make a backup if none was made within the last day, and clear the old ones away.

        One that is dated in the future, by a clock that was wrong, does not count, nor once its time has come.
        """
        now_ms = self._clock.utc_ms()
        try:
            set_apart(self.into, now_ms)
            moments_ms = [moment.timestamp() * 1000 for moment, _ in daily_backups(self.into)]
            if any(0 <= now_ms - moment_ms < DAY_MS for moment_ms in moments_ms):
                return
            backup_studio(self._folder, self.into, now_ms, kind=DAILY)
            rotate(self.into)
        except StoreTrouble as trouble:
            self.trouble = say("The daily backup failed: {trouble}", trouble=trouble)
        else:
            self.trouble = ""

    def _run(self) -> None:
        wait_s = FIRST_LOOK_S
        while not self._ended.wait(wait_s):
            wait_s = LOOK_S
            try:
                self.look()
            except Exception as fault:  # noqa: BLE001 - the thread's top
                traceback.print_exc(file=sys.stderr)
                self.trouble = say("The daily backup failed, through a fault of ours: {fault}.", fault=fault)
