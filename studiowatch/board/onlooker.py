"""What an onlooker may see of the reader's work: the ports, what answers on each, and lines as they come."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from threading import Lock

from studiowatch.board.events import BoardEvent, LineRefused
from studiowatch.board.port import PortGone, PortSeen
from studiowatch.board.wire import LONGEST_LINE, quoted
from studiowatch.speech.words import say

KEPT_LINES = 200  # the newest that are held for whoever looks
LONGEST_REST = 4096  # bytes held back of a line that does not end


@dataclass(frozen=True, slots=True, kw_only=True)
class PortFound:
    """A port, and what is known of what is behind it.

    Attributes
    ----------
    is_read : bool
        Whether it is read now.
    is_tried : bool
        Whether it is listened to, and nothing made sense yet.
    format, baud : str, int or None
        How it is read or tried.
    reason : str
        Why it was given up, one sentence, or "" if it was not tried.
    """

    port: PortSeen
    is_read: bool = False
    is_tried: bool = False
    format: str = ""
    baud: int | None = None
    reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeardLine:
    """A line as it came, legible; `number` counts on from line to line, `reason` says why it was refused, or is ""."""

    number: int
    time_ms: int
    text: str
    reason: str = ""


class Onlooker:
    """Is told by the reader, and answers from any thread. Lines are kept only while somebody looks."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._looking = False
        self._found: dict[str, PortFound] = {}
        self._lines: deque[HeardLine] = deque(maxlen=KEPT_LINES)
        self._heard_port = ""
        self._rest = b""
        self._count = 0

    @property
    def is_looking(self) -> bool:
        """Whether somebody looks."""
        return self._looking

    def look(self, *, on: bool) -> None:
        """Begin to look, or end it and let the lines go."""
        with self._lock:
            self._looking = on
            if not on:
                self._forget_lines("")

    def ports(self) -> tuple[PortFound, ...]:
        """Return the ports, in the order in which they were listed; one that is read is there though unlisted."""
        with self._lock:
            return tuple(self._found.values())

    def port_named(self, name: str) -> PortSeen:
        """Return the port `name`. Raises `PortGone` if there is none."""
        found = next((one.port for one in self.ports() if one.port.name == name), None)
        if found is None:
            raise PortGone(
                say("There is no port {port} any more: plug the board in, or choose another port.", port=name)
            )
        return found

    def lines(self) -> tuple[HeardLine, ...]:
        """Return the newest lines of the port that is listened to, the oldest first."""
        with self._lock:
            return tuple(self._lines)

    def listed(self, ports: Sequence[PortSeen]) -> None:
        """Take note of which ports there are."""
        with self._lock:
            before = self._found
            self._found = {port.name: replace(before.get(port.name, PortFound(port=port)), port=port) for port in ports}
            self._found |= {name: one for name, one in before.items() if one.is_read or one.is_tried}

    def reads(self, port: PortSeen, format_name: str, baud: int) -> None:
        """Take note that what comes on `port` makes sense."""
        with self._lock:
            self._found[port.name] = PortFound(port=port, is_read=True, format=say(format_name), baud=baud)

    def tries(self, port: PortSeen, format_name: str, baud: int) -> None:
        """Take note that `port` is listened to."""
        with self._lock:
            self._found[port.name] = PortFound(port=port, is_tried=True, format=say(format_name), baud=baud)

    def gave_up(self, port: PortSeen, reason: str) -> None:
        """Take note of why `port` is not read, or not any more."""
        with self._lock:
            self._found[port.name] = PortFound(port=port, reason=reason)

    def heard(self, port: PortSeen, data: bytes, events: Iterable[BoardEvent], time_ms: int) -> None:
        """Keep the lines that `data` ends, each with the reason for which `events` refused it."""
        if not self._looking or not data:
            return
        refused = [event for event in events if isinstance(event, LineRefused)]
        with self._lock:
            if port.name != self._heard_port:
                self._forget_lines(port.name)
            *ended, rest = (self._rest + data).split(b"\n")
            self._rest = rest[-LONGEST_REST:]
            for line in (line.removesuffix(b"\r") for line in ended):
                names = {quoted(line), quoted(line + b"\r")}
                fault = next((one for one in refused if one.quoted in names), None)
                if fault is not None:
                    refused.remove(fault)
                self._keep(quoted(line, LONGEST_LINE), fault.reason if fault else "", time_ms)
            for fault in refused:  # parts of lines
                self._keep(fault.quoted, fault.reason, time_ms)

    def _keep(self, text: str, reason: str, time_ms: int) -> None:
        self._count += 1
        self._lines.append(HeardLine(number=self._count, time_ms=time_ms, text=text, reason=reason))

    def _forget_lines(self, port: str) -> None:
        self._heard_port, self._rest = port, b""
        self._lines.clear()
