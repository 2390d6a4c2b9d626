"""A folder beside the records through which a call asks the watch that is on: one file a letter, one an answer."""

from __future__ import annotations

import json
import os
import time
import uuid
from collections.abc import Callable
from concurrent.futures import Future
from functools import partial
from pathlib import Path
from stat import S_ISREG

from studiowatch.service.commands import Command, Refused
from studiowatch.service.letters import NoLetter, read, written
from studiowatch.speech.words import say

ANSWER_S = 20.0  # s that a call waits for: the watch looks each second, but may be drying twenty pieces
STALE_S = 60.0  # s after which nobody waits for an answer any more
_COARSE_S = 4.0  # s, twice the grain of the coarsest times that a folder may have
_LOOK_S = 0.1  # s between two looks for the answer
_LETTER, _ANSWER, _UNFINISHED = ".letter", ".answer", ".unfinished"
_LONGEST = 200_000  # characters of a letter: far more than the longest notes


class Letterbox:
    """The side of the watch.

    Parameters
    ----------
    folder : Path
        Where letters are put; it need not be there.
    wall_s : callable
        Seconds since 1970, as files have them.
    """

    def __init__(self, folder: Path, wall_s: Callable[[], float] = time.time) -> None:
        self._folder, self._wall_s = folder, wall_s
        self._swept = False
        self._changed_s: float | None = None

    def collect(self, submit: Callable[[Command], Future[str]]) -> int:
        """Take all letters, have `submit` carry each out, and put its answer beside; return how many there were.

        A letter is taken away before it is carried out: none is carried out twice. What is no file is no letter.
        """
        try:
            if not self._has_changed():
                return 0
            letters = self._letters()
        except (FileNotFoundError, NotADirectoryError):
            return 0
        count = 0
        for path in letters:
            try:
                is_stale = self._wall_s() - path.stat().st_mtime > STALE_S
                text = path.read_text("utf-8", errors="replace")[:_LONGEST]
                path.unlink()
            except OSError:
                continue  # taken back by whoever waited for it
            if not is_stale:
                count += 1
                self._carry_out(path, text, submit)
        if letters:
            self._changed_s = None  # one that could not be taken is tried again
        if count or not self._swept:
            self._sweep()
        return count

    def _has_changed(self) -> bool:
        """Return whether a file may have come since the last look: to list the folder each second costs far more.

        Times of folders are coarse: what changed just now is looked at once more.
        """
        before, self._changed_s = self._changed_s, self._folder.stat().st_mtime
        return self._changed_s != before or 0.0 <= self._wall_s() - self._changed_s < _COARSE_S

    def _letters(self) -> list[Path]:
        """Return the letters in the order of their names."""
        with os.scandir(self._folder) as found:
            names = [one.name for one in found if one.name.endswith(_LETTER) and one.is_file(follow_symlinks=False)]
        return [self._folder / name for name in sorted(names)]

    def _sweep(self) -> None:
        """Throw away what nobody fetches any more: an answer whose call was ended, and what was never finished."""
        self._swept = True
        for path in self._folder.iterdir():
            if path.suffix in (_ANSWER, _UNFINISHED) and self._is_stale(path):
                path.unlink(missing_ok=True)

    def _is_stale(self, path: Path) -> bool:
        """Return whether a file has lain here for long; one that its writer has just named otherwise is gone."""
        try:
            found = path.lstat()
        except FileNotFoundError:
            return False
        return S_ISREG(found.st_mode) and self._wall_s() - found.st_mtime > STALE_S

    def _carry_out(self, path: Path, text: str, submit: Callable[[Command], Future[str]]) -> None:
        answered = partial(_answer, path.with_suffix(_ANSWER))
        try:
            command = read(text)
        except NoLetter as fault:
            refused: Future[str] = Future()
            refused.set_exception(Refused(str(fault)))
            answered(refused)
            return
        submit(command).add_done_callback(answered)


def ask(folder: Path, command: Command, *, wait_s: float = ANSWER_S) -> str:
    """Ask the watch that is on to carry `command` out; return the key it answers with.

    Raises
    ------
    Refused
        With one sentence if it refuses, or does not answer.
    OSError
        If the letter cannot be written.
    """
    folder.mkdir(mode=0o700, exist_ok=True)
    letter = folder / f"{uuid.uuid4().hex}{_LETTER}"
    _write(letter, written(command))
    answer = letter.with_suffix(_ANSWER)
    until_s = time.monotonic() + wait_s
    while not answer.exists():
        if time.monotonic() > until_s:
            raise Refused(_unanswered(letter))
        time.sleep(_LOOK_S)
    told = json.loads(answer.read_text("utf-8"))
    answer.unlink()
    if "refused" in told:
        raise Refused(str(told["refused"]))
    return str(told["done"])


def _unanswered(letter: Path) -> str:
    try:
        letter.unlink()
    except FileNotFoundError:
        return say("The watch took what was asked and has not answered yet; look with `studiowatch piece list`.")
    return say("What has the records open does not take anything; nothing was done: end it, and ask again.")


def _answer(path: Path, future: Future[str]) -> None:
    fault = future.exception()
    told = {"done": future.result()} if fault is None else {"refused": str(fault)}
    try:
        _write(path, json.dumps(told))
    except OSError:
        return  # whoever asked says that there was no answer


def _write(path: Path, text: str) -> None:
    unfinished = path.with_name(f"{path.name}{_UNFINISHED}")
    unfinished.touch(mode=0o600)
    unfinished.write_text(text, "utf-8")
    unfinished.replace(path)
