"""The life of a warning: each way through the table, then any way at all."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from studiowatch.studio.concern import Concern, Kind
from studiowatch.studio.warnings import (
    NEXT_STATE,
    RECENT,
    Change,
    Happening,
    WarningBook,
    WarningState,
    hear,
    remind_until,
    reopened,
    settle,
)
from studiowatch.studio.words import Level, Sentence

NOW_MS = 1_772_460_000_000
MINUTE_MS = 60_000


def concern(
    kind: Kind = Kind.AIR_MOVING,
    level: Level = Level.ACT,
    pieces: tuple[str, ...] = ("p1",),
    *,
    may_sound: bool = True,
) -> Concern:
    return Concern(
        kind=kind,
        level=level,
        piece_keys=pieces,
        piece_titles=tuple(f"Piece {key}" for key in pieces),
        began_ms=NOW_MS - 7000,
        seen_ms=NOW_MS,
        sentence=Sentence(level=level, headline=f"{kind} {level}"),
        may_sound=may_sound,
    )


def raised(*concerns: Concern) -> WarningBook:
    return settle(WarningBook(), concerns or (concern(),), NOW_MS)[0]


def heard() -> WarningBook:
    book = raised()
    return hear(book, book.open[0].key)[0]


def put_off(until_ms: int = NOW_MS + 10 * MINUTE_MS) -> WarningBook:
    book = raised()
    return remind_until(book, book.open[0].key, until_ms)[0]


def test_that_the_table_answers_every_happening_in_every_state() -> None:
    assert set(NEXT_STATE) == {(state, happening) for state in WarningState for happening in Happening}


def test_that_every_state_can_be_reached_from_raised() -> None:
    reached, frontier = {WarningState.RAISED}, [WarningState.RAISED]
    while frontier:
        state = frontier.pop()
        for happening in Happening:
            after = NEXT_STATE[state, happening]
            if after not in reached:
                reached.add(after)
                frontier.append(after)
    assert reached == set(WarningState)


def test_that_a_new_concern_is_raised_and_said() -> None:
    book, (change,) = settle(WarningBook(), [concern()], NOW_MS)
    (warning,) = book.open
    assert change == Change(warning=warning, is_new=True)
    assert warning.state is WarningState.RAISED
    assert warning.key == f"air-moving-{NOW_MS - 7000}-1"
    assert warning.raised_ms == NOW_MS
    assert warning.began_ms == NOW_MS - 7000
    assert book.sounds


def test_that_a_concern_that_stands_changes_its_words_but_tells_nobody() -> None:
    newer = replace(concern(), sentence=Sentence(level=Level.ACT, headline="0.36 m/s"))
    book, changes = settle(raised(), [newer], NOW_MS + 1000)
    assert changes == ()
    assert book.open[0].sentence.headline == "0.36 m/s"
    assert book.made == 1


def test_that_the_beginning_that_was_told_stays() -> None:
    for began_ms in (NOW_MS, NOW_MS - 9000):
        other = replace(concern(), began_ms=began_ms)
        assert settle(raised(), [other], NOW_MS + 1000)[0].open[0].began_ms == NOW_MS - 7000


def test_that_what_was_heard_does_not_sound_again() -> None:
    book = heard()
    assert book.open[0].state is WarningState.HEARD
    assert not book.sounds
    book, changes = settle(book, [concern()], NOW_MS + 60 * MINUTE_MS)
    assert changes == ()
    assert not book.sounds


def test_that_a_heard_warning_that_worsens_is_raised_again() -> None:
    book = raised(concern(level=Level.CAUTION))
    book, _ = hear(book, book.open[0].key)
    book, (change,) = settle(book, [concern(level=Level.ACT)], NOW_MS + 1000)
    assert change.is_new
    assert book.open[0].state is WarningState.RAISED


def test_that_a_heard_warning_that_reaches_one_more_piece_is_raised_again() -> None:
    book, (change,) = settle(heard(), [concern(pieces=("p1", "p2"))], NOW_MS + 1000)
    assert book.open[0].state is WarningState.RAISED
    assert change.warning.piece_titles == ("Piece p1", "Piece p2")


def test_that_a_warning_that_eases_stays_heard_but_is_stored() -> None:
    book, (change,) = settle(heard(), [concern(level=Level.CAUTION, may_sound=False)], NOW_MS + 1000)
    assert book.open[0].state is WarningState.HEARD
    assert change.warning.level is Level.CAUTION
    assert not change.is_new


def test_that_a_warning_put_off_comes_back_when_its_time_runs_out_and_not_before() -> None:
    until_ms = NOW_MS + 10 * MINUTE_MS
    quiet, changes = settle(put_off(until_ms), [concern()], until_ms - 1)
    assert (quiet.open[0].state, changes, quiet.sounds) == (WarningState.REMIND, (), False)
    book, (change,) = settle(quiet, [concern()], until_ms)
    assert (book.open[0].state, book.open[0].remind_ms) == (WarningState.RAISED, None)
    assert change.is_new
    assert book.sounds


def test_that_a_warning_put_off_worsens_at_once() -> None:
    book, _ = settle(put_off(), [concern(pieces=("p2",))], NOW_MS + 1)
    assert (book.open[0].state, book.open[0].remind_ms) == (WarningState.RAISED, None)


def test_that_a_reminder_can_be_moved_and_can_be_heard_instead() -> None:
    book = put_off()
    key = book.open[0].key
    moved, (change,) = remind_until(book, key, NOW_MS + 20 * MINUTE_MS)
    assert change.warning.remind_ms == moved.open[0].remind_ms == NOW_MS + 20 * MINUTE_MS
    after, _ = hear(moved, key)
    assert (after.open[0].state, after.open[0].remind_ms) == (WarningState.HEARD, None)


@pytest.mark.parametrize("book", [raised(), heard(), put_off()], ids=["raised", "heard", "put off"])
def test_that_a_cause_that_ends_clears_its_warning(book: WarningBook) -> None:
    after, (change,) = settle(book, [], NOW_MS + 5000)
    assert after.open == ()
    assert not after.sounds
    assert after.recent == (change.warning,)
    assert (change.warning.state, change.warning.cleared_ms) == (WarningState.CLEARED, NOW_MS + 5000)
    assert change.warning.remind_ms is None


def test_that_the_same_cause_later_is_another_warning() -> None:
    book, _ = settle(raised(), [], NOW_MS + 5000)
    book, (change,) = settle(book, [concern()], NOW_MS + 9000)
    assert change.warning.key.endswith("-2")
    assert book.recent[0].state is WarningState.CLEARED


def test_that_a_cleared_warning_can_neither_be_heard_nor_put_off() -> None:
    book, _ = settle(raised(), [], NOW_MS + 5000)
    assert hear(book, book.recent[0].key) == (book, ())
    assert remind_until(book, book.recent[0].key, NOW_MS + MINUTE_MS) == (book, ())


def test_that_hearing_twice_is_one_change() -> None:
    book = heard()
    assert hear(book, book.open[0].key) == (book, ())


def test_that_the_most_urgent_stands_first() -> None:
    book = raised(concern(Kind.DAMP, Level.CAUTION), concern(Kind.BOARD_SILENT), concern(Kind.AIR_MOVING))
    assert [warning.kind for warning in book.open] == [
        Kind.AIR_MOVING,
        Kind.BOARD_SILENT,
        Kind.DAMP,
    ]


def test_that_a_caution_that_may_not_sound_is_silent() -> None:
    assert not raised(concern(level=Level.CAUTION, may_sound=False)).sounds


def test_that_the_recent_list_is_bounded_and_newest_first() -> None:
    book = WarningBook()
    for number in range(RECENT + 5):
        book, _ = settle(book, [concern()], NOW_MS + 2 * number)
        book, _ = settle(book, [], NOW_MS + 2 * number + 1)
    assert len(book.recent) == RECENT
    assert book.recent[0].key.endswith(f"-{RECENT + 5}")


def test_that_a_book_is_reopened_as_it_was_left() -> None:
    book, _ = settle(put_off(), [concern(), concern(Kind.DAMP)], NOW_MS + 1000)
    book, _ = settle(book, [concern()], NOW_MS + 2000)
    again = reopened([*book.open, *book.recent])
    assert again == book
    _, changes = settle(again, [concern(), concern(Kind.TOO_COLD)], NOW_MS + 3000)
    assert [change.warning.key.rpartition("-")[2] for change in changes] == ["3"]


CONCERNS = st.lists(
    st.builds(
        concern,
        st.sampled_from(list(Kind)),
        st.sampled_from([Level.CAUTION, Level.ACT]),
        st.sets(st.sampled_from(["p1", "p2", "p3"])).map(lambda keys: tuple(sorted(keys))),
        may_sound=st.booleans(),
    ),
    unique_by=lambda found: found.kind,
)


class LifeOfABook(RuleBasedStateMachine):
    """Any concerns, any answers of hers, at any time."""

    def __init__(self) -> None:
        super().__init__()
        self.book = WarningBook()
        self.now_ms = NOW_MS
        self.stored: dict[str, WarningState] = {}

    def take(self, after: tuple[WarningBook, tuple[Change, ...]]) -> None:
        self.book, changes = after
        for change in changes:
            earlier = self.stored.get(change.warning.key)
            assert earlier is not WarningState.CLEARED
            assert (earlier is None) <= change.is_new
            self.stored[change.warning.key] = change.warning.state

    @rule(concerns=CONCERNS, passed_ms=st.integers(0, 30 * MINUTE_MS))
    def time_passes(self, concerns: list[Concern], passed_ms: int) -> None:
        self.now_ms += passed_ms
        self.take(settle(self.book, concerns, self.now_ms))
        assert {warning.kind for warning in self.book.open} == {found.kind for found in concerns}

    @rule(data=st.data())
    def she_hears(self, data: st.DataObject) -> None:
        self.take(hear(self.book, self.any_key(data)))

    @rule(data=st.data(), later_ms=st.integers(-MINUTE_MS, 20 * MINUTE_MS))
    def she_puts_off(self, data: st.DataObject, later_ms: int) -> None:
        self.take(remind_until(self.book, self.any_key(data), self.now_ms + later_ms))

    def any_key(self, data: st.DataObject) -> str:
        keys = [warning.key for warning in (*self.book.open, *self.book.recent)]
        return data.draw(st.sampled_from([*keys, "no such key"]))

    @invariant()
    def the_book_is_sound(self) -> None:
        opened, recent = self.book.open, self.book.recent
        assert all(warning.is_open and warning.cleared_ms is None for warning in opened)
        assert all(not warning.is_open and warning.cleared_ms is not None for warning in recent)
        assert all((warning.remind_ms is not None) == (warning.state is WarningState.REMIND) for warning in opened)
        assert len({warning.key for warning in (*opened, *recent)}) == len(opened) + len(recent)
        assert all(self.stored[warning.key] is warning.state for warning in (*opened, *recent))
        assert [warning.level for warning in opened] == sorted((warning.level for warning in opened), reverse=True)


TestLifeOfABook = LifeOfABook.TestCase


@given(st.sampled_from(list(Happening)))
def test_that_cleared_stays_cleared(happening: Happening) -> None:
    assert NEXT_STATE[WarningState.CLEARED, happening] is WarningState.CLEARED


def test_that_a_piece_covered_since_stays_among_those_that_were_touched() -> None:
    book = raised(concern(pieces=("p1", "p2")))
    book, changes = settle(book, (concern(pieces=("p2",)),), NOW_MS + 1000)
    assert book.open[0].piece_titles == ("Piece p1", "Piece p2")
    assert changes == ()
    book, changes = settle(book, (concern(pieces=("p1", "p2")),), NOW_MS + 2000)
    assert changes == ()


def test_that_a_warning_that_is_over_is_told_as_past() -> None:
    book, (change,) = settle(raised(concern(pieces=("p1", "p2"))), (), NOW_MS + MINUTE_MS)
    assert change.warning.sentence.headline == "Air was moving over two wet coats"
    assert change.warning.sentence.detail == "Piece p1 and Piece p2."
    assert book.recent[0] == change.warning


@pytest.mark.parametrize("kind", list(Kind))
def test_that_every_kind_has_its_words_for_when_it_is_over(kind: Kind) -> None:
    _, (change,) = settle(raised(concern(kind)), (), NOW_MS + MINUTE_MS)
    assert " was " in f" {change.warning.sentence.headline} " or "could not" in change.warning.sentence.headline


@pytest.mark.parametrize(
    ("kind", "headline"),
    [
        (Kind.AIR_MOVING, "A fan was meant to be on"),
        (Kind.TOO_COLD, "Cold was foreseen"),
        (Kind.NEAR_DEW_POINT, "A dew point too near was foreseen"),
        (Kind.DAMP, "Damp air was foreseen"),
    ],
)
def test_that_what_was_ahead_and_never_came_is_not_told_as_having_been(kind: Kind, headline: str) -> None:
    ahead = replace(concern(kind, Level.CAUTION), is_ahead=True, expected_ms=NOW_MS + 30 * MINUTE_MS)
    _, (change,) = settle(raised(ahead), (), NOW_MS + MINUTE_MS)
    assert (change.warning.sentence.headline, change.warning.sentence.detail) == (headline, "Piece p1.")


def test_that_what_came_is_told_as_having_been_though_it_was_ahead_first_and_last() -> None:
    ahead = replace(concern(Kind.DAMP, Level.CAUTION), is_ahead=True, expected_ms=NOW_MS + 30 * MINUTE_MS)
    book, _ = settle(raised(ahead), (concern(Kind.DAMP, Level.CAUTION),), NOW_MS + MINUTE_MS)
    book, _ = settle(book, (ahead,), NOW_MS + 2 * MINUTE_MS)
    _, (change,) = settle(book, (), NOW_MS + 3 * MINUTE_MS)
    assert change.warning.sentence.headline == "It was damp for a wet coat"
