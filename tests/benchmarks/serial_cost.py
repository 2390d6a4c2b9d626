r"""What reading a board costs: a core's share at one line a second, a hundred lines a second, and a line's parsing.

    python tests/benchmarks/serial_cost.py --seconds 60

The board is the other end of a pseudo-terminal, so that the real port and the reader's own thread do the work; the
share is that of all the program's threads but the one that plays the board. Parsing is compared with a floor timed in
the same run on the same bytes: `bytes.split` of the stream into lines and of each line into its fields,

    [line.split(b" ") for line in stream.split(b"\n")]

which checks nothing and leaves keys and values together. The least of many repeats is taken of both.
"""

from __future__ import annotations

import argparse
import os
import random
import time
import timeit
import tty
from collections.abc import Callable

from studiowatch.board.events import BoardEvent, PortOpened, ReadingArrived
from studiowatch.board.intake import Intake
from studiowatch.board.reader import Reader
from studiowatch.board.wire import Kind, LineParser, WireLine, encode
from studiowatch.service.clock import SystemClock

MOST_SHARE_PCT = 0.3  # % of one core at one line a second: the goal
FAST_LINES_S = 100  # lines a second that must be held with nothing lost: the goal
MOST_RATIO = 6.0  # of parsing to the floor: the goal
LINES = 2000
REPEATS = 30
OPENED_WITHIN_S = ARRIVED_WITHIN_S = 10.0


def lines(count: int) -> list[bytes]:
    """Return data lines as the reference sketch sends them."""
    drawn = random.Random(1)
    return [
        encode(
            Kind.DATA,
            {
                "n": str(number),
                "u": str(194 + 1000 * number),
                "t": f"{drawn.uniform(19, 23):.2f}",
                "h": f"{drawn.uniform(40, 60):.2f}",
                "a": f"{drawn.uniform(580, 620):.1f}",
                "s": str(drawn.randint(4990, 5010)),
            },
        )
        for number in range(count)
    ]


class Board:
    """The board's end of a pseudo-terminal, with the real reader at the other."""

    def __init__(self) -> None:
        self._own, theirs = os.openpty()
        tty.setraw(theirs)
        self.readings: list[ReadingArrived] = []
        self._is_open = False
        self._reader = Reader(clock=SystemClock(), wanted=os.ttyname(theirs))
        self._reader.start(self._take)
        self._until(lambda: self._is_open, OPENED_WITHIN_S)

    def send(self, sent: list[bytes], per_s: float) -> float:
        """Send lines at a pace; return the other threads' share of one core meanwhile, %."""
        began_s, others_s = time.monotonic(), self._others_s()
        for number, line in enumerate(sent, start=1):
            os.write(self._own, line)
            time.sleep(max(began_s + number / per_s - time.monotonic(), 0.0))
        share_pct = 100 * (self._others_s() - others_s) / (time.monotonic() - began_s)
        self._until(lambda: len(self.readings) >= len(sent), ARRIVED_WITHIN_S)
        return share_pct

    def close(self) -> None:
        """End the reader."""
        self._reader.stop()

    def _take(self, event: BoardEvent) -> None:
        if isinstance(event, ReadingArrived):
            self.readings.append(event)
        self._is_open |= isinstance(event, PortOpened)

    @staticmethod
    def _others_s() -> float:
        return time.process_time() - time.thread_time()

    @staticmethod
    def _until(is_met: Callable[[], bool], within_s: float) -> None:
        end_s = time.monotonic() + within_s
        while not is_met() and time.monotonic() < end_s:
            time.sleep(0.01)


def verdict(*, is_met: bool) -> str:
    """Return whether a goal was met, in words."""
    return "goal met" if is_met else "GOAL NOT MET"


def slow_board(seconds: int) -> None:
    """Print the share of a core at one line a second."""
    board = Board()
    share_pct = board.send(lines(seconds), 1.0)
    board.close()
    goal = verdict(is_met=share_pct < MOST_SHARE_PCT)
    print(f"one line a second for {seconds} s: {share_pct:.3f} % of a core (below {MOST_SHARE_PCT:g} %: {goal})")


def fast_board(seconds: int) -> None:
    """Print what became of a hundred lines a second."""
    board = Board()
    sent = lines(seconds * FAST_LINES_S)
    share_pct = board.send(sent, FAST_LINES_S)
    board.close()
    counts = board.readings[-1].counts
    is_whole = (counts.good, counts.lost, counts.faulty) == (len(sent), 0, 0)
    print(
        f"{FAST_LINES_S} lines a second for {seconds} s: {len(sent)} sent, {counts.good} read, {counts.lost} lost, "
        f"{counts.faulty} faulty, {share_pct:.2f} % of a core (nothing lost: {verdict(is_met=is_whole)})"
    )


def least_us(work: Callable[[], object], count: int) -> float:
    """Return the least time of `work` per line, µs."""
    return min(timeit.repeat(work, number=1, repeat=REPEATS)) / count * 1e6


def parsing() -> None:
    """Print what a line costs beside the floor."""
    sent = lines(LINES)
    stream = b"".join(sent)
    found = LineParser().feed(stream)
    if len(found) != LINES or not all(isinstance(line, WireLine) for line in found):
        raise SystemExit("not every line was parsed")
    floor_us = least_us(lambda: [line.split(b" ") for line in stream.split(b"\n")], LINES)
    pairs_us = least_us(
        lambda: [[field.split(b"=") for field in line.split(b" ")] for line in stream.split(b"\n")], LINES
    )
    parse_us = least_us(lambda: LineParser().feed(stream), LINES)
    event_us = least_us(lambda: Intake().feed(stream, 0), LINES)
    ratio = parse_us / floor_us
    print(
        f"parsing a line: {parse_us:.2f} µs, {ratio:.1f} times bytes.split into lines and fields ({floor_us:.2f} µs) "
        f"(at most {MOST_RATIO:g}: {verdict(is_met=ratio <= MOST_RATIO)})"
    )
    print(
        f"      {parse_us / pairs_us:.1f} times bytes.split into keys and values too ({pairs_us:.2f} µs); "
        f"from bytes to a reading's event {event_us:.2f} µs"
    )


def main() -> None:
    """Measure and print."""
    words = argparse.ArgumentParser()
    words.add_argument("--seconds", type=int, default=60, help="how long to read at one line a second")
    call = words.parse_args()
    parsing()
    fast_board(max(call.seconds // 3, 5))
    slow_board(call.seconds)


if __name__ == "__main__":
    main()
