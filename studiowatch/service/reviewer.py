"""Reviews of her coats from the records: each weighed by curves that have learnt from all the others."""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Protocol

import numpy as np

from studiowatch.physics.ranges import Array, OutOfRange
from studiowatch.room.corrections import Corrections, corrections
from studiowatch.room.readings import Reading
from studiowatch.service.local_time import when_text
from studiowatch.service.ports import Records
from studiowatch.service.review_log import MinuteLog, ReviewedCoat, number_of, room_from, spans_ms, stack_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.review import Setting, coat_severities, review_and_severities
from studiowatch.studio.review_causes import MEASURED, Cause
from studiowatch.studio.review_course import DRAWS, LaidStack
from studiowatch.studio.review_curves import PRIOR, Curves
from studiowatch.studio.review_learning import Told, learn, likeliest, reliability, rounded
from studiowatch.studio.review_views import Reliability, Review

STAMP = "1"  # of what severities mean; another number makes all of them anew
_OFTEN_FROM = 2  # clouded coats from which "first in 1 of 2" says something


class Kept(Protocol):
    """Where severities are kept from one review to the next."""

    def get(self, key: str, stamp: str) -> Array | None:
        """Return the rows kept for a coat, (draws, causes), or None if there are none of this stamp."""
        ...

    def put(self, key: str, stamp: str, rows: Array) -> None:
        """Hold rows."""
        ...

    def save(self) -> None:
        """Keep what is held."""
        ...


class RecordsToReview(MinuteLog, Protocol):
    """The records as a review reads them."""

    def pieces(self) -> Sequence[Piece]:
        """Return all pieces, those that left the rack too."""
        ...

    def corrections(self) -> Corrections:
        """Return which calibration holds when."""
        ...


