"""Backups of a whole studio, each a folder that opens like the studio itself, and which of them are kept."""

from __future__ import annotations

import shutil
from collections.abc import Iterable, Iterator, Sequence
from datetime import UTC, datetime
from pathlib import Path

from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.store.backup import backup
from studiowatch.store.folder import StudioFolder
from studiowatch.store.private import copy_file_private, copy_private
from studiowatch.store.quiet import log_of
from studiowatch.store.trouble import StoreFull, StoreRefused, StoreTrouble

DAYS = 7  # days of which the newest daily backup is kept
WEEKS = 4  # weeks of which the newest daily backup is kept
DAILY, BY_HAND = "daily-", "backup-"
AHEAD = "ahead-"  # a daily one that was dated later than the clock once: one of both was wrong
_ROTATED = (DAILY, AHEAD)  # no other is ever deleted
_STAMP = "%Y%m%dT%H%M%SZ"
_UNFINISHED = ".unfinished"
_ROOM = 2  # times the records' size that must be free: a backup must not fill the disk that the log is written to


def backup_studio(folder: StudioFolder, into: Path, now_ms: int, *, kind: str = BY_HAND) -> StudioFolder:
    """Copy records, readings, data sheets, photos and what is known of boards' columns into a new folder in `into`.

    The watch may go on meanwhile.

    Raises
    ------
    StoreRefused
        If there are no records, or a backup of this second.
    StoreFull
        If the disk has no room for it.
    StoreTrouble
        If it could not be written, or did not pass its check; nothing of it is left.
    """
    if not folder.database.exists():
        raise StoreRefused(say("There are no records in {path}; there is nothing to back up.", path=folder.path))
    target = StudioFolder(path=into / (kind + datetime.fromtimestamp(now_ms / 1000, UTC).strftime(_STAMP)))
    if target.path.exists():
        raise StoreRefused(say("{path} is there already; try again in a second.", path=target.path))
    unfinished = StudioFolder(path=target.path.with_name(f"{target.path.name}{_UNFINISHED}"))
    try:
        into.mkdir(mode=0o700, parents=True, exist_ok=True)
        _refuse_full(folder, into)
        shutil.rmtree(unfinished.path, ignore_errors=True)
        unfinished.path.mkdir(mode=0o700)
        backup(folder.database, unfinished.database)
        if folder.sheets.is_dir():
            copy_private(folder.sheets.iterdir(), unfinished.sheets)
        if folder.photos.is_dir():
            copy_private(_photos(folder), unfinished.photos)
        if not folder.board_columns.is_symlink():
            copy_file_private(folder.board_columns, unfinished.board_columns)
        unfinished.path.rename(target.path)
    except OSError as fault:
        raise _unmade(into, fault) from fault
    finally:
        shutil.rmtree(unfinished.path, ignore_errors=True)
    return target


def _unmade(into: Path, fault: OSError) -> StoreTrouble:
    return StoreTrouble(
        say(
            "No backup could be made in {folder}: {fault}. Choose another folder with --to.",
            folder=into,
            fault=fault.strerror or fault,
        )
    )


def daily_backups(into: Path, kind: str = DAILY) -> Sequence[tuple[datetime, Path]]:
    """Return the daily backups in `into`, oldest first; of the kind `AHEAD` those that were set apart."""
    found = []
    for path in into.glob(f"{kind}*Z"):
        try:
            moment = datetime.strptime(path.name.removeprefix(kind), _STAMP).replace(tzinfo=UTC)
        except ValueError:
            continue  # named by someone else, and left alone
        found.append((moment, path))
    return sorted(found)


def set_apart(into: Path, now_ms: int) -> None:
    """Name the daily backups in `into` that are dated after `now_ms`, UTC ms, as being ahead of the clock.

    Their names keep that they were, so that none of them counts as made on its date once that has come.

    Raises
    ------
    StoreTrouble
        If one cannot be renamed.
    """
    for moment, path in daily_backups(into):
        apart = path.with_name(AHEAD + path.name.removeprefix(DAILY))
        if moment.timestamp() * 1000 > now_ms and not apart.exists():  # one of that second may be apart already
            try:
                path.rename(apart)
            except OSError as fault:
                raise _unmade(into, fault) from fault


def outdated(moments: Iterable[datetime]) -> set[datetime]:
    """Return which backups are kept no longer: neither the newest of one of the last days, nor of the last weeks.

    Days and weeks without a backup do not count, so that a studio left alone keeps its own.
    """
    moments = sorted(moments)
    newest_of_day = {moment.date(): moment for moment in moments}
    newest_of_week = {moment.isocalendar()[:2]: moment for moment in moments}
    kept = {*list(newest_of_day.values())[-DAYS:], *list(newest_of_week.values())[-WEEKS:]}
    return set(moments) - kept


def rotate(into: Path) -> int:
    """Delete the daily backups in `into` that are kept no longer; return how many went.

    One that cannot be deleted does not keep the others.

    Those set apart are judged by the same rule for themselves: whether the clock was ahead when they were made or was
    behind later cannot be told, so neither kind may push out the other. What backups that ended half-way left goes too.

    Only the one watcher of a studio calls this, when no daily backup is being made.

    Raises
    ------
    StoreTrouble
        If any cannot be deleted; it names the first of them.
    """
    gone: list[Path] = []
    kept: list[StoreTrouble] = []
    for kind in _ROTATED:
        there = dict(daily_backups(into, kind))
        gone += [there[moment] for moment in sorted(outdated(there))]
        gone += sorted(into.glob(f"{kind}*Z{_UNFINISHED}"))
    for path in gone:
        # under another name first: nothing that is half deleted may be taken for a backup
        doomed = path.with_name(f"{path.name.removesuffix(_UNFINISHED)}{_UNFINISHED}")
        try:
            path.rename(doomed)
            shutil.rmtree(doomed)
        except OSError as fault:
            sentence = say(
                "The old backup {path} cannot be deleted: {fault}.", path=path, fault=fault.strerror or fault
            )
            kept.append(StoreTrouble(sentence))
    if kept:
        raise kept[0]
    return len(gone)


def _photos(folder: StudioFolder) -> Iterator[Path]:
    return (path for path in folder.photos.iterdir() if not path.is_symlink())


def _size(paths: Iterable[Path]) -> int:
    """Return how many bytes the files among `paths` hold; what is no file counts nothing."""
    return sum(path.stat().st_size for path in paths if path.is_file())


def _refuse_full(folder: StudioFolder, into: Path) -> None:
    needed = _ROOM * _size([folder.database, log_of(folder.database)])
    if folder.sheets.is_dir():
        needed += _size(folder.sheets.iterdir())
    if folder.photos.is_dir():
        needed += _size(_photos(folder))
    free = shutil.disk_usage(into).free
    if free < needed:
        raise StoreFull(
            say(
                "No backup was made: the disk of {folder} has {free} MB free, and {needed} MB are wanted; make "
                "room on it.",
                folder=into,
                free=chosen().number(free / 1e6),
                needed=chosen().number(needed / 1e6),
            )
        )
