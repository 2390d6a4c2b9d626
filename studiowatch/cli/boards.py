"""`boards`: ports seen, what answers on each, and in which format."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

from studiowatch.board.candidates import candidates, may_be_board
from studiowatch.board.events import (
    BoardNamed,
    BoardTrouble,
    LineCounts,
    MappingAsked,
    MappingHolds,
    ReadingArrived,
)
from studiowatch.board.listening import Listening
from studiowatch.board.mapping import Choice, Column, ColumnMapping, Outcome
from studiowatch.board.port import PortFault, PortSeen
from studiowatch.board.ways import ChooseWay
from studiowatch.board.wire import quoted
from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, FAULT, print_document, wrong
from studiowatch.room.readings import Channel, Reading
from studiowatch.service.board_now import trouble_sentence
from studiowatch.service.outfit import Outfit
from studiowatch.speech.words import mark, say
from studiowatch.store.folder import StudioFolder

LISTEN_S = (0.5, 60.0)  # s, how long one may listen
AT_ONCE = 8  # ports listened to side by side
PORTION_S = 0.2  # s, how often the end of the listening is looked for
NOT_TRIED = mark("not listened to: a wireless link or a console of the computer itself")


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
    columns : ColumnMapping or None
        What the columns of unchecked lines are, as far as that is known.
    """

    port: PortSeen
    format: str = ""
    baud: int | None = None
    named: BoardNamed | None = None
    reading: Reading | None = None
    counts: LineCounts = LineCounts()
    sample: str = ""
    trouble: str = ""
    columns: ColumnMapping | None = None

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
            "columns": _columns_document(self.columns) if self.columns else None,
            "trouble": self.trouble or None,
        }


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    if call.column and call.accept is None:
        wrong(say("--column goes with --accept PORT: say on which port the column is."))
    low_s, high_s = LISTEN_S
    if not low_s <= call.listen_s <= high_s:
        wrong(
            say(
                "--listen-s is {given} s; allowed is {low} to {high} s.",
                given=f"{call.listen_s:g}",
                low=f"{low_s:g}",
                high=f"{high_s:g}",
            )
        )
    seen = outfit.list_ports()
    if call.accept is not None:
        name = inputs.port(call.accept, "--accept") or ""
        named = next((port for port in seen if port.name == name), PortSeen(name=name))
        accept(outfit, folder, listen(outfit, folder, call.listen_s, [named]), call)
        return DONE
    heard = listen(outfit, folder, call.listen_s, seen)
    if call.json:
        print_document({"boards": [one.document() for one in heard]})
    else:
        _print_table(heard)
    return DONE if any(_answers(one) for one in heard) else FAULT


def accept(outfit: Outfit, folder: StudioFolder, heard: Sequence[Heard], call: argparse.Namespace) -> None:
    """Keep what the columns on a port are, as shown and as the call says."""
    found = next((one for one in heard if one.port.name == call.accept), None)
    if found is None or found.columns is None:
        wrong(
            say(
                "No unchecked lines with numbers came from {port}; `studiowatch boards` shows what comes.",
                port=call.accept,
            )
        )
    mapping = found.columns
    for words in call.column:
        mapping = _set_by_hand(mapping, words)
    unsaid = [column.key for column in mapping.columns if column.outcome is Outcome.ASKED]
    if unsaid:
        wrong(
            say(
                "Say what column {key} is: --column {key}=CHANNEL:UNIT, or --column {key}=none.",
                key=unsaid[0],
            )
        )
    if not mapping.chosen:
        wrong(
            say(
                "No column of {port} would be read; say what one of them is: --column KEY=CHANNEL:UNIT.",
                port=call.accept,
            )
        )
    outfit.keep_columns(folder, found.port, mapping)
    if call.json:
        print_document({"port": call.accept, "columns": _columns_document(mapping)})
    else:
        _print_columns(mapping)


