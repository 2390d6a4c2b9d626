"""Calendar files against RFC 5545: its own grammar, and a general-purpose parser (the library icalendar)."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta

import icalendar
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.store.icalendar import AllDay, Event, calendar

MADE_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
HOUR_MS = 3_600_000
HARD = 'Salt Marsh; at "Evening", back\\slash\nsecond line 🌊 Größe, ½'
CONTENT_LINE = re.compile(r"[A-Z-]+(;[A-Z-]+=[^:;\"]+)*:[^\x00-\x08\x0b-\x1f\x7f]*")  # section 3.1, as far as used here


def event(**changes: object) -> Event:
    values = {"uid": "coat-1-lay", "start_ms": MADE_MS, "end_ms": MADE_MS + HOUR_MS, "summary": "Kiln Light: lay gloss"}
    return Event(**(values | changes))  # type: ignore[arg-type]


def parsed(text: str) -> list[icalendar.Event]:
    whole = icalendar.Calendar.from_ical(text.encode("utf-8"))
    assert not whole.errors
    return [part for part in whole.walk("VEVENT") if not part.errors]


def unfolded(text: str) -> list[str]:
    """Return the content lines: section 3.1 takes away each CRLF with the white space after it."""
    return re.sub("\r\n[ \t]", "", text).split("\r\n")[:-1]


def test_that_lines_end_in_crlf_and_none_is_longer_than_75_octets() -> None:
    # section 3.1; a sign of several octets is never cut
    text = calendar([event(summary=HARD * 5, description="🌊" * 200)], made_ms=MADE_MS, name="Plan")
    lines = text.encode("utf-8").split(b"\r\n")
    assert lines[-1] == b""
    assert not any(b"\n" in line or b"\r" in line for line in lines)
    assert max(map(len, lines)) <= 75
    for line in lines:
        line.decode("utf-8")


def test_that_every_line_is_a_content_line_and_parts_are_closed_in_order() -> None:
    text = calendar(
        [event(description=HARD, alarm_before_ms=0), AllDay(uid="p-due", day=date(2026, 3, 20), summary="due")],
        made_ms=MADE_MS,
        name="Plan",
    )
    lines = unfolded(text)
    assert all(CONTENT_LINE.fullmatch(line) for line in lines)
    opened: list[str] = []
    for line in lines:
        name, _, value = line.partition(":")
        if name == "BEGIN":
            opened.append(value)
        elif name == "END":
            assert opened.pop() == value
    assert not opened
    assert (lines[0], lines[-1]) == ("BEGIN:VCALENDAR", "END:VCALENDAR")


def test_that_a_calendar_has_what_it_must_have_once() -> None:
    # section 3.6: VERSION and PRODID once; section 3.6.1: UID and DTSTAMP once, DTSTART where there is no METHOD
    lines = unfolded(calendar([event()], made_ms=MADE_MS, name="Plan"))
    names = [re.split("[:;]", line)[0] for line in lines]
    for name in ("VERSION", "PRODID", "UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY"):
        assert names.count(name) == 1, name
    assert "VERSION:2.0" in lines


def test_that_a_parser_reads_back_times_in_utc_and_texts_sign_by_sign() -> None:
    (read,) = parsed(calendar([event(summary=HARD, description=HARD)], made_ms=MADE_MS, name="Plan"))
    assert read["DTSTART"].dt == datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
    assert read["DTEND"].dt == datetime(2026, 3, 2, 10, 0, tzinfo=UTC)
    assert read["DTSTAMP"].dt == datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
    assert str(read["SUMMARY"]) == HARD
    assert str(read["DESCRIPTION"]) == HARD


def test_that_a_whole_day_ends_the_day_after_and_takes_no_time() -> None:
    # section 3.6.1: DTEND is left out of the event; section 3.8.2.7: TRANSPARENT is free
    (read,) = parsed(
        calendar([AllDay(uid="p-due", day=date(2026, 12, 31), summary="due")], made_ms=MADE_MS, name="Plan")
    )
    assert (read["DTSTART"].dt, read["DTEND"].dt) == (date(2026, 12, 31), date(2027, 1, 1))
    assert read["TRANSP"] == "TRANSPARENT"


def test_that_a_reminder_counts_back_from_the_start() -> None:
    # section 3.8.6.3
    for before_ms, expected in ((0, timedelta(0)), (15 * 60_000, timedelta(minutes=-15))):
        (read,) = parsed(calendar([event(alarm_before_ms=before_ms)], made_ms=MADE_MS, name="Plan"))
        (alarm,) = read.walk("VALARM")
        assert alarm["TRIGGER"].dt == expected
        assert (alarm["ACTION"], str(alarm["DESCRIPTION"])) == ("DISPLAY", "Kiln Light: lay gloss")


def test_that_the_same_thing_has_the_same_uid_each_time() -> None:
    first = parsed(calendar([event()], made_ms=MADE_MS, name="Plan"))
    later = parsed(calendar([event(start_ms=MADE_MS + HOUR_MS)], made_ms=MADE_MS + HOUR_MS, name="Plan"))
    assert first[0]["UID"] == later[0]["UID"]


def test_that_control_characters_are_left_out() -> None:
    # section 3.3.11: a text has no control characters but the tab
    (read,) = parsed(calendar([event(summary="a\x00b\x07c\td\re\x7f")], made_ms=MADE_MS, name="Plan"))
    assert str(read["SUMMARY"]) == "abc\td\ne"


@given(st.text(st.characters(exclude_categories=["Cs", "Cc"]), max_size=200))
def test_that_any_text_comes_back(text: str) -> None:
    written = calendar([event(summary="x" + text)], made_ms=MADE_MS, name="Plan")
    assert max(len(line) for line in written.encode("utf-8").split(b"\r\n")) <= 75
    (read,) = parsed(written)
    assert str(read["SUMMARY"]) == "x" + text
