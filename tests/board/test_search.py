"""Whose turn it is, and that a wish from another thread is never lost on the way."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from studiowatch.board import search
from studiowatch.board.candidates import candidates
from studiowatch.board.lookout import Lookout
from studiowatch.board.port import PortSeen
from studiowatch.board.search import Search

ONE = PortSeen(name="COM3", vid=0x2341, pid=0x43, serial="A1")
TWO = PortSeen(name="COM4", vid=0x2341, pid=0x43, serial="B2")


def search_for(wanted: PortSeen | None) -> Search:
    return Search(Lookout(list_ports=lambda: [ONE, TWO], now_s=lambda: 0.0, every_s=1.0), wanted=wanted, last=None)


def test_that_a_port_asked_for_by_name_is_known_by_its_numbers_once_it_was_seen() -> None:
    looking = search_for(PortSeen(name="COM3"))
    assert [turn.port for turn in looking.turns()] == [ONE]
    assert looking.wanted == ONE
    assert not looking.is_rechosen


@pytest.mark.parametrize("wish", [TWO, None])
def test_that_a_wish_holds_that_comes_while_the_turns_are_dealt_out(
    monkeypatch: pytest.MonkeyPatch, wish: PortSeen | None
) -> None:
    looking = search_for(ONE)

    def asked_for_another_meanwhile(seen: Sequence[PortSeen], **how: object) -> list[PortSeen]:
        found = candidates(seen, **how)
        looking.want(wish)
        return found

    with monkeypatch.context() as patched:
        patched.setattr(search, "candidates", asked_for_another_meanwhile)
        looking.turns()
    assert looking.is_rechosen
    assert looking.wanted == wish
    assert [turn.port for turn in looking.turns()] == ([TWO] if wish else [ONE, TWO])
