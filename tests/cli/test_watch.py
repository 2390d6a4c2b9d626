"""`demo --headless`, `record`, `boards` and `check`, on the simulated board and in folders of the test's own."""

from __future__ import annotations

import errno
import io
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.board.port import PortRefused, PortSeen
from studiowatch.board.simulated import SimulatedPort
from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.cli.commands import run
from studiowatch.cli.watch import Printer
from studiowatch.compose import SimulatedStudio, outfit
from studiowatch.service.board_view import BoardView
from studiowatch.service.clock import SystemClock
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.words import Level, Sentence

from .conftest import Answer

PATIENCE_S = 60.0


def test_that_the_demo_prints_readings_and_ready_times_and_leaves_her_records_alone(
    call: Callable[..., Answer], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    own = Printer.show

    def show(printer: Printer, snapshot: Snapshot) -> None:
        own(printer, snapshot)
        is_printed = printer._room_ms is not None and printer._rack_ms is not None
        if is_printed and any(piece.next_ms is not None for piece in snapshot.pieces):
            signal.raise_signal(signal.SIGINT)  # as she would once she has seen enough

    monkeypatch.setattr(Printer, "show", show)
    answer = call("demo", "--headless", "--seconds", "60")
    assert answer.code == 0
    assert "°C" in answer.out
    assert "recoat" in answer.out
    assert not (tmp_path / "data").exists()
    assert (tmp_path / "demo" / "studio.sqlite3").exists()


def test_that_a_typed_room_is_printed_with_its_age_and_that_air_speed_is_not_measured(
    capsys: pytest.CaptureFixture[str],
) -> None:
    typed = TypedAir(time_ms=0, age_s=7300.0)
    room = RoomView(time_ms=0, temperature_C=20.5, humidity_pct=48.0, typed=typed)
    sentence = Sentence(level=Level.CALM, headline="All is well")
    Printer().show(Snapshot(time_ms=7_300_000, board=BoardView(), room=room, sentence=sentence))
    line = capsys.readouterr().out.strip()
    assert line.endswith("20.5 °C  48 %  not measured  All is well  Last read 2 h ago; air speed is not measured.")


class Gone(io.StringIO):
    """A terminal that was closed."""

    def write(self, _text: str) -> int:
        raise OSError(errno.EIO, "Input/output error")


def test_that_a_terminal_that_is_gone_with_all_its_streams_is_no_fault_of_the_watch(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(sys, "stdout", Gone())
    monkeypatch.setattr(sys, "stderr", Gone())
    sentence = Sentence(level=Level.CALM, headline="All is well")
    room = RoomView(time_ms=0, temperature_C=20.5)
    printer = Printer()
    printer.show(Snapshot(time_ms=0, board=BoardView(last_ms=0), room=room, sentence=sentence))
    assert printer._gone


def test_that_recording_stores_what_the_board_sent(call: Callable[..., Answer], tmp_path: Path) -> None:
    folder = tmp_path / "mine"
    answer = call("--folder", folder, "record", "--simulated", "--seconds", "2.5")
    assert answer.code == 0
    store = outfit().open_store(folder / "studio.sqlite3")
    try:
        assert len(store.log.between(0, 2**62)) >= 2
    finally:
        store.close()


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
def test_that_signals_right_behind_each_other_end_it_in_good_order(tmp_path: Path) -> None:
    """A terminal that closes while the computer shuts down sends several: five of twelve such ends once hung."""
    calls = [
        [sys.executable, "-u", "-m", "studiowatch", "--folder", str(tmp_path / f"{number}"), "record", "--simulated"]
        for number in range(8)
    ]
    with ExitStack() as all_of_them:
        watches = [all_of_them.enter_context(subprocess.Popen(one, stdout=subprocess.PIPE)) for one in calls]
        for number, watch in enumerate(watches):
            all_of_them.callback(watch.kill)
            assert watch.stdout is not None
            assert watch.stdout.readline()
            for name in ("SIGINT", "SIGTERM", "SIGHUP", "SIGINT", "SIGTERM"):
                watch.send_signal(signal.Signals[name])
                until_s = time.perf_counter() + 20e-6 * (number + 2)  # any sleep is longer than what is to be met
                while time.perf_counter() < until_s:
                    pass
        ended = {watch.wait(PATIENCE_S) for watch in watches}
    late = {-signal.SIGINT, -signal.SIGTERM, -signal.SIGHUP}  # the last may come once all is over, to Python's own end
    assert 0 in ended
    assert ended <= {0, *late}


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
def test_that_a_watch_that_is_to_outlive_its_terminal_does(call: Callable[..., Answer], tmp_path: Path) -> None:
    """`nohup` has the hang-up ignored before the program begins: POSIX, "nohup"."""
    before = signal.signal(signal.SIGHUP, signal.SIG_IGN)
    try:
        assert call("--folder", tmp_path / "mine", "record", "--simulated", "--seconds", "0.1").code == 0
        assert signal.getsignal(signal.SIGHUP) is signal.SIG_IGN
    finally:
        signal.signal(signal.SIGHUP, before)


def test_that_a_database_of_another_program_is_refused_in_one_sentence_and_not_touched(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    folder = tmp_path / "mine"
    folder.mkdir()
    (folder / "studio.sqlite3").write_bytes(b"a shopping list, not a database" * 40)
    before = (folder / "studio.sqlite3").read_bytes()
    answer = call("--folder", folder, "record", "--simulated", "--seconds", "1")
    assert answer.code == 1
    assert "not a database" in answer.err
    assert (folder / "studio.sqlite3").read_bytes() == before


@pytest.mark.parametrize("seconds", ["0", "-1", "nan"])
def test_that_a_time_to_run_that_is_none_is_refused(call: Callable[..., Answer], tmp_path: Path, seconds: str) -> None:
    answer = call("--folder", tmp_path / "mine", "record", "--simulated", "--seconds", seconds)
    assert answer.code == 2
    assert "--seconds" in answer.err


def test_that_a_port_that_can_be_no_board_is_refused(call: Callable[..., Answer], tmp_path: Path) -> None:
    shopping = tmp_path / "list.txt"
    shopping.write_text("varnish", "utf-8")
    for port in (shopping, tmp_path, ""):
        answer = call("--folder", tmp_path / "mine", "record", "--port", port, "--seconds", "1")
        assert answer.code == 2
        assert "no serial port" in answer.err


def test_that_the_demo_begins_anew_without_what_an_earlier_one_left(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    left = [tmp_path / "demo" / name for name in ("sheets/own.toml", "photos/piece.jpg", "severities.json")]
    for path in left:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("of an earlier demonstration", "utf-8")
    answer = call("demo", "--headless", "--seconds", "1")
    assert answer.code == 0
    assert not any(path.exists() for path in left)


def test_that_a_demo_in_a_window_is_not_said_to_end_by_itself(call: Callable[..., Answer], tmp_path: Path) -> None:
    answer = call("demo", "--seconds", "5")
    assert (answer.code, answer.out) == (2, "")
    assert "--seconds belongs to --headless" in answer.err
    assert not (tmp_path / "demo").exists()


def test_that_the_demo_takes_no_folder_of_hers(call: Callable[..., Answer], tmp_path: Path) -> None:
    answer = call("--folder", tmp_path, "demo", "--headless", "--seconds", "1")
    assert answer.code == 2
    assert "--folder" in answer.err


def test_that_a_sheet_of_hers_that_is_no_text_is_named(call: Callable[..., Answer], tmp_path: Path) -> None:
    folder = tmp_path / "mine"
    (folder / "sheets").mkdir(parents=True)
    (folder / "sheets" / "hers.toml").write_bytes(b"name = 'gl\xe4nzend'")
    answer = call("--folder", folder, "record", "--simulated", "--seconds", "1")
    assert answer.code == 1
    assert "hers.toml" in answer.err
    assert "UTF-8" in answer.err


def test_that_a_reader_who_has_had_enough_ends_a_replay_quietly(tmp_path: Path, studio_file: Path) -> None:
    rows = "".join(f"{1772442000 + second},20.5,50,{0.4 if second > 60 else 0.04}\n" for second in range(600))
    room_file = tmp_path / "room.csv"
    room_file.write_text("time_unix,temperature_C,humidity_pct,air_speed_m_s\n" + rows, "utf-8")
    words = [sys.executable, "-m", "studiowatch", "replay", str(room_file), "--studio", str(studio_file), "--json"]
    with subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        said = process.stderr.read()
        assert process.wait(60) == 0
    assert "Traceback" not in said
    assert "BrokenPipe" not in said


def boards(capsys: pytest.CaptureFixture[str], ports: Sequence[PortSeen], *words: str) -> Answer:
    clock = SystemClock()
    board = SimulatedPort(clock=clock, room=SimulatedRoom(seed=1))

    def open_port(name: str, baud: int) -> SimulatedPort:
        if name == "taken":
            raise PortRefused("The port taken is in use by another program; close that program.")
        return board.open(name, baud)

    parts = replace(outfit(), list_ports=lambda: ports, open_port=open_port)
    code = run(["boards", *words], parts)
    captured = capsys.readouterr()
    return Answer(code, captured.out, captured.err)


def test_that_boards_tells_what_answers_where(capsys: pytest.CaptureFixture[str]) -> None:
    answer = boards(capsys, [PortSeen(name="one"), PortSeen(name="taken")], "--json")
    assert answer.code == 0
    one, taken = answer.document["boards"]
    assert (one["port"], one["format"], one["sensor"]) == ("one", "checked lines", "simulated")
    assert taken["format"] is None
    assert "in use" in taken["trouble"]


def test_that_no_board_is_a_fault_to_act_on(capsys: pytest.CaptureFixture[str]) -> None:
    answer = boards(capsys, [])
    assert answer.code == 1
    assert "Plug the board in" in answer.out


def test_that_check_looks_at_all_four_and_says_what_to_do(call: Callable[..., Answer]) -> None:
    document = call("check", "--json").document
    assert set(document) == {"board", "database", "clock", "sound"}
    assert document["clock"]["fine"] is True
    assert document["database"]["fine"] is True


def test_that_a_made_up_past_joins_the_live_board() -> None:
    studio = SimulatedStudio(room=SimulatedRoom(seed=3), clock=SystemClock())
    now_ms = 1_772_442_000_000  # 2026-03-02T09:00:00Z
    past = list(studio.past(now_ms - 60_000, now_ms, 10.0))
    live = studio.room.room_at(now_ms)
    assert past[-1].temperature_C == pytest.approx(live.temperature_C, abs=0.3)
    assert past[-1].humidity_pct == pytest.approx(live.humidity_pct, abs=1.0)
