"""Her touch tests of one coat: which of them teach, which still stand, and what is said of one that does not fit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.learning import Seen, counted
from studiowatch.coats.readiness import stages_of
from studiowatch.coats.stages import Stage
from studiowatch.service.piece_view import StageTime
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat, Finding
from studiowatch.studio.review_words import lasted
from studiowatch.studio.unready import Unready

TEST_AHEAD_MS = 60_000  # ms that a test may lie ahead of the film: readings come in batches
_ASKED = {  # the stage that each answer is about, and whether it was reached
    Finding.TACKY: (Stage.TACK_FREE, False),
    Finding.DRY: (Stage.TACK_FREE, True),
    Finding.MILKY: (Stage.CLEAR, False),
    Finding.CLEAR: (Stage.CLEAR, True),
}

_NOT_WHILE_UNREADY = (Stage.DRY_TO_RECOAT, Stage.DRY_HARD, Stage.DRY_THROUGH, Stage.CURED)


def her_tests(coat: Coat, sheet: DataSheet, laid_ms: int, until_ms: int) -> tuple[Seen, ...]:
    """Return the tests up to `until_ms` that count, of the stages that a coat of this sheet goes through."""
    if not coat.looks:
        return ()  # as with most coats at most times: the stages need not be asked
    stages = [stage for stage in stages_of(sheet) if _tells(stage, sheet)]
    return counted(
        [
            Seen(after_s=(look.time_ms - laid_ms) / 1000.0, stage=stage, reached=reached)
            for look in coat.looks
            for stage, reached in [_ASKED[look.finding]]
            if stage in stages and laid_ms <= look.time_ms <= until_ms + TEST_AHEAD_MS
        ]
    )


def last_unready(coat: Coat, tests: Sequence[Seen], laid_ms: int) -> Unready | None:
    """Return the last of `tests` that found `coat` tacky or milky and that no later one answers, or None.

    How it came out answers whether it is milky, and not whether it is tacky.
    """
    last = {test.stage: test for test in tests}
    if coat.outcome is not None:
        last.pop(Stage.CLEAR, None)
    test = max((test for test in last.values() if not test.reached), key=lambda test: test.after_s, default=None)
    if test is None:
        return None
    return Unready.of(_found(test), laid_ms + round(test.after_s * 1000), laid_ms=laid_ms)


def beside(unready: Unready | None, time: StageTime) -> StageTime:
    """Return what is told of a modelled stage beside the last test of its coat, if that found it tacky or milky."""
    if unready is None or time.stage not in _NOT_WHILE_UNREADY:
        return time
    if unready.told_ms(time.time_ms if time.reached else time.p90_ms) is None:
        return StageTime(stage=time.stage, time_ms=None, reached=False)
    return replace(time, time_ms=unready.likely_ms(time.time_ms), p10_ms=unready.likely_ms(time.p10_ms))


def _found(test: Seen) -> Finding:
    return next(finding for finding, asked in _ASKED.items() if asked == (test.stage, test.reached))


def doubt_words(test: Seen, *, is_wider: bool) -> str:
    """Return what is said of a test that does not fit anything that the sheet allows."""
    found = {"finding": _found(test).word, "span": lasted(1000.0 * test.after_s)}
    if is_wider:
        return say(
            "Found {finding} {span} after laying, which does not fit its sheet, its amount and this room: "
            "test again, and check what was recorded; its range is wider for it.",
            **found,
        )
    return say(
        "Found {finding} {span} after laying, which does not fit its sheet, its amount and this room: "
        "test again, and check what was recorded.",
        **found,
    )


def _tells(stage: Stage, sheet: DataSheet) -> bool:
    """Return whether a test of `stage` tells anything: a solvent-borne coat that blushed is not drying slowly."""
    return stage is not Stage.CLEAR or sheet.kind is not Kind.SOLVENTBORNE