@dataclass(slots=True)
class Reviewer:
    """Reviews coats; for one thread at a time, and not the keeper's: a first review may dry many coats.

    Attributes
    ----------
    known : Corrections
        What puts a reading right, and which are from outside.
    now_ms : int or None
        UTC ms, up to which the log can hold anything; None if all is long past.
    dries : bool
        Whether a coat whose severities are not kept is dried for them; else it is left out.
    dries_too : str
        The key of a coat that is dried for them all the same, or "".
    """

    pieces: Sequence[Piece]
    shelf: SheetShelf
    log: MinuteLog
    kept: Kept
    when_text: Callable[[int, int], str] = when_text
    known: Corrections = field(default_factory=Corrections)
    now_ms: int | None = None
    dries: bool = True
    dries_too: str = ""
    _told: dict[str, Told | None] = field(default_factory=dict, init=False)

    def review(self, piece: Piece, number: int) -> Review:
        """Return the review of the coat `number` of a piece, counted among its laid coats from 1.

        Raises
        ------
        ReviewedCoat, OutOfRange
            If it cannot be reviewed: one sentence.
        """
        stack = stack_of(piece, self.shelf, number)
        coat = stack.top.coat
        others = self.told(besides=coat.key)
        setting = Setting(when_text=self.when_text, curves=learn(list(others.values())), now_ms=self.now_ms)
        found, severities = review_and_severities(stack, room_from(self.log, stack, self.known.corrected), setting)
        if coat.outcome is None:
            return found
        values = self._held(coat, stack, severities.values)
        often = self._often({**others, coat.key: Told(outcome=coat.outcome, severities=values)})
        return replace(found, causes=tuple(replace(one, often=often.get(one.cause, "")) for one in found.causes))

    def told(
        self, progress: Callable[[float], None] = lambda _: None, *, besides: str | None = None
    ) -> Mapping[str, Told]:
        """Return all clear coats with an outcome, by key in the order of laying, but the one with the key `besides`.

        Those that cannot be followed are left out; `progress` is called with the share done, 0-1, and may raise to
        give up: what was worked out until then is kept.
        """
        found = [one for one in self._with_outcome() if one[1].key != besides]
        try:
            for place, (piece, coat, outcome) in enumerate(found):
                if coat.key not in self._told:
                    severities = self._severities(piece, coat)
                    self._told[coat.key] = None if severities is None else Told(outcome=outcome, severities=severities)
                progress((place + 1) / len(found))
        finally:
            self.kept.save()
        return {coat.key: told for _, coat, _ in found if (told := self._told[coat.key]) is not None}

    def curves(self) -> Curves:
        """Return the curves as all coats have moved them: for coats that are not among them."""
        told = list(self.told().values())
        return learn(told) if told else PRIOR

    def reliability(self) -> Reliability:
        """Return how often each chance came true here."""
        return reliability(list(self.told().values()))

    def _with_outcome(self) -> Iterator[tuple[Piece, Coat, Outcome]]:
        every = [
            (coat.laid_ms, piece, coat, coat.outcome)
            for piece in self.pieces
            for coat in piece.coats
            if coat.outcome is not None and coat.laid_ms is not None
        ]
        for _, piece, coat, outcome in sorted(every, key=lambda one: one[0]):
            yield piece, coat, outcome

    def _severities(self, piece: Piece, coat: Coat) -> Array | None:
        try:
            stack = stack_of(piece, self.shelf, number_of(piece, coat))
            rows = self.kept.get(coat.key, self._stamp(stack))
            if rows is not None and rows.shape == (DRAWS, len(MEASURED)):
                return np.array(rows, dtype=np.float64)
            if not self.dries and coat.key != self.dries_too:
                return None
            made = coat_severities(stack, room_from(self.log, stack, self.known.corrected)).values
        except (ReviewedCoat, OutOfRange):
            return None
        return self._held(coat, stack, made)

    def _held(self, coat: Coat, stack: LaidStack, made: Array) -> Array:
        """Return severities as they are kept, and keep them."""
        fresh = rounded(made)
        stamp = self._stamp(stack)
        if self.kept.get(coat.key, stamp) is None:
            self.kept.put(coat.key, stamp, fresh)
            self.kept.save()
        return fresh

    def _stamp(self, stack: LaidStack) -> str:
        """Return a hash of all that a coat's severities rest on but the readings.

        Those never change once read; what an import adds to them is among what is known.
        """
        piece = stack.piece
        face = (piece.area_m2, piece.side_m, piece.support, piece.orientation)
        laid = [(one.coat, one.sheet, one.laid_ms) for one in stack.coats]
        words = repr((STAMP, face, laid, stack.above_ms, list(self._known_under(stack))))
        return hashlib.sha256(words.encode()).hexdigest()[:16]

    def _known_under(self, stack: LaidStack) -> Iterator[tuple[object, ...]]:
        """Yield what puts the readings right that a review of `stack` rests on, and which of them are from outside."""
        for start_ms, end_ms in spans_ms(stack):
            for stretch, *part_ms in self.known.between(start_ms, end_ms):
                yield stretch.humidity, stretch.air_speed, *part_ms
            for one in self.known.imported:
                if one.start_ms < end_ms and one.end_ms > start_ms:
                    yield max(one.start_ms, start_ms), min(one.end_ms, end_ms)

    def _often(self, told: Mapping[str, Told]) -> dict[Cause, str]:
        clouded = [one for one in told.values() if one.clouded]
        if len(clouded) < _OFTEN_FROM:
            return {}
        curves = learn(list(told.values()))
        order = (*MEASURED, Cause.UNKNOWN)
        firsts = Counter(order[likeliest(curves, one)] for one in clouded)
        return {
            cause: say("First in {times} of {count} clouded coats here.", times=many, count=len(clouded))
            for cause, many in firsts.items()
        }


def reviewer_of(records: RecordsToReview, shelf: SheetShelf, kept: Kept, now_ms: int | None = None) -> Reviewer:
    """Return a reviewer of what the records hold at `now_ms`, UTC ms."""
    return Reviewer(
        pieces=records.pieces(),
        shelf=shelf,
        log=records,
        kept=kept,
        known=records.corrections(),
        now_ms=now_ms,
    )


def kept_curves(records: Records, shelf: SheetShelf, kept: Kept) -> Curves:
    """Return the curves as far as the severities that are kept have moved them: no coat is dried for it."""
    reviewer = Reviewer(
        pieces=records.pieces(),
        shelf=shelf,
        log=NothingLogged(),
        kept=kept,
        known=corrections(records.calibrations(), records.sightings(), records.imported()),
        dries=False,
    )
    return reviewer.curves()


class NothingLogged:
    """A log that is never asked."""

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:  # noqa: ARG002 - a Protocol's signature
        """Return nothing."""
        return ()
