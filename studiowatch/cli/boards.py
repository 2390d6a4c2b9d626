"""`boards`: ports seen, what answers on each, and in which format."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

from studiowatch.board.candidates import candidates, may_be_board
from studiowatch.board.events import BoardNamed, BoardTrouble, LineCounts, ReadingArrived
from studiowatch.board.listening import Listening
from studiowatch.board.port import PortFault, PortSeen
from studiowatch.board.wire import quoted
from studiowatch.cli.answers import DONE, FAULT, print_document, wrong
from studiowatch.room.readings import Channel, Reading
from studiowatch.service.board_now import trouble_sentence
from studiowatch.service.outfit import Outfit

LISTEN_S = (0.5, 60.0)  # s, how long one may listen
AT_ONCE = 8  # ports listened to side by side
PORTION_S = 0.2  # s, how often the end of the listening is looked for
NOT_TRIED = "not listened to: a wireless link or a console of the computer itself"


@dataclass(slots=True, kw_only=True)
class Heard:
    """What one port said.

    Attributes
    ----------
    format : str
        How the lines are written that made sense, "unknown" for bytes that never did, or "" for silence.
    baud : int or None
        Bits a second at which the port was read last; None if it was not opened.
    sample : str
        The newest bytes, if they made no sense, legible.
    trouble : str
        Why the port could not be read, or what the board itself says is wrong; one sentence or "".
    """

    port: PortSeen
    format: str = ""
    baud: int | None = None
    named: BoardNamed | None = None
    reading: Reading | None = None
    counts: LineCounts = LineCounts()
    sample: str = ""
    trouble: str = ""

    def document(self) -> dict[str, object]:
        """Return it in the form that other programs read."""
        named = self.named
        return {
            "port": self.port.name,
            "description": self.port.description,
            "usb": None if self.port.vid is None else _usb(self.port),
            "format": self.format or None,
            "baud": self.baud,
            "board": named.board_id if named else None,
            "sensor": named.sensor if named else None,
            "sensor_serial": named.sensor_serial if named else None,
            "firmware": named.firmware if named else None,
            "reading": _values(self.reading) or None,
            "lines": {"good": self.counts.good, "faulty": self.counts.faulty},
            "sample": self.sample or None,
            "trouble": self.trouble or None,
        }


def run(call: argparse.Namespace, outfit: Outfit) -> int:
    """Answer the call."""
    low_s, high_s = LISTEN_S
    if not low_s <= call.listen_s <= high_s:
        wrong(f"--listen-s is {call.listen_s:g} s; allowed is {low_s:g} to {high_s:g} s.")
    heard = listen(outfit, call.listen_s)
    if call.json:
        print_document({"boards": [one.document() for one in heard]})
    else:
        _print_table(heard)
    return DONE if any(_answers(one) for one in heard) else FAULT


def listen(outfit: Outfit, listen_s: float) -> Sequence[Heard]:
    """Listen on every port that may be a board's for a while, in each way; those that may not come last."""
    seen = outfit.list_ports()
    with ThreadPoolExecutor(max_workers=AT_ONCE) as pool:
        heard = tuple(pool.map(lambda port: _listen_to(outfit, port, listen_s), candidates(seen)))
    return heard + tuple(Heard(port=port, trouble=NOT_TRIED) for port in seen if not may_be_board(port))


def _listen_to(outfit: Outfit, port: PortSeen, listen_s: float) -> Heard:
    heard = Heard(port=port)
    listening = Listening(port, outfit.choose_way)
    try:
        while not _is_heard_out(outfit, heard, listening, listen_s):
            way = listening.another_way(again=False)
            if way is None:
                break
            listening.turn_to(way)
    except PortFault as fault:
        heard.trouble = str(fault)
    return heard


def _is_heard_out(outfit: Outfit, heard: Heard, listening: Listening, listen_s: float) -> bool:
    """Listen in one way; return whether it made sense."""
    port = outfit.open_port(heard.port.name, listening.way.baud)
    heard.baud = listening.way.baud
    end_s = outfit.clock.monotonic_s() + listen_s
    try:
        listening.intake.reopened()
        port.write(b"?")
        while outfit.clock.monotonic_s() < end_s and not (heard.named and heard.reading):
            for event in listening.take(port.read_some(PORTION_S), outfit.clock.utc_ms()):
                _note(heard, event)
    finally:
        port.close()
        heard.counts = listening.intake.counts
        heard.format = listening.way.format if listening.is_understood else "unknown" if listening.sample else ""
        heard.sample = "" if listening.is_understood else quoted(listening.sample)
    return listening.is_understood


def _note(heard: Heard, event: object) -> None:
    match event:
        case BoardNamed():
            heard.named = event
        case ReadingArrived():
            heard.reading = event.reading
        case BoardTrouble():
            heard.trouble = trouble_sentence(event)


def _answers(heard: Heard) -> bool:
    return heard.format not in {"", "unknown"}


def _usb(port: PortSeen) -> dict[str, object]:
    return {"vid": port.vid, "pid": port.pid, "serial": port.serial}


def _values(reading: Reading | None) -> dict[str, float]:
    if reading is None:
        return {}
    pairs = ((channel.value, reading.value(channel)) for channel in Channel)
    return {name: value for name, value in pairs if value is not None}


def _print_table(heard: Sequence[Heard]) -> None:
    if not heard:
        print("No port was found. Plug the board in; on Linux `dmesg` shows whether the computer saw it.")
    for one in heard:
        name = one.port.description.removeprefix("n/a")
        print(f"{one.port.name}{f'  {name}' if name else ''}: {'; '.join(_words(one))}")


def _words(heard: Heard) -> list[str]:
    words = [heard.trouble] if heard.trouble else []
    if _answers(heard):
        named = heard.named
        who = [named.sensor, f"board {named.board_id}", named.firmware] if named else []
        words = [", ".join(part for part in (f"{heard.format} at {heard.baud} baud", *who) if part), *words]
        words += [", ".join(f"{name} {value:g}" for name, value in _values(heard.reading).items())]
    elif heard.format:
        words.append(f"sends what cannot be read at {heard.baud} baud: {heard.sample}")
    return [word for word in words if word] or ["silent"]
