"""From bytes of any sketch to board events, without port, thread or clock: the tolerant side of `intake`.

What it reads is not checked by anything: its readings say so, and there are none before she accepted what the columns
mean. As soon as one checked line comes, only those are taken.
Until the first numbers, or for some seconds, noise is passed over uncounted, as `intake` does and for the same reason;
and as long as the newest lines are more noise than numbers, nothing is made of them: the baud rate may be wrong.
"""

from __future__ import annotations

import re
from collections import Counter, deque
from dataclasses import replace

from studiowatch.board.events import (
    BoardEvent,
    BoardTrouble,
    LineCounts,
    LineRefused,
    MappingAsked,
    MappingHolds,
    NumbersSeen,
    ReadingArrived,
)
from studiowatch.board.guess import guess
from studiowatch.board.intake import SETTLE_MS, Intake
from studiowatch.board.loose_bytes import LONGEST_LOOSE_LINE, LooseLines
from studiowatch.board.loose_lines import Row, Style, Unreadable, Words, decoded, read_loose_line
from studiowatch.board.loose_numbers import Field
from studiowatch.board.mapping import ColumnMapping, Sureness, gist, merged, read_row
from studiowatch.board.wire import WireFault, WireLine, read_line
from studiowatch.room.readings import Reading
from studiowatch.speech.words import say

ROWS_KEPT = 120  # rows that a guess is made from: assumption
FIRST_GUESS_ROWS = 5  # of the commonest column, before the first guess: assumption
GUESS_EVERY_ROWS = 30  # while something is open: assumption
MISFITS = 10  # rows in a row without a mapped column, after which a kept mapping is of another sketch: assumption
SAMPLES = 5  # lines shown with a mapping

_FAILURE = re.compile(
    r"(?i)fail|error|could ?n.t|cannot|not (?:found|respond|connect|detect)|timed? ?out|no response"  # not said
)
_OF_SENSOR = re.compile(r"(?i)sensor|read|temp|hum|\b[a-z]{2,4}[0-9]{2,4}\b")


