"""A disk that refuses is met once in a while and by one write only; what waits keeps its order."""

from __future__ import annotations

import pytest

from studiowatch.service.disk import AT_ONCE, RETRY_S, Disk
from studiowatch.store.trouble import StoreTrouble


class Paper:
    """Takes words, or refuses them."""

    def __init__(self) -> None:
        self.words: list[str] = []
        self.tried = 0
        self.refuses = False

    def put(self, word: str) -> None:
        self.tried += 1
        if self.refuses:
            raise StoreTrouble("It is in use.")
        self.words.append(word)


@pytest.fixture
def paper() -> Paper:
    return Paper()


def test_that_all_writes_share_one_wait_after_a_refusal(paper: Paper) -> None:
    disk = Disk()
    paper.refuses = True
    disk.later(lambda: paper.put("a"))
    disk.later(lambda: paper.put("b"))
    for tenth in range(round(RETRY_S * 10)):
        disk.settle(100 + tenth / 10)
        assert not disk.attempt(lambda: paper.put("batch"), 100 + tenth / 10)
    assert paper.tried == 1
    assert disk.trouble == "It is in use."
    paper.refuses = False
    disk.settle(100 + RETRY_S)
    assert paper.words == ["a", "b"]
    assert (disk.trouble, disk.waiting) == ("", 0)


def test_that_a_long_queue_is_written_in_parts(paper: Paper) -> None:
    disk = Disk()
    for number in range(AT_ONCE + 3):
        disk.later(lambda number=number: paper.put(str(number)))
    disk.settle(0.0)
    assert disk.waiting == 3
    assert disk.catch_up(0.0)
    assert paper.words == [str(number) for number in range(AT_ONCE + 3)]


def test_that_catching_up_tries_at_once_and_says_whether_it_is_done(paper: Paper) -> None:
    disk = Disk()
    paper.refuses = True
    disk.later(lambda: paper.put("a"))
    disk.settle(0.0)
    assert not disk.catch_up(0.1)
    paper.refuses = False
    assert disk.catch_up(0.2)
    assert paper.words == ["a"]


def test_that_a_record_at_fault_is_loud_and_does_not_hold_up_those_behind_it(paper: Paper) -> None:
    disk = Disk()

    def broken() -> None:
        raise ValueError("no such column")

    disk.later(broken)
    disk.later(lambda: paper.put("b"))
    with pytest.raises(ValueError, match="no such column"):
        disk.settle(0.0)
    disk.settle(0.5)
    assert paper.words == ["b"]
