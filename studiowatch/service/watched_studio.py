"""One watch over one studio folder: lock, store, board and keeper, begun and ended together."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, nullcontext

from studiowatch.service.curve_desk import CurveDesk, learn_from
from studiowatch.service.daily_backup import DailyBackup
from studiowatch.service.happenings import Happening
from studiowatch.service.keeper import Keeper
from studiowatch.service.leavings import rescue
from studiowatch.service.letterbox import Letterbox
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.outfit import Outfit
from studiowatch.service.outside_desk import OutsideDesk
from studiowatch.service.photos import PhotoFolder
from studiowatch.service.ports import BoardSource
from studiowatch.service.reviewer import kept_curves
from studiowatch.service.sheet_folder import SheetFolder
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.small_arrays import gather_small_arrays
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.trouble import StoreTrouble


@contextmanager
def watching(
    outfit: Outfit,
    folder: StudioFolder,
    source: BoardSource,
    *,
    tell: Callable[[Happening], None] = lambda _: None,
    listener: Callable[[Snapshot], None] | None = None,
    keep_backups: bool = True,
) -> Iterator[Keeper]:
    """Watch over the studio in `folder` until the block ends.

    Parameters
    ----------
    tell, listener : callable
        Called on the keeper's thread with each happening, and with each snapshot.
    keep_backups : bool
        Whether the studio is backed up each day; one that is made up need not be.

    Raises
    ------
    FolderRefused, StoreTrouble, SheetFaults
        If the watch cannot begin; the studio is as it was.
    StoreTrouble
        At the end, if something could not be stored; it says where the readings are.
    """
    folder.make()
    shelf = SheetShelf.open(folder.sheets)
    lock = Watching(folder)
    backups = DailyBackup(folder, outfit.clock)
    keeper = Keeper(
        open_watch=lambda: _open_watch(outfit, folder, shelf, lock, tell),
        source=source,
        clock=outfit.clock,
        shelf=shelf,
        other_trouble=lambda: backups.trouble,
        photos=PhotoFolder(folder=folder.photos, shrink=outfit.shrink_photo),
        letters=Letterbox(folder.letters),
    )
    if listener is not None:
        keeper.subscribe(listener)
    try:
        keeper.start()
        try:
            with _kept(backups) if keep_backups else nullcontext():
                yield keeper
        finally:
            keeper.stop()
    finally:
        if not keeper.is_running:
            lock.release()
            if sentence := rescue(keeper.left, folder.path):
                raise StoreTrouble(sentence)


@contextmanager
def _kept(backups: DailyBackup) -> Iterator[None]:
    backups.start()
    try:
        yield
    finally:
        backups.stop()


def _open_watch(
    outfit: Outfit, folder: StudioFolder, shelf: SheetShelf, lock: Watching, tell: Callable[[Happening], None]
) -> Watchkeeping:
    gather_small_arrays()
    store = outfit.open_store(folder.database)
    planner = ThreadPoolExecutor(max_workers=1, thread_name_prefix="plan")
    learn = learn_from(folder)

    def shut() -> None:
        """Let go of the folder with the store: a keeper that does not end keeps both."""
        try:
            planner.shutdown(cancel_futures=True)
            store.close()
        finally:
            lock.release()

    try:
        watch = Watchkeeping(
            log=store.log,
            records=store.records,
            shelf=shelf,
            clock_text=clock_text,
            local_date=local_date,
            began_ms=outfit.clock.utc_ms(),
            tell=tell,
            plan_work=planner.submit,
            best_hours_work=planner.submit,
            shut=shut,
            outside=OutsideDesk(take_in=store.take_in),
            sheet_folder=SheetFolder(folder=folder.sheets),
            curves=CurveDesk(work=lambda coat_key: planner.submit(learn, coat_key)),
        )
        watch.weigh_by(kept_curves(store.records, shelf, KeptSeverities(path=folder.severities)))
        watch.take_up()
    except BaseException:
        shut()  # nobody else knows of the store yet
        raise
    return watch
