"""`boards`: ports seen, and what answers on each."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

from studiowatch.board.events import BoardNamed, LineRefused, ReadingArrived
from studiowatch.board.intake import Intake
from studiowatch.board.port import PortFault, PortSeen
from studiowatch.cli.answers import DONE, FAULT, print_document, wrong
from studiowatch.service.outfit import Outfit

LISTEN_S = (0.5, 60.0)  # s, how long one may listen
AT_ONCE = 8  # ports listened to side by side


@dataclass(frozen=True, slots=True, kw_only=True)
class Heard:
    """What one port said: `format` is "checked lines", "unknown lines" or ""; `trouble` a sentence."""

    port: PortSeen
    format: str = ""
    sensor: str = ""
    board_id: str = ""
    trouble: str = ""

    def document(self) -> dict[str, object]:
        """Return it in the form that other programs read."""
        return {
            "port": self.port.name,
            "description": self.port.description,
            "format": self.format or None,
            "sensor": self.sensor or None,
            "board": self.board_id or None,
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
    return DONE if any(one.format for one in heard) else FAULT


def listen(outfit: Outfit, listen_s: float) -> Sequence[Heard]:
    """Listen on every port for a while."""
    ports = outfit.list_ports()
    with ThreadPoolExecutor(max_workers=AT_ONCE) as pool:
        return tuple(pool.map(lambda port: _listen_to(outfit, port, listen_s), ports))


def _listen_to(outfit: Outfit, seen: PortSeen, listen_s: float) -> Heard:
    try:
        port = outfit.open_port(seen.name)
    except PortFault as fault:
        return Heard(port=seen, trouble=str(fault))
    intake = Intake()
    named: BoardNamed | None = None
    good = refused = 0
    end_s = outfit.clock.monotonic_s() + listen_s
    try:
        port.write(b"?")
        while outfit.clock.monotonic_s() < end_s and not (named and good):
            for event in intake.feed(port.read_some(0.2), outfit.clock.utc_ms()):
                named = event if isinstance(event, BoardNamed) else named
                good += isinstance(event, ReadingArrived)
                refused += isinstance(event, LineRefused)
    except PortFault as fault:
        return Heard(port=seen, trouble=str(fault))
    finally:
        port.close()
    form = "checked lines" if good or named else "unknown lines" if refused else ""
    sensor, board_id = (named.sensor, named.board_id) if named else ("", "")
    return Heard(port=seen, format=form, sensor=sensor, board_id=board_id)


def _print_table(heard: Sequence[Heard]) -> None:
    if not heard:
        print("No port was found. Plug the board in; on Linux `dmesg` shows whether the computer saw it.")
    for one in heard:
        what = one.trouble or ", ".join(part for part in (one.format, one.sensor, one.board_id) if part) or "silent"
        print(f"{one.port.name}  {one.port.description}: {what}")