def _print_columns(mapping: ColumnMapping) -> None:
    for column in mapping.columns:
        print(f"{column.key}: {_column_words(column)}")


def _set_by_hand(mapping: ColumnMapping, words: str) -> ColumnMapping:
    key, _, said = words.rpartition("=")
    channel, _, unit = said.partition(":")
    try:
        return mapping.set_by_hand(key, None if said == "none" else Choice(Channel(channel), unit))
    except ValueError as fault:
        wrong(
            say(
                "--column {given}: {fault}; channels are {channels}.",
                given=words,
                fault=fault,
                channels=", ".join(Channel),
            )
        )


def listen(outfit: Outfit, folder: StudioFolder, listen_s: float, seen: Sequence[PortSeen]) -> Sequence[Heard]:
    """Listen on every port that may be a board's for a while, in each way; those that may not come last."""
    choose_way = outfit.choose_way(folder)
    with ThreadPoolExecutor(max_workers=AT_ONCE) as pool:
        heard = tuple(pool.map(lambda port: _listen_to(outfit, choose_way, port, listen_s), candidates(seen)))
    return heard + tuple(Heard(port=port, trouble=say(NOT_TRIED)) for port in seen if not may_be_board(port))


def _listen_to(outfit: Outfit, choose_way: ChooseWay, port: PortSeen, listen_s: float) -> Heard:
    heard = Heard(port=port)
    listening = Listening(port, choose_way)
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
        case MappingAsked() | MappingHolds():
            heard.columns = event.mapping


def _answers(heard: Heard) -> bool:
    return heard.format not in {"", "unknown"}


def _columns_document(mapping: ColumnMapping) -> list[dict[str, object]]:
    return [_column_document(column) for column in mapping.columns]


def _column_document(column: Column) -> dict[str, object]:
    choice = column.choice
    return {
        "key": column.key,
        "state": column.outcome.value,
        "channel": choice.channel.value if choice else None,
        "unit": choice.unit if choice else None,
        "why": column.why,
        "candidates": [[one.channel.value, one.unit] for one in column.candidates],
    }


def _column_words(column: Column) -> str:
    if column.choice is not None:
        return say("{channel} in {unit}", channel=column.choice.channel.value, unit=column.choice.unit)
    return say("not used") if column.outcome is not Outcome.ASKED else say("not known")


def _usb(port: PortSeen) -> dict[str, object]:
    return {"vid": port.vid, "pid": port.pid, "serial": port.serial}


def _values(reading: Reading | None) -> dict[str, float]:
    if reading is None:
        return {}
    pairs = ((channel.value, reading.value(channel)) for channel in Channel)
    return {name: value for name, value in pairs if value is not None}


def _print_table(heard: Sequence[Heard]) -> None:
    if not heard:
        print(say("No port was found. Plug the board in; on Linux `dmesg` shows whether the computer saw it."))
    for one in heard:
        name = one.port.description.removeprefix("n/a")
        print(f"{one.port.name}{f'  {name}' if name else ''}: {'; '.join(_words(one))}")


def _words(heard: Heard) -> list[str]:
    words = [heard.trouble] if heard.trouble else []
    if _answers(heard):
        named = heard.named
        who = [named.sensor, say("board {name}", name=named.board_id), named.firmware] if named else []
        way = say("{format} at {baud} baud", format=say(heard.format), baud=heard.baud)
        words = [", ".join(part for part in (way, *who) if part), *words]
        words += [", ".join(f"{name} {value:g}" for name, value in _values(heard.reading).items())]
        if heard.columns is not None:
            words += [
                ", ".join(
                    say("{column} is {channel}", column=column.key, channel=_column_words(column))
                    for column in heard.columns.columns
                )
            ]
    elif heard.format:
        words.append(say("sends what cannot be read at {baud} baud: {bytes}", baud=heard.baud, bytes=heard.sample))
    return [word for word in words if word] or [say("silent")]
