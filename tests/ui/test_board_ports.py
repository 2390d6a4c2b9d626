"""The words for the ports."""

from __future__ import annotations

from studiowatch.board.onlooker import Onlooker, PortFound
from studiowatch.board.port import PortSeen
from studiowatch.service.board_view import BoardView
from studiowatch.ui.models.board_ports import NO_BOARD_PORT, NOT_TRIED, NOT_YET, port_rows
from studiowatch.ui.models.tones import Tone

from .board_scenes import BOARD, BUILT_IN, OTHER, REFUSED, TAKEN, heard, refused

VIEW = BoardView(connected=True, port=BOARD.name, sensor="sht4x")


def ports_after(tell: object) -> tuple[PortFound, ...]:
    onlooker = Onlooker()
    tell(onlooker)  # type: ignore[operator]
    return onlooker.ports()


def test_that_the_port_that_is_read_comes_first_and_says_how() -> None:
    read, taken, built_in = port_rows(ports_after(heard)[::-1], VIEW)[:1] + port_rows(ports_after(heard), VIEW)[1:]
    assert (read.name, read.state, read.tone) == ("ttyUSB0", "Read now: checked lines at 9600 baud, sht4x", Tone.GOOD)
    assert not read.can_choose
    assert (taken.state, taken.can_choose) == (TAKEN, True)
    assert (built_in.detail, built_in.state) == ("", NOT_TRIED)


def test_that_a_refused_port_has_the_one_command_to_copy() -> None:
    row = port_rows(ports_after(refused), BoardView())[0]
    assert row.state == REFUSED
    assert row.command == "sudo usermod -aG dialout $USER"


def test_that_a_port_nothing_was_heard_of_is_not_called_beaten_while_none_is_read() -> None:
    assert port_rows([PortFound(port=BUILT_IN)], BoardView())[0].state == NOT_YET


def test_that_a_wireless_link_cannot_be_chosen() -> None:
    link = PortSeen(name="/dev/rfcomm0")
    row = port_rows([PortFound(port=link)], BoardView())[0]
    assert (row.state, row.can_choose) == (NO_BOARD_PORT, False)


def test_that_a_port_that_is_tried_is_told_with_its_rate() -> None:
    row = port_rows([PortFound(port=OTHER, is_tried=True, format="unchecked lines", baud=19200)], BoardView())[0]
    assert "19200 baud" in row.state
    assert not row.can_choose
