"""A calendar file as RFC 5545 has it: text out, in UTC, nothing read back. Section numbers are those of RFC 5545."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

PRODUCT = "-//studiowatch//finishing plan//EN"  # not said
LINE_OCTETS = 75  # octets of a line without its break, section 3.1
BREAK = "\r\n"
MAIL_DOMAIN = "studiowatch.invalid"  # a name of RFC 2606 that nobody owns


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """One entry.

    Attributes
    ----------
    uid : str
        The same for the same thing each time it is written, so that a calendar replaces what it had.
    start_ms, end_ms : int
        UTC ms; the end is left out.
    alarm_before_ms : int or None
        How long before its start it reminds; None for no reminder.
    """

    uid: str
    start_ms: int
    end_ms: int
    summary: str
    description: str = ""
    alarm_before_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class AllDay:
    """An entry of a whole day of her calendar: it takes none of her time."""

    uid: str
    day: date
    summary: str
    description: str = ""


def calendar(entries: Sequence[Event | AllDay], *, made_ms: int, name: str) -> str:
    """Return the whole calendar file, with the line breaks that RFC 5545 wants.

    Parameters
    ----------
    made_ms : int
        When it was made, UTC ms.
    name : str
        What it is called.
    """
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        f"PRODID:{PRODUCT}",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
        f"NAME:{_text(name)}",  # RFC 7986, section 5.1
    ]
    for entry in entries:
        lines += ["BEGIN:VEVENT", f"UID:{_text(entry.uid)}@{MAIL_DOMAIN}", f"DTSTAMP:{_moment(made_ms)}"]
        lines += _timed(entry) if isinstance(entry, Event) else _dated(entry)
        lines.append("END:VEVENT")
    lines.append("END:VCALENDAR")
    return "".join(f"{folded}{BREAK}" for line in lines for folded in _folded(line))


def _timed(event: Event) -> Iterator[str]:
    yield f"DTSTART:{_moment(event.start_ms)}"
    yield f"DTEND:{_moment(event.end_ms)}"
    yield from _words(event)
    if event.alarm_before_ms is not None:
        yield from (
            "BEGIN:VALARM",
            "ACTION:DISPLAY",
            f"DESCRIPTION:{_text(event.summary)}",
            f"TRIGGER:{_before(event.alarm_before_ms)}",
            "END:VALARM",
        )


def _before(span_ms: int) -> str:
    """Return a duration of section 3.3.6 before the start."""
    minutes = span_ms // 60_000
    return f"-PT{minutes}M" if minutes else "PT0S"


def _dated(entry: AllDay) -> Iterator[str]:
    yield f"DTSTART;VALUE=DATE:{entry.day:%Y%m%d}"
    yield f"DTEND;VALUE=DATE:{entry.day + timedelta(days=1):%Y%m%d}"  # the end is left out, section 3.6.1
    yield from _words(entry)
    yield "TRANSP:TRANSPARENT"


def _words(entry: Event | AllDay) -> Iterator[str]:
    yield f"SUMMARY:{_text(entry.summary)}"
    if entry.description:
        yield f"DESCRIPTION:{_text(entry.description)}"


def _moment(time_ms: int) -> str:
    """Return a UTC time of section 3.3.5, form 2."""
    return datetime.fromtimestamp(time_ms / 1000, UTC).strftime("%Y%m%dT%H%M%SZ")


def _text(text: str) -> str:
    """Return a text value of section 3.3.11: no control characters but line breaks and tabs."""
    plain = text.replace("\r\n", "\n").replace("\r", "\n")
    plain = "".join(sign for sign in plain if sign in "\n\t" or (sign >= " " and sign != "\x7f"))
    for sign, written in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\n", "\\n")):
        plain = plain.replace(sign, written)
    return plain


def _folded(line: str) -> Iterator[str]:
    """Yield a line in parts of at most 75 octets each; one that goes on begins with a space, and no sign is cut."""
    part, octets = "", 0
    for sign in line:
        size = len(sign.encode("utf-8"))
        if octets + size > LINE_OCTETS:
            yield part
            part, octets = " ", 1
        part += sign
        octets += size
    yield part
