"""The finishing plan against plans worked out by hand: waits are given here, so that every date can be counted.

2026-03-02 is a Monday. A coat takes 25 min to prepare and 45 min of presence: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.studio.finishing_plan import finishing_plan
from studiowatch.studio.plan_shapes import CoatToCome, FinishingPlan, Milestone, PieceToPlan, Times, Waits, WaitsFor
from studiowatch.studio.working_hours import WallClock, WorkingHours

HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS


def ms(text: str) -> int:
    return round(datetime.fromisoformat(text).replace(tzinfo=UTC).timestamp() * 1000)


def said(time_ms: int | None) -> str:
    return "never" if time_ms is None else datetime.fromtimestamp(time_ms / 1000, UTC).strftime("%a %d %H:%M")


CLOCK = WallClock(
    day=lambda time_ms: datetime.fromtimestamp(time_ms / 1000, UTC).date(),
    at=lambda day, minutes: round((datetime.combine(day, time(), UTC) + timedelta(minutes=minutes)).timestamp() * 1000),
)


def hours_of(p10: float, p50: float, p90: float) -> Times:
    return Times(p10=round(p10 * HOUR_MS), p50=round(p50 * HOUR_MS), p90=round(p90 * HOUR_MS))


WAITS = Waits(next=hours_of(1, 2, 4), handle=hours_of(6, 8, 10), cured=hours_of(5 * 24, 6 * 24, 7 * 24))


def always(waits: Waits) -> WaitsFor:
    return lambda _coat, _lay_ms: waits


def at(text: str) -> Times:
    return Times(p10=ms(text), p50=ms(text), p90=ms(text))


def piece(key: str = "a", coats: str = "IG", *, ready: str = "2026-03-02 09:00", **changes: object) -> PieceToPlan:
    plain = PieceToPlan(
        key=key,
        title=f"Piece {key}",
        due=None,
        coats=tuple(
            CoatToCome(key=f"{key}{at}", label=f"{letter}{at}", sheet=letter, title=letter)
            for at, letter in enumerate(coats)
        ),
        ready=at(ready),
        waits=always(WAITS),
        top="paint",
    )
    return replace(plain, **changes)


def plan(*pieces: PieceToPlan, hours: WorkingHours | None = None, now: str = "2026-03-02 09:00") -> FinishingPlan:
    return finishing_plan(pieces, hours or WorkingHours(), CLOCK, now_ms=ms(now))


def test_that_each_coat_waits_for_the_one_below_within_her_hours() -> None:
    (told,) = plan(piece(coats="IGG")).pieces
    # 09:00 + 25 min; + 4 h = 13:25; + 4 h = 17:25, and 45 min more is past six: next morning
    assert [said(coat.lay_ms) for coat in told.coats] == ["Mon 02 09:25", "Mon 02 13:25", "Tue 03 09:25"]
    assert [said(coat.start_ms) for coat in told.coats] == ["Mon 02 09:00", "Mon 02 13:00", "Tue 03 09:00"]
    assert [said(coat.end_ms) for coat in told.coats] == ["Mon 02 10:10", "Mon 02 14:10", "Tue 03 10:10"]


def test_that_milestones_have_ranges_and_a_basis() -> None:
    (told,) = plan(piece(coats="I")).pieces
    handle, wrap, ship = told.milestones
    # laid Mon 09:25 whichever way: dry-hard after 6, 8, 10 h; cured after 5, 6, 7 days
    assert [said(at) for at in (handle.times.p10, handle.times.p50, handle.times.p90)] == [
        "Mon 02 15:25",
        "Mon 02 17:25",
        "Mon 02 19:25",
    ]
    assert (said(wrap.times.p10), said(wrap.times.p90)) == ("Sat 07 09:25", "Mon 09 09:25")
    # packed in half an hour of working time: Sunday 8 March, p50, is off
    assert [said(at) for at in (ship.times.p10, ship.times.p50, ship.times.p90)] == [
        "Sat 07 09:55",
        "Mon 09 09:30",
        "Mon 09 09:55",
    ]
    assert all(milestone.basis for milestone in told.milestones)


def test_that_the_early_end_of_the_range_is_what_touch_tests_may_give() -> None:
    (told,) = plan(piece(coats="IG")).pieces
    ready = told.coats[1].ready
    assert [said(at) for at in (ready.p10, ready.p50, ready.p90)] == ["Mon 02 10:25", "Mon 02 11:25", "Mon 02 13:25"]
    # at p10 the second coat goes on at 10:25, and is cured five days later
    wrap = told.milestone(Milestone.WRAP)
    assert wrap is not None
    assert said(wrap.times.p10) == "Sat 07 10:25"


def test_that_two_coats_are_never_laid_at_one_moment() -> None:
    told = plan(piece("a", "I"), piece("b", "I"), piece("c", "I"))
    assert [said(step.coat.lay_ms) for step in told.today] == ["Mon 02 09:25", "Mon 02 10:35", "Mon 02 11:45"]


def test_that_the_piece_with_the_least_slack_goes_first() -> None:
    told = plan(piece("a", "I", due=date(2026, 3, 30)), piece("b", "I", due=date(2026, 3, 12)), piece("c", "I"))
    assert [step.piece_key for step in told.today] == ["b", "a", "c"]
    assert told.today[0].coat.why_first == "least time to spare"
    assert told.first == "First Piece b: I0."


def test_that_with_equal_slack_the_coat_that_opens_the_longer_wait_goes_first() -> None:
    slow = Waits(next=hours_of(10, 15, 20), handle=hours_of(6, 8, 10), cured=WAITS.cured)
    told = plan(piece("a", "IG"), piece("b", "IG", waits=always(slow)))
    assert [step.piece_key for step in told.today][:2] == ["b", "a"]
    assert told.today[0].coat.why_first == "opens a long wait"


def test_that_a_piece_that_is_ready_later_does_not_hold_up_one_that_can_go_on_now() -> None:
    urgent = piece("a", "I", due=date(2026, 3, 10), ready="2026-03-02 13:00")
    told = plan(urgent, piece("b", "I"))
    assert [(step.piece_key, said(step.coat.lay_ms)) for step in told.today] == [
        ("b", "Mon 02 09:25"),
        ("a", "Mon 02 13:00"),
    ]


def test_that_slack_counts_days_from_fit_to_ship_to_due() -> None:
    # fit to ship on Mon 9 March
    due = [date(2026, 3, 12), date(2026, 3, 9), date(2026, 3, 6)]
    slacks = [plan(piece(coats="I", due=day)).pieces[0].slack_days for day in due]
    assert slacks == [3, 0, -3]


def test_that_late_is_said_with_days_the_longest_part_and_what_could_help() -> None:
    (told,) = plan(piece(coats="I", due=date(2026, 3, 6))).pieces
    assert told.late == (
        "Cannot be ready by Fri 6 Mar: about 3 days late, because the I0 must cure before it may be wrapped "
        "(about 7 days)."
    )
    assert told.helps == (
        "Handed over by hand, unwrapped and with nothing on its face, it can go from Mon 2 Mar (dry-hard).",
        "Tell the client early: Mon 9 Mar is what the plan gives.",
    )


def test_that_days_of_another_year_have_their_year() -> None:
    # as above, laid on a Wednesday morning in the old year: cured after 7 days
    (told,) = plan(piece(coats="I", due=date(2024, 3, 6), ready="2026-12-30 09:00"), now="2026-12-30 09:00").pieces
    assert told.late.startswith("Cannot be ready by Wed 6 Mar 2024: about 1036 days late, ")
    assert told.helps == ("Tell the client early: Wed 6 Jan 2027 is what the plan gives.",)
    assert plan(piece(coats="I", ready="2027-01-04 09:00"), now="2026-12-30 09:00").first == (
        "Nothing to lay today. Next: Piece a, I0, Mon 4 Jan 2027."
    )


def test_that_other_reasons_for_being_late_are_told_apart() -> None:
    fast = Waits(next=hours_of(1, 2, 4), handle=hours_of(1, 1, 1), cured=hours_of(1, 1, 1))
    (paint,) = plan(piece(coats="I", due=date(2026, 3, 6), ready="2026-03-12 09:00", waits=always(fast))).pieces
    assert "because the paint is not ready for the next coat (about 10 days)" in paint.late
    slow = Waits(next=hours_of(70, 71, 72), handle=hours_of(1, 1, 1), cured=hours_of(1, 1, 1))
    (between,) = plan(piece(coats="IGG", due=date(2026, 3, 3), waits=always(slow))).pieces
    assert "because 3 coats are still to come, and each waits for the one below" in between.late
    sundays = WorkingHours(days=(*(None,) * 6, (540, 1080)))
    (hours,) = plan(piece(coats="IG", due=date(2026, 3, 3), waits=always(fast)), hours=sundays).pieces
    assert "because its coats wait for your working hours (about 6 days)" in hours.late
    assert hours.helps[0].startswith("Longer hours, or one more day a week, save up to")


def test_that_hands_are_named_where_they_are_what_makes_a_piece_late() -> None:
    fast = Waits(next=hours_of(0, 0, 0), handle=hours_of(0, 0, 0), cured=hours_of(0, 0, 0))
    short = WorkingHours(days=((540, 620),) * 7)  # eighty minutes a day: one coat
    pieces = [piece(key, "I", due=date(2026, 3, 3), waits=always(fast)) for key in "abcd"]
    told = plan(*pieces, hours=short)
    assert "because other pieces need your hands first" in told.pieces[3].late
    assert "Lay its coats before those of the other pieces." in told.pieces[3].helps


def test_that_a_piece_whose_coat_below_is_not_in_sight_says_so_and_does_not_hold_up_others() -> None:
    never = Times(p10=None, p50=None, p90=None)
    told = plan(piece("a", "IG", ready="2026-03-02 09:00"), piece("b", "I", ready="2026-03-02 09:00", top="gloss"))
    assert all(coat.lay_ms is not None for one in told.pieces for coat in one.coats)
    told = plan(replace(piece("a", "IG"), ready=never, top="gloss"), piece("b", "I"))
    assert [coat.lay_ms for coat in told.pieces[0].coats] == [None, None]
    assert told.pieces[0].unsure == "No time for I0 after the gloss is in sight, in this room as it is."
    assert said(told.pieces[1].coats[0].lay_ms) == "Mon 02 09:25"


def test_that_a_piece_without_coats_to_come_is_dated_from_what_lies_on_it() -> None:
    told = plan(piece(coats="", handle=at("2026-03-02 20:00"), cured=at("2026-03-14 19:00"), due=date(2026, 3, 20)))
    (done,) = told.pieces
    # 14 March is a Saturday, and at seven she has gone: packed on Monday the 16th
    ship = done.milestone(Milestone.SHIP)
    assert ship is not None
    assert said(ship.times.p90) == "Mon 16 09:30"
    assert done.slack_days == 4
    assert told.first == "No coat is to come."


def test_that_an_empty_piece_and_a_week_without_hours_say_what_to_do() -> None:
    (bare,) = plan(piece(coats="")).pieces
    assert bare.unsure == "Plan its coats: there is nothing to date yet."
    (never,) = plan(piece(), hours=WorkingHours(days=(None,) * 7)).pieces
    assert plan(piece(), hours=WorkingHours(days=(None,) * 7)).first == "No coat to come can be dated yet."
    assert never.unsure == "No day of the week has working hours, so nothing can be dated: set them."


def test_that_nothing_today_names_the_next_coat_and_its_day() -> None:
    told = plan(piece(ready="2026-03-04 09:00"))
    assert (told.today, told.first) == ((), "Nothing to lay today. Next: Piece a, I0, Wed 4 Mar.")


def test_that_an_empty_rack_has_an_empty_plan() -> None:
    assert plan().first == "No coat is to come."


@settings(max_examples=60, deadline=None)
@given(
    pieces=st.lists(
        st.tuples(st.integers(1, 4), st.integers(0, 240), st.floats(0.5, 60), st.one_of(st.none(), st.integers(0, 40))),
        min_size=1,
        max_size=8,
    )
)
def test_that_any_plan_keeps_hours_hands_and_the_waits_below(
    pieces: list[tuple[int, int, float, int | None]],
) -> None:
    base = ms("2026-03-02 09:00")
    given_pieces = []
    for number, (coats, ready_h, wait_h, due_days) in enumerate(pieces):
        waits = Waits(next=hours_of(wait_h, wait_h, wait_h), handle=WAITS.handle, cured=WAITS.cured)
        ready_ms = base + ready_h * HOUR_MS
        given_pieces.append(
            replace(
                piece(str(number), "G" * coats),
                ready=Times(p10=ready_ms, p50=ready_ms, p90=ready_ms),
                waits=always(waits),
                due=None if due_days is None else date(2026, 3, 2) + timedelta(days=due_days),
            )
        )
    told = finishing_plan(given_pieces, WorkingHours(), CLOCK, now_ms=base)
    spans = sorted(coat.span for one in told.pieces for coat in one.coats if coat.span is not None)
    assert len(spans) == sum(coats for coats, *_ in pieces)
    assert all(before[1] <= after[0] for before, after in pairwise(spans))
    for one, (_, ready_h, wait_h, _) in zip(told.pieces, pieces, strict=True):
        earliest = base + ready_h * HOUR_MS
        for coat in one.coats:
            assert coat.lay_ms is not None
            assert coat.lay_ms >= earliest
            earliest = coat.lay_ms + round(wait_h * HOUR_MS)