class LooseIntake:
    """What one unchecked source has said so far, and what its columns mean. Meets the same seam as `Intake`.

    Parameters
    ----------
    mapping : ColumnMapping, optional
        What she accepted of this board before. Without one it is guessed, and asked for with `MappingAsked`.

    Attributes
    ----------
    counts : LineCounts
        The tally after the last `feed`. A line of text without numbers is good, and gives no event.
    mapping : ColumnMapping or None
        What the columns mean as far as it is known.
    """

    def __init__(self, mapping: ColumnMapping | None = None) -> None:
        self.counts = LineCounts()
        self.mapping: ColumnMapping | None = None
        self._lines = LooseLines(mid_line=True)
        self._rows: deque[Row] = deque(maxlen=ROWS_KEPT)
        self._samples: deque[str] = deque(maxlen=SAMPLES)
        self._header: tuple[str, ...] = ()
        self._block: dict[str, Field] = {}
        self._block_ms = 0
        self._until_guess = 1
        self._trial_rows = ROWS_KEPT
        self._misfits = 0
        self._heard: deque[bool] = deque(maxlen=2 * ROWS_KEPT)  # which of the newest lines held numbers, not noise
        self._accepted = False
        self._accepted_told = False
        self._first_ms: int | None = None
        self._strict: Intake | None = None
        self._counts_before = LineCounts()
        if mapping:
            self.set_mapping(mapping)

    @property
    def style(self) -> Style | None:
        """How the sketch writes its numbers, once that is known."""
        return self.mapping.style if self.mapping else None

    @property
    def is_checked(self) -> bool:
        """True once a checked line came."""
        return self._strict is not None

    def set_mapping(self, mapping: ColumnMapping) -> None:
        """Read by `mapping`, which she accepted, in place of what was guessed."""
        self.mapping = mapping
        self._accepted, self._accepted_told = True, False
        self._block = {}
        self._misfits = 0
        self._trial_rows = 0
        if mapping.style is Style.TABLE:
            self._header = mapping.keys

    def reopened(self) -> None:
        """Forget the half line of a port that was left, pass over a first half line, and tell of the columns anew."""
        self._lines = LooseLines(mid_line=True)
        self._block = {}
        self._rows.clear()
        self._heard.clear()
        self._first_ms = None
        self._accepted_told = False
        if not self._accepted:
            self.mapping, self._until_guess, self._trial_rows = None, 1, ROWS_KEPT
        if self._strict:
            self._strict.reopened()

    def feed(self, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Return the events that `data`, read at `time_ms` (UTC ms), completes."""
        if self._strict:
            return self._feed_strict(self._strict, data, time_ms)
        if self._first_ms is None and data:
            self._first_ms = time_ms
        events: list[BoardEvent] = []
        lines = self._lines.feed(data)
        for at, line in enumerate(lines):
            if _is_checked(line.rstrip(b"\r\n")):
                self._strict, self._counts_before = Intake(), self.counts
                rest = b"".join([line[line.rfind(b"$") :], *lines[at + 1 :], self._lines.pending])
                return events + self._feed_strict(self._strict, rest, time_ms)
            if bare := line.rstrip(b"\r\n"):
                events += self._take(bare, time_ms)
        return events

    def _feed_strict(self, strict: Intake, data: bytes, time_ms: int) -> list[BoardEvent]:
        """Let the strict intake read, and count on from where the tolerant one stopped."""
        events = [
            replace(event, counts=_sum(self._counts_before, event.counts))
            if isinstance(event, ReadingArrived | BoardTrouble | LineRefused)
            else event
            for event in strict.feed(data, time_ms)
        ]
        self.counts = _sum(self._counts_before, strict.counts)
        return events

    def _take(self, line: bytes, time_ms: int) -> list[BoardEvent]:
        if len(line) > LONGEST_LOOSE_LINE:
            return [self._refuse(say("The line is longer than {most} bytes.", most=LONGEST_LOOSE_LINE), line, time_ms)]
        found = read_loose_line(line, self._header)
        match found:
            case Unreadable():
                return self._pass_over(found, line, time_ms)
            case Words():
                self.counts = replace(self.counts, good=self.counts.good + 1)
                return self._hear(found, line, time_ms)
        self._heard.append(True)
        return [*self._tell_accepted(found, time_ms), *self._take_row(found, line, time_ms)]

    def _pass_over(self, noise: Unreadable, line: bytes, time_ms: int) -> list[BoardEvent]:
        self._heard.append(False)
        is_settling = not self._rows and 0 <= time_ms - (self._first_ms or 0) < SETTLE_MS
        return [] if is_settling else [self._refuse(noise.reason, line, time_ms)]

    def _tell_accepted(self, row: Row, time_ms: int) -> list[BoardEvent]:
        """Tell once for each opening that numbers are read by what she accepted; not of noise at another baud rate."""
        if self.mapping is None or not self._accepted or self._accepted_told:
            return []
        if self._is_mostly_noise() and not _is_of(row, self.mapping):
            return []
        self._accepted_told = True
        return [MappingHolds(time_ms=time_ms, mapping=self.mapping)]

    def _take_row(self, row: Row, line: bytes, time_ms: int) -> list[BoardEvent]:
        if misfit := self._misfit(row):
            return [self._refuse(misfit, line, time_ms)]
        self.counts = replace(self.counts, good=self.counts.good + 1)
        self._samples.append(decoded(line).strip())
        return [*self._learn(row, time_ms), *self._read(row, time_ms)]

    def _refuse(self, reason: str, line: bytes, time_ms: int) -> BoardEvent:
        self.counts = replace(self.counts, faulty=self.counts.faulty + 1)
        return LineRefused(time_ms=time_ms, reason=reason, quoted=WireFault(reason, line).quoted(), counts=self.counts)

    def _misfit(self, row: Row) -> str:
        """Return why a row of a table is damaged, or "": a lost comma would shift every column behind it."""
        if self.mapping is None or _has_its_width(row, self.mapping) or self._misfits >= MISFITS:
            return ""
        self._misfits += 1
        return say(
            "The line has {found} columns; this board sends {usual}.",
            found=len(row.fields),
            usual=len(self.mapping.columns),
        )

    def _hear(self, words: Words, line: bytes, time_ms: int) -> list[BoardEvent]:
        """Take a header, or a complaint about the sensor, from a line of text."""
        if words.header:
            self._header = words.header
        if not (_FAILURE.search(words.text) and _OF_SENSOR.search(words.text)):
            return []
        self._block = {}
        self.counts = replace(self.counts, troubles=self.counts.troubles + 1)
        said = WireFault("", line).quoted()
        return [BoardTrouble(time_ms=time_ms, code="", message=said, counts=self.counts)]

    def _learn(self, row: Row, time_ms: int) -> list[BoardEvent]:
        """Guess anew what is still open; tell her what changed, and the numbers as long as anything is open."""
        events: list[BoardEvent] = []
        self._rows.append(row)
        self._until_guess -= 1
        self._trial_rows -= 1
        self._forget_misfitting(row)
        if self._until_guess <= 0 and self._is_open():
            self._until_guess = GUESS_EVERY_ROWS if self.mapping else 1
            better = self._guess()
            if better and (self.mapping is None or gist(better) != gist(self.mapping)):
                self.mapping = better
                events.append(MappingAsked(time_ms=time_ms, mapping=better, samples=tuple(self._samples)))
        if not (self._accepted or self._is_mostly_noise()):
            numbers = tuple((field.key, field.number.value) for field in row.fields)
            events.append(NumbersSeen(time_ms=time_ms, numbers=numbers))
        return events

    def _forget_misfitting(self, row: Row) -> None:
        """Drop a mapping that belongs to another sketch: none of its columns came for a while."""
        if self.mapping is None:
            return
        self._misfits = 0 if _is_of(row, self.mapping) else self._misfits + 1
        if self._misfits > MISFITS:
            self.mapping, self._misfits, self._until_guess, self._trial_rows = None, 0, 1, ROWS_KEPT
            self._accepted = False
            self._rows = deque([row], maxlen=ROWS_KEPT)

    def _is_open(self) -> bool:
        """Tell whether a new guess can add something; a guess of few lines is on trial for some more."""
        if self._accepted:
            return False
        if self.mapping is None or self._trial_rows > 0:
            return True
        return any(column.sureness is Sureness.OPEN for column in self.mapping.columns)

    def _guess(self) -> ColumnMapping | None:
        """Return the mapping guessed anew; after the trial what is decided stays, and what she set always does."""
        commonest = Counter(field.key for row in self._rows for field in row.fields).most_common(1)
        is_too_little = not commonest or commonest[0][1] < FIRST_GUESS_ROWS
        if is_too_little or (self.mapping is None and self._is_mostly_noise()):
            return None
        new = guess(self._rows)
        return new if self.mapping is None or new is None or self._trial_rows > 0 else merged(self.mapping, new)

    def _is_mostly_noise(self) -> bool:
        """Tell whether no more than half of the newest lines held numbers: the baud rate may be wrong."""
        return 2 * sum(self._heard) <= len(self._heard)

    def _read(self, row: Row, time_ms: int) -> list[BoardEvent]:
        """Return the reading that the row completes, if any: a sketch may spread one over several lines."""
        if not (self.mapping and self._accepted) or row.style is not self.mapping.style:
            return []
        chosen = self.mapping.chosen
        told = {field.key: field for field in row.fields if field.key in chosen}
        events: list[BoardEvent] = []
        if not told:
            return events
        if not self._block.keys().isdisjoint(told):
            events += self._end_block(self.mapping)
        self._block.update(told)
        self._block_ms = time_ms
        if row.style is not Style.LABELLED or len(self._block) == len(chosen):
            events += self._end_block(self.mapping)
        return events

    def _end_block(self, mapping: ColumnMapping) -> list[BoardEvent]:
        row = Row(style=mapping.style, fields=tuple(self._block.values()))
        self._block = {}
        return self._arrived(read_row(row, mapping, self._block_ms))

    def _arrived(self, reading: Reading) -> list[BoardEvent]:
        return [ReadingArrived(reading=reading, counts=self.counts)]


def _is_of(row: Row, mapping: ColumnMapping) -> bool:
    """Tell whether a row is of the lines that the mapping is of."""
    shares_keys = not {field.key for field in row.fields}.isdisjoint(mapping.keys)
    return row.style is mapping.style and shares_keys and _has_its_width(row, mapping)


def _has_its_width(row: Row, mapping: ColumnMapping) -> bool:
    """Tell whether a row of columns has as many as the mapping; other rows always do."""
    is_of_columns = {row.style, mapping.style} <= {Style.COLUMNS, Style.TABLE}
    return not is_of_columns or len(row.fields) == len(mapping.columns)


def _is_checked(line: bytes) -> bool:
    begin = line.rfind(b"$")
    return begin >= 0 and len(line) <= LONGEST_LOOSE_LINE and isinstance(read_line(line[begin:]), WireLine)


def _sum(one: LineCounts, other: LineCounts) -> LineCounts:
    return LineCounts(
        good=one.good + other.good,
        faulty=one.faulty + other.faulty,
        lost=one.lost + other.lost,
        resets=one.resets + other.resets,
        troubles=one.troubles + other.troubles,
    )
