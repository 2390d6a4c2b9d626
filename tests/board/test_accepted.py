"""What she accepts of one board's columns is never what another board is read by."""

from __future__ import annotations

from collections.abc import Callable

from studiowatch.board.events import MappingAsked, ReadingArrived
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortGone, PortSeen
from studiowatch.board.ways import Heard, Way

from .computer import Computer, Device, Talk, silent

HERS = PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1")
OTHER = PortSeen(name="/dev/ttyACM1", vid=0x2341, pid=0x43, serial="B2")
LOOSE = Way(format="unchecked lines", baud=9600, make_intake=LooseIntake)


def sketch(temperature_C: float) -> Talk:
    """Return a sketch of hers that says the same each second."""

    def talk(opened_ms: int) -> bytes:
        return b"Temp: %.1f C, Humidity: 47.0 %%\r\n" % temperature_C if opened_ms % 1000 == 0 else b""

    return talk


def loose_only(_: PortSeen, heard: Heard) -> Way | None:
    return None if heard.tried else LOOSE


class Desk:
    """A computer with her board in it; what she accepts, and what was kept of it."""

    def __init__(self) -> None:
        self.board = Device(HERS, sketch(21.0))
        self.computer = Computer([self.board])
        self.kept: list[PortSeen] = []
        self.refused = 0

    def accept(self) -> None:
        asked = next(event for event in self.computer.events if isinstance(event, MappingAsked))
        try:
            self.computer.reader.accept(HERS.identity, asked.mapping)
        except PortGone:
            self.refused += 1

    def temperatures(self, seconds: float) -> set[float | None]:
        """Return what was read within so many seconds, °C."""

        def keep(board: PortSeen, _: ColumnMapping) -> None:
            self.kept.append(board)

        told = self.computer.watch(seconds, choose_way=loose_only, keep_mapping=keep)
        return {event.reading.temperature_C for event in told if isinstance(event, ReadingArrived)}

    def at(self, second: float, *actions: Callable[[], object]) -> None:
        for action in actions:
            self.computer.at(second, action)


def test_that_columns_are_refused_while_another_port_is_tried_in_the_place_of_the_board() -> None:
    desk = Desk()
    other = Device(OTHER, silent)

    def speak() -> None:
        other.talk = sketch(35.0)

    desk.at(10.55, lambda: desk.computer.pull_out(desk.board), lambda: desk.computer.plug_in(other))
    desk.at(13.55, desk.accept, speak)
    assert desk.temperatures(30) == set()
    assert {name for at_s, name, _ in desk.computer.opened if 10.55 < at_s < 13.55} == {OTHER.name}
    assert (desk.refused, desk.kept) == (1, [])


def test_that_columns_accepted_as_the_board_is_pulled_out_wait_for_it_and_pass_the_other_by() -> None:
    desk = Desk()
    other = Device(OTHER, sketch(35.0))
    desk.at(10.55, desk.accept, lambda: desk.computer.pull_out(desk.board), lambda: desk.computer.plug_in(other))
    desk.at(30.55, lambda: desk.computer.pull_out(other), lambda: desk.computer.plug_in(desk.board))
    assert desk.temperatures(50) == {21.0}
    assert (desk.refused, desk.kept) == (0, [HERS])


def test_that_columns_shown_of_the_board_that_went_are_refused_once_another_is_read() -> None:
    desk = Desk()
    other = Device(OTHER, sketch(35.0))
    desk.at(10.55, lambda: desk.computer.pull_out(desk.board), lambda: desk.computer.plug_in(other))
    desk.at(30.55, desk.accept)
    assert desk.temperatures(50) == set()
    assert (desk.refused, desk.kept) == (1, [])
